"""Roots of many functions at once."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.rising_root import rising_root


def test_roots_of_functions_with_and_without_one():
    found = rising_root(
        lambda x: np.array([1.0, 8.0, 1.0]) * x**3 - [0.5, 1.0, 2.0],
        np.full(3, -1.0),
        np.ones(3),
        1e-13,
    )
    assert found == pytest.approx([0.5 ** (1 / 3), 0.5, 1.0])


@given(roots=st.lists(st.floats(0.01, 0.99), min_size=1, max_size=8), power=st.floats(0.3, 4.0))
def test_each_root_is_found_whatever_its_neighbours(roots, power):
    roots = np.array(roots)

    def function(x):
        return x**power - roots**power

    found = rising_root(function, np.zeros_like(roots), np.ones_like(roots), 1e-14)
    # where a function is nearly level, values that count as 0 lie a little off its root
    level = power * np.minimum(found, roots) ** power / roots
    assert (np.abs(found - roots) <= 1e-14 / level + 1e-10).all()
    assert (np.abs(function(found)) <= 1e-13).all()
