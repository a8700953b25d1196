"""Closed answers for loads on slabs: how far they lie from the plate is stated, not hidden.

The formulas are meant for circles; the plate carries squares of the same area. The plate lies on
all its springs, is 8 m wide and 150 mm thick; its radius of relative stiffness is 542 mm.
"""

import numpy as np
import pytest

from crackkit.mechanics import slab_on_springs as closed
from crackkit.mechanics.plate_state import plate_state
from tests.mechanics.plates import HEAVY, slab, square

PLATE = slab(length=8000.0, width=8000.0, weight=HEAVY)
P, T, L, K = 40e3, 150.0, PLATE.reach, PLATE.ground
# Side of the square: formula over plate for stress and for deflection.
INSIDE = {100.0: (1.004, 1.000), 200.0: (1.006, 1.001), 400.0: (1.008, 1.002)}
EDGE = {100.0: (0.983, 0.988), 200.0: (0.979, 0.972), 400.0: (0.969, 0.915)}
CORNER_1926 = {100.0: (0.965, 0.897), 200.0: (0.939, 0.875), 400.0: (0.778, 0.775)}
CORNER_1985 = {100.0: (0.994, 0.997), 200.0: (0.925, 0.989), 400.0: (0.562, 0.926)}
AS_STATED = 0.003


def radius(side):
    return side / np.sqrt(np.pi)


def sunk(state):
    return state.deflection.max() - PLATE.settlement


@pytest.mark.parametrize("side", INSIDE)
def test_loads_far_from_the_edges(side):
    state = plate_state(PLATE, (square(4000.0, 4000.0, P, side),))
    under = state.bottom_at([4000.0], [4000.0]).s1[0, 0]
    stress = closed.interior_stress(P, radius(side), T, L) / under
    sinking = closed.interior_deflection(P, radius(side), L, K) / sunk(state)
    assert (stress, sinking) == pytest.approx(INSIDE[side], abs=AS_STATED)


@pytest.mark.parametrize("side", EDGE)
def test_loads_on_an_edge(side):
    state = plate_state(PLATE, (square(side / 2, 4000.0, P, side),))
    stress = closed.edge_stress(P, radius(side), T, L) / state.bottom.sigma_y.max()
    sinking = closed.edge_deflection(P, radius(side), L, K) / sunk(state)
    assert (stress, sinking) == pytest.approx(EDGE[side], abs=AS_STATED)


def on_the_diagonal(state):
    x = np.linspace(0.0, 2500.0, 251)
    s1 = state.top_at(x, x).s1.diagonal()
    return s1.max(), x[s1.argmax()] * np.sqrt(2.0)


@pytest.mark.parametrize("side", CORNER_1926)
def test_loads_in_a_corner(side):
    """Both formulas fall short where the square is large beside the reach of the slab."""
    a, state = radius(side), plate_state(PLATE, (square(side / 2, side / 2, P, side),))
    stress, _place = on_the_diagonal(state)
    first = closed.corner_stress_westergaard(P, a, T, L) / stress
    first_w = closed.corner_deflection_westergaard(P, a, L, K) / sunk(state)
    refit = closed.corner_stress_ioannides(P, side, T, L) / stress
    refit_w = closed.corner_deflection_ioannides(P, side, L, K) / sunk(state)
    assert (first, first_w) == pytest.approx(CORNER_1926[side], abs=AS_STATED)
    assert (refit, refit_w) == pytest.approx(CORNER_1985[side], abs=AS_STATED)


@pytest.mark.parametrize("side", [100.0, 200.0])
def test_the_corner_breaks_about_where_the_fitted_formula_says(side):
    state = plate_state(PLATE, (square(side / 2, side / 2, P, side),))
    place = on_the_diagonal(state)[1]
    assert closed.break_distance_ioannides(side, L) == pytest.approx(place, rel=0.14)


def test_the_plate_has_the_reach_that_the_formula_gives():
    assert closed.reach(15e3, T, K, 0.15) == pytest.approx(L)


def test_a_point_load_sinks_the_slab_by_p_over_8_k_l2():
    state = plate_state(PLATE, (square(4000.0, 4000.0, P, 10.0),))
    assert closed.interior_deflection(P, 0.0, L, K) == pytest.approx(P / (8 * K * L**2))
    assert closed.interior_deflection(P, 0.0, L, K) == pytest.approx(sunk(state), rel=5e-4)


def test_a_point_load_on_an_edge_sinks_it_as_westergaard_says():
    state = plate_state(PLATE, (square(5.0, 4000.0, P, 10.0),))
    assert closed.edge_point_deflection(P, L, K) == pytest.approx(sunk(state), rel=0.012)


def test_a_small_load_counts_as_larger_on_a_thick_slab():
    assert closed.thick_radius(300.0, T) == 300.0
    assert closed.thick_radius(0.0, T) == pytest.approx(0.325 * T)
    assert closed.thick_radius(1.724 * T, T) == pytest.approx(1.724 * T)
    assert closed.thick_radius(1.723 * T, T) == pytest.approx(1.724 * T, rel=0.002)
