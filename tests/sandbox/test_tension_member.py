"""A pulled member typed in one line: what it becomes, answers, and how it stands beside others."""

import inspect

import numpy as np
import pytest
from hypothesis import given, settings

from crackkit.drawing import sweep_chart
from crackkit.drawing.labels import faults
from crackkit.drawing.shapes import Circle
from crackkit.sandbox import SimpleBeam, TensionMember, WrongInput, compare, report, sweep
from crackkit.sandbox.tie_inputs import ARGUMENTS, BY_NAME, FORM, MEANT
from crackkit.structures import fields
from crackkit.units import shown
from tests.sandbox.mistakes import left_unsaid
from tests.sandbox.printed import assert_shown_and_printed
from tests.structures.tension_members import KNOWN, tension_members

METRIC = {
    "pull": "110 kN",
    "bars": "4 x 12 mm",
    "cover": "30 mm",
    "width": "150 mm",
    "depth": "160 mm",
    "length": "1.5 m",
    "concrete": "30 MPa",
    "steel": "500 MPa",
}
# the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    ("pull", "25 kip", "pull", 111205.54),
    ("before", "150 kN", "before", 150e3),
    ("bars", "2 #6", "number", 2),
    ("bars", "2 #6", "size", "#6"),
    ("bars", "1 x 20 mm", "number", 1),
    ("bars", "6x12", "number", 6),
    ("surface", "plain", "surface", "plain"),
    ("surface", "plain, smooth", "surface", "plain"),
    ("bond", "other", "bond", "other"),
    ("ends", "gripped", "ends", "gripped"),
    ("cover", "1.25 in", "cover", 31.75),
    ("width", "8 in", "width", 203.2),
    ("depth", "200 mm", "depth", 200.0),
    ("length", "5'-6\"", "length", 1676.4),
    ("shrinkage", "0.3 ‰", "shrinkage", 0.0003),
    ("shrinkage", "300 millionths", "shrinkage", 0.0003),
    ("shrinkage", "0.3 mm/m", "shrinkage", 0.0003),
    ("scatter", 0.05, "scatter", 0.05),
    ("scatter", "5 %", "scatter", 0.05),
    ("seed", 7, "seed", 7),
    ("seed", "7", "seed", 7),
    ("beside", True, "beside", True),
    ("concrete", "4000 psi", "strength", 27.57903),
    ("steel", "60 ksi", "yield_strength", 413.6854),
    ("exposure", "sea", "exposure", "sea"),
    ("duration", "lasting", "duration", "lasting"),
    ("code", "ACI", "code", "ACI"),
]


@pytest.fixture(scope="module")
def tie():
    return TensionMember(**METRIC)


def said(case, question: int) -> str:
    """The answer to one of the four questions, its thin spaces made plain."""
    return case.answers[question - 1][1].replace("\u202f", " ")


