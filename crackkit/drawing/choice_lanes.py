"""The lanes of the field: tight, too wide, or not to be laid; told by colour and by hatch."""

import numpy as np

from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_kinds import CLOSE, FAR, GAPING, TIGHT, WIDE, YIELDS
from crackkit.drawing.choice_torn import hatch
from crackkit.drawing.shapes import Lines, Polygons

FILLS = {
    TIGHT: "tight_area",
    WIDE: "wide_area",
    GAPING: "gaping_area",
    YIELDS: "gaping_area",
    CLOSE: "card",
    FAR: "card",
}
STROKES = {
    WIDE: "wide_hatch",
    GAPING: "gaping_hatch",
    YIELDS: "gaping_hatch",
    CLOSE: "leader",
    FAR: "leader",
}
STEPS = {WIDE: 12.0, GAPING: 6.0, YIELDS: 5.0, CLOSE: 7.0, FAR: 7.0}


def lanes(field: ChoiceField) -> list:
    """Draw all lanes, each kind as one shape."""
    boxes = {}
    for kind, k, left, right in field.runs:
        top, bottom = field.lane(k)
        boxes.setdefault(kind, []).append((left, top, right, bottom))
    return [shape for kind in sorted(boxes) for shape in patches(kind, boxes[kind])]


def patches(kind: int, boxes) -> list:
    """Fill boxes (left, top, right, bottom) in the look of a kind."""
    a, b, c, d = np.array(boxes).T
    corners = np.stack([a, b, c, b, c, d, a, d], axis=-1).reshape(-1, 4, 2)
    shapes = [Polygons(corners, FILLS[kind])]
    if kind in STROKES:
        shapes.append(Lines(strokes(kind, boxes), STROKES[kind]))
    return shapes


def strokes(kind: int, boxes) -> np.ndarray:
    """Hatch of a kind over boxes: leaning right, left, or upright."""
    if kind == YIELDS:
        return upright(boxes, STEPS[kind])
    if kind != FAR:
        return hatch(boxes, STEPS[kind])
    # upside down, the strokes lean the other way
    turned = hatch([(a, -d, c, -b) for a, b, c, d in boxes], STEPS[kind])
    return turned * (1.0, -1.0)


def upright(boxes, step: float) -> np.ndarray:
    """Upright strokes over boxes."""
    left, top, right, bottom = np.asarray(boxes, dtype=float).T[:, :, None]
    x = np.arange(np.ceil(left.min() / step) * step, right.max(), step)
    keep = (x >= left) & (x < right)
    ends = np.broadcast_arrays(x, top, x, bottom)
    return np.stack(ends, axis=-1)[keep].reshape(-1, 2, 2)
