"""A choice of bars typed in one line: what it becomes, answers, and how it stands beside others."""

import inspect

import numpy as np
import pytest
from hypothesis import given, settings

from crackkit.drawing.labels import faults
from crackkit.sandbox import (
    Cantilever,
    CrackControl,
    SimpleBeam,
    TensionMember,
    WrongInput,
    compare,
    report,
    sweep,
)
from crackkit.sandbox.control_inputs import ARGUMENTS, BY_NAME, FORM, LOADS, MEANT
from crackkit.structures import fields
from crackkit.units import shown
from tests.sandbox.test_shown import parsed
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


@pytest.fixture(scope="module")
def slab():
    return CrackControl(**METRIC)


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
    with pytest.raises(WrongInput) as caught:
        CrackControl(**typed)
    words = str(caught.value).replace("\u202f", " ")
    assert [part for part in parts if part not in words] == []


def test_what_is_typed_in_vain_is_said():
    beam = CrackControl(bars="4 x 16", across="12 @ 150")
    assert beam.notes == ["across='12 @ 150' is not used: it means nothing with the other inputs."]
    dosed = CrackControl(fibres="steel_30", f_R1="3 MPa")
    assert "f_R1='3 MPa' is not used" in dosed.notes[0]


def test_the_answers_are_those_of_the_mechanics(slab):
    control = slab.outcome.control
    assert "It bends" in said(slab, 1)
    assert f"{control.load / control.strip.cracks_at:.1f} times" in said(slab, 2)
    lower = shown(200.0 - float(control.main.held.axis), "size", "SI")
    assert f"the lower {lower} of" in slab.answers[1][1]
    assert shown(control.main.spacing, "size", "SI") in slab.answers[2][1]
    band = control.main.band
    assert (
        f"Widest crack {shown(band.governing, 'width', 'SI')} by {band.name}"
        in (slab.answers[3][1])
    )
    assert (
        f"{shown(band.low, 'width', 'SI')} to {shown(band.high, 'width', 'SI')}"
        in (slab.answers[3][1])
    )
    assert shown(float(control.main.held.stress), "stress", "SI") in slab.answers[3][1]
    assert "asks for 30 mm" in said(slab, 4)
    assert shown(control.mass, "mass_per_area", "SI") in slab.answers[3][1]


def test_years_until_rust_are_told_and_fewer_where_the_bars_may_lie_too_high(slab):
    bare = slab.but(cover="15 mm", curing="1 d", concrete="20 MPa", air="inside")
    years = round(bare.outcome.control.fewest_years)
    assert f"after about {years} years" in said(bare, 4)
    high = bare.but(slack="5 mm").outcome.control
    assert high.fewest_years < years
    assert f"after about {high.fewest_years:.0f} years" in said(bare.but(slack="5 mm"), 4)
    assert "100 years or more" in said(slab, 4)
    assert "Salt" not in said(slab, 4)
    assert "Salt may start it far sooner" in said(slab.but(exposure="sea"), 4)


def test_what_is_pulled_cracks_right_through_and_gets_longer():
    wall = CrackControl(pull="700 kN")
    assert "It gets longer" in said(wall, 1)
    assert said(wall, 2).startswith("All of it")
    assert "Right through" in said(wall, 3)
    assert wall.outcome.cracks[0].face == "both"


def test_a_load_that_does_not_crack_it_is_told_as_such(slab):
    whole = slab.but(moment="5 kNm")
    assert whole.outcome.verdict.key == "uncracked"
    assert "Nowhere" in said(whole, 3)
    assert "no crack to hold" in said(whole, 4)
    assert "asks for 30 mm" in said(whole, 4)
    still = slab.but(moment="0 kNm")
    assert said(still, 1) == "It does not move: it carries no load."
    assert said(still, 2) == "Nowhere."


def test_a_stress_whose_load_alone_would_not_crack_it_says_what_else_must():
    light, hard = (CrackControl(steel_stress=text) for text in ("100 MPa", "350 MPa"))
    assert light.outcome.control.load < light.outcome.control.strip.cracks_at
    assert "shrinking or cooling" in said(light, 3)
    assert "shrinking or cooling" not in said(hard, 3)


def test_at_yield_no_width_is_told(slab):
    yielding = slab.but(moment="80 kNm")
    assert yielding.outcome.verdict.key == "yields"
    assert "No rule gives a width" in said(yielding, 4)
    rows = {row[0]: row[1:] for row in compare(slab, yielding).rows}
    assert rows["widest crack"][1] == rows["all rules"][1] == "—"


