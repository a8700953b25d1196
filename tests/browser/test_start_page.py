"""The start page and a derivation in the real page: keys, links, mathematics."""

from crackkit.launch.places import LESSONS

LESSON = "00_start_here"
FETCHED = "() => performance.getEntriesByType('resource').map(entry => entry.name)"
WHY = """
from crackkit.learning.simple_beam import canteen_beam
from crackkit.panels.why import Why
Why(canteen_beam().solve())
"""


def test_the_first_lesson_starts_without_a_click_and_asks_nobody_else(lesson):
    lesson.screenshot("start")
    page = lesson.page
    assert page.locator(".jp-OutputArea-output").count() > 0
    assert page.locator(".jp-Dialog, .Toastify__toast").count() == 0
    assert page.evaluate("jupyterapp.shell.currentWidget.model.dirty") is False
    home = page.evaluate("location.origin")
    assert [name for name in page.evaluate(FETCHED) if not name.startswith((home, "data:"))] == []


def test_saving_a_lesson_leaves_it_as_it_was_handed_out(lesson):
    file = LESSONS / f"{LESSON}.ipynb"
    before = file.read_bytes()
    page = lesson.page
    try:
        page.evaluate("jupyterapp.commands.execute('docmanager:save')")
        page.wait_for_timeout(500)
        assert file.read_text("utf-8") == before.decode()
    finally:
        file.write_bytes(before)


def test_starting_afresh_asks_once_more_and_can_be_left_with_escape(lesson):
    page = lesson.page
    page.locator("[data-act=ask]").focus()
    page.keyboard.press("Enter")
    assert page.locator(".ck-sure").is_visible()
    assert page.evaluate("document.activeElement.dataset.act") == "keep"
    page.keyboard.press("Escape")
    assert not page.locator(".ck-sure").is_visible()
    assert page.evaluate("document.activeElement.dataset.act") == "ask"


def test_units_are_chosen_with_the_arrow_keys(lesson):
    chosen = lesson.page.locator(".ck-start input[name]:checked").first
    before = chosen.get_attribute("value")
    chosen.focus()
    lesson.page.keyboard.press("ArrowDown")
    lesson.wait_until_idle()
    assert lesson.page.locator(".ck-start input:checked").first.get_attribute("value") != before
    lesson.page.keyboard.press("ArrowUp")
    lesson.wait_until_idle()
    assert lesson.page.locator(".ck-start input:checked").first.get_attribute("value") == before


def test_the_mathematics_is_typeset_when_unfolded(lesson):
    page = lesson.page
    page.evaluate(
        "async source => { const app = jupyterapp; const book = app.shell.currentWidget.content;"
        " book.activeCellIndex = book.widgets.length - 1;"
        " await app.commands.execute('notebook:insert-cell-below');"
        " book.activeCell.model.sharedModel.setSource(source);"
        " await app.commands.execute('notebook:run-cell'); }",
        WHY,
    )
    page.locator(".ck-why summary").focus()
    page.keyboard.press("Enter")
    page.locator(".ck-why .ck-math mjx-container").nth(6).wait_for()
    lesson.screenshot("why")
    assert page.locator(".ck-why .ck-result", has_text="as shown above").count() == 4
    page.evaluate(
        "async () => { await jupyterapp.commands.execute('notebook:delete-cell');"
        " jupyterapp.shell.currentWidget.model.dirty = false; }"
    )


def test_a_lesson_opens_from_the_keyboard_in_the_same_calm_page(lesson):
    page = lesson.page
    link = page.locator(".ck-start a", has_text="Your own beam")
    address = link.get_attribute("href")
    assert address == "/doc/tree/lessons/10_sandbox.ipynb"
    link.focus()
    page.keyboard.press("Enter")
    page.wait_for_function(
        "jupyterapp.shell.currentWidget.context.path.endsWith('10_sandbox.ipynb')"
    )
    lesson.wait_until_run()
    assert page.url.endswith(address)
