"""A floor typed in one line becomes the structure it says, and tells of every arrangement."""

import inspect

import numpy as np
import pytest

from crackkit.sandbox import ContinuousBeam, WrongInput
from crackkit.sandbox.floor_inputs import BY_NAME, MEANT
from crackkit.structures import fields

FLOOR = {
    "spans": "5 m, 6 m, 5 m",
    "depth": "200 mm",
    "bottom": "12 @ 150",
    "top": "12 @ 150",
    "top_reach": "1.6 m",
    "dead": "1.5 kN/m",
    "live": "5 kN/m",
}
BEAM = {"spans": "2 x 20 ft", "bottom": "3 #6", "top": "4 #6", "live": "0.8 kip/ft"}
TEE = BEAM | {"flange_width": "3 ft", "flange_depth": "5 in"}

# a start, the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    (FLOOR, "spans", "4 m, 5 m", "spans.1.length", 5000.0),
    (FLOOR, "spans", "4, 5, 4.5 m", "spans.0.length", 4000.0),
    (FLOOR, "spans", "3 x 16 ft", "spans.2.length", 4876.8),
    (FLOOR, "spans", ["4 m", "5 m"], "spans.0.length", 4000.0),
    (FLOOR, "ends", "fixed, pinned", "left_end", "fixed"),
    (FLOOR, "ends", "fixed, pinned", "right_end", "pinned"),
    (FLOOR, "ends", "fixed", "right_end", "fixed"),
    (FLOOR, "shape", "slab", "shape", "slab"),
    (FLOOR, "width", "1 ft", "width", 304.8),
    (FLOOR, "depth", "8 in", "depth", 203.2),
    (TEE, "flange_width", "4 ft", "flange_width", 1219.2),
    (TEE, "flange_width", "4 ft", "shape", "tee"),
    (TEE, "flange_depth", "4 in", "flange_depth", 101.6),
    (FLOOR, "dead", "2 kN/m", "dead_load", 2.0),
    (FLOOR, "live", "3 kN/m", "live_load", 3.0),
    (FLOOR, "travelling", "20 kN", "loads.0.force", 20000.0),
    (FLOOR, "travelling", "20 kN", "loads.0.at", 2500.0),
    (FLOOR, "travelling", "20 kN at 3 m", "loads.0.at", 3000.0),
    (FLOOR, "travelling", "20 kN at 3 m, 10 kN", "loads.1.force", 10000.0),
    (FLOOR, "travelling", ["20 kN at 3 m", "10 kN at 8 m"], "loads.1.at", 8000.0),
    (FLOOR, "live_on", "1, 3", "spans.1.live", False),
    (FLOOR, "live_on", "1,3", "spans.2.live", True),
    (FLOOR, "live_on", [2], "spans.0.live", False),
    (FLOOR, "live_on", "none", "spans.2.live", False),
    (FLOOR, "live_on", "all", "spans.0.live", True),
    (FLOOR, "own_weight", False, "self_weight", False),
    (FLOOR, "shifted", True, "shifted", True),
    (FLOOR, "settled", "B 10 mm", "supports.1.sunk", 10.0),
    (FLOOR, "settled", "B 10 mm, d 0.5 in", "supports.3.sunk", 12.7),
    (FLOOR, "bottom", "10 @ 200", "bottom.spacing", 200.0),
    (FLOOR, "bottom", "10 @ 200", "bottom.size", "10"),
    (FLOOR, "bottom", "12 @ 200, none, 12 @ 200", "spans.1.laid", False),
    (BEAM, "bottom", "3 #6, 2 #6", "spans.1.number", 2),
    (BEAM, "bottom", "3 #6, 2 #6", "shape", "beam"),
    (FLOOR, "top", "16 @ 200", "top.spacing", 200.0),
    (FLOOR, "top", "16 @ 200", "top.size", "16"),
    (FLOOR, "top", "none, 12 @ 200, 12 @ 200, none", "supports.0.laid", False),
    (BEAM, "top", "2 #6, 4 #6, 2 #6", "supports.1.number", 4),
    (FLOOR, "cover", "25 mm", "bottom.cover", 25.0),
    (FLOOR, "cover", "25 mm", "top.cover", 25.0),
    (FLOOR, "top_cover", "35 mm", "top.cover", 35.0),
    (FLOOR, "drop", "10 mm", "bottom.drop", 10.0),
    (FLOOR, "top_drop", "2 in", "top.drop", 50.8),
    (FLOOR, "top_reach", "1.5 m", "supports.1.left_reach", 1500.0),
    (FLOOR, "top_reach", "0.8, 1.5, 1.4, 0.8 m", "supports.2.right_reach", 1400.0),
    (FLOOR, "top_left_reach", "1.2 m", "supports.1.left_reach", 1200.0),
    (FLOOR, "top_right_reach", "1.2 m", "supports.1.right_reach", 1200.0),
    (FLOOR, "left_gap", "0.1 m", "spans.0.left_gap", 100.0),
    (FLOOR, "right_gap", "0.1 m, -0.3 m, 0 m", "spans.1.right_gap", -300.0),
    (FLOOR, "through", True, "through", True),
    (BEAM, "stirrups", "none", "stirrup", "none"),
    (FLOOR, "concrete", "4000 psi", "strength", 27.57903),
    (FLOOR, "steel", "60 ksi", "yield_strength", 413.6854),
    (FLOOR, "exposure", "sea", "exposure", "sea"),
    (FLOOR, "duration", "lasting", "duration", "lasting"),
    (FLOOR, "code", "ACI", "code", "ACI"),
]


