"""Chains of equations, solved as a full matrix is."""

import numpy as np
import pytest

from crackkit.mechanics.tridiagonal import tridiagonal_solution


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
