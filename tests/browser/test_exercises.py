"""Exercises on the page: painted with a pointer, done by keyboard alone, also on a tablet."""

import nbformat
import pytest

from crackkit.launch.places import PROJECT
from tests.browser.conftest import PICTURES, heard
from tests.browser.lesson_page import LessonPage

CELLS = (
    "from crackkit.panels import Predict, Quiz, Task\n"
    "from crackkit.learning.beam_task import wash_bay\n"
    "from crackkit.learning.simple_beam import canteen_beam\n"
    "Predict(canteen_beam(), 'stretch', 'try')",
    "Predict(canteen_beam(), 'bar', 'try')",
    "Quiz('try', seed=4)",
    "Task(wash_bay(system='SI'), 'try')",
)


@pytest.fixture(scope="module")
def written():
    """Write a notebook with one exercise of each kind."""
    kernel = {"name": "python3", "display_name": "Python 3 (ipykernel)", "language": "python"}
    book = nbformat.v4.new_notebook(
        metadata={"kernelspec": kernel, "crackkit": {"autostart": True}},
        cells=[nbformat.v4.new_code_cell(source) for source in CELLS],
    )
    file = PROJECT / "out" / "browser" / "exercises.ipynb"
    file.parent.mkdir(parents=True, exist_ok=True)
    nbformat.write(book, file)
    return file


@pytest.fixture(scope="module")
def shown(written, server, browser_window):
    """Open its page once: a kernel starts slowly."""
    page = LessonPage(browser_window.new_page(), server, PICTURES / "exercises")
    try:
        yield page.open(written)
    finally:
        page.close()


@pytest.fixture
def exercises(shown):
    """Give the open page, nothing called yet."""
    shown.page.set_viewport_size({"width": 1280, "height": 900})
    for again in reversed(shown.page.locator(".ck-predict [data-act=again]:visible").all()):
        again.click()
        shown.wait_until_idle()
    yield from heard(shown)


def strip(page, face: str):
    return page.locator(f".ck-predict .ck-strip[data-face={face}]").first


def painted(page, face: str) -> int:
    return strip(page, face).locator("[data-painted=true]").count()


def act(page, name: str):
    return page.locator(f"[data-act={name}]:visible").first


def test_a_stroke_of_the_pointer_paints_every_cell_it_passes(exercises):
    page = exercises.page
    cells = strip(page, "bottom").locator(".ck-cell")
    cells.first.scroll_into_view_if_needed()
    start, end = cells.nth(1).bounding_box(), cells.nth(22).bounding_box()
    page.mouse.move(start["x"] + 3, start["y"] + 9)
    page.mouse.down()
    page.mouse.move(end["x"] + 3, end["y"] + 60, steps=2)  # quick, and off the strip
    page.mouse.up()
    assert painted(page, "bottom") == 22
    act(page, "call").click()
    exercises.wait_until_idle()
    assert page.locator(".ck-predict .ck-headline").first.inner_text().startswith("✓ You have it")
    assert page.locator(".ck-predict image").first.count() == 1
    exercises.screenshot("called")


def test_a_prediction_can_be_made_by_keyboard_alone(exercises):
    page = exercises.page
    strip(page, "top").focus()
    page.keyboard.press("ArrowDown")  # to the bottom face
    page.keyboard.press("Home")
    page.keyboard.press("Space")
    for _cell in range(23):
        page.keyboard.press("Shift+ArrowRight")
    assert painted(page, "bottom") == 24 and painted(page, "top") == 0
    focused = page.evaluate("document.activeElement.getAttribute('aria-activedescendant')")
    assert page.locator(f"[id='{focused}']").get_attribute("aria-selected") == "true"
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")  # past Clear
    page.keyboard.press("Enter")
    exercises.wait_until_idle()
    assert page.evaluate("document.activeElement.dataset.act") == "again"
    page.keyboard.press("Enter")
    exercises.wait_until_idle()
    assert painted(page, "bottom") == 0
    assert page.locator(".ck-predict image").count() == 0


def test_a_place_of_the_bars_is_chosen_by_keyboard(exercises):
    page = exercises.page
    options = page.locator(".ck-predict [role=radio]")
    options.first.focus()
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowUp")
    page.keyboard.press("Space")
    exercises.wait_until_idle()
    assert options.first.get_attribute("aria-checked") == "true"
    page.locator(".ck-predict").nth(1).locator("[data-act=call]").click()
    exercises.wait_until_idle()
    assert page.locator(".ck-predict").nth(1).locator(".ck-remark").count() == 1


def test_a_question_is_answered_by_keyboard_and_the_next_one_has_the_focus(exercises):
    page = exercises.page
    before = page.locator(".ck-quiz .ck-ask").inner_text()
    page.locator(".ck-quiz [role=radio]").first.focus()
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    exercises.wait_until_idle()
    assert page.locator(".ck-quiz .ck-option-why").count() in (1, 2)
    page.keyboard.press("Enter")  # Another one has the focus
    exercises.wait_until_idle()
    assert page.locator(".ck-quiz .ck-ask").inner_text() != before
    assert page.evaluate("document.activeElement.getAttribute('role')") == "radio"


def test_a_beam_is_checked_and_the_list_tells_what_is_missing(exercises):
    page = exercises.page
    act(page, "check").click()
    exercises.wait_until_idle()
    rows = page.locator("div.ck-task .ck-remark")
    assert rows.count() == 5
    assert page.locator("div.ck-task .ck-remark[data-kind=wrong]").count() == 1


@pytest.mark.parametrize("width", [800, 1280])
def test_no_exercise_is_wider_than_the_page(exercises, width):
    page = exercises.page
    page.set_viewport_size({"width": width, "height": 900})
    page.wait_for_timeout(400)
    exercises.wait_until_idle()
    too_wide = page.evaluate(
        "() => [...document.querySelectorAll('.ck-exercise')]"
        ".filter(one => one.scrollWidth > one.clientWidth + 1).length"
    )
    assert too_wide == 0
