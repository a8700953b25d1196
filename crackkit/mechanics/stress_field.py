"""Where an uncracked beam is stretched, how much, and in which direction."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.elastic_profile import ElasticProfile


@dataclass(frozen=True, eq=False)
class StressField:
    """Stresses on a grid over the side of a beam; every array of stress has the shape (z, x).

    Parameters
    ----------
    x : ndarray
        Stations along the beam [mm].
    z : ndarray
        Depths below the top face [mm]: one for each row, or one for each point of a tapered beam.
    sigma_x : ndarray
        Stress along the beam, tension positive [MPa].
    sigma_z : ndarray
        Vertical stress, tension positive [MPa].
    tau : ndarray
        Shear stress, positive with a positive shear force [MPa].
    s1 : ndarray
        Largest principal stress: how much the concrete is stretched [MPa].
    s2 : ndarray
        Smallest principal stress [MPa].
    angle : ndarray
        Direction of `s1`, turned from the x axis towards z (downward), -pi/2 to pi/2 [rad].
        A crack runs at right angles to it.
    """

    x: np.ndarray
    z: np.ndarray
    sigma_x: np.ndarray
    sigma_z: np.ndarray
    tau: np.ndarray
    s1: np.ndarray
    s2: np.ndarray
    angle: np.ndarray


def stress_components(profile: ElasticProfile, moment, shear, intensity=0.0):
    """Stresses in an uncracked beam; profile, moment, shear and load are broadcast together.

    Parameters
    ----------
    profile : ElasticProfile
        The section, at the depths that are wanted.
    moment : array_like
        Bending moment, sagging positive [N mm].
    shear : array_like
        Shear force [N].
    intensity : array_like
        Line load on the top face, downward positive [N/mm].

    Returns
    -------
    sigma_x, sigma_z, tau : ndarray
        Stress along the beam, vertical stress, shear stress [MPa].

    Notes
    -----
    The field is in equilibrium where the load is uniform (Timoshenko and Goodier, Theory of
    Elasticity, 3rd ed., article 22). Under a point load and over a support it misses the local
    stresses, which fade within about one depth of the beam (Saint-Venant).
    """
    sigma_x = profile.bending * moment + profile.bearing_bending * intensity
    return sigma_x, profile.bearing * intensity, profile.shear * shear


def principal_stresses(sigma_x, sigma_z, tau):
    """Principal stresses and the direction of the larger one.

    Parameters
    ----------
    sigma_x : array_like
        Stress along x, tension positive [MPa].
    sigma_z : array_like
        Stress along z [MPa].
    tau : array_like
        Shear stress [MPa].

    Returns
    -------
    s1, s2 : ndarray
        Largest and smallest principal stress [MPa].
    angle : ndarray
        Direction of s1, turned from x towards z, -pi/2 to pi/2 [rad].

    Notes
    -----
    Mohr's circle. Between grid points interpolate cos 2a and sin 2a, never the angle itself: see
    `principal_angle_at`.
    """
    centre = (sigma_x + sigma_z) * 0.5
    half = (sigma_x - sigma_z) * 0.5
    radius = np.sqrt(half * half + tau * tau)
    return centre + radius, centre - radius, 0.5 * np.arctan2(tau, half)


def stress_field(x, profile: ElasticProfile, moment, shear, intensity=0.0) -> StressField:
    """Stresses of an uncracked beam on a grid.

    Parameters
    ----------
    x : array_like
        Stations along the beam [mm].
    profile : ElasticProfile
        The section, at the depths of the grid.
    moment : array_like
        Bending moment at the stations, sagging positive [N mm].
    shear : array_like
        Shear force at the stations [N].
    intensity : array_like
        Line load on the top face at the stations, downward positive [N/mm]; or one for all.

    Returns
    -------
    StressField
        Stresses, principal stresses and directions over the side of the beam.

    Notes
    -----
    As for `stress_components`.
    """
    column = _column(profile)
    sigma_x, sigma_z, tau = stress_components(
        column, np.asarray(moment), np.asarray(shear), np.asarray(intensity)
    )
    sigma_z = np.broadcast_to(sigma_z, sigma_x.shape)
    return StressField(
        np.asarray(x, dtype=float), profile.z, sigma_x, sigma_z, tau,
        *principal_stresses(sigma_x, sigma_z, tau),
    )  # fmt: skip


def principal_angle_at(field: StressField, x, z) -> np.ndarray:
    """Direction of the largest principal stress between the points of a grid.

    Parameters
    ----------
    field : StressField
        The grid of stresses, with one depth for each row.
    x : array_like
        Places along the beam, inside the grid [mm].
    z : array_like
        Depths below the top face, inside the grid [mm].

    Returns
    -------
    ndarray
        Direction of s1, turned from x towards z, -pi/2 to pi/2 [rad].
    """
    i, u = _cell(field.x, x)
    j, v = _cell(field.z, z)
    double = 2.0 * field.angle
    along = _bilinear(np.cos(double), i, u, j, v)
    across = _bilinear(np.sin(double), i, u, j, v)
    return 0.5 * np.arctan2(across, along)


def _column(profile: ElasticProfile) -> ElasticProfile:
    parts = (
        profile.z, profile.bending, profile.bearing_bending, profile.bearing, profile.shear,
    )  # fmt: skip
    return ElasticProfile(*(part[:, None] for part in parts))


def _cell(grid, places):
    """Number of the cell of each place, and how far into the cell it lies (0 to 1)."""
    places = np.asarray(places, dtype=float)
    i = np.clip(np.searchsorted(grid, places, side="right") - 1, 0, grid.size - 2)
    return i, (places - grid[i]) / (grid[i + 1] - grid[i])


def _bilinear(values, i, u, j, v):
    upper = values[j, i] * (1.0 - u) + values[j, i + 1] * u
    lower = values[j + 1, i] * (1.0 - u) + values[j + 1, i + 1] * u
    return upper * (1.0 - v) + lower * v
