"""Gaps on the drawing of the member: a bracket along the face, with a badge that calls out."""

import numpy as np

from crackkit.drawing.body import Body
from crackkit.drawing.shapes import Circle, Lines, Polyline

OUT = 12.0  # distance of the bracket from the face
RADIUS = 6.5


def gap_marks(gaps, places, body: Body) -> list:
    """Mark gaps of a MomentRange, each with its badge at a place across the drawing."""
    rows = list(zip(gaps, places, strict=True))
    brackets = [_bracket(gap, body) for gap in gaps]
    return [*brackets, *badges([(x, _badge_height(gap, body)) for gap, x in rows])]


def badge_place(gap, body: Body) -> float:
    """Where the badge of a gap would best be: in the middle of the bracket."""
    return float(body.along((gap.start + gap.end) / 2))


def _bracket(gap, body: Body) -> Polyline:
    left, right = float(body.along(gap.start)), float(body.along(gap.end))
    (start, away), (end, _away) = (body.face(gap.face, at) for at in (gap.start, gap.end))
    corners = [
        (left, start + 2 * away),
        (left, start + OUT * away),
        (right, end + OUT * away),
        (right, end + 2 * away),
    ]
    return Polyline(np.array(corners), "bad_line")


def _badge_height(gap, body: Body) -> float:
    (start, away), (end, _away) = (body.face(gap.face, at) for at in (gap.start, gap.end))
    return (start + end) / 2 + away * (OUT - RADIUS + 1.0)


def badge(x: float, y: float, radius: float = RADIUS) -> list:
    """Draw a disc with an exclamation mark."""
    return badges([(x, y)], radius)


def badges(places, radius: float = RADIUS) -> list:
    """Draw discs with exclamation marks, all the marks in one shape."""
    strokes = [
        [(x, y + a * radius), (x, y + b * radius)]
        for x, y in places
        for a, b in ((-0.55, 0.1), (0.52, 0.56))
    ]
    discs = [Circle(x, y, radius, "bad") for x, y in places]
    return [*discs, Lines(np.array(strokes), "bang")] if discs else []
