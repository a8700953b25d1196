"""Cracks as slender wedges: open at the face, closed at the tip, ragged like torn stone."""

from functools import cache

import numpy as np

from crackkit.drawing.shapes import Polygons

WIDEST = 5.0  # drawn width of a crack of 0.5 mm or more
NARROWEST = 0.9
GAPING = 7.0  # of a crack that nothing holds
CROWDED = 0.4  # largest share of the distance to the next crack
RAGGED = 1.7  # how far a crack strays from its smooth line


def crack_shapes(cracks, body) -> list:
    """Draw the cracks of a member as one shape; `body` gives the way to the paper."""
    if not cracks:
        return []
    every = np.concatenate([crack.path for crack in cracks])
    paths = body.points(every.reshape(len(cracks), -1, 2))
    count, points = paths.shape[:2]
    share = np.linspace(0.0, 1.0, points)
    half = 0.5 * _openings(cracks, paths)[:, None] * (1.0 - share) ** 0.7 + 0.2 * (share < 1.0)
    # raggedness follows the number of the crack, so that it does not flicker while dragging
    stray = np.sqrt(share * (1.0 - share))
    centre = paths[..., 0] + 2.0 * RAGGED * stray * noise(count, points, 1)
    edge = 0.8 * stray * noise(count, points, 2)
    outlines = np.empty((count, 2 * points, 2))
    outlines[:, :points, 0], outlines[:, points:, 0] = (
        centre - half + edge,
        (centre + half + edge)[:, ::-1],
    )
    outlines[:, :points, 1], outlines[:, points:, 1] = paths[..., 1], paths[:, ::-1, 1]
    return [Polygons(outlines, "crack_gap")]


@cache
def noise(count: int, points: int, seed: int) -> np.ndarray:
    """Numbers from -0.5 to 0.5 that look random and are always the same."""
    rows, columns = np.arange(1, count + 1)[:, None], np.arange(points)
    wild = np.sin(12.9898 * rows + 78.233 * columns + 37.7 * seed) * 43758.5453
    return wild - np.floor(wild) - 0.5


def _openings(cracks, paths: np.ndarray) -> np.ndarray:
    """Drawn widths at the face, never so wide that neighbours run together."""
    wished = np.array([_drawn_width(crack) for crack in cracks])
    mouths = np.sort(paths[:, 0, 0])
    if mouths.size > 1:
        gap = float(np.diff(mouths).min())
        wished = np.minimum(wished, max(CROWDED * gap, NARROWEST))
    return wished


def _drawn_width(crack) -> float:
    if crack.width is None:
        return GAPING
    return min(max(WIDEST * crack.width.governing / 0.5, NARROWEST), WIDEST)
