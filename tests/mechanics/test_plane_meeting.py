"""Where straight lines meet, against the equations solved one by one."""

import numpy as np
import pytest

from crackkit.mechanics.plane_meeting import cross, meeting_shares


def test_many_lines_meet_many_others_where_each_pair_does():
    chance = np.random.default_rng(4)
    starts, ways, others, steps = (chance.normal(size=(n, 2)) for n in (5, 5, 7, 7))
    on_lines, on_others = meeting_shares(starts, ways, others, steps)
    for i in range(5):
        for j in range(7):
            matrix = np.stack([ways[i], -steps[j]], axis=1)
            exact = np.linalg.solve(matrix, others[j] - starts[i])
            assert (on_lines[i, j], on_others[i, j]) == pytest.approx(tuple(exact))


def test_lines_that_run_alike_meet_nowhere():
    line, beside = np.array([[0.0, 0.0]]), np.array([[0.0, 1.0], [5.0, 0.0]])
    way = np.array([[2.0, 0.0]])
    shares = meeting_shares(line, way, beside, np.array([[3.0, 0.0], [1.0, 0.0]]))
    assert not np.isfinite(shares).any()


def test_a_vector_to_the_left_turns_positively():
    assert cross(np.array([3.0, 0.0]), np.array([1.0, 2.0])) == 6.0
