"""Strength scattered along a member: as much as asked for, and the same for a seed."""

import numpy as np
import pytest

from crackkit.mechanics.strength_along import tensile_strength_along


def test_mean_and_scatter_are_those_asked_for():
    fields = [tensile_strength_along(6000.0, 301, 2.9, 0.08, seed) for seed in range(200)]
    assert np.mean(fields) == pytest.approx(2.9, rel=0.005)
    assert np.std(fields) / np.mean(fields) == pytest.approx(0.08, rel=0.03)


def test_the_same_seed_gives_the_same_concrete_in_any_order():
    first = {seed: tensile_strength_along(3000.0, 401, 2.9, 0.1, seed) for seed in range(8)}
    for seed in (5, 0, 7, 3, 1, 2, 6, 4):
        assert np.array_equal(first[seed], tensile_strength_along(3000.0, 401, 2.9, 0.1, seed))
    assert not np.array_equal(first[0], first[1])


def test_a_finer_look_and_a_longer_member_show_the_same_concrete():
    coarse = tensile_strength_along(3000.0, 101, 2.9, 0.08, 4)
    assert tensile_strength_along(3000.0, 401, 2.9, 0.08, 4)[::4] == pytest.approx(coarse)
    assert tensile_strength_along(6000.0, 201, 2.9, 0.08, 4)[:101] == pytest.approx(coarse)


@pytest.mark.parametrize(("apart", "shared"), [(60.0, 0.61), (240.0, 0.0)])
def test_places_share_what_the_docstring_says(apart, shared):
    logs = np.log([tensile_strength_along(6000.0, 601, 2.9, 0.1, seed) for seed in range(200)])
    step = int(apart / 10)
    a, b = logs[:, :-step] - logs.mean(), logs[:, step:] - logs.mean()
    assert np.mean(a * b) / logs.var() == pytest.approx(shared, abs=0.04)


def test_no_scatter_is_even_concrete():
    assert tensile_strength_along(3000.0, 11, 2.9, 0.0, 1) == pytest.approx(2.9)
