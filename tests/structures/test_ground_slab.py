"""What must hold for a slab on the ground."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.structures.fields import InputError, fitted
from crackkit.structures.ground_rules import slab_between_walls
from crackkit.structures.ground_slab import GroundSlab
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD, YIELDS
from tests.structures.ground_slabs import ground_slabs

FREE = GroundSlab()
HELD = GroundSlab(left=0.9, right=0.9)


@settings(max_examples=25)
@given(ground_slabs())
def test_any_slab_has_an_answer(slab):
    outcome = slab.solve()
    state = outcome.ground
    assert outcome.verdict.key in (UNCRACKED, TIGHT, TOO_WIDE, YIELDS, UNHELD)
    held = [state.steel for state in (state, outcome.across) if state.wild]
    assert outcome.verdict.key != TIGHT or all(held)
    assert outcome.working and len(outcome.numbers) == 6
    assert np.isfinite(state.stress).all() and np.isfinite(state.slip).all()
    assert all(crack.birth <= slab.age * (1 + 1e-9) for crack in state.cracks)
    assert len(state.joints) == slab.panels - 1
    assert len(outcome.across.joints) == len(slab.joint_places_across)


def test_a_free_slab_on_gravel_shrinks_and_does_not_crack():
    """Textbook: friction alone cracks only slabs far longer than this."""
    outcome = replace(FREE, age=3650.0).solve()
    assert outcome.verdict.key == UNCRACKED
    assert outcome.movement.largest < 0


@settings(max_examples=15)
@given(st.floats(3000.0, 60000.0), st.sampled_from(["one_sheet", "gravel", "stabilised"]))
def test_the_pull_of_the_base_is_never_more_than_its_friction(length, under):
    state = replace(FREE, length=length, base=under).solve().ground
    most = base(under).coefficient * slab_weight(FREE.thickness) * length / 2 / FREE.thickness
    assert state.stress.max() <= most * (1 + 1e-9)


def test_a_slab_that_cannot_move_cracks_and_all_the_movement_gathers_there():
    state = HELD.solve().ground
    assert len(state.wild) == 1
    assert state.wild[0].width == pytest.approx(state.free * HELD.length, rel=0.15)


@settings(max_examples=10)
@given(st.floats(10.0, 3000.0), st.floats(1.05, 3.0))
def test_cracks_stay_and_are_never_fewer_later(age, times):
    barred = replace(HELD, steel="12", spacing=100.0)
    early = replace(barred, age=age).solve().ground
    late = replace(barred, age=min(age * times, 3650.0)).solve().ground
    assert {c.at for c in early.cracks} <= {c.at for c in late.cracks}


def test_joints_take_the_crack_where_it_is_wanted():
    jointed = replace(HELD, jointed=True).solve().ground
    assert not jointed.wild
    assert any(joint.opening > 1.0 for joint in jointed.joints)


def test_a_cut_that_comes_after_the_crack_is_too_late():
    slab = replace(HELD, jointed=True, joint_every=8000.0, curing=1.0, cooling=20.0, spent=0.5)
    early, late = (replace(slab, cut_age=age).solve().ground for age in (0.5, 14.0))
    assert not early.wild
    assert late.wild and late.wild[0].birth < 14.0


def test_more_steel_makes_more_and_finer_cracks():
    rows = [replace(HELD, steel="12", spacing=s).solve().ground for s in (300.0, 200.0, 100.0)]
    widest = [max(c.width for c in row.wild) for row in rows]
    assert widest == sorted(widest, reverse=True)
    assert len(rows[-1].wild) > len(rows[0].wild)


def test_bars_on_the_ground_hold_nothing():
    lying = replace(HELD, steel="12", spacing=100.0, place="ground")
    assert [c.width for c in lying.solve().ground.wild] == [
        c.width for c in HELD.solve().ground.wild
    ]
    assert "on_ground" in [c.key for c in lying.solve().cautions]


def test_longer_curing_brings_the_first_crack_later():
    days = [replace(HELD, curing=c, model="ACI").solve().ground.first for c in (1.0, 7.0, 28.0)]
    assert days == sorted(days) and days[0] < days[-1]


def test_half_the_slab_is_pulled_no_harder():
    whole, half = FREE.solve().ground, replace(FREE, length=FREE.length / 2).solve().ground
    assert half.stress.max() <= whole.stress.max()


def test_even_concrete_is_pulled_alike_from_both_ends():
    state = replace(FREE, scatter=0.0, left=0.3, right=0.3).solve().ground
    assert state.stress == pytest.approx(state.stress[::-1], abs=1e-9)


def test_the_button_goes_to_the_day_of_the_next_crack():
    fresh = replace(HELD, age=1.0)
    assert not fresh.solve().cracks
    onward = fitted(fresh, fresh.counts[0].changes)[0]
    assert len(onward.solve().cracks) == 1
    assert onward.counts[0].changes == {}


def test_bars_that_are_cut_at_the_joints_leave_the_joints_that_work_as_they_were():
    slab = replace(HELD, steel="10", spacing=150.0, jointed=True, joint_every=8000.0, age=3650.0)
    bare = replace(slab, steel="none")
    state, plain = slab.solve().ground, bare.solve().ground
    assert slab.parted and not bare.parted
    assert [j.opening > 0.1 for j in state.joints] == [j.opening > 0.1 for j in plain.joints]
    widest = [max(j.opening for j in each.joints) for each in (state, plain)]
    assert widest[0] == pytest.approx(widest[1], rel=0.05)
    assert not replace(slab, through="through").parted


def test_what_is_felt_never_passes_the_strength_once_all_cracks_are_known():
    for spacing in (100.0, 200.0):
        slab = replace(HELD, steel="12", spacing=spacing)
        found = slab.ground.pieces[0][1].cracks
        assert found.complete and len(found.age) > 1
        assert found.tension.max() <= 1.0 + 1e-6
        felt = found.felt_stress(365.0) / found.life.at(365.0)[2]
        assert felt.max() <= 1.0 + 1e-6


def test_an_age_out_of_range_names_it():
    with pytest.raises(InputError, match="Age"):
        GroundSlab(age=0.0)


def keys(slab) -> list[str]:
    return [caution.key for caution in slab.solve().cautions]


def test_a_narrow_crack_that_no_bar_crosses_is_not_called_tight():
    """On its first days a crack is narrow; only bars keep it so."""
    short = GroundSlab(left=1.0, right=1.0, length=3000.0, exposure="dry", spent=0.5)
    young = replace(short, age=short.ground.first * 1.002).solve()
    assert 0 < young.verdict.width <= young.verdict.limit.width
    assert young.verdict.key == UNHELD and "Nothing holds" in young.verdict.why


def test_bars_that_yield_are_named():
    few = replace(HELD, steel="10", spacing=300.0, age=3650.0).solve()
    crossing = few.ground.pieces[0][1].cracks.crossing
    assert few.verdict.width * crossing.stiffness > crossing.capacity
    assert few.verdict.key == YIELDS
    many = replace(HELD, steel="12", spacing=75.0).solve()
    assert many.verdict.key == TIGHT and not many.ground.yields


def test_bars_across_hold_what_runs_along():
    """Held at its long sides a slab cracks along; bars along it cross none of that."""
    slab = replace(FREE, width=20000.0, sides=1.0, steel="12", spacing=100.0)
    one, both = slab.solve(), replace(slab, both_ways=True).solve()
    assert not one.ground.wild and one.across.wild
    assert one.verdict.key == TOO_WIDE and both.verdict.key == TIGHT
    assert "none crosses it" in one.verdict.why
    assert len(both.across.wild) > len(one.across.wild)
    assert both.numbers[5].value == pytest.approx(2 * one.numbers[5].value)


def test_a_square_slab_held_alike_all_round_fares_alike_both_ways():
    slab = replace(FREE, length=12000.0, width=12000.0, scatter=0.0, steel="10", both_ways=True)
    outcome = replace(slab, left=0.8, right=0.8, sides=0.8).solve()
    assert outcome.ground.stress == pytest.approx(outcome.across.stress, rel=1e-12)
    assert len(outcome.ground.wild) == len(outcome.across.wild)


def test_dowels_that_bind_make_the_slab_crack_as_if_it_had_no_joints():
    slab = replace(HELD, jointed=True)
    sliding, bound = (replace(slab, dowels=d).solve().ground for d in ("sliding", "bound"))
    assert not sliding.wild
    assert [c.width for c in bound.wild] == [c.width for c in HELD.solve().ground.wild]
    assert len(bound.joints) == len(sliding.joints) and not any(j.opening for j in bound.joints)
    assert "dowels" in keys(replace(slab, dowels="bound"))


def test_what_is_wrong_with_the_bars_is_said():
    barred = replace(HELD, steel="12", spacing=100.0)
    assert "deep" in keys(replace(barred, place="middle")) and "deep" not in keys(barred)
    assert "cover" in keys(replace(barred, exposure="salt", cover=30.0))
    assert "cover" not in keys(replace(barred, exposure="dry"))
    lying = keys(replace(barred, place="ground", exposure="salt", cover=30.0))
    assert "on_ground" in lying and "cover" not in lying


def test_joints_that_leak_are_said_only_where_water_must_be_held():
    jointed = replace(HELD, jointed=True)
    assert "leaking_joints" in keys(replace(jointed, exposure="leak_tight"))
    assert "leaking_joints" not in keys(jointed)


def test_a_crack_to_come_is_told_before_it_comes():
    first = HELD.ground.first
    assert "to_come" in keys(replace(HELD, age=first * 0.9))
    assert "to_come" not in keys(replace(HELD, age=first * 1.1))
    assert "to_come" not in keys(FREE)


@pytest.mark.parametrize(("code", "f_ct"), [("EN", 2.896), ("ACI", 0.33 * 30**0.5)])
def test_rules_between_walls_take_the_strength_of_the_family(code, f_ct):
    """EN 1992-1-1 Table 3.1: 0.30 fck^(2/3); ACI 224.2R: 4 sqrt(f'c) psi, 0.33 in MPa."""
    slab = replace(HELD, steel="12", spacing=150.0, code=code, spent=0.0)
    assert slab_between_walls(slab, 5e-4).tensile_strength == pytest.approx(f_ct, rel=0.01)
    told = {rule.key for rule in slab.solve().ground.rules}
    assert told == {"gilbert", "en_1992_3"}
    assert not HELD.solve().ground.rules


def test_rules_between_walls_see_the_whole_slab_unless_joints_part_it():
    slab = replace(HELD, steel="12", spacing=150.0, jointed=True)
    assert slab_between_walls(replace(slab, through="through"), 5e-4).length == slab.length
    assert slab_between_walls(slab, 5e-4).length == pytest.approx(slab.length / slab.panels)


@given(st.floats(-1.0, 5.0))
def test_an_age_is_dragged_in_decades_and_stays_in_range(decades):
    age = FREE.handle_changes("decades", decades)["age"]
    assert 1.0 <= age <= 3650.0
    if 0.0 <= decades <= 3.5:
        assert age == pytest.approx(10.0**decades)
