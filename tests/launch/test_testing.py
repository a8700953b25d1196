import sys

import pytest

from crackkit.launch import testing
from crackkit.launch.testing import chromium, pytest_arguments


def test_everything_is_run_unless_a_path_is_named():
    assert pytest_arguments(["-x"], benchmark=False)[0] == "tests"
    assert pytest_arguments(["tests/launch", "-x"], benchmark=False)[-2:] == ["tests/launch", "-x"]
    assert pytest_arguments(["tests/launch"], benchmark=False).count("tests") == 0


def test_lessons_are_run_cell_by_cell_and_nothing_is_timed():
    arguments = pytest_arguments([], benchmark=False)
    assert {"lessons", "--nbval-lax", "--benchmark-disable"} <= set(arguments)


def test_benchmarks_are_timed_alone():
    assert pytest_arguments([], benchmark=True) == ["tests/benchmarks"]


def test_a_named_chromium_wins(monkeypatch):
    monkeypatch.setenv("CRACKKIT_CHROMIUM", sys.executable)
    assert str(chromium()) == sys.executable


def test_a_named_chromium_that_is_not_there_is_not_replaced_in_silence(monkeypatch):
    monkeypatch.setenv("CRACKKIT_CHROMIUM", "nowhere/chromium")
    assert chromium() is None


def test_a_computer_without_chromium_has_none(monkeypatch):
    monkeypatch.delenv("CRACKKIT_CHROMIUM", raising=False)
    monkeypatch.setattr(testing.shutil, "which", lambda name: None)
    monkeypatch.setattr(testing, "_places", ("{LOCALAPPDATA}/none/chrome.exe",))
    assert chromium() is None


@pytest.mark.parametrize("name", testing.CHROMIUM_NAMES)
def test_chromium_is_found_under_each_of_its_names(monkeypatch, name):
    monkeypatch.delenv("CRACKKIT_CHROMIUM", raising=False)
    monkeypatch.setattr(testing.shutil, "which", {name: sys.executable}.get)
    assert str(chromium()) == sys.executable
