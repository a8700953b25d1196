"""How hard one face of a slab is stretched, seen from above: a map, and strokes along the pull."""

import numpy as np

from crackkit.drawing.curled_grid import at_grid, zero_lines
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.plan_map import map_dots, map_raster
from crackkit.drawing.pull_strokes import pull_strokes, stroke_places
from crackkit.drawing.shapes import Lines, Raster
from crackkit.drawing.strip_map import FULL_SHADE

DOT, MOST = 5.0, 76  # drawn size of a dot of the map, and most of them, each way
PITCH = 21.0  # from stroke to stroke
LONG = 15.0  # a stroke where it tears
FIELDS = 36  # of the grid on which the edge of the air is traced, along the longer side
MANY = 1e4  # more squares than there are in a row of paper
TOOTH, APART = 6.5, 8.0  # teeth on that edge: their length, and from one to the next


def stress_map(state, face, plan: CurledPlan) -> list[Raster]:
    """Draw the largest principal tension over the strength."""
    stress = at_grid(face.stress, state.x, state.y, *map_dots(plan, DOT, MOST))
    return [map_raster(plan, stress / (FULL_SHADE * state.strength))]


def strokes(state, face, plan: CurledPlan) -> list[Lines]:
    """Draw the way of the pull."""
    middles, near = stroke_places(plan, state.x, state.y, PITCH)
    return pull_strokes(middles, face.stress[near] / state.strength, face.direction[near], LONG)


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