def test_bars_loaded_both_ways_are_told_both_ways(slab):
    both = slab.but(both_ways=True, moment="30 kNm", across="10 @ 120")
    control = both.outcome.control
    assert control.worse is control.across
    assert shown(control.across.spacing, "size", "SI") in both.answers[2][1]
    assert shown(control.across.band.governing, "width", "SI") in both.answers[3][1]
    assert "Too wide across the other bars" in said(both, 4)
    assert "The bars across decide. The bars are pulled with" in said(both, 4)
    assert "decide." not in said(slab, 4)
    assert len(both.told[0].rows) == 2 * (len(slab.told[0].rows) - 1) + 1


def test_fibres_are_judged_by_the_one_rule_that_knows_them(slab):
    mixed, tested = slab.but(fibres="steel_30"), slab.but(f_R1="2.4 MPa")
    assert mixed.outcome.control.worse.band.governing < slab.outcome.control.worse.band.governing
    assert "no other rule knows fibres" in said(mixed, 4)
    assert "dose" in {caution.key for caution in mixed.outcome.cautions}
    assert "dose" not in {caution.key for caution in tested.outcome.cautions}
    assert tested.outcome.control.worse.band == mixed.outcome.control.worse.band


def test_how_the_bars_lie_stands_beside_what_the_working_asks_for(slab):
    found = {row[0]: row[1:] for row in slab.told[0].rows}
    control = slab.outcome.control
    assert found["cover"] == (
        shown(40.0, "size", "SI"),
        f"at least {shown(30.0, 'size', 'SI')}",
        control.asked.clause,
    )
    apart = found["bars: from centre to centre"]
    assert apart[:2] == (
        shown(150.0, "size", "SI"),
        f"at most {shown(control.widest, 'size', 'SI')}",
    )
    least, clause = control.least_steel
    assert found["bars: all their steel"][1:] == (f"at least {shown(least, 'area', 'SI')}", clause)
    assert "bars: from centre to centre" not in {
        row[0] for row in CrackControl(bars="4 #6").told[0].rows
    }
    tight = CrackControl(bars="12 x 25 mm", width="200 mm")
    assert "no room" in {row[1] for row in tight.told[0].rows}


def test_the_working_names_formulas_numbers_and_clauses(slab):
    rows = {row.symbol: row for row in slab.working if "decides" in row.topic}
    width = shown(slab.outcome.control.main.band.governing, "width", "SI")
    assert rows["w"].formula
    assert rows["w"].numbers
    assert rows["w"].clause
    assert rows["w"].value.split("\u202f")[0].startswith(width.split("\u202f")[0])
    asked = [row for row in slab.working if row.symbol in ("c_min", "g_min", "s_max", "A_s,min")]
    assert all(row.clause for row in asked)
    assert len(asked) == 4


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


def test_the_same_steel_in_thin_bars_close_together_holds_narrower_cracks(slab):
    thick, thin = slab.but(bars="16 @ 200"), slab.but(bars="8 @ 50")
    table = compare(thick=thick, thin=thin)
    rows = {row[0]: row[1:] for row in table.rows}
    assert table.rows[0] == ("bars", "16 @ 200", "8 @ 50")
    widths = [case.outcome.control.main.band.governing for case in (thick, thin)]
    assert widths[1] < widths[0]
    assert [cell.split(" (")[0] for cell in rows["widest crack"]] == [
        shown(width, "width", "SI") for width in widths
    ]
    assert "\u2212" in rows["widest crack"][1]
    assert rows["bars weigh"][0].endswith("kg/m²")


def test_a_load_given_in_two_ways_stands_side_by_side(slab):
    rows = {row[0]: row[1:] for row in compare(slab, slab.but(steel_stress="200 MPa")).rows}
    assert rows["moment"] == ("40 kNm", "—")
    assert rows["pull in the main bars"] == ("—", "200 MPa")
    assert "\u2212" in rows["moment on it"][1]


def test_it_stands_beside_other_kinds_with_a_dash_where_either_has_nothing(slab):
    beam, tie = SimpleBeam(span="6 m", dead="12 kN/m"), TensionMember(pull="110 kN")
    rows = {r[0]: r[1:] for r in compare(slab, beam, tie).rows}
    assert rows["moves at most"][0] == rows["gets longer by"][0] == "—"
    assert rows["rust not before"][1:] == ("—", "—")
    assert "—" not in rows["widest crack"]


