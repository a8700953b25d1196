"""How fast the stress grows towards a sharp corner (Williams 1952).

Near a corner of the solid angle w the stress of an elastic body goes as r^(lam - 1), with r the
distance from the corner: without bound where lam is below 1. So the stress "at" an inside corner
means nothing, and a finer mesh only tells a larger number. What means something is a mean over a
length that belongs to the material, see `plane_averages`.
"""

import numpy as np

from crackkit.words import _

_HALVINGS = 60


def opening_exponent(angle):
    """Exponent lam of the movement near a corner that is pulled open evenly.

    The least positive root of sin(lam w) + lam sin w = 0 (Williams 1952, J. Appl. Mech. 19,
    526-528, equation for the symmetric state; free edges).

    Parameters
    ----------
    angle : float
        Solid angle w of the body [rad], pi to 2 pi: 1.5 pi for the inside corner of an L.

    Returns
    -------
    float
        Exponent [-], 1 down to 0.5; stresses go as r to the power of lam - 1.

    Raises
    ------
    ValueError
        If the corner is no inside corner.
    """
    _check(angle)
    return _root(lambda lam: np.sin(lam * angle) + lam * np.sin(angle), 0.5, 1.0)


def shearing_exponent(angle):
    """Exponent lam of the movement near a corner whose edges are sheared past each other.

    The least positive root of sin(lam w) - lam sin w = 0 besides lam = 1, which is a mere turn
    (Williams 1952, equation for the antisymmetric state; free edges). Above 1, which is where w
    is less than 257 degrees, the stress stays bounded.

    Parameters
    ----------
    angle : float
        Solid angle w of the body [rad], pi to 2 pi.

    Returns
    -------
    float
        Exponent [-], 2 down to 0.5.

    Raises
    ------
    ValueError
        If the corner is no inside corner.
    """
    _check(angle)

    def without_turn(lam):
        if abs(lam - 1) < 1e-6:
            return np.sin(angle) - angle * np.cos(angle)
        return (np.sin(lam * angle) - lam * np.sin(angle)) / (1 - lam)

    return _root(without_turn, 0.5, 2.0)


def _check(angle):
    if not np.pi <= angle <= 2 * np.pi:
        raise ValueError(_("An inside corner has a solid angle from 180 to 360 degrees."))


def _root(function, low, high):
    """Root of a function that is 0 or more at `low` and 0 or less at `high`, by halving."""
    for _k in range(_HALVINGS):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if function(middle) > 0 else (low, middle)
    return float(0.5 * (low + high))


def opening_stress(angle, distance, turn):
    """Stresses near a sharp corner that is pulled open evenly.

    Parameters
    ----------
    angle : float
        Solid angle w of the body [rad], above pi up to 2 pi.
    distance : array_like
        Distance r from the corner [mm], above 0.
    turn : array_like
        Direction from the corner, turned from the middle line of the body [rad], -w/2 to w/2.

    Returns
    -------
    numpy.ndarray
        Stress along r, across r, and shear, last axis [-]: for a stress across the middle line of
        r^(lam - 1), r in mm, so that a stress intensity K [MPa mm^(1 - lam)] multiplies it.
    """
    lam = opening_exponent(angle)
    t, half = np.asarray(turn, dtype=float), 0.5 * angle
    p, m = lam + 1, lam - 1
    # Airy's r^(lam + 1) (cos(p t) + b cos(m t)); both edges are free at once, lam sees to that.
    b = -np.cos(p * half) / np.cos(m * half) if abs(np.cos(m * half)) > 1e-9 else None
    if b is None:
        b = -p * np.sin(p * half) / (m * np.sin(m * half))
    across = p * lam * (np.cos(p * t) + b * np.cos(m * t))
    shear = lam * (p * np.sin(p * t) + b * m * np.sin(m * t))
    along = -p * p * np.cos(p * t) - b * m * m * np.cos(m * t)
    along += p * (np.cos(p * t) + b * np.cos(m * t))
    whole = np.stack(np.broadcast_arrays(along, across, shear), axis=-1) / (p * lam * (1 + b))
    return whole * np.asarray(distance, dtype=float)[..., None] ** m
