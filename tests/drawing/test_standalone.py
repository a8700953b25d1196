"""An SVG of its own: sound, said in words, nothing to drag, nothing that breaks a page."""

from xml.etree import ElementTree

import pytest

from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Group, Hint, Picture, Text
from crackkit.drawing.standalone import image, standalone
from crackkit.structures.simple_beam import SimpleBeam


@pytest.fixture(scope="module")
def live():
    return beam_picture(SimpleBeam().solve(), View("SI", live=True))


def test_it_has_a_size_a_role_and_words(live):
    root = ElementTree.fromstring(standalone(live))
    assert (root.get("width"), root.get("height")) == (f"{live.width:g}", f"{live.height:g}")
    assert root.get("role") == "img"
    assert live.description in root.get("aria-label")
    assert root.find("{*}title").text == live.title


def test_nothing_in_it_can_be_dragged(live):
    text = standalone(live)
    assert "data-path" not in text
    assert "tabindex" not in text


def test_hints_for_a_pointer_stay_on_the_live_page():
    shapes = (Group((Hint(1.0, 1.0, 5.0, 5.0, "words"),)), Hint(1.0, 1.0, 5.0, 5.0, "words"))
    assert "data-hint" not in standalone(Picture(50.0, 20.0, shapes, "title"))


def test_it_brings_its_own_paper(live):
    assert "<rect" in standalone(live, "dark")


def test_nasty_words_are_escaped():
    words = "<b> & \"quotes\" 'single'"
    picture = Picture(50.0, 20.0, (Text(1, 10, words, "label"),), words, words)
    root = ElementTree.fromstring(standalone(picture))
    assert root.find("{*}text").text == words
    assert "<b>" not in image(picture)
    assert image(picture).count('"') % 2 == 0
