"""Stress of concrete held back: no creep, plain creep, and creep that is solved exactly."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.creep import creep_coefficient
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.restraint_stress import (
    age_adjusted_modulus,
    grown_stress,
    relaxation,
    restraint_stress,
)
from crackkit.mechanics.strength_in_time import concrete_in_time

E = 25000.0
AGES = np.geomspace(7.0, 3650.0, 60)
STRAIN = 400e-6 * (AGES - 7.0) / (AGES + 93.0)
restraints = st.floats(0.0, 1.0)


def none(ages, loaded):
    return np.zeros(np.broadcast_shapes(np.shape(ages), np.shape(loaded)))


def real(ages, loaded):
    slab = DryingSlab(strength=25.0, humidity=50.0, thickness=150.0)
    return creep_coefficient(ages, loaded, slab, "ACI")


def fluid(ages, loaded):
    """A dashpot beside the spring: creep runs on evenly, one elastic strain in 100 days."""
    return np.maximum(ages - loaded, 0.0) / 100.0


@given(restraint=restraints)
def test_without_creep_it_is_the_modulus_times_the_strain_held_back(restraint):
    stress = restraint_stress(AGES, STRAIN, restraint, E, none)
    assert stress == pytest.approx(E * restraint * STRAIN, rel=1e-9, abs=1e-12)


def test_without_creep_each_increment_has_the_modulus_of_its_step():
    stress = restraint_stress([1.0, 2.0, 3.0], [1e-4, 2e-4, 4e-4], 1.0, [1e4, 2e4, 3e4], none)
    assert stress == pytest.approx([1.0, 2.0, 6.0], rel=1e-12)


@given(creep=st.floats(0.0, 5.0), ageing=st.floats(0.0, 1.0))
def test_one_step_is_the_age_adjusted_modulus(creep, ageing):
    def constant(ages, loaded):
        return creep * (np.asarray(ages) > loaded)

    stress = restraint_stress([7.0, 365.0], [0.0, 3e-4], 1.0, E, constant, ageing)
    assert stress[-1] == pytest.approx(3e-4 * age_adjusted_modulus(E, creep, ageing), rel=1e-12)
    assert stress[-1] == pytest.approx(grown_stress(3e-4, E, creep, ageing), rel=1e-12)


def test_one_step_by_hand():
    """E 25 GPa, 300e-6, phi 2.5: elastic 7.50, effective modulus 2.14, age-adjusted 2.50 MPa."""
    told = [grown_stress(300e-6, E, 0.0), grown_stress(300e-6, E, 2.5, 1.0)]
    assert [*told, grown_stress(300e-6, E, 2.5)] == pytest.approx([7.5, 2.1429, 2.5], rel=1e-4)


def test_even_shortening_of_a_spring_with_a_dashpot_has_a_known_end():
    """ds/dt = E de/dt - s/tau, so s = E tau de/dt (1 - exp(-t/tau))."""
    t = np.linspace(0.0, 400.0, 401)
    stress = restraint_stress(10.0 + t, 1e-6 * t, 1.0, E, fluid, ageing=0.5)
    assert stress == pytest.approx(E * 100.0 * 1e-6 * -np.expm1(-t / 100.0), rel=1e-4, abs=1e-12)


def test_a_sudden_shortening_of_a_spring_with_a_dashpot_fades_exponentially():
    t = np.linspace(0.0, 400.0, 401)
    stress = restraint_stress(10.0 + t, np.full(401, 1e-4), 1.0, E, fluid, ageing=0.5)
    assert stress == pytest.approx(E * 1e-4 * np.exp(-t / 100.0), rel=1e-4)


def test_a_strain_that_stays_relaxes_in_one_step_as_the_theorem_says():
    stress = restraint_stress([28.0, 1000.0], [1e-4, 1e-4], 1.0, E, real)
    assert stress[0] == pytest.approx(1e-4 * E, rel=1e-12)
    phi = real(1000.0, 28.0)
    assert stress[1] == pytest.approx(1e-4 * relaxation(E, phi), rel=1e-12)


@given(restraint=restraints)
def test_creep_eases_it_and_never_turns_it_into_pressure(restraint):
    stress = restraint_stress(AGES, STRAIN, restraint, E, real)
    assert np.all(stress <= E * restraint * STRAIN + 1e-12)
    assert np.all(stress >= -1e-12)


@given(restraint=restraints, share=restraints)
def test_a_looser_hold_stresses_less_in_proportion(restraint, share):
    firm = restraint_stress(AGES, STRAIN, restraint, E, real)
    loose = restraint_stress(AGES, STRAIN, share * restraint, E, real)
    assert loose == pytest.approx(share * firm, rel=1e-9, abs=1e-12)


def test_histories_add_up():
    one, two = STRAIN, 1e-4 * np.sqrt(AGES / 3650.0)
    apart = [restraint_stress(AGES, strain, 1.0, E, real) for strain in (one, two)]
    together = restraint_stress(AGES, one + two, 1.0, E, real)
    assert together == pytest.approx(sum(apart), rel=1e-9)


def test_finer_steps_change_little():
    """Steps of 60 to the ten years are within 1 % of 480."""

    def end(number):
        t = np.geomspace(7.0, 3650.0, number)
        aged = concrete_in_time(t, concrete(25.0, 150.0, "ACI"), "ACI")
        strain = 400e-6 * (t - 7.0) / (t + 93.0)
        return np.interp(
            [90.0, 365.0, 3650.0], t, restraint_stress(t, strain, 1, aged.modulus, real)
        )

    assert end(60) == pytest.approx(end(480), rel=0.01)


def test_shortening_that_comes_late_leaves_more_stress():
    early = np.minimum(AGES - 7.0, 21.0) / 21.0 * 4e-4
    late = np.clip(AGES - 1000.0, 0.0, 21.0) / 21.0 * 4e-4
    stress = [restraint_stress(AGES, strain, 1.0, E, real)[-1] for strain in (early, late)]
    assert stress[1] > 1.2 * stress[0]


@pytest.mark.parametrize(
    ("ages", "restraint", "told"),
    [
        ([7.0, 7.0], 1.0, "rise"),
        ([0.0, 7.0], 1.0, "above zero"),
        ([9.0, 7.0], 1.0, "rise"),
        ([7.0, 28.0], 1.1, "from 0 to 1"),
        ([7.0, 28.0], -0.1, "from 0 to 1"),
    ],
)
def test_what_is_out_of_range_is_refused(ages, restraint, told):
    with pytest.raises(ValueError, match=told):
        restraint_stress(ages, [0.0, 1e-4], restraint, E, none)
