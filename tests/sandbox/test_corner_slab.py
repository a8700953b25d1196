"""A slab or wall with an inside corner, typed in one line: what is answered."""

import math

import numpy as np
import pytest
from hypothesis import given, settings

from crackkit.drawing.age_words import age_words
from crackkit.drawing.labels import faults
from crackkit.sandbox import (
    CornerSlab,
    GroundSlab,
    SimpleBeam,
    WrongInput,
    compare,
    corner_told,
    report,
    sweep,
)
from crackkit.sandbox.corner_inputs import FORM
from crackkit.structures.corner_bars import laid_bars, layout
from crackkit.units import shown
from tests.sandbox.printed import assert_shown_and_printed
from tests.structures.corner_slabs import corner_slabs

RAN = 2.0  # openings over G_F/f_t from which a crack counts as run


@pytest.fixture(scope="module")
def slab():
    """An L between its footings after a year: a crack has run from its corner."""
    return CornerSlab(length="7 m", width="6 m", cut="3.5 m x 3 m")


@pytest.fixture(scope="module")
def barred(slab):
    return slab.but(diagonals="4 x 16 mm at 30 mm")


def said(case, question: int) -> str:
    """The answer to one of the four questions, its thin spaces made plain."""
    return case.answers[question - 1][1].replace("\u202f", " ").replace("\u00a0", " ")


def test_the_answers_are_those_of_the_mechanics(slab):
    state, crack = slab.outcome.cornered, slab.outcome.cornered.crack
    assert shown(state.free, "strain", "SI") in slab.answers[0][1]
    moved = max(math.hypot(*way) for loop in state.moved for way in loop.tolist())
    assert f"more than {shown(moved, 'movement', 'SI')}" in slab.answers[0][1]
    assert "held to 12 %" in said(slab, 1)
    assert "3.50 m along, 3.00 m across" in said(slab, 2)
    assert f"{state.share:.2f} times" in said(slab, 2)
    length = math.dist(state.corner.at, state.corner.end)
    assert f"over the first {shown(length, 'size', 'SI')}" in slab.answers[1][1]
    assert said(slab, 3).startswith("From the corner at 3.50 m along, 3.00 m across, to ")
    assert f"gapes over {shown(crack.length, 'length', 'SI')}" in slab.answers[2][1]
    for width in (crack.band.governing, crack.band.low, crack.band.high):
        assert shown(width, "width", "SI") in slab.answers[3][1]
    assert "No bar crosses the crack" in said(slab, 4) and "0.30 mm" in said(slab, 4)


def test_the_end_of_the_crack_is_told_where_it_closes(barred):
    crack = barred.outcome.cornered.crack
    end = np.array([np.interp(crack.length, crack.along, p) for p in crack.points.T])
    x, y = (shown(float(each), "length", "SI") for each in end)
    assert f"to {x} along, {y} across" in barred.answers[2][1]
    assert np.hypot(*(end - crack.points[0])) == pytest.approx(crack.length, rel=0.02)


def test_where_no_crack_runs_none_is_told(slab):
    young = slab.but(age="14 d")
    assert said(young, 3) == "Nowhere."
    assert "There is no crack to hold" in said(young, 4)
    joint = slab.but(joint="joint")
    opened = shown(joint.outcome.cornered.crack.widest, "width", "SI")
    assert f"Nowhere but at the joint: it opens by {opened}." in joint.answers[2][1]


def test_a_crack_runs_from_twice_the_opening_at_which_concrete_lets_go(slab):
    for case in (slab, slab.but(age="60 d"), slab.but(fibres="steel_40")):
        state = case.outcome.cornered
        ran = state.crack.widest > RAN * state.toughness / state.strength
        assert said(case, 3).startswith("From the corner") == ran


def test_all_corners_of_a_hole_are_told():
    case = CornerSlab(hole="1.2 m", place="2 m, 2 m", holds="30 %")
    state = case.outcome.cornered
    assert len(state.corners) == 4
    sides = ["near left", "far left", "far right", "near right"]
    told = [f"{k} {sides[k - 1]} {corner.share:.2f}" for k, corner in enumerate(state.corners, 1)]
    assert [words in said(case, 2) for words in told] == [False, True, True, True]
    assert state.worst == 0 and "Most at the corner" in said(case, 2)


