"""What weight, patches and free curvature do to the splines of a plate."""

from functools import lru_cache

import numpy as np

from crackkit.words import _

_GAUSS = np.polynomial.legendre.leggauss(3)


def even_load(operator, pressure):
    """Load that is the same everywhere.

    Parameters
    ----------
    operator : PlateOperator
        Splines of the plate.
    pressure : float
        Load on each square millimetre [N/mm2].

    Returns
    -------
    numpy.ndarray
        Load on each spline [N], shape (splines along x, splines along y).
    """
    x, y = (_sums(side, 0) for side in (operator.x, operator.y))
    return pressure * np.outer(x, y)


def curvature_load(operator, free, rigidity, poisson):
    """Load that bends a plate as its free curvature would.

    Parameters
    ----------
    operator : PlateOperator
        Splines of the plate.
    free : Curvature
        Free curvature.
    rigidity : float
        Bending stiffness D [N mm].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    numpy.ndarray
        -D times the integral of (k_x + nu k_y) w_xx + (k_y + nu k_x) w_yy, for each spline [N].
    """
    x, y = ([_sums(side, order) for order in (0, 2)] for side in (operator.x, operator.y))
    along, across = free.x + poisson * free.y, free.y + poisson * free.x
    return -rigidity * (along * np.outer(x[1], y[0]) + across * np.outer(x[0], y[1]))


@lru_cache(maxsize=64)
def patch_load(operator, patches):
    """Load of rectangles that may stand anywhere, exact for any place; kept for the next time.

    Parameters
    ----------
    operator : PlateOperator
        Splines of the plate.
    patches : tuple of LoadPatch
        The loads.

    Returns
    -------
    numpy.ndarray
        Load on each spline [N], shape (splines along x, splines along y).

    Raises
    ------
    ValueError
        If a load stands over an edge.
    """
    if not patches:
        return np.zeros(operator.shape)
    x = _shares(operator.x, [patch.along for patch in patches])
    y = _shares(operator.y, [patch.across for patch in patches])
    force = np.array([patch.force for patch in patches])
    return (x * force) @ y.T


def _sums(side, order):
    return side.values[order, slice(*side.kept)] @ side.weights


def _shares(side, intervals):
    """Mean of each spline over each interval; shape (splines, intervals)."""
    pieces = [_pieces(side.knots, *interval) for interval in intervals]
    values = side.at(np.concatenate([places for places, _weights in pieces]))[0]
    ends = np.cumsum([places.size for places, _weights in pieces])[:-1]
    parts = np.split(values, ends, axis=1)
    return np.stack([part @ w for part, (_x, w) in zip(parts, pieces, strict=True)], axis=1)


def _pieces(knots, start, end):
    """Gauss places of an interval cut at the knots, and their share of its length."""
    slack = 1e-9 * knots[-1]
    if start < -slack or end > knots[-1] + slack:
        raise ValueError(_("A load must stand on the slab with all of its face."))
    inner = knots[(knots > start) & (knots < end)]
    cuts = np.clip(np.concatenate(([start], inner, [end])), 0.0, knots[-1])
    half = 0.5 * np.diff(cuts)[:, None]
    places = cuts[:-1, None] + half * (1.0 + _GAUSS[0])
    return places.ravel(), (half * _GAUSS[1] / (end - start)).ravel()
