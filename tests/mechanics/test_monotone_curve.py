"""A smooth curve through points, held against SciPy's."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from crackkit.mechanics.monotone_curve import monotone_curve

gaps = st.lists(st.floats(0.1, 5.0), min_size=3, max_size=12)


@given(gaps, st.data())
def test_it_is_the_curve_of_scipy(steps, data):
    x = np.cumsum(steps)
    values = st.lists(st.floats(-10.0, 10.0), min_size=x.size, max_size=x.size)
    y = np.round(np.array(data.draw(values)), 3)
    at = np.linspace(x[0], x[-1], 41)
    assert np.allclose(monotone_curve(x, y, at), PchipInterpolator(x, y)(at), atol=1e-9)


@given(gaps, st.data())
def test_it_goes_through_its_points_and_never_beyond_its_neighbours(steps, data):
    x = np.cumsum(steps)
    values = st.lists(st.floats(-10.0, 10.0), min_size=x.size, max_size=x.size)
    y = np.array(data.draw(values))
    assert np.allclose(monotone_curve(x, y, x), y)
    at = np.linspace(x[0], x[-1], 101)
    k = np.clip(np.searchsorted(x, at, side="right") - 1, 0, x.size - 2)
    curve = monotone_curve(x, y, at)
    assert (curve >= np.minimum(y[k], y[k + 1]) - 1e-9).all()
    assert (curve <= np.maximum(y[k], y[k + 1]) + 1e-9).all()


def test_beside_a_rise_of_next_to_nothing_the_curve_is_level():
    x, y = np.arange(3.0), np.array([-2.2e-313, 0.0, 1.0])
    assert monotone_curve(x, y, np.array([0.5]))[0] == pytest.approx(0.0, abs=1e-12)
