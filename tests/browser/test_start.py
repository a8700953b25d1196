"""What a learner meets on opening the workbook."""

import json
import urllib.request

import pytest

from crackkit.launch.places import LESSONS

FETCHED = "() => performance.getEntriesByType('resource').map(entry => entry.name)"
QUIET = {
    "notification": {"fetchNews": "false", "checkForUpdates": False},
    "kernels-settings": {"commsOverSubshells": "disabled"},
}


def test_the_first_lesson_starts_without_a_click_and_asks_nobody_else(open_lesson):
    lesson = open_lesson("00_start_here")
    lesson.screenshot("start")
    page = lesson.page
    assert page.locator(".jp-OutputArea-output").count() > 0
    assert page.locator(".jp-Dialog, .Toastify__toast").count() == 0
    assert page.evaluate("jupyterapp.shell.currentWidget.model.dirty") is False
    home = page.evaluate("location.origin")
    assert [name for name in page.evaluate(FETCHED) if not name.startswith((home, "data:"))] == []


def test_a_long_lesson_is_shown_from_its_beginning(open_lesson):
    lesson = open_lesson("10_sandbox")
    lesson.page.wait_for_timeout(1000)
    lesson.screenshot("top")
    heading = lesson.page.locator(".jp-RenderedMarkdown h1").first
    assert 0 < heading.bounding_box()["y"] < 200
    assert lesson.page.evaluate("jupyterapp.shell.currentWidget.content.activeCellIndex") == 0


def test_saving_a_lesson_leaves_it_as_it_was_handed_out(open_lesson):
    file = LESSONS / "00_start_here.ipynb"
    before = file.read_bytes()
    page = open_lesson(file.name).page
    try:
        page.evaluate("jupyterapp.commands.execute('docmanager:save')")
        page.wait_for_timeout(500)
        assert file.read_text("utf-8") == before.decode()
    finally:
        file.write_bytes(before)


@pytest.mark.parametrize("plugin", QUIET)
def test_the_page_is_quiet_without_any_setting_of_the_reader(server, plugin):
    address = f"http://127.0.0.1:{server.port}/lab/api/settings/@jupyterlab/apputils-extension"
    request = urllib.request.Request(
        f"{address}:{plugin}", headers={"Authorization": f"token {server.token}"}
    )
    with urllib.request.urlopen(request) as answer:
        properties = json.load(answer)["schema"]["properties"]
    assert {name: properties[name]["default"] for name in QUIET[plugin]} == QUIET[plugin]
