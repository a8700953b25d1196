"""The cross-section at the worst place: what is squeezed, what is stretched, where the bars lie."""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.section_scale import SectionScale, section_scale
from crackkit.drawing.section_words import bars_across, cut_layers, section_words
from crackkit.drawing.shapes import Circle, Lines, Polygon, Text, line, rectangle
from crackkit.units.places import place_named
from crackkit.words import _


def section_view(outcome, frame: Frame, view: View) -> list:
    """Draw the section; the structure says where its stirrups lie."""
    structure, worst = outcome.structure, outcome.worst
    mats = structure.cage is None or any(item.spacing is not None for item in outcome.steel)
    scale = section_scale(worst.section, mats, frame)
    title = _("Cut at the worst crack") if outcome.cracks else _("Cut at the most stretched place")
    return [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        Text(frame.left, frame.top + 30, place_named(structure, worst.at, view.system), "note"),
        *_concrete(scale, worst),
        *_stirrup(structure, scale),
        *_bars(outcome, scale),
        *section_words(outcome, scale, frame, view),
    ]


def _concrete(scale: SectionScale, worst) -> list:
    axis = scale.y(worst.axis)
    on_top, below = (
        ("squeezed", "stretched") if worst.face == "bottom" else ("stretched", "squeezed")
    )
    shapes = [
        _outline(scale),
        *_areas(scale, 0.0, worst.axis, f"{on_top}_area"),
        *_areas(scale, worst.axis, scale.depth, f"{below}_area"),
    ]
    ends = (worst.axis, scale.depth) if worst.face == "bottom" else (0.0, worst.axis)
    shapes += [_hatch(*part) for part in scale.parts(*ends)]
    shapes.append(line(scale.left - 4, axis, scale.right + 6, axis, "neutral"))
    if worst.cracked:
        shapes.append(_crack(scale, worst.face))
    return shapes


def _outline(scale: SectionScale) -> Polygon:
    parts = scale.parts(0.0, scale.depth)
    right = [(x, y) for part in parts for x, y in ((part[2], part[1]), (part[2], part[3]))]
    left = [(x, y) for part in parts for x, y in ((part[0], part[1]), (part[0], part[3]))]
    return Polygon(np.array([left[0], *right, *left[:0:-1]]), "concrete")


def _areas(scale: SectionScale, high: float, low: float, role: str) -> list[Polygon]:
    return [rectangle(a, b, c - a, d - b, role) for a, b, c, d in scale.parts(high, low)]


def _hatch(left: float, top: float, right: float, bottom: float) -> Lines:
    """Diagonals over the stretched part, so that colour is not alone."""
    tall = bottom - top
    start = np.arange(left - tall + 9.0, right, 11.0)
    x1, x2 = np.maximum(start, left), np.minimum(start + tall, right)
    y1, y2 = bottom - (x1 - start), bottom - (x2 - start)
    keep = x2 > x1
    pairs = np.stack([np.stack([x1, y1], -1), np.stack([x2, y2], -1)], axis=1)
    return Lines(pairs[keep], "hatch_faint")


def _crack(scale: SectionScale, face: str) -> Polygon:
    """A ragged line across the section would hide the bars: a notch at the face says enough."""
    y = scale.bottom if face == "bottom" else scale.top
    inward = -1.0 if face == "bottom" else 1.0
    x = scale.x(0.5 * scale.width)
    return Polygon(np.array([(x - 4, y), (x + 4, y), (x, y + 14 * inward)]), "crack_gap")


def _stirrup(structure, scale: SectionScale) -> list:
    if structure.stirrup == "none" or structure.cage is None:
        return []
    over, under, side = structure.cage
    left, right = scale.x(side), scale.x(scale.width - side)
    top, bottom = scale.y(over), scale.y(scale.depth - under)
    corners = np.array([(left, top), (right, top), (right, bottom), (left, bottom)])
    return [Polygon(corners, "stirrup")]


def _bars(outcome, scale: SectionScale) -> list:
    shapes = []
    for item in cut_layers(outcome):
        radius = max(item.diameter / 2 * scale.per_mm, 2.6)
        y = scale.y(item.depth_at(outcome.worst.at))
        shapes += [Circle(scale.x(p), y, radius, "bar_dot") for p in bars_across(item, scale.width)]
    return shapes
