"""Splines against SciPy's, and against what any splines must do."""

import numpy as np
import pytest
from scipy.interpolate import BSpline

from crackkit.mechanics.plate_splines import spline_side, spline_values

KNOTS = (0.0, 1.0, 1.5, 4.0, 4.2, 7.0)
X = np.linspace(0.0, 7.0, 41)


@pytest.mark.parametrize("order", [0, 1, 2])
def test_they_are_those_of_scipy(order):
    t = np.r_[[0.0] * 3, KNOTS, [7.0] * 3]
    reference = [BSpline(t, row, 3)(X, order) for row in np.eye(len(KNOTS) + 2)]
    ours = spline_values(KNOTS, X)[order]
    inner = slice(1, -1)  # the curvature may jump only where a knot is: SciPy takes the same side
    assert ours[:, inner] == pytest.approx(np.array(reference)[:, inner], abs=1e-12)


def test_together_they_are_one_everywhere():
    assert spline_values(KNOTS, X)[0].sum(axis=0) == pytest.approx(np.ones(41), abs=1e-14)


def test_integrals_of_curvatures_are_exact():
    side = spline_side(KNOTS, (0, 0))
    square = np.linalg.lstsq(spline_values(KNOTS, X)[0].T, X**2, rcond=None)[0]
    assert square @ side.matrix(2, 2) @ square == pytest.approx(4.0 * 7.0)
    assert square @ side.matrix(1, 1) @ square == pytest.approx(4.0 * 7.0**3 / 3.0)


def test_an_edge_that_is_held_loses_its_splines():
    side = spline_side(KNOTS, (1, 2))
    at = side.at([0.0, 7.0])
    assert side.size == len(KNOTS) + 2 - 3
    assert at[0] == pytest.approx(np.zeros((side.size, 2)))
    assert at[1, :, 1] == pytest.approx(np.zeros(side.size))
    assert abs(at[1, :, 0]).max() > 0.1
