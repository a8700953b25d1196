"""A small chart: the crack width against one input, by all rules, with the limit."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Frame
from crackkit.drawing.shapes import (
    Circle,
    Lines,
    Picture,
    Polygon,
    Polyline,
    Text,
    line,
    rectangle,
)
from crackkit.units import number, shown, unit
from crackkit.words import _

WIDTH, HEIGHT = 620.0, 330.0
FRAME = Frame(62.0, 40.0, 534.0, 222.0)


@dataclass(frozen=True)
class Course:
    """Crack widths along a row of values of one input.

    Attributes
    ----------
    label, unit : str
        The input, and the unit of `x`.
    x : ndarray
        Values of the input, in the reader's units.
    low, governing, high : ndarray
        Widths [mm]; not a number where no rule gives one.
    limit : float
        Width that is not to be passed [mm].
    system : str
        ``"SI"`` or ``"US"``.
    """

    label: str
    unit: str
    x: np.ndarray
    low: np.ndarray
    governing: np.ndarray
    high: np.ndarray
    limit: float
    system: str


class _Axes:
    """The way from (input, width) to the drawing."""

    def __init__(self, course: Course):
        self.first, self.last = float(np.min(course.x)), float(np.max(course.x))
        widths = np.nan_to_num(np.concatenate([course.high, course.governing]))
        highest = max(course.limit, widths.max())
        self.top = 1.18 * float(highest)

    def x(self, value):
        share = (np.asarray(value) - self.first) / ((self.last - self.first) or 1.0)
        return FRAME.left + share * FRAME.width

    def y(self, width):
        return FRAME.bottom - np.asarray(width) / self.top * FRAME.height


def sweep_chart(course: Course) -> Picture:
    """Draw the chart.

    Parameters
    ----------
    course : Course
        Two values or more.
    """
    axes = _Axes(course)
    shapes = (
        Text(14.0, 24.0, _("Crack width, {u}").format(u=_width_unit(course)), "label_bold"),
        rectangle(FRAME.left, FRAME.top, FRAME.width, FRAME.height, "card"),
        *_side_axis(course, axes),
        *_foot_axis(course, axes),
        *_widths(course, axes),
        *_limit(course, axes),
        *_missing(course, axes),
    )
    title = _("Crack width against {label}").format(label=course.label)
    return Picture(WIDTH, HEIGHT, shapes, title, description(course))


def _width_unit(course: Course) -> str:
    return unit("width", course.system)


def _side_axis(course: Course, axes: _Axes) -> list:
    values = ticks(0.0, number(axes.top, "width", course.system), 5)
    heights = FRAME.bottom - values / number(axes.top, "width", course.system) * FRAME.height
    left, right = np.full_like(heights, FRAME.left), np.full_like(heights, FRAME.right)
    ends = [np.stack([left, heights], -1), np.stack([right, heights], -1)]
    texts = [
        Text(FRAME.left - 8, float(y) + 4, tick_text(v), "tick", "end")
        for v, y in zip(values, heights, strict=True)
    ]
    return [Lines(np.stack(ends, axis=1), "grid"), *texts]


def _foot_axis(course: Course, axes: _Axes) -> list:
    values = ticks(axes.first, axes.last, 6) if axes.last > axes.first else course.x[:1]
    caption = f"{course.label}, {course.unit}" if course.unit else course.label
    middle = FRAME.left + FRAME.width / 2
    return [
        line(FRAME.left, FRAME.bottom, FRAME.right, FRAME.bottom, "axis"),
        *bottom_axis(values, axes.x(values), FRAME.bottom, "", FRAME.right),
        Text(middle, FRAME.bottom + 44, caption, "label", "middle"),
    ]


def _widths(course: Course, axes: _Axes) -> list:
    shapes = []
    for run in _runs(~np.isnan(course.governing)):
        x = axes.x(course.x[run])
        upper = np.column_stack([x, axes.y(course.high[run])])
        lower = np.column_stack([x, axes.y(course.low[run])])
        shapes.append(Polygon(np.concatenate([upper, lower[::-1]]), "band"))
        chosen = np.column_stack([x, axes.y(course.governing[run])])
        shapes.append(Polyline(chosen, "stretched_line"))
        shapes += [Circle(a, b, 4.0, "rule_dot_chosen") for a, b in chosen.tolist()]
    return shapes


def _runs(present: np.ndarray) -> list[slice]:
    """Stretches of values without a gap."""
    edges = np.flatnonzero(np.diff(np.concatenate([[False], present, [False]]).astype(int)))
    return [slice(int(a), int(b)) for a, b in edges.reshape(-1, 2)]


def _limit(course: Course, axes: _Axes) -> list:
    y = float(axes.y(course.limit))
    words = _("limit {w}").format(w=shown(course.limit, "width", course.system))
    return [
        line(FRAME.left, y, FRAME.right, y, "limit"),
        Text(FRAME.right, FRAME.top - 10, words, "label_bold", "end"),
        line(FRAME.right - 20, FRAME.top - 5, FRAME.right - 20, y, "leader"),
    ]


def _missing(course: Course, axes: _Axes) -> list:
    """A cross at the foot where no rule gives a width."""
    gone = np.isnan(course.governing)
    if not gone.any():
        return []
    x = axes.x(course.x[gone])
    y = FRAME.bottom - 12.0
    arms = [[(a - 5, y - s), (a + 5, y + s)] for a in x.tolist() for s in (5.0, -5.0)]
    words = _("× bars do not hold it: no rule gives a width")
    return [Lines(np.array(arms), "crack"), Text(14.0, HEIGHT - 4.0, words, "bad_word")]


def description(course: Course) -> str:
    """Say in words what the chart shows."""
    first, last = (_said(course, k) for k in (0, -1))
    text = _("From {first} to {last}. The limit is {limit}.")
    return text.format(first=first, last=last, limit=shown(course.limit, "width", course.system))


def _said(course: Course, index: int) -> str:
    value = f"{course.x[index]:.4g} {course.unit}".strip()
    width = float(course.governing[index])
    if width != width:
        return _("no width at {value}").format(value=value)
    words = shown(width, "width", course.system)
    return _("{width} at {value}").format(width=words, value=value)
