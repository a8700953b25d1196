"""A slab that curls typed in one line: what it becomes, answers, and how it is shown."""

import inspect
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.age_words import age_words
from crackkit.drawing.labels import faults
from crackkit.sandbox import (
    CurledSlab,
    GroundSlab,
    SimpleBeam,
    WrongInput,
    compare,
    curled_told,
    report,
    sweep,
)
from crackkit.sandbox.curled_inputs import ARGUMENTS, BY_NAME, FORM, MEANT
from crackkit.structures import fields
from crackkit.structures.curled_slab import WheelLoad
from crackkit.units import shown
from tests.sandbox.mistakes import left_unsaid
from tests.sandbox.printed import assert_shown_and_printed
from tests.sandbox.test_code_line import check
from tests.structures.curled_slabs import curled_slabs

METRIC = {
    "length": "5 m",
    "width": "5 m",
    "thickness": "125 mm",
    "load": "10 kN",
    "bars": "10 @ 150",
    "cover": "30 mm",
}
# the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    ("length", "15 ft", "length", 4572.0),
    ("width", "4.5 m", "width", 4500.0),
    ("thickness", "6 in", "thickness", 152.4),
    ("load", "2 kip", "loads.0.force", 8896.443),
    ("load", "none", "loads.0.force", 0.0),
    ("load", "8 kN, 6 kN", "loads.1.force", 6000.0),
    ("along", "1 ft", "loads.0.x", 304.8),
    ("along", "0.3 m, 2 m", "loads.1.x", 2000.0),
    ("across", "0.5 m", "loads.0.y", 500.0),
    ("foot", "4 in", "loads.0.side", 101.6),
    ("ground", "200 pci", "ground", 0.05428943),
    ("ground", "50 MN/m3", "ground", 0.05),
    ("transfer", "80 %", "transfer", 0.8),
    ("under", "blotter", "under", "blotter"),
    ("under", "damp ground", "under", "damp"),
    ("humidity", "40 %", "humidity", 0.4),
    ("curing", "2 weeks", "curing", 14.0),
    ("shrinks", "0.5 ‰", "shrinks", 5e-4),
    ("shrinks", "900 millionths", "shrinks", 9e-4),
    ("warmer", "-9 °F", "warmer", -5.0),
    ("warmer", "5 °C", "warmer", 5.0),
    ("bars", "#4 @ 12 in", "steel", "#4"),
    ("bars", "#4 @ 12 in", "spacing", 304.8),
    ("bars", "none", "steel", "none"),
    ("cover", "1.5 in", "cover", 38.1),
    ("concrete", "4000 psi", "strength", 27.57903),
    ("steel", "60 ksi", "yield_strength", 413.6854),
    ("age", "90 d", "age", 90.0),
    ("age", "52 weeks", "age", 364.0),
    ("exposure", "moist", "exposure", "moist"),
    ("code", "ACI", "code", "ACI"),
]


@pytest.fixture(scope="module")
def slab():
    """A dry, thin panel with a wheel on its corner: it breaks."""
    return CurledSlab(length="5 m", width="5 m", thickness="125 mm", load="10 kN", age="60 d")


@pytest.fixture(scope="module")
def barred(slab):
    return slab.but(bars="10 @ 150", cover="30 mm")


def said(case, question: int) -> str:
    """The answer to one of the four questions, its thin spaces made plain."""
    return case.answers[question - 1][1].replace("\u202f", " ")


