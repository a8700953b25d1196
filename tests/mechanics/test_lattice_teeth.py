"""Bonds that give way along the edge of a saw."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.lattice_teeth import GONE, saw_teeth

E = 15e3
LENGTHS = st.floats(5.0, 500.0)
STRENGTHS = st.floats(0.5, 8.0)
ENERGIES = st.floats(0.005, 0.2)


def teeth(length, strength, energy):
    return saw_teeth(np.array([length]), E, np.array([strength]), energy)


@settings(max_examples=60)
@given(LENGTHS, STRENGTHS, ENERGIES)
def test_all_steps_together_take_up_the_work_of_tearing(length, strength, energy):
    found = teeth(length, strength, energy)
    drops = -np.diff([*found.shares[0, :-1], 0.0])
    torn = (0.5 * drops * E * found.limits[0] ** 2 / length).sum()
    assert torn == pytest.approx(energy, rel=0.01)


@settings(max_examples=60)
@given(LENGTHS, STRENGTHS, ENERGIES)
def test_the_first_step_comes_at_the_strength_and_later_ones_at_less_stress(
    length, strength, energy
):
    found = teeth(length, strength, energy)
    stress = found.shares[0, :-1] * E * found.limits[0] / length
    assert stress[0] == pytest.approx(found.strengths[0], rel=1e-9)
    assert (np.diff(stress) < 0).all()
    assert (np.diff(found.limits[0]) > 0).all()


@settings(max_examples=60)
@given(LENGTHS, STRENGTHS, ENERGIES)
def test_strength_is_lowered_only_where_the_bond_is_too_long_for_the_work(length, strength, energy):
    found = teeth(length, strength, energy).strengths[0]
    assert found <= strength * (1 + 1e-12)
    if energy * E / (strength**2 * length) > 1.4:  # the line ends at five times its beginning
        assert found == pytest.approx(strength)
    if energy * E / (strength**2 * length) < 1.0:
        assert found < 0.9 * strength


def test_a_bond_gives_way_along_a_straight_line_by_hand():
    """A line that ends at four times its beginning: steps at 1, 2, 3 times with 3, 2, 1 MPa.

    Stiffness falls to 1/3 and 1/9; the work is (2/3 + 4 (1/3 - 1/9) + 9/9)/2 = 23/18 of 3 MPa
    times 0.02 mm.
    """
    found = teeth(100.0, 3.0, 23.0 / 18.0 * 3.0 * 0.02)
    np.testing.assert_allclose(found.limits[0], [0.02, 0.04, 0.06], rtol=1e-4)
    np.testing.assert_allclose(found.shares[0], [1.0, 1.0 / 3.0, 1.0 / 9.0, GONE], rtol=1e-4)
    assert found.strengths[0] == pytest.approx(3.0)


@pytest.mark.parametrize("wrong", [(0.0, 3.0, 0.06), (20.0, 0.0, 0.06), (20.0, 3.0, 0.0)])
def test_what_is_not_there_is_refused(wrong):
    with pytest.raises(ValueError, match="above zero"):
        teeth(*wrong)
