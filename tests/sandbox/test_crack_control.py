"""A choice of bars typed in one line: what it becomes, and what is said of mistakes."""

import inspect

import pytest
from hypothesis import given, settings

from crackkit.sandbox import CrackControl
from crackkit.sandbox.control_inputs import ARGUMENTS, BY_NAME, FORM, LOADS, MEANT
from crackkit.structures import fields
from tests.sandbox.mistakes import left_unsaid
from tests.structures.controls import crack_controls

METRIC = {
    "bars": "12 @ 150",
    "across": "10 @ 200",
    "cover": "40 mm",
    "moment": "40 kNm",
    "depth": "200 mm",
    "concrete": "30 MPa",
    "steel": "500 MPa",
}
# the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    ("bars", "#4 @ 6 in", "size", "#4"),
    ("bars", "#4 @ 6 in", "spacing", 152.4),
    ("bars", "16 at 200 mm", "spacing", 200.0),
    ("bars", "4 #6", "number", 4),
    ("rows", "middle", "rows", "middle"),
    ("rows", "one, at mid-depth", "rows", "middle"),
    ("across", "8 @ 120", "cross_size", "8"),
    ("across", "8 @ 120", "cross_spacing", 120.0),
    ("across", "none", "cross_size", "none"),
    ("outer", "across", "outer", "across"),
    ("both_ways", True, "both_ways", True),
    ("cover", "1.25 in", "cover", 31.75),
    ("slack", "10 mm", "slack", 10.0),
    ("fibres", "plastic_5", "fibres", "plastic_5"),
    ("fibres", "steel_30", "fibres", "steel_30"),
    ("f_R1", "3 MPa", "residual_1", 3.0),
    ("f_R1", "3 MPa", "fibres", "tested"),
    ("f_R3", "400 psi", "residual_3", 2.757903),
    ("f_R3", "400 psi", "fibres", "tested"),
    ("steel_stress", "36 ksi", "stress", 248.2113),
    ("steel_stress", "36 ksi", "given", "stress"),
    ("moment", "50 kN·m", "moment", 50e6),
    ("moment", "30 kip-ft", "moment", 40.674536e6),
    ("moment", "30 kip-ft", "given", "load"),
    ("pull", "500 kN", "pull", 500e3),
    ("pull", "500 kN", "action", "pulled"),
    ("action", "pulled", "action", "pulled"),
    ("shape", "slab", "shape", "slab"),
    ("width", "1.2 m", "width", 1200.0),
    ("depth", "8 in", "depth", 203.2),
    ("stones", "3/8 in", "stones", 9.525),
    ("concrete", "4000 psi", "strength", 27.57903),
    ("steel", "60 ksi", "yield_strength", 413.6854),
    ("air", "rained", "air", "rained"),
    ("curing", "2 weeks", "curing", 14.0),
    ("exposure", "leak_tight", "exposure", "leak_tight"),
    ("duration", "lasting", "duration", "lasting"),
    ("code", "ACI", "code", "ACI"),
]


def said(case, question: int) -> str:
    """The answer to one of the four questions, its thin spaces made plain."""
    return case.answers[question - 1][1].replace("\u202f", " ")


def without_load(typed: dict) -> dict:
    return {name: text for name, text in typed.items() if name not in LOADS}


