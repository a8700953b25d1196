"""How much harder a slab is stretched beside a hole than far from it.

All factors are peaks of the tension at the rim over the tension far away, for a hole that is
small beside the slab. They do not depend on the size of the hole, only on its shape.
"""

import numpy as np

from crackkit.words import _

_RADII, _SHAPES = (0.2, 1.0), (0.3, 1.0)
_ROUNDING = 1e-9


def round_hole_stress(distance, turn, radius, along=1.0, across=0.0):
    """Stresses round a circular hole in a large slab (Kirsch 1898).

    Parameters
    ----------
    distance : array_like
        Distance from the centre of the hole [mm], `radius` or more.
    turn : array_like
        Direction from the centre, turned from the x axis [rad].
    radius : float
        Radius of the hole [mm], above 0.
    along, across : float
        Tension far away along x and along y [MPa].

    Returns
    -------
    numpy.ndarray
        Stress along the radius, along the rim, and shear, last axis [MPa].
    """
    r, t = np.broadcast_arrays(np.asarray(distance, float), np.asarray(turn, float))
    even, odd = 0.5 * (along + across), 0.5 * (along - across)
    q, C, S = (radius / r) ** 2, np.cos(2 * t), np.sin(2 * t)
    radial = even * (1 - q) + odd * (1 - 4 * q + 3 * q * q) * C
    rim = even * (1 + q) - odd * (1 + 3 * q * q) * C
    shear = -odd * (1 + 2 * q - 3 * q * q) * S
    return np.stack([radial, rim, shear], axis=-1)


def round_hole_factor(across=0.0):
    """Greatest tension at the rim of a circular hole (Kirsch 1898).

    Parameters
    ----------
    across : float
        Stress far away square to the greater tension, as a share of it [-], -1 to 1: 0 for a pull
        one way, 1 for the same pull both ways, -1 for pure shear.

    Returns
    -------
    float
        Factor [-]: 3, 2 and 4 for these three.

    Raises
    ------
    ValueError
        If the share is not -1 to 1.
    """
    if not -1 <= across <= 1:
        raise ValueError(_("The smaller stress is -1 to 1 times the greater tension."))
    return 3.0 - across


def elliptic_hole_factor(half_across, half_along):
    """Greatest tension at the rim of an elliptic hole, pulled one way (Inglis 1913).

    Parameters
    ----------
    half_across : float
        Half axis a square to the pull [mm], above 0.
    half_along : float
        Half axis b along the pull [mm], above 0.

    Returns
    -------
    float
        Factor 1 + 2 a/b [-].

    Raises
    ------
    ValueError
        If a half axis is not above 0.
    """
    if not min(half_across, half_along) > 0:
        raise ValueError(_("A hole needs a size."))
    return 1.0 + 2.0 * half_across / half_along


def slot_factor(half_across, radius):
    """Estimate of the greatest tension at the end of any long narrow hole (after Inglis 1913).

    Parameters
    ----------
    half_across : float
        Half of its length a, square to the pull [mm], above 0.
    radius : float
        Radius of its end rho [mm], above 0.

    Returns
    -------
    float
        Factor 1 + 2 sqrt(a/rho) [-]; exact for an ellipse.

    Raises
    ------
    ValueError
        If a size is not above 0.
    """
    if not min(half_across, radius) > 0:
        raise ValueError(_("A hole needs a size."))
    return 1.0 + 2.0 * float(np.sqrt(half_across / radius))


def rounded_rectangle_factor(half_across, half_along, radius):
    """Greatest tension at a corner of a rectangular hole with rounded corners, pulled one way.

    A fit to stresses that others worked out (Peterson; Roark's Formulas, table of stress
    concentration factors; coefficients from memory, see `ROARK2002`).

    Parameters
    ----------
    half_across : float
        Half side a square to the pull [mm], above 0.
    half_along : float
        Half side b along the pull [mm], 0.3 a to a.
    radius : float
        Radius r of the corners [mm], 0.2 b to b.

    Returns
    -------
    float
        Factor [-].

    Raises
    ------
    ValueError
        If the hole lies outside of what the fit covers.
    """
    a, b = half_across, half_along
    near = _ROUNDING
    fits = min(a, b) > 0 and _SHAPES[0] - near <= b / a <= _SHAPES[1] + near
    if not (fits and _RADII[0] - near <= radius / b <= _RADII[1] + near):
        raise ValueError(
            _("The fit covers radii of 0.2 b to b, and half sides b of 0.3 a to a, not others.")
        )
    q = np.sqrt(radius / b)
    terms = np.array(
        [
            14.815 - 15.774 * q + 8.149 * q * q,
            -11.201 - 9.750 * q + 9.600 * q * q,
            0.202 + 38.662 * q - 27.374 * q * q,
            3.232 - 23.002 * q + 15.482 * q * q,
        ]
    )
    return float(terms @ (b / a) ** np.arange(4))
