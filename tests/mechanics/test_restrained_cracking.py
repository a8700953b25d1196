"""Slabs held at both ends: what the model of 1992 must keep, whatever its numbers."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from crackkit.mechanics.restrained_cracking import (
    RestrainedSlab,
    edge_restraint_strain,
    end_restraint_strain,
    final_cracks,
    first_crack,
    greatest_spacing_en,
)

SLAB = RestrainedSlab(5000.0, 150000.0, 900.0, 12.0, 2.0, 25000.0, 2.5, 600e-6)
slabs = st.builds(
    RestrainedSlab,
    length=st.floats(3000.0, 20000.0),
    concrete_area=st.just(150000.0),
    bars_area=st.floats(700.0, 2500.0),
    diameter=st.floats(8.0, 16.0),
    tensile_strength=st.floats(1.5, 3.0),
    concrete_modulus=st.floats(20000.0, 35000.0),
    creep=st.floats(1.5, 3.5),
    shrinkage=st.floats(450e-6, 800e-6),
).filter(lambda slab: 0.02 < pull_of_bars(slab) < 0.7)


def pull_of_bars(slab):
    """What bars that cannot shorten do to uncracked concrete, over its strength."""
    slack = slab.shrinkage * slab.concrete_modulus / (1 + slab.creep) - slab.tensile_strength
    ne = slab.steel_modulus * (1 + slab.creep) / slab.concrete_modulus
    return ne * slab.rho * slack / slab.tensile_strength


@given(slabs)
def test_after_the_first_crack_bars_and_concrete_are_in_balance_and_the_slab_keeps_its_length(slab):
    c, s0 = first_crack(slab), slab.transfer_length
    far = c.concrete_stress * slab.concrete_area + c.far_steel_stress * slab.bars_area
    assert far == pytest.approx(c.force, rel=1e-9)
    drop = c.steel_stress - c.far_steel_stress
    stretch = c.far_steel_stress * slab.length + drop * 2 * s0 / 3
    assert stretch == pytest.approx(0.0, abs=1e-6 * c.steel_stress * slab.length)


@given(slabs)
def test_at_the_end_the_concrete_stays_below_its_strength_and_the_bars_keep_the_length(slab):
    c, s0 = final_cracks(slab), slab.transfer_length
    assert c.concrete_stress <= slab.tensile_strength * (1 + 1e-9)
    assert c.number * c.spacing == pytest.approx(slab.length)
    assert c.spacing <= c.greatest_spacing * (1 + 1e-9)
    far = -c.share * c.steel_stress
    kept = far * c.spacing + (c.steel_stress - far) * 2 * s0 / 3
    assert kept == pytest.approx(0.0, abs=1e-6 * c.steel_stress * c.spacing)
    assert c.width > 0


@given(slabs, st.floats(1.05, 1.6))
def test_more_steel_never_widens_the_cracks_of_a_long_slab(slab, times):
    long = replace(slab, length=200000.0)
    more = replace(long, bars_area=times * long.bars_area)
    assume(pull_of_bars(more) < 0.7)
    assert final_cracks(more).width <= final_cracks(long).width * 1.01


@given(slabs, st.floats(1.0, 1.5))
def test_more_shrinkage_makes_more_cracks(slab, times):
    dry = replace(slab, shrinkage=times * slab.shrinkage)
    assume(pull_of_bars(dry) < 0.7)
    more = final_cracks(dry)
    assert more.number >= final_cracks(slab).number


@given(slabs)
def test_thin_bars_make_finer_cracks(slab):
    assume(slab.diameter > 9)
    long = replace(slab, length=200000.0)
    thin = replace(long, diameter=0.8 * long.diameter)
    assert final_cracks(thin).width < final_cracks(long).width


def test_the_transfer_length_of_later_papers_is_a_third_longer():
    assert SLAB.transfer_length == pytest.approx(200.0)
    assert replace(SLAB, transfer_factor=1.33).transfer_length == pytest.approx(266.0)


@pytest.mark.parametrize("wrong", [{"length": 0.0}, {"creep": -1.0}, {"bars_area": 0.0}])
def test_a_slab_without_size_is_refused(wrong):
    with pytest.raises(ValueError, match="above 0"):
        replace(SLAB, **wrong)


def test_a_slab_too_short_for_its_bars_is_refused():
    with pytest.raises(ValueError, match="too short"):
        first_crack(replace(SLAB, length=390.0))


def test_shrinkage_that_does_not_reach_the_strength_is_refused():
    with pytest.raises(ValueError, match="come to rest"):
        final_cracks(replace(SLAB, shrinkage=50e-6))


def test_strains_of_the_tank_code_worked_by_hand():
    """0.5 x 7 x 2.9 x (1 + 1/0.07)/200 000 = 7.7575e-4; 0.5 x 400e-6 = 200e-6."""
    assert end_restraint_strain(0.01, 7.0, 2.9) == pytest.approx(7.7575e-4)
    assert end_restraint_strain(0.01, 7.0, 2.9, k=0.65) == pytest.approx(0.65 * 7.7575e-4)
    assert edge_restraint_strain(0.5, 400e-6) == pytest.approx(200e-6)


@given(st.floats(0.002, 0.02), st.floats(1.0, 3.0))
def test_more_steel_means_less_strain_and_closer_cracks(rho, times):
    assert end_restraint_strain(times * rho, 7.0, 2.9) <= end_restraint_strain(rho, 7.0, 2.9)
    assert greatest_spacing_en(40, 12, times * rho) <= greatest_spacing_en(40, 12, rho)
