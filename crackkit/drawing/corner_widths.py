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
ALIKE = 0.99  # from this share of the greatest opening on it is as wide
STRIP = 10.0  # width of the strip that shows how real cracks scatter


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
    shapes, end = [], frame.left
    for k, entries in enumerate(rows):
        drawn, end = line_key(entries, frame.left, frame.top + 32 + 17 * k)
        shapes += drawn
    return [*shapes, *_scatter_key(outcome, end, frame.top + 32 + 17)]


def _scatter_key(outcome, x: float, y: float) -> list:
    """Name the upright strip, where there is one."""
    if outcome.cornered.crack.band is None:
        return []
    words = _("real ones scatter")
    return [
        rectangle(x, y - 11, STRIP, 13.0, "band"),
        Text(x + STRIP + 6, y, words, "note"),
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
    """How far real cracks stray from the widest opening, at its place."""
    crack, way = outcome.cornered.crack, chart.along
    if crack.band is None:
        return []
    low, high = float(chart(crack.band.low)), float(chart(crack.band.high))
    x = float(way(widest_at(crack)))
    left = min(max(x - STRIP / 2, way.left), way.right - STRIP)
    return [
        rectangle(left, high, STRIP, low - high, "band"),
        Circle(x, float(chart(crack.band.governing)), 3.6, "rule_dot_chosen"),
    ]


def widest_at(crack) -> float:
    """How far from its corner a crack is widest [mm], the nearest place of several.

    Where a saw cut leads it does not count.

    Parameters
    ----------
    crack : CornerCrack
    """
    wild = np.where(crack.along > crack.saw, crack.opening, 0.0) if crack.saw else crack.opening
    return float(crack.along[np.argmax(wild >= ALIKE * wild.max())])


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
