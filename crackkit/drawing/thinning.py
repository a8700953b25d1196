"""Fewer points for a line that nobody can tell from the full one."""

import numpy as np

FEW = 200  # points that need no thinning
UNSEEN = 0.12  # drawing units
ROUNDS = 3
TINY = 1e-9  # instead of no width, where a line jumps


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
        points = points.compress(_needed(points), axis=0)
    return points


def _needed(points: np.ndarray) -> np.ndarray:
    """Tell of every second point whether it stands out; the others stay this time."""
    odd = 2 * ((len(points) - 1) // 2)
    x, y = points[: odd + 1].T
    from_x, from_y = x[:-2:2], y[:-2:2]
    share = (x[1::2] - from_x) / np.maximum(x[2::2] - from_x, TINY)
    off = from_y + (y[2::2] - from_y) * share - y[1::2]
    kept = np.ones(len(points), dtype=bool)
    kept[1:odd:2] = np.abs(off) > UNSEEN
    return kept
