"""A bent shape can be asked at any place, and its moments show no kinks of the splines."""

import numpy as np
import pytest

from crackkit.mechanics.plate_operator import plate_operator
from crackkit.mechanics.plate_shape import Bend, PlateShape, evened, stations
from crackkit.mechanics.plate_slab import FLAT, even_curvature
from crackkit.mechanics.plate_splines import spline_side
from crackkit.mechanics.plate_state import plate_state
from tests.mechanics.plates import slab, square

KNOTS = tuple(np.linspace(0.0, 6.0, 13).tolist())
SIDE = spline_side(KNOTS, (0, 0))


def fitted(values, order):
    """Coefficients of the splines whose derivative comes closest to some values everywhere."""
    x = np.linspace(0.0, 6.0, 400)
    return np.linalg.lstsq(SIDE.at(x)[order].T, values(x), rcond=None)[0]


def test_curvatures_are_better_at_knots_than_those_of_the_splines():
    u = fitted(np.sin, 0)
    inner = np.array(KNOTS[2:-2])
    raw, even = (table[2].T @ u + np.sin(inner) for table in (SIDE.at(inner), evened(SIDE, inner)))
    assert abs(even).max() < 0.3 * abs(raw).max()


def test_a_parabola_keeps_its_curvature():
    u = fitted(lambda x: x**2, 0)
    x = np.linspace(0.0, 6.0, 31)
    assert evened(SIDE, x)[2].T @ u == pytest.approx(np.full(31, 2.0))
    assert (evened(SIDE, x)[:2] == SIDE.at(x)[:2]).all()


def test_stations_begin_and_end_with_the_side_and_rise():
    places, splines = stations(SIDE)
    assert (places[0], places[-1]) == (0.0, 6.0)
    assert (np.diff(places) > 0).all()
    assert splines.shape == (3, SIDE.size, places.size)
    assert stations(SIDE)[0] is places


def test_any_grid_shows_the_same_shape():
    state = plate_state(slab(), (square(700.0, 900.0),), even_curvature(3e-4, 150.0))
    x, y = state.x[3:20:4], state.y[5:9]
    assert state.deflection_at(x, y) == pytest.approx(state.deflection[3:20:4, 5:9])
    assert state.top_at(x, y).s1 == pytest.approx(state.top.s1[3:20:4, 5:9])
    assert state.bottom_at(x, y).tau == pytest.approx(state.bottom.tau[3:20:4, 5:9])


def test_stages_add_their_heights_and_each_its_own_moments():
    operator = plate_operator(KNOTS, KNOTS, (0, 0), (0, 0), 0.0)
    u = np.outer(fitted(lambda x: x**2, 0), np.ones(operator.shape[1]))
    once = PlateShape(operator, 0.0, (Bend(2.0 * u, 3.0, FLAT),))
    twice = PlateShape(operator, 0.0, (Bend(u, 3.0, FLAT), Bend(u, 5.0, FLAT)))
    at = [1.0, 4.0]
    assert once.deflection(at, at) == pytest.approx(twice.deflection(at, at))
    assert once.moments(at, at).x == pytest.approx(np.full((2, 2), -12.0))
    assert twice.moments(at, at).x == pytest.approx(np.full((2, 2), -16.0))
