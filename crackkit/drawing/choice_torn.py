"""Pieces of something larger: concrete whose ends are torn off, as a drawing breaks it."""

import numpy as np

from crackkit.drawing.frames import Frame
from crackkit.drawing.shapes import Polygon

JAG = 4.0  # how far a torn edge strays
TEETH = np.array((0.0, 1.0, -0.6, 0.8, -1.0, 0.5, 0.0))
SHARES = np.linspace(0.0, 1.0, TEETH.size)


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
    edges = {side: JAG * TEETH * (side in sides) for side in "lrt"}
    top = np.column_stack([frame.left + frame.width * SHARES, frame.top + edges["t"]])
    down = frame.top + frame.height * SHARES
    right = np.column_stack([frame.right + edges["r"], down])
    left = np.column_stack([frame.left + edges["l"], down])
    return Polygon(np.concatenate([top, right[1:], left[:0:-1]]), role)


def hatch(boxes, step: float = 11.0) -> np.ndarray:
    """Draw diagonals over upright rectangles.

    Parameters
    ----------
    boxes : sequence of (left, top, right, bottom)
    step : float
        From stroke to stroke, across.

    Returns
    -------
    ndarray, shape (n, 2, 2)
        Segments.
    """
    left, top, right, bottom = np.asarray(boxes, dtype=float).T[:, :, None]
    tall = bottom - top
    # from a fixed raster, so that strokes do not travel while a side is dragged
    first = np.floor((left - tall).min() / step) * step
    start = np.arange(first, right.max(), step)
    x1, x2 = np.maximum(start, left), np.minimum(start + tall, right)
    keep = x2 > x1
    ends = np.stack([x1, bottom - (x1 - start), x2, bottom - (x2 - start)], axis=-1)
    return ends[keep].reshape(-1, 2, 2)
