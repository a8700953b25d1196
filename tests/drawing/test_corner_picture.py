"""The picture of a slab with inside corners: readable whatever the inputs, true to its state."""

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.corner_picture import before, description, picture, sheet
from crackkit.drawing.corner_widths import corner_widths, widest_at
from crackkit.drawing.corner_words import bars_words, corner_names, joint_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import (
    Circle,
    Polygons,
    Raster,
    every_shape,
    handles,
)
from crackkit.drawing.svg import svg
from crackkit.structures import corner_slab
from crackkit.structures.corner_slab import CornerSlab
from crackkit.units import shown
from tests.drawing.corner_known import (
    FORMS,
    KNOWN,
    OPENING,
    OUTCOMES,
    PULLS,
    VIEWS,
    WIDE,
    plan_of,
    slabs,
)
from tests.drawing.corner_outcomes import HARD, outcome
from tests.drawing.looked_at import (
    BLANKS,
    at_every_width,
    blemishes,
    left_out,
    off_the_paper,
    roles,
    words,
)


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    assert at_every_width(picture, OUTCOMES[name], VIEWS) == {}


@pytest.mark.parametrize("name", KNOWN)
def test_every_shape_lies_on_the_paper(name):
    for view in (View(width=560.0), View("US", width=920.0), WIDE):
        assert off_the_paper(picture(OUTCOMES[name], view)) == []


@settings(max_examples=40, deadline=None)
@given(slabs(), PULLS, st.lists(st.sampled_from(VIEWS), min_size=3, max_size=3))
def test_words_keep_clear_and_shapes_on_the_paper_for_any_slab(slab, pull, some):
    found = outcome(slab, pull)
    for view in some:
        drawn = picture(found, view)
        assert blemishes(drawn) == []


@pytest.mark.parametrize("form_of", FORMS)
def test_a_slab_that_is_worked_out_is_drawn_and_no_word_of_its_verdict_is_lost(form_of):
    found = CornerSlab(shape=form_of, diagonals="12").solve()
    for view in (View("US", width=560.0), View(width=920.0), WIDE):
        drawn = picture(found, view)
        assert blemishes(drawn) == []
        assert left_out(found.verdict.why, drawn) == []


