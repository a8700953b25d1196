"""How hard the concrete is stretched over the plan: a map, and strokes along the pull."""

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan
from crackkit.drawing.curled_grid import at_grid
from crackkit.drawing.shapes import Lines, Polygon, Raster
from crackkit.drawing.strip_map import FULL_SHADE
from crackkit.words import _

DOT = 4.0  # drawn size of one place of the map
DOTS = (16, 110)  # least and most of them, each way
PITCH = 19.0  # from stroke to stroke
SHORT, LONG = 3.0, 14.0  # strokes where it is hardly stretched, and where it tears
LEAST, NEAR = 0.12, 0.85  # share of the strength that is worth a stroke, or a bold one
FULL = (FULL_SHADE, 2.0, 3.0, 5.0, 8.0, 12.0, 20.0)  # multiples of the strength of full colour
USUAL = 1.5  # the full colour is at least so many times the pull in the middle of them all
ROUNDS = 2  # so many places of the grid beyond the edge are made up, for the map alone


def stress_map(state, plan: CornerPlan) -> list:
    """Draw the largest principal tension over the strength, with strokes along it."""
    s, found = plan.structure, state.field
    wide, tall = plan.right - plan.left, plan.bottom - plan.top
    x, y = _middles(wide, s.length), _middles(tall, s.width)
    share = at_grid(past_the_edge(found.share), found.x, found.y, x, y)
    ratio = share / full_shade(found)
    return [
        Polygon(plan(state.loops[0]), "concrete"),
        Raster(plan.left, plan.top, wide, tall, ratio[::-1]),
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


def _middles(drawn: float, length: float) -> np.ndarray:
    """Places [mm] in the middle of the dots of a map."""
    count = min(max(round(drawn / DOT), DOTS[0]), DOTS[1])
    return (np.arange(count) + 0.5) * (length / count)


def strokes(state, plan: CornerPlan) -> list[Lines]:
    """Draw the way of the pull: longer where it is stronger, bold where it is near tearing."""
    s, found = plan.structure, state.field
    x, y = _places(s.length, plan.scale), _places(s.width, plan.scale)
    # ways must not be averaged, an angle and its opposite are the same: the nearest one is shown
    near = np.ix_(_nearest(found.y, y), _nearest(found.x, x))
    share, angle = np.nan_to_num(found.share[near]), np.nan_to_num(found.direction[near])
    half = (SHORT + (LONG - SHORT) * np.clip(share, 0.0, 1.0)) / 2
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