def test_the_corner_that_is_looked_at_is_told():
    case = CornerSlab(hole="1.2 m", place="1.5 m, 2.5 m", holds="30 %")
    state = case.outcome.cornered
    least = min(range(4), key=lambda k: state.corners[k].share)
    looked = case.but(look=least + 1)
    assert said(case, 2).startswith("Most at the corner")
    assert said(looked, 2).startswith("At the corner that is looked at")
    assert f"{state.corners[least].share:.2f} times" in said(looked, 2)


def test_bars_are_told_with_their_pull_their_weight_and_what_they_spare(slab, barred):
    state = barred.outcome.cornered
    laid = laid_bars(layout(barred.structure))
    metres = sum(math.dist(one.start, one.end) for one in laid) / 1000.0
    # four bars of 16 mm at one corner, 1.58 kg/m by EN 10080
    assert barred.outcome.steel_mass == pytest.approx(1.58 * metres, rel=0.005)
    assert f"The bars weigh {shown(barred.outcome.steel_mass, 'mass', 'SI')}" in said_raw(barred)
    assert shown(state.steel_stress, "stress", "SI") in said_raw(barred)
    bare = slab.outcome.cornered.crack.widest
    assert f"it would be {shown(bare, 'width', 'SI')} wide" in said_raw(barred)
    assert "it would be" not in said_raw(slab)


def said_raw(case) -> str:
    return case.answers[3][1]


def test_the_days_are_those_of_the_curve(barred):
    (table,) = barred.told
    state = barred.outcome.cornered
    assert [row[0] for row in table.rows] == [age_words(day) for day in state.days.tolist()]
    assert table.rows[-1][1] == shown(float(state.openings[-1]), "width", "SI")
    assert table.rows[-1][2] == shown(float(state.bare_openings[-1]), "width", "SI")


def test_slabs_are_compared_with_their_differences(slab, barred):
    rows = {r[0]: r[1:] for r in compare(slab, barred, slab.but(age="14 d")).rows}
    assert rows["diagonal bars"] == ("none", "4 x 16 mm at 30 mm", "none")
    assert rows["age"] == ("365 d", "365 d", "14 d")
    assert "\u2212" in rows["widest crack"][1]
    assert rows["widest crack"][2].startswith("0.00")
    assert "missing quarter" not in rows and "hole" not in rows


def test_it_stands_beside_other_kinds_with_a_dash_where_either_has_nothing(slab):
    rows = {r[0]: r[1:] for r in compare(slab, GroundSlab(), SimpleBeam()).rows}
    assert "—" not in rows["widest crack"]
    assert rows["the crack is long"][1:] == ("—",) * 2
    assert rows["pulled to this share of its strength"][1] != "—"


def test_bars_drawn_away_from_the_corner_run_as_a_distance(slab):
    ends = ("2 x 12 mm at 30 mm", "2 x 12 mm at 430 mm")
    found = sweep(slab, "diagonals", *ends, steps=3)
    assert found.course.x.tolist() == pytest.approx([30, 230, 430])
    alone = slab.but(diagonals="2 x 12 mm at 230 mm").outcome.cornered.crack.widest
    assert found.course.governing[1] == pytest.approx(alone, rel=1e-9)
    assert faults(found.picture()) == []


def test_bars_at_the_corner_are_counted_one_by_one(slab):
    found = sweep(slab, "diagonals", "1 x 16 mm at 30 mm", "4 x 16 mm at 30 mm")
    assert found.course.x.tolist() == [1, 2, 3, 4]
    assert (np.diff(found.course.governing) < 0.01).all()


def test_the_crack_opens_as_the_slab_grows_older(slab):
    found = sweep(slab, "age", "14 d", "3650 d", steps=3)
    assert found.course.governing[0] == 0.0
    assert (np.diff(found.course.governing) > 0).all()
    assert len(found.rows[0]) == len(corner_told.SWEPT) + 2


