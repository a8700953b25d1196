"""Strokes along the pull over a plan: longer where it is stronger, bold where it is near tearing.

The colour of a map says how hard the concrete is stretched; strokes say which way.
"""

import numpy as np

from crackkit.drawing.shapes import Lines
from crackkit.drawing.slab_plan import SlabPlan

SHORT = 3.0  # a stroke where it is hardly stretched
LEAST, NEAR = 0.12, 0.85  # share of the strength that is worth a stroke, or a bold one


def stroke_places(plan: SlabPlan, x: np.ndarray, y: np.ndarray, pitch: float) -> tuple:
    """Spread places of strokes evenly over a plan.

    Parameters
    ----------
    plan : SlabPlan
    x, y : ndarray
        Lines of the grid on which the pull is known [mm].
    pitch : float
        About so far from stroke to stroke [drawing units].

    Returns
    -------
    middles : ndarray, shape (rows, columns, 2)
        Where they stand on the paper [drawing units].
    near : tuple of ndarray
        Index of the nearest place of the grid to each.
    """
    s = plan.structure
    columns, rows = _places(s.length, plan.scale, pitch), _places(s.width, plan.scale, pitch)
    # ways must not be averaged, an angle and its opposite are the same: the nearest one is shown
    near = np.ix_(_nearest(y, rows), _nearest(x, columns))
    return plan(np.stack(np.meshgrid(columns, rows), axis=-1)), near


def pull_strokes(middles, share: np.ndarray, angle: np.ndarray, longest: float) -> list[Lines]:
    """Draw a stroke at each place where the pull is worth one.

    Parameters
    ----------
    middles : ndarray, shape (rows, columns, 2)
        Places on the paper [drawing units].
    share : ndarray, shape (rows, columns)
        Of the strength [-].
    angle : ndarray, shape (rows, columns)
        Way of the pull, from the length towards the width [rad].
    longest : float
        Stroke where it tears [drawing units].
    """
    half = (SHORT + (longest - SHORT) * np.clip(share, 0.0, 1.0)) / 2
    reach = half[..., None] * np.stack([np.cos(angle), -np.sin(angle)], axis=-1)
    lines = np.stack([middles - reach, middles + reach], axis=-2)
    kinds = ((share >= LEAST) & (share < NEAR), "bears"), (share >= NEAR, "outline")
    return [Lines(lines[some], role) for some, role in kinds if some.any()]


def _nearest(lines: np.ndarray, places: np.ndarray) -> np.ndarray:
    return np.searchsorted((lines[1:] + lines[:-1]) / 2, places)


def _places(length: float, scale: float, pitch: float) -> np.ndarray:
    count = max(int(length * scale / pitch), 1)
    return (np.arange(count) + 0.5) * (length / count)
