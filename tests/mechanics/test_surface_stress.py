"""Stress of a slab in itself while it dries: balance, relaxation, and the cap that is confessed."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize

from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.humidity_shrinkage import (
    ShrinkageHistory,
    dry_shrinkage,
    lever_weights,
    shrinkage_history,
)
from crackkit.mechanics.moisture_diffusion import (
    SEALED,
    Face,
    depth_weights,
    drying_history,
    on_ground,
)
from crackkit.mechanics.moisture_diffusivity import diffusivity_mc1990
from crackkit.mechanics.restraint_stress import restraint_stress
from crackkit.mechanics.strength_in_time import concrete_in_time
from crackkit.mechanics.surface_stress import kept_below, self_balanced_stress, surface_stress

both_codes = pytest.mark.parametrize("code", ["EN", "ACI"])


def case(
    thickness=150.0, strength=30.0, air=0.5, curing=7.0, film=2.6, bottom=SEALED, code="EN", sides=1
):
    top = Face(air, film)
    moisture = drying_history(
        thickness, diffusivity_mc1990(strength), top, top if sides == 2 else bottom
    )
    shrinkage = shrinkage_history(moisture, dry_shrinkage(strength + 8.0))
    slab = DryingSlab(strength, 100.0 * air, thickness, sides, curing)
    return shrinkage, surface_stress(shrinkage, slab, concrete(strength, thickness, code), code)


def out_of_balance(stress, depths):
    """Mean pull and bending left over, both as stress."""
    L = depths[-1]
    pull, bending = stress @ depth_weights(depths) / L, stress @ lever_weights(depths) / L**2
    return max(np.abs(pull).max(), np.abs(bending).max())


def none(ages, loaded):
    return np.zeros(np.broadcast_shapes(np.shape(ages), np.shape(loaded)))


@given(
    st.floats(75.0, 300.0),
    st.floats(20.0, 60.0),
    st.floats(0.3, 0.95),
    st.floats(1.0, 28.0),
    st.floats(0.8, 8.0),
    st.sampled_from([SEALED, on_ground(), on_ground(0.85)]),
    st.sampled_from(["EN", "ACI"]),
    st.sampled_from([1, 2]),
)
@settings(max_examples=60, deadline=None)
def test_stress_balances_itself_with_and_without_the_cap(
    thickness, strength, air, curing, film, bottom, code, sides
):
    _shrinkage, ours = case(thickness, strength, air, curing, film, bottom, code, sides)
    assert out_of_balance(ours.uncracked, ours.depths) < 1e-10
    assert out_of_balance(ours.stress, ours.depths) < 1e-10
    assert (ours.stress <= ours.tensile[:, None]).all()


def test_without_creep_it_is_stiffness_times_what_does_not_fit():
    shrinkage, _ours = case()
    stress = self_balanced_stress(shrinkage, 7.0, 30e3, none, poisson=0.2)
    assert stress == pytest.approx(30e3 / 0.8 * shrinkage.uneven, rel=1e-9, abs=1e-9)


@both_codes
def test_each_layer_relaxes_as_held_concrete_does(code):
    """Column by column it is the stress history of a fully held layer."""
    shrinkage, ours = case(code=code)
    slab, mix, ages = DryingSlab(30.0, 50.0, 150.0), concrete(30.0, 150.0, code), shrinkage.days + 7
    modulus = concrete_in_time(ages, mix, code).modulus
    creep = creep_at_loading(slab, mix, code)
    for k in (0, 10, 32):
        alone = restraint_stress(ages, shrinkage.uneven[:, k], 1.0, modulus, creep)
        assert ours.uncracked[:, k] == pytest.approx(alone / 0.8, rel=1e-9, abs=1e-9)


def test_creep_eases_the_skin():
    shrinkage, ours = case()
    stiff = self_balanced_stress(shrinkage, 7.0, concrete(30.0, 150.0, "EN").modulus, none)
    assert 0.0 < ours.uncracked[:, 0].max() < 0.9 * stiff[:, 0].max()


@both_codes
def test_a_slab_in_dry_air_crazes_and_says_so(code):
    _shrinkage, ours = case(code=code)
    assert ours.crazes.any() and not ours.crazes[0]
    assert ours.uncracked.max() > 1.5 * ours.tensile.max()
    assert 2.0 < ours.crazed_depth.max() < 30.0
    assert "stops at the strength" in ours.note
    assert ours.capped[ours.crazes & (ours.days < 30.0), 0].all()
    worst = ours.uncracked[:, 0] / ours.tensile
    assert f"{worst.max():.1f} times" in ours.note


def test_a_slab_in_damp_air_stays_whole_and_nothing_is_capped():
    _shrinkage, ours = case(air=0.95)
    assert not ours.crazes.any() and ours.note == ""
    assert not ours.crazed_depth.any()
    assert ours.stress == pytest.approx(ours.uncracked, abs=1e-12)


@both_codes
def test_a_slower_film_spares_the_skin(code):
    greatest = [case(film=f, code=code)[1].uncracked.max() for f in (1000.0, 2.6, 0.8, 0.25)]
    assert (np.diff(greatest) < 0).all()


def test_drier_air_strains_the_skin_more():
    greatest = [case(air=air)[1].uncracked.max() for air in (0.9, 0.7, 0.5, 0.3)]
    assert (np.diff(greatest) > 0).all()


def test_the_skin_is_pulled_first_and_pressed_at_last():
    _shrinkage, ours = case()
    assert ours.uncracked[10, 0] > 0.0 > ours.uncracked[-1, 0]


def test_even_shortening_leaves_no_stress():
    depths, days = np.linspace(0.0, 150.0, 21), np.array([0.0, 1.0, 10.0])
    slope = np.outer([0.0, 1e-4, 3e-4], 1.0 + depths / 150.0)
    stress = self_balanced_stress(ShrinkageHistory(depths, days, slope), 7.0, 30e3, none)
    assert stress == pytest.approx(np.zeros_like(slope), abs=1e-9)


def test_the_cap_finds_the_shift_that_another_way_of_seeking_finds():
    """With even nodes a balance is the least of a convex energy; SciPy seeks that."""
    depths = np.linspace(0.0, 150.0, 2001)
    lever, weights = 0.5 - depths / 150.0, depth_weights(depths) / 150.0
    s = np.exp(-depths / 12.0)
    uneven = ShrinkageHistory(depths, np.array([1.0]), 12.0 * s[None, :]).uneven

    def energy(shift):
        raised = uneven[0] + shift[0] + shift[1] * lever
        bound = np.minimum(raised, 2.0)
        return weights @ (0.5 * bound**2 + 2.0 * (raised - bound))

    found = minimize(energy, [0.0, 0.0], method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 0})
    expected = np.minimum(uneven[0] + found.x[0] + found.x[1] * lever, 2.0)
    assert kept_below(uneven, [2.0], depths)[0] == pytest.approx(expected, abs=1e-4)


def test_an_unknown_code_is_refused():
    with pytest.raises(ValueError, match="code"):
        case(code="AS")
