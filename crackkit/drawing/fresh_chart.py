"""How fast water leaves against the wind, in the present air: the limit, and where we are."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import (
    Circle,
    Group,
    Handle,
    Lines,
    Polygon,
    Polyline,
    Text,
    line,
    rectangle,
)
from crackkit.drawing.words_on import wrapped
from crackkit.mechanics.evaporation import LIMIT, evaporation_rate
from crackkit.mechanics.evaporation_limits import LITTLE_BLEEDING, wind_at_rate
from crackkit.structures.fields import input_at
from crackkit.units import QUANTITIES, inner, number, shown, unit
from crackkit.words import _

LEFT, RIGHT, HEAD, FOOT = 46.0, 26.0, 42.0, 42.0  # room around the chart
LEAST_HIGH, HEADROOM = 2.0, 1.25  # kg/m2/h at the top of the chart; over the present rate
FASTEST = 60.0  # km/h
GRIP, BESIDE = 7.0, 14.0  # radius of the grip, and how far words keep from the line
ROOM = 34.0  # that words need below a level


@dataclass(frozen=True)
class Axes:
    """The way from (wind, rate) to the drawing."""

    left: float
    right: float
    top: float
    bottom: float
    high: float

    def x(self, wind):
        """Place of a wind [km/h]."""
        return self.left + wind / FASTEST * (self.right - self.left)

    def y(self, rate):
        """Height of a rate [kg/m2/h]."""
        return self.bottom - rate / self.high * (self.bottom - self.top)


def fresh_chart(outcome, frame: Frame, view: View) -> list:
    """Draw the chart."""
    axes, wide = _axes(outcome, frame), frame.width - LEFT - RIGHT
    level = axes.y(LIMIT)
    note = wrapped(_("Wind half a metre above the face; the ring is now."), "note", frame.width)
    return [
        Text(frame.left, frame.top + 14, _("Water that leaves, by wind"), "label_bold"),
        rectangle(axes.left, axes.top, wide, axes.bottom - axes.top, "card"),
        rectangle(axes.left, axes.top, wide, level - axes.top, "uncovered"),
        *_side(axes, frame, view),
        *_foot(axes, view),
        Text(axes.left, axes.bottom + 36, note[0], "note"),
        *_levels(outcome, axes, view),
        *_line(outcome, axes),
        *_present(outcome, axes, view),
    ]


def _axes(outcome, frame: Frame) -> Axes:
    high = max(LEAST_HIGH, HEADROOM * outcome.fresh.rate)
    left, right = frame.left + LEFT, frame.right - RIGHT
    return Axes(left, right, frame.top + HEAD, frame.bottom - FOOT, high)


def _side(axes: Axes, frame: Frame, view: View) -> list:
    values = ticks(0.0, number(axes.high, "mass_rate", view.system), 5)
    heights = axes.y(np.array([inner(float(v), "mass_rate", view.system) for v in values]))
    rows = np.empty((heights.size, 2, 2))
    rows[:, 0, 0], rows[:, 1, 0], rows[..., 1] = axes.left, axes.right, heights[:, None]
    texts = [
        Text(axes.left - 9, y + 4, tick_text(v), "tick", "end")
        for v, y in zip(values.tolist(), heights.tolist(), strict=True)
    ]
    label = Text(frame.left, axes.top - 11, unit("mass_rate", view.system), "tick")
    return [Lines(rows, "grid"), *texts, label]


def _foot(axes: Axes, view: View) -> list:
    values = ticks(0.0, number(FASTEST, "wind", view.system), 4)
    places = axes.x(np.array([inner(float(v), "wind", view.system) for v in values]))
    return [
        line(axes.left, axes.bottom, axes.right, axes.bottom, "axis"),
        *bottom_axis(values, places, axes.bottom, unit("wind", view.system), axes.right),
    ]


def _line(outcome, axes: Axes) -> list:
    """The rate in this air: a straight line; it ends where it leaves the chart."""
    it = outcome.structure
    last = min(wind_at_rate(axes.high, it.concrete, it.air, it.humidity), FASTEST)
    winds = np.array([0.0, max(last, 0.0)])
    rates = evaporation_rate(it.concrete, it.air, it.humidity, winds)
    points = np.column_stack([axes.x(winds), axes.y(np.minimum(rates, axes.high))])
    return [Polyline(points, "squeezed_line"), *_crossing(outcome, axes)]


def _crossing(outcome, axes: Axes) -> list:
    """A dot where the line meets the limit."""
    wind = outcome.fresh.wind
    return [Circle(axes.x(wind), axes.y(LIMIT), 3.6, "rule_dot")] if 0 <= wind <= FASTEST else []


def _levels(outcome, axes: Axes, view: View) -> list:
    """The limit, and the lower one for concrete that bleeds little, each with its name."""
    shapes = [line(axes.left, axes.y(LIMIT), axes.right, axes.y(LIMIT), "limit")]
    rate = shown(LIMIT, "mass_rate", view.system)
    names = (
        _("precautions from {rate} (ACI 305R)").format(rate=rate),
        _("precautions from {rate}").format(rate=rate),
        _("precautions from here"),
        _("precautions"),
    )
    shapes += _named(outcome, axes, LIMIT, names, "label_bold")
    y = axes.y(LITTLE_BLEEDING)
    if axes.bottom - y < ROOM:
        return shapes
    names = (_("concrete that bleeds little: from here"), _("bleeds little: from here"))
    low = line(axes.left, y, axes.right, y, "threshold")
    return [*shapes, low, *_named(outcome, axes, LITTLE_BLEEDING, names, "note")]


def _named(outcome, axes: Axes, rate: float, names, role: str) -> list:
    """Write the longest name that fits: left of the line above the level, or right and below."""
    it, y = outcome.structure, axes.y(rate)
    wind = wind_at_rate(rate, it.concrete, it.air, it.humidity)
    cross = min(max(float(axes.x(min(wind, FASTEST))), axes.left), axes.right)
    before, after = cross - axes.left, axes.right - cross
    if before >= after:
        x, up, anchor = axes.left + 8, -9.0, "start"
    else:
        x, up, anchor = axes.right - 8, 18.0, "end"
    room = max(before, after) - 8 - BESIDE
    fitting = [words for words in names if width_of(words, role) <= room]
    return [Text(x, y + up, words, role, anchor) for words in fitting[:1]]


def _present(outcome, axes: Axes, view: View) -> list:
    """A ring on the line, to be dragged along the wind, and a mark on the axis below it."""
    structure = outcome.structure
    x, y, foot = axes.x(structure.wind), axes.y(outcome.fresh.rate), axes.bottom
    mark = Polygon(np.array([(x, foot - 1), (x + 5, foot - 8), (x - 5, foot - 8)]), "badge")
    ring = [Circle(x, y, GRIP, "grip"), Circle(x, y, 3.4, "badge")]
    shapes = [mark] if foot - y > GRIP + 10 else []
    if not view.live:
        return [*shapes, *ring]
    hit = rectangle(x - 14, y - 14, 28, 28, "hit")
    return [*shapes, Group((hit, *ring), _handle(structure, axes, view))]


def _handle(structure, axes: Axes, view: View) -> Handle:
    keys, item = getattr(QUANTITIES["wind"], view.system), input_at(structure, "wind")
    return Handle(
        path="wind",
        label=_("wind, on the chart"),
        text=shown(structure.wind, "wind", view.system),
        axis="x",
        per_unit=FASTEST / (axes.right - axes.left),
        value=structure.wind,
        low=item.low,
        high=item.high,
        step=keys.step * keys.factor,
    )