@pytest.fixture(scope="module")
def floor():
    return ContinuousBeam(**FLOOR)


@pytest.mark.parametrize(("start", "name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(start, name, typed, path, expected):
    structure = ContinuousBeam(**(start | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-5) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(ContinuousBeam).parameters if n != "unknown"]
    assert set(signature) == set(BY_NAME) | {"system"}
    assert {name for _start, name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(ContinuousBeam)
    assert [name for name in signature if name not in words] == []


def _of_any(path):
    return ".".join("*" if part.isdigit() else part for part in path.split("."))


def test_every_input_of_the_structure_can_be_reached(floor):
    reached = {_of_any(path) for *_rest, path, _value in ARRIVES}
    assert {_of_any(item.path) for item in fields.inputs(floor.structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
@pytest.mark.parametrize("shape", ["slab", "beam", "tee"])
def test_nothing_else_typed_still_gives_a_floor(system, shape):
    floor = ContinuousBeam(system=system, shape=shape)
    assert floor.structure.shape == shape
    assert len(floor.structure.spans) == 3
    assert floor.outcome.verdict.key in ("uncracked", "tight")


def test_a_load_per_area_is_taken_for_the_width_of_the_strip_and_that_is_said():
    floor = ContinuousBeam(spans="2 x 5 m", width="0.5 m", dead="1 kN/m2", live="5 kPa")
    assert (floor.structure.dead_load, floor.structure.live_load) == pytest.approx((0.5, 2.5))
    assert len(floor.notes) == 2
    assert "500\u202fmm wide" in floor.notes[0]


def test_the_widest_crack_of_any_arrangement_is_told_with_its_loads(floor):
    found = floor.outcome.range
    said = floor.told[0].sentences[0]
    assert found.arrangement(found.widest.face, found.widest.at).words in said
    assert "support" in said


def test_with_the_loads_standing_at_their_worst_the_picture_shows_the_widest_crack(floor):
    worst = floor.worst
    widest = worst.outcome.widest
    assert (widest.face, widest.at) == (
        floor.outcome.range.widest.face,
        pytest.approx(floor.outcome.range.widest.at),
    )
    assert widest.width.governing == pytest.approx(
        floor.outcome.range.widest.width.governing, rel=1e-6
    )
    assert worst.outcome.verdict.width == pytest.approx(floor.outcome.verdict.width)


def test_what_stands_now_does_not_change_what_decides(floor):
    empty = floor.but(live_on="none")
    assert empty.told[0].sentences[0] == floor.told[0].sentences[0]
    assert empty.outcome.widest is None or (
        empty.outcome.widest.width.governing < floor.outcome.range.widest.width.governing
    )
    assert "no live load" in empty.told[0].sentences[1]


def test_each_stretch_without_a_guard_is_told_with_place_and_loads(floor):
    short = floor.but(top_reach="0.2 m", live="12 kN/m", bottom="16 @ 150")
    told = short.told[1].sentences
    gaps = short.outcome.range.gaps
    assert len(told) == len(gaps) > 0
    for gap, words in zip(gaps, told, strict=True):
        assert gap.arrangement.words in words
        assert words.startswith("Top" if gap.face == "top" else "Bottom")
        assert "from the left end" in words
    covered = ContinuousBeam(spans="2 x 3 m", live="1 kN/m")
    assert covered.told[1].sentences == (
        "None: bars guard every place that some arrangement of the loads cracks.",
    )


def test_moments_over_the_supports_stand_side_by_side(floor):
    told = floor.told[2]
    assert [row[0] for row in told.rows] == ["support B", "support C"]
    elastic = np.interp(5000.0, floor.outcome.range.x, floor.outcome.range.elastic)
    assert told.rows[0][1] == f"\u2212{abs(elastic) / 1e6:.1f}\u202fkN·m"
    fixed = floor.but(ends="fixed")
    assert len(fixed.told[2].rows) == 4


def test_the_movement_is_a_share_of_the_span_it_lies_in(floor):
    movement = floor.outcome.movement
    places = floor.structure.places
    k = int(np.searchsorted(places, movement.at)) - 1
    span = places[k + 1] - places[k]
    assert (
        f"1/{span / movement.largest:.0f} of the span" in dict(floor.answers)["How does it move?"]
    )


def test_the_weight_of_the_bars_is_told(floor):
    assert f"{floor.outcome.steel_mass:.1f}\u202fkg" in floor.answers[3][1]


@pytest.mark.parametrize(
    ("typed", "part"),
    [
        ({"spans": "5 m"}, "2 to 6"),
        ({"spans": "7 x 5 m"}, "2 to 6"),
        ({"spans": "5, 6"}, "has no unit"),
        ({"spans": "5 m, 11 m"}, "1.00 to 10.00 m"),
        ({"spans": ""}, "is empty"),
        ({"ends": "free"}, "pinned, fixed"),
        ({"ends": "fixed, fixed, fixed"}, "both ends"),
        ({"bottom": "3 #6", "shape": "slab"}, "12 @ 150"),
        ({"bottom": "12 @ 150", "flange_width": "1 m"}, "3 #6"),
        ({"bottom": "3 #6, 3 #5, 3 #6"}, "one size"),
        ({"bottom": "12 @ 150, 12 @ 200, 12 @ 200"}, "one spacing"),
        ({"bottom": "12 @ 150, none"}, "3, one for each, not 2"),
        ({"top": "12 @ 150, none, none"}, "4, one for each, not 3"),
        ({"top_reach": "1 m, 2 m"}, "4, one for each, not 2"),
        ({"top_reach": "6 m"}, "0.00 to 5.00 m"),
        ({"top_left_reach": "6 m"}, "0.00 to 5.00 m"),
        ({"left_gap": "3 m"}, "to 2.25 m"),
        ({"live_on": "1, 4"}, "spans 1 to 3"),
        ({"live_on": "first"}, "1, 3"),
        ({"settled": "10 mm"}, "B 10 mm"),
        ({"settled": "E 10 mm"}, "A to D"),
        ({"settled": "B 100 mm"}, "0.0 to 30.0 mm"),
        ({"settled": "B 10"}, "has no unit"),
        ({"travelling": "20"}, "has no unit"),
        ({"travelling": "20 kN at 30 m"}, "0.00 to 15.00 m"),
        ({"travelling": "1 kN, 2 kN, 3 kN"}, "1 to 2"),
        ({"live": "100 psf", "shape": "beam"}, "load per length"),
        ({"top": "none", "through": True}, "both faces"),
        ({"flange_depth": "200 mm", "depth": "300 mm", "bottom": "3 #6"}, "50 to 150 mm"),
    ],
)
def test_each_mistake_names_the_input_and_a_way_out(typed, part):
    with pytest.raises(WrongInput) as caught:
        ContinuousBeam(**typed)
    said = str(caught.value).replace("\u202f", " ")
    assert said.startswith(tuple(f"{name}=" for name in typed))
    assert part in said


@pytest.mark.parametrize(
    ("wrong", "meant"),
    [("span", "spans"), ("point_load", "travelling"), ("top_bars", "top"), ("setled", "settled")],
)
def test_a_misspelled_name_is_answered_with_the_near_ones(wrong, meant):
    with pytest.raises(WrongInput, match=f"Did you mean {meant}"):
        ContinuousBeam(**{wrong: "3 m"})
