"""The picture of a pulled member: readable whatever the inputs, and true to what is worked out."""

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.frames import View
from crackkit.drawing.movement_band import exaggeration, factor_notes
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_frames import pulled_layout
from crackkit.drawing.pulled_movement import moved
from crackkit.drawing.pulled_picture import before, description, picture, sheet
from crackkit.drawing.shapes import Circle, Polygons, Raster, every_shape, handles
from crackkit.drawing.strip_frames import along_strip
from crackkit.structures.tension_member import TensionMember
from tests.drawing.looked_at import (
    BLANKS,
    at_every_width,
    complaints,
    left_out,
    off_the_paper,
    roles,
    views,
    words,
)
from tests.structures.tension_members import KNOWN, tension_members

WIDTHS = (560.0, 640.0, 779.0, 780.0, 840.0, 1000.0, 1200.0)
VIEWS = views(*WIDTHS)
PARTED = [name for name in KNOWN if KNOWN[name].solve().pulled.ended == "parted"]


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    outcome = KNOWN[name].solve()
    assert at_every_width(picture, outcome, VIEWS) == {}


@settings(max_examples=120, deadline=None)
@given(tension_members(), st.lists(st.sampled_from(VIEWS), min_size=2, max_size=2))
def test_words_keep_clear_for_any_member(member, some):
    outcome = member.solve()
    for view in some:
        assert complaints(picture(outcome, view)) == []


