"""Gaps on the drawing of the member: a bracket along the face, with a badge that calls out."""

import numpy as np

from crackkit.drawing.body import Body
from crackkit.drawing.shapes import Circle, Lines, Polyline

OUT = 12.0  # distance of the bracket from the face
RADIUS = 6.5


def gap_marks(gaps, places, body: Body) -> list:
    """Mark gaps of a MomentRange, each with its badge at a place across the drawing."""
    rows = zip(gaps, places, strict=True)
    return [shape for gap, place in rows for shape in _mark(gap, place, body)]


def badge_place(gap, body: Body) -> float:
    """Where the badge of a gap would best be: in the middle of the bracket."""
    return float(body.along((gap.start + gap.end) / 2))


def _mark(gap, x: float, body: Body) -> list:
    left, right = float(body.along(gap.start)), float(body.along(gap.end))
    (start, away), (end, _away) = (body.face(gap.face, at) for at in (gap.start, gap.end))
    corners = [
        (left, start + 2 * away),
        (left, start + OUT * away),
        (right, end + OUT * away),
        (right, end + 2 * away),
    ]
    y = (start + end) / 2 + away * (OUT - RADIUS + 1.0)
    return [Polyline(np.array(corners), "bad_line"), *badge(x, y)]


def badge(x: float, y: float, radius: float = RADIUS) -> list:
    """Draw a disc with an exclamation mark."""
    strokes = [[(x, y - 0.55 * radius), (x, y + 0.1 * radius)]]
    strokes.append([(x, y + 0.52 * radius), (x, y + 0.56 * radius)])
    return [Circle(x, y, radius, "bad"), Lines(np.array(strokes), "bang")]
