"""Cracks that go right through: ragged from face to face, with their numbers of birth above."""

import numpy as np

from crackkit.drawing.cracks_drawn import CROWDED, NARROWEST, WIDEST, noise
from crackkit.drawing.labels import spread
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.shapes import Circle, Lines, Polygons, Text

POINTS = 9  # along each side of a crack
RAGGED = 2.2  # how far a crack strays from a straight line
RADIUS = 8.0  # of a badge
CLOSE = 1.5  # least distance of two badges
CROWD, FEW = 0.8, 0.4  # shares of the row that numbers may fill; that the first ones do fill
ABOVE = 24.0  # centre of the badges over the top face


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
    count, points = places.size, POINTS if depth > 20.0 else 4
    rows, stray = np.asarray(order) - 1, 2.0 * min(RAGGED, 0.08 * depth)
    y = np.linspace(top, top + depth, points)
    centre = places[:, None] + stray * noise(count, points, 1)[rows]
    rough = 1.0 + 0.35 * noise(count, points, 2)[rows]
    half = 0.5 * openings(widths, places)[:, None] * rough
    outlines = np.empty((count, 2 * points, 2))
    outlines[:, :points, 0], outlines[:, points:, 0] = centre - half, (centre + half)[:, ::-1]
    outlines[:, :points, 1], outlines[:, points:, 1] = y, y[::-1]
    return [Polygons(outlines, "crack_gap")]


def badges_that_fit(count: int, body: PulledBody) -> int:
    """How many cracks are numbered: all, or the first ones where numbers would crowd."""
    room = (body.along.right - body.along.left) / (2 * RADIUS + CLOSE)
    return count if count <= CROWD * room else int(FEW * room)


def birth_badges(order, places: np.ndarray, body: PulledBody) -> list:
    """Number the cracks in the order in which they came."""
    most = badges_that_fit(len(order), body)
    chosen = [(n, x) for n, x in zip(order, places.tolist(), strict=True) if n <= most]
    centres = [x for _n, x in chosen]
    ends = body.along.left - RADIUS, body.along.right + RADIUS
    placed = spread(centres, [2 * RADIUS] * len(chosen), *ends, CLOSE)
    y = body.top - ABOVE
    shapes: list = [_leaders(placed, centres, y + RADIUS, body.top - 1.0)] if chosen else []
    for (number, _x), x in zip(chosen, placed, strict=True):
        shapes.append(Circle(x, y, RADIUS, "badge"))
        shapes.append(Text(x, y + 4.2, str(number), "badge_word", "middle"))
    return shapes


def _leaders(placed, centres, high: float, low: float) -> Lines:
    ends = [((a, high), (b, low)) for a, b in zip(placed, centres, strict=True)]
    return Lines(np.array(ends), "leader")
