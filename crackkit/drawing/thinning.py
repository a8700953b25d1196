"""Fewer points for a line that nobody can tell from the full one."""

import numpy as np

FEW = 200  # points that need no thinning
UNSEEN = 0.12  # drawing units
ROUNDS = 3


def thinned(points: np.ndarray, few: int = FEW) -> np.ndarray:
    """Drop points that lie on the line between their neighbours.

    Parameters
    ----------
    points : ndarray, shape (n, 2)
        In drawing units, x never falling.
    few : int
        Lines with no more points than this stay as they are.

    Returns
    -------
    ndarray
        The ends and every point that can be seen to matter.
    """
    for _round in range(ROUNDS if len(points) > few else 0):
        points = points[_needed(points)]
    return points


def _needed(points: np.ndarray) -> np.ndarray:
    """Tell of every second point whether it stands out; the others stay this time."""
    x, y = points[:, 0], points[:, 1]
    before, here, after = slice(0, -2, 2), slice(1, -1, 2), slice(2, None, 2)
    count = min(x[before].size, x[here].size, x[after].size)
    x0, x1, x2 = x[before][:count], x[here][:count], x[after][:count]
    y0, y1, y2 = y[before][:count], y[here][:count], y[after][:count]
    wide = np.where(x2 > x0, x2 - x0, 1.0)
    kept = np.ones(x.size, dtype=bool)
    kept[1 : 2 * count : 2] = np.abs(y0 + (y2 - y0) * (x1 - x0) / wide - y1) > UNSEEN
    return kept
