"""A beam typed in one line becomes the structure it says, in either system of units."""

import inspect

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.sandbox import SimpleBeam
from crackkit.sandbox.beam_inputs import ARGUMENTS
from crackkit.structures import fields
from crackkit.structures.laid_bars import LaidBars

US = {
    "span": "20 ft",
    "width": "12 in",
    "depth": "20 in",
    "bars": "3 #6",
    "cover": "1.5 in",
    "dead": "0.9 kip/ft",
    "point_load": "10 kip at 8 ft",
    "concrete": "4000 psi",
    "steel": "60 ksi",
}
# The same beam; 1 in = 25.4 mm, 1 kip = 4448.2216 N.
SI = {
    "span": "6.096 m",
    "width": "304.8 mm",
    "depth": "508 mm",
    "bars": "3 #6",
    "cover": "38.1 mm",
    "dead": "13.134512 kN/m",
    "point_load": "44.482216 kN at 2.4384 m",
    "concrete": "27.579029 MPa",
    "steel": "413.68544 MPa",
}


@pytest.fixture(scope="module")
def beam():
    return SimpleBeam(**US)


def test_the_beam_is_the_one_that_was_typed(beam):
    s = beam.structure
    assert (s.span, s.width, s.depth) == pytest.approx((6096.0, 304.8, 508.0))
    assert (s.bottom.size, s.bottom.number, s.bottom.cover) == ("#6", 3, pytest.approx(38.1))
    assert s.uniform_load == pytest.approx(0.9 * 4448.2216 / 304.8)
    assert [(p.force, p.at) for p in s.loads] == [(pytest.approx(44482.216), pytest.approx(2438.4))]
    assert (s.strength, s.yield_strength) == pytest.approx((27.579, 413.685), rel=1e-4)


def test_us_and_metric_texts_of_one_beam_give_one_answer(beam):
    other = SimpleBeam(**SI, code="ACI", stirrups="#3", left_gap="2 in", right_gap="2 in")
    assert other.outcome.widest.width.governing == pytest.approx(
        beam.outcome.widest.width.governing, rel=1e-6
    )
    assert other.outcome.movement.largest == pytest.approx(beam.outcome.movement.largest, rel=1e-6)
    assert other.outcome.verdict.key == beam.outcome.verdict.key


def test_answers_are_in_the_units_that_were_typed(beam):
    assert beam.system == "US"
    assert " in" in _spaced(repr(beam))
    assert SimpleBeam(span="6 m").system == "SI"
    assert " mm" in _spaced(repr(SimpleBeam(span="6 m", dead="20 kN/m")))
    assert SimpleBeam(**US, system="SI").system == "SI"


def _spaced(text):
    return text.replace("\u202f", " ")


def test_the_code_goes_with_the_units_that_were_typed():
    assert SimpleBeam(**US).structure.code == "ACI"
    assert SimpleBeam(span="6 m").structure.code == "EN"
    assert SimpleBeam(**US, system="SI").structure.code == "ACI"
    assert SimpleBeam(**US, code="EN").structure.code == "EN"
    assert SimpleBeam(span="6 m", code="ACI 318-19").structure.code == "ACI"


# each keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    ("span", "18 ft", "span", 5486.4),
    ("width", "14 in", "width", 355.6),
    ("depth", "24 in", "depth", 609.6),
    ("bars", "4 #7", "bottom.number", 4),
    ("bars", "4 #7", "bottom.size", "#7"),
    ("bars", "4 x 16 mm", "bottom.size", "16"),
    ("bars", "none", "bottom.number", 0),
    ("top_bars", "2 #4", "top.number", 2),
    ("top_bars", "2 #4", "top.size", "#4"),
    ("cover", "2 in", "bottom.cover", 50.8),
    ("cover", "2 in", "top.cover", 50.8),
    ("top_cover", "2 in", "top.cover", 50.8),
    ("drop", "1 in", "bottom.drop", 25.4),
    ("top_drop", "3 in", "top.drop", 76.2),
    ("left_gap", "1 ft", "bottom.left_gap", 304.8),
    ("right_gap", "1 ft", "bottom.right_gap", 304.8),
    ("top_left_gap", "1 ft", "top.left_gap", 304.8),
    ("top_right_gap", "1 ft", "top.right_gap", 304.8),
    ("stirrups", "#4", "stirrup", "#4"),
    ("stirrups", "10 mm", "stirrup", "10"),
    ("stirrups", None, "stirrup", "#3"),
    ("stirrups", "none", "stirrup", "none"),
    ("concrete", "5 ksi", "strength", 34.4738),
    ("steel", "80 ksi", "yield_strength", 551.581),
    ("dead", "900 plf", "uniform_load", 13.13451),
    ("point_load", "5 kip at 10 ft", "loads.0.at", 3048.0),
    ("point_load", ["5 kip at 10 ft", "2 kip at 4 ft"], "loads.1.at", 1219.2),
    ("point_load", "5 kip at 10 ft, 2 kip at 4 ft", "loads.1.force", 8896.44),
    ("point_load", "none", "loads.0.force", 0.0),
    ("own_weight", False, "self_weight", False),
    ("own_weight", "off", "self_weight", False),
    ("overhang_left", "4 ft", "overhang_left", 1219.2),
    ("overhang_right", "4 ft", "overhang_right", 1219.2),
    ("exposure", "leak tight", "exposure", "leak_tight"),
    ("exposure", "sea", "exposure", "sea"),
    ("duration", "lasting", "duration", "lasting"),
    ("code", "EN", "code", "EN"),
]


