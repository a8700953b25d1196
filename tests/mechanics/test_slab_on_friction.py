"""A strip on its base: closed forms, balance of forces, bounds, an integrator without zones."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from crackkit.mechanics.base_friction import base_shear
from crackkit.mechanics.slab_on_friction import (
    Strip,
    grip_stiffness,
    sliding_stress,
    strip_state,
    stuck_stress,
)
from tests.mechanics.slabs import MODULUS, strips

SHEAR = 1.5 * 2.4e-5 * 150
shortenings = st.floats(1e-5, 8e-4)


def test_a_free_slab_that_sticks_follows_the_hyperbolic_cosine():
    strip = Strip(8000.0, 150.0, SHEAR, 5.0)
    state = strip_state(strip, MODULUS, 4e-4)
    a = np.sqrt(SHEAR / (MODULUS * 150 * 5.0))
    far = state.stations - 4000
    held = 1 - np.cosh(a * far) / np.cosh(a * 4000)
    assert state.stress == pytest.approx(MODULUS * 4e-4 * held, rel=1e-8, abs=1e-9)
    slip = -4e-4 * np.sinh(a * far) / (a * np.cosh(a * 4000))
    assert state.slip == pytest.approx(slip, rel=1e-8, abs=1e-9)
    peak = stuck_stress(8000.0, 150.0, MODULUS, 4e-4, SHEAR, 5.0)
    assert state.stress.max() == pytest.approx(peak, rel=1e-8)
    assert state.end_slip[0] == pytest.approx(4e-4 / a * np.tanh(a * 4000), rel=1e-8)


def test_where_a_free_slab_slides_the_stress_is_that_of_the_drag_formula():
    strip = Strip(20000.0, 150.0, SHEAR, 0.5)
    state = strip_state(strip, MODULUS, 4e-4)
    slides = state.slip >= 0.5
    assert slides.sum() > 80
    expected = sliding_stress(state.stations[slides], 150.0, SHEAR)
    assert state.stress[slides] == pytest.approx(expected, rel=1e-8, abs=1e-10)


def test_the_sooner_a_base_slides_the_nearer_the_middle_comes_to_the_drag_formula():
    """The part that still sticks is s0/eps long on both sides, and lacks half of its friction."""
    full = sliding_stress(5000.0, 150.0, SHEAR)
    lacking = [
        full - strip_state(Strip(10000.0, 150.0, SHEAR, s0), MODULUS, 4e-4).stress.max()
        for s0 in (0.4, 0.04)
    ]
    assert lacking[0] > lacking[1] > 0
    assert lacking[1] == pytest.approx(0.5 * SHEAR * 0.04 / 4e-4 / 150, rel=0.06)


def test_a_very_long_slab_that_sticks_in_the_middle_is_fully_restrained_there():
    """Sliding ends: E eps = mu gamma x + E s0 a at the end of the zone that sticks."""
    strip = Strip(400000.0, 150.0, SHEAR, 0.1)
    state = strip_state(strip, MODULUS, 1.5e-4, 4001)
    assert state.stress.max() == pytest.approx(MODULUS * 1.5e-4, rel=1e-8)
    a = np.sqrt(SHEAR / (MODULUS * 150 * 0.1))
    slides = (MODULUS * 1.5e-4 - MODULUS * 0.1 * a) * 150 / SHEAR
    edge = np.interp(0.1, state.slip[1500::-1], state.stations[1500::-1])
    assert edge == pytest.approx(slides, abs=5.0)
    at_end = 0.1 + SHEAR / (MODULUS * 150) * slides**2 / 2 + 0.1 * a * slides
    assert state.end_slip[0] == pytest.approx(at_end, rel=1e-8)


@pytest.mark.parametrize("degree", [0.0, 0.3, 0.7, 1.0])
def test_without_friction_both_ends_give_the_share_of_full_restraint_that_was_asked_for(degree):
    k = grip_stiffness(degree, MODULUS, 150.0, 9000.0)
    state = strip_state(Strip(9000.0, 150.0, 0.0, 0.5, k, k), MODULUS, 3e-4)
    assert state.stress == pytest.approx(degree * MODULUS * 3e-4, rel=1e-7, abs=1e-7)


def test_a_column_in_the_middle_of_an_even_slab_does_nothing():
    plain = strip_state(Strip(9000.0, 150.0, SHEAR, 0.5), MODULUS, 3e-4)
    held = strip_state(Strip(9000.0, 150.0, SHEAR, 0.5, inner=((4500.0, 1e4),)), MODULUS, 3e-4)
    assert held.stress == pytest.approx(plain.stress, rel=1e-8, abs=1e-9)


def test_a_column_near_an_end_moves_the_still_place_to_it():
    strip = Strip(9000.0, 150.0, SHEAR, 0.5, inner=((1000.0, np.inf),))
    state = strip_state(strip, MODULUS, 3e-4, 901)
    assert state.slip[100] == pytest.approx(0.0, abs=1e-12)
    dragged = SHEAR * 8000.0**2 / (2 * MODULUS * 150)  # by a base that slides all along
    assert -state.end_slip[1] == pytest.approx(8000 * 3e-4 - dragged, abs=0.002)


@pytest.mark.parametrize("slip", [0.3, 2.0])
@pytest.mark.parametrize("left", [0.0, 60.0])
@pytest.mark.parametrize("right", [0.0, 900.0])
def test_an_integrator_that_knows_nothing_of_zones_finds_the_same(slip, left, right):
    strip = Strip(14000.0, 180.0, 1.2e-2, slip, left, right)
    EH = MODULUS * 180.0

    def slopes(_x, y):
        return np.stack([y[1] / EH - 4e-4, base_shear(y[0], 1.2e-2, 1.0, slip)])

    def ends(start, end):
        return np.array([start[1] - left * start[0], end[1] + right * end[0]])

    x = np.linspace(0.0, 14000.0, 401)
    guess = np.stack([4e-4 * (7000 - x), 40.0 + 0 * x])
    found = solve_bvp(slopes, ends, x, guess, tol=1e-9, max_nodes=100000)
    state = strip_state(strip, MODULUS, 4e-4)
    slip_there, force = found.sol(state.stations)
    assert state.force == pytest.approx(force, abs=2e-6)
    assert state.slip == pytest.approx(slip_there, abs=1e-7)


@given(strips(), shortenings)
def test_what_the_base_and_the_grips_pull_is_in_balance(strip, eps):
    state = strip_state(strip, MODULUS, eps)
    x, w = np.polynomial.legendre.leggauss(12)
    total = 0.0
    piece = state.chain
    for k, start in enumerate(piece.chain.places[:-1]):
        edges = np.cumsum([start, piece.zones[0, 0, k], piece.zones[1, 0, k]])
        edges = np.r_[edges, piece.chain.places[k + 1]]
        for a, b in zip(edges[:-1], edges[1:], strict=True):
            at = 0.5 * (a + b) + 0.5 * (b - a) * x
            q = base_shear(piece.along(at)[0][0], strip.shear, 1.0, strip.slip)
            total += 0.5 * (b - a) * float(w @ q)
    left, right = state.end_force
    scale = max(state.force.max(), 1e-6)
    assert right - left == pytest.approx(total, abs=1e-9 * scale + 1e-9)
    for pull, k, slip in (
        (left, strip.left, state.end_slip[0]),
        (right, strip.right, -state.end_slip[1]),
    ):
        if np.isfinite(k):
            assert pull == pytest.approx(k * slip, abs=1e-8 * scale + 1e-9)
        else:
            assert slip == 0


@given(strips(), shortenings)
def test_the_force_is_never_more_than_base_and_grips_can_build_up(strip, eps):
    state = strip_state(strip, MODULUS, eps)
    x, L = state.stations, strip.length
    most = np.minimum(
        state.end_force[0] + strip.shear * x, state.end_force[1] + strip.shear * (L - x)
    )
    assert np.all(state.force <= most * (1 + 1e-9) + 1e-8)
    assert np.all(state.stress <= MODULUS * eps * (1 + 1e-9))
    assert np.all(state.force >= -1e-8)


@given(strips(), shortenings)
def test_seen_from_behind_the_slab_is_its_mirror_image(strip, eps):
    other = Strip(strip.length, strip.thickness, strip.shear, strip.slip, strip.right, strip.left)
    here, there = (strip_state(s, MODULUS, eps) for s in (strip, other))
    size = MODULUS * eps
    assert here.stress == pytest.approx(there.stress[::-1], rel=1e-7, abs=1e-8 * size)
    assert here.slip == pytest.approx(-there.slip[::-1], rel=1e-7, abs=1e-7 * strip.length * eps)


@given(strips(held=False), shortenings, st.floats(0.1, 1.0))
def test_a_shorter_free_slab_is_never_stressed_more(strip, eps, part):
    less = Strip(part * strip.length, strip.thickness, strip.shear, strip.slip)
    long, short = (strip_state(s, MODULUS, eps).stress.max() for s in (strip, less))
    assert short <= long * (1 + 1e-9) + 1e-12


@given(strips(), shortenings)
def test_half_of_a_slab_between_the_same_grips_is_never_stressed_more(strip, eps):
    half = Strip(
        strip.length / 2, strip.thickness, strip.shear, strip.slip, strip.left, strip.right
    )
    long, short = (strip_state(s, MODULUS, eps).stress.max() for s in (strip, half))
    assert short <= long * (1 + 1e-6) + 1e-9


@given(strips(), shortenings, st.floats(1.0, 3.0))
def test_more_friction_and_stiffer_grips_stress_it_more(strip, eps, times):
    more = Strip(
        strip.length,
        strip.thickness,
        times * strip.shear,
        strip.slip,
        times * strip.left,
        strip.right,
    )
    less, much = (strip_state(s, MODULUS, eps) for s in (strip, more))
    assert much.stress.max() >= less.stress.max() * (1 - 1e-6) - 1e-9


@given(strips())
def test_many_ages_are_worked_out_as_each_alone(strip):
    E, eps = np.array([28000.0, 18000.0, 9000.0]), np.array([2e-5, 2e-4, 6e-4])
    rows = strip_state(strip, E, eps)
    for k in range(3):
        alone = strip_state(strip, float(E[k]), float(eps[k]))
        assert rows.stress[k] == pytest.approx(alone.stress, rel=1e-6, abs=1e-7)
        assert rows.end_slip[k] == pytest.approx(alone.end_slip, rel=1e-6, abs=1e-7)


def test_a_slab_that_grows_longer_is_not_pulled():
    state = strip_state(Strip(9000.0, 150.0, SHEAR, 0.5, np.inf, 5.0), MODULUS, -2e-4)
    assert np.all(state.stress == 0) and np.all(state.slip == 0)


@pytest.mark.parametrize(
    "wrong",
    [
        {"length": 0.0},
        {"thickness": -1.0},
        {"shear": -1e-3},
        {"left": -1.0},
        {"inner": ((9e4, 1.0),)},
    ],
)
def test_a_strip_without_size_or_with_grips_beside_it_is_refused(wrong):
    with pytest.raises(ValueError, match="size"):
        Strip(**{"length": 9000.0, "thickness": 150.0, "shear": 0.005, "slip": 0.5} | wrong)


def test_a_base_that_slides_at_once_is_refused():
    with pytest.raises(ValueError, match="slides"):
        Strip(9000.0, 150.0, 0.005, 0.0)


@pytest.mark.parametrize("degree", [-0.1, 1.1])
def test_a_grip_holds_from_none_to_all(degree):
    with pytest.raises(ValueError, match="none, 0"):
        grip_stiffness(degree, MODULUS, 150.0, 9000.0)
