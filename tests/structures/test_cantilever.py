"""What must hold for cantilevers: statics, anchorage, trodden bars, tapered arms."""

import dataclasses

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import quad

from crackkit.mechanics.deflection import cantilever_deflection_from_curvature
from crackkit.structures import fields
from crackkit.structures.anchored_bars import AnchoredBars
from crackkit.structures.cantilever import ArmLoad, Cantilever, bent
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNHELD, YIELDS
from tests.structures.cantilevers import cantilevers
from tests.structures.test_simple_beam_properties import cases

TOP = AnchoredBars(size="12", spacing=125.0, cover=30.0, behind=260.0, hooked=True)
NONE = AnchoredBars(size="8", laid=False, behind=260.0, face="bottom")
HEAVY = (ArmLoad(15e3, 1400.0),)


def arm(**changes) -> Cantilever:
    return Cantilever(**({"loads": HEAVY, "top": TOP, "bottom": NONE} | changes))


def test_the_moment_at_the_root_is_that_of_statics():
    one = arm(tip_depth=200.0, uniform_load=4.0, self_weight=False)
    root = 4.0 * 1500.0**2 / 2 + 15e3 * 1400.0
    assert float(bent(one).moment(one.root)) == pytest.approx(-root, rel=1e-12)
    assert one.solve().worst.moment == pytest.approx(root, rel=2e-3)


def test_the_weight_of_a_tapered_arm_is_that_of_its_shape():
    one = arm(depth=250.0, tip_depth=100.0, uniform_load=0.0, loads=(ArmLoad(0.0, 0.0),))
    weight = 25e-6 * 1000.0
    root, _error = quad(lambda s: weight * (250.0 - 150.0 * s / 1500.0) * s, 0.0, 1500.0)
    assert float(bent(one).moment(one.root)) == pytest.approx(-root, rel=1e-9)


def test_an_uncracked_tapered_arm_sinks_as_numerical_integration_says():
    one = arm(depth=300.0, tip_depth=120.0, loads=(ArmLoad(3e3, 1500.0),), uniform_load=0.0)
    outcome = one.solve()
    assert not outcome.cracks
    modulus = one.member.modulus

    def curvature(s):
        depth = 300.0 - 180.0 * s / 1500.0
        moment = -float(bent(one).moment(one.root + s))
        return moment / (modulus * 1000.0 * depth**3 / 12)

    tip, _error = quad(lambda s: curvature(s) * (1500.0 - s), 0.0, 1500.0, epsabs=1e-10)
    assert outcome.movement.largest == pytest.approx(tip, rel=2e-4)


def test_a_cracked_tapered_arm_sinks_as_its_curvature_says():
    one = arm(loads=(ArmLoad(12e3, 1400.0),))
    outcome = one.solve()
    from crackkit.structures.line_member import stretched_by
    from crackkit.structures.line_movement import curvature

    stretched = stretched_by(one.member, bent(one), one.held_by)
    down = cantilever_deflection_from_curvature(stretched.x, curvature(stretched), one.root)
    assert outcome.movement.down == pytest.approx(down, abs=1e-9)


def test_nothing_moves_inside_the_wall():
    outcome = arm().solve()
    inside = outcome.x < 300.0
    assert np.abs(outcome.movement.down[inside]).max() < 1e-6
    assert np.abs(outcome.moment[outcome.x < 299.0]).max() == 0.0


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_bars_trodden_down_open_the_crack_and_cost_strength(code):
    outcomes = [
        arm(code=code, top=dataclasses.replace(TOP, drop=drop)).solve()
        for drop in (0.0, 10.0, 25.0, 50.0)
    ]
    widths = [one.widest.width.governing for one in outcomes]
    bears = [one.worst.ultimate_moment for one in outcomes]
    assert widths == sorted(widths) and widths[-1] > 1.5 * widths[0]
    assert bears == sorted(bears, reverse=True) and bears[-1] < 0.75 * bears[0]


def test_bars_in_the_bottom_only_let_it_fall():
    outcome = arm(
        top=dataclasses.replace(TOP, laid=False),
        bottom=AnchoredBars(size="16", spacing=100.0, behind=260.0, face="bottom"),
    ).solve()
    assert outcome.verdict.key == UNHELD
    assert outcome.movement.falls_at == pytest.approx(300.0, abs=2.0)
    assert any(caution.key == "wrong_side" for caution in outcome.cautions)


