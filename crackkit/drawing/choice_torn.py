"""Pieces of something larger: concrete whose ends are torn off, as a drawing breaks it."""

import numpy as np

from crackkit.drawing.frames import Frame
from crackkit.drawing.shapes import Polygon

JAG = 4.0  # how far a torn edge strays
TEETH = np.array((0.0, 1.0, -0.6, 0.8, -1.0, 0.5, 0.0))


def torn(frame: Frame, role: str, sides: str) -> Polygon:
    """Outline a piece of concrete.

    Parameters
    ----------
    frame : Frame
        The piece; torn edges stray a little to both sides of it.
    role : str
        Of the outline.
    sides : str
        Which edges are torn: any of the letters l, r and t (left, right, top).
    """
    share = np.linspace(0.0, 1.0, TEETH.size)
    edges = {side: JAG * TEETH * (side in sides) for side in "lrt"}
    top = np.column_stack([frame.left + frame.width * share, frame.top + edges["t"]])
    down = frame.top + frame.height * share
    right = np.column_stack([frame.right + edges["r"], down])
    left = np.column_stack([frame.left + edges["l"], down])
    return Polygon(np.concatenate([top, right[1:], left[:0:-1]]), role)


def hatch(left: float, top: float, right: float, bottom: float, step: float = 11.0) -> np.ndarray:
    """Diagonals over an upright rectangle: segments of shape (n, 2, 2)."""
    tall = bottom - top
    # from a fixed raster, so that strokes do not travel while a side is dragged
    start = np.arange(np.ceil((left - tall) / step) * step, right, step)
    x1, x2 = np.maximum(start, left), np.minimum(start + tall, right)
    y1, y2 = bottom - (x1 - start), bottom - (x2 - start)
    keep = x2 > x1
    return np.stack([np.stack([x1, y1], -1), np.stack([x2, y2], -1)], axis=1)[keep]
