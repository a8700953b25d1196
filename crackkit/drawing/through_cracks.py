"""Cracks that go right through a strip: ragged from face to face, as wide as they are."""

import numpy as np

from crackkit.drawing.cracks_drawn import CROWDED, NARROWEST, WIDEST, noise
from crackkit.drawing.shapes import Polygons

POINTS = 9  # along each side of a crack
FEW = 4  # in a strip less deep than `SHALLOW`
SHALLOW = 20.0
RAGGED = 2.2  # how far a crack strays from a straight line


def openings(widths: np.ndarray, places: np.ndarray) -> np.ndarray:
    """Drawn widths, never so wide that neighbours run together.

    Parameters
    ----------
    widths : ndarray
        Crack widths [mm].
    places : ndarray
        Where they are, from the left [drawing units].
    """
    wished = np.clip(WIDEST / 0.5 * widths, NARROWEST, WIDEST)
    if places.size < 2:
        return wished
    return np.minimum(wished, max(CROWDED * float(np.diff(places).min()), NARROWEST))


def through_cracks(widths, places, order, top: float, depth: float) -> list:
    """Draw cracks through a strip as one shape.

    Parameters
    ----------
    widths, places : ndarray
        As for `openings`.
    order : sequence of int
        Number of birth of each: a crack keeps its shape when others come.
    top, depth : float
        The strip [drawing units].
    """
    if not places.size:
        return []
    count, points = places.size, POINTS if depth > SHALLOW else FEW
    rows, stray = np.asarray(order) - 1, 2.0 * min(RAGGED, 0.08 * depth)
    y = np.linspace(top, top + depth, points)
    centre = places[:, None] + stray * noise(count, points, 1)[rows]
    rough = 1.0 + 0.35 * noise(count, points, 2)[rows]
    half = 0.5 * openings(widths, places)[:, None] * rough
    outlines = np.empty((count, 2 * points, 2))
    outlines[:, :points, 0], outlines[:, points:, 0] = centre - half, (centre + half)[:, ::-1]
    outlines[:, :points, 1], outlines[:, points:, 1] = y, y[::-1]
    return [Polygons(outlines, "crack_gap")]
