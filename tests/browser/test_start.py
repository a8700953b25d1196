"""What a learner meets on opening the workbook."""

import json
import urllib.request

import pytest

QUIET = {
    "notification": {"fetchNews": "false", "checkForUpdates": False},
    "kernels-settings": {"commsOverSubshells": "disabled"},
}


def test_a_long_lesson_is_shown_from_its_beginning(open_lesson):
    lesson = open_lesson("10_sandbox")
    lesson.page.wait_for_timeout(1000)
    lesson.screenshot("top")
    heading = lesson.page.locator(".jp-RenderedMarkdown h1").first
    assert 0 < heading.bounding_box()["y"] < 200
    assert lesson.page.evaluate("jupyterapp.shell.currentWidget.content.activeCellIndex") == 0


@pytest.mark.parametrize("plugin", QUIET)
def test_the_page_is_quiet_without_any_setting_of_the_reader(server, plugin):
    address = f"http://127.0.0.1:{server.port}/lab/api/settings/@jupyterlab/apputils-extension"
    request = urllib.request.Request(
        f"{address}:{plugin}", headers={"Authorization": f"token {server.token}"}
    )
    with urllib.request.urlopen(request) as answer:
        properties = json.load(answer)["schema"]["properties"]
    assert {name: properties[name]["default"] for name in QUIET[plugin]} == QUIET[plugin]


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
    other = page.locator(".ck-start [data-act=units]:not(:checked)")
    wanted = other.get_attribute("value")
    other.check()
    lesson.wait_until_idle()
    shown_by_the_page(page, "02_simple_beam")
    page.wait_for_function(
        "before => document.querySelector('.ck-picture svg').textContent !== before", arg=before
    )
    lesson.wait_until_idle()
    lesson.screenshot("followed")
    assert page.locator("select[data-act=units]").first.input_value() == wanted
