"""A chart over the ages of a slab: the axis is logarithmic, as much happens in the first week
as in the last year.
"""

import math
from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import tick_text, ticks
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygon, Text, line, rectangle
from crackkit.units import inner, number
from crackkit.words import _

FIRST = 1.0  # day
TICKS = (
    (1.0, _("1 d")),
    (7.0, _("1 wk")),
    (30.0, _("1 mo")),
    (100.0, _("100 d")),
    (365.0, _("1 y")),
    (1095.0, _("3 y")),
    (3650.0, _("10 y")),
)


@dataclass(frozen=True)
class AgeChart:
    """The way from (age, value) to the drawing; ages up to `last`, values from `low` to `high`."""

    left: float
    right: float
    top: float
    bottom: float
    low: float
    high: float
    last: float

    def x(self, age):
        """Place of an age [days]."""
        share = np.log10(np.clip(age, FIRST, self.last)) / math.log10(self.last)
        return self.left + share * (self.right - self.left)

    def y(self, value):
        """Height of a value; beyond the chart it stays at the edge."""
        share = (np.asarray(value) - self.low) / (self.high - self.low)
        return self.bottom - np.clip(share, 0, 1) * (self.bottom - self.top)

    def points(self, ages, values) -> np.ndarray:
        """Points of a line."""
        return np.column_stack([self.x(np.asarray(ages)), self.y(values)])

    def card(self) -> Polygon:
        """The ground of the chart."""
        wide, tall = self.right - self.left, self.bottom - self.top
        return rectangle(self.left, self.top, wide, tall, "card")

    def grid(self, quantity: str, view: View, most: int) -> list:
        """Numbers at the left side, with lines across."""
        ends = (number(v, quantity, view.system) for v in (self.low, self.high))
        values = ticks(*ends, most)
        inside = np.array([inner(float(v), quantity, view.system) for v in values])
        return self.across(inside, values)

    def across(self, values: np.ndarray, named) -> list:
        """Lines across at some values, and their names at the left side."""
        heights = self.y(values)
        rows = np.empty((heights.size, 2, 2))
        rows[:, 0, 0], rows[:, 1, 0], rows[..., 1] = self.left, self.right, heights[:, None]
        texts = [
            Text(self.left - 8, y + 4, tick_text(v), "tick", "end")
            for v, y in zip(named, heights.tolist(), strict=True)
        ]
        return [Lines(rows, "grid"), *texts]

    def foot(self) -> list:
        """Ages below the chart, those for which there is room."""
        ends, shapes = -np.inf, []
        for age, words in (tick for tick in TICKS if tick[0] <= self.last):
            x, half = float(self.x(age)), width_of(words, "tick") / 2
            shapes.append(line(x, self.bottom, x, self.bottom + 5, "axis"))
            if x - half >= ends + 3.0:
                shapes.append(Text(x, self.bottom + 18, words, "tick", "middle"))
                ends = x + half
        return [line(self.left, self.bottom, self.right, self.bottom, "axis"), *shapes]
