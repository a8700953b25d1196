"""From curvature to deflection, for beams whose curvature is already known.

A cracked beam bends more than its moments alone tell, so its curvature comes from elsewhere; here
it is summed up twice. The curvature runs straight from station to station, and for that the result
is exact. Two stations at one place hold a jump.
"""

import numpy as np

from crackkit.mechanics.supports import checked_supports
from crackkit.words import _


def deflection_from_curvature(x, curvature, supports_at, settlements=(0.0, 0.0)) -> np.ndarray:
    """Deflection of a beam on two supports, free ends included.

    Parameters
    ----------
    x : array_like
        Stations, never decreasing [mm].
    curvature : array_like
        Curvature at the stations, positive where the beam sags [1/mm]; earlier axes are cases.
    supports_at : tuple of float
        Places of the two supports, anywhere between the first and the last station [mm].
    settlements : tuple of float
        How far the two supports have sunk, downward positive [mm].

    Returns
    -------
    ndarray
        Deflection at the stations, downward positive, shaped like the curvature [mm].

    Raises
    ------
    ValueError
        If stations and curvature do not fit, or the supports are not two places on the beam.

    Notes
    -----
    Only for statically determinate beams: a third support would change the curvature itself.
    """
    x, kappa = _checked(x, curvature)
    places = np.asarray(supports_at, dtype=float)
    if places.shape != (2,) or places[0] == places[1]:
        raise ValueError(_("A beam needs two supports at two places."))
    turn, sag = _free_shape(x, kappa)
    _turns, sags = _shape_at(x, kappa, turn, sag, places)
    sunk = np.asarray(settlements, dtype=float) - sags
    tilt = (sunk[..., 1:] - sunk[..., :1]) / (places[1] - places[0])
    return sag + sunk[..., :1] + tilt * (x - places[0])


def cantilever_deflection_from_curvature(x, curvature, fixed_at) -> np.ndarray:
    """Deflection of a beam that is held, and kept from turning, at one place.

    Parameters
    ----------
    x : array_like
        Stations, never decreasing [mm].
    curvature : array_like
        Curvature at the stations, positive where the beam sags [1/mm]; earlier axes are cases.
    fixed_at : float
        Place where deflection and slope are zero [mm]; free ends may lie on both sides.

    Returns
    -------
    ndarray
        Deflection at the stations, downward positive, shaped like the curvature [mm].

    Raises
    ------
    ValueError
        If stations and curvature do not fit, or the fixed place lies outside the stations.
    """
    x, kappa = _checked(x, curvature)
    turn, sag = _free_shape(x, kappa)
    tilt, drop = _shape_at(x, kappa, turn, sag, np.array([float(fixed_at)]))
    return sag - drop - tilt * (x - fixed_at)


def deflection_over_supports(x, curvature, supports, hinges=(), kinks=()) -> np.ndarray:
    """Deflection of a beam on any supports, from a curvature that fits them.

    Parameters
    ----------
    x : array_like
        Stations, never decreasing [mm].
    curvature : array_like
        Curvature at the stations, positive where the beam sags [1/mm]; earlier axes are cases.
    supports : sequence of Support
        The supports in any order; settlements count.
    hinges : sequence of float
        Places where the beam has a kink [mm].
    kinks : array_like
        Angle of each kink, positive where it opens at the bottom [rad]; earlier axes are cases.

    Returns
    -------
    ndarray
        Deflection at the stations, downward positive, shaped like the curvature [mm].

    Raises
    ------
    ValueError
        If stations and curvature or hinges and kinks do not fit, the beam is not held, or a
        support lies outside the stations.

    Notes
    -----
    The beam is set down on every support: in each span a straight line is added, and a free end
    takes that of its span. Where the curvature fits the supports (see
    `redistribution.redistributed`) the lines are one and the result is exact; where it does not
    quite, the beam has slight kinks over its supports instead of leaving them. Whether a beam on
    two supports or more keeps its slope where it is fixed is up to the curvature.
    """
    x, kappa = _checked(x, curvature)
    ordered = checked_supports(float(x[-1]), supports)
    places = np.array([support.at for support in ordered])
    turn, sag = _free_shape(x, kappa)
    turns, sags = _shape_at(x, kappa, turn, sag, places)
    at, angles = np.asarray(hinges, dtype=float), np.asarray(kinks, dtype=float)
    if at.ndim != 1 or angles.shape[-1:] != at.shape:
        raise ValueError(_("Every hinge needs one kink."))
    bent = sag - angles @ np.maximum(x - at[:, None], 0.0)
    missing = np.array([support.settlement for support in ordered]) - sags
    missing = missing + angles @ np.maximum(places - at[:, None], 0.0)
    if places.size == 1:
        tilt = angles @ (places > at[:, None]) - turns
        return bent + missing + tilt * (x - places[0])
    return bent + missing @ _share_of_supports(x, places)


def _share_of_supports(x, places):
    """How much of a correction at each support counts at each station: straight between them."""
    i = np.clip(places.searchsorted(x, side="right") - 1, 0, places.size - 2)
    part = (x - places[i]) / (places[i + 1] - places[i])
    number = np.arange(places.size)[:, None]
    return (number == i) * (1.0 - part) + (number == i + 1) * part


def _checked(x, curvature):
    x, kappa = np.asarray(x, dtype=float), np.asarray(curvature, dtype=float)
    if x.ndim != 1 or x.size < 2 or kappa.shape[-1:] != x.shape:
        raise ValueError(_("Every station needs one curvature, and there must be two or more."))
    if (x[1:] < x[:-1]).any():
        raise ValueError(_("Stations must run from left to right."))
    return x, kappa


def _free_shape(x, kappa):
    """Slope and deflection at the stations, both zero at the first one."""
    h = np.diff(x)
    k0, k1 = kappa[..., :-1], kappa[..., 1:]
    turn, sag = np.zeros_like(kappa), np.zeros_like(kappa)
    np.cumsum(-h * (k0 + k1) / 2.0, axis=-1, out=turn[..., 1:])
    np.cumsum(h * turn[..., :-1] - h * h * (2.0 * k0 + k1) / 6.0, axis=-1, out=sag[..., 1:])
    return turn, sag


def _shape_at(x, kappa, turn, sag, places):
    """Slope and deflection at any place, by the cubic between its two stations."""
    slack = 1e-9 * (x[-1] - x[0])
    if places.min() < x[0] - slack or places.max() > x[-1] + slack:
        raise ValueError(_("A support lies outside the stations."))
    i = np.clip(np.searchsorted(x, places, side="right") - 1, 0, x.size - 2)
    h, s = x[i + 1] - x[i], places - x[i]
    k0 = kappa[..., i]
    # A jump at the very end of the beam leaves h = 0, and then s = 0 too.
    k1 = k0 + (kappa[..., i + 1] - k0) * s / np.where(h > 0.0, h, 1.0)
    there = turn[..., i] - s * (k0 + k1) / 2.0
    return there, sag[..., i] + s * turn[..., i] - s * s * (2.0 * k0 + k1) / 6.0
