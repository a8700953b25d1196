"""Ten years of a slab on the ground: stress over strength day by day, and what it wants to shrink.

The axis of the ages is logarithmic: as much happens from the first to the tenth day as from the
first year to the tenth.
"""

import math
from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import tick_text, ticks
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_ages import age_words, day_words
from crackkit.drawing.ground_day import day_grip
from crackkit.drawing.labels import GAP, width_of
from crackkit.drawing.shapes import Circle, Lines, Polygon, Polyline, Text, line, rectangle
from crackkit.drawing.words_on import Label, label_row
from crackkit.units import inner, number, unit
from crackkit.words import _

LEFT, RIGHT = 42.0, 12.0  # room beside the charts
FIRST, LAST = 1.0, 3650.0  # days
HIGH = 1.25  # stress over strength at the top of the chart
TICKS = (
    (1.0, _("1 d")),
    (7.0, _("1 wk")),
    (30.0, _("1 mo")),
    (100.0, _("100 d")),
    (365.0, _("1 y")),
    (3650.0, _("10 y")),
)
HEAD, BETWEEN, FOOT = 76.0, 48.0, 26.0  # over, between and below the charts
LOWER = 0.36  # share of the room that the lower chart has


@dataclass(frozen=True)
class _Chart:
    """The way from (age, value) to the drawing; values from 0 to `high`."""

    left: float
    right: float
    top: float
    bottom: float
    high: float

    def x(self, age):
        """Place of an age [days]."""
        share = np.log10(np.clip(age, FIRST, LAST) / FIRST) / math.log10(LAST / FIRST)
        return self.left + share * (self.right - self.left)

    def y(self, value):
        """Height of a value."""
        return self.bottom - np.clip(np.asarray(value) / self.high, 0, 1) * (self.bottom - self.top)

    def points(self, ages, values) -> np.ndarray:
        """Points of a line."""
        return np.column_stack([self.x(np.asarray(ages)), self.y(values)])

    def card(self):
        """The ground of the chart."""
        return rectangle(
            self.left, self.top, self.right - self.left, self.bottom - self.top, "card"
        )

    def across(self, values: np.ndarray) -> Lines:
        """Lines of the grid at these values."""
        rows = np.empty((values.size, 2, 2))
        rows[:, 0, 0], rows[:, 1, 0] = self.left, self.right
        rows[..., 1] = self.y(values)[:, None]
        return Lines(rows, "grid")


def ground_timeline(outcome, frame: Frame, view: View) -> list:
    """Draw both charts, one below the other, with the same ages."""
    upper, lower = _charts(outcome, frame)
    return [
        Text(frame.left, frame.top + 14, _("Stress over strength, day by day"), "label_bold"),
        Text(frame.left, frame.top + 31, _("line: from end to end; dashed: across"), "note"),
        *_stress(outcome, upper),
        *_births(outcome, upper),
        *_shrinkage(outcome, lower, frame, view),
        *_foot(lower),
        *_now(outcome, upper, lower),
        *day_grip(
            outcome.structure,
            float(upper.x(outcome.structure.age)),
            upper.top,
            upper.bottom,
            upper.right - upper.left,
            view,
        ),
    ]


def _charts(outcome, frame: Frame) -> tuple[_Chart, _Chart]:
    left, right = frame.left + LEFT, frame.right - RIGHT
    room = frame.height - HEAD - BETWEEN - FOOT
    top = frame.top + HEAD
    bottom = top + (1 - LOWER) * room
    free = float(max(past.life.shortening.max() for _start, past in outcome.ground.pieces))
    lower = _Chart(left, right, bottom + BETWEEN, frame.bottom - FOOT, 1.15 * max(free, 1e-5))
    return _Chart(left, right, top, bottom, HIGH), lower


def tension_in_time(state) -> tuple[np.ndarray, np.ndarray]:
    """Ages [days] and the greatest stress over strength then [-], cracks falling sharply."""
    histories = list(dict.fromkeys(id(past) for _start, past in state.pieces))
    known = {id(past): past for _start, past in state.pieces}
    ages = known[histories[0]].life.ages
    curves = np.array([known[key].tension for key in histories])
    # beside a crack bars have not handed all the pull back: what is beyond 1 cannot tear there
    worst = np.minimum(curves.max(axis=0), 1.0)
    births = np.unique(np.concatenate([known[key].cracks.age for key in histories]))
    if not births.size:
        return ages, worst
    # the day a crack comes its place bears all it can; the moment after, the next worst counts
    after = worst[np.minimum(np.searchsorted(ages, births, side="right"), ages.size - 1)]
    x = np.concatenate([ages, births, births])
    y = np.concatenate([worst, np.ones(births.size), after])
    order = np.argsort(x, kind="stable")
    return x[order], y[order]


def _stress(outcome, chart: _Chart) -> list:
    points, across = (_worst(state, chart) for state in (outcome.ground, outcome.across))
    area = np.concatenate([points, [(points[-1, 0], chart.bottom), (points[0, 0], chart.bottom)]])
    values = np.array([0.0, 0.5])
    texts = [
        Text(chart.left - 8, float(chart.y(v)) + 4, tick_text(v), "tick", "end")
        for v in (0.0, 0.5, 1.0)
    ]
    return [
        chart.card(),
        chart.across(values),
        *texts,
        Polygon(area, "stretched_area"),
        Polyline(points, "stretched_line"),
        Polyline(across, "second_line"),
        *_limit(outcome, chart),
    ]


def _worst(state, chart: _Chart) -> np.ndarray:
    """Points of the greatest stress over strength, day by day."""
    ages, share = tension_in_time(state)
    seen = ages >= FIRST
    return chart.points(ages[seen], share[seen])


def all_births(outcome) -> list[float]:
    """Ages at which cracks come in ten years, from end to end and across [days]."""
    return outcome.ground.births + outcome.across.births


def _limit(outcome, chart: _Chart) -> list:
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


def _births(outcome, chart: _Chart) -> list:
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


def _named(days: list[float], chart: _Chart, y: float) -> list:
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


def _shrinkage(outcome, chart: _Chart, frame: Frame, view: View) -> list:
    life = outcome.ground.pieces[0][1].life
    seen = life.ages >= FIRST
    values = ticks(0.0, number(chart.high, "strain", view.system), 3)
    inside = np.array([inner(float(v), "strain", view.system) for v in values])
    texts = [
        Text(chart.left - 8, y + 4, tick_text(v), "tick", "end")
        for v, y in zip(values.tolist(), chart.y(inside).tolist(), strict=True)
    ]
    title = _("It wants to shrink, {unit}").format(unit=unit("strain", view.system))
    return [
        chart.card(),
        chart.across(inside),
        *texts,
        Polyline(chart.points(life.ages[seen], life.shortening[seen]), "squeezed_line"),
        Text(frame.left, chart.top - 9, title, "label_bold"),
    ]


def _foot(chart: _Chart) -> list:
    """Ages below the charts, those for which there is room."""
    ends, shapes = -np.inf, []
    for age, words in TICKS:
        x, half = float(chart.x(age)), width_of(words, "tick") / 2
        shapes.append(line(x, chart.bottom, x, chart.bottom + 5, "axis"))
        if x - half >= ends + 3.0:
            shapes.append(Text(x, chart.bottom + 18, words, "tick", "middle"))
            ends = x + half
    return [line(chart.left, chart.bottom, chart.right, chart.bottom, "axis"), *shapes]


def _now(outcome, upper: _Chart, lower: _Chart) -> list:
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
