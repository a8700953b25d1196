"""Values on the grid of a slab, read at other places, and the lines on which they are nothing."""

import numpy as np

_TURNS = np.array([(0, 1, 2), (1, 2, 0), (2, 0, 1)])
TINY = 1e-12  # keeps a place on a line of the grid off its ends


def at_grid(values: np.ndarray, x, y, columns, rows) -> np.ndarray:
    """Read values at a grid of other places, straight from neighbour to neighbour.

    Parameters
    ----------
    values : ndarray, shape (..., len(y), len(x))
        One field of values, or several at once.
    x, y : ndarray
        Lines of the grid they are known on [mm], rising.
    columns, rows : ndarray
        Lines of the grid they are wanted on [mm].
    """
    k, share = _between(y, rows)
    share = share[:, None]
    across = values[..., k, :] * (1 - share) + values[..., k + 1, :] * share
    j, part = _between(x, columns)
    return across[..., j] * (1 - part) + across[..., j + 1] * part


def at_points(values: np.ndarray, x, y, points: np.ndarray) -> np.ndarray:
    """Read values at points (x, y) [mm], shape (n, 2)."""
    k, share = _between(y, points[:, 1])
    j, part = _between(x, points[:, 0])
    near = values[k, j] * (1 - part) + values[k, j + 1] * part
    far = values[k + 1, j] * (1 - part) + values[k + 1, j + 1] * part
    return near * (1 - share) + far * share


def _between(lines: np.ndarray, places) -> tuple[np.ndarray, np.ndarray]:
    """Number of the line before each place, and the share of the way to the next one."""
    k = np.searchsorted(lines[1:-1], places, side="right")
    share = (places - lines[k]) / (lines[k + 1] - lines[k])
    return k, np.minimum(np.maximum(share, 0.0), 1.0)


def zero_lines(values: np.ndarray, x, y) -> tuple[np.ndarray, np.ndarray]:
    """Trace where values change their sign, triangle by triangle.

    Parameters
    ----------
    values : ndarray, shape (len(y), len(x))
    x, y : ndarray
        Lines of the grid [mm].

    Returns
    -------
    segments : ndarray, shape (n, 2, 2)
        Short straight lines, points (x, y) [mm].
    uphill : ndarray, shape (n, 2)
        Unit vectors from each towards the larger values.
    """
    corners = _crossed(values, x, y)
    above = corners[..., 2] > 0
    count = above.sum(axis=1)
    mixed = (count > 0) & (count < 3)
    corners, above, count = corners[mixed], above[mixed], count[mixed]
    # the corner that stands alone on its side comes first: the line cuts both its edges
    alone = (above == (count == 1)[:, None]).argmax(axis=1)
    turned = corners[np.arange(len(alone))[:, None], _TURNS[alone]]
    return _cut(turned[..., :2], turned[..., 2])


def _crossed(values, x, y) -> np.ndarray:
    """Halve each field of the grid in which the sign changes: corners (x, y, value), (n, 3, 3)."""
    above = values > 0
    count = above[:-1, :-1] + 0 + above[:-1, 1:] + above[1:, 1:] + above[1:, :-1]
    k, j = np.nonzero((count > 0) & (count < 4))
    rows, columns = np.array([k, k, k + 1, k + 1]), np.array([j, j + 1, j + 1, j])
    corners = np.empty((4, k.size, 3))
    corners[..., 0], corners[..., 1], corners[..., 2] = x[columns], y[rows], values[rows, columns]
    return corners[[[0, 1, 2], [0, 2, 3]]].transpose(0, 2, 1, 3).reshape(-1, 3, 3)


def _cut(points: np.ndarray, heights: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    first, rest = heights[:, :1], heights[:, 1:]
    share = first / (first - rest)
    cuts = points[:, :1] + share[..., None] * (points[:, 1:] - points[:, :1])
    along = cuts[:, 1] - cuts[:, 0]
    normal = np.column_stack([-along[:, 1], along[:, 0]])
    to_first = points[:, 0] - cuts[:, 0]
    turn = np.sign((normal * to_first).sum(axis=1)) * np.where(first[:, 0] > 0, 1.0, -1.0)
    length = np.maximum(np.hypot(normal[:, 0], normal[:, 1]), TINY)
    return cuts, normal * (turn / length)[:, None]
