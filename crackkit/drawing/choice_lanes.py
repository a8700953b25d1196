"""The lanes of the field: tight, too wide, or not to be laid; told by colour and by hatch."""

import numpy as np

from crackkit.drawing.choice_field import CLOSE, FAR, GAPING, TIGHT, WIDE, YIELDS, ChoiceField
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
        every = np.concatenate([strokes(kind, box) for box in boxes])
        shapes.append(Lines(every, STROKES[kind]))
    return shapes


def strokes(kind: int, box) -> np.ndarray:
    """Hatch of a kind over a box: leaning right, left, or upright."""
    left, top, right, bottom = box
    if kind == YIELDS:
        step = STEPS[kind]
        x = np.arange(np.ceil(left / step) * step, right, step)
        ends = np.stack([np.full_like(x, top), np.full_like(x, bottom)], axis=-1)
        return np.stack([np.stack([x, x], axis=-1), ends], axis=-1)
    lines = hatch(left, top, right, bottom, STEPS[kind])
    if kind == FAR:
        lines = lines.copy()
        lines[..., 1] = top + bottom - lines[..., 1]
    return lines
