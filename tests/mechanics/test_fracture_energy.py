"""Fracture energy and the lengths that follow, against values worked out by hand."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.fracture_energy import (
    averaging_length,
    characteristic_length,
    fracture_energy,
    fracture_energy_by_aggregate,
)

strengths = st.floats(10.0, 100.0)


def test_model_code_2010_gives_140_5_newton_per_metre_for_a_mean_strength_of_38():
    """fib Model Code 2010, 5.1.5.2, from memory: 73 fcm^0.18 N/m."""
    assert fracture_energy(38.0) == pytest.approx(0.1405, abs=5e-5)


@pytest.mark.parametrize(("aggregate", "energy"), [(8, 0.0636), (16, 0.0764), (32, 0.1477)])
def test_model_code_1990_counts_the_stones(aggregate, energy):
    """CEB-FIP Model Code 1990, from memory: 25, 30 and 58 N/m times (fcm/10)^0.7."""
    assert fracture_energy_by_aggregate(38.0, aggregate) == pytest.approx(energy, abs=6e-5)


@pytest.mark.parametrize(("energy", "length"), [(0.1405, 550.0), (0.0764, 299.0)])
def test_characteristic_length_of_c30(energy, length):
    """E 32.8 GPa and ft 2.90 MPa (EN 1992-1-1 for C30), worked out by hand."""
    assert characteristic_length(32.84e3, energy, 2.896) == pytest.approx(length, rel=0.002)


@given(st.floats(1e4, 5e4), st.floats(0.02, 0.3), st.floats(1.0, 6.0))
def test_over_that_length_a_straight_crack_that_runs_means_the_tensile_strength(E, G, ft):
    """Mean of K/sqrt(2 pi r) over 0 to d, with K^2 = E G_F, is ft."""
    d = averaging_length(E, G, ft)
    mean = np.sqrt(E * G / (2 * np.pi)) * 2 / np.sqrt(d)
    assert mean == pytest.approx(ft, rel=1e-12)


@given(strengths, strengths, st.floats(8.0, 32.0))
def test_stronger_concrete_takes_more_work_to_tear(one, other, aggregate):
    low, high = sorted([one, other])
    assert fracture_energy(low) <= fracture_energy(high)
    both = fracture_energy_by_aggregate(np.array([low, high]), aggregate)
    assert both[0] <= both[1]


def test_what_is_no_concrete_is_refused():
    with pytest.raises(ValueError, match="greater than zero"):
        fracture_energy(0.0)
    with pytest.raises(ValueError, match="8 to 32"):
        fracture_energy_by_aggregate(38.0, 64.0)
    with pytest.raises(ValueError, match="above zero"):
        characteristic_length(30e3, 0.1, 0.0)
