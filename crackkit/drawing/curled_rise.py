"""How high the corners of a slab stand as it dries: the rise against the age."""

import numpy as np

from crackkit.drawing.age_chart import FIRST, AgeChart
from crackkit.drawing.age_grip import age_grip
from crackkit.drawing.age_words import age_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Polyline, Text, line, rectangle
from crackkit.structures.fields import input_at
from crackkit.units import unit
from crackkit.words import _

LEFT, RIGHT, HEAD, FOOT = 42.0, 14.0, 44.0, 44.0  # room around the chart
HEADROOM = 1.15
LEAST = 0.2  # mm at the top of the chart of a slab that hardly moves


def curled_rise(outcome, frame: Frame, view: View) -> list:
    """Draw the chart, with the age that is looked at as a grip."""
    state, age = outcome.curled, outcome.structure.age
    chart = _chart(outcome, frame)
    x = float(chart.x(age))
    title = _("How high the corners stand, {unit}").format(unit=unit("movement", view.system))
    return [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        Text(frame.left, frame.top + 31, _("as it dries, without a wheel"), "note"),
        chart.card(),
        *_moist(outcome.structure, chart, x),
        *chart.grid("movement", view, 4),
        Polyline(chart.points(state.days, state.rises), "now_line"),
        *chart.foot(),
        *_now(outcome, chart, x),
        *age_grip(outcome.structure, x, chart.top, chart.bottom, chart.right - chart.left, view),
    ]


def _chart(outcome, frame: Frame) -> AgeChart:
    rises = outcome.curled.rises
    high = HEADROOM * max(float(rises.max()), LEAST)
    low = min(HEADROOM * float(rises.min()), 0.0)
    low = 0.0 if low > -0.02 * high else low
    last = input_at(outcome.structure, "age").high
    return AgeChart(
        frame.left + LEFT,
        frame.right - RIGHT,
        frame.top + HEAD,
        frame.bottom - FOOT,
        low,
        high,
        last,
    )


def _moist(structure, chart: AgeChart, now: float) -> list:
    """The days on which it is kept moist; named where the present day leaves room."""
    left, right = float(chart.x(FIRST)), float(chart.x(structure.curing))
    if right - left < 1.0:
        return []
    area = rectangle(left, chart.top, right - left, chart.bottom - chart.top, "squeezed_area")
    between = min(max(now, left), right)
    start, end = max((left, between), (between, right), key=lambda ends: ends[1] - ends[0])
    ways = [_("kept moist"), _("moist")]
    fitting = [words for words in ways if end - start >= width_of(words, "note") + 9.0]
    return [area, *(Text(start + 5.0, chart.top + 15.0, one, "note") for one in fitting[:1])]


def _now(outcome, chart: AgeChart, x: float) -> list:
    state, age = outcome.curled, outcome.structure.age
    rise = float(np.interp(age, state.days, state.rises))
    words = _("now: {age}").format(age=age_words(age))
    half = width_of(words, "label") / 2
    centre = min(max(x, chart.left + half - 20.0), chart.right + RIGHT - half)
    return [
        line(x, chart.top, x, chart.bottom, "neutral"),
        Circle(x, float(chart.y(rise)), 4.5, "rule_dot_chosen"),
        Text(centre, chart.bottom + 36, words, "label", "middle"),
    ]
