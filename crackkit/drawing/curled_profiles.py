"""What drying does over the depth of a slab: humidity, shrinkage, stress of its own."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.axes import tick_text, ticks
from crackkit.drawing.choice_chips import chip
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygon, Polyline, Text, line, rectangle
from crackkit.units import inner, number, unit
from crackkit.words import _

HEADROOM = 1.12
PITCH = 7.0  # of the hatch where it is pulled


@dataclass(frozen=True)
class Profile:
    """The way from (value, depth) to the drawing."""

    left: float
    right: float
    top: float
    bottom: float
    low: float
    high: float
    thickness: float

    def x(self, value):
        """Place of a value; beyond the chart it stays at the edge."""
        share = (np.asarray(value) - self.low) / (self.high - self.low)
        return self.left + np.clip(share, 0.0, 1.0) * (self.right - self.left)

    def points(self, values, depth) -> np.ndarray:
        """Points of a line."""
        y = self.top + np.asarray(depth) / self.thickness * (self.bottom - self.top)
        return np.column_stack([self.x(values), y])

    def ground(self, title: str, quantity: str, view: View, most: int) -> list:
        """Card, title with the unit below it, numbers at the foot."""
        tall, system = self.bottom - self.top, view.system
        ends = (number(v, quantity, system) for v in (self.low, self.high))
        values = ticks(*ends, most)
        places = self.x(np.array([inner(float(v), quantity, system) for v in values]))
        rows = np.empty((places.size, 2, 2))
        rows[..., 0] = places[:, None]
        rows[:, 0, 1], rows[:, 1, 1] = self.top, self.bottom
        return [
            Text(self.left, self.top - 21, title, "note"),
            Text(self.left, self.top - 6, unit(quantity, system), "tick"),
            rectangle(self.left, self.top, self.right - self.left, tall, "card"),
            Lines(rows, "grid"),
            *self._numbers(values, places),
        ]

    def _numbers(self, values, places) -> list[Text]:
        """Those for which there is room."""
        shapes, end = [], -np.inf
        for value, x in zip(values.tolist(), places.tolist(), strict=True):
            words = tick_text(value)
            half = width_of(words, "tick") / 2
            if x - half >= end + 4.0:
                shapes.append(Text(x, self.bottom + 15, words, "tick", "middle"))
                end = x + half
        return shapes


def profiles(outcome, places, top: float, bottom: float, view: View) -> list:
    """Draw three charts of the same depth.

    Parameters
    ----------
    outcome : Outcome
    places : sequence of (left, right)
        Where they stand.
    top, bottom : float
        Faces of the slab on the drawing.
    view : View
    """
    found, thick = outcome.curled.dryness, outcome.structure.thickness
    low = min(0.9 * float(found.humidity.min()), 0.9)
    humid = Profile(*places[0], top, bottom, low, 1.0, thick)
    ends = _straight(found)
    least = min(float(found.shrinkage.min()), float(ends.min()), 0.0)
    most = max(float(found.shrinkage.max()), float(ends.max()), 5e-5)
    dry = Profile(*places[1], top, bottom, HEADROOM * least, HEADROOM * most, thick)
    return [
        *_humidity(found, humid, view),
        *_shrinkage(found, dry, ends, view),
        *_stress(outcome, Profile(*places[2], top, bottom, *_bounds(outcome), thick), view),
    ]


def _straight(found) -> np.ndarray:
    """What the top and the bottom would want to shrink if it were a straight line."""
    return found.mean + found.gradient * np.array([0.5, -0.5])


def _bounds(outcome) -> tuple[float, float]:
    found, strength = outcome.curled.dryness, outcome.curled.strength
    low, high = float(found.stress.min()), float(found.stress.max())
    return min(HEADROOM * low, -0.15 * strength), max(HEADROOM * high, 0.5 * strength)


def _humidity(found, chart: Profile, view: View) -> list:
    line_ = chart.points(found.humidity, found.depth)
    return [
        *chart.ground(_("humidity inside"), "ratio", view, 3),
        Polyline(line_, "squeezed_line"),
    ]


def _shrinkage(found, chart: Profile, ends, view: View) -> list:
    straight = chart.points(ends, (0.0, chart.thickness))
    return [
        *chart.ground(_("wants to shrink"), "strain", view, 3),
        Polyline(straight, "second_line"),
        Polyline(chart.points(found.shrinkage, found.depth), "now_line"),
    ]


def _stress(outcome, chart: Profile, view: View) -> list:
    """Stress that balances itself: pull hatched, and a word where the face crazes."""
    found = outcome.curled.dryness
    line_ = chart.points(found.stress, found.depth)
    zero = float(chart.x(0.0))
    pulled = np.column_stack([np.maximum(line_[:, 0], zero), line_[:, 1]])
    pressed = np.column_stack([np.minimum(line_[:, 0], zero), line_[:, 1]])
    ends = np.array([(zero, chart.bottom), (zero, chart.top)])
    shapes = [
        *chart.ground(_("stress of its own"), "strength", view, 3),
        Polygon(np.concatenate([pressed, ends]), "squeezed_area"),
        Polygon(np.concatenate([pulled, ends]), "stretched_area"),
        *_hatch(pulled, zero),
        line(zero, chart.top, zero, chart.bottom, "axis"),
        Polyline(line_, "stretched_line"),
    ]
    if not found.capped:
        return shapes
    words = _("crazes")
    half = width_of(words, "bad_word") / 2
    x = min(max((zero + chart.right) / 2, chart.left + half + 2), chart.right - half - 2)
    return [*shapes, *chip(x, chart.top + 40.0, words, "bad_word")]


def _hatch(pulled: np.ndarray, zero: float) -> list[Lines]:
    """Level strokes from nothing to the line, so that colour is not alone."""
    y = np.arange(pulled[0, 1] + 2.0, pulled[-1, 1], PITCH)
    reach = np.interp(y, pulled[:, 1], pulled[:, 0])
    some = reach > zero + 2.0
    if not some.any():
        return []
    strokes = np.empty((int(some.sum()), 2, 2))
    strokes[:, 0, 0], strokes[:, 1, 0] = zero, reach[some]
    strokes[..., 1] = y[some][:, None]
    return [Lines(strokes, "hatch_faint")]
