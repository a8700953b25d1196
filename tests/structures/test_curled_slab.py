"""What must hold for a slab that curls."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.structures.fields import InputError, fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD, YIELDS
from tests.structures.curled_slabs import curled_slabs

SLAB = CurledSlab()
BARE = replace(SLAB, loads=(WheelLoad(force=0.0),))


def loaded(force, x, y, slab=SLAB):
    return replace(slab, loads=(WheelLoad(force, x, y),))


def keys(slab) -> list[str]:
    return [caution.key for caution in slab.solve().cautions]


@settings(max_examples=20, phases=[Phase.explicit, Phase.reuse, Phase.generate])
@given(curled_slabs())
def test_any_slab_has_an_answer(slab):
    outcome = slab.solve()
    state = outcome.curled
    assert outcome.verdict.key in (UNCRACKED, TIGHT, TOO_WIDE, UNHELD, YIELDS)
    assert outcome.working and len(outcome.numbers) == 6 and outcome.cautions
    assert np.isfinite(state.lift).all() and np.isfinite(state.top.stress).all()
    assert 0.0 <= state.open_share <= 1.0
    assert (state.line is None) == (state.share <= 1.0)
    if state.line is not None:
        points = state.line.points
        for end, others in ((points[0], points[1:]), (points[-1], points[:-1])):
            on_itself = (others == end).all(axis=1).any()  # such as a ring round a wheel
            side = min(*end, slab.length - end[0], slab.width - end[1])
            assert on_itself or side == pytest.approx(0.0, abs=1e-6)


def test_before_it_dries_it_lies_flat():
    state = replace(BARE, age=5.0).curled
    assert state.dryness.gradient == 0.0 and state.open_share == 0.0
    assert state.top.peak == pytest.approx(0.0, abs=1e-9)


def test_it_stands_highest_at_its_corners():
    lift = BARE.curled.lift
    assert lift.max() == pytest.approx(max(lift[0, 0], lift[-1, -1], lift[0, -1], lift[-1, 0]))
    assert lift[24, 24] < 0.0 < lift[0, 24]


def test_a_square_slab_curls_alike_all_round():
    lift = BARE.curled.lift
    for other in (lift[::-1], lift[:, ::-1], lift.T):
        assert other == pytest.approx(lift, abs=1e-6)


@pytest.mark.parametrize(("x", "y"), [(600.0, 900.0), (2250.0, 300.0)])
def test_a_mirrored_wheel_gives_the_mirrored_answer(x, y):
    one, other = loaded(20e3, x, y).curled, loaded(20e3, SLAB.length - x, y).curled
    assert other.lift[:, ::-1] == pytest.approx(one.lift, abs=1e-6)
    assert other.top.peak == pytest.approx(one.top.peak, rel=1e-6)


def test_a_wheel_at_the_corner_pulls_the_top_and_in_the_middle_of_a_flat_slab_the_bottom():
    corner = loaded(30e3, 300.0, 300.0).curled
    assert corner.top.peak > corner.bottom.peak
    flat = loaded(30e3, 2250.0, 2250.0, replace(SLAB, age=5.0)).curled
    assert flat.bottom.peak > flat.top.peak
    assert np.hypot(*np.subtract(flat.bottom.at, 2250.0)) < 150.0


@settings(max_examples=8)
@given(st.floats(5e3, 30e3), st.floats(1.1, 2.0))
def test_a_heavier_wheel_at_the_corner_never_pulls_the_top_less(force, times):
    light, heavy = loaded(force, 300.0, 300.0).curled, loaded(force * times, 300.0, 300.0).curled
    assert heavy.top.peak >= light.top.peak * (1 - 1e-3)


def test_what_helps_a_lot_a_little_not_at_all():
    base = loaded(20e3, 300.0, 300.0)
    peak = base.curled.top.peak
    shorter = replace(base, length=2500.0, width=2500.0).curled.top.peak
    wetter = replace(base, humidity=0.8).curled.top.peak
    both = replace(base, under="open").curled.top.peak
    cured = replace(base, curing=28.0).curled.top.peak
    assert shorter < 0.6 * peak and both < 0.4 * peak  # a lot
    assert 0.8 * peak < wetter < 0.95 * peak  # a little
    assert cured > peak  # not at all: at half a year it has dried for less long


def test_dowels_hand_on_what_a_wheel_brings():
    alone = loaded(20e3, 300.0, 300.0).curled
    shared = replace(loaded(20e3, 300.0, 300.0), transfer=0.8).curled
    assert shared.corner_rise != alone.corner_rise and shared.top.peak < alone.top.peak


def test_a_corner_breaks_off_and_a_mat_holds_it():
    weak = replace(loaded(25e3, 300.0, 300.0), thickness=100.0, shrinks=9e-4)
    broken = weak.solve()
    assert broken.verdict.key == UNHELD and broken.curled.line.face == "top"
    assert "corner" in keys(weak) or not broken.curled.line.corner
    held = replace(weak, steel="12", spacing=100.0).solve()
    assert held.verdict.key in (TIGHT, TOO_WIDE) and held.verdict.width > 0
    more = replace(weak, steel="16", spacing=100.0).solve()
    assert more.verdict.width < held.verdict.width


def test_a_mat_does_not_hold_what_cracks_from_below():
    flat = replace(loaded(60e3, 2250.0, 2250.0), thickness=75.0, age=7.0, steel="10", cover=30.0)
    outcome = flat.solve()
    assert outcome.curled.line.face == "bottom" and outcome.verdict.key == UNHELD
    assert "mat lies near the top" in outcome.verdict.why


def test_where_the_top_is_squeezed_all_over_the_working_leaves_the_mat_out():
    """Found by chance: a young slab in the sun, nowhere pulled on top."""
    wheel = WheelLoad(force=1e-50, x=6000.0, y=6176.39, side=300.0)
    slab = CurledSlab(age=1.0, curing=1.0, loads=(wheel,), length=6000.0, width=7109.285898078217)
    slab = replace(slab, thickness=250.50110119129175, ground=0.2, transfer=0.46545776582521184)
    slab = replace(slab, under="damp", shrinks=3e-4, warmer=1 / 3, strength=15.0, code="ACI")
    outcome = replace(slab, steel="#4", spacing=450.0, cover=125.0).solve()
    assert outcome.curled.top.peak < 0 and outcome.steel_mass > 0
    assert outcome.working and "sigma_s" not in {step.symbol for step in outcome.working}


def test_a_mat_too_deep_holds_nothing_and_gives_no_width():
    """A deep mat lies where the cracked slab is squeezed: no rule reads a width from it."""
    deep = replace(loaded(40e3, 300.0, 300.0), thickness=75.0, shrinks=9e-4, steel="40", cover=37.0)
    outcome = deep.solve()
    assert outcome.verdict.key == UNHELD and outcome.verdict.width is None
    assert "too deep" in outcome.verdict.why and "deep" in keys(deep)


def test_a_foot_never_hangs_over_an_edge():
    state = loaded(20e3, 0.0, 4500.0).curled
    (wheel,) = state.patches
    assert (wheel.x, wheel.y) == (75.0, 4425.0)


def test_the_rise_told_day_by_day_is_that_of_the_slab_then():
    state = BARE.curled
    assert state.rises[0] == pytest.approx(0.0, abs=1e-6)
    for day in (13.0, 35.0, 92.0, 387.0):
        then = replace(BARE, age=day).curled
        told = np.interp(day, state.days, state.rises)
        assert then.corner_rise == pytest.approx(told, rel=0.01)


def test_between_the_days_that_are_worked_out_the_curve_stays_close():
    state = BARE.curled
    for day in (20.0, 300.0, 800.0):
        then = replace(BARE, age=day).curled
        assert then.corner_rise == pytest.approx(np.interp(day, state.days, state.rises), rel=0.06)


def test_the_button_brings_the_wheel_to_the_corner():
    slab = loaded(20e3, 2250.0, 300.0)
    there = fitted(slab, slab.counts[0].changes)[0]
    assert (there.loads[0].x, there.loads[0].y) == (75.0, 75.0)
    assert there.counts[0].changes == {}


def test_an_input_out_of_range_names_it():
    with pytest.raises(InputError, match="Thickness"):
        CurledSlab(thickness=20.0)