@settings(max_examples=60, deadline=None)
@given(tension_members(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(member, view):
    assert complaints(before(member, view)) == []
    assert complaints(sheet(member, view)) == []


@settings(max_examples=60, deadline=None)
@given(tension_members())
def test_nothing_that_is_drawn_leaves_the_paper(member):
    assert off_the_paper(picture(member.solve(), View(width=780.0))) == []


@settings(max_examples=60, deadline=None)
@given(tension_members(), st.sampled_from(VIEWS))
def test_no_word_of_the_verdict_is_lost(member, view):
    outcome = member.solve()
    assert left_out(outcome.verdict.why, picture(outcome, view)) == []


@pytest.mark.parametrize("name", KNOWN)
def test_what_is_said_for_those_who_cannot_see_stands_in_the_picture_too(name):
    outcome = KNOWN[name].solve()
    said, written = description(outcome, View()), words(picture(outcome, View()))
    numbers = re.findall(r"[0-9.]+\u202f(?:kN|mm)", said)
    assert numbers
    assert [told for told in numbers if not any(told in text for text in written)] == []


def test_an_even_member_is_drawn_even():
    """Concrete that is alike from end to end cracks alike on both sides of its middle."""
    outcome = TensionMember(scatter=0.0, pull=110e3).solve()
    drawn = picture(outcome, View(width=1000.0))
    badges = [s.x for s in every_shape(drawn.shapes) if getattr(s, "role", "") == "badge"]
    places = np.array(sorted(badges[2:-2]))  # without those of the questions
    assert places.size == len(outcome.cracks) > 2
    assert places + places[::-1] == pytest.approx(places[0] + places[-1])


@pytest.mark.parametrize("name", KNOWN)
def test_the_same_in_words_says_how_many_cracks_there_are(name):
    outcome = KNOWN[name].solve()
    said = description(outcome, View())
    count = len(outcome.cracks)
    expected = {0: "It has no crack.", 1: "crack"}.get(count, f"{count} cracks")
    if name in PARTED:
        expected = "it has parted in two"
    assert expected in said
    assert outcome.verdict.why in said


def test_every_crack_is_drawn_and_carries_its_number_of_birth():
    outcome = KNOWN["many cracks"].solve()
    drawn = picture(outcome, View(width=1000.0))
    gaps = [
        s for s in every_shape(drawn.shapes) if isinstance(s, Polygons) and s.role != "concrete"
    ]
    assert [len(shape.outlines) for shape in gaps] == [len(outcome.cracks)]
    badges = [s for s in every_shape(drawn.shapes) if isinstance(s, Circle) and s.role == "badge"]
    assert len(badges) == len(outcome.cracks) + 4  # and the four questions
    assert {str(n) for n in outcome.pulled.order} <= set(words(drawn))


def test_a_wider_crack_is_drawn_wider():
    """Of one member the widest crack is drawn widest, up to the cap of all pictures."""
    outcome = TensionMember(surface="plain", pull=90e3).solve()
    drawn = picture(outcome, View(width=1000.0))
    gaps = next(s for s in every_shape(drawn.shapes) if getattr(s, "role", "") == "crack_gap")
    half = gaps.outlines.shape[1] // 2
    across = (gaps.outlines[:, half:, 0][:, ::-1] - gaps.outlines[:, :half, 0]).mean(axis=1)
    assert across.argmax() == outcome.pulled.now.widths.argmax()


@pytest.mark.parametrize("name", PARTED)
def test_of_a_member_that_parted_nothing_is_drawn_as_if_it_were_held(name):
    outcome = replace(KNOWN[name], beside=False).solve()
    drawn = picture(outcome, View(width=1000.0))
    assert not any(isinstance(shape, Raster) for shape in every_shape(drawn.shapes))
    assert not {"crack_gap", "hatch", "hatch_dense", "band", "stretched_area"} & set(roles(drawn))
    assert any("it is over" in text for text in words(drawn))


def test_the_pull_is_dragged_at_its_right_arrow_within_its_range():
    member = TensionMember(pull=60e3)
    found = list(handles(picture(member.solve(), View(width=1000.0)).shapes))
    assert [handle.path for handle in found] == ["pull"]
    handle = found[0]
    assert (handle.axis, handle.value, handle.low) == ("x", 60e3, 0.0)
    assert handle.high == pytest.approx(member.bars_area * member.yield_strength)
    assert handle.per_unit > 0 and handle.step > 0


def test_a_still_picture_has_nothing_to_drag():
    assert not list(handles(picture(KNOWN["no pull"].solve(), View(live=False)).shapes))


def test_the_pull_can_be_taken_hold_of_where_there_is_none():
    found = list(handles(picture(KNOWN["no pull"].solve(), View(width=1000.0)).shapes))
    assert [handle.value for handle in found] == [0.0]


def test_every_member_beside_it_has_its_row():
    outcome = KNOWN["ten side by side"].solve()
    texts = words(picture(outcome, View(width=1000.0)))
    assert sum(text.startswith("number ") for text in texts) == 9
    alone = replace(KNOWN["ten side by side"], beside=False).solve()
    assert not any(text.startswith("number ") for text in words(picture(alone, View())))


def test_a_member_beside_it_parts_at_the_pull_that_tears_it_alone():
    member = KNOWN["ten without bars"]
    rows = [replace(member, beside=False, seed=member.seed + k).solve() for k in range(10)]
    parted = sum(row.pulled.ended == "parted" for row in rows)
    texts = words(picture(member.solve(), View(width=1000.0)))
    # once more in the diagram of the member itself
    assert texts.count("parted") == parted + 1
    assert texts.count("no crack") == 10 - parted


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_shown_of_what_is_worked_out(view):
    member = TensionMember(pull=110e3)
    drawn = before(member, view)
    assert not any(isinstance(shape, Raster | Polygons) for shape in every_shape(drawn.shapes))
    assert roles(drawn).count("bar") == 2 and roles(drawn).count("bar_dot") == 4
    weaker = replace(member, strength=20.0, seed=7, scatter=0.2)
    assert words(before(weaker, view)) == words(drawn)


def test_before_the_call_the_bars_are_known():
    assert "4 × 12 mm" in words(before(TensionMember(), View()))
    assert "no bars" in words(before(KNOWN["no bars"], View()))


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(TensionMember(pull=110e3), View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))
    assert not any(isinstance(shape, Raster | Polygons) for shape in every_shape(drawn.shapes))


@pytest.mark.parametrize("name", ["many cracks", "shrunk", "gripped"])
def test_the_pieces_lie_apart_by_the_cracks_and_end_where_the_member_ends(name):
    """Lengths on the drawing add up to what mechanics says of the whole."""
    outcome = KNOWN[name].solve()
    along = along_strip(pulled_layout(View()).movement, outcome.structure.length)
    factor = exaggeration(outcome.movement, along)
    shape = moved(outcome, PulledBody(outcome.structure, along, 0.0, 30.0), factor)
    gaps = shape.pieces[1:, 0, 0] - shape.pieces[:-1, 1, 0]
    assert gaps == pytest.approx(factor * along.scale * outcome.pulled.now.widths)
    longer = (shape.right - shape.left) - (along.right - along.left)
    assert longer == pytest.approx(factor * along.scale * outcome.movement.largest)
    behind = shape.pieces[0, 0, 0] - shape.left
    assert behind == pytest.approx(-factor * along.scale * outcome.pulled.now.slip[0])


def test_a_large_factor_is_written_in_full():
    notes = [words for factor in (1000.0, 2500.0) for words in factor_notes(factor)]
    assert [words for words in notes if "e+" in words] == []
    assert "movement drawn 2500 times larger" in notes


GOLDEN = {
    "first crack": ["52.2\u202fkN", "next crack here, at 65.5\u202fkN", "tight"],
    "no bars, parted": ["nothing holds it", "it parts here: not to scale", "parted"],
    "yield": ["bars give way", "500\u202fMPa in the cracks"],
    "let go": ["squeezed", "pull here"],
}


@pytest.mark.parametrize("name", GOLDEN)
def test_a_few_pictures_say_what_they_always_said(name):
    texts = words(picture(KNOWN[name].solve(), View(width=1000.0)))
    assert [told for told in GOLDEN[name] if told not in texts] == []