SWEPT = [
    ({}, "thickness", "140 mm", "200 mm"),
    ({}, "cut", "3 m x 2 m", "3 m x 3 m"),
    ({}, "rounding", "0 mm", "300 mm"),
    ({}, "holds", 0.1, "50 %"),
    ({}, "edges", "1 x 12 mm at 50 mm", "1 x 12 mm at 500 mm"),
    ({}, "bars", "10 @ 100", "10 @ 300"),
    ({"hole": "1.2 m"}, "place", "2 m, 2 m", "2 m, 3 m"),
    ({"f_R3": "2 MPa"}, "f_R1", "1 MPa", "3 MPa"),
    ({}, "cooling", "0 °C", "20 °C"),
]


@pytest.mark.parametrize(("typed", "name", "start", "end"), SWEPT)
def test_any_number_can_run(slab, typed, name, start, end):
    found = sweep(slab.but(**typed), name, start, end, steps=2)
    assert len(found.rows) == 2
    assert faults(found.picture()) == []


def test_what_means_nothing_does_not_run(slab):
    with pytest.raises(WrongInput, match="cover does not run: it means nothing"):
        sweep(slab, "cover", "30 mm", "50 mm", steps=2)
    with pytest.raises(WrongInput, match="different sizes"):
        sweep(slab, "diagonals", "2 x 10 mm at 30 mm", "2 x 12 mm at 30 mm")
    with pytest.raises(WrongInput, match="different sizes, or from nothing"):
        sweep(slab, "diagonals", "none", "2 x 12 mm at 30 mm")
    with pytest.raises(WrongInput, match="does not run from the middle"):
        sweep(slab, "place", "middle", "2 m, 2 m")


@settings(max_examples=6, deadline=None)
@given(corner_slabs())
def test_any_slab_is_answered(slab):
    for system in ("SI", "US"):
        case = eval(FORM.line(slab, system), {"CornerSlab": CornerSlab})
        assert all(answer for _question, answer in case.answers)
        assert "nan" not in " ".join(answer for _question, answer in case.answers)


def test_us_and_metric_texts_of_one_slab_give_one_answer():
    us = CornerSlab(length="22 ft", width="20 ft", cut="11 ft x 10 ft", diagonals="2 #4 at 2 in")
    si = CornerSlab(
        **{"length": "6.7056 m", "width": "6.096 m", "cut": "3.3528 m x 3.048 m"},
        **{"thickness": "152.4 mm", "diagonals": "2 #4 at 50.8 mm", "apart": "101.6 mm"},
        **{"long": "1.2192 m", "cover": "38.1 mm", "concrete": "27.579029 MPa"},
        **{"steel": "413.68544 MPa", "code": "ACI"},
    )
    assert (us.system, si.system) == ("US", "SI")
    share = us.outcome.cornered.share
    assert si.outcome.cornered.share == pytest.approx(share, rel=1e-5)


KNOWN = {
    "usual": {},
    "in feet": {"length": "22 ft", "cut": "11 ft x 10 ft", "diagonals": "2 #4 at 2 in"},
    "hole": {"hole": "1.2 m", "place": "2 m, 2 m", "holds": 0.4, "bars": "10 @ 150"},
    "column": {"column": "600 mm", "turn": "turned", "base": "gravel"},
    "door": {"door": "1 m x 2.1 m", "edges": "1 x 12 mm at 50 mm"},
    "tee": {"tee": "1.5 m x 1.8 m", "place": "2 m, 2 m", "look": 1},
    "joint": {"joint": "joint", "fibres": "steel_30"},
    "sawn": {"saw_length": "1.5 m", "rounding": "50 mm"},
}


@pytest.mark.parametrize("name", KNOWN)
def test_every_known_slab_is_shown_and_printed(name):
    assert_shown_and_printed(CornerSlab(**KNOWN[name]))


def test_the_report_is_written_as_page_and_as_paper(barred, tmp_path):
    files = report(barred, "Waiting room").save(tmp_path / "room")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "as it dries" in files[0].read_text("utf-8")
