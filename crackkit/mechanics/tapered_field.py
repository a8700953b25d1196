"""Stresses of an uncracked beam whose depth changes along it; the top face is straight."""

import numpy as np

from crackkit.mechanics.elastic_profile import rectangle_profile
from crackkit.mechanics.stress_field import StressField, principal_stresses, stress_components
from crackkit.words import _


def tapered_stress_field(x, z, width, depth, moment, shear, intensity=0.0, slope=None):
    """Stresses on a grid over the side of a tapered beam.

    Parameters
    ----------
    x : array_like
        The n columns of the grid, from left to right [mm].
    z : array_like
        Depths below the top face [mm]: one for each row, or shape (rows, n). Rows at shares of
        the depth are ``np.outer(shares, depth)``.
    width : float
        Width of the beam [mm], above 0.
    depth : array_like
        Depth of the beam at the columns [mm], above 0.
    moment : array_like
        Bending moment at the columns, sagging positive [N mm].
    shear : array_like
        Shear force at the columns [N].
    intensity : float or array_like
        Line load on the top face, downward positive [N/mm]; one for all columns or one each.
    slope : float or array_like, optional
        How fast the depth grows along the beam [-]; taken from `depth` when left out. Give it
        where the depth has a kink.

    Returns
    -------
    StressField
        Stresses, principal stresses and directions; not-a-number below the soffit.

    Raises
    ------
    ValueError
        If the arrays do not fit together or a measure is not positive.

    Notes
    -----
    Bending as in a beam of the depth of each column. The shear stress is what the change of the
    bending stress along the beam leaves for equilibrium, so it carries, beside the shear force,
    the share that the moment sends along the inclined soffit: tau at the soffit is the bending
    stress times the slope, and the stretching there runs along the face. For a small slope this
    is the wedge of Timoshenko and Goodier, Theory of Elasticity, 3rd ed., article 38. The
    vertical stress leaves the slope out.
    """
    x, h = np.asarray(x, dtype=float), np.asarray(depth, dtype=float)
    z = np.asarray(z, dtype=float)
    rows = _inside(z, h, x)
    M = np.asarray(moment, dtype=float)
    grown = np.gradient(h, x) if slope is None else np.asarray(slope, dtype=float)
    sigma_x, sigma_z, tau = stress_components(
        rectangle_profile(rows, width, h), M, np.asarray(shear), np.asarray(intensity)
    )
    tau = tau + _shear_by_slope(rows, width, h) * (M * grown)
    return StressField(
        x, z, sigma_x, sigma_z, tau, *principal_stresses(sigma_x, sigma_z, tau)
    )  # fmt: skip


def _inside(z, h, x):
    """Depths of all points of the grid, not-a-number below the soffit."""
    if x.ndim != 1 or h.shape != x.shape or z.ndim not in (1, 2):
        raise ValueError(_("A tapered beam needs one depth at each column of the grid."))
    rows = z[:, None] if z.ndim == 1 else z
    if rows.shape[1] not in (1, x.size):
        raise ValueError(_("Each row of the grid needs a depth at each column."))
    return np.where(rows <= h * (1.0 + 1e-9), rows, np.nan)


def _shear_by_slope(z, b, h):
    """Shear stress per moment and slope: derivative by h of 6 z (h - z)/(b h^3)."""
    return 6.0 * z * (3.0 * z - 2.0 * h) / (b * h**4)
