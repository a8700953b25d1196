"""The picture of a slab on the ground: readable whatever the inputs, true to what is worked out."""

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.age_words import age_words, day_words
from crackkit.drawing.frames import View
from crackkit.drawing.ground_base import base_name
from crackkit.drawing.ground_frames import ground_layout
from crackkit.drawing.ground_movement import drawn_larger, pieces
from crackkit.drawing.ground_picture import before, description, picture, sheet
from crackkit.drawing.labels import text_boxes
from crackkit.drawing.shapes import Circle, Polygons, Raster, every_shape, handles
from crackkit.drawing.strip_frames import along_strip
from crackkit.mechanics.base_friction import BASES
from crackkit.structures.ground_slab import GroundSlab
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
from tests.structures.ground_slabs import ground_slabs

WIDTHS = (560.0, 640.0, 779.0, 780.0, 840.0, 1000.0, 1200.0)
VIEWS = views(*WIDTHS)
HELD = GroundSlab(left=1.0, right=1.0)
KNOWN = {
    "free": GroundSlab(),
    "day 1": GroundSlab(age=1.0, base="sand"),
    "one wide crack": HELD,
    "jointed": replace(HELD, jointed=True),
    "bars": replace(HELD, steel="12", spacing=100.0, base="one_sheet"),
    "panels": replace(HELD, jointed=True, steel="10", base="two_sheets", middle=0.5),
    "long": replace(HELD, length=60000.0, middle=1.0, steel="16", spacing=75.0, age=3650.0),
    "bars on the ground": replace(HELD, steel="#4", place="ground", base="stabilised"),
    "dries and cools most": replace(
        HELD, strength=15.0, humidity=0.3, both_sides=True, cooling=30.0, model="ACI", age=2000.0
    ),
    "many joints": replace(HELD, length=60000.0, jointed=True, joint_every=2000.0, steel="8"),
}
OUTCOMES = {name: slab.solve() for name, slab in KNOWN.items()}


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    assert at_every_width(picture, OUTCOMES[name], VIEWS) == {}


@settings(max_examples=60, deadline=None)
@given(ground_slabs(), st.lists(st.sampled_from(VIEWS), min_size=3, max_size=3))
def test_words_keep_clear_for_any_slab(slab, some):
    outcome = slab.solve()
    for view in some:
        assert complaints(picture(outcome, view)) == []


