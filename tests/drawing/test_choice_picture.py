"""The picture of a choice of bars: readable whatever the inputs, and true to what is worked out."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.choice_field import CLOSE, FAR, TIGHT, YIELDS, ChoiceField
from crackkit.drawing.choice_frames import choice_layout
from crackkit.drawing.choice_picture import before, description, picture, sheet
from crackkit.drawing.frames import View
from crackkit.drawing.labels import covered_grips, faults, text_boxes
from crackkit.drawing.shapes import Polygons, every_shape, handles
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.outcome import TIGHT as IS_TIGHT
from tests.structures.controls import crack_controls

WIDTHS = (560.0, 640.0, 779.0, 780.0, 840.0, 1000.0, 1200.0)
VIEWS = [View(system, width=width) for system in ("SI", "US") for width in WIDTHS]
BLANKS = [View(system, width=width) for system in ("SI", "US") for width in (460.0, 840.0, 1200.0)]
SLAB = CrackControl()
KNOWN = {
    "slab": SLAB,
    "pulled": CrackControl(action="pulled"),
    "one layer": CrackControl(action="pulled", rows="middle"),
    "fibres": CrackControl(fibres="steel_30", size="10", spacing=200.0),
    "beam": CrackControl(shape="beam", width=300.0, depth=500.0, size="20"),
    "one bar": CrackControl(shape="beam", number=1, width=200.0),
    "no room": CrackControl(shape="beam", number=12, size="32", width=150.0),
    "yields": CrackControl(given="load", moment=60e6, size="10", spacing=200.0),
    "too close": CrackControl(size="25", spacing=60.0, stones=40.0),
    "too far": CrackControl(spacing=350.0, depth=80.0, cover=10.0),
    "uncracked": CrackControl(given="load", moment=5e6),
    "no load": CrackControl(given="load", moment=0.0),
    "both ways": CrackControl(both_ways=True, spacing=180.0, stress=280.0),
    "thick": CrackControl(size="32", spacing=300.0, depth=600.0, cover=60.0, outer="across"),
    "little cover": CrackControl(cover=10.0, slack=5.0, air="inside", strength=20.0),
    "no bars across": CrackControl(cross_size="none"),
}


def complaints(drawn) -> list[str]:
    return faults(drawn) + covered_grips(drawn)


def words(drawn) -> list[str]:
    return [box.text for box in text_boxes(drawn)]


def roles(drawn) -> list[str]:
    return [getattr(shape, "role", "") for shape in every_shape(drawn.shapes)]


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    outcome = KNOWN[name].solve()
    found = {(view.system, view.width): complaints(picture(outcome, view)) for view in VIEWS}
    assert {key: faulty for key, faulty in found.items() if faulty} == {}


@settings(max_examples=120, deadline=None)
@given(crack_controls(), st.lists(st.sampled_from(VIEWS), min_size=2, max_size=2))
def test_words_keep_clear_for_any_choice(choice, views):
    outcome = choice.solve()
    for view in views:
        assert complaints(picture(outcome, view)) == []


@settings(max_examples=60, deadline=None)
@given(crack_controls(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(choice, view):
    assert complaints(before(choice, view)) == []
    assert complaints(sheet(choice, view)) == []


@settings(max_examples=80, deadline=None)
@given(crack_controls(), st.sampled_from([560.0, 780.0]))
def test_nothing_that_is_drawn_leaves_the_paper(choice, width):
    drawn = picture(choice.solve(), View(width=width))
    for shape in every_shape(drawn.shapes):
        for name in ("points", "outlines", "segments"):
            points = np.asarray(getattr(shape, name, np.zeros((0, 2)))).reshape(-1, 2)
            assert np.isfinite(points).all()
            assert (points >= 0.0).all()
            assert (points <= (drawn.width, drawn.height)).all()
