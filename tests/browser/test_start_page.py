"""The start page and a derivation in the real page: keys, links, mathematics."""

WHY = """
from crackkit.learning.simple_beam import canteen_beam
from crackkit.panels.why import Why
Why(canteen_beam().solve())
"""


def test_a_lesson_opens_from_the_keyboard_in_the_same_calm_page(open_lesson):
    lesson = open_lesson("00_start_here")
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


def test_starting_afresh_asks_once_more_and_can_be_left_with_escape(open_lesson):
    page = open_lesson("00_start_here").page
    page.locator("[data-act=ask]").focus()
    page.keyboard.press("Enter")
    assert page.locator(".ck-sure").is_visible()
    assert page.evaluate("document.activeElement.dataset.act") == "keep"
    page.keyboard.press("Escape")
    assert not page.locator(".ck-sure").is_visible()
    assert page.evaluate("document.activeElement.dataset.act") == "ask"


def test_units_are_chosen_with_the_arrow_keys(open_lesson):
    lesson = open_lesson("00_start_here")
    chosen = lesson.page.locator(".ck-start input[name]:checked").first
    before = chosen.get_attribute("value")
    chosen.focus()
    lesson.page.keyboard.press("ArrowDown")
    lesson.wait_until_idle()
    assert lesson.page.locator(".ck-start input:checked").first.get_attribute("value") != before
    lesson.page.keyboard.press("ArrowUp")
    lesson.wait_until_idle()


def test_the_mathematics_is_typeset_when_unfolded(open_lesson):
    lesson = open_lesson("00_start_here")
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
    page.evaluate("jupyterapp.shell.currentWidget.model.dirty = false")


def shown_by_the_page(page, name):
    """Go to a notebook as a link does, and wait until it is the one in view."""
    page.evaluate(
        "async path => { await jupyterapp.commands.execute('docmanager:open', { path }); }",
        f"lessons/{name}.ipynb",
    )
    page.wait_for_function(
        "name => jupyterapp.shell.currentWidget.context.path.includes(name)", arg=name
    )


def test_a_lesson_that_is_already_open_follows_a_choice_made_on_the_start_page(open_lesson):
    lesson = open_lesson("02_simple_beam")
    page = lesson.page
    before = page.locator(".ck-picture svg").first.text_content()
    shown_by_the_page(page, "00_start_here")
    lesson.wait_until_run()
    page.locator(".ck-start [data-act=units]:not(:checked)").check()
    lesson.wait_until_idle()
    shown_by_the_page(page, "02_simple_beam")
    page.wait_for_function(
        "before => document.querySelector('.ck-picture svg').textContent !== before", arg=before
    )
    lesson.wait_until_idle()
    lesson.screenshot("followed")
    assert page.locator("select[data-act=units]").first.input_value() == "US"
    page.locator("select[data-act=units]").first.select_option("SI")
    lesson.wait_until_idle()