@pytest.mark.parametrize(("name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, typed, path, expected):
    structure = SimpleBeam(**(US | {name: typed})).structure
    value = {item.path: item.value for item in fields.inputs(structure)}[path]
    assert value == (pytest.approx(expected, rel=1e-5) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(SimpleBeam).parameters if n != "unknown"]
    assert set(signature) == {a.name for a in ARGUMENTS} | {"system"}
    assert {name for name, *_rest in ARRIVES} == {a.name for a in ARGUMENTS}
    words = inspect.getdoc(SimpleBeam)
    assert [name for name in signature if name not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path.replace("loads.1", "loads.0") for _name, _typed, path, _value in ARRIVES}
    known = {item.path for item in fields.inputs(SimpleBeam(**US).structure)}
    assert known == reached


def test_nothing_typed_still_gives_a_beam_under_its_own_weight():
    beam = SimpleBeam()
    assert beam.system == "SI"
    assert beam.structure.uniform_load == 0.0
    assert [load.force for load in beam.structure.loads] == [0.0]
    assert beam.structure.line_load > 0.0


def test_what_was_not_typed_is_marked(beam):
    said = {name: value for name, _label, value in beam.inputs}
    assert said["span"] == "20 ft"
    assert said["stirrups"] == "#3 (assumed)"


def test_but_changes_one_thing_and_keeps_the_rest(beam):
    other = beam.but(cover="50 mm")
    assert other.structure.bottom == LaidBars(**(vars(beam.structure.bottom) | {"cover": 50.0}))
    assert (other.system, other.structure.code) == ("US", "ACI")
    assert other.structure.loads == beam.structure.loads


@given(
    span=st.floats(2.5, 11.5),
    depth=st.integers(300, 900),
    width=st.integers(250, 600),
    load=st.floats(0.0, 60.0),
    strength=st.floats(16.0, 59.0),
)
@settings(max_examples=60, deadline=None)
def test_texts_in_either_system_give_the_same_structure(span, depth, width, load, strength):
    metric = SimpleBeam(
        span=f"{span:.6f} m",
        depth=f"{depth} mm",
        width=f"{width} mm",
        dead=f"{load:.6f} kN/m",
        concrete=f"{strength:.6f} MPa",
    ).structure
    us = SimpleBeam(
        span=f"{span / 0.3048:.8f} ft",
        depth=f"{depth / 25.4:.8f} in",
        width=f"{width / 25.4:.8f} in",
        dead=f"{load * 304.8 / 4448.2216152605:.8f} kip/ft",
        concrete=f"{strength / 0.006894757293168361:.6f} psi",
    ).structure
    for name in ("span", "depth", "width", "uniform_load", "strength"):
        assert getattr(us, name) == pytest.approx(getattr(metric, name), rel=1e-5, abs=1e-5)


def test_no_bars_are_said_to_hold_nothing():
    beam = SimpleBeam(**(US | {"bars": "none"}))
    assert beam.outcome.verdict.key == "unheld"
    assert "breaks" in repr(beam)


def test_an_uncracked_beam_and_one_without_any_load_have_answers():
    assert "Nowhere" in repr(SimpleBeam(span="3 m"))
    assert "does not move" in repr(SimpleBeam(own_weight=False))


def test_no_width_is_claimed_where_bars_yield():
    beam = SimpleBeam(**(US | {"bars": "2 #4"}))
    assert beam.outcome.verdict.key == "yields"
    assert "Widest crack" not in repr(beam)
    assert "No rule gives a width" in repr(beam)


def test_the_largest_movement_is_the_one_said(beam):
    largest = np.abs(beam.outcome.movement.down).max() / 25.4
    assert f"{largest:.3f}" in beam.answers[0][1]
