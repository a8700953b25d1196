"""A slab on the ground typed in one line: what it becomes, answers, and how it is shown."""

import inspect

import numpy as np
import pytest
from hypothesis import given, settings

from crackkit.drawing.age_words import age_words
from crackkit.drawing.labels import faults
from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.mechanics.drag import drag_steel, drag_stress
from crackkit.sandbox import (
    CrackControl,
    GroundSlab,
    SimpleBeam,
    TensionMember,
    WrongInput,
    compare,
    ground_told,
    report,
    sweep,
)
from crackkit.sandbox.base_told import by_the_base_alone
from crackkit.sandbox.ground_inputs import ARGUMENTS, BY_NAME, FORM, MEANT
from crackkit.structures import fields
from crackkit.units import shown
from tests.sandbox.mistakes import left_unsaid
from tests.sandbox.printed import assert_shown_and_printed
from tests.structures.ground_slabs import ground_slabs

METRIC = {
    "length": "24 m",
    "thickness": "150 mm",
    "left": 0.9,
    "right": "90 %",
    "joints": "6 m",
    "bars": "12 @ 150",
    "through": "through",
    "cover": "40 mm",
}
# the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    ("length", "80 ft", "length", 24384.0),
    ("width", "20 ft", "width", 6096.0),
    ("thickness", "6 in", "thickness", 152.4),
    ("base", "one_sheet", "base", "one_sheet"),
    ("base", "one plastic sheet", "base", "one_sheet"),
    ("left", "0.8", "left", 0.8),
    ("left", "80 %", "left", 0.8),
    ("middle", 0.5, "middle", 0.5),
    ("right", 1, "right", 1.0),
    ("sides", "40 %", "sides", 0.4),
    ("dowels", "bound", "dowels", "bound"),
    ("both_ways", True, "both_ways", True),
    ("joints", "15 ft", "joint_every", 4572.0),
    ("joints", "4.5 m", "jointed", True),
    ("joints", "none", "jointed", False),
    ("cut", "33 %", "cut", 0.33),
    ("cut_age", "12 h", "cut_age", 0.5),
    ("bars", "#4 @ 12 in", "steel", "#4"),
    ("bars", "#4 @ 12 in", "spacing", 304.8),
    ("bars", "12 @ 200", "spacing", 200.0),
    ("bars", "none", "steel", "none"),
    ("place", "middle", "place", "middle"),
    ("place", "ground", "place", "ground"),
    ("cover", "1.25 in", "cover", 31.75),
    ("through", "cut", "through", "cut"),
    ("through", "running through", "through", "through"),
    ("concrete", "4000 psi", "strength", 27.57903),
    ("steel", "60 ksi", "yield_strength", 413.6854),
    ("humidity", "50 %", "humidity", 0.5),
    ("humidity", 0.7, "humidity", 0.7),
    ("curing", "2 weeks", "curing", 14.0),
    ("both_sides", True, "both_sides", True),
    ("cooling", "20 °C", "cooling", 20.0),
    ("cooling", "36 °F", "cooling", 20.0),
    ("spent", "40 %", "spent", 0.4),
    ("age", "90 d", "age", 90.0),
    ("age", "52 weeks", "age", 364.0),
    ("scatter", "5 %", "scatter", 0.05),
    ("seed", 7, "seed", 7),
    ("model", "MC2010", "model", "MC2010"),
    ("model", "Model Code 2010", "model", "MC2010"),
    ("exposure", "leak_tight", "exposure", "leak_tight"),
    ("code", "ACI", "code", "ACI"),
]


@pytest.fixture(scope="module")
def slab():
    """A slab without joints that both ends hold."""
    return GroundSlab(left=0.9, right=0.9, age="400 d")


@pytest.fixture(scope="module")
def barred(slab):
    return slab.but(bars="12 @ 150")


def said(case, question: int) -> str:
    """The answer to one of the four questions, its thin spaces made plain."""
    return case.answers[question - 1][1].replace("\u202f", " ")


