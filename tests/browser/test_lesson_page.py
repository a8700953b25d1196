"""Notebooks of our own on the real page: what the fixtures must notice, and what links do."""

import nbformat
import pytest

from tests.browser.conftest import PICTURES

KERNEL = {"kernelspec": {"name": "python3", "display_name": "P"}}
LESSON = KERNEL | {"crackkit": {"autostart": True}}
BROKEN = """
import ipywidgets
slider = ipywidgets.IntSlider(value=2, max=9)
slider.observe(lambda change: 1 / (change.new - 3), "value")
slider
"""


@pytest.fixture
def written():
    """Give a function that writes a notebook where the server finds it.

    The notebooks stay: the page asks after those opened before, and would complain of a loss.
    """

    def write(name, *cells, metadata=LESSON):
        PICTURES.mkdir(parents=True, exist_ok=True)
        file = PICTURES / f"{name}.ipynb"
        nbformat.write(nbformat.v4.new_notebook(cells=list(cells), metadata=metadata), file)
        return file

    return write


def test_an_error_in_a_callback_is_heard(lesson_page, written):
    lesson_page.open(written("broken", nbformat.v4.new_code_cell(BROKEN)))
    lesson_page.page.locator(".noUi-handle").press("ArrowRight")
    lesson_page.wait_until_idle()
    assert [line for line in lesson_page.troubles if "ZeroDivisionError" in line]
    lesson_page.troubles.clear()


def test_an_error_on_the_console_is_heard(lesson_page, written):
    lesson_page.open(written("plain", nbformat.v4.new_code_cell("6 * 7")))
    lesson_page.page.evaluate("console.error('a picture went wrong')")
    assert [line for line in lesson_page.troubles if "a picture went wrong" in line]
    lesson_page.troubles.clear()


def test_a_link_leads_to_the_next_lesson_which_starts_by_itself(lesson_page, written):
    link = nbformat.v4.new_markdown_cell("[Onwards](second.ipynb)")
    first = written("first", link, nbformat.v4.new_code_cell("6 * 7"))
    written("second", nbformat.v4.new_code_cell("print('second', 6 * 7)"))
    page = lesson_page.open(first).page
    page.locator(".jp-RenderedMarkdown a:visible:has-text('Onwards')").click()
    page.wait_for_selector(".jp-OutputArea-output pre:visible:has-text('second 42')")
    assert page.url.endswith("/doc/tree/out/browser/second.ipynb")


def test_a_reader_s_own_notebook_is_not_run_unasked(lesson_page, written):
    own = written("own", nbformat.v4.new_code_cell("print(6 * 7)"), metadata=KERNEL)
    page = lesson_page.page
    page.goto(lesson_page.server.address(own))
    page.wait_for_selector(".jp-Notebook .jp-CodeCell")
    lesson_page.wait_until_idle()
    page.wait_for_timeout(1000)
    assert page.locator(".jp-OutputArea-output").count() == 0
