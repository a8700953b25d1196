"""Knots: where they must be, how close, and how many."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plate_knots import plate_knots


@given(st.floats(2e3, 8e3), st.floats(200.0, 3e3), st.floats(0.0, 1.0), st.floats(40.0, 400.0))
def test_three_cubics_or_more_lie_under_a_load_and_few_elsewhere(length, reach, place, size):
    start = place * (length - size)
    knots = np.array(plate_knots(length, reach, ((start, start + size),)))
    assert (knots[0], knots[-1]) == (0.0, length)
    assert (np.diff(knots) > 0.1 * size / 3).all()
    under = (knots >= start - 0.14 * size) & (knots <= start + 1.14 * size)
    assert under.sum() >= 4
    assert 13 <= knots.size <= 60


@pytest.mark.parametrize("patches", [(), ((300.0, 500.0),), ((0.0, 50.0), (900.0, 1100.0))])
def test_a_mirror_image_has_mirrored_knots(patches):
    mirrored = tuple((4000.0 - end, 4000.0 - start) for start, end in patches)
    knots = np.array(plate_knots(4000.0, 600.0, patches))
    assert 4000.0 - knots[::-1] == pytest.approx(plate_knots(4000.0, 600.0, mirrored))
