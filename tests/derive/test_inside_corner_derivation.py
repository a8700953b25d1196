"""What is derived about an inside corner is what mechanics and a meshed slab find."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import diff, lambdify, pi, simplify, sin, solve, symbols

from crackkit.derive.inside_corner import airy, corner_exponent, free_sides, inside_corner, theta
from crackkit.derive.symbols import LETTERS
from crackkit.derive.written import with_numbers, written
from crackkit.mechanics.fracture_energy import averaging_length
from crackkit.mechanics.plane_averages import corner_path, opening_direction
from crackkit.mechanics.williams import opening_exponent, opening_stress, shearing_exponent
from crackkit.structures.corner_restraint import restraint, typical
from crackkit.structures.corner_shapes import form
from crackkit.structures.corner_slab import CornerSlab

derived = {step.key: step.expression for step in inside_corner().steps}
r, lamda = LETTERS["r"], LETTERS["lamda"]
w = symbols("w", positive=True)
CONDITION = lambdify([w, lamda], free_sides(w), "math")


def number(key: str, values: dict) -> float:
    right = derived[key].rhs
    names = sorted(right.free_symbols, key=str)
    return lambdify(names, right, "math")(*(values[str(name)] for name in names))


def test_the_stresses_keep_their_balance_and_the_body_together():
    """Airy's function satisfies the equation of a plate without forces in it, twice Laplace."""

    def laplace(f):
        return diff(f, r, 2) + diff(f, r) / r + diff(f, theta, 2) / r**2

    assert simplify(laplace(laplace(airy()))) == 0


@given(angle=st.floats(math.pi + 0.05, 2 * math.pi))
def test_the_condition_is_zero_at_the_exponent_of_mechanics(angle):
    assert CONDITION(angle, opening_exponent(angle)) == pytest.approx(0.0, abs=1e-9)


def test_the_exponent_of_an_l_is_that_of_mechanics_and_of_williams():
    """0.5445: WILLIAMS1952, figure for a right angle cut out, as printed in `corners.toml`."""
    assert float(corner_exponent()) == pytest.approx(opening_exponent(1.5 * math.pi), abs=1e-12)
    assert number("lamda", {}) == pytest.approx(opening_exponent(1.5 * math.pi), abs=5e-5)
    left, right = derived["free"].lhs, derived["free"].rhs
    assert float((left - right).subs(lamda, corner_exponent())) == pytest.approx(0.0, abs=1e-12)


def test_no_other_power_between_0_and_the_found_one_leaves_the_sides_free():
    condition = lambdify(lamda, free_sides(3 * pi / 2), "numpy")
    below = condition(np.linspace(0.01, number("lamda", {}) - 1e-3, 400))
    assert np.all(below > 0)


def test_round_the_tip_of_a_crack_the_power_is_one_half():
    assert simplify(free_sides(2 * pi) - sin(2 * pi * lamda)) == 0
    assert min(solve(free_sides(2 * pi), lamda)) == derived["crack"].rhs
    assert number("crack", {}) == pytest.approx(opening_exponent(2 * math.pi), abs=1e-12)


@given(near=st.floats(1.0, 100.0))
def test_half_as_far_it_is_so_many_times_as_great_as_derived(near):
    angle, told = 1.5 * math.pi, number("nearer", {"lamda": number("lamda", {})})
    here, half = (opening_stress(angle, at, 0.0)[1] for at in (near, near / 2))
    assert half / here == pytest.approx(told, rel=1e-4)


@given(length=st.floats(5.0, 500.0), much=st.floats(0.1, 100.0))
def test_the_mean_is_that_of_stresses_added_up(length, much):
    """Places closer to the corner where the stress is steep; the mean is finite and found."""
    lam = number("lamda", {})
    share = ((np.arange(4000) + 0.5) / 4000) ** 4
    weight = 4.0 * ((np.arange(4000) + 0.5) / 4000) ** 3 / 4000
    summed = float(np.sum(weight * much * (share * length) ** (lam - 1)))
    told = number("sigma_m", {"C": much, "d": length, "lamda": lam})
    assert told == pytest.approx(summed, rel=1e-4)


@given(
    modulus=st.floats(5e3, 45e3),
    energy=st.floats(0.03, 0.25),
    strength=st.floats(0.8, 6.0),
)
def test_the_length_is_that_of_the_panel_and_does_what_it_is_for(modulus, energy, strength):
    values = {"E_c": modulus, "G_F": energy, "f_ct": strength}
    values["d"] = number("d", values)
    assert values["d"] == pytest.approx(averaging_length(modulus, energy, strength), rel=1e-12)
    values["K_c"] = number("K_c", values)
    assert number("sigma_c", values) == pytest.approx(strength, rel=1e-9)


def steepness(held: str) -> float:
    """Mean over 62 mm over that over 124 mm, at a corner between sides of 3 m."""
    slab = CornerSlab(held=held)
    state = typical(form(slab), restraint(slab))
    corner = (slab.length - slab.cut_length, slab.width - slab.cut_width)
    way = opening_direction(state.mesh, state, corner, 124.0)
    paths = (corner_path(state.mesh, corner, size, way) for size in (62.0, 124.0))
    short, long = (path.opening_mean(state) for path in paths)
    return short / long


def test_the_means_at_the_corner_of_a_meshed_slab_fall_as_derived():
    """Pulled open evenly by edges held all round; 2 % for what else the slab does there."""
    told = number("nearer", {"lamda": number("lamda", {})})
    assert steepness("edges") == pytest.approx(told, rel=0.02)


def test_a_corner_that_is_sheared_as_well_is_less_steep_than_derived():
    """Its second power, 0.91, is nearer to 1: see `shearing_exponent`."""
    told = number("nearer", {"lamda": number("lamda", {})})
    assert 2 ** (1 - shearing_exponent(1.5 * math.pi)) < steepness("ends") < told


def test_the_panel_averages_over_the_length_that_is_derived():
    state = CornerSlab().cornered
    given_ = {"E_c": state.modulus, "G_F": state.toughness, "f_ct": state.strength, "pi": math.pi}
    found = {one.step.key: one.value for one in with_numbers(written("inside_corner"), given_)}
    assert found["d"] == pytest.approx(state.material_length, rel=1e-9)
    assert found["nearer"] == pytest.approx(2 ** (1 - opening_exponent(1.5 * math.pi)), rel=1e-4)
