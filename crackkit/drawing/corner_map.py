"""How hard the concrete is stretched over the plan: a map, and strokes along the pull."""

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan
from crackkit.drawing.curled_grid import at_grid
from crackkit.drawing.plan_map import map_dots, map_raster
from crackkit.drawing.pull_strokes import pull_strokes, stroke_places
from crackkit.drawing.shapes import Lines, Polygon
from crackkit.drawing.strip_map import FULL_SHADE
from crackkit.words import _

DOT, MOST = 4.0, 110  # drawn size of a dot of the map, and most of them, each way
PITCH = 19.0  # from stroke to stroke
LONG = 14.0  # a stroke where it tears
FULL = (FULL_SHADE, 2.0, 3.0, 5.0, 8.0, 12.0, 20.0)  # multiples of the strength of full colour
USUAL = 1.5  # the full colour is at least so many times the pull in the middle of them all
ROUNDS = 2  # so many places of the grid beyond the edge are made up, for the map alone


def stress_map(state, plan: CornerPlan) -> list:
    """Draw the largest principal tension over the strength, with strokes along it."""
    found = state.field
    share = at_grid(past_the_edge(found.share), found.x, found.y, *map_dots(plan, DOT, MOST))
    return [
        Polygon(plan(state.loops[0]), "concrete"),
        map_raster(plan, share / full_shade(found)),
        *strokes(state, plan),
        *plan.beside(state.loops),
        *plan.edges(state.loops),
    ]


def full_shade(field) -> float:
    """Pick the multiple of the strength that has the full colour: corners are to stand out.

    Parameters
    ----------
    field : PlanField
    """
    usual = USUAL * float(np.nanmedian(field.share))
    return next((full for full in FULL if full >= usual), FULL[-1])


def shade_words(field) -> str:
    """Say what the full colour means."""
    full = full_shade(field)
    if full == FULL_SHADE:
        return _("stretched, up to strength")
    return _("stretched, up to {n}\u00a0×\u00a0strength").format(n=f"{full:g}")


def past_the_edge(values: np.ndarray) -> np.ndarray:
    """Carry values a little beyond the concrete, so that the map reaches its edge everywhere.

    Parameters
    ----------
    values : ndarray, shape (rows, columns)
        Not a number where there is no concrete.
    """
    for _round in range(ROUNDS):
        known = ~np.isnan(values)
        count = _of_nine(known.astype(float))
        mean = _of_nine(np.where(known, values, 0.0)) / np.maximum(count, 1.0)
        values = np.where(known, values, np.where(count > 0, mean, np.nan))
    return values


def _of_nine(values: np.ndarray) -> np.ndarray:
    """Sum of each value and of those around it."""
    padded = np.pad(values, 1)
    rows = padded[:-2] + padded[1:-1] + padded[2:]
    return rows[:, :-2] + rows[:, 1:-1] + rows[:, 2:]


def strokes(state, plan: CornerPlan) -> list[Lines]:
    """Draw the way of the pull, on concrete alone."""
    found = state.field
    middles, near = stroke_places(plan, found.x, found.y, PITCH)
    share, angle = np.nan_to_num(found.share[near]), np.nan_to_num(found.direction[near])
    return pull_strokes(middles, share, angle, LONG)
