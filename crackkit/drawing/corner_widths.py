"""Band 4 of a slab with inside corners, is it tight enough? Its opening along the crack."""

import numpy as np

from crackkit.drawing.along_chart import AlongChart, line_key
from crackkit.drawing.axes import bottom_axis, ticks
from crackkit.drawing.frames import Along, Frame, View
from crackkit.drawing.shapes import Circle, Polygon, Polyline, Text, line, rectangle
from crackkit.drawing.width_scale import source_words
from crackkit.drawing.words_on import heading
from crackkit.units import inner, number, shown, unit
from crackkit.words import _

LEFT, RIGHT, HEAD, FOOT = 50.0, 14.0, 76.0, 44.0  # room around the chart
HEADROOM, OVER = 1.12, 1.4  # over the widest, and the limit times this at least


def tight_heading(outcome, frame: Frame) -> list:
    """Write the question, and where the limit stands."""
    return [
        *heading(frame, 4, _("Is it tight enough?")),
        *source_words(outcome.verdict.limit, frame),
    ]


def corner_widths(outcome, frame: Frame, view: View) -> list:
    """Draw the opening from the corner on, as laid and bare, with the limit."""
    crack, limit = outcome.cornered.crack, outcome.verdict.limit.width
    bare = float(crack.bare.max())
    chart = opening_chart(frame, crack.along, limit, max(bare, crack.widest))
    points, free = (
        np.column_stack([chart.along(crack.along), chart(each)])
        for each in (crack.opening, crack.bare)
    )
    title = _("Opening along the crack, {unit}").format(unit=unit("width", view.system))
    return [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        *key_rows(outcome, frame, view),
        card(chart),
        *side(chart, view),
        *_scatter(outcome, chart),
        chart.over_zero(points, "stretched_area"),
        Polyline(free, "second_line"),
        Polyline(points, "now_line"),
        *limit_line(chart, limit),
        *_foot(chart, frame, view),
    ]


def opening_chart(frame: Frame, along: np.ndarray, limit: float, widest: float) -> AlongChart:
    """Lay a chart of openings [mm] into a frame, along a crack [mm]."""
    way = Along(frame.left + LEFT, frame.right - RIGHT, float(along[-1]))
    return AlongChart(
        way,
        frame.top + HEAD,
        frame.bottom - FOOT,
        0.0,
        max(HEADROOM * widest, OVER * limit),
    )


def key_rows(outcome, frame: Frame, view: View) -> list:
    """Name the lines of both charts."""
    rows = [[(_("as it is"), "now_line"), (_("bare concrete"), "second_line")]]
    limit = shown(outcome.verdict.limit.width, "width", view.system)
    rows.append([(_("limit {width}").format(width=limit), "capacity")])
    return [
        shape
        for k, entries in enumerate(rows)
        for shape in line_key(entries, frame.left, frame.top + 32 + 17 * k)[0]
    ]


def card(chart: AlongChart) -> Polygon:
    """Draw the ground of the chart."""
    left, right = chart.along.left, chart.along.right
    return rectangle(left, chart.top, right - left, chart.bottom - chart.top, "card")


def side(chart: AlongChart, view: View) -> list:
    """Numbers at the left side; their unit stands in the title."""
    end = number(chart.high, "width", view.system)
    values = ticks(0.0, end, 4)
    shapes = []
    for value in values.tolist():
        y = float(chart(inner(value, "width", view.system)))
        shapes.append(line(chart.along.left, y, chart.along.right, y, "grid"))
        shapes.append(Text(chart.along.left - 7, y + 4, f"{value:g}", "tick", "end"))
    return shapes


def limit_line(chart, limit: float) -> list:
    """Draw the limit across the chart."""
    y = float(chart(limit))
    return [line(chart.along.left, y, chart.along.right, y, "capacity")]


def _scatter(outcome, chart: AlongChart) -> list:
    """How far real cracks stray from the widest opening, at the corner."""
    band = outcome.cornered.crack.band
    if band is None:
        return []
    x, low, high = chart.along.left, float(chart(band.low)), float(chart(band.high))
    return [
        rectangle(x, high, 10.0, low - high, "band"),
        Circle(x + 5.0, float(chart(band.governing)), 3.6, "rule_dot_chosen"),
    ]


def _foot(chart: AlongChart, frame: Frame, view: View) -> list:
    """How far from the corner."""
    system = view.system
    values = ticks(0.0, number(chart.along.length, "length", system), 4)
    at = np.array([inner(float(v), "length", system) for v in values])
    return [
        line(chart.along.left, chart.bottom, chart.along.right, chart.bottom, "axis"),
        *bottom_axis(
            values, chart.along(at), chart.bottom, unit("length", system), chart.along.right
        ),
        Text(frame.right - RIGHT, chart.bottom + 35, _("from the corner"), "note", "end"),
    ]
