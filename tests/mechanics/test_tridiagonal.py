"""Chains of equations, solved as a full matrix is."""

import numpy as np
import pytest

from crackkit.mechanics.tridiagonal import tridiagonal_solution, tridiagonal_solutions


@pytest.mark.parametrize("number", [1, 2, 3, 8, 33, 401])
def test_the_answer_is_that_of_the_full_matrix(number):
    draw = np.random.default_rng(number)
    ties, load = -draw.random(number - 1), draw.standard_normal(number)
    diagonal = (
        np.abs(np.r_[0, ties]) + np.abs(np.r_[ties, 0]) + 1e-3 + 1e3 * draw.random(number) ** 9
    )
    full = np.diag(diagonal) + np.diag(ties, 1) + np.diag(ties, -1)
    assert tridiagonal_solution(ties, diagonal, load) == pytest.approx(
        np.linalg.solve(full, load), rel=1e-9, abs=1e-12
    )


def test_untied_chains_do_not_feel_each_other():
    ties, diagonal, load = [-1.0, 0.0, -1.0], [2.0, 2.0, 3.0, 3.0], [1.0, 0.0, 0.0, 0.0]
    assert tridiagonal_solution(ties, diagonal, load) == pytest.approx([2 / 3, 1 / 3, 0.0, 0.0])


@pytest.mark.parametrize("number", [1, 2, 31, 32, 33, 34, 67, 200])
def test_many_sets_side_by_side_are_solved_as_one_by_one(number):
    draw = np.random.default_rng(number)
    ties, load = -draw.random((5, number - 1)), draw.standard_normal((5, number))
    none = np.zeros((5, 1))
    diagonal = 1e-3 - np.hstack([none, ties]) - np.hstack([ties, none])
    one_by_one = [tridiagonal_solution(*each) for each in zip(ties, diagonal, load, strict=True)]
    together = tridiagonal_solutions(ties, diagonal, load)
    assert together == pytest.approx(np.array(one_by_one), rel=1e-9, abs=1e-12)
