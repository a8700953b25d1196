"""Stresses of a tapered beam against the wedge of elasticity, equilibrium and the plain beam."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.elastic_profile import rectangle_profile
from crackkit.mechanics.stress_field import stress_field
from crackkit.mechanics.tapered_field import tapered_stress_field

LENGTH, WIDTH, LOAD = 2400.0, 300.0, 12.0
X = np.linspace(0.0, LENGTH, 97)
SHARES = np.linspace(0.0, 1.0, 41)
DEPTH = 180.0 + 0.1 * X
PARTS = ("sigma_x", "sigma_z", "tau", "s1", "s2", "angle")


def bent(x, load=LOAD):
    """Free end on the left, a tip load and a line load."""
    return -9000.0 * x - load * x**2 / 2, -9000.0 - load * x


def field(rows=None, depth=DEPTH, load=LOAD, **more):
    rows = np.outer(SHARES, depth) if rows is None else rows
    return tapered_stress_field(X, rows, WIDTH, depth, *bent(X, load), load, **more)


def wedge(x, z, slope, load):
    """Article 38: radial stress only, from the parts of the load across and along the wedge."""
    half = np.arctan(slope) / 2
    turn, r = np.arctan2(z, x), np.hypot(x, z)
    across = np.cos(half) * np.sin(turn - half) / (half - np.sin(2 * half) / 2)
    along = np.sin(half) * np.cos(turn - half) / (half + np.sin(2 * half) / 2)
    radial = -load / WIDTH * (across + along) / r
    return radial * np.cos(turn) ** 2, radial * np.sin(turn) * np.cos(turn)


@pytest.mark.parametrize(("slope", "apart"), [(0.02, 4e-4), (0.05, 2.5e-3), (0.1, 9e-3)])
def test_a_wedge_with_a_load_at_its_tip_is_that_of_elasticity(slope, apart):
    """What is left out is of the order of the slope squared."""
    x, load = np.linspace(1000.0, 3000.0, 21), 8000.0
    h = slope * x
    z = np.outer(SHARES, h)
    ours = tapered_stress_field(x, z, WIDTH, h, -load * x, np.full(21, -load))
    sigma_x, tau = wedge(x, z, slope, load)
    assert np.abs(ours.sigma_x - sigma_x).max() < apart * np.abs(sigma_x).max()
    assert np.abs(ours.tau - tau).max() < apart * np.abs(tau).max()


def test_a_beam_of_one_depth_is_the_plain_beam():
    depth, rows = np.full(X.size, 400.0), np.linspace(0.0, 400.0, 41)
    plain = stress_field(X, rectangle_profile(rows, WIDTH, 400.0), *bent(X), LOAD)
    for name in PARTS:
        assert getattr(field(rows, depth), name) == pytest.approx(getattr(plain, name), abs=1e-12)


def test_rows_by_depth_and_rows_by_share_are_the_same_field():
    shares = field()
    rows = np.linspace(0.0, DEPTH[-1], 41)
    depths = field(rows)
    last = X.size - 1
    for name in PARTS:
        there, here = getattr(depths, name), getattr(shares, name)
        assert there[:, last] == pytest.approx(here[:, last], abs=1e-12)
    middle = X.size // 2
    inside = rows <= DEPTH[middle]
    expected = np.interp(rows[inside], SHARES * DEPTH[middle], shares.sigma_x[:, middle])
    drawn_on = 1e-2 * np.abs(expected).max()
    assert depths.sigma_x[inside, middle] == pytest.approx(expected, abs=drawn_on)


def test_below_the_soffit_there_is_nothing():
    rows = np.linspace(0.0, DEPTH[-1], 41)
    outside = rows[:, None] > DEPTH * (1 + 1e-6)
    for name in PARTS:
        assert np.isnan(getattr(field(rows), name)[outside]).all()
        assert np.isfinite(getattr(field(rows), name)[~outside]).all()


@given(st.floats(-0.15, 0.15), st.floats(-3e8, 3e8), st.floats(-3e5, 3e5))
def test_the_stresses_add_up_to_moment_and_shear(slope, moment, shear):
    """Gauss's rule is exact for these parabolas."""
    nodes, weights = np.polynomial.legendre.leggauss(4)
    x = np.array([0.0, 1000.0])
    h = 400.0 + slope * x
    z = np.outer((nodes + 1) / 2, h)
    f = tapered_stress_field(x, z, WIDTH, h, np.full(2, moment), np.full(2, shear))
    dA = np.outer(weights / 2, h) * WIDTH
    assert (f.tau * dA).sum(axis=0) == pytest.approx(np.full(2, shear), rel=1e-9, abs=1e-3)
    assert (f.sigma_x * z * dA).sum(axis=0) == pytest.approx(np.full(2, moment), rel=1e-9, abs=1e-3)


def test_no_stress_leaves_the_faces():
    """At the soffit the stress runs along the inclined face, at the top along the beam."""
    f = field(load=0.0)
    assert np.abs(f.tau[0]).max() == 0.0
    assert f.tau[-1] == pytest.approx(0.1 * f.sigma_x[-1], abs=1e-12)
    assert np.tan(f.angle[0, 1:]) == pytest.approx(np.zeros(X.size - 1), abs=1e-12)


def test_forces_along_the_beam_balance_everywhere():
    """Central differences along and across; tau is a parabola in depth, so only those along err."""
    x, rows = np.linspace(1000.0, 1100.0, 101), np.linspace(0.0, 280.0, 141)
    f = tapered_stress_field(x, rows, WIDTH, 180.0 + 0.1 * x, *bent(x, 0.0))
    left = np.gradient(f.sigma_x, x, axis=1) + np.gradient(f.tau, rows, axis=0)
    typical = np.abs(f.tau).max() / 280.0
    assert np.abs(left[1:-1, 1:-1]).max() < 1e-5 * typical


def test_the_slope_may_be_told_where_the_depth_has_a_kink():
    depth = np.maximum(DEPTH, DEPTH[48])
    slope = np.where(X[48] < X, 0.1, 0.0)
    told, guessed = field(depth=depth, load=0.0, slope=slope), field(depth=depth, load=0.0)
    assert told.tau[-1, 48] == 0.0
    assert guessed.tau[-1, 48] == pytest.approx(0.05 * guessed.sigma_x[-1, 48])
    assert told.tau[:, 60] == pytest.approx(guessed.tau[:, 60])


@pytest.mark.parametrize(
    ("rows", "depth", "said"),
    [
        (SHARES * 100, 400.0, "one depth"),
        (SHARES * 100, [400.0, 300.0], "one depth"),
        (np.ones((4, 3)), DEPTH, "each column"),
        (SHARES, 0.0 * DEPTH, "positive"),
    ],
)
def test_grids_that_do_not_fit_are_refused(rows, depth, said):
    with pytest.raises(ValueError, match=said):
        tapered_stress_field(X, rows, WIDTH, depth, *bent(X))