@pytest.mark.parametrize(("name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, typed, path, expected):
    structure = CrackControl(**(without_load(METRIC) | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(CrackControl).parameters if n != "unknown"]
    assert sorted(signature) == sorted([a.name for a in ARGUMENTS] + ["system"])
    assert {name for name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(CrackControl)
    assert [name for name in signature if name not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path for _name, _typed, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(CrackControl().structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
@pytest.mark.parametrize("typed", [{}, {"shape": "beam"}, {"action": "pulled"}])
def test_nothing_else_typed_still_gives_bars_without_a_caution_of_their_own(system, typed):
    control = CrackControl(system=system, **typed)
    assert control.outcome.verdict.key == "tight"
    assert [caution.key for caution in control.outcome.cautions] == ["estimate"]


def test_counted_bars_make_a_beam_and_a_pull_one_that_is_pulled():
    beam = CrackControl(bars="4 #6")
    assert (beam.structure.shape, beam.texts["width"], beam.texts["depth"]) == (
        "beam",
        "12 in",
        "18 in",
    )
    assert "across" not in {name for name, *_rest in beam.inputs}
    wall = CrackControl(pull="500 kN", rows="middle")
    assert wall.structure.faces == 0.5
    assert "rows" not in {name for name, *_rest in CrackControl().inputs}


def test_an_assumed_load_counts_only_where_none_is_typed():
    assert "steel_stress" in {name for name, *_rest in CrackControl().inputs}
    typed = {name for name, *_rest in CrackControl(moment="30 kNm").inputs}
    assert typed & set(LOADS) == {"moment"}


def test_one_load_typed_anew_takes_the_place_of_the_other():
    bent = CrackControl(steel_stress="180 MPa")
    assert bent.but(moment="30 kNm").structure.given == "load"
    assert "steel_stress" not in bent.but(moment="30 kNm").typed
    assert bent.but(pull="600 kN").structure.load == 600e3
    assert bent.but(moment="30 kNm").but(steel_stress="180 MPa").structure == bent.structure
    assert bent.but(cover="30 mm").typed["steel_stress"] == "180 MPa"


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ({"bars": "none"}, ["bars='none'", "must be some"]),
        ({"bars": "12 @ 400"}, ["bars='12 @ 400'", "50 to 350 mm"]),
        ({"bars": "#4 @ 1 in"}, ["bars='#4 @ 1 in'", "1.97 to 13.78 in"]),
        ({"bars": "14 #6"}, ["bars='14 #6'", "1 to 12"]),
        ({"bars": "12 @ 150", "shape": "beam"}, ["bars='12 @ 150'", "a number of bars"]),
        ({"bars": "4 #6", "shape": "slab"}, ["bars='4 #6'", "at a spacing"]),
        ({"bars": "4 x 13"}, ["bars='4 x 13'", "12, 14"]),
        ({"across": "4 x 12"}, ["across='4 x 12'", "at a spacing"]),
        ({"across": "10 @ 20"}, ["across='10 @ 20'", "50 to 350 mm"]),
        ({"cover": "90 mm"}, ["cover='90 mm'", "10 to 50 mm"]),
        ({"cover": "4 in"}, ["cover='4 in'", "0.39 to 2.00 in"]),
        ({"slack": "40 mm"}, ["slack='40 mm'", "0 to 25 mm"]),
        ({"depth": "70 mm", "cover": "10 mm"}, ["depth='70 mm'", "80 to 800 mm"]),
        ({"steel_stress": "700 MPa"}, ["steel_stress='700 MPa'", "50 to 500 MPa"]),
        ({"steel_stress": "90 ksi"}, ["steel_stress='90 ksi'", "7.3 to 60.0 ksi"]),
        ({"moment": "900 kNm"}, ["moment='900 kNm'", "0.0 to 450.0 kN·m"]),
        ({"moment": "30"}, ["moment='30'", "no unit", "kNm", "kip-ft"]),
        ({"moment": "30 kN"}, ["moment='30 kN'", "does not measure"]),
        ({"pull": "9 MN"}, ["pull='9 MN'", "0.0 to 4000.0 kN"]),
        (
            {"moment": "30 kNm", "steel_stress": "200 MPa"},
            ["moment='30 kNm'", "steel_stress='200 MPa'", "one of steel_stress, moment, pull"],
        ),
        ({"pull": "300 kN", "moment": "30 kNm"}, ["pull='300 kN'", "moment='30 kNm'", "one of"]),
        ({"pull": "300 kN", "action": "bent"}, ["pull='300 kN'", "action='pulled'"]),
        ({"moment": "3 kNm", "action": "pulled"}, ["moment='3 kNm'", "type pull"]),
        ({"f_R1": "20 MPa"}, ["f_R1='20 MPa'", "0.0 to 10.0 MPa"]),
        ({"f_R3": "20 MPa"}, ["f_R3='20 MPa'", "0.0 to 10.0 MPa"]),
        ({"fibres": "steel_25"}, ["fibres='steel_25'", "steel_20, steel_30", "tested"]),
        ({"stones": "2 in"}, ["stones='2 in'", "0.31 to 1.57 in"]),
        ({"curing": "7"}, ["curing='7'", "no unit", "days"]),
        ({"curing": "60 days"}, ["curing='60 days'", "1 to 28 d"]),
        ({"air": "wet"}, ["inside, roofed, rained"]),
        ({"rows": "three"}, ["both, middle"]),
        ({"outer": "top"}, ["main, across"]),
        ({"spacing": "150 mm"}, ["no input 'spacing'", "Did you mean bars?"]),
        ({"fR1": "2 MPa"}, ["Did you mean f_R1?"]),
        ({"fibers": "none"}, ["Did you mean fibres?"]),
    ],
)
def test_each_mistake_names_the_input_what_was_typed_and_what_may_be(typed, parts):
    assert left_unsaid(CrackControl, typed, parts) == []


def test_what_is_typed_in_vain_is_said():
    beam = CrackControl(bars="4 x 16", across="12 @ 150")
    assert beam.notes == ["across='12 @ 150' is not used: it means nothing with the other inputs."]
    dosed = CrackControl(fibres="steel_30", f_R1="3 MPa")
    assert "f_R1='3 MPa' is not used" in dosed.notes[0]


@settings(max_examples=60, deadline=None)
@given(crack_controls())
def test_any_choice_of_bars_is_answered(control):
    for system in ("SI", "US"):
        case = eval(FORM.line(control, system), {"CrackControl": CrackControl})
        assert all(answer for _question, answer in case.answers)
        assert "nan" not in repr(case)
        assert all(row for row in case.told[0].rows)


def test_us_and_metric_texts_of_one_strip_give_one_answer():
    us = CrackControl(bars="#5 @ 8 in", across="#4 @ 9 in", moment="10 kip-ft", concrete="4000 psi")
    si = CrackControl(
        **{"bars": "#5 @ 203.2 mm", "across": "#4 @ 228.6 mm", "moment": "13.558179 kNm"},
        **{"concrete": "27.579029 MPa", "width": "304.8 mm", "depth": "203.2 mm"},
        **{"cover": "38.1 mm", "stones": "19.05 mm", "steel": "413.68544 MPa", "code": "ACI"},
    )
    assert (us.system, si.system) == ("US", "SI")
    widths = [case.outcome.verdict.width for case in (us, si)]
    assert widths[1] == pytest.approx(widths[0], rel=1e-6)
