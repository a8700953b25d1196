"""What is derived about a slab on the ground is what the solver finds where it slides all along."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import lambdify

from crackkit.derive.drag import drag
from crackkit.mechanics.base_friction import slab_weight
from crackkit.mechanics.drag import drag_joint_spacing, drag_stress
from crackkit.mechanics.slab_on_friction import Strip, strip_state

derived = {step.key: step.expression for step in drag().steps}
GAMMA = float(slab_weight(1.0))  # N/mm3


def number(key: str, values: dict) -> float:
    right = derived[key].rhs
    names = sorted(right.free_symbols, key=str)
    return lambdify(names, right, "math")(*(values[str(name)] for name in names))


cases = given(
    length=st.floats(5e3, 80e3),
    depth=st.floats(75.0, 300.0),
    mu=st.floats(0.2, 2.5),
)


def values_of(length: float, depth: float, mu: float) -> dict[str, float]:
    return {"L_f": length, "h": depth, "mu": mu, "w": GAMMA * depth, "gamma": GAMMA, "f_ct": 2.0}


@cases
def test_the_derived_stress_is_that_of_the_old_rule(length, depth, mu):
    values = values_of(length, depth, mu)
    expected = drag_stress(mu, length, GAMMA)
    assert number("sigma", values) == pytest.approx(float(expected), rel=1e-12)
    assert number("sigma_g", values) == pytest.approx(float(expected), rel=1e-12)


@cases
def test_the_derived_length_is_where_the_stress_is_the_strength(length, depth, mu):
    values = values_of(length, depth, mu)
    longest = number("L_c", values)
    assert longest == pytest.approx(float(drag_joint_spacing(2.0, mu, GAMMA)), rel=1e-12)
    assert number("sigma", values | {"L_f": longest}) == pytest.approx(2.0)


@cases
def test_half_of_the_slab_is_dragged_by_the_force_of_half_its_length(length, depth, mu):
    values = values_of(length, depth, mu)
    force = number("F", values | {"x": length / 2})
    assert force / depth == pytest.approx(number("sigma", values), rel=1e-12)


@cases
def test_a_slab_that_slides_all_along_is_pulled_as_derived_nearly_to_its_middle(length, depth, mu):
    """What has not slipped enough yet, in its very middle, is worth a hundredth at most."""
    values = values_of(length, depth, mu)
    strip = Strip(length, depth, mu * GAMMA * depth, 0.01)
    state = strip_state(strip, np.array([1e5]), np.array([1e-2]))
    assert float(np.max(state.stress)) == pytest.approx(number("sigma", values), rel=0.01)
