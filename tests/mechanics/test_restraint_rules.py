"""Short rules of restrained cracking, against the balance from which they come."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.restraint_rules import (
    critical_ratio,
    greatest_spacing_bs,
    ratio_for_width,
    vetter_least_ratio,
    vetter_spacing,
)


@given(st.floats(0.003, 0.02), st.floats(8.0, 20.0), st.floats(250e-6, 800e-6))
def test_at_vetters_spacing_the_bars_keep_their_length(rho, diameter, shrinkage):
    fct, E, Es, u = 2.0, 25000.0, 200000.0, 3.0
    L = vetter_spacing(fct, rho, diameter, u, shrinkage, E)
    far = fct * Es / E - shrinkage * Es  # squeezed with the concrete
    at_crack = far + fct / rho
    reach = fct * diameter / (4 * rho * u)
    assert far * L + (at_crack - far) * reach == pytest.approx(0.0, abs=1e-6 * fct / rho * reach)


def test_at_vetters_least_steel_the_bars_just_yield_where_concrete_and_bars_stretch_alike():
    rho = vetter_least_ratio(2.0, 460.0, 8.0)
    assert 2.0 * (1 / rho + 8.0) == pytest.approx(460.0)


def test_with_the_critical_steel_bars_yield_as_the_concrete_lets_go():
    assert critical_ratio(1.6, 460.0) * 460.0 == pytest.approx(1.6)


@given(st.floats(0.2, 1.0), st.floats(10.0, 40.0), st.floats(8.0, 20.0), st.floats(0.05, 0.4))
def test_steel_for_a_width_gives_that_width_with_the_largest_spacing(R, fall, diameter, width):
    rho = ratio_for_width(R, fall, 1.2e-5, diameter, width)
    spacing = greatest_spacing_bs(diameter, rho, 2 / 3)
    assert spacing * R * fall * 1.2e-5 == pytest.approx(width)
