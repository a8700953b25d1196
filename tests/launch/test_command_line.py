import runpy
import subprocess
import sys

import pytest

from crackkit import __main__ as command_line
from crackkit.launch.places import PROJECT


def test_help_names_every_command(capsys):
    with pytest.raises(SystemExit) as ended:
        command_line.main(["--help"])
    assert ended.value.code == 0
    said = capsys.readouterr().out
    for command in ("open", "test", "figures", "handouts", "report"):
        assert command in said


def test_without_a_command_the_workbook_opens(monkeypatch):
    opened = []
    monkeypatch.setattr(command_line, "enter", lambda purpose: None)
    monkeypatch.setattr(command_line, "open_lesson", lambda *what: opened.append(what))
    assert command_line.main(["4", "--port", "9000", "--no-browser"]) == 0
    assert command_line.main([]) == 0
    assert opened == [("4", 9000, False), ("00_start_here", 8888, True)]


def test_other_arguments_of_test_reach_pytest(monkeypatch):
    passed = []
    monkeypatch.setattr(command_line, "enter", passed.append)
    monkeypatch.setattr(command_line, "run_tests", lambda *what: passed.append(what) or 5)
    assert command_line.main(["test", "-k", "slab", "-x"]) == 5
    assert passed == ["tests", (["-k", "slab", "-x"], False)]


def test_a_mistyped_option_is_named(capsys):
    with pytest.raises(SystemExit):
        command_line.main(["open", "--prot", "9000"])
    assert "--prot" in capsys.readouterr().err


def test_what_this_edition_cannot_do_is_said_plainly(monkeypatch, capsys):
    monkeypatch.setattr(command_line, "enter", lambda purpose: None)
    monkeypatch.setitem(command_line._makers, "figures", ("draw", "crackkit.no_such_room"))
    assert command_line.main(["figures"]) == 1
    assert "cannot do that yet" in capsys.readouterr().err


def test_an_old_python_is_sent_away_in_plain_words(monkeypatch):
    monkeypatch.setattr(sys, "version_info", (3, 10, 4, "final", 0))
    with pytest.raises(SystemExit, match=r"needs Python 3\.11 or newer; this is Python 3\.10"):
        runpy.run_path(str(PROJECT / "crackkit" / "__main__.py"), run_name="__main__")


def test_starting_needs_nothing_but_the_standard_library():
    program = "import sys; sys.path.insert(0, '.'); import crackkit.__main__"
    ended = subprocess.run([sys.executable, "-I", "-S", "-c", program], cwd=PROJECT)
    assert ended.returncode == 0
