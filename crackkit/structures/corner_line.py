"""The line along which a crack from an inside corner runs: square to the largest tension.

Close to a sharp corner the field says little; there the line goes straight on in the way in which
the mean tension across it is greatest.
"""

import math
from functools import lru_cache

import numpy as np

from crackkit.structures.corner_field import Pulled, plan_grid, pulled_corners
from crackkit.structures.corner_restraint import Restraint, typical
from crackkit.structures.corner_shapes import Form, outline, polygons

STRAIGHT = 120.0  # mm from the corner, trusted to the first way
STEP = 60.0  # mm
SHARPEST = 0.12  # rad, largest turn of a step
ASIDE = math.pi / 4  # rad: what lies farther from its way does not lead a crack aside
PLAIN = 0.5  # share by which one tension must outdo the other to lead a crack
NEAR = 90.0  # mm: closer to a side than this the line goes straight to it
FLAT = 12.0  # mm: no closer than this is the line known; fewer bends ask for fewer triangles
AHEAD = 500.0  # mm
LONGEST = 0.8  # of length and width together
LOW = 0.02  # of the tension at its start: where less is left the line ends


@lru_cache(maxsize=64)
def crack_line_of(of: Form, by: Restraint, which: int) -> np.ndarray:
    """Line of the crack from one of the `pulled_corners`, shape (points, 2) [mm]."""
    corner = pulled_corners(of, by)[which]
    field = _Field(of, by)
    return _thinned(np.array(_traced(of, field, corner)))


class _Field:
    """Stress between the points of the grid."""

    def __init__(self, of: Form, by: Restraint):
        grid = plan_grid(of)
        stress = grid.carried(typical(of, by).stress)[grid.nearest]
        self.values = stress
        self.step = float(grid.x[1] - grid.x[0]), float(grid.y[1] - grid.y[0])
        self.most = len(grid.x) - 1.000001, len(grid.y) - 1.000001

    def tension(self, x: float, y: float) -> tuple[float, float, float]:
        """Largest tension [MPa], how much it outdoes the other [-], way of a crack there [rad]."""
        u = min(max(x / self.step[0], 0.0), self.most[0])
        v = min(max(y / self.step[1], 0.0), self.most[1])
        i, j = int(u), int(v)
        u, v = u - i, v - j
        low, high = self.values[j, i : i + 2], self.values[j + 1, i : i + 2]
        low, high = ((1 - u) * row[0] + u * row[1] for row in (low, high))
        sx, sy, shear = ((1 - v) * low + v * high).tolist()
        half = 0.5 * (sx - sy)
        spread = math.hypot(half, shear)
        s1 = 0.5 * (sx + sy) + spread
        ahead = 2.0 * spread / s1 if s1 > 0 else 0.0
        return s1, ahead, 0.5 * math.atan2(shear, half) + 0.5 * math.pi


def _traced(of: Form, field: _Field, corner: Pulled) -> list[tuple[float, float]]:
    """Places along the line, from the corner on.

    Where tension ends the line ends too, unless a side lies straight ahead: a crack that has come
    so far goes through, for it shifts the tension before it.
    """
    (x, y), way, rim = corner.at, corner.direction, _Rim(of)
    points, first, ended = [(x, y)], None, None
    for step in range(int(LONGEST * (of.length + of.width) / STEP)):
        if ended is None and step * STEP >= STRAIGHT:
            way = _turned(field, x, y, way)
        x, y = x + STEP * math.cos(way), y + STEP * math.sin(way)
        foot, far, inside = rim.nearest(x, y)
        if not inside or (far <= NEAR and step * STEP > 2 * NEAR):
            return [*points, rim.foot(foot)]
        points.append((x, y))
        tension = field.tension(x, y)[0]
        first = tension if first is None else first
        if ended is None and step * STEP > STRAIGHT and tension <= LOW * abs(first):
            ended = len(points)
        if ended is not None and (len(points) - ended) * STEP > AHEAD:
            return points[:ended]
    return points


def _turned(field: _Field, x: float, y: float, way: float) -> float:
    """Way of the next step, from the field half a step ahead; it never turns sharply.

    Where it is pulled alike in all ways no way is better than another, and the crack goes
    straight on; so it does where the two ways of the field change places.
    """
    middle = x + 0.5 * STEP * math.cos(way), y + 0.5 * STEP * math.sin(way)
    _s1, ahead, across = field.tension(*middle)
    turn = (across - way + 0.5 * math.pi) % math.pi - 0.5 * math.pi
    turn *= min(ahead / PLAIN, 1.0) if abs(turn) < ASIDE else 0.0
    return way + min(max(turn, -SHARPEST), SHARPEST)


class _Rim:
    """The sides of a plan as short straight ones."""

    def __init__(self, of: Form):
        self.sides = outline(of).sides
        loops = [loop @ np.array([1.0, 1j]) for loop in polygons(of)]
        self.starts = np.concatenate(loops)
        self.ways = np.concatenate([np.roll(loop, -1) - loop for loop in loops])

    def nearest(self, x: float, y: float) -> tuple[complex, float, bool]:
        """Nearest place on it, its distance [mm], and whether the place lies in concrete."""
        share = np.clip(((complex(x, y) - self.starts) / self.ways).real, 0.0, 1.0)
        gaps = complex(x, y) - self.starts - share * self.ways
        k = int(np.argmin(abs(gaps)))
        foot = self.starts[k] + share[k] * self.ways[k]
        return foot, float(abs(gaps[k])), bool((gaps[k] / self.ways[k]).imag >= 0.0)

    def foot(self, place: complex) -> tuple[float, float]:
        """The place put on its side exactly, or on a corner of the outline that is near."""
        ends = [side.start for side in self.sides]
        corner = min(ends, key=lambda end: abs(complex(*end) - place))
        if abs(complex(*corner) - place) < 1.5 * NEAR:
            return corner
        at = (place.real, place.imag)
        shares = [(side, side.share_of(at)) for side in self.sides]
        within = [(far, side, share) for side, (share, far) in shares if 0.0 <= share <= 1.0]
        _far, side, share = min(within, key=lambda each: each[0])
        return tuple(side.points([share])[0].tolist())


def _thinned(points: np.ndarray) -> np.ndarray:
    """The fewest of the points with straight pieces between them that pass all others closely."""
    if len(points) < 3:
        return points
    start, end = points[[0, -1]]
    way = (end - start) / np.hypot(*(end - start))
    aside = abs((points - start) @ np.array([-way[1], way[0]]))
    bend = int(np.argmax(aside))
    if aside[bend] <= FLAT:
        return points[[0, -1]]
    return np.concatenate([_thinned(points[: bend + 1])[:-1], _thinned(points[bend:])])
