"""The search for what has lifted off, against a slow one, and what its answer must be."""

import numpy as np
import pytest
from scipy.optimize import minimize

from crackkit.mechanics.plate_contact import Stiffness, plate_rest
from crackkit.mechanics.plate_loads import curvature_load, even_load
from crackkit.mechanics.plate_operator import plate_operator
from crackkit.mechanics.plate_slab import even_curvature

SIDE = tuple(np.linspace(0.0, 4000.0, 5).tolist())
OPERATOR = plate_operator(SIDE, SIDE, (0, 0), (0, 0), 0.15)
STIFFNESS = Stiffness(OPERATOR, 4e9, 0.05)
LOAD = even_load(OPERATOR, 0.0036) + curvature_load(
    OPERATOR, even_curvature(3e-4, 150.0), 4e9, 0.15
)


def energy(u):
    """Energy of the plate over the same places, and its slope, put together anew."""
    area = np.outer(OPERATOR.x.weights, OPERATOR.y.weights)
    x, y, u = OPERATOR.x.values, OPERATOR.y.values, u.reshape(OPERATOR.shape)
    w = np.maximum(x[0].T @ u @ y[0], 0.0)
    xx, yy, xy = (x[a].T @ u @ y[b] for a, b in ((2, 0), (0, 2), (1, 1)))
    bent = 4e9 * (xx**2 + yy**2 + 0.3 * xx * yy + 1.7 * xy**2)
    slope = x[0] @ (0.05 * w * area) @ y[0].T - LOAD
    slope = slope + x[2] @ (4e9 * (xx + 0.15 * yy) * area) @ y[0].T
    slope += x[0] @ (4e9 * (yy + 0.15 * xx) * area) @ y[2].T
    slope += x[1] @ (4e9 * 1.7 * xy * area) @ y[1].T
    return (area * (0.5 * bent + 0.025 * w**2)).sum() - (LOAD * u).sum(), slope.ravel()


def test_the_plate_rests_where_its_energy_is_least():
    rest = plate_rest(STIFFNESS, OPERATOR.vector(LOAD))
    assert rest.converged
    assert 0.2 < rest.touching.mean() < 0.8
    value, slope = energy(rest.heights.ravel())
    assert abs(slope).max() < 1e-9 * abs(LOAD).max() * 1e3
    rng = np.random.default_rng(7)
    for _other in range(20):
        other = rest.heights + rng.normal(scale=rng.choice([1e-3, 0.1, 5.0]), size=LOAD.shape)
        assert energy(other.ravel())[0] > value


def test_a_slow_search_finds_the_same_place():
    start = np.full(LOAD.size, 0.072)
    found = minimize(
        energy, start, jac=True, method="BFGS", options={"maxiter": 4000, "gtol": 1e-6}
    )
    rest = plate_rest(STIFFNESS, OPERATOR.vector(LOAD))
    assert found.fun == pytest.approx(energy(rest.heights.ravel())[0], rel=1e-6)
    assert found.x.reshape(LOAD.shape) == pytest.approx(rest.heights, abs=0.02)


def test_it_rests_on_what_it_says_it_touches():
    rest = plate_rest(STIFFNESS, OPERATOR.vector(LOAD))
    w = OPERATOR.x.values[0].T @ rest.heights @ OPERATOR.y.values[0]
    assert ((w > 0.0) == rest.touching).all()


@pytest.mark.parametrize("share", [0.0, 0.3, 1.0])
def test_where_the_search_starts_makes_no_difference(share):
    places = OPERATOR.x.places.size
    start = np.random.default_rng(4).uniform(size=(places, places)) < share
    start[places // 2 - 2 : places // 2 + 2, places // 2 - 2 : places // 2 + 2] = True
    rest = plate_rest(STIFFNESS, OPERATOR.vector(LOAD), start)
    usual = plate_rest(STIFFNESS, OPERATOR.vector(LOAD))
    assert rest.heights == pytest.approx(usual.heights, abs=1e-8)


def test_a_slab_on_all_its_springs_is_factorised_once():
    assert STIFFNESS.resting() is STIFFNESS.resting()