@pytest.mark.parametrize(("name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, typed, path, expected):
    structure = GroundSlab(**(METRIC | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(GroundSlab).parameters if n != "unknown"]
    assert signature == [a.name for a in ARGUMENTS] + ["system"]
    assert {name for name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(GroundSlab)
    assert [name for name in signature if name not in words] == []
    assert [key for key, _label in BY_NAME["base"].choices if f'"{key}"' not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path for _name, _typed, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(GroundSlab().structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
def test_nothing_else_typed_still_gives_a_slab_without_a_caution_of_its_own(system):
    case = GroundSlab(system=system)
    assert case.outcome.verdict.key == "uncracked"
    assert [caution.key for caution in case.outcome.cautions] == ["estimate"]
    assert case.notes == []


def test_shrinkage_follows_the_family_of_the_rules_unless_it_is_typed():
    assert GroundSlab(length="80 ft").structure.model == "ACI"
    assert GroundSlab(length="24 m").structure.model == "EN"
    assert GroundSlab(length="24 m", code="ACI 318").structure.model == "ACI"
    assert GroundSlab(length="80 ft", model="MC2010").but(cut="0.3").structure.model == "MC2010"


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ({"length": "24"}, ["length='24'", "no unit"]),
        ({"length": "90 m"}, ["length='90 m'", "3.00 to 60.00 m"]),
        ({"length": "400 ft"}, ["9.8 to 196.9 ft"]),
        ({"thickness": "20 mm"}, ["thickness='20 mm'", "75 to 300 mm"]),
        ({"base": "clay"}, ["base='clay'", "two_sheets, one_sheet"]),
        ({"left": 1.5}, ["left=1.5", "0.00 to 1.00"]),
        ({"middle": "-0.1"}, ["middle='-0.1'", "0.00 to 1.00"]),
        ({"joints": "1 m"}, ["joints='1 m'", "2.00 to 24.00 m"]),
        ({"joints": "30 m"}, ["joints='30 m'", "2.00 to 24.00 m"]),
        ({"joints": "4.5"}, ["joints='4.5'", "no unit"]),
        ({"joints": "4 m", "cut": "60 %"}, ["cut='60 %'", "0.10 to 0.50"]),
        ({"joints": "4 m", "cut_age": "30 d"}, ["cut_age='30 d'"]),
        ({"bars": "4 x 12"}, ["bars='4 x 12'", "at a spacing", "12 @ 200"]),
        ({"bars": "12 @ 600"}, ["bars='12 @ 600'", "75 to 450 mm"]),
        ({"bars": "13 @ 200"}, ["bars='13 @ 200'", "12, 14"]),
        ({"bars": "12 @ 200", "cover": "90 mm"}, ["cover='90 mm'", "20 to 65 mm"]),
        ({"bars": "12 @ 200", "place": "bottom"}, ["place='bottom'", "top, middle, ground"]),
        ({"humidity": "20 %"}, ["humidity='20 %'", "0.30 to 0.95"]),
        ({"curing": "7"}, ["curing='7'", "no unit", "days"]),
        ({"cooling": "20"}, ["cooling='20'", "no unit", "°C, °F"]),
        ({"cooling": "40 °C"}, ["cooling='40 °C'", "0.0 to 30.0 °C"]),
        ({"cooling": "20 mm"}, ["cooling='20 mm'", "does not measure"]),
        ({"spent": 0.9}, ["spent=0.9", "0.00 to 0.70"]),
        ({"age": "90"}, ["age='90'", "no unit", "days"]),
        ({"age": "4000 d"}, ["age='4000 d'", "1 to 3650 d"]),
        ({"seed": 1.5}, ["seed=1.5", "whole number"]),
        ({"model": "BS"}, ["ACI, EN, MC2010"]),
        ({"depth": "150 mm"}, ["no input 'depth'", "Did you mean thickness?"]),
        ({"joint": "4 m"}, ["Did you mean joints?"]),
        ({"friction": 1.5}, ["Did you mean base?"]),
        ({"duration": "short"}, ["no input 'duration'"]),
    ],
)
def test_each_mistake_names_the_input_what_was_typed_and_what_may_be(typed, parts):
    assert left_unsaid(GroundSlab, typed, parts) == []


def test_what_is_typed_in_vain_is_said():
    note = "{}={!r} is not used: it means nothing with the other inputs."
    assert GroundSlab(cut="0.3").notes == [note.format("cut", "0.3")]
    assert GroundSlab(cover="30 mm").notes == [note.format("cover", "30 mm")]
    assert GroundSlab(bars="12 @ 200", through="cut").notes == [note.format("through", "cut")]
    lying = GroundSlab(bars="12 @ 200", place="ground", cover="30 mm")
    assert lying.notes == [note.format("cover", "30 mm")]
    assert "cut" not in {name for name, *_rest in GroundSlab().inputs}


def test_the_answers_are_those_of_the_mechanics(slab):
    outcome, state = slab.outcome, slab.outcome.ground
    wanted = shown(state.free * 24000.0, "movement", "SI")
    assert f"wants to be {wanted} shorter" in slab.answers[0][1]
    assert shown(-outcome.movement.largest, "movement", "SI") in slab.answers[0][1]
    assert shown(state.wild[0].width, "movement", "SI") in slab.answers[0][1]
    assert f"{outcome.tension[0].peak:.2f} times" in said(slab, 2)
    assert "used up 30 %" in said(slab, 2)
    assert shown(state.wild[0].at, "length", "SI") in slab.answers[2][1]
    assert age_words(state.wild[0].birth) in said(slab, 3)
    assert shown(state.wild[0].width, "width", "SI") in slab.answers[3][1]
    assert f"{base('gravel').coefficient:g} times its weight" in said(slab, 4)
    assert "left end 90 %, right end 90 %" in said(slab, 4)


def test_the_next_crack_is_told_and_comes_on_that_day(slab):
    first = slab.outcome.ground.first
    early = slab.but(age="10 d")
    assert "Nowhere so far" in said(early, 3)
    assert f"comes at an age of {age_words(first)}" in said(early, 3)
    assert not slab.but(age=f"{0.99 * first} d").outcome.cracks
    assert slab.but(age=f"{1.01 * first} d").outcome.cracks
    assert said(GroundSlab(), 3) == "Nowhere so far. None comes in ten years."


def test_bars_are_told_with_their_weight_and_more_cracks(slab, barred):
    assert len(barred.outcome.cracks) > len(slab.outcome.cracks)
    assert f"{len(barred.outcome.cracks)} cracks right through" in said(barred, 3)
    mass = shown(barred.structure.mass, "mass_per_area", "SI")
    assert f"The bars weigh {mass}." in barred.answers[3][1]
    assert "bars along it weigh" not in said(slab, 4)
    lying = barred.but(place="ground")
    assert "on_ground" in {caution.key for caution in lying.outcome.cautions}
    assert lying.told[0].rows[2][2] == "none that count"


def test_joints_take_the_cracks(slab):
    jointed = slab.but(joints="6 m")
    opened = [joint.opening for joint in jointed.outcome.ground.joints]
    assert "Nowhere but at joints" in said(jointed, 3)
    assert f"Joints that are open: {sum(o > 0 for o in opened)} of 3." in said(jointed, 3)
    widest = shown(max(opened), "width", "SI")
    assert f"The widest joint is {widest} open." in jointed.answers[3][1]


def test_what_the_base_alone_can_do_is_told_by_the_drag_formulas(slab):
    """mu w L/(2 h) and mu w L/(2 f_s): ACI 360R and PCA, from memory."""
    weight, friction = slab_weight(150.0), base("gravel").coefficient
    pull, length, bars = by_the_base_alone(slab.outcome, "SI").rows
    stress = drag_stress(friction, 24000.0, weight / 150.0)
    assert pull[1] == f"{stress:.2f}\u202fMPa"
    area = 1000.0 * drag_steel(friction, 24000.0, weight, 500.0 * 2 / 3)
    assert bars[1] == shown(area, "area", "SI")
    assert bars[2] == "none that count"
    assert length[2] == shown(24000.0, "length", "SI")
    longest = 1000.0 * float(length[1].split("\u202f")[0])
    # a slab so long is pulled with all that it can bear
    concrete = next(step.value for step in slab.outcome.working if step.symbol == "f_ct")
    assert drag_stress(friction, longest, weight / 150.0) == pytest.approx(0.7 * concrete, rel=1e-4)


def test_bars_are_told_for_a_foot_of_width_where_feet_are_typed():
    us = GroundSlab(length="80 ft", bars="#4 @ 12 in")
    told = by_the_base_alone(us.outcome, "US")
    assert "on 1 ft of width" in told.rows[2][0]
    assert told.rows[2][2] == "0.20\u202fin²"  # ASTM A615: a #4 bar has 0.20 in2
    assert "1.5 times the weight" in told.sentences[0]


def test_a_slab_that_slides_is_pulled_no_harder_than_told(slab):
    free = GroundSlab(length="60 m", age="3650 d")
    told = float(free.told[0].rows[0][1].split("\u202f")[0])
    assert free.outcome.ground.stress.max() <= told + 0.005


def test_slabs_are_compared_with_their_differences(slab, barred):
    rows = {r[0]: r[1:] for r in compare(slab, barred, slab.but(joints="6 m")).rows}
    assert rows["bars"] == ("none", "12 @ 150", "none")
    assert rows["a joint every"] == ("none", "none", "6 m")
    assert rows["widest crack"][2].startswith("0.00")
    assert "%" in rows["cracks so far"][1]
    assert rows["first crack after"][2] == "none in 10 years"
    assert rows["widest joint"][:2] == ("no joints", "no joints")


def test_it_stands_beside_other_kinds_with_a_dash_where_either_has_nothing(slab):
    cases = (slab, SimpleBeam(), TensionMember(), CrackControl())
    rows = {r[0]: r[1:] for r in compare(*cases).rows}
    assert "—" not in rows["widest crack"]
    assert rows["first crack after"][1:] == ("—",) * 3
    assert rows["moves at most"][0] == rows["gets longer by"][0] == "—"


def test_the_crack_opens_as_the_slab_grows_older(slab):
    found = sweep(slab, "age", "10 d", "3650 d", steps=5)
    assert found.course.governing[0] == 0.0
    assert (np.diff(found.course.governing) > 0).all()
    assert found.course.governing[-1] == slab.but(age="3650 d").outcome.verdict.width
    assert found.head[3] == "cracks so far"
    assert faults(found.picture()) == []


def test_bars_farther_apart_let_cracks_grow_wider(slab):
    found = sweep(slab, "bars", "12 @ 100", "12 @ 400", steps=4)
    assert found.course.x.tolist() == [100, 200, 300, 400]
    assert (np.diff(found.course.governing) > 0).all()
    assert faults(found.picture()) == []


SWEPT = [
    ("length", "12 m", "36 m"),
    ("thickness", "100 mm", "200 mm"),
    ("cover", "20 mm", "60 mm"),
    ("left", "0", "90 %"),
    ("humidity", "40 %", "80 %"),
    ("cooling", "0 °C", "20 °C"),
    ("spent", 0, 0.5),
    ("curing", "1 d", "28 d"),
    ("seed", 1, 3),
]


@pytest.mark.parametrize(("name", "start", "end"), SWEPT)
def test_any_number_can_run(barred, name, start, end):
    found = sweep(barred, name, start, end, steps=3)
    assert len(found.rows) == 3
    assert faults(found.picture()) == []
    assert len(found.rows[0]) == len(ground_told.SWEPT) + 2


def test_joints_run_but_not_from_nothing(slab):
    found = sweep(slab, "joints", "4 m", "8 m", steps=3)
    assert [row[1].endswith("uncracked") for row in found.rows] == [True] * 3
    with pytest.raises(WrongInput, match="does not run from nothing, none and 8 m"):
        sweep(slab, "joints", "none", "8 m")
    with pytest.raises(WrongInput, match="does not run between different sizes"):
        sweep(slab, "bars", "12 @ 100", "16 @ 200")
    with pytest.raises(WrongInput, match="cover does not run: it means nothing"):
        sweep(slab, "cover", "30 mm", "50 mm", steps=2)


@settings(max_examples=12, deadline=None)
@given(ground_slabs())
def test_any_slab_is_answered(slab):
    for system in ("SI", "US"):
        case = eval(FORM.line(slab, system), {"GroundSlab": GroundSlab})
        assert all(answer for _question, answer in case.answers)
        assert "nan" not in repr(case)
        assert all(all(row) for row in case.told[0].rows)


def test_us_and_metric_texts_of_one_slab_give_one_answer():
    us = GroundSlab(
        length="60 ft", thickness="6 in", left=0.9, right=0.9, cooling="18 °F", concrete="4000 psi"
    )
    si = GroundSlab(
        **{"length": "18.288 m", "thickness": "152.4 mm", "left": 0.9, "right": 0.9},
        **{"cooling": "10 °C", "concrete": "27.579029 MPa", "steel": "413.68544 MPa"},
        code="ACI",
    )
    assert (us.system, si.system) == ("US", "SI")
    widths = [case.outcome.verdict.width for case in (us, si)]
    assert widths[0] is not None
    assert widths[1] == pytest.approx(widths[0], rel=1e-6)


KNOWN = {
    "free": {},
    "in feet": {"length": "80 ft", "joints": "15 ft", "left": 0.8, "cooling": "27 °F"},
    "held": {"left": 0.9, "right": 0.9},
    "many bars": {"left": 0.9, "right": 0.9, "bars": "16 @ 75", "age": "3650 d"},
    "panels apart": {"right": 0.9, "joints": "8 m", "bars": "10 @ 150"},
    "fresh": {"age": "1 d", "bars": "10 @ 150", "place": "ground"},
}


@pytest.mark.parametrize("name", KNOWN)
def test_every_known_slab_is_shown_and_printed(name):
    case = GroundSlab(**KNOWN[name])
    assert_shown_and_printed(case)


def test_the_report_is_written_as_page_and_as_paper(barred, tmp_path):
    files = report(barred, "Wash bay").save(tmp_path / "bay")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "By the base alone" in files[0].read_text("utf-8")
