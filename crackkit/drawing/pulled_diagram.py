"""Pull against mean strain: the whole way of a pulled member, and where it is now."""

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Lines, Polyline, Text, line, rectangle
from crackkit.structures.pulled import PARTED
from crackkit.units import inner, number, unit
from crackkit.words import _

LEFT, TOP, FOOT, RIGHT = 42.0, 46.0, 40.0, 10.0  # room around the chart
HEADROOM = 1.08


class _Axes:
    """The way from (strain, pull) to the drawing."""

    def __init__(self, outcome, frame: Frame):
        diagram = outcome.pulled.history.diagram
        self.left, self.right = frame.left + LEFT, frame.right - RIGHT
        self.top, self.bottom = frame.top + TOP, frame.bottom - FOOT
        self.first = min(float(diagram.mean_strain.min()), 0.0)
        bare = outcome.pulled.history.tie.stretching
        most = float(diagram.pull[-1])
        self.last = max(float(diagram.mean_strain.max()), most / bare if bare else 0.0)
        self.last += 0.04 * (self.last - self.first)
        self.high = HEADROOM * most

    def x(self, strain):
        """Place of a strain [-]."""
        share = (strain - self.first) / (self.last - self.first)
        return self.left + share * (self.right - self.left)

    def y(self, pull):
        """Height of a pull [N]."""
        return self.bottom - pull / self.high * (self.bottom - self.top)

    def points(self, strain, pull) -> np.ndarray:
        """Points of a line."""
        return np.column_stack([self.x(np.asarray(strain)), self.y(np.asarray(pull))])


def pulled_diagram(outcome, frame: Frame, view: View) -> list:
    """Draw the diagram."""
    axes = _Axes(outcome, frame)
    return [
        Text(frame.left, frame.top + 14, _("Pull against mean strain"), "label_bold"),
        rectangle(axes.left, axes.top, axes.right - axes.left, axes.bottom - axes.top, "card"),
        *_side(axes, view),
        *_foot(axes, view),
        *_bare(outcome, axes),
        *_way(outcome, axes),
        *_names(outcome, axes),
        *_present(outcome, axes),
    ]


def _side(axes: _Axes, view: View) -> list:
    values = ticks(0.0, number(axes.high, "force", view.system), 4)
    heights = axes.y(np.array([inner(float(v), "force", view.system) for v in values]))
    rows = np.empty((heights.size, 2, 2))
    rows[:, 0, 0], rows[:, 1, 0], rows[..., 1] = axes.left, axes.right, heights[:, None]
    texts = [
        Text(axes.left - 8, y + 4, tick_text(v), "tick", "end")
        for v, y in zip(values.tolist(), heights.tolist(), strict=True)
    ]
    label = Text(axes.left - 6, axes.top - 8, unit("force", view.system), "tick", "end")
    return [Lines(rows, "grid"), *texts, label]


def _foot(axes: _Axes, view: View) -> list:
    ends = (number(v, "strain", view.system) for v in (axes.first, axes.last))
    values = ticks(*ends, 4)
    places = axes.x(np.array([inner(float(v), "strain", view.system) for v in values]))
    caption = _("mean strain, {unit}").format(unit=unit("strain", view.system))
    middle = (axes.left + axes.right) / 2
    return [
        line(axes.left, axes.bottom, axes.right, axes.bottom, "axis"),
        *bottom_axis(values, places, axes.bottom, "", axes.right),
        Text(middle, axes.bottom + 34, caption, "note", "middle"),
    ]


def _bare(outcome, axes: _Axes) -> list:
    """The line of the bars without any concrete."""
    stretching, most = outcome.pulled.history.tie.stretching, axes.high / HEADROOM
    if not stretching:
        return []
    return [Polyline(axes.points([0.0, most / stretching], [0.0, most]), "neutral")]


def _way(outcome, axes: _Axes) -> list:
    """The whole way of the member, and boldly what it has gone so far."""
    state, diagram = outcome.pulled, outcome.pulled.history.diagram
    points = axes.points(diagram.mean_strain, diagram.pull)
    shapes: list = [Polyline(points, "axis", 1.4)]
    top = _reached(outcome)
    gone = int(np.searchsorted(diagram.pull, top, side="right"))
    if gone:
        reached = points[:gone]
        if top > diagram.pull[gone - 1]:
            reached = np.concatenate([reached, axes.points([_strain(diagram, top)], [top])])
        if len(reached) > 1:
            shapes.append(Polyline(reached, "stretched_line"))
    if state.pull < state.greatest and state.ended != PARTED:
        back = axes.points([_strain(diagram, top), state.now.mean_strain], [top, state.pull])
        shapes.append(Polyline(back, "leader", 1.6))
    return shapes


def _reached(outcome) -> float:
    return min(outcome.pulled.greatest, float(outcome.pulled.history.diagram.pull[-1]))


def _strain(diagram, pull: float) -> float:
    return float(np.interp(pull, diagram.pull, diagram.mean_strain))


def _present(outcome, axes: _Axes) -> list:
    state = outcome.pulled
    if state.ended == PARTED:
        x, y = axes.points(state.history.diagram.mean_strain[-1:], state.history.diagram.pull[-1:])[
            0
        ].tolist()
        arms = np.array([[(x - 6, y - 6), (x + 6, y + 6)], [(x - 6, y + 6), (x + 6, y - 6)]])
        word, room = _("parted"), x - axes.left
        if room < width_of(word, "bad_word") + 20:
            return [Lines(arms, "bad_line"), Text(x + 12, y + 4, word, "bad_word")]
        return [Lines(arms, "bad_line"), Text(x - 12, y + 2, word, "bad_word", "end")]
    x, y = axes.points([state.now.mean_strain], [state.pull])[0].tolist()
    return [Circle(x, y, 5.5, "rule_dot_chosen")]


def _names(outcome, axes: _Axes) -> list:
    """Name the dashed line at its lower right, and above the gap beside it."""
    state = outcome.pulled
    stretching = state.history.tie.stretching
    if not stretching:
        return []
    most = axes.high / HEADROOM
    words = _("bars alone")
    x, y = axes.right - 8.0, axes.bottom - 12.0
    target = axes.points([0.42 * most / stretching], [0.42 * most])[0].tolist()
    shapes = [
        Text(x, y, words, "note", "end"),
        line(x - 0.7 * width_of(words, "note"), y - 12, *target, "leader"),
    ]
    # where one crack is the end there is no concrete between cracks that helps
    return [*shapes, *(_help(state, axes, most) if state.history.sequence.held else [])]


def _help(state, axes: _Axes, most: float) -> list:
    """The gap between both lines where it is widest: what the concrete between cracks helps."""
    diagram = state.history.diagram
    gap = diagram.pull / state.history.tie.stretching - diagram.mean_strain
    at = int(np.argmax(np.where(diagram.pull > 0.3 * most, gap, -np.inf)))
    if axes.x(gap[at]) - axes.x(0.0) < 6.0:
        return []
    level = float(diagram.pull[at])
    ends = axes.points([diagram.mean_strain[at], level / state.history.tie.stretching], [level] * 2)
    return [
        Text(axes.left + 8, axes.top - 8, _("concrete helps"), "stretched_word"),
        line(axes.left + 30, axes.top - 4, float(ends[:, 0].mean()), float(ends[0, 1]), "leader"),
    ]
