"""How hard one face of a slab is stretched, seen from above: a map, and strokes along the pull."""

import numpy as np

from crackkit.drawing.curled_grid import at_grid, zero_lines
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.shapes import Lines, Raster
from crackkit.drawing.strip_map import FULL_SHADE

DOT = 5.0  # drawn size of one place of the map
DOTS = (16, 76)  # least and most of them, each way
PITCH = 21.0  # from stroke to stroke
SHORT, LONG = 3.0, 15.0  # strokes where it is hardly stretched, and where it tears
LEAST, NEAR = 0.12, 0.85  # share of the strength that is worth a stroke, or a bold one
FIELDS = 36  # of the grid on which the edge of the air is traced, along the longer side
MANY = 1e4  # more squares than there are in a row of paper
TOOTH, APART = 6.5, 8.0  # teeth on that edge: their length, and from one to the next


def stress_map(state, face, plan: CurledPlan) -> list[Raster]:
    """Draw the largest principal tension over the strength."""
    wide, tall = plan.right - plan.left, plan.bottom - plan.top
    x, y = _middles(wide, plan.structure.length), _middles(tall, plan.structure.width)
    ratio = at_grid(face.stress, state.x, state.y, x, y) / (FULL_SHADE * state.strength)
    return [Raster(plan.left, plan.top, wide, tall, ratio[::-1])]


def _middles(drawn: float, length: float) -> np.ndarray:
    """Places [mm] in the middle of the dots of a map."""
    count = min(max(round(drawn / DOT), DOTS[0]), DOTS[1])
    return (np.arange(count) + 0.5) * (length / count)


def strokes(state, face, plan: CurledPlan) -> list[Lines]:
    """Draw the way of the pull: longer where it is stronger, bold where it is near tearing."""
    s = plan.structure
    x, y = _places(s.length, plan.scale), _places(s.width, plan.scale)
    # ways must not be averaged, an angle and its opposite are the same: the nearest one is shown
    near = np.ix_(_nearest(state.y, y), _nearest(state.x, x))
    share, angle = face.stress[near] / state.strength, face.direction[near]
    half = (SHORT + (LONG - SHORT) * np.minimum(share, 1.0)) / 2
    reach = half[..., None] * np.stack([np.cos(angle), -np.sin(angle)], axis=-1)
    middle = plan(np.stack(np.meshgrid(x, y), axis=-1))
    lines = np.stack([middle - reach, middle + reach], axis=-2)
    kinds = ((share >= LEAST) & (share < NEAR), "bears"), (share >= NEAR, "outline")
    return [Lines(lines[some], role) for some, role in kinds if some.any()]


def _nearest(lines: np.ndarray, places: np.ndarray) -> np.ndarray:
    return np.searchsorted((lines[1:] + lines[:-1]) / 2, places)


def _places(length: float, scale: float) -> np.ndarray:
    count = max(int(length * scale / PITCH), 1)
    return (np.arange(count) + 0.5) * (length / count)


def air_edge(state, plan: CurledPlan) -> tuple[np.ndarray, np.ndarray]:
    """Trace the edge of what has lifted off: short lines, and teeth towards the air.

    Returns
    -------
    lines, teeth : ndarray, shape (n, 2, 2)
        On the paper [drawing units].
    """
    s = plan.structure
    step = max(s.length, s.width) / FIELDS
    x = np.linspace(0.0, s.length, max(round(s.length / step), 2) + 1)
    y = np.linspace(0.0, s.width, max(round(s.width / step), 2) + 1)
    lift = at_grid(state.lift, state.x, state.y, x, y)
    segments, uphill = zero_lines(lift, x, y)
    lines = plan(segments)
    middle = lines.mean(axis=1)
    # one tooth for each small square of paper: they stand about evenly
    squares = np.floor(middle / APART) @ (1.0, MANY)
    some = np.unique(squares, return_index=True)[1]
    teeth = np.stack([middle[some], middle[some] + TOOTH * uphill[some] * (1.0, -1.0)], axis=1)
    return lines, np.clip(teeth, (plan.left, plan.top), (plan.right, plan.bottom))


def edge_shapes(lines: np.ndarray, teeth: np.ndarray) -> list[Lines]:
    """Draw that edge: light below dark, so that it is seen on every shade."""
    if not len(lines):
        return []
    return [Lines(lines, "symbol"), Lines(teeth, "bears"), Lines(lines, "outline")]