@pytest.mark.parametrize(("name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, typed, path, expected):
    structure = TensionMember(**(METRIC | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected)


def test_no_bars_at_all_can_be_typed():
    bare = TensionMember(pull="20 kN", bars="none")
    assert bare.structure.number == 0
    assert "surface" not in {name for name, *_rest in bare.inputs}
    noted = TensionMember(pull="20 kN", bars="none", surface="plain").notes
    assert noted == ["surface='plain' is not used: it means nothing with the other inputs."]


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(TensionMember).parameters if n != "unknown"]
    assert signature == [a.name for a in ARGUMENTS] + ["system"]
    assert {name for name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(TensionMember)
    assert [name for name in signature if name not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path for _name, _typed, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(TensionMember().structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
def test_nothing_else_typed_still_gives_a_member_without_a_caution_of_its_own(system):
    member = TensionMember(system=system)
    assert member.outcome.verdict.key == "tight"
    assert [caution.key for caution in member.outcome.cautions] == ["estimate"]


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ({"pull": "400 kN", "bars": "4 x 12"}, ["pull='400 kN'", "0.0 to 226.2 kN"]),
        ({"pull": "60 kip", "bars": "4 #4"}, ["pull='60 kip'", "0.00 to 48.00 kip"]),
        ({"before": "400 kN"}, ["before='400 kN'", "226.2 kN"]),
        ({"pull": "60"}, ["pull='60'", "no unit", "kN", "kip"]),
        ({"bars": "3 #6"}, ["bars='3 #6'", "none, 1, 2, 4, 6 or 8"]),
        ({"bars": "10 x 12 mm"}, ["bars='10 x 12 mm'", "none, 1, 2, 4, 6 or 8"]),
        ({"bars": "12 @ 150"}, ["bars='12 @ 150'", "not a spacing", "4 x 12 mm"]),
        ({"bars": "4 x 13"}, ["bars='4 x 13'", "12, 14"]),
        ({"cover": "90 mm"}, ["cover='90 mm'", "10 to 57 mm"]),
        ({"shrinkage": "0.3"}, ["shrinkage='0.3'", "‰", "millionths"]),
        ({"shrinkage": "1 ‰"}, ["shrinkage='1 ‰'", "0.00 to 0.60 ‰"]),
        ({"shrinkage": "900 millionths", "system": "US"}, ["0 to 600 millionths"]),
        ({"scatter": "0.4"}, ["scatter='0.4'", "0.00 to 0.20"]),
        ({"seed": 2.5}, ["seed=2.5", "whole number"]),
        ({"seed": 100}, ["seed=100", "1 to 99"]),
        ({"surface": "smoth"}, ["ribbed, plain"]),
        ({"ends": "welded"}, ["bars, gripped"]),
        ({"stirrups": "#3"}, ["no input 'stirrups'"]),
        ({"force": "60 kN"}, ["Did you mean pull?"]),
        ({"covr": "25 mm"}, ["Did you mean cover?"]),
    ],
)
def test_each_mistake_names_the_input_what_was_typed_and_what_may_be(typed, parts):
    assert left_unsaid(TensionMember, typed, parts) == []


def test_the_answers_are_those_of_the_mechanics(tie):
    state, cracks = tie.outcome.pulled, tie.outcome.cracks
    assert f"{shown(tie.outcome.movement.largest, 'movement', 'SI')} longer" in tie.answers[0][1]
    assert (
        f"alone would get {shown(state.bare_strain * 1500.0, 'movement', 'SI')}"
        in (tie.answers[0][1])
    )
    assert said(tie, 3).startswith(f"{len(cracks)} cracks right through")
    assert shown(state.next_pull, "force", "SI") in tie.answers[2][1]
    widest = max(crack.width.governing for crack in cracks)
    assert f"Widest crack {shown(widest, 'width', 'SI')} by bond" in tie.answers[3][1]
    assert shown(state.rules.governing, "width", "SI") in tie.answers[3][1]
    assert f"{shown(110e3 / (4 * np.pi * 36), 'stress', 'SI')}, 49 %" in tie.answers[3][1]


def test_without_a_crack_the_pull_of_the_first_is_told(tie):
    whole = tie.but(pull="20 kN")
    assert "The first comes at" in said(whole, 3)
    assert "no crack to hold" in said(whole, 4)
    still = tie.but(pull="0 kN")
    assert (said(still, 1), said(still, 2)) == ("It does not move.", "Nowhere to speak of.")


def test_what_parts_is_not_given_a_width(tie):
    bare = tie.but(bars="none", pull="75 kN", before="0 kN")
    assert bare.outcome.verdict.key == "unheld"
    assert "parts in two" in said(bare, 1)
    assert "There are no bars" in said(bare, 4)
    assert " mm" not in said(bare, 4)
    assert bare.told[0].rows[0][-1] == "not held"


def test_at_yield_no_width_is_told_and_the_lengthening_is_the_least(tie):
    yielding = TensionMember(pull=f"{tie.structure.bars_area * 0.5} kN", **_without(METRIC, "pull"))
    assert yielding.outcome.verdict.key == "yields"
    assert "more than" in said(yielding, 1)
    assert "No rule gives a width" in said(yielding, 4)


def _without(typed, name):
    return {key: text for key, text in typed.items() if key != name}


def test_a_pull_that_has_let_go_leaves_cracks_and_the_rules_speak_of_the_greatest(tie):
    let_go = tie.but(pull="0 kN", before="110 kN")
    assert len(let_go.outcome.cracks) == len(tie.outcome.cracks)
    assert "at the greatest pull" in said(let_go, 4)
    assert "0 % of their" not in said(let_go, 4)
    assert "no published rule" in said(tie.but(surface="plain"), 4)


def test_drying_shortens_it_and_that_is_one_row_with_the_lengthening(tie):
    dry = tie.but(pull="0 kN", shrinkage="0.5 ‰")
    assert "shorter" in said(dry, 1)
    row = next(r for r in compare(tie, dry).rows if r[0] == "gets longer by")
    assert row[2].startswith("\u2212")


def test_cracks_are_listed_as_they_came(tie):
    rows = tie.told[0].rows
    pulls = np.sort(tie.outcome.pulled.history.sequence.pull)[: len(rows)]
    assert [row[0] for row in rows] == [str(k + 1) for k in range(len(tie.outcome.cracks))]
    assert [row[2] for row in rows] == [shown(pull, "force", "SI") for pull in pulls]
    widths = sorted(shown(c.width.governing, "width", "SI") for c in tie.outcome.cracks)
    assert sorted(row[3] for row in rows) == widths


def test_a_crack_that_came_as_it_dried_says_so():
    dried = TensionMember(pull="0 kN", bars="8 x 16 mm", width="200 mm", shrinkage="0.6 ‰")
    assert dried.outcome.pulled.history.sequence.pull.min() == 0.0
    assert dried.told[0].rows[0][2] == "as it dried"


def test_ten_side_by_side_are_told_together(tie):
    assert len(tie.told) == 1
    text = tie.but(beside=True).told[1].sentences[0]
    assert text.startswith("10 of 10 hold")
    parted = tie.but(beside=True, bars="none", pull="75 kN").told[1].sentences
    assert parted == ("Of 10, each of its own concrete, 10 have parted.",)


@settings(max_examples=60, deadline=None)
@given(tension_members())
def test_any_member_is_answered(member):
    for system in ("SI", "US"):
        case = eval(FORM.line(member, system), {"TensionMember": TensionMember})
        assert all(answer for _question, answer in case.answers)
        assert "nan" not in repr(case)


def test_us_and_metric_texts_of_one_member_give_one_answer():
    us = TensionMember(
        **{"pull": "20 kip", "bars": "4 #4", "cover": "1.5 in", "width": "6 in", "depth": "6 in"},
        **{"length": "5 ft", "concrete": "4000 psi", "steel": "60 ksi"},
    )
    si = TensionMember(
        **{"pull": "88.96443 kN", "bars": "4 #4", "cover": "38.1 mm", "width": "152.4 mm"},
        **{"depth": "152.4 mm", "length": "1.524 m", "concrete": "27.579029 MPa"},
        **{"steel": "413.68544 MPa", "code": "ACI"},
    )
    assert (us.system, si.system) == ("US", "SI")
    assert si.outcome.movement.largest == pytest.approx(us.outcome.movement.largest, rel=1e-5)


def test_thin_bars_hold_cracks_smaller_than_a_thick_one_and_a_comparison_shows_it(tie):
    thick = tie.but(bars="1 x 25 mm")
    table = compare(thick=thick, thin=tie)
    rows = {row[0]: row[1:] for row in table.rows}
    assert table.rows[0] == ("bars", "1 x 25 mm", "4 x 12 mm")
    widths = [max(c.width.governing for c in case.outcome.cracks) for case in (thick, tie)]
    assert widths[1] < widths[0]
    assert [cell.split(" (")[0] for cell in rows["widest crack"]] == [
        shown(width, "width", "SI") for width in widths
    ]
    assert "\u2212" in rows["widest crack"][1]
    assert set(rows["by the rule"]) == {"bond along the bars"}
    assert rows["the code's rule"][0] == shown(thick.outcome.pulled.rules.governing, "width", "SI")


def test_it_stands_beside_a_beam_with_a_dash_where_either_has_nothing(tie):
    rows = {r[0]: r[1:] for r in compare(tie, SimpleBeam(span="6 m", dead="12 kN/m")).rows}
    assert rows["gets longer by"][1] == "—"
    assert rows["moves at most"][0] == "—"
    assert "—" not in rows["widest crack"]


def test_a_sweep_of_the_pull_follows_the_widest_crack_inside_the_rules(tie):
    found = sweep(tie, "pull", "20 kN", "200 kN", steps=7)
    course = found.course
    assert course.governing[0] == course.high[0] == 0.0
    alone = tie.but(pull="200 kN").outcome
    assert course.governing[-1] == pytest.approx(alone.widest.width.governing, rel=1e-9)
    rules = alone.pulled.rules
    assert (course.low[-1], course.high[-1]) == pytest.approx((rules.low, rules.high))
    assert found.head[-1] == "cracks"
    assert found.rows[-1][-1] == str(len(alone.cracks))
    assert faults(found.picture()) == []


def test_only_numbers_of_bars_that_can_be_laid_are_tried(tie):
    found = sweep(tie, "bars", "2 x 12 mm", "8 x 12 mm")
    assert found.course.x.tolist() == [2, 4, 6, 8]
    assert (np.diff(found.course.governing) < 0).all()


def test_bars_too_few_for_the_pull_are_told_with_the_value_that_is_at_fault(tie):
    with pytest.raises(WrongInput, match=r"With bars='1 x 12 mm': pull='110 kN'.*56\.5"):
        sweep(tie, "bars", "1 x 12 mm", "8 x 12 mm")


def test_where_no_rule_speaks_the_band_is_the_line(tie):
    course = sweep(tie.but(surface="plain"), "cover", "20 mm", "40 mm", steps=3).course
    assert course.low.tolist() == course.governing.tolist() == course.high.tolist()


SWEPT = [
    ("cover", "20 mm", "45 mm"),
    ("width", "150 mm", "300 mm"),
    ("shrinkage", "0 ‰", "0.4 ‰"),
    ("scatter", "0.02", "0.2"),
    ("length", "1 m", "3 m"),
    ("concrete", "20 MPa", "50 MPa"),
    ("before", "110 kN", "200 kN"),
    ("seed", "1", "4"),
]


@pytest.mark.parametrize(("name", "start", "end"), SWEPT)
def test_any_number_can_run(tie, name, start, end):
    found = sweep(tie, name, start, end, steps=4)
    assert len(found.rows) == 4
    assert faults(found.picture()) == []
    assert found.rows[-1][1:3] == sweep(tie, name, end, start, steps=4).rows[0][1:3]


def test_the_scale_of_a_chart_holds_a_crack_wider_than_all_rules():
    # many bars high in the pour under little cover: bond gives far more than any rule
    square = {"width": "200 mm", "depth": "200 mm", "cover": "10 mm"}
    tight = {"bond": "other", "exposure": "leak_tight", "code": "ACI"}
    full = TensionMember(pull="400 kN", bars="8 x 20 mm", **square, **tight)
    found = sweep(full, "pull", "400 kN", "1000 kN", steps=4)
    beyond = max(found.course.high.max(), found.course.limit)
    assert found.course.governing.max() > 1.2 * beyond  # or else any scale would do
    dots = [shape for shape in found.picture().shapes if isinstance(shape, Circle)]
    assert min(dot.y for dot in dots) > sweep_chart.FRAME.top


@pytest.mark.parametrize("name", KNOWN)
def test_every_known_member_is_shown_and_printed(name):
    case = eval(FORM.line(KNOWN[name], "SI"), {"TensionMember": TensionMember})
    assert_shown_and_printed(case)


def test_the_report_is_written_as_page_and_as_paper(tie, tmp_path):
    files = report(tie, "Hanger").save(tmp_path / "hanger")
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "Crack by crack" in files[0].read_text("utf-8")
