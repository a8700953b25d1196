"""The start page: what it lists, what its buttons do, what it tells of the record."""

import pytest

from crackkit.learning.progress import progress
from crackkit.panels.preferences import Preferences
from crackkit.panels.start_page import StartPage


@pytest.fixture
def folder(tmp_path):
    for name in ("02_simple_beam", "10_sandbox"):
        (tmp_path / f"{name}.ipynb").write_text("{}")
    return tmp_path


@pytest.fixture
def page(folder):
    return StartPage(folder, Preferences())


def pressed(page, name, value=None):
    page._on_message(page.view, {"kind": "act", "name": name, "value": value}, [])


def told(page):
    return {one["key"]: one["told"] for one in page.view.lessons}


def test_only_lessons_that_are_there_are_listed(page, folder):
    assert [one["file"] for one in page.view.lessons] == [
        "02_simple_beam.ipynb",
        "10_sandbox.ipynb",
    ]
    (folder / "10_sandbox.ipynb").unlink()
    pressed(page, "look")
    assert [one["key"] for one in page.view.lessons] == ["02_simple_beam"]


def test_a_lesson_tells_how_far_it_is(page):
    assert told(page)["02_simple_beam"] == "not begun"
    progress().record("02_simple_beam", "q", 1, True)
    progress().record("02_simple_beam", "q", 2, False)
    pressed(page, "look")
    assert told(page)["02_simple_beam"] == "begun, 1 of 2 answers right"
    progress().mark_done("02_simple_beam")
    pressed(page, "look")
    assert told(page)["02_simple_beam"] == "done, 1 of 2 answers right"


def test_units_and_colours_are_taken_and_remembered(page):
    pressed(page, "units", "US")
    pressed(page, "theme", "projector")
    assert (page.view.units, page.view.theme) == ("US", "projector")
    assert page.view.shown_theme == "projector"
    assert (progress().setting("units"), progress().setting("theme")) == ("US", "projector")


def test_the_page_follows_a_choice_made_in_a_lesson(page):
    page.preferences.system = "US"
    assert page.view.units == "US"


def test_the_theme_of_the_page_is_followed(page):
    page.view.seen = "dark"
    assert page.view.shown_theme == "dark"


def test_starting_afresh_clears_the_answers_and_keeps_a_copy_and_the_units(page):
    progress().record("02_simple_beam", "q", 1, True)
    pressed(page, "units", "US")
    pressed(page, "afresh")
    copies = list(progress().path.parent.glob("progress-*.json"))
    assert len(copies) == 1
    assert str(copies[0]) in page.view.message
    assert told(page)["02_simple_beam"] == "not begun"
    assert page.view.units == "US"
    assert progress().setting("units") == "US"


def test_before_it_clears_it_says_where_the_copy_goes(page):
    assert str(progress().path.parent) in page.view.kept


def test_a_damaged_record_is_told_of(folder):
    progress().path.parent.mkdir(parents=True, exist_ok=True)
    progress().path.write_text("not json")
    page = StartPage(folder, Preferences())
    assert any("could not be read" in notice for notice in page.view.notices)


def test_an_impossible_choice_is_told_in_place_and_not_swallowed(page):
    before = page.view.units
    with pytest.raises(Exception, match="trait"):
        pressed(page, "units", "furlongs")
    assert "furlongs" in page.view.error
    assert page.view.units == before


def test_without_a_kernel_the_lessons_are_plain_links(page):
    html = page.view.still()
    assert '<a href="02_simple_beam.ipynb">' in html
    assert "licensed engineer" in html
