"""Many load cases on one beam: the moments of all of them at once.

A line load pushes the supports exactly as three forces at the places of Gauss's rule do (the end
moments are cubic in the place of a force, the load is straight, and the rule is exact up to the
fifth power). Only under the load itself does the moment differ from that of the three forces.
"""

import numpy as np

from crackkit.mechanics.loads import sorted_loads
from crackkit.mechanics.moving_load import moments_for_positions

_PLACES = 0.5 + np.array([-0.5, 0.0, 0.5]) * np.sqrt(0.6)
_SHARES = np.array([5.0, 8.0, 5.0]) / 18.0


def moments_for_cases(
    length: float, supports, cases, x, stiffness=1.0, side: str = "right"
) -> np.ndarray:
    """Bending moments of every load case, settlements left aside.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order.
    cases : sequence
        One for each case: a PointLoad, a LineLoad, or a sequence of them.
    x : array_like
        Where the moments are wanted [mm].
    stiffness : float or array_like
        EI as in `beam.solve` [N mm2].
    side : str
        "right" or "left": which value counts at an inner fixed support, where it jumps.

    Returns
    -------
    ndarray
        Moments, sagging positive, shape (cases, x) [N mm].

    Raises
    ------
    ValueError
        If the beam is not held, or a load or a place lies outside it.
    """
    return moments_for_cases_and_positions(length, supports, cases, (), x, stiffness, side)[0]


def moments_for_cases_and_positions(
    length: float, supports, cases, positions, x, stiffness=1.0, side: str = "right"
) -> tuple[np.ndarray, np.ndarray]:
    """Bending moments of every load case and of a unit force at every position, in one solve.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order.
    cases : sequence
        One for each case: a PointLoad, a LineLoad, or a sequence of them.
    positions : array_like
        Where the unit force stands, from the left end of the beam [mm].
    x : array_like
        Where the moments are wanted [mm].
    stiffness : float or array_like
        EI as in `beam.solve` [N mm2].
    side : str
        "right" or "left": which value counts at an inner fixed support, where it jumps.

    Returns
    -------
    of_cases : ndarray
        Moments, sagging positive, shape (cases, x) [N mm].
    of_positions : ndarray
        Moments per force, shape (positions, x) [mm].

    Raises
    ------
    ValueError
        If the beam is not held, or a load, a position or a place lies outside it.
    """
    x, a = (np.atleast_1d(np.asarray(each, dtype=float)) for each in (x, positions))
    cuts = sorted({support.at for support in supports})
    (number, force, at), parts = _forces_and_parts(length, cases, cuts)
    everywhere = np.concatenate([a, at])
    unit = moments_for_positions(length, supports, 1.0, everywhere, x, stiffness, side)
    M = ((np.arange(len(cases))[:, None] == number) * force) @ unit[a.size :]
    owner = np.arange(len(cases))[:, None] == parts[:, 0]
    M += owner.astype(float) @ _smoothing(parts[:, 1:], x)
    return M, unit[: a.size]


def _forces_and_parts(length, cases, cuts):
    """Cases, forces and places; and rows (case, start, end, intensity, its slope)."""
    forces, parts = [np.zeros((0, 3))], [np.zeros((0, 5))]
    for number, case in enumerate(cases):
        loads = case if isinstance(case, (list, tuple)) else (case,)
        points, lines = sorted_loads(length, loads)
        forces += [np.array([[number, load.force, load.at]]) for load in points]
        parts += [[(number, *part)] for line in lines for part in _cut(line, cuts)]
    parts = np.concatenate(parts)
    number, start, end, q, k = parts.T[:, :, None]
    within = (end - start) * _PLACES
    pushes = (end - start) * _SHARES * (q + k * within)
    rows = np.broadcast_arrays(number, pushes, start + within)
    forces.append(np.stack([row.ravel() for row in rows], axis=1))
    return np.concatenate(forces).T, parts


def _cut(line, cuts):
    """Parts of a line load between the supports: start, end, intensity there and its slope."""
    k = (line.right - line.left) / (line.end - line.start)
    bounds = [line.start, *(c for c in cuts if line.start < c < line.end), line.end]
    for start, end in zip(bounds, bounds[1:], strict=False):
        yield start, end, line.left + k * (start - line.start), k


def _smoothing(parts, x) -> np.ndarray:
    """What the three forces in place of each part have too much under it, taken away."""
    start, end, q, k = parts.T[:, :, None]
    h = end - start
    t = np.clip(x - start, 0.0, h)
    bump = -t * t * (q / 2.0 + k * t / 6.0)
    for place, share in zip(_PLACES, _SHARES, strict=True):
        bump += h * share * (q + k * place * h) * np.maximum(t - place * h, 0.0)
    return np.where(t < h, bump, 0.0)
