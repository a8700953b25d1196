"""Answers of the sandbox on the real page: readable in its colours and in its width."""

import pytest

LESSON = "10_sandbox"
# Colour of the paper and drawn width of each picture that shows, the pictures being images.
_SHOWN = """() => [...document.querySelectorAll('.ck-still')].map(box =>
  [...box.querySelectorAll('img')].filter(one => one.offsetWidth).map(one => {
    const svg = atob(one.src.split('base64,')[1]);
    return {paper: svg.match(/<rect [^>]*fill="([^"]+)"/)[1],
            shrunk: one.offsetWidth / Number(svg.match(/^<svg width="([^"]+)"/)[1])};
  }))"""


@pytest.mark.parametrize(("theme", "paper"), [("Light", "#fbfaf6"), ("Dark", "#12171b")])
@pytest.mark.parametrize("width", [1280, 800])
def test_one_picture_shows_in_the_colours_of_the_page_and_at_its_size(lesson, theme, paper, width):
    page = lesson.page
    page.set_viewport_size({"width": width, "height": 1100})
    change = (
        "async theme => { await jupyterapp.commands.execute('apputils:change-theme', {theme}); }"
    )
    page.evaluate(change, f"JupyterLab {theme}")
    # two themes in quick succession, and JupyterLab takes its curtain away twice
    page.locator("#jupyterlab-splash").wait_for(state="detached")
    dark = "false" if theme == "Dark" else "true"
    page.wait_for_function("dark => document.body.dataset.jpThemeLight === dark", arg=dark)
    page.locator(".ck-still").first.scroll_into_view_if_needed()
    lesson.screenshot(f"answer_{theme}_{width}")
    shown = page.evaluate(_SHOWN)
    page.evaluate(change, "JupyterLab Light")
    page.locator("#jupyterlab-splash").wait_for(state="detached")
    assert len(shown) >= 5
    for pictures in shown:
        assert len(pictures) == 1
        assert pictures[0]["paper"] == paper
        assert pictures[0]["shrunk"] > 0.9
