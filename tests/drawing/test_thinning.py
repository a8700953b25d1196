"""A thinned line looks like the full one."""

import numpy as np
import pytest

from crackkit.drawing.thinning import UNSEEN, thinned


def line(count: int, bend) -> np.ndarray:
    x = np.linspace(0.0, 600.0, count)
    return np.column_stack([x, bend(x)])


@pytest.mark.parametrize("count", [201, 400, 401, 402, 1003])
def test_no_point_of_the_full_line_is_off_by_more_than_a_hair(count):
    full = line(count, lambda x: 40.0 * np.sin(x / 50.0))
    less = thinned(full)
    assert len(less) < 0.6 * len(full)
    missed = np.interp(full[:, 0], less[:, 0], less[:, 1]) - full[:, 1]
    assert np.abs(missed).max() < 3 * UNSEEN
    assert less[0].tolist() == full[0].tolist() and less[-1].tolist() == full[-1].tolist()


def test_jumps_and_corners_stay():
    full = line(400, lambda x: np.where(x < 300.0, 0.0, 50.0))
    less = thinned(full)
    at = np.flatnonzero(np.diff(full[:, 1]))[0]
    assert full[at].tolist() in less.tolist() and full[at + 1].tolist() in less.tolist()


def test_a_short_line_stays_as_it_is():
    full = line(30, lambda x: 0.0 * x)
    assert thinned(full) is full
    assert len(thinned(full, few=10)) < 30
