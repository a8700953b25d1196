"""What is derived about a slab that curls is what mechanics and a plate on hard ground find."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import diff, lambdify, simplify

from crackkit.derive.lift_off import bend, lift_off, lifted_length
from crackkit.derive.symbols import LETTERS
from crackkit.mechanics.plate_curl import lifted_length as length_of_mechanics
from crackkit.mechanics.plate_curl import lifted_rise
from crackkit.mechanics.plate_slab import Curvature, PlateSlab
from crackkit.mechanics.plate_state import plate_state

derived = {step.key: step.expression for step in lift_off().steps}


def number(key: str, values: dict) -> float:
    right = derived[key].rhs
    names = sorted(right.free_symbols, key=str)
    return lambdify(names, right, "math")(*(values[str(name)] for name in names))


cases = given(
    thick=st.floats(75.0, 300.0),
    difference=st.floats(5e-5, 1e-3),
    modulus=st.floats(15e3, 45e3),
    gamma=st.floats(20e-6, 26e-6),
)


def values_of(thick, difference, modulus, gamma) -> dict[str, float]:
    values = {"h": thick, "epsilon_d": difference, "E_c": modulus, "gamma": gamma}
    values["w"] = gamma * thick
    for key in ("kappa_0", "EI"):
        values[key] = number(key, values)
    return values


@cases
def test_length_and_rise_are_those_of_mechanics(thick, difference, modulus, gamma):
    values = values_of(thick, difference, modulus, gamma)
    known = values["EI"], values["kappa_0"], values["w"]
    assert number("L_a", values) == pytest.approx(float(length_of_mechanics(*known)), rel=1e-12)
    assert number("y_0", values) == pytest.approx(float(lifted_rise(*known)), rel=1e-12)


@cases
def test_the_depth_drops_out_of_the_rise_and_not_of_the_length(thick, difference, modulus, gamma):
    thin, deep = (values_of(k * thick, difference, modulus, gamma) for k in (1.0, 2.0))
    assert number("y_h", thin) == pytest.approx(number("y_0", thin), rel=1e-9)
    assert number("y_0", deep) == pytest.approx(number("y_0", thin), rel=1e-9)
    assert number("L_a", deep) == pytest.approx(2**0.5 * number("L_a", thin), rel=1e-9)


def test_where_the_air_ends_the_strip_has_no_bend_left_and_before_it_some():
    x = LETTERS["x"]
    assert simplify(bend().subs(x, lifted_length())) == 0
    assert simplify(diff(bend(), x)).is_negative


def test_a_long_plate_on_hard_ground_rises_as_derived():
    """Poisson's ratio 0, bent one way only: a strip."""
    values = values_of(150.0, 3e-4, 25e3, 24e-6)
    plate = PlateSlab(8000.0, 300.0, 150.0, 25e3, 10.0, values["w"], poisson=0.0)
    state = plate_state(plate, (), Curvature(values["kappa_0"], 0.0))
    assert state.corner_rise[0, 0] == pytest.approx(number("y_0", values), rel=5e-3)
