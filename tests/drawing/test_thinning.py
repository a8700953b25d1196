"""A thinned line looks like the full one."""

import numpy as np
import pytest

from crackkit.drawing.thinning import UNSEEN, thinned


def line(count: int, bend) -> np.ndarray:
    x = np.linspace(0.0, 600.0, count)
    return np.column_stack([x, bend(x)])


def less_of(full: np.ndarray, **few) -> np.ndarray:
    return thinned(full[:, 0], full[:, 1:].T, **few)[0]


@pytest.mark.parametrize("count", [201, 400, 401, 402, 1003])
def test_no_point_of_the_full_line_is_off_by_more_than_a_hair(count):
    full = line(count, lambda x: 40.0 * np.sin(x / 50.0))
    less = less_of(full)
    assert len(less) < 0.6 * len(full)
    missed = np.interp(full[:, 0], less[:, 0], less[:, 1]) - full[:, 1]
    assert np.abs(missed).max() < 3 * UNSEEN
    assert less[0].tolist() == full[0].tolist() and less[-1].tolist() == full[-1].tolist()


def test_jumps_and_corners_stay():
    full = line(400, lambda x: np.where(x < 300.0, 0.0, 50.0))
    less = less_of(full)
    at = np.flatnonzero(np.diff(full[:, 1]))[0]
    assert full[at].tolist() in less.tolist() and full[at + 1].tolist() in less.tolist()


def test_a_short_line_stays_as_it_is():
    full = line(30, lambda x: 0.0 * x)
    assert less_of(full).tolist() == full.tolist()
    assert len(less_of(full, few=10)) < 30


def test_lines_thinned_together_are_those_thinned_alone():
    bent, level = line(300, lambda x: 30.0 * np.sin(x / 40.0)), line(300, lambda x: 0.0 * x)
    both = thinned(bent[:, 0], np.array([bent[:, 1], level[:, 1]]))
    assert both[0].tolist() == less_of(bent).tolist()
    assert both[1].tolist() == less_of(level).tolist() and len(both[1]) < 25
