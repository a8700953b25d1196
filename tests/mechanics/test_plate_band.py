"""Bands against full matrices."""

import numpy as np
import pytest

from crackkit.mechanics.plate_band import factorised, solution, times_band

RNG = np.random.default_rng(3)
LOWER = np.tril(np.triu(RNG.normal(size=(9, 9)), -2)) + 4.0 * np.eye(9)
MATRIX = np.tril(LOWER @ LOWER.T)
MATRIX += np.tril(MATRIX, -1).T
BAND = np.array([[MATRIX[j + d, j] if j + d < 9 else 0.0 for d in range(5)] for j in range(9)])
X = RNG.normal(size=9)


def test_a_band_is_solved_as_its_full_matrix():
    assert solution(factorised(BAND.copy()), MATRIX @ X) == pytest.approx(X)


def test_a_band_multiplies_as_its_full_matrix():
    assert times_band(BAND, X) == pytest.approx(MATRIX @ X)


def test_what_nothing_holds_is_refused():
    with pytest.raises(ArithmeticError, match="Nothing holds"):
        factorised(np.zeros((9, 5)))
