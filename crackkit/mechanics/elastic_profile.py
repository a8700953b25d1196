"""How an uncracked section shares moment, shear and load over its depth."""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _


@dataclass(frozen=True, eq=False)
class ElasticProfile:
    """Stresses in an uncracked section for a unit moment, a unit shear and a unit load on top.

    Parameters
    ----------
    z : ndarray
        Depths below the top face [mm].
    bending : ndarray
        Stress along the beam per moment [1/mm3].
    bearing_bending : ndarray
        Stress along the beam per line load on top: what the load adds to plane bending [1/mm].
    bearing : ndarray
        Stress across the beam (vertical) per line load on top [1/mm].
    shear : ndarray
        Shear stress per shear force [1/mm2].
    """

    z: np.ndarray
    bending: np.ndarray
    bearing_bending: np.ndarray
    bearing: np.ndarray
    shear: np.ndarray


def rectangle_profile(z, width, depth) -> ElasticProfile:
    """Profile of a rectangular section.

    Parameters
    ----------
    z : array_like
        Depths below the top face [mm], 0 to the depth of the section.
    width : float or ndarray
        Width of the section [mm].
    depth : float or ndarray
        Depth of the section [mm]; arrays are broadcast with `z`, one section for each column.

    Returns
    -------
    ElasticProfile
        The profile at these depths.

    Raises
    ------
    ValueError
        If width or depth is not positive.

    Notes
    -----
    Timoshenko and Goodier, Theory of Elasticity, 3rd ed., article 22: the exact plane-stress
    field of a beam under a uniform load on its top face, with its small departure from plane
    bending.
    """
    _check_positive(width, depth)
    z = np.asarray(z, dtype=float)
    c, inertia = depth / 2.0, width * depth**3 / 12.0
    y = z - c
    cubed = y * y * y  # ten times quicker than a power
    return ElasticProfile(
        z=z,
        bending=y / inertia,
        bearing_bending=(2.0 * cubed / 3.0 - 2.0 * c * c * y / 5.0) / (2.0 * inertia),
        bearing=-(cubed / 3.0 - c * c * y + 2.0 * c**3 / 3.0) / (2.0 * inertia),
        shear=(c * c - y * y) / (2.0 * inertia),
    )


def tee_profile(
    z, width: float, depth: float, flange_width: float, flange_depth: float
) -> ElasticProfile:
    """Profile of a T section, flange on top; stresses are averages over the width.

    Parameters
    ----------
    z : array_like
        Depths below the top face [mm], 0 to the depth of the section.
    width : float
        Width of the web [mm].
    depth : float
        Depth of the whole section [mm].
    flange_width : float
        Width of the flange [mm].
    flange_depth : float
        Depth of the flange, less than that of the section [mm].

    Returns
    -------
    ElasticProfile
        The profile at these depths.

    Raises
    ------
    ValueError
        If a measure is not positive or the flange is deeper than the section.

    Notes
    -----
    Plane bending and equilibrium of the part above each depth (Jourawski). The departure from
    plane bending is known only for the rectangle and left out. A load on top is taken as spread
    over the whole flange.
    """
    _check_positive(width, depth, flange_width, flange_depth)
    if flange_depth >= depth:
        raise ValueError(_("The flange must be less deep than the section."))
    z = np.asarray(z, dtype=float)
    layers = ((flange_width, 0.0, flange_depth), (width, flange_depth, depth))
    area = sum(b * (lower - upper) for b, upper, lower in layers)
    axis = sum(b * (lower**2 - upper**2) / 2.0 for b, upper, lower in layers) / area
    inertia = sum(
        b * ((lower - axis) ** 3 - (upper - axis) ** 3) / 3.0 for b, upper, lower in layers
    )
    above = -sum(b * _first_moment(z, upper, lower, axis) for b, upper, lower in layers)
    passed = -sum(b * _summed_first_moment(z, upper, lower, axis) for b, upper, lower in layers)
    b = np.where(z < flange_depth, flange_width, width)
    return ElasticProfile(
        z=z,
        bending=(z - axis) / inertia,
        bearing_bending=np.zeros_like(z),
        bearing=(passed / inertia - 1.0) / b,
        shear=above / (inertia * b),
    )


def _check_positive(*measures):
    if not all(np.all((measure > 0.0) & (measure < np.inf)) for measure in measures):
        raise ValueError(_("The measures of a section must be positive."))


def _first_moment(z, upper, lower, axis):
    """Integral of (depth - axis) over the part of a layer above z, per unit width."""
    u = np.clip(z, upper, lower) - axis
    return (u**2 - (upper - axis) ** 2) / 2.0


def _summed_first_moment(z, upper, lower, axis):
    """Integral of `_first_moment` from the top face down to z."""
    u, top = np.clip(z, upper, lower) - axis, upper - axis
    inside = (u**3 - top**3) / 6.0 - top**2 * (u - top) / 2.0
    return inside + np.maximum(z - lower, 0.0) * _first_moment(lower, upper, lower, axis)