def test_an_input_that_means_nothing_in_a_case_is_a_dash_beside_others():
    rows = compare(TensionMember(bars="none"), TensionMember(surface="plain")).rows
    assert ("surface of the bars", "—", "plain") in rows
    rows = compare(Cantilever(), Cantilever(back="floor", back_span="5 m")).rows
    assert ("span behind", "—", "5 m") in rows


def test_a_sweep_of_the_spacing_under_one_moment_follows_stress_and_width(slab):
    found = sweep(slab, "bars", "12 @ 100", "12 @ 250", steps=4)
    course = found.course
    assert course.x.tolist() == [100, 150, 200, 250]
    assert (np.diff(course.governing[:2]) > 0).all()
    alone = slab.but(bars="12 @ 150").outcome.control.main.band
    assert course.governing[1] == pytest.approx(alone.governing, rel=1e-9)
    assert (course.low[1], course.high[1]) == pytest.approx((alone.low, alone.high))
    assert np.isnan(course.governing[-1])  # the bars yield
    assert found.head[-1] == "a crack about every"
    assert faults(found.picture()) == []


def test_bars_of_a_beam_are_counted_one_by_one():
    found = sweep(CrackControl(bars="4 #6", moment="80 kip-ft"), "bars", "3 #6", "6 #6")
    assert found.course.x.tolist() == [3, 4, 5, 6]
    assert (np.diff(found.course.governing) < 0).all()


def test_two_sizes_do_not_run_into_each_other(slab):
    with pytest.raises(WrongInput, match="does not run between different sizes"):
        sweep(slab, "bars", "12 @ 100", "16 @ 200")


SWEPT = [
    ("cover", "20 mm", "50 mm"),
    ("slack", "0 mm", "20 mm"),
    ("moment", "5 kNm", "60 kNm"),
    ("steel_stress", "100 MPa", "400 MPa"),
    ("pull", "300 kN", "700 kN"),
    ("depth", "200 mm", "300 mm"),
    ("across", "10 @ 100", "10 @ 300"),
    ("concrete", "20 MPa", "50 MPa"),
    ("stones", "8 mm", "32 mm"),
    ("curing", "1 d", "28 d"),
    ("f_R1", "1 MPa", "3 MPa"),
]


@pytest.mark.parametrize(("name", "start", "end"), SWEPT)
def test_any_number_can_run(slab, name, start, end):
    found = sweep(slab, name, start, end, steps=4)
    assert len(found.rows) == 4
    assert faults(found.picture()) == []
    assert found.rows[-1][1:3] == sweep(slab, name, end, start, steps=4).rows[0][1:3]


def test_a_number_that_means_nothing_does_not_run(slab):
    dosed = slab.but(fibres="steel_30")
    with pytest.raises(WrongInput, match="f_R1 does not run: it means nothing"):
        sweep(dosed, "f_R1", "1 MPa", "3 MPa", steps=3)


KNOWN = {
    "slab": METRIC,
    "in feet": {"bars": "#4 @ 6 in", "moment": "10 kip-ft"},
    "beam": {"bars": "4 #6", "steel_stress": "36 ksi"},
    "wall, one layer": {"pull": "700 kN", "rows": "middle"},
    "both ways, fibres": METRIC | {"both_ways": True, "fibres": "steel_40"},
    "tested": METRIC | {"f_R1": "2 MPa"},
    "no load": METRIC | {"moment": "0 kNm"},
    "yield": METRIC | {"moment": "80 kNm"},
    "no bars across": METRIC | {"across": "none"},
    "no room": {"bars": "12 x 25 mm", "width": "200 mm"},
}


@pytest.mark.parametrize("name", KNOWN)
def test_every_known_choice_is_shown_and_printed(name):
    case = CrackControl(**KNOWN[name])
    page = parsed(case.html())
    assert (page.wrong, page.open) == ([], [])
    assert page.images
    for question, answer in case.answers:
        assert question in case.html()
        assert answer.split(",")[0] in case.html()
    made = report(case)
    assert made.title == case.structure.title
    assert "a licensed engineer decide" in made.html()
    assert [faults(sheet) for sheet in made.sheets()] == [[] for _sheet in made.sheets()]


def test_the_report_is_written_as_page_and_as_paper(slab, tmp_path):
    files = report(slab, "Deck").save(tmp_path / "deck")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "As laid and as asked for" in files[0].read_text("utf-8")
