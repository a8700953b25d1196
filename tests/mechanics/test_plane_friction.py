"""Slabs on a base that drags: closed forms of a strip and of a disc, balance, and order."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_friction import sliding_body
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold
from crackkit.mechanics.slab_on_friction import Strip, grip_stiffness, strip_state
from tests.mechanics.plane_grids import grid_mesh, l_slab

MODULUS, THICKNESS = 15e3, 150.0
SHEAR = 1.5 * 2.4e-5 * THICKNESS
SHEET = Sheet(MODULUS, 0.2, THICKNESS)


@pytest.mark.parametrize("slip", [0.1, 0.5, 1.5])
@pytest.mark.parametrize("length", [6e3, 12e3, 40e3])
@pytest.mark.parametrize("degree", [0.0, 0.4])
def test_a_long_narrow_slab_is_the_strip_of_the_closed_form(length, slip, degree):
    mesh = grid_mesh(np.linspace(0, length, 121), np.linspace(0, 200, 3))
    k = grip_stiffness(degree, MODULUS, THICKNESS, length)
    holds = [Hold("left", "normal", k)] if k else []
    body = sliding_body(mesh, Sheet(MODULUS, 0.0, THICKNESS), SHEAR, slip, holds)
    state = body.state(shortening=3e-4)
    strip = strip_state(Strip(length, THICKNESS, SHEAR, slip, left=k), MODULUS, 3e-4, 121)
    at = np.c_[strip.stations, 0 * strip.stations + 100]
    peak = strip.stress.max()
    assert state.stress_at(at)[:, 0] == pytest.approx(strip.stress, abs=0.002 * peak)
    assert state.movement_at(at)[:, 0] == pytest.approx(
        strip.slip, abs=1e-4 * abs(strip.slip).max()
    )


def disc(s, t):
    """A disc with a radius of 4 m from the square -1 to 1."""
    x, y = s * np.sqrt(1 - t * t / 2), t * np.sqrt(1 - s * s / 2)
    return 4000.0 * np.stack([x, y], axis=1)


def test_a_disc_that_slides_all_over_is_stretched_as_in_the_closed_form():
    """Even radial drag q: radial stress (2 + nu)/3 q (R - r)/h, by equilibrium and Hooke's law."""
    mesh = grid_mesh(np.linspace(-1, 1, 17), np.linspace(-1, 1, 17), disc)
    state = sliding_body(mesh, SHEET, SHEAR, 0.01).state(shortening=4e-4)
    r = np.linspace(500.0, 3900.0, 12)
    stress = state.stress_at(np.c_[r, 0.0 * r])
    q, v = SHEAR / THICKNESS, 0.2
    radial = (2 + v) / 3 * q * (4000 - r)
    around = q / 3 * ((2 + v) * 4000 - (1 + 2 * v) * r)
    assert stress[:, 0] == pytest.approx(radial, abs=0.01 * around.max())
    assert stress[:, 1] == pytest.approx(around, abs=0.01 * around.max())


@pytest.fixture(scope="module")
def corner():
    return l_slab(12e3, 6e3, 60.0, 1.6)


@settings(max_examples=15)
@given(st.floats(1e-4, 0.05), st.floats(0.02, 3.0), st.floats(1e-5, 8e-4))
def test_slab_and_base_are_in_balance(corner, shear, slip, shortening):
    """The slab without any bed, under what the base is said to pull, moves as it is said to."""
    state = sliding_body(corner, SHEET, shear, slip).state(shortening=shortening)
    alone = plane_body(corner, SHEET, [Hold([0], "x"), Hold([0], "y"), Hold([1], "x")])
    shrinkage = alone.shrinkage_forces(shortening)
    left = alone.stiffness @ state.movement.ravel() - shrinkage - state.base_forces
    assert abs(left).max() < 1e-4 * abs(shrinkage).max()
    whole = state.base_forces.reshape(-1, 2)
    pulled = shear * 0.75 * 12e3**2
    # It comes to rest to a millionth of its movement: that leaves so much of the drag.
    assert abs(whole.sum(axis=0)).max() < 1e-4 * pulled
    assert np.hypot(*whole.T).sum() < 2.0 * pulled


def test_what_was_known_before_shortens_the_way_and_does_not_change_the_answer(corner):
    body = sliding_body(corner, SHEET, SHEAR, 0.1)
    cold, last = body.state(shortening=3e-4), body.state(shortening=2.9e-4)
    warm = body.state(shortening=3e-4, start=last.movement)
    assert warm.movement == pytest.approx(cold.movement, abs=1e-5 * abs(cold.movement).max())
    assert warm.rounds <= cold.rounds
    assert cold.rounds <= 25


def test_a_base_without_friction_leaves_the_slab_to_its_holds(corner):
    holds = [Hold(name, "normal") for name in ("left", "bottom", "right", "top")]
    free = sliding_body(corner, SHEET, 0.0, 0.1, holds).state(shortening=1e-4)
    held = plane_body(corner, SHEET, holds).state(shortening=1e-4)
    assert free.movement == pytest.approx(held.movement, abs=1e-12)


def test_where_nothing_moves_far_the_base_never_slides(corner):
    state = sliding_body(corner, SHEET, SHEAR, 50.0).state(shortening=1e-4)
    assert state.rounds == 1
    assert not state.slides.any()
    far = sliding_body(corner, SHEET, SHEAR, 0.01).state(shortening=4e-4)
    assert far.slides.mean() > 0.9


@settings(max_examples=10)
@given(st.floats(1e-3, 0.02), st.floats(1.05, 4.0))
def test_a_rougher_base_stretches_a_slab_more_and_lets_it_move_less(corner, shear, times):
    less, more = (
        sliding_body(corner, SHEET, q, 0.2).state(shortening=3e-4) for q in (shear, times * shear)
    )
    assert more.principal[0].max() >= less.principal[0].max()
    assert np.hypot(*more.movement.T).max() <= np.hypot(*less.movement.T).max() * (1 + 1e-9)


def test_a_base_out_of_range_is_refused(corner):
    with pytest.raises(ValueError, match="0.01 mm"):
        sliding_body(corner, SHEET, SHEAR, 0.0)
    with pytest.raises(ValueError, match="0 or more"):
        sliding_body(corner, SHEET, -1.0, 0.1)
    with pytest.raises(ValueError, match="sliding or turning"):
        sliding_body(corner, SHEET, 0.0, 0.1)
