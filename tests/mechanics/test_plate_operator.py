"""The bands of a plate against sums over a fine grid of places."""

import numpy as np
import pytest

from crackkit.mechanics.plate_operator import plate_operator

LONG, SHORT = (0.0, 2.0, 3.0, 5.0, 9.0), (0.0, 1.0, 4.0)
NU = 0.2


def full(band):
    n, reach = band.shape
    matrix = np.zeros((n, n))
    for d in range(min(reach, n)):
        matrix += np.diag(band[: n - d, d], -d)
    return matrix + np.tril(matrix, -1).T


@pytest.mark.parametrize("sides", [(LONG, SHORT), (SHORT, LONG)], ids=["long", "turned"])
@pytest.mark.parametrize("held", [((0, 0), (0, 0)), ((1, 2), (0, 2))], ids=["free", "held"])
class TestBands:
    def places(self, operator):
        area = np.outer(operator.x.weights, operator.y.weights)
        kept = [s.values[:, slice(*s.kept)] for s in (operator.x, operator.y)]
        return area, *kept

    def test_bending_is_the_energy_of_a_plate(self, sides, held):
        operator = plate_operator(*sides, *held, NU)
        area, x, y = self.places(operator)
        u = np.random.default_rng(1).normal(size=operator.shape)
        xx, yy, xy = (x[a].T @ u @ y[b] for a, b in ((2, 0), (0, 2), (1, 1)))
        energy = area * (xx**2 + yy**2 + 2 * NU * xx * yy + 2 * (1 - NU) * xy**2)
        vector = operator.vector(u)
        assert vector @ full(operator.bending) @ vector == pytest.approx(energy.sum())

    def test_springs_push_where_they_are(self, sides, held):
        operator = plate_operator(*sides, *held, NU)
        area, x, y = self.places(operator)
        rng = np.random.default_rng(2)
        u, k = rng.normal(size=operator.shape), rng.uniform(size=area.shape)
        nothing = np.zeros_like(operator.bending)
        band = operator.springs(k, nothing, nothing.copy())
        vector = operator.vector(u)
        energy = (area * k * (x[0].T @ u @ y[0]) ** 2).sum()
        assert vector @ full(band) @ vector == pytest.approx(energy)

    def test_the_order_of_the_equations_can_be_turned_back(self, sides, held):
        operator = plate_operator(*sides, *held, NU)
        u = np.random.default_rng(2).normal(size=operator.shape)
        assert (operator.field(operator.vector(u)) == u).all()


@pytest.mark.parametrize("sides", [(LONG, SHORT), (SHORT, LONG)], ids=["long", "turned"])
def test_springs_along_edges_hold_the_edges_only(sides):
    operator = plate_operator(*sides, (0, 0), (0, 0), NU)
    band = full(operator.edge_springs((1.0, 2.0, 3.0, 5.0)))
    whole = operator.vector(np.ones(operator.shape))
    length, width = sides[0][-1], sides[1][-1]
    assert whole @ band @ whole == pytest.approx(3.0 * width + 8.0 * length)
    inner = np.ones(operator.shape)
    inner[[0, -1]] = inner[:, [0, -1]] = 0.0
    assert band @ operator.vector(inner) == pytest.approx(np.zeros(whole.size))


def test_the_same_geometry_is_worked_out_once():
    assert plate_operator(LONG, SHORT, (0, 0), (0, 0), NU) is plate_operator(
        LONG, SHORT, (0, 0), (0, 0), NU
    )
