"""What of lines and outlines lies within an upright frame."""

import numpy as np

from crackkit.drawing.frames import Frame

TINY = 1e-9  # drawing units: a line that does not move along an axis


def clipped_lines(segments: np.ndarray, frame: Frame) -> tuple[np.ndarray, np.ndarray]:
    """Cut straight lines off at the frame; those outside are left out.

    Parameters
    ----------
    segments : ndarray, shape (n, 2, 2)
    frame : Frame

    Returns
    -------
    lines : ndarray, shape (k, 2, 2)
    kept : ndarray of int, shape (k,)
        Numbers of the lines that they are part of.
    """
    segments = np.asarray(segments, dtype=float).reshape(-1, 2, 2)
    start, way = segments[:, 0], segments[:, 1] - segments[:, 0]
    low, high = np.array([frame.left, frame.top]), np.array([frame.right, frame.bottom])
    still = np.abs(way) < TINY
    steps = np.where(still, 1.0, way)
    near, far = (low - start) / steps, (high - start) / steps
    out = still & ((start < low) | (start > high))
    enters = np.where(still, -np.inf, np.minimum(near, far)).max(axis=1).clip(0.0, 1.0)
    leaves = np.where(still, np.inf, np.maximum(near, far)).min(axis=1).clip(0.0, 1.0)
    kept = (leaves > enters) & ~out.any(axis=1)
    ends = np.stack([enters, leaves], axis=1)[kept, :, None]
    return start[kept, None] + ends * way[kept, None], np.flatnonzero(kept)


def clipped_outline(points: np.ndarray, frame: Frame) -> np.ndarray:
    """Cut a closed outline off at the frame; no points where it is all outside.

    Parameters
    ----------
    points : ndarray, shape (n, 2)
    frame : Frame
    """
    sides = (
        (0, frame.left, 1.0),
        (0, frame.right, -1.0),
        (1, frame.top, 1.0),
        (1, frame.bottom, -1.0),
    )
    for axis, edge, turn in sides:
        points = _cut(points, axis, edge, turn)
    return points


def _cut(points: np.ndarray, axis: int, edge: float, turn: float) -> np.ndarray:
    """Keep what lies on one side of a line."""
    found = []
    for here, after in zip(points, np.roll(points, -1, axis=0), strict=True):
        a, b = turn * (here[axis] - edge), turn * (after[axis] - edge)
        if a >= 0:
            found.append(here)
        if a * b < 0:
            found.append(here + a / (a - b) * (after - here))
    return np.array(found).reshape(-1, 2)