@pytest.mark.parametrize(("name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, typed, path, expected):
    structure = CurledSlab(**(METRIC | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(CurledSlab).parameters if n != "unknown"]
    assert signature == [a.name for a in ARGUMENTS] + ["system"]
    assert {name for name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(CurledSlab)
    assert [name for name in signature if name not in words] == []
    assert [key for key, _label in BY_NAME["under"].choices if f'"{key}"' not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path.replace("loads.1", "loads.0") for _name, _typed, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(CurledSlab().structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
def test_nothing_else_typed_still_gives_a_slab_without_a_caution_of_its_own(system):
    case = CurledSlab(system=system)
    assert case.outcome.verdict.key == "uncracked"
    assert [caution.key for caution in case.outcome.cautions] == ["estimate"]
    assert case.notes == []


def test_units_of_what_was_typed_are_those_of_the_answers():
    assert CurledSlab(ground="200 pci").system == "US"
    assert CurledSlab(ground="50 MN/m3").system == "SI"
    assert CurledSlab(length="15 ft").structure.code == "ACI"


def test_two_wheels_share_what_is_typed_once():
    one = CurledSlab(load="8 kN, 6 kN", across="0.5 m").structure.loads
    assert [w.force for w in one] == [8e3, 6e3]
    assert [w.y for w in one] == [500.0, 500.0] and [w.side for w in one] == [150.0, 150.0]
    alike = CurledSlab(load="8 kN", along="0.3 m, 3 m").structure.loads
    assert [w.force for w in alike] == [8e3, 8e3] and [w.x for w in alike] == [300.0, 3000.0]


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ({"length": "4.5"}, ["length='4.5'", "no unit"]),
        ({"length": "9 m"}, ["length='9 m'", "2.00 to 8.00 m"]),
        ({"width": "30 ft"}, ["width='30 ft'", "26.2 ft"]),
        ({"thickness": "50 mm"}, ["thickness='50 mm'", "75 to 300 mm"]),
        ({"load": "80 kN"}, ["load='80 kN'", "60.0 kN"]),
        ({"load": "10 mm"}, ["load='10 mm'", "does not measure"]),
        ({"load": "1 kN, 2 kN, 3 kN"}, ["load='1 kN, 2 kN, 3 kN'", "1 to 2"]),
        ({"along": "5 m"}, ["along='5 m'", "0.00 to 4.50 m"]),
        ({"load": "1 kN, 2 kN", "across": "1 m, 2 m, 3 m"}, ["one for every place or 3"]),
        ({"foot": "20 mm"}, ["foot='20 mm'", "50 to 300 mm"]),
        ({"ground": "50"}, ["ground='50'", "no unit", "MN/m3, N/mm3, pci"]),
        ({"ground": "500 MN/m3"}, ["10 to 200 MN/m³"]),
        ({"transfer": 1.5}, ["transfer=1.5", "0.00 to 1.00"]),
        ({"under": "gravel"}, ["under='gravel'", "sheet, damp, blotter, open"]),
        ({"humidity": "20 %"}, ["humidity='20 %'", "0.30 to 0.95"]),
        ({"shrinks": "2 ‰"}, ["shrinks='2 ‰'", "0.30 to 1.20 ‰"]),
        ({"warmer": "30 °C"}, ["warmer='30 °C'", "15.0 °C"]),
        ({"warmer": "5"}, ["warmer='5'", "no unit", "°C, °F"]),
        ({"bars": "4 x 12"}, ["bars='4 x 12'", "at a spacing", "10 @ 200"]),
        ({"bars": "13 @ 200"}, ["bars='13 @ 200'"]),
        ({"bars": "10 @ 200", "cover": "90 mm"}, ["cover='90 mm'", "20 to 75 mm"]),
        ({"age": "1200 d"}, ["age='1200 d'", "1 to 1095 d"]),
        ({"depth": "150 mm"}, ["no input 'depth'", "Did you mean thickness?"]),
        ({"wheel": "8 kN"}, ["Did you mean load?"]),
        ({"dowels": 0.8}, ["Did you mean transfer?"]),
        ({"joints": "4 m"}, ["Did you mean length?"]),
        ({"duration": "short"}, ["no input 'duration'"]),
    ],
)
def test_each_mistake_names_the_input_what_was_typed_and_what_may_be(typed, parts):
    assert left_unsaid(CurledSlab, typed, parts) == []


def test_what_is_typed_in_vain_is_said():
    note = "cover='30 mm' is not used: it means nothing with the other inputs."
    assert CurledSlab(cover="30 mm").notes == [note]
    assert "cover" not in {name for name, *_rest in CurledSlab().inputs}


def test_the_answers_are_those_of_the_mechanics(slab):
    state = slab.outcome.curled
    assert shown(state.dryness.gradient, "strain", "SI") in slab.answers[0][1]
    assert shown(state.corner_rise, "movement", "SI") in slab.answers[0][1]
    assert f"{100 * state.open_share:.0f} % of the panel" in said(slab, 1)
    assert f"{state.share:.2f} times" in said(slab, 2) and "Most on top" in said(slab, 2)
    assert shown(state.top.at[0], "length", "SI") in slab.answers[1][1]
    assert said(slab, 3).startswith("From its top")
    start = shown(float(state.line.points[0, 1]), "length", "SI")
    assert start in slab.answers[2][1]
    assert "no bar crosses the crack" in said(slab, 4) and "0.40 mm" in said(slab, 4)


def test_corners_are_told_to_stand_highest_on_the_day_on_which_they_do(slab):
    state = slab.outcome.curled
    day = float(state.days[np.argmax(state.rises)])
    assert f"highest after {age_words(day)}" in said(slab, 1)
    without = replace(slab.structure, loads=(WheelLoad(force=0.0),))
    for age in (0.5 * day, 2.0 * day):
        assert replace(without, age=age).curled.corner_rise < state.rises.max()


def test_a_slab_that_dries_alike_on_both_sides_never_rises():
    case = CurledSlab(under="open", load="none")
    assert "Its corners lie on the ground." in said(case, 1)
    assert "never rise" in said(case, 1)
    assert said(case, 2) == "Nowhere to speak of." and said(case, 3) == "Nowhere."


def test_the_middle_of_a_young_slab_is_pulled_below():
    case = CurledSlab(load="30 kN", along="2.25 m", across="2.25 m", age="5 d")
    assert "Most at the bottom" in said(case, 2)
    assert np.hypot(*np.subtract(case.outcome.curled.bottom.at, 2250.0)) < 150.0


def test_a_mat_is_told_with_its_width_its_pull_and_its_weight(barred):
    width = barred.outcome.curled.line.width
    assert barred.outcome.verdict.key == "tight"
    assert shown(width.governing, "width", "SI") in barred.answers[3][1]
    assert "of their yield strength" in said(barred, 4)
    mass = shown(barred.structure.mass, "mass_per_area", "SI")
    assert f"The mat weighs {mass}." in barred.answers[3][1]
    weak = barred.but(bars="6 @ 300")
    assert weak.outcome.verdict.key == "yields" and "No rule gives a width" in said(weak, 4)


def test_slabs_are_compared_with_their_differences(slab, barred):
    thick = slab.but(thickness="200 mm")
    rows = {r[0]: r[1:] for r in compare(slab, barred, thick).rows}
    assert rows["mat"] == ("none", "10 @ 150", "none")
    assert rows["thickness"] == ("125 mm", "125 mm", "200 mm")
    assert rows["widest crack"][0] == "nothing holds it"
    assert rows["widest crack"][2].startswith("0.00")
    assert "\u2212" in rows["pulled to this share of its strength"][2]


def test_it_stands_beside_other_kinds_with_a_dash_where_either_has_nothing(slab):
    rows = {r[0]: r[1:] for r in compare(slab, GroundSlab(), SimpleBeam()).rows}
    assert "—" not in rows["widest crack"]
    assert rows["corner stands up"][1:] == ("—",) * 2
    assert rows["pulled to this share of its strength"][1] != "—"


def test_a_thicker_slab_is_pulled_less(barred):
    found = sweep(barred, "thickness", "100 mm", "200 mm", steps=4)
    pulled = [float(row[3]) for row in found.rows]
    assert pulled == sorted(pulled, reverse=True)
    assert found.course.governing[0] > 0.0 and found.course.governing[-1] == 0.0
    assert faults(found.picture()) == []


def test_bars_farther_apart_let_the_crack_grow_wider(barred):
    found = sweep(barred, "bars", "10 @ 100", "10 @ 200", steps=3)
    assert (np.diff(found.course.governing) > 0).all()


SWEPT = [
    ("length", "3 m", "6 m"),
    ("load", "0 kN", "20 kN"),
    ("along", "0.3 m", "2.5 m"),
    ("foot", "50 mm", "200 mm"),
    ("ground", "20 MN/m3", "100 MN/m3"),
    ("transfer", "0", "80 %"),
    ("humidity", "40 %", "80 %"),
    ("curing", "1 d", "28 d"),
    ("shrinks", "0.4 ‰", "1 ‰"),
    ("warmer", "-5 °C", "5 °C"),
    ("cover", "20 mm", "50 mm"),
    ("age", "10 d", "1095 d"),
]


@pytest.mark.parametrize(("name", "start", "end"), SWEPT)
def test_any_number_can_run(barred, name, start, end):
    found = sweep(barred, name, start, end, steps=3)
    assert len(found.rows) == 3
    assert faults(found.picture()) == []
    assert len(found.rows[0]) == len(curled_told.SWEPT) + 2


def test_what_means_nothing_does_not_run(slab):
    with pytest.raises(WrongInput, match="cover does not run: it means nothing"):
        sweep(slab, "cover", "30 mm", "50 mm", steps=2)
    with pytest.raises(WrongInput, match="different sizes"):
        sweep(slab, "bars", "10 @ 100", "12 @ 200")
    with pytest.raises(WrongInput, match="different numbers of values"):
        sweep(slab, "along", "1 m", "1 m, 2 m")


@settings(max_examples=10, deadline=None)
@given(curled_slabs())
def test_any_slab_is_answered(slab):
    for system in ("SI", "US"):
        case = eval(FORM.line(slab, system), {"CurledSlab": CurledSlab})
        assert all(answer for _question, answer in case.answers)
        assert "nan" not in repr(case)


@settings(max_examples=30)
@given(curled_slabs(), st.sampled_from(["SI", "US"]), st.booleans())
def test_the_line_makes_the_same_slab(slab, system, two):
    if two:
        slab = replace(slab, loads=(*slab.loads, replace(slab.loads[0], force=5e3, x=700.0)))
    check(slab, system)


def test_us_and_metric_texts_of_one_slab_give_one_answer():
    us = CurledSlab(length="16 ft", thickness="5 in", load="2 kip", along="1 ft", age="60 d")
    si = CurledSlab(
        **{"length": "4.8768 m", "width": "4.572 m", "thickness": "127 mm", "load": "8.8964432 kN"},
        **{"along": "304.8 mm", "across": "304.8 mm", "foot": "152.4 mm", "age": "60 d"},
        **{"ground": "54.2894275 MN/m3", "cover": "38.1 mm", "concrete": "27.579029 MPa"},
        **{"steel": "413.68544 MPa", "code": "ACI"},
    )
    assert (us.system, si.system) == ("US", "SI")
    assert si.outcome.curled.share == pytest.approx(us.outcome.curled.share, rel=1e-5)


KNOWN = {
    "usual": {},
    "in feet": {"length": "16 ft", "load": "2 kip, 1 kip", "along": "1 ft, 6 ft"},
    "breaks": {"thickness": "100 mm", "load": "20 kN", "age": "60 d"},
    "mat": {"thickness": "125 mm", "length": "6 m", "bars": "10 @ 150", "age": "60 d"},
    "night": {"warmer": "-8 °C", "transfer": 0.8},
    "flat": {"under": "open", "load": "none", "age": "5 d"},
}


@pytest.mark.parametrize("name", KNOWN)
def test_every_known_slab_is_shown_and_printed(name):
    case = CurledSlab(**KNOWN[name])
    assert_shown_and_printed(case)


def test_the_report_is_written_as_page_and_as_paper(barred, tmp_path):
    files = report(barred, "Canteen").save(tmp_path / "canteen")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "How it dries" in files[0].read_text("utf-8")
