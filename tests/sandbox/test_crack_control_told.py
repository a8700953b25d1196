"""What a choice of bars typed in one line answers, and how it is shown, printed and compared."""

import numpy as np
import pytest

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
from crackkit.units import shown
from tests.sandbox.printed import assert_shown_and_printed
from tests.sandbox.test_crack_control import METRIC, said


@pytest.fixture(scope="module")
def slab():
    return CrackControl(**METRIC)


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
    mass = shown(control.mass, "mass_per_area", "SI")
    assert f"The bars, both ways, weigh {mass}." in slab.answers[3][1]
    assert "both ways" not in said(slab.but(across="none"), 4)


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
    assert rows["air at the bars after"][1:] == ("—", "—")
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
    assert_shown_and_printed(case)


def test_the_report_is_written_as_page_and_as_paper(slab, tmp_path):
    files = report(slab, "Deck").save(tmp_path / "deck")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "As laid and as asked for" in files[0].read_text("utf-8")