def test_top_bars_trodden_to_the_form_hold_nothing():
    low = fields.input_at(arm(), "top.drop").high
    outcome = arm(top=dataclasses.replace(TOP, drop=low)).solve()
    assert outcome.verdict.key == UNHELD


def test_an_arm_without_bars_that_has_not_cracked_yet_is_warned_of():
    outcome = arm(top=dataclasses.replace(TOP, laid=False), loads=(ArmLoad(3e3, 1400.0),)).solve()
    assert not outcome.cracks
    assert [caution for caution in outcome.cautions if caution.grave][0].key == "unguarded"


def test_the_share_that_is_developed_counts_from_the_end_behind_the_root():
    one = arm(top=dataclasses.replace(TOP, behind=200.0, hooked=False))
    member = one.member
    needed, _right = member.end_lengths(member.layers[0])
    crack = one.solve().widest
    assert crack.developed == pytest.approx(200.0 / needed, rel=0.02)


def test_straight_bars_slip_where_a_hook_holds():
    heavy = (ArmLoad(25e3, 1400.0),)
    straight = arm(loads=heavy, top=dataclasses.replace(TOP, hooked=False)).solve()
    hooked = arm(loads=heavy, top=TOP).solve()
    assert straight.verdict.key == YIELDS
    assert "slip" in straight.verdict.why
    assert hooked.verdict.key in (TIGHT, TOO_WIDE)


def test_a_hook_never_asks_for_more_than_a_straight_end():
    for code in ("ACI", "EN"):
        for size in ("8", "12", "16", "25", "#4", "#8"):
            one = arm(code=code, top=dataclasses.replace(TOP, size=size))
            left, right = one.member.end_lengths(one.member.layers[0])
            assert left <= right


def test_the_top_stays_stretched_back_into_the_floor_behind():
    one = arm(back="floor", back_load=0.0, top=dataclasses.replace(TOP, behind=2500.0))
    tops = [zone for zone in one.solve().tension if zone.face == "top"]
    assert min(zone.start for zone in tops) < one.root - 1000.0


def test_an_arm_and_a_floor_give_the_root_the_same_moment():
    wall, floor = arm().solve(), arm(back="floor", top=dataclasses.replace(TOP, behind=2e3)).solve()
    assert wall.worst.moment == pytest.approx(floor.worst.moment, rel=5e-3)


@cases(120)
@given(cantilevers())
def test_every_arm_has_an_answer(one):
    outcome = one.solve()
    for values in (outcome.moment, outcome.movement.down, *(s.stress for s in outcome.steel)):
        assert np.isfinite(values).all()
    assert all(step.symbol for step in outcome.working)


@cases(60)
@given(cantilevers(shape="slab", top__laid=True, top__drop=0.0), st.floats(0.0, 1.0))
def test_a_longer_anchorage_never_makes_the_worst_crack_slip_more(one, share):
    item = fields.input_at(one, "top.behind")
    longer, _moved = fields.fitted(
        one, {"top.behind": item.value + share * (item.high - item.value)}
    )
    short, long = one.solve(), longer.solve()
    shares = [[c.developed for c in o.cracks if c.face == "top"] for o in (short, long)]
    assume(all(shares))
    assert min(shares[1]) >= min(shares[0]) - 1e-6


@cases(80)
@given(cantilevers(), st.floats(0.0, 1.0))
def test_what_can_be_dragged_goes_where_it_is_dragged(one, share):
    grips = [one.footings[-1].grip, *(load.grip for load in one.hung)]
    grips += [grip for key in ("top", "bottom") for grip in one.bar_grips(key)]
    for grip in filter(None, grips):
        assert grip.low - 1e-6 <= grip.value <= grip.high + 1e-6
        value = grip.low + share * (grip.high - grip.low)
        moved, _labels = fields.fitted(one, one.handle_changes(grip.path, value))
        again = [moved.footings[-1].grip, *(load.grip for load in moved.hung)]
        again += [each for key in ("top", "bottom") for each in moved.bar_grips(key)]
        now = {each.path: each.value for each in again if each}
        assert now[grip.path] == pytest.approx(value, abs=1e-6)
