"""A chart along a strip: values over its length, with numbers in the reader's units."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import bottom_axis, tick_text, ticks
from crackkit.drawing.frames import Along, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygon, Text, line
from crackkit.drawing.thinning import thinned
from crackkit.units import inner, number, unit

SMALL = 0.02  # share of the height that is not worth room below nothing


@dataclass(frozen=True)
class AlongChart:
    """The way from values between `low` and `high` to heights between `bottom` and `top`."""

    along: Along
    top: float
    bottom: float
    low: float
    high: float

    def __call__(self, value):
        """Height of a value, or of many; beyond the chart it stays at the edge."""
        share = (np.asarray(value) - self.low) / (self.high - self.low)
        return self.bottom - np.clip(share, 0.0, 1.0) * (self.bottom - self.top)

    @property
    def zero(self) -> float:
        """Height of nothing."""
        return float(self(0.0))

    def lines(self, x: np.ndarray, values) -> list[np.ndarray]:
        """Points of lines of values at the same stations [mm], those that can be seen."""
        return thinned(self.along(x), self(np.array(values)))

    def between(self, upper: np.ndarray, lower: np.ndarray, role: str) -> Polygon:
        """Fill between two lines of points."""
        return Polygon(np.concatenate([upper, lower[::-1]]), role)

    def over_zero(self, points: np.ndarray, role: str) -> Polygon:
        """Fill between a line of points and nothing."""
        ends = [(points[-1, 0], self.zero), (points[0, 0], self.zero)]
        return Polygon(np.concatenate([points, ends]), role)

    def grid(self, quantity: str, view: View, most: int) -> list:
        """Numbers at the left side, with lines across; their unit stands above."""
        system = view.system
        ends = (number(v, quantity, system) for v in (self.low, self.high))
        values = ticks(*ends, most)
        heights = self(np.array([inner(float(v), quantity, system) for v in values]))
        left, right = self.along.left, self.along.right
        rows = np.empty((heights.size, 2, 2))
        rows[:, 0, 0], rows[:, 1, 0], rows[..., 1] = left, right, heights[:, None]
        shapes = [Lines(rows, "grid"), line(left, self.zero, right, self.zero, "axis")]
        for v, y in zip(values.tolist(), heights.tolist(), strict=True):
            shapes.append(Text(left - 7, y + 4, tick_text(v), "tick", "end"))
        y = min(self.top, float(heights.min()) - 6.0) - 5.0
        return [*shapes, Text(left - 7, y, unit(quantity, system), "tick", "end")]

    def foot(self, view: View) -> list:
        """Places along the strip below the chart."""
        system = view.system
        values = ticks(0.0, number(self.along.length, "length", system), 8)
        at = np.array([inner(float(v), "length", system) for v in values])
        return bottom_axis(
            values, self.along(at), self.bottom, unit("length", system), self.along.right
        )


def low_end(stress: np.ndarray, high: float) -> float:
    """Low end of a chart of stresses up to `high`: nothing, or below it where there is pressure."""
    low = min(float(stress.min()), 0.0)
    return 0.0 if low > -SMALL * high else 1.1 * low


def line_key(entries, x: float, y: float) -> tuple[list, float]:
    """Name lines in a row from the left, and tell where the row ends.

    Parameters
    ----------
    entries : sequence of (str, str)
        Words and role of each line.
    x, y : float
        Left end and baseline of the row [drawing units].
    """
    shapes = []
    for words, role in entries:
        shapes += [line(x, y - 4, x + 22, y - 4, role), Text(x + 28, y, words, "note")]
        x += 28 + width_of(words, "note") + 20
    return shapes, x
