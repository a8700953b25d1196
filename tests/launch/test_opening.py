"""The start command as a reader types it."""

import os
import re
import signal
import subprocess
import sys
import urllib.request

import pytest

from crackkit.launch import opening
from crackkit.launch.opening import lesson_file
from crackkit.launch.places import PROJECT
from crackkit.launch.trouble import Trouble
from tests.launch.test_server import FIRST, own_home


@pytest.fixture
def lessons(tmp_path):
    for name in ("00_start_here", "03_boat_ramp"):
        (tmp_path / f"{name}.ipynb").touch()
    return tmp_path


@pytest.mark.parametrize(
    "asked", ["3", "03", "03_boat_ramp", "03_boat_ramp.ipynb", "lessons/03_boat_ramp.ipynb"]
)
def test_a_lesson_is_found_by_its_number_or_name(lessons, asked):
    assert lesson_file(asked, lessons).name == "03_boat_ramp.ipynb"


def test_an_unknown_lesson_is_answered_with_those_there_are(lessons):
    with pytest.raises(Trouble, match="00_start_here\n  03_boat_ramp"):
        lesson_file("12", lessons)


def test_a_missing_folder_of_lessons_is_explained(tmp_path):
    with pytest.raises(Trouble, match="folder that holds README"):
        lesson_file("0", tmp_path)


def test_without_a_screen_no_text_browser_takes_over_the_terminal(monkeypatch):
    monkeypatch.setattr(sys, "platform", "linux")
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "BROWSER"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(opening.webbrowser, "open", lambda _: pytest.fail("opened"))
    assert not opening._shown_in_browser("http://127.0.0.1")


@pytest.mark.skipif(os.name == "nt", reason="Ctrl-C cannot be sent to a single process there")
@pytest.mark.parametrize("sign", [signal.SIGINT, signal.SIGTERM])
def test_the_workbook_opens_and_closes_quietly(tmp_path, sign):
    command = [sys.executable, "-m", "crackkit", "--no-browser", "--port", str(FIRST + 70)]
    with subprocess.Popen(
        command,
        cwd=PROJECT,
        env=own_home(tmp_path),
        stdout=subprocess.PIPE,
        text=True,
        # a shell that runs the tests in the background lets its children ignore Ctrl-C
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.default_int_handler),
    ) as process:
        said = next(line for line in process.stdout if "http://" in line)
        address = re.search(r"http://\S+", said).group()
        assert urllib.request.urlopen(address).status == 200
        process.send_signal(sign)
        try:
            rest, _ = process.communicate(timeout=30)
        finally:
            process.kill()  # one that did not close must not hold up the other tests
    assert process.returncode == 0
    assert "Your progress is kept" in rest
    with pytest.raises(OSError, match="refused"):
        urllib.request.urlopen(address)
