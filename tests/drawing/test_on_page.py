"""A still picture on a page: one composition in one theme shows, whatever the page lets through."""

import base64
import re
from html.parser import HTMLParser

import pytest

from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.on_page import ROOM, on_page
from crackkit.drawing.palette import THEMES
from crackkit.structures.simple_beam import SimpleBeam


@pytest.fixture(scope="module")
def pictures():
    outcome = SimpleBeam().solve()
    return [beam_picture(outcome, View("SI", name, live=False)) for name in ("wide", "narrow")]


class Boxes(HTMLParser):
    """Notes of each image its SVG, and whether a box around it is hidden."""

    def __init__(self):
        super().__init__()
        self.open, self.images = [], []

    def handle_starttag(self, tag, attrs):
        about = dict(attrs)
        if tag == "img":
            packed = about["src"].removeprefix("data:image/svg+xml;base64,")
            self.images.append((base64.b64decode(packed).decode(), any(self.open)))
        elif tag == "div":
            self.open.append(about.get("style") == "display:none")

    def handle_endtag(self, tag):
        if tag == "div":
            self.open.pop()


def images(html: str) -> list[tuple[str, bool]]:
    boxes = Boxes()
    boxes.feed(html)
    assert boxes.open == []
    return boxes.images


def width(svg: str) -> float:
    return float(re.search(r'^<svg width="([^"]+)"', svg)[1])


def paper(svg: str) -> str:
    return re.search(r'<rect [^>]*fill="([^"]+)"', svg)[1]


def test_where_no_style_is_let_through_the_wide_one_in_light_shows_alone(pictures):
    shown = [svg for svg, hidden in images(on_page(*pictures)) if not hidden]
    assert len(shown) == 1
    assert paper(shown[0]) == THEMES["light"].style("paper").fill
    assert width(shown[0]) == pictures[0].width


def test_each_composition_is_there_in_both_themes(pictures):
    seen = sorted((paper(svg), width(svg)) for svg, _hidden in images(on_page(*pictures)))
    papers = {THEMES[name].style("paper").fill for name in ("light", "dark")}
    assert seen == sorted((p, picture.width) for p in papers for picture in pictures)


def test_a_picture_with_one_composition_shows_at_every_width(pictures):
    html = on_page(pictures[0])
    assert [hidden for _svg, hidden in images(html)] == [False, True]
    assert 'class="ck-wide"' not in html


def test_a_wide_picture_is_never_shrunk_by_more_than_a_tenth(pictures):
    assert 0.9 * pictures[0].width <= ROOM
    assert pictures[1].width < ROOM
