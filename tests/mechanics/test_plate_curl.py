"""Curling: the plate against Westergaard, Bradbury, and a heavy strip on a rigid base."""

import numpy as np
import pytest

from crackkit.mechanics import plate_curl as closed
from crackkit.mechanics.plate_slab import Curvature, even_curvature
from crackkit.mechanics.plate_state import plate_state
from tests.mechanics.plates import HEAVY, slab

D = 300e-6
ALONG = Curvature(2e-6, 0.0)  # of 300 millionths over 150 mm, in one direction only


def strip(**changes):
    return slab(**({"width": 400.0, "poisson": 0.0, "weight": HEAVY} | changes))


@pytest.mark.parametrize("length", [2000.0, 3000.0, 4500.0, 6000.0, 8000.0])
def test_the_middle_of_a_strip_is_stressed_as_westergaard_says(length):
    plate = strip(length=length)
    middle = plate_state(plate, (), ALONG).top_at([length / 2], [200.0]).sigma_x[0, 0]
    share = middle / closed.held_flat_stress(plate.modulus, D, 0.0)
    assert share == pytest.approx(closed.curl_coefficient(length, plate.reach), abs=0.006)


@pytest.mark.parametrize("nu", [0.0, 0.15])
def test_the_edge_of_a_wide_slab_rises_as_westergaard_says(nu):
    plate = slab(length=6e3, width=6e3, thickness=75.0, ground=0.1, poisson=nu, weight=4 * HEAVY)
    state, x = plate_state(plate, (), even_curvature(D, 75.0)), plate_free_places(plate)
    assert not state.lifted.any()
    rise = plate.settlement - state.deflection_at(x, [3000.0])[:, 0]
    exact = closed.edge_curl_rise(x, D, 75.0, plate.reach, nu)
    assert rise == pytest.approx(exact, abs=2e-3 * exact[0])
    share = state.top_at(x, [3000.0]).sigma_x[:, 0] / closed.held_flat_stress(15e3, D, nu)
    assert share == pytest.approx(closed.edge_curl_share(x, plate.reach), abs=0.012)


def plate_free_places(plate):
    return plate.reach * np.array([0.0, 0.5, 1.1107, 2.2214, 4.4429])


def test_the_landmarks_of_the_closed_form():
    l = 500.0
    rise = closed.edge_curl_rise(plate_free_places(slab()) / slab().reach * l, D, 150.0, l)
    edge = 1.15 * D * l**2 / 150.0
    assert rise[[0, 2, 3]] == pytest.approx([edge, 0.0, -0.2079 * edge], abs=1e-4 * edge)
    assert closed.edge_curl_share(4.4429 * l, l) == pytest.approx(1.0432, abs=1e-4)


def test_a_coefficient_has_no_poles_and_a_maximum_of_1_0863():
    lengths = np.linspace(0.1, 30.0, 2991)
    C = closed.curl_coefficient(lengths, 1.0)
    assert abs(np.diff(C)).max() < 0.01
    assert (C.max(), lengths[C.argmax()]) == pytest.approx((1.0863, 8.886), abs=6e-3)


def test_bradburys_slab_of_two_strips_is_stressed_less_than_the_plate():
    """Stated: 0.5 % less in the middle and 1.7 % less on the edge of a slab of 4.5 m."""
    plate = slab(weight=4 * HEAVY)
    state = plate_state(plate, (), even_curvature(D, 150.0))
    assert not state.lifted.any()
    C = closed.curl_coefficient(4500.0, plate.reach)
    middle, edge = (state.top_at([2250.0], [y]).sigma_x[0, 0] for y in (2250.0, 0.0))
    bradbury = closed.middle_curl_stress(15e3, D, C, C), closed.edge_curl_stress(15e3, D, C)
    assert bradbury[0] / middle == pytest.approx(0.995, abs=0.003)
    assert bradbury[1] / edge == pytest.approx(0.983, abs=0.003)


@pytest.fixture(scope="module")
def heavy():
    """Give a strip of 8 m that weighs what it weighs, on ever stiffer ground."""
    plates = [slab(length=8000.0, width=300.0, modulus=25e3, poisson=0.0, ground=k)
              for k in (0.05, 1.0, 10.0, 100.0)]  # fmt: skip
    return plates[0], [plate_state(plate, (), ALONG) for plate in plates]


def test_a_heavy_strip_on_a_rigid_base_rises_as_statics_say(heavy):
    plate, states = heavy
    rise = closed.lifted_rise(plate.rigidity, 2e-6, plate.weight)
    found = [state.corner_rise[0, 0] / rise for state in states]
    assert found[1:] == pytest.approx([1.0, 1.0, 1.0], abs=2e-3)
    assert found[0] == pytest.approx(1.0, abs=0.015)


def test_stiffer_ground_lets_more_of_a_heavy_strip_rise_up_to_statics(heavy):
    plate, states = heavy
    a = closed.lifted_length(plate.rigidity, 2e-6, plate.weight)
    shares = [0.5 * state.lifted_share * plate.length / a for state in states]
    assert (np.diff(shares) > 0).all()
    assert 0.95 < shares[-1] < 1.0


def test_statics_of_the_heavy_strip_were_worked_separately():
    """150 mm of 24 kN/m3, 25 GPa, 300 millionths: 2.795 m lifted, 3.91 mm high."""
    EI = 25e3 * 150.0**3 / 12.0
    assert closed.lifted_length(EI, 2e-6, 0.0036) == pytest.approx(2795.0, abs=0.5)
    assert closed.lifted_rise(EI, 2e-6, 0.0036) == pytest.approx(3.91, abs=0.005)
    with pytest.raises(ValueError, match="weighs something"):
        closed.lifted_length(EI, -2e-6, 0.0036)


def test_a_strip_without_weight_is_an_arc():
    assert closed.free_curl_rise(D, 4500.0, 150.0) == pytest.approx(5.06, abs=0.005)


def test_the_corner_formula_is_smaller_than_held_flat():
    corner = closed.corner_curl_stress(15e3, D, 100.0, 540.0)
    assert corner == pytest.approx(closed.held_flat_stress(15e3, D) * 2 / 3 * (100 / 540) ** 0.5)
