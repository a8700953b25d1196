"""Units and colours are shared by all pages, though each has a kernel of its own."""

import pytest

from crackkit.learning.progress import Progress, progress
from crackkit.learning.simple_beam import NEEDS, canteen_beam
from crackkit.panels import preferences as shared
from crackkit.panels.finish import Finish
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.start_page import StartPage


@pytest.fixture(autouse=True)
def own_kernel(tmp_path, monkeypatch):
    """A home of its own, and preferences that nobody has asked for yet."""
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    monkeypatch.setattr(shared, "_shared", [])


def chosen_elsewhere(name, value):
    """Choose on another page: its kernel has its own way to the file."""
    Progress(progress().path).set_setting(name, value)


def test_a_lesson_that_comes_back_into_view_follows_a_choice_made_elsewhere():
    panel = Panel(canteen_beam())
    assert panel.view.units == "SI"
    chosen_elsewhere("units", "US")
    chosen_elsewhere("theme", "dark")
    assert panel.view.units == "SI"
    panel.view.looks += 1
    assert (panel.view.units, panel.view.shown_theme) == ("US", "dark")
    assert "ft" in panel.view.svg


@pytest.mark.parametrize("make", [lambda: StartPage().view, lambda: Finish(NEEDS).view])
def test_whatever_widget_of_the_page_notices_it_all_follow(make):
    panel, other = Panel(canteen_beam()), make()
    chosen_elsewhere("theme", "projector")
    other.looks += 1
    assert panel.view.shown_theme == other.shown_theme == "projector"


def test_nothing_is_read_while_nothing_was_written(monkeypatch):
    Preferences().system = "US"
    choices = preferences()
    monkeypatch.setattr(Progress, "setting", lambda *_: pytest.fail("the record was read"))
    for _ in range(3):
        choices.look_again()
    assert choices.system == "US"


def test_what_is_taken_from_the_record_is_not_written_back(monkeypatch):
    choices = preferences()
    chosen_elsewhere("units", "US")
    monkeypatch.setattr(Progress, "set_setting", lambda *_: pytest.fail("the record was written"))
    choices.look_again()
    assert choices.system == "US"


def test_answers_given_elsewhere_change_no_choice():
    choices = preferences()
    choices.system = "US"
    Progress(progress().path).record("02_simple_beam", "q", 1, True)
    choices.look_again()
    assert (choices.system, choices.theme) == ("US", "auto")


@pytest.mark.parametrize("nonsense", ["furlongs", None, 7])
def test_a_choice_that_does_not_exist_is_left_alone(nonsense):
    choices = preferences()
    choices.system = "US"
    chosen_elsewhere("units", nonsense)
    choices.look_again()
    assert choices.system == "US"


def test_a_record_that_is_gone_changes_nothing():
    choices = preferences()
    choices.theme = "dark"
    progress().path.unlink()
    choices.look_again()
    assert choices.theme == "dark"
