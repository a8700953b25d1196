"""Loads on splines: what they add up to, and where they stand."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plate_loads import curvature_load, even_load, patch_load
from crackkit.mechanics.plate_operator import plate_operator
from crackkit.mechanics.plate_slab import Curvature, LoadPatch

X, Y = (0.0, 300.0, 500.0, 1100.0, 2000.0), (0.0, 400.0, 1000.0, 1500.0)
OPERATOR = plate_operator(X, Y, (0, 0), (0, 0), 0.2)


def linear(side):
    """Coefficients of the splines that make up the place itself (Greville)."""
    t = np.r_[[side.knots[0]] * 3, side.knots, [side.knots[-1]] * 3]
    return (t[1:-3] + t[2:-2] + t[3:-1]) / 3.0


@given(st.floats(0.0, 1.0), st.floats(0.0, 1.0), st.floats(1.0, 900.0), st.floats(1.0, 900.0))
def test_a_patch_weighs_what_it_weighs_and_stands_where_it_stands(u, v, a, b):
    x, y = a / 2 + u * (2000.0 - a), b / 2 + v * (1500.0 - b)
    load = patch_load(OPERATOR, (LoadPatch(x, y, a, b, 7.0),))
    assert load.sum() == pytest.approx(7.0)
    assert linear(OPERATOR.x) @ load.sum(axis=1) == pytest.approx(7.0 * x)
    assert linear(OPERATOR.y) @ load.sum(axis=0) == pytest.approx(7.0 * y)


def test_patches_add_up_and_none_is_nothing():
    first, second = LoadPatch(500.0, 500.0, 200.0, 90.0, 3.0), LoadPatch(1e3, 1e3, 1.0, 1.0, 5.0)
    both = patch_load(OPERATOR, (first, second))
    each = patch_load(OPERATOR, (first,)) + patch_load(OPERATOR, (second,))
    assert both == pytest.approx(each)
    assert not patch_load(OPERATOR, ()).any()


@pytest.mark.parametrize("at", [(99.0, 700.0), (1901.0, 700.0), (700.0, 99.0), (700.0, 1401.0)])
def test_a_patch_over_an_edge_is_refused(at):
    with pytest.raises(ValueError, match="on the slab"):
        patch_load(OPERATOR, (LoadPatch(*at, 200.0, 200.0, 1.0),))


def test_an_even_load_is_pressure_times_area():
    assert even_load(OPERATOR, 0.01).sum() == pytest.approx(0.01 * 2000.0 * 1500.0)


def test_free_curvature_does_no_work_on_a_plane_and_bends_as_it_should():
    load = curvature_load(OPERATOR, Curvature(2e-6, 1e-6), 5e9, 0.2)
    x, y = linear(OPERATOR.x), linear(OPERATOR.y)
    for plane in (np.ones(load.shape), x[:, None] + 0 * y, 0 * x[:, None] + y):
        assert (load * plane).sum() == pytest.approx(0.0, abs=1e-6 * abs(load).sum())
    places = np.linspace(0.0, 2000.0, 30)
    square = np.linalg.lstsq(OPERATOR.x.at(places)[0].T, places**2, rcond=None)[0]
    work = (load * square[:, None]).sum()
    assert work == pytest.approx(-5e9 * (2e-6 + 0.2e-6) * 2.0 * 2000.0 * 1500.0)
