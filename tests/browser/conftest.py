"""One JupyterLab, started as the workbook starts it, and one Chromium for all browser tests."""

import os
import re
import shutil
from pathlib import Path

import pytest

from crackkit.launch.places import LESSONS, PROJECT
from crackkit.launch.server import running_server
from crackkit.launch.testing import CHROMIUM_NAMES, chromium
from tests.browser.lesson_page import LessonPage
from tests.browser.panel_page import PanelPage

FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
PICTURES = PROJECT / "out" / "browser"


def pytest_collection_modifyitems(items):
    """Everything in this folder needs the page."""
    for item in items:
        if Path(__file__).parent in item.path.parents:
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def chromium_path() -> Path:
    """Give this computer's Chromium; without one, skip at home and fail in continuous testing."""
    if found := chromium():
        return found
    reason = (
        f"no Chromium on this computer (looked for {', '.join(CHROMIUM_NAMES)};"
        " CRACKKIT_CHROMIUM names another)"
    )
    (pytest.fail if os.environ.get("CI") == "true" else pytest.skip)(reason)


@pytest.fixture(scope="session")
def workbook_folder() -> Path:
    """Give the folder the page serves: the project itself."""
    return PROJECT


@pytest.fixture(scope="session")
def home(tmp_path_factory) -> Path:
    """Give a home of its own to what runs, with the learner's record in it."""
    return tmp_path_factory.mktemp("home")


@pytest.fixture(scope="session")
def server(chromium_path, workbook_folder, home):
    """Run JupyterLab under the project's own configuration, with a home of its own."""
    variables = {
        **{k: v for k, v in os.environ.items() if not k.startswith("JUPYTER")},
        "HOME": str(home),
        "USERPROFILE": str(home),
        "CRACKKIT_HOME": str(home / "crackkit"),
        "IPYTHONDIR": str(home / "ipython"),
    }
    # The tests ask the page itself whether its kernel is idle, and so need a handle on it.
    options = ["--LabApp.expose_app_in_browser=True"]
    # Parallel workers look for a free port in ranges of their own.
    worker = int(os.environ.get("PYTEST_XDIST_WORKER", "gw0").removeprefix("gw"))
    with running_server(18888 + 100 * worker, workbook_folder, variables, options) as started:
        yield started


@pytest.fixture(scope="session")
def browser_window(chromium_path, tmp_path_factory):
    """Open Chromium with a profile of its own."""
    playwright_api = pytest.importorskip("playwright.sync_api")
    with playwright_api.sync_playwright() as playwright:
        window = playwright.chromium.launch_persistent_context(
            tmp_path_factory.mktemp("profile"),
            executable_path=chromium_path,
            headless=True,
            args=FLAGS,
            viewport={"width": 1280, "height": 900},
        )
        yield window
        window.close()


@pytest.fixture
def lesson_page(server, browser_window, request):
    """Give a fresh page; afterwards fail on errors of its console or of a kernel callback."""
    page = LessonPage(browser_window.new_page(), server, PICTURES / _file_name(request.node.name))
    yield page
    troubles = page.close()
    assert not troubles, "errors on the page or in the kernel:\n" + "\n".join(troubles)


@pytest.fixture
def open_lesson(lesson_page):
    """Give a function that opens a lesson by its file name and waits until it lives."""

    def opened(name: str) -> LessonPage:
        return lesson_page.open(LESSONS / f"{name.removesuffix('.ipynb')}.ipynb")

    return opened


def _file_name(name: str) -> str:
    return re.sub(r"[^\w.-]+", "_", name)


@pytest.fixture(scope="module")
def opened(request, server, browser_window, home):
    """Open the lesson that a file names as LESSON once for all its tests: kernels start slowly.

    Units and colours that tests of another lesson left behind are forgotten: a scene is made in
    the units that are chosen when its lesson opens. What the running server keeps beside that
    record (signatures of notebooks, its settings) is left to it: without them it opens nothing.
    """
    _forget_the_learner(home / "crackkit")
    key = request.module.LESSON
    page = LessonPage(browser_window.new_page(), server, PICTURES / key)
    try:
        page.open(LESSONS / f"{key}.ipynb")
        yield page
    finally:  # a page left open would send the next one to another workspace
        page.close()


def _forget_the_learner(kept: Path) -> None:
    for one in kept.glob("*"):
        if one.name != "jupyter":
            shutil.rmtree(one) if one.is_dir() else one.unlink()


def heard(page: LessonPage):
    """Give an open page to one test; an error on the page or in the kernel fails that test."""
    yield page
    troubles, page.troubles = page.troubles, []
    assert not troubles, "errors on the page or in the kernel:\n" + "\n".join(troubles)


@pytest.fixture
def lesson(opened):
    """Give the open lesson; an error on the page or in the kernel fails the test."""
    opened.page.set_viewport_size({"width": 1280, "height": 900})
    yield from heard(opened)


@pytest.fixture
def panel(lesson):
    """Give the panel with the walk as it is at first, in SI units and the page's colours."""
    panel = PanelPage(lesson)
    panel.choose("units", "SI")
    panel.choose("theme", "auto")
    panel.act("reset")
    lesson.page.wait_for_timeout(300)  # the picture takes the width of the window
    lesson.wait_until_idle()
    return panel
