"""Band 3, what holds the cracks? The stress along each layer of bars."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Frame, View, along
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygon, Polyline, Text, line
from crackkit.drawing.thinning import thinned
from crackkit.drawing.words_on import heading, paragraph
from crackkit.units import inner, number, shown, unit
from crackkit.words import _

LINES = {"bottom": "stretched_line", "top": "second_line"}
FACES = ("bottom", "top")


def steel_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    title = heading(frame, 3, _("What holds the cracks?"))
    chart = Chart(outcome, frame)
    shapes = [*title, *_grid(chart, view), *_x_axis(chart, outcome.structure.origin, view)]
    if not outcome.steel:
        words = _("No bars: nothing takes over when the concrete cracks.")
        return [*shapes, *paragraph(chart.along.left + 14, chart.zero - 30, words, "bad_word", 400)]
    faces = face_lines(outcome.steel)
    borne = [face.capacity for face in faces if _worth_showing(face)]
    lines = chart.lines(faces[0].x, [*(face.stress for face in faces), *borne])
    for face, points in zip(faces, lines, strict=False):
        shapes += _stress_line(chart, face, points)
    capacity = _capacity(chart, lines[len(faces) :], view)
    return [*shapes, *capacity, *_key(faces, frame)]


@dataclass(frozen=True)
class FaceLine:
    """Stress along all the layers of one face: where several lie, of the one that works hardest."""

    label: str
    role: str
    x: np.ndarray
    stress: np.ndarray
    capacity: np.ndarray

    @property
    def main(self) -> bool:
        """Whether it is the one to look at."""
        return self.role == LINES["bottom"]


def face_lines(steel) -> list[FaceLine]:
    """Draw the layers of each face together; the only face there is takes the first look."""
    found = []
    for face in FACES:
        layers = [item for item in steel if item.face == face]
        if layers:
            role = LINES[face] if found else LINES["bottom"]
            found.append(_face_line(layers, role))
    return found


def _face_line(layers, role: str) -> FaceLine:
    first = layers[0]
    if len(layers) == 1:
        return FaceLine(first.label, role, first.x, first.stress, first.capacity)
    every = np.array([item.stress for item in layers])
    chosen = np.abs(every).argmax(axis=0)
    stress = every[chosen, np.arange(first.x.size)]
    capacity = np.array([item.capacity for item in layers]).max(axis=0)
    return FaceLine(first.label, role, first.x, stress, capacity)


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

    def lines(self, x, stresses) -> list[np.ndarray]:
        """Points of lines of stresses at the same stations, without those that cannot be seen."""
        return thinned(self.along(x), self(np.array(stresses)))

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
    # beside the axis, for lines may run anywhere within it
    return [*shapes, Text(left - 7, chart.top - 8, unit("stress", view.system), "tick", "end")]


def _x_axis(chart: Chart, origin: float, view: View) -> list:
    system = view.system
    low, high = (number(at - origin, "length", system) for at in (0.0, chart.along.length))
    values = ticks(low, high, 8)
    places = [float(chart.along(inner(float(v), "length", system) + origin)) for v in values]
    return bottom_axis(values, places, chart.bottom, unit("length", system), chart.along.right)


def _stress_line(chart: Chart, item: FaceLine, points: np.ndarray) -> list:
    if not item.main:
        return [Polyline(points, item.role)]
    zero = chart.zero
    area = np.concatenate([[(points[0, 0], zero)], points, [(points[-1, 0], zero)]])
    return [Polygon(area, "stretched_area"), Polyline(points, item.role)]


def _capacity(chart: Chart, lines, view: View) -> list:
    shapes = [Polyline(points, "capacity") for points in lines]
    words = _("yields at {stress}").format(stress=shown(chart.strength, "stress", view.system))
    y = chart.top - 4  # above everything that is drawn: nothing runs through the words
    return [*shapes, Text(chart.along.right - 6, y, words, "note", "end")]


def _worth_showing(item: FaceLine) -> bool:
    # bars that are never pulled hard need no line for what they could bear
    return item.main or float(item.stress.max()) > 20.0


def _key(faces, frame: Frame) -> list:
    """Names of the lines, at the right end of the heading."""
    shapes, right = [], frame.right - 8
    y = frame.top + 17
    for item in reversed(faces):
        shapes.append(Text(right, y, item.label, "note", "end"))
        right -= width_of(item.label, "note") + 6
        shapes.append(line(right - 22, y - 4, right, y - 4, item.role))
        right -= 36
    return shapes
