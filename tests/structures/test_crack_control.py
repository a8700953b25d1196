"""What must hold for a strip whose bars are chosen."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.bars import bar
from crackkit.mechanics.crack_limits import limit
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import InputError, fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, YIELDS
from crackkit.structures.strip_width import strip_cracks
from tests.structures.controls import crack_controls

SLAB = CrackControl()


@settings(max_examples=150)
@given(crack_controls())
def test_any_choice_has_an_answer(choice):
    outcome = choice.solve()
    assert outcome.verdict.key in (UNCRACKED, TIGHT, TOO_WIDE, YIELDS)
    assert outcome.working
    assert np.isfinite(outcome.control.worse.band.governing)
    assert outcome.control.chart.widths.shape == outcome.control.chart.yields.shape
    assert len(outcome.numbers) == 6
    for count in choice.counts:
        fitted(choice, count.changes)[0].solve()


@settings(max_examples=60)
@given(
    crack_controls(
        given="stress",
        shape="slab",
        fibres="none",
        both_ways=False,
        size="12",
        code="EN",
        spacing=150.0,
        depth=250.0,
    )
)
def test_the_pull_that_is_given_is_the_pull_that_comes_out(choice):
    held = choice.solve().control.main.held
    assert held.stress == pytest.approx(choice.stress, rel=1e-9)
    again = replace(choice, slack=0.0)
    as_load = {"moment": again.load} if choice.action == "bent" else {"pull": again.load}
    same = fitted(again, {"given": "load", **as_load})[0].solve()
    assert same.control.main.held.stress == pytest.approx(choice.stress, rel=1e-6)


@pytest.mark.parametrize("action", ["bent", "pulled"])
@pytest.mark.parametrize("code", ["EN", "ACI"])
def test_the_same_steel_as_thin_bars_has_finer_cracks(action, code):
    """What the lesson is about: by all rules together, and by the one that governs."""
    thick = replace(SLAB, size="20", spacing=240.0, action=action, code=code)
    thin = replace(thick, size="10", spacing=60.0)
    a, b = thick.solve().control, thin.solve().control
    assert a.main.bars.area == pytest.approx(b.main.bars.area)
    assert b.main.band.governing < 0.85 * a.main.band.governing
    assert b.main.band.middle < a.main.band.middle


@pytest.mark.parametrize("code", ["EN", "ACI"])
def test_more_cover_opens_cracks_at_the_face_and_keeps_rust_away(code):
    rows = [replace(SLAB, code=code, cover=c, strength=20.0).solve().control for c in (20, 30, 45)]
    widths = [row.main.band.governing for row in rows]
    years = [row.years for row in rows]
    assert widths == sorted(widths) and widths[0] < widths[-1]
    assert years == sorted(years) and years[0] < years[-1]


def test_bars_that_lie_off_cost_on_both_sides():
    exact, off = SLAB.solve().control, replace(SLAB, slack=15.0).solve().control
    assert off.main.band.governing > exact.main.band.governing
    assert off.fewest_years < exact.years == off.years


@settings(max_examples=60)
@given(st.floats(0.5, 4.0), st.floats(0.5, 4.0), st.floats(120.0, 300.0))
def test_more_fibres_never_widen_a_crack(some, more, stress):
    """As long as the load still pulls the bars harder than the first crack did.

    Below that a crack just formed is taken, whose zone of bars shrinks as the axis goes down.
    """
    few, many = sorted((some, more))
    doses = {"fibres": "tested", "residual_3": 2.0, "stress": stress}
    a = replace(SLAB, residual_1=few, **doses).solve().control
    b = replace(SLAB, residual_1=many, **doses).solve().control
    assert b.main.held.stress <= a.main.held.stress * (1 + 1e-9)
    formed = b.main.answers[0].values["sigma_sr"]
    if b.main.held.stress > formed:
        assert b.main.band.governing <= a.main.band.governing * (1 + 1e-6)


def test_fibres_leave_less_to_the_bars_and_the_rule_that_knows_them_speaks():
    plain, with_fibres = SLAB.solve().control, replace(SLAB, fibres="steel_30").solve().control
    assert with_fibres.main.held.stress < plain.main.held.stress
    assert with_fibres.main.band.rule == "model_code_2010_fibres"
    assert plain.main.band.rule == "en_2004"
    zero = replace(SLAB, fibres="tested", residual_1=0.0).solve().control
    assert zero.main.band.by_rule == plain.main.band.by_rule


def test_a_crack_never_holds_less_than_it_formed_at():
    """Below that stress Model Code 2010 would tell of no width at all (7.6.4.4, from memory)."""
    choice = replace(SLAB, action="pulled", fibres="steel_20", stress=60.0)
    answer = choice.solve().control.main.answers[0]
    assert answer.width > 0
    assert answer.values["sigma_s"] == pytest.approx(answer.values["sigma_sr"])


def test_the_chart_agrees_with_the_strip_at_every_size():
    found = replace(SLAB, stress=240.0).solve().control
    chart = found.chart
    for row, name in enumerate(chart.sizes):
        for column in (5, 20, 40):
            s = float(chart.spacings[column])
            bars = replace(
                found.main.bars,
                diameter=bar(name).diameter,
                each=bar(name).area,
                number=1000.0 / s,
                spacing=s,
            )
            single = strip_cracks(found.strip, bars, found.load)
            assert chart.widths[row, column] == pytest.approx(single.band.governing, rel=1e-9)


def test_the_buildable_part_of_the_chart_keeps_the_rules():
    found = SLAB.solve().control
    chart = found.chart
    gaps = chart.spacings[None, :] - chart.diameters[:, None]
    assert not chart.buildable[gaps < 25.0].any()  # EN 1992-1-1 8.2(2): stones of 20 mm, and 5
    assert not chart.buildable[:, chart.spacings > 250.0].any()  # EN 1992-1-1 9.3.1.1(3)
    together = 5 * (40.0 + chart.diameters / 2)  # EN 1992-1-1 7.3.4(3)
    assert not chart.buildable[chart.spacings[None, :] > together[:, None] + 1e-6].any()
    assert chart.buildable.any()


def test_the_buttons_keep_the_steel():
    thinner, thicker = SLAB.counts
    for count in (thinner, thicker):
        other = fitted(SLAB, count.changes)[0]
        assert other.main_bars().area == pytest.approx(SLAB.main_bars().area)
    assert fitted(SLAB, thinner.changes)[0].solve().verdict.width < SLAB.solve().verdict.width


def test_the_mat_is_judged_both_ways_where_both_are_loaded():
    few = replace(SLAB, cross_size="8", cross_spacing=300.0)
    both = replace(few, both_ways=True, given="load", moment=30e6)
    assert both.solve().verdict.key in (YIELDS, TOO_WIDE)
    assert both.solve().control.worse.bars.diameter == 8.0
    assert few.solve().control.across is None


def test_bars_that_yield_in_the_direction_with_the_finer_cracks_are_found():
    choice = CrackControl(
        size="16",
        spacing=200.0,
        cross_size="8",
        cross_spacing=75.0,
        outer="across",
        both_ways=True,
        given="load",
        moment=80e6,
        depth=250.0,
        cover=20.0,
        exposure="dry",
    )
    outcome = choice.solve()
    control = outcome.control
    assert control.worse is not control.hardest
    assert control.hardest.held.stress > choice.yield_strength > control.worse.held.stress
    assert outcome.verdict.key == YIELDS


def test_fibres_alone_are_never_called_tight():
    outcome = replace(SLAB, fibres="steel_40", stress=60.0).solve()
    assert outcome.control.main.held.stress == 0
    assert outcome.verdict.key == TOO_WIDE


def test_the_least_steel_of_a_beam_is_that_of_a_beam():
    """ACI 318-19 9.6.1.2: 1.4 b d/fy governs for concrete this weak."""
    beam = CrackControl(shape="beam", width=300.0, depth=500.0, size="20", number=4, code="ACI")
    area, clause = beam.solve().control.least_steel
    d = 500.0 - beam.cover - 10.0
    assert clause == "ACI 318-19 9.6.1.2"
    assert area == pytest.approx(1.4 * 300.0 * d / 500.0, rel=0.02)


@pytest.mark.parametrize("code", ["EN", "ACI"])
def test_a_load_that_stays_cracks_it_sooner(code):
    """As in a bent member: EN 1992-1-1 7.1(2), ACI 318-19 Table 24.2.3.5."""
    short, lasting = (replace(SLAB, code=code, duration=d).strip for d in ("short", "lasting"))
    assert lasting.cracks_at < 0.8 * short.cracks_at


def test_the_bars_across_need_room_even_where_nothing_loads_them():
    crowded = replace(SLAB, cross_size="32", cross_spacing=50.0, depth=300.0)
    assert "spacing" in [c.key for c in crowded.solve().cautions]


def test_the_bars_nearest_to_the_face_have_the_cover():
    inside = replace(SLAB, outer="across", cross_size="10")
    assert SLAB.main_bars().cover == 40.0
    assert inside.main_bars().cover == 50.0
    assert inside.cross_bars().cover == 40.0


def test_weight_is_that_of_both_ways():
    mass = bar("12").mass
    assert SLAB.mass == pytest.approx(mass * 2 / 0.15)
    pulled = replace(SLAB, action="pulled")
    assert pulled.mass == pytest.approx(2 * SLAB.mass)
    assert replace(pulled, rows="middle").mass == pytest.approx(SLAB.mass)
    assert SLAB.solve().steel_mass == pytest.approx(SLAB.mass)


@pytest.mark.parametrize(
    ("inputs", "key"),
    [
        ({"cross_size": "none"}, "few_across"),
        ({"cover": 15.0}, "cover"),
        ({"spacing": 300.0}, "far_apart"),
        ({"size": "8", "spacing": 350.0}, "little_steel"),
        ({"size": "32", "spacing": 50.0}, "spacing"),
        ({"shape": "beam", "width": 200.0, "size": "40", "number": 10}, "no_room"),
        ({"fibres": "steel_40"}, "dose"),
        ({"fibres": "steel_40", "stress": 60.0}, "fibres_alone"),
    ],
)
def test_a_caution_is_told_where_it_belongs(inputs, key):
    assert key in [c.key for c in replace(SLAB, **inputs).solve().cautions]
    assert key not in [c.key for c in SLAB.solve().cautions]


def test_the_limit_is_that_of_the_place():
    outcome = replace(SLAB, exposure="leak_tight").solve()
    assert outcome.verdict.limit == limit("EN", "leak_tight")
    assert outcome.verdict.key == TOO_WIDE


def test_a_load_too_small_to_crack_says_so():
    outcome = replace(SLAB, given="load", moment=3e6).solve()
    assert outcome.verdict.key == UNCRACKED and not outcome.cracks


def test_the_width_is_that_of_the_published_rule():
    """EN 1992-1-1 7.3.4, worked by the rule of mechanics that published values are held against."""
    main = SLAB.solve().control.main
    answer = next(each for each in main.answers if each.rule == "en_2004")
    d, x = 200 - 40 - 6, answer.values["x"]
    heights = min(2.5 * 46, (200 - x) / 3, 100)
    rho = 1000 / 150 * math.pi * 36 / (1000 * heights)
    spacing = 3.4 * 40 + 0.8 * 0.5 * 0.425 * 12 / rho
    fct = 0.30 * 30 ** (2 / 3)
    ratio = 200000 / (22000 * 3.8**0.3)
    strain = max((200 - 0.6 * fct / rho * (1 + ratio * rho)) / 200000, 0.6 * 200 / 200000)
    assert answer.values["d"] == d
    assert main.band.governing == pytest.approx(spacing * strain, rel=2e-3)


def test_a_cover_out_of_range_names_it():
    with pytest.raises(InputError, match="Cover"):
        CrackControl(cover=90.0)


@pytest.mark.parametrize("air", ["inside", "roofed"])
def test_bars_as_deep_as_the_air_is_after_fifty_years_rust_after_fifty_years(air):
    slab = replace(SLAB, air=air, strength=20.0)
    reached = replace(slab, cover=slab.solve().control.carbonated)
    assert reached.solve().control.years == pytest.approx(50.0, rel=1e-9)
