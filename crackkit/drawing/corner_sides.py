"""Sides of a slab that are tied to something stiff: hatched blocks, on rollers where they slide."""

import numpy as np

from crackkit.drawing.shapes import Circle, Lines, Polygon

BLOCK = 8.0  # drawn thickness of what a side is tied to
PITCH = 7.0  # of the hatch
ROLLER, ROLLERS = 2.4, 36.0  # drawn radius, and from one to the next
SLIDING = "edges"  # how a slab is held whose sides slide along what they are tied to


def tied_sides(structure, tied, loops, plan) -> list:
    """Draw what the sides are tied to.

    Parameters
    ----------
    structure : CornerSlab
    tied : sequence of ndarray, shape (2, 2)
        Ends of the sides [mm].
    loops : sequence of ndarray
        Outline, outside first [mm].
    plan : CornerPlan
    """
    gap = 2 * ROLLER if structure.held == SLIDING else 0.0
    return [shape for side in tied for shape in _block(plan(side), plan(outward(side, loops)), gap)]


def outward(side: np.ndarray, loops) -> np.ndarray:
    """Two points on a line across the middle of a side: on it, and away from the concrete."""
    along = side[1] - side[0]
    across = np.array([-along[1], along[0]]) / np.hypot(*along)
    middle = side.mean(axis=0)
    turn = -1.0 if within(middle + across, loops) else 1.0
    return np.array([middle, middle + turn * across])


def within(point, loops) -> bool:
    """Tell whether a point lies in the concrete: a ray from it meets the edge oddly often.

    Parameters
    ----------
    point : (float, float)
    loops : sequence of ndarray, shape (points, 2)
        Outline and holes, in the same units.
    """
    x, y = point
    count = 0
    for loop in loops:
        start, end = loop, np.roll(loop, -1, axis=0)
        meets = (start[:, 1] > y) != (end[:, 1] > y)
        (x1, y1), (x2, y2) = start[meets].T, end[meets].T
        count += int(np.count_nonzero(x < x1 + (y - y1) * (x2 - x1) / (y2 - y1)))
    return count % 2 == 1


def _block(side: np.ndarray, normal: np.ndarray, gap: float) -> list:
    """A block along a side on the paper, with strokes, behind rollers where there is a gap."""
    out = (normal[1] - normal[0]) / np.hypot(*(normal[1] - normal[0]))
    along, long = side[1] - side[0], float(np.hypot(*(side[1] - side[0])))
    along = along / long
    near, far = side + gap * out, side + (gap + BLOCK) * out
    feet = np.arange(PITCH / 2, long - BLOCK / 2, PITCH)[:, None]
    low = near[0] + feet * along
    strokes = np.stack([low, low + BLOCK * out + min(BLOCK, PITCH) / 2 * along], axis=1)
    shapes = [Polygon(np.concatenate([near, far[::-1]]), "wall"), Lines(strokes, "ground")]
    return [*shapes, *_rollers(side, along, long, out, gap)]


def _rollers(side, along, long: float, out, gap: float) -> list[Circle]:
    if not gap:
        return []
    count = max(int(long / ROLLERS), 2)
    at = (np.arange(count) + 0.5) * (long / count)
    places = side[0] + at[:, None] * along + gap / 2 * out
    return [Circle(x, y, ROLLER, "support") for x, y in places.tolist()]
