"""The cross-section at the worst place: what is squeezed, what is stretched, where the bars lie."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import spread
from crackkit.drawing.shapes import Circle, Lines, Polygon, Text, line, rectangle
from crackkit.units import shown
from crackkit.words import _

TOP_ROOM = 44.0  # for the heading
BOTTOM_ROOM = 12.0
WORDS_WIDTH = 128.0  # for the labels on the right


@dataclass(frozen=True)
class _Scale:
    """The way from (y across, z down) in mm to the drawing."""

    left: float
    top: float
    per_mm: float
    width: float
    depth: float

    def x(self, across: float) -> float:
        return self.left + across * self.per_mm

    def y(self, down: float) -> float:
        return self.top + down * self.per_mm


def section_view(outcome, frame: Frame, view: View) -> list:
    """Draw the section; the structure has width, depth and stirrups of a known diameter."""
    structure, worst = outcome.structure, outcome.worst
    scale = _scale(structure, frame)
    place = shown(worst.at, "length", view.system)
    title = _("Cut at the worst crack") if outcome.cracks else _("Cut at the most stretched place")
    return [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        Text(frame.left, frame.top + 30, _("{x} from the left end").format(x=place), "note"),
        *_concrete(scale, worst),
        *_stirrup(structure, scale),
        *_bars(outcome, scale),
        *_words(outcome, scale, frame, view),
    ]


def _scale(structure, frame: Frame) -> _Scale:
    room = frame.height - TOP_ROOM - BOTTOM_ROOM
    per_mm = min(room / structure.depth, (frame.width - WORDS_WIDTH - 8) / structure.width)
    top = frame.top + TOP_ROOM + (room - structure.depth * per_mm) / 2
    return _Scale(frame.left + 4, top, per_mm, structure.width, structure.depth)


def _concrete(scale: _Scale, worst) -> list:
    wide, deep = scale.width * scale.per_mm, scale.depth * scale.per_mm
    axis = scale.y(worst.axis)
    upper, lower = axis - scale.top, scale.top + deep - axis
    on_top, below = (
        ("squeezed", "stretched") if worst.face == "bottom" else ("stretched", "squeezed")
    )
    shapes = [
        rectangle(scale.left, scale.top, wide, deep, "concrete"),
        rectangle(scale.left, scale.top, wide, upper, f"{on_top}_area"),
        rectangle(scale.left, axis, wide, lower, f"{below}_area"),
    ]
    shapes.append(_hatch(scale, axis, worst.face))
    shapes.append(line(scale.left - 4, axis, scale.left + wide + 6, axis, "neutral"))
    if worst.cracked:
        shapes.append(_crack(scale, axis, worst.face))
    return shapes


def _hatch(scale: _Scale, axis: float, face: str) -> Lines:
    """Diagonals over the stretched part, so that colour is not alone."""
    wide, deep = scale.width * scale.per_mm, scale.depth * scale.per_mm
    top, bottom = (axis, scale.top + deep) if face == "bottom" else (scale.top, axis)
    left, right, tall = scale.left, scale.left + wide, bottom - top
    start = np.arange(left - tall + 9.0, right, 11.0)
    x1, x2 = np.maximum(start, left), np.minimum(start + tall, right)
    y1, y2 = bottom - (x1 - start), bottom - (x2 - start)
    keep = x2 > x1
    pairs = np.stack([np.stack([x1, y1], -1), np.stack([x2, y2], -1)], axis=1)
    return Lines(pairs[keep], "hatch_faint")


def _crack(scale: _Scale, axis: float, face: str) -> Polygon:
    """A ragged line across the section would hide the bars: a notch at the face says enough."""
    y = scale.top + (scale.depth * scale.per_mm if face == "bottom" else 0.0)
    inward = -1.0 if face == "bottom" else 1.0
    x = scale.left + 0.5 * scale.width * scale.per_mm
    return Polygon(np.array([(x - 4, y), (x + 4, y), (x, y + 14 * inward)]), "crack_gap")


def _stirrup(structure, scale: _Scale) -> list:
    if structure.stirrup == "none":
        return []
    over, under, side = structure.cage
    left, right = scale.x(side), scale.x(structure.width - side)
    top, bottom = scale.y(over), scale.y(structure.depth - under)
    corners = np.array([(left, top), (right, top), (right, bottom), (left, bottom)])
    return [Polygon(corners, "stirrup")]


def _bars(outcome, scale: _Scale) -> list:
    worst, shapes = outcome.worst, []
    for item in outcome.steel:
        if not item.start <= worst.at <= item.end:
            continue
        edge = item.side_cover + item.diameter / 2
        places = np.linspace(edge, scale.width - edge, item.number) if item.number > 1 else [edge]
        radius = max(item.diameter / 2 * scale.per_mm, 2.6)
        y = scale.y(item.depth)
        shapes += [Circle(scale.x(float(p)), y, radius, "bar_dot") for p in places]
    return shapes


def _words(outcome, scale: _Scale, frame: Frame, view: View) -> list:
    """Labels to the right of the section, moved apart up and down."""
    worst = outcome.worst
    rows = [(scale.y(worst.axis), _axis_words(outcome), "note")]
    for item in outcome.steel:
        if item.start <= worst.at <= item.end:
            rows.append((scale.y(item.depth), _bar_words(item), "label"))
    rows.append((_cover_height(outcome, scale), _cover_words(outcome, view), "note"))
    rows = [row for row in rows if row[1]]
    heights = spread([r[0] for r in rows], [12.0] * len(rows), frame.top + 42, frame.bottom - 2, 4)
    x = scale.left + scale.width * scale.per_mm + 14
    shapes = []
    for (wish, words, role), y in zip(rows, heights, strict=True):
        shapes.append(line(x - 10, wish, x - 2, y, "leader"))
        shapes.append(Text(x, y + 4, words, role))
    return shapes


def _bar_words(item) -> str:
    size = item.size if item.size.startswith("#") else f"{item.size} mm"
    return f"{item.number} × {size}"


def _axis_words(outcome) -> str:
    if outcome.widest is not None and outcome.widest.width is None:
        return _("axis until it cracks")
    return _("neutral axis")


def _nearest(outcome):
    """The stretched layer nearest the cracked face, if any."""
    worst = outcome.worst
    if outcome.widest is not None and outcome.widest.width is None:
        return None
    sense = 1 if worst.face == "bottom" else -1
    pulled = [
        item
        for item in outcome.steel
        if item.start <= worst.at <= item.end and sense * (item.depth - worst.axis) > 0
    ]
    return max(pulled, key=lambda item: sense * item.depth, default=None)


def _clear_cover(outcome) -> float | None:
    item = _nearest(outcome)
    if item is None:
        return None
    depth = outcome.structure.depth
    centre = depth - item.depth if outcome.worst.face == "bottom" else item.depth
    return max(centre - item.diameter / 2, 0.0)


def _cover_height(outcome, scale: _Scale) -> float:
    return scale.y(scale.depth if outcome.worst.face == "bottom" else 0.0)


def _cover_words(outcome, view: View) -> str:
    cover = _clear_cover(outcome)
    if cover is None:
        return ""
    return _("cover of bars {c}").format(c=shown(cover, "size", view.system))
