"""A slab between walls: its stress grows, creep eases it, and it cracks within the year."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.creep import creep_coefficient
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.held_slab import held_stress
from crackkit.mechanics.shrinkage import free_shrinkage
from crackkit.mechanics.strength_in_time import concrete_in_time

AGES = np.geomspace(7.0, 3650.0, 60)
SLAB = DryingSlab(strength=25.0, humidity=50.0, thickness=150.0)
CODES = ("ACI", "EN")
codes = st.sampled_from(CODES)
held = st.floats(0.05, 1.0)


def of_slab(code):
    return concrete(SLAB.strength, SLAB.thickness, code)


@given(code=codes, restraint=held)
def test_it_grows_for_years_yet_stays_well_below_what_it_were_without_creep(code, restraint):
    stress = held_stress(AGES, SLAB, of_slab(code), restraint, code)
    strain = free_shrinkage(AGES, SLAB, code).total
    elastic = of_slab(code).modulus * restraint * (strain - strain[0])
    assert stress[0] == 0.0
    assert np.all(np.diff(stress[AGES < 365.0]) > 0.0)
    assert 0.25 * elastic[-1] < stress[-1] < 0.6 * elastic[-1]


@pytest.mark.parametrize("code", CODES)
def test_held_firmly_it_cracks_within_the_year(code):
    tensile = concrete_in_time(AGES, of_slab(code), code).tensile
    stress = held_stress(AGES, SLAB, of_slab(code), 1.0, code)
    assert AGES[np.argmax(stress > tensile)] < 365.0
    assert stress[-1] > tensile[-1]


@given(code=codes, longer=st.floats(1.0, 50.0), damper=st.floats(1.0, 30.0))
def test_curing_puts_it_off_and_damp_air_lessens_it(code, longer, damper):
    def at(slab, days):
        return np.interp(days, AGES, held_stress(AGES, slab, of_slab(code), 1.0, code))

    cured = replace(SLAB, curing_days=SLAB.curing_days + longer)
    damp = replace(SLAB, humidity=SLAB.humidity + damper)
    assert at(cured, 90.0) < at(SLAB, 90.0)
    assert at(damp, 3650.0) < at(SLAB, 3650.0)


@pytest.mark.parametrize("code", CODES)
def test_creep_strain_is_that_of_the_code_whatever_modulus_it_goes_with(code):
    """One step: the strain that the stress makes, less its elastic part, is chi times creep."""
    it = of_slab(code)
    stress = held_stress([7.0, 400.0], SLAB, it, 1.0, code)[-1]
    modulus = concrete_in_time(7.0, it, code).modulus
    strain = np.diff(free_shrinkage([7.0, 400.0], SLAB, code).total)[0]
    creep = strain / stress - 1.0 / modulus
    phi = creep_coefficient(400.0, 7.0, SLAB, code)
    assert creep == pytest.approx(0.8 * phi / {"ACI": modulus, "EN": 1.05 * it.modulus}[code])


@pytest.mark.parametrize("code", CODES)
def test_the_ageing_coefficient_hardly_matters_in_fine_steps(code):
    ends = [held_stress(AGES, SLAB, of_slab(code), 1.0, code, chi)[-1] for chi in (0.5, 1.0)]
    assert ends[1] == pytest.approx(ends[0], rel=0.02)


def test_a_code_without_creep_is_refused():
    with pytest.raises(ValueError, match="ACI or EN"):
        held_stress(AGES, SLAB, of_slab("EN"), 1.0, "MC2010")


def test_ages_must_rise_here_too():
    with pytest.raises(ValueError, match="rise"):
        held_stress(AGES[::-1], SLAB, of_slab("EN"), 1.0, "EN")
