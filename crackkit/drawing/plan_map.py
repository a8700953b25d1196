"""A map over a plan: where its dots lie, and how it is drawn."""

import numpy as np

from crackkit.drawing.shapes import Raster
from crackkit.drawing.slab_plan import SlabPlan

FEWEST = 16  # dots, each way


def map_dots(plan: SlabPlan, dot: float, most: int) -> tuple[np.ndarray, np.ndarray]:
    """Give the places x and y of the dots of a map [mm].

    Parameters
    ----------
    plan : SlabPlan
    dot : float
        About so large is one [drawing units].
    most : int
        Dots, each way.
    """
    s = plan.structure
    x = _middles(plan.right - plan.left, s.length, dot, most)
    y = _middles(plan.bottom - plan.top, s.width, dot, most)
    return x, y


def _middles(drawn: float, length: float, dot: float, most: int) -> np.ndarray:
    count = min(max(round(drawn / dot), FEWEST), most)
    return (np.arange(count) + 0.5) * (length / count)


def map_raster(plan: SlabPlan, shades: np.ndarray) -> Raster:
    """Draw a map over the whole of a plan.

    Parameters
    ----------
    plan : SlabPlan
    shades : ndarray, shape (dots along y, dots along x)
        1 is the full colour of what is stretched [-].
    """
    wide, tall = plan.right - plan.left, plan.bottom - plan.top
    return Raster(plan.left, plan.top, wide, tall, shades[::-1])
