"""Band 4, is it tight enough? The width by all rules on one scale with the limit."""

import math

import numpy as np

from crackkit.drawing.axes import bottom_axis, round_step, ticks
from crackkit.drawing.deciding import deciding_crack
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Polygon, Text, line, rectangle
from crackkit.drawing.words_on import heading, paragraph
from crackkit.units import inner, number, shown, unit
from crackkit.words import _

SOURCES = {"ACI224R-01": "ACI 224R-01", "EN1992-1-1-2004": "EN 1992-1-1:2004"}


def width_scale(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    title = heading(frame, 4, _("Is it tight enough?"))
    widest = deciding_crack(outcome)
    held = widest is not None and widest.width is not None
    scale = Scale(outcome.verdict.limit.width, widest.width.high if held else 0.0, frame)
    limit = outcome.verdict.limit
    shapes = [*title, *source_words(limit, frame), *scale_axis(scale, view)]
    shapes += limit_mark(scale, limit, view)
    if held:
        return [*shapes, *_band(scale, widest.width, view)]
    words = (
        _("nothing has cracked") if widest is None else _("no rule gives a width: nothing holds it")
    )
    return [*shapes, Text(scale.left, scale.frame.bottom - 2, words, "note")]


def source_words(limit, frame: Frame) -> list:
    """Say where the limit stands, and for which use."""
    source = SOURCES.get(limit.source, limit.source)
    words = f"{limit.label}: {source}, {limit.clause}"
    return paragraph(frame.left + 14, frame.top + 38, words, "note", frame.width - 16, 2)


class Scale:
    """The way from a crack width [mm] to the drawing; ends on a round number of mm."""

    def __init__(self, limit: float, high: float, frame: Frame):
        wanted = max(2.0 * limit, 1.15 * high)
        step = round_step(wanted, 4)
        self.top_value = step * math.ceil(wanted / step - 1e-9)
        self.left, self.right = frame.left + 14, frame.right - 30
        self.line = frame.bottom - 52.0
        self.frame = frame

    def __call__(self, width) -> float:
        """Drawing coordinate of a width [mm]."""
        share = min(max(width / self.top_value, 0.0), 1.0)
        return self.left + share * (self.right - self.left)


def scale_axis(scale: Scale, view: View) -> list:
    """Draw the bar of the scale and its numbers."""
    top = number(scale.top_value, "width", view.system)
    values = ticks(0.0, top, 4)
    places = [float(scale(inner(float(v), "width", view.system))) for v in values]
    y = scale.line + 16
    return [
        rectangle(scale.left, scale.line - 10, scale.right - scale.left, 20, "card"),
        line(scale.left, y, scale.right, y, "axis"),
        *bottom_axis(values, places, y, unit("width", view.system), scale.right),
    ]


def limit_mark(scale: Scale, limit, view: View) -> list:
    """Draw the limit across the scale, with its width above."""
    x = float(scale(limit.width))
    words = _("limit {width}").format(width=shown(limit.width, "width", view.system))
    half = width_of(words, "label_bold") / 2
    centre = min(max(x, scale.left + half), scale.frame.right - half)
    y = scale.line - 42
    return [
        Text(centre, y, words, "label_bold", "middle"),
        line(x, y + 5, x, scale.line + 16, "limit"),
    ]


def _band(scale: Scale, band, view: View) -> list:
    low, high = float(scale(band.low)), float(scale(band.high))
    shapes = [rectangle(low, scale.line - 10, max(high - low, 2.0), 20, "band")]
    for name, width in band.by_rule:
        chosen = name == band.rule
        role = "rule_dot_chosen" if chosen else "rule_dot"
        shapes.append(Circle(float(scale(width)), scale.line, 5.5 if chosen else 3.6, role))
    return [*shapes, *_chosen(scale, band, view)]


def _chosen(scale: Scale, band, view: View) -> list:
    x = float(scale(band.governing))
    words = f"{band.name} {shown(band.governing, 'width', view.system)}"
    half = width_of(words, "label") / 2
    centre = min(max(x, scale.left + half), scale.frame.right - half)
    y = scale.line - 20
    marker = np.array([(x, scale.line - 8), (x - 5, scale.line - 15), (x + 5, scale.line - 15)])
    spanned = _("{n} rules: {low} to {high}").format(
        n=len(band.by_rule),
        low=shown(band.low, "width", view.system),
        high=shown(band.high, "width", view.system),
    )
    return [
        Polygon(marker, "badge"),
        # the line of the limit must not run through the words
        rectangle(centre - half - 3, y - 12, 2 * half + 6, 15, "paper"),
        Text(centre, y, words, "label", "middle"),
        Text(scale.left, scale.frame.bottom - 2, spanned, "note"),
    ]
