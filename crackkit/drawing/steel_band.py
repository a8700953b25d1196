"""Band 3, what holds the cracks? The stress along each layer of bars."""

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Frame, View, along
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygon, Polyline, Text, line
from crackkit.drawing.words_on import heading, paragraph
from crackkit.units import inner, number, shown, unit
from crackkit.words import _

LINES = {"bottom": "stretched_line", "top": "second_line"}


def steel_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    title = heading(frame, 3, _("What holds the cracks?"))
    chart = Chart(outcome, frame)
    shapes = [*title, *_grid(chart, view), *_x_axis(chart, view)]
    if not outcome.steel:
        words = _("No bars: nothing takes over when the concrete cracks.")
        return [*shapes, *paragraph(chart.along.left + 14, chart.zero - 30, words, "bad_word", 400)]
    for item in outcome.steel:
        shapes += _stress_line(chart, item)
    return [*shapes, *_capacity(chart, outcome.steel, view), *_key(outcome, frame)]


class Chart:
    """The way from stress to height; the yield strength always stays in sight."""

    def __init__(self, outcome, frame: Frame):
        self.frame, self.along = frame, along(frame, float(outcome.x[-1]))
        self.top, self.bottom = frame.top + 41.0, frame.bottom - 26.0
        self.strength = outcome.structure.yield_strength
        self.high = 1.15 * self.strength
        lowest = min([float(item.stress.min()) for item in outcome.steel], default=0.0)
        self.low = -0.25 * self.strength if lowest < -0.02 * self.strength else 0.0

    def __call__(self, stress):
        """Height of a stress [MPa]; beyond the chart it stays at the edge."""
        share = (stress - self.low) / (self.high - self.low)
        if isinstance(share, np.ndarray):
            share = share.clip(0.0, 1.0)
        else:
            share = min(max(share, 0.0), 1.0)
        return self.bottom - share * (self.bottom - self.top)

    @property
    def zero(self) -> float:
        """Height of no stress."""
        return float(self(0.0))


def _grid(chart: Chart, view: View) -> list:
    numbers = ticks(
        number(chart.low, "stress", view.system), number(chart.high, "stress", view.system), 4
    )
    heights = [float(chart(inner(float(v), "stress", view.system))) for v in numbers]
    left, right = chart.along.left, chart.along.right
    rows = np.array([[(left, y), (right, y)] for y in heights])
    shapes = [Lines(rows, "grid"), line(left, chart.zero, right, chart.zero, "axis")]
    for v, y in zip(numbers, heights, strict=True):
        shapes.append(Text(left - 7, y + 4, tick_text(float(v)), "tick", "end"))
    return [*shapes, Text(left + 5, heights[-1] + 13, unit("stress", view.system), "tick")]


def _x_axis(chart: Chart, view: View) -> list:
    length = number(chart.along.length, "length", view.system)
    values = ticks(0.0, length, 8)
    places = [float(chart.along(inner(float(v), "length", view.system))) for v in values]
    return bottom_axis(values, places, chart.bottom, unit("length", view.system), chart.along.right)


def _stress_line(chart: Chart, item) -> list:
    x, y = chart.along(item.x), chart(item.stress)
    points = np.column_stack([x, y])
    if item.key != "bottom":
        return [Polyline(points, LINES["top"])]
    zero = chart.zero
    area = np.concatenate([[(x[0], zero)], points, [(x[-1], zero)]])
    return [Polygon(area, "stretched_area"), Polyline(points, LINES["bottom"])]


def _capacity(chart: Chart, steel, view: View) -> list:
    shapes = [
        Polyline(np.column_stack([chart.along(item.x), chart(item.capacity)]), "capacity")
        for item in steel
        if _worth_showing(item)
    ]
    words = _("yields at {stress}").format(stress=shown(chart.strength, "stress", view.system))
    y = chart.top - 4  # above everything that is drawn: nothing runs through the words
    return [*shapes, Text(chart.along.right - 6, y, words, "note", "end")]


def _worth_showing(item) -> bool:
    # a layer that is never pulled hard needs no line for what it could bear
    return item.key == "bottom" or float(item.stress.max()) > 20.0


def _key(outcome, frame: Frame) -> list:
    """Names of the lines, at the right end of the heading."""
    shapes, right = [], frame.right - 8
    y = frame.top + 17
    for item in reversed(outcome.steel):
        shapes.append(Text(right, y, item.label, "note", "end"))
        right -= width_of(item.label, "note") + 6
        role = LINES["bottom"] if item.key == "bottom" else LINES["top"]
        shapes.append(line(right - 22, y - 4, right, y - 4, role))
        right -= 36
    return shapes
