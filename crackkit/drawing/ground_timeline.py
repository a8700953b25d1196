"""Ten years of a slab on the ground: stress over strength day by day, and what it wants to shrink.

The axis of the ages is logarithmic: as much happens from the first to the tenth day as from the
first year to the tenth.
"""

import numpy as np

from crackkit.drawing.age_chart import FIRST, AgeChart
from crackkit.drawing.age_grip import age_grip
from crackkit.drawing.age_words import age_words, day_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import GAP, width_of
from crackkit.drawing.shapes import Circle, Polygon, Polyline, Text, line
from crackkit.drawing.words_on import Label, label_row
from crackkit.structures.slab_history import LAST_DAY
from crackkit.units import unit
from crackkit.words import _

LEFT, RIGHT = 42.0, 12.0  # room beside the charts
HIGH = 1.25  # stress over strength at the top of the chart
HEAD, BETWEEN, FOOT = 76.0, 48.0, 26.0  # over, between and below the charts
LOWER = 0.36  # share of the room that the lower chart has


def ground_timeline(outcome, frame: Frame, view: View) -> list:
    """Draw both charts, one below the other, with the same ages."""
    upper, lower = _charts(outcome, frame)
    return [
        Text(frame.left, frame.top + 14, _("Stress over strength, day by day"), "label_bold"),
        Text(frame.left, frame.top + 31, _("line: from end to end; dashed: across"), "note"),
        *_stress(outcome, upper),
        *_births(outcome, upper),
        *_shrinkage(outcome, lower, frame, view),
        *lower.foot(),
        *_now(outcome, upper, lower),
        *age_grip(
            outcome.structure,
            float(upper.x(outcome.structure.age)),
            upper.top,
            upper.bottom,
            upper.right - upper.left,
            view,
        ),
    ]


def _charts(outcome, frame: Frame) -> tuple[AgeChart, AgeChart]:
    left, right = frame.left + LEFT, frame.right - RIGHT
    room = frame.height - HEAD - BETWEEN - FOOT
    top = frame.top + HEAD
    bottom = top + (1 - LOWER) * room
    free = float(max(past.life.shortening.max() for _start, past in outcome.ground.pieces))
    high, foot = 1.15 * max(free, 1e-5), frame.bottom - FOOT
    lower = AgeChart(left, right, bottom + BETWEEN, foot, 0.0, high, LAST_DAY)
    return AgeChart(left, right, top, bottom, 0.0, HIGH, LAST_DAY), lower


def _stress(outcome, chart: AgeChart) -> list:
    points, across = (_worst(state, chart) for state in (outcome.ground, outcome.across))
    area = np.concatenate([points, [(points[-1, 0], chart.bottom), (points[0, 0], chart.bottom)]])
    values = np.array([0.0, 0.5, 1.0])
    return [
        chart.card(),
        *chart.across(values, values.tolist()),
        Polygon(area, "stretched_area"),
        Polyline(points, "stretched_line"),
        Polyline(across, "second_line"),
        *_limit(outcome, chart),
    ]


def _worst(state, chart: AgeChart) -> np.ndarray:
    """Points of the greatest stress over strength, day by day."""
    ages, share = state.pull_in_time
    seen = ages >= FIRST
    return chart.points(ages[seen], share[seen])


def all_births(outcome) -> list[float]:
    """Ages at which cracks come in ten years, from end to end and across [days]."""
    return outcome.ground.births + outcome.across.births


def _limit(outcome, chart: AgeChart) -> list:
    """The strength; its name keeps clear of the days above it, and of the age looked at."""
    y, words = float(chart.y(1.0)), _("it tears")
    room = width_of(words, "bad_word") + 12.0
    taken = [float(chart.x(day)) for day in (outcome.structure.age, *_first(outcome))]
    starts = [chart.left, chart.right - room, taken[0] - room, taken[0] + 1.0]
    free = [
        x
        for x in starts
        if chart.left <= x <= chart.right - room and not any(x <= t < x + room for t in taken)
    ]
    return [
        line(chart.left, y, chart.right, y, "capacity"),
        Text((free or [chart.left])[0] + 6.0, y - 5, words, "bad_word"),
    ]


def _first(outcome) -> list[float]:
    """Age of the first crack in ten years [days], if one comes."""
    return sorted(all_births(outcome))[:1]


def _births(outcome, chart: AgeChart) -> list:
    """Mark the days on which cracks come, in ten years, and name the first that fit."""
    days = sorted(set(all_births(outcome)))
    y = float(chart.y(1.0))
    role = {True: "rule_dot_chosen", False: "rule_dot"}
    places = chart.x(np.array(days)).tolist()
    dots = [
        Circle(x, y, 3.6, role[day <= outcome.structure.age])
        for x, day in zip(places, days, strict=True)
    ]
    return [*dots, *_named(days, chart, y)]


def _named(days: list[float], chart: AgeChart, y: float) -> list:
    if not days:
        x = (chart.left + chart.right) / 2
        return [Text(x, chart.top - 12.0, _("no crack in ten years"), "note", "middle")]
    room, labels = chart.right - chart.left + 20.0, []
    first = {day_words(day): day for day in reversed(days)}
    for text, day in reversed(first.items()):
        room -= width_of(text, "note") + GAP
        if room < 0 or len(labels) == 4:
            break
        labels.append(Label(float(chart.x(day)), text, "note", y - 4.0))
    return label_row(labels, chart.top - 12.0, chart.left - 10.0, chart.right + 10.0)


def _shrinkage(outcome, chart: AgeChart, frame: Frame, view: View) -> list:
    life = outcome.ground.pieces[0][1].life
    seen = life.ages >= FIRST
    title = _("It wants to shrink, {unit}").format(unit=unit("strain", view.system))
    return [
        chart.card(),
        *chart.grid("strain", view, 3),
        Polyline(chart.points(life.ages[seen], life.shortening[seen]), "squeezed_line"),
        Text(frame.left, chart.top - 9, title, "label_bold"),
    ]


def _now(outcome, upper: AgeChart, lower: AgeChart) -> list:
    """The age that is looked at, through both charts."""
    age, free = outcome.structure.age, outcome.ground.free
    x = float(upper.x(age))
    words = _("now: {age}").format(age=age_words(age))
    half = width_of(words, "label") / 2
    centre = min(max(x, upper.left + half), upper.right + RIGHT - half)
    return [
        line(x, upper.top, x, upper.bottom + 4, "neutral"),
        line(x, lower.top, x, lower.bottom, "neutral"),
        Text(centre, upper.bottom + 20, words, "label", "middle"),
        Circle(x, float(lower.y(free)), 4.5, "rule_dot_chosen"),
    ]
