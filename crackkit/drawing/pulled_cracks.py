"""Numbers of birth over the cracks of a pulled member: all, or the first that there is room for."""

import numpy as np

from crackkit.drawing.labels import spread
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.shapes import Circle, Lines, Text

RADIUS = 8.0  # of a badge
CLOSE = 1.5  # least distance of two badges
CROWD, FEW = 0.8, 0.4  # shares of the row that numbers may fill; that the first ones do fill
ABOVE = 24.0  # centre of the badges over the top face


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
