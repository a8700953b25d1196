"""What is derived about a pulled member is what mechanics works out where the grip is even."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import lambdify

from crackkit.derive.transfer_length import transfer_length
from crackkit.mechanics import bond_slip
from crackkit.mechanics.bond import BondLaw
from crackkit.mechanics.tie import Tie

derived = {step.key: step.expression for step in transfer_length().steps}
STEEL, CONCRETE = 200000.0, 30000.0


def number(key: str, values: dict) -> float:
    right = derived[key].rhs
    names = sorted(right.free_symbols, key=str)
    return lambdify(names, right, "math")(*(values[str(name)] for name in names))


def even_grip(stress: float) -> BondLaw:
    """Bond that is there at the least slip, and stays as it is."""
    return BondLaw(stress, 1e-13, math.inf, math.inf, 0.5, stress)


def member(diameter, percent, strength, grip) -> Tie:
    steel = math.pi * diameter**2 / 4
    return Tie(
        length=4000.0, concrete_area=steel * 100 / percent, bars_area=steel,
        perimeter=math.pi * diameter, concrete_modulus=CONCRETE, bond=even_grip(grip),
        strength=strength,
    )  # fmt: skip


cases = given(
    diameter=st.floats(6.0, 32.0),
    percent=st.floats(0.5, 6.0),
    strength=st.floats(1.0, 4.0),
    grip=st.floats(1.0, 8.0),
    beyond=st.floats(1.0, 3.0),
)


def values_of(tie: Tie, diameter: float, stress: float) -> dict[str, float]:
    found = {"phi": diameter, "rho": tie.bars_area / tie.concrete_area, "E_s": STEEL}
    found |= {"E_c": CONCRETE, "f_ct": tie.strength, "tau_b": tie.bond.peak, "sigma_s": stress}
    for key in ("l_t", "s_r", "epsilon_m", "w"):
        found[key] = number(key, found)
    return found


@cases
def test_the_derived_length_is_that_of_mechanics(diameter, percent, strength, grip, beyond):
    tie = member(diameter, percent, strength, grip)
    values = values_of(tie, diameter, 300.0)
    expected = bond_slip.transfer_length(tie.bond_slip, tie.beta * strength)
    assert values["l_t"] == pytest.approx(float(expected), rel=1e-4)


@cases
def test_the_derived_width_is_that_of_cracks_two_lengths_apart(
    diameter, percent, strength, grip, beyond
):
    """The pull is that of the first crack, or up to three times as much."""
    tie = member(diameter, percent, strength, grip)
    stress = beyond * tie.beta * strength * STEEL
    values = values_of(tie, diameter, stress)
    slip = bond_slip.end_slip(tie.bond_slip, values["l_t"], stress / STEEL)
    assert values["w"] == pytest.approx(2 * float(slip), rel=1e-4)


def test_the_concrete_is_full_where_the_length_ends_and_empty_in_the_crack():
    values = values_of(member(16.0, 1.5, 2.9, 5.0), 16.0, 300.0)
    assert number("sigma_c", values | {"x": values["l_t"]}) == pytest.approx(2.9)
    assert number("sigma_c", values | {"x": 0.0}) == 0.0


def test_half_the_diameter_of_the_same_steel_halves_the_length_and_the_width():
    thick, thin = (values_of(member(d, 1.5, 2.9, 5.0), d, 300.0) for d in (20.0, 10.0))
    assert thin["l_t"] == pytest.approx(thick["l_t"] / 2)
    assert thin["w"] == pytest.approx(thick["w"] / 2)