@settings(max_examples=40, deadline=None)
@given(ground_slabs(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(slab, view):
    assert complaints(before(slab, view)) == []
    assert complaints(sheet(slab, view)) == []


@settings(max_examples=25, deadline=None)
@given(ground_slabs())
def test_nothing_that_is_drawn_leaves_the_paper(slab):
    assert off_the_paper(picture(slab.solve(), View(width=780.0))) == []


@settings(max_examples=15, deadline=None)
@given(ground_slabs(), st.sampled_from(VIEWS))
def test_no_word_of_the_verdict_is_lost(slab, view):
    outcome = slab.solve()
    assert left_out(outcome.verdict.why, picture(outcome, view)) == []


@pytest.mark.parametrize("name", KNOWN)
def test_the_pieces_lie_apart_by_the_cracks_and_their_ends_where_the_slab_ends(name):
    state = OUTCOMES[name].ground
    ends = pieces(OUTCOMES[name])
    gaps = (ends[1:, 0] + ends[1:, 1]) - (ends[:-1, 2] + ends[:-1, 3])
    widths = {crack.at: crack.width for crack in state.cracks}
    widths |= {joint.at: joint.opening for joint in state.joints if joint.at not in widths}
    assert gaps == pytest.approx([widths[at] for at in ends[1:, 0].tolist()], abs=1e-9)
    assert ends[0, 1] == state.slip[0] and ends[-1, 3] == state.slip[-1]


@pytest.mark.parametrize("name", ["bars", "many joints", "long"])
def test_gaps_do_not_eat_up_the_pieces(name):
    along = along_strip(ground_layout(View()).movement, KNOWN[name].length)
    factor, ends = drawn_larger(OUTCOMES[name], along), pieces(OUTCOMES[name])
    gaps = (ends[1:, 0] + ends[1:, 1]) - (ends[:-1, 2] + ends[:-1, 3])
    assert factor >= 1.0
    assert factor * gaps.max() <= 0.36 * np.median(ends[:, 2] - ends[:, 0])


@pytest.mark.parametrize("name", KNOWN)
def test_what_is_said_for_those_who_cannot_see_stands_in_the_picture_too(name):
    said, drawn = description(OUTCOMES[name], View()), picture(OUTCOMES[name], View())
    numbers = re.findall(r"[0-9.]+\u202f(?:‰|mm)", said)
    assert numbers
    written = " ".join(words(drawn))
    assert [number for number in numbers if number not in written] == []
    assert OUTCOMES[name].verdict.why in said


@pytest.mark.parametrize("name", [name for name in KNOWN if OUTCOMES[name].ground.complete])
def test_concrete_bears_no_more_than_its_strength_and_nothing_in_a_crack(name):
    state = OUTCOMES[name].ground
    felt = state.felt
    assert (felt <= 1.001 * state.strength).all()
    for crack in state.cracks:
        assert np.interp(crack.at, state.x, felt) == pytest.approx(0.0, abs=1e-6)


def test_a_crack_that_is_off_the_scale_is_said_to_be():
    said = "The widest is beyond the scale."
    assert said in " ".join(words(picture(OUTCOMES["one wide crack"], View(width=1000.0))))
    assert said not in " ".join(words(picture(OUTCOMES["bars"], View(width=1000.0))))


def test_a_slab_with_more_cracks_than_are_counted_says_so():
    assert not OUTCOMES["long"].ground.complete
    assert "more cracks than are drawn" in words(picture(OUTCOMES["long"], View(width=1000.0)))


def test_the_first_cracks_carry_the_day_of_their_birth():
    outcome = OUTCOMES["one wide crack"]
    day = day_words(outcome.ground.wild[0].birth)
    texts = words(picture(outcome, View(width=1000.0)))
    assert re.fullmatch(r"day \d+", day)
    assert texts.count(day) == 2  # over the crack, and over the timeline


@pytest.mark.parametrize("both_ways", [False, True])
def test_bars_that_run_along_are_not_said_to_hold_the_crack_along(both_ways):
    slab = replace(KNOWN["bars"], sides=1.0, width=18000.0, both_ways=both_ways)
    outcome = slab.solve()
    assert outcome.across.wild
    written = " ".join(words(picture(outcome, View(width=1000.0))))
    assert ("nothing holds the crack" in written) is not both_ways


def test_a_crack_of_the_first_day_is_not_dated_later():
    early = GroundSlab(
        length=6000.0, width=40000.0, sides=1.0, base="stabilised", steel="#4", spacing=300.0
    )
    outcome = replace(early, both_ways=True, cooling=20.0, age=2000.0).solve()
    assert min(outcome.across.births) < 1.0
    days = {day_words(birth) for birth in outcome.across.births + outcome.ground.births}
    written = [text for text in words(picture(outcome, View())) if text.startswith("day ")]
    assert written and set(written) <= days
    (told,) = (box for box in text_boxes(picture(outcome, View())) if box.text == "it tears")
    dots = [s for s in every_shape(picture(outcome, View()).shapes) if isinstance(s, Circle)]
    assert not [one for one in dots if told.left < one.x < told.right and one.y < told.bottom + 20]


def test_every_crack_is_drawn():
    outcome = OUTCOMES["bars"]
    shapes = every_shape(picture(outcome, View(width=1000.0)).shapes)
    gaps = [s for s in shapes if isinstance(s, Polygons) and s.role == "crack_gap"]
    section, plan = (len(shape.outlines) for shape in gaps)
    assert section == plan == len(outcome.ground.cracks)


def test_a_wider_crack_is_drawn_wider():
    def drawn(outcome) -> float:
        shapes = every_shape(picture(outcome, View(width=1000.0)).shapes)
        gaps = next(s for s in shapes if getattr(s, "role", "") == "crack_gap")
        half = gaps.outlines.shape[1] // 2
        return float((gaps.outlines[:, half:, 0][:, ::-1] - gaps.outlines[:, :half, 0]).mean())

    assert drawn(OUTCOMES["one wide crack"]) > 2.0 * drawn(OUTCOMES["bars"])


@pytest.mark.parametrize("name", KNOWN)
def test_the_timeline_reaches_one_on_the_day_of_each_crack_and_never_passes_it(name):
    state = OUTCOMES[name].ground
    ages, share = state.pull_in_time
    assert (np.diff(ages) >= 0).all() and share.max() <= 1.0
    births = {birth for _start, past in state.pieces for birth in past.cracks.age.tolist()}
    for birth in births:
        assert share[ages == birth].max() == 1.0


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_shown_of_what_is_worked_out(view):
    slab = KNOWN["bars"]
    drawn = before(slab, view)
    assert not any(isinstance(shape, Raster) for shape in every_shape(drawn.shapes))
    assert not {"crack_gap", "stretched_line", "hatch"} & set(roles(drawn))
    assert words(before(replace(slab, seed=7, scatter=0.2, age=3000.0), view)) == words(drawn)


def test_before_the_call_the_bars_joints_and_base_are_known():
    told = " ".join(words(before(KNOWN["panels"], View())))
    for part in ("two plastic sheets", "10 mm every 200\u202fmm", "a joint every 4.00\u202fm"):
        assert part in told


def test_a_slab_that_is_drawn_to_scale_has_nothing_said_of_its_height():
    slab = GroundSlab(length=3000.0, thickness=300.0, joint_every=2000.0)
    told = [" ".join(words(before(slab, View(width=width)))) for width in (632.0, 1100.0)]
    assert "height" not in told[0] and "height" in told[1]


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(KNOWN["jointed"], View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))
    assert not any(isinstance(shape, Raster) for shape in every_shape(drawn.shapes))


@pytest.mark.parametrize("base", [each.key for each in BASES])
def test_every_base_is_drawn_and_named(base):
    drawn = picture(GroundSlab(base=base).solve(), View(width=560.0))
    assert set(words(drawn)) & set(base_name(base))


def test_ages_are_told_as_people_tell_them():
    told = [age_words(days) for days in (1.0, 1.5, 55.2, 364.0, 365.0, 420.0, 730.0, 3650.0)]
    assert told == [
        *("1 day", "1.5 days", "55 days", "364 days"),
        *("1 year", "14 months", "2 years", "10 years"),
    ]
    assert [day_words(days) for days in (1.0, 46.8, 365.0, 500.0)] == [
        *("day 1", "day 47", "1 y", "1.4 y"),
    ]


def test_the_day_alone_can_be_dragged():
    view = View(width=1000.0)
    found = [handle.path for handle in handles(picture(OUTCOMES["bars"], view).shapes)]
    assert found == ["decades"]
    still = picture(OUTCOMES["bars"], replace(view, live=False))
    assert not list(handles(still.shapes))
