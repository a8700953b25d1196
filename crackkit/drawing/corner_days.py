"""How wide the crack from an inside corner gets as the slab dries, with and without bars."""

import numpy as np

from crackkit.drawing.age_chart import AgeChart
from crackkit.drawing.age_grip import age_grip
from crackkit.drawing.age_words import age_words
from crackkit.drawing.corner_widths import HEADROOM, LEFT, OVER, RIGHT
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Polyline, Text, line
from crackkit.structures.fields import input_at
from crackkit.units import unit
from crackkit.words import _

HEAD, FOOT = 46.0, 44.0  # over and under the chart


def corner_days(outcome, frame: Frame, view: View) -> list:
    """Draw the chart, with the age that is looked at as a grip.

    Its curves take long: where the view has an earlier Outcome they are drawn as they were then.
    """
    days, openings, bare = (view.before or outcome).cornered.told_openings()
    roles = ("outdated", "outdated") if view.before else ("second_line", "now_line")
    note = _("being worked out …") if view.before else _("as it dries; lines as for the crack")
    limit = outcome.verdict.limit.width
    chart = _chart(outcome, frame, max(float(np.max(bare)), float(np.max(openings))))
    x, y = float(chart.x(outcome.structure.age)), float(chart.y(limit))
    title = _("Widest opening, {unit}").format(unit=unit("width", view.system))
    return [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        Text(frame.left, frame.top + 31, note, "note"),
        chart.card(),
        *chart.grid("width", view, 4),
        Polyline(chart.points(days, bare), roles[0]),
        Polyline(chart.points(days, openings), roles[1]),
        line(chart.left, y, chart.right, y, "capacity"),
        *chart.foot(),
        *_now(outcome, chart, x),
        *age_grip(outcome.structure, x, chart.top, chart.bottom, chart.right - chart.left, view),
    ]


def _chart(outcome, frame: Frame, widest: float) -> AgeChart:
    crack, limit = outcome.cornered.crack, outcome.verdict.limit.width
    high = max(HEADROOM * max(widest, crack.widest), OVER * limit)
    return AgeChart(
        frame.left + LEFT,
        frame.right - RIGHT,
        frame.top + HEAD,
        frame.bottom - FOOT,
        0.0,
        high,
        input_at(outcome.structure, "age").high,
    )


def _now(outcome, chart: AgeChart, x: float) -> list:
    words = _("now: {age}").format(age=age_words(outcome.structure.age))
    half = width_of(words, "label") / 2
    centre = min(max(x, chart.left + half - 20.0), chart.right + RIGHT - half)
    return [
        line(x, chart.top, x, chart.bottom, "neutral"),
        Circle(x, float(chart.y(outcome.cornered.crack.widest)), 4.5, "rule_dot_chosen"),
        Text(centre, chart.bottom + 36, words, "label", "middle"),
    ]