@settings(max_examples=40, deadline=None)
@given(slabs(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(slab, view):
    for drawn in (before(slab, view), sheet(slab, view)):
        assert blemishes(drawn) == []


@pytest.mark.parametrize("name", KNOWN)
def test_what_is_said_for_those_who_cannot_see_stands_in_the_picture_too(name):
    found = OUTCOMES[name]
    said, written = description(found, WIDE), " ".join(words(picture(found, WIDE)))
    assert found.verdict.why in said
    told = re.findall(r"([0-9.]+\u00a0×|crack: [0-9.]+\u202fmm|moves [0-9.]+\u202fmm)", said)
    assert len(told) >= 2
    assert [text for text in told if text not in written] == []


@pytest.mark.parametrize(
    ("name", "paths"),
    [
        ("corner", ["rounding", "decades"]),
        ("diagonals", ["rounding", "diagonal_off", "decades"]),
        ("opening", ["cut_x", "cut_y", "rounding", "diagonal_off", "decades"]),
        ("column", ["cut_x", "cut_y", "decades"]),
        ("door", ["cut_x", "decades"]),
    ],
)
def test_what_can_be_dragged(name, paths):
    drawn = picture(OUTCOMES[name], WIDE)
    assert [handle.path for handle in handles(drawn.shapes)] == paths
    still = picture(OUTCOMES[name], replace(WIDE, live=False))
    assert not list(handles(still.shapes))


def grip_at(found, path: str, view: View = WIDE) -> tuple:
    """Middle of the grip of an input, and its handle."""
    for shape in picture(found, view).shapes:
        handle = getattr(shape, "handle", None)
        if handle is not None and handle.path == path:
            (disc,) = (s for s in shape.shapes if isinstance(s, Circle))
            return np.array([disc.x, disc.y]), handle
    raise KeyError(path)


def test_the_opening_follows_the_finger_all_over_the_plan():
    found = OUTCOMES["opening"]
    here, along = grip_at(found, "cut_x")
    moved = replace(
        found.structure,
        cut_x=along.value + 30.0 * along.per_unit,
        cut_y=along.upright.value - 20.0 * along.upright.per_unit,
    )
    there, _handle = grip_at(outcome(moved, 2.5), "cut_x")
    assert there - here == pytest.approx((30.0, -20.0))
    # the key that goes up moves it up the paper
    up = along.upright.value - along.upright.step
    assert plan_of(found)((0.0, up))[1] < plan_of(found)((0.0, along.upright.value))[1]


@pytest.mark.parametrize(
    ("name", "path", "way"),
    [
        ("corner", "rounding", 12.0),
        ("opening", "rounding", 4.0),
        ("diagonals", "diagonal_off", -25.0),
        ("opening", "diagonal_off", 9.0),
        ("turned", "diagonal_off", 14.0),
    ],
)
def test_a_grip_follows_the_finger_along_its_way(name, path, way):
    found = OUTCOMES[name]
    here, handle = grip_at(found, path)
    turn = 1.0 if handle.per_unit > 0 else -1.0
    way = turn * abs(way)  # away from where it cannot go on
    moved = replace(found.structure, **{path: handle.value + way * handle.per_unit})
    there, _handle = grip_at(outcome(moved, KNOWN[name][1]), path)
    assert there[0] - here[0] == pytest.approx(way, abs=0.02)
    assert np.sign(handle.step) == turn


def test_a_crack_is_drawn_and_told_only_where_it_gapes():
    torn, whole = (picture(OUTCOMES[name], WIDE) for name in ("corner", "not yet"))
    assert "crack_gap" in roles(torn) and "crack_gap" not in roles(whole)
    assert "crack: " in " ".join(words(torn))
    assert "along this line it would crack" in " ".join(words(whole))


@pytest.mark.parametrize("at", [0, 7, -1])
def test_the_scatter_of_real_cracks_is_drawn_where_the_crack_is_widest(at):
    found = outcome(CornerSlab(diagonals="none"), 1.8)
    crack = found.cornered.crack
    opening = np.full_like(crack.opening, 0.5 * crack.widest)
    opening[at] = crack.widest
    crack = replace(crack, opening=opening)
    found = replace(found, cornered=replace(found.cornered, crack=crack))
    frame = Frame(0.0, 0.0, 300.0, 250.0)
    drawn = corner_widths(found, frame, View(live=False))
    (dot,) = (one for one in drawn if isinstance(one, Circle))
    line = next(
        one for one in drawn if getattr(one, "role", "") == "now_line" and len(one.points) > 2
    )
    highest = line.points[np.argmin(line.points[:, 1])]
    assert (dot.x, dot.y) == pytest.approx(tuple(highest), abs=0.01)


def test_where_a_saw_cut_leads_the_crack_its_width_does_not_count():
    crack = outcome(CornerSlab(diagonals="none"), 1.8).cornered.crack
    cut = float(crack.along[len(crack.along) // 2])
    assert widest_at(replace(crack, saw=0.0)) < cut < widest_at(replace(crack, saw=cut))


def test_a_joint_that_opens_is_no_crack():
    said = " ".join(words(picture(OUTCOMES["joint"], WIDE)))
    assert "the joint opens by" in said
    assert "crack: " not in said


def test_corners_are_named_by_where_they_are():
    named = {
        name: set(corner_names(OUTCOMES[name].cornered.corners, name == "door"))
        for name in ("corner", "opening", "slit", "turned", "door", "depot")
    }
    four = {"near left", "near right", "far left", "far right"}
    assert {name[2:] for name in named["opening"]} == four
    assert {name[2:] for name in named["slit"]} == four
    assert {name[2:] for name in named["turned"]} == {"left", "right", "near", "far"}
    assert {name[2:] for name in named["door"]} == {"left", "right"}
    assert {name[:2] for name in named["depot"]} == {f"{k + 1} " for k in range(6)}
    assert named["corner"] == {"inside corner"}


def test_stresses_are_told_for_the_bars_that_are_seen_across_the_crack():
    found = OUTCOMES["diagonals"]
    said = words(picture(found, WIDE))
    crossed = [one for one in found.cornered.bars if one.crosses]
    told = [text for text in said if text.startswith("diagonal: ")]
    assert len(told) == len(crossed) == 2
    for one in crossed:
        assert f"diagonal: {shown(one.stress, 'stress', 'SI')}" in " ".join(told)
    assert any(0.0 < one.stress < HARD for one in crossed)


def test_bars_that_slip_or_yield_are_told():
    found = OUTCOMES["diagonals"]
    bars = tuple(replace(one, fault=fault) for one, fault in
                 zip(found.cornered.bars, ("slips", "yields"), strict=True))  # fmt: skip
    drawn = picture(replace(found, cornered=replace(found.cornered, bars=bars)), WIDE)
    said = " ".join(words(drawn))
    assert ", it slips" in said and ", it yields" in said
    assert "bar_slack" in roles(drawn)
    assert "bar_slack" not in roles(picture(OUTCOMES["far bars"], WIDE))


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("corner", "no bar crosses the crack"),
        ("not yet", "no bar lies across the line"),
        ("joint", "no bar crosses the joint"),
    ],
)
def test_it_is_said_why_no_stress_stands_there(name, said):
    assert said in " ".join(words(picture(OUTCOMES[name], WIDE)))


@pytest.mark.parametrize("width", [560.0, 1200.0])
def test_what_lies_there_is_said_in_whole_or_not_at_all(width):
    slab = replace(KNOWN["every bar"][0], fibres="tested", joint="saw", thickness=300.0)
    view = View(width=width)
    told, drawn = bars_words(slab, view), words(picture(outcome(slab, 2.0), view))
    first = next(k for k, text in enumerate(drawn) if text.startswith(told[0][:20]))
    last = next(k for k, text in enumerate(drawn) if text.startswith("bare concrete would"))
    assert last - first <= 2
    said = " ".join(drawn[first:last]).split("; ")
    assert told[0] in said
    assert set(said) <= {*told, joint_words(slab, view)}


def test_what_bars_do_is_said_in_numbers():
    crack = OUTCOMES["diagonals"].cornered.crack
    said = " ".join(words(picture(OUTCOMES["diagonals"], WIDE)))
    less = round(100 * (1 - crack.opening.max() / crack.bare.max()))
    assert less == 28  # two bars, each of which takes 15 % off in the made-up state
    assert f"{less}\u00a0% less" in said
    alone = " ".join(words(picture(OUTCOMES["corner"], WIDE)))
    assert "wide: no bar crosses it" in alone


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_worked_out_and_nothing_shown_of_it(view, monkeypatch):
    def refuse(_it):
        raise AssertionError("the answer was worked out")

    monkeypatch.setattr(corner_slab, "cornered", refuse)
    for name in ("every bar", "door", "turned"):
        drawn = before(KNOWN[name][0], view)
        assert not any(isinstance(s, Raster | Polygons) for s in every_shape(drawn.shapes))
        assert not {"crack_gap", "neutral", "hatch", "now_line"} & set(roles(drawn))


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(OPENING, View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))


@pytest.mark.parametrize("theme", ["light", "dark", "projector", "print"])
def test_every_role_has_a_look_in_every_theme(theme):
    assert svg(picture(OUTCOMES["every bar"], WIDE), theme).endswith("</svg>")


@pytest.mark.parametrize("name", KNOWN)
@pytest.mark.parametrize("width", [560.0, 920.0])
def test_curves_that_are_not_worked_out_yet_stand_as_they_were(name, width):
    found, earlier = OUTCOMES[name], OUTCOMES["corner"]
    whole = picture(found, View(width=width))
    half = picture(found, View(width=width, before=earlier))
    assert roles(half).count("outdated") == 2 and "outdated" not in roles(whole)
    assert "being worked out …" in words(half) and "being worked out …" not in words(whole)
    assert blemishes(half) == [] and off_the_paper(half) == []
