"""Fewer points for a line that nobody can tell from the full one."""

import numpy as np

FEW = 200  # points that need no thinning
UNSEEN = 0.12  # drawing units
STEPS = (1, 2, 4, 8)  # how far the neighbours are in each round
TINY = 1e-9  # instead of no width, where a line jumps


def thinned(x: np.ndarray, heights: np.ndarray, few: int = FEW) -> list[np.ndarray]:
    """Drop points that lie on the line between their neighbours, of several lines at once.

    Parameters
    ----------
    x : ndarray, shape (n,)
        Of the points of every line, in drawing units, never falling.
    heights : ndarray, shape (lines, n)
        In drawing units.
    few : int
        Lines with no more points than this stay as they are.

    Returns
    -------
    list of ndarray, shape (k, 2)
        Of each line the ends and every point that can be seen to matter.
    """
    if x.size <= few:
        return [np.array([x, line]).T for line in heights]
    kept = np.ones(heights.shape, dtype=bool)
    for step in STEPS:
        _drop(x, heights, kept, step)
    return [np.array([x[some], line[some]]).T for line, some in zip(heights, kept, strict=True)]


def _drop(x: np.ndarray, heights: np.ndarray, kept: np.ndarray, step: int) -> None:
    """Drop each point at an odd number of steps that does not stand out between its neighbours.

    From the second round on only where the points on both sides of it are gone already.
    """
    count = (x.size - 1) // (2 * step)
    before, here, after = (_every(k * step, 2 * step, count) for k in range(3))
    share = (x[here] - x[before]) / np.maximum(x[after] - x[before], TINY)
    first = heights[:, before]
    off = first + (heights[:, after] - first) * share - heights[:, here]
    stays = np.abs(off) > UNSEEN
    if step > 1:
        left, right = (_every(k * step // 2, 2 * step, count) for k in (1, 3))
        stays |= kept[:, left] | kept[:, right]
    kept[:, here] = stays


def _every(start: int, step: int, count: int) -> slice:
    return slice(start, start + step * (count - 1) + 1, step)
