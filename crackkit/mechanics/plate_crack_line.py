"""The line along which a plate breaks: from the place that is pulled hardest, across the pull.

A crack opens across the largest principal tension, so its line follows the other principal
direction. It meets a free edge at a right angle, for along a free edge the pull runs along it.
Where it comes to itself it ends as at an edge: a crack does not cross a crack.
"""

import math

import numpy as np

_TURN = 6  # steps after which a line may have come back to where it was
_NEAR = 0.5  # thicknesses: closer to an edge than this the line goes straight to it


def crack_line(x, y, direction, start, thickness, step=60.0, most=300):
    """Line of a crack from edge to edge.

    Parameters
    ----------
    x, y : numpy.ndarray
        Lines of the grid along and across [mm], growing evenly.
    direction : numpy.ndarray
        Way of the largest principal tension, from the length towards the width [rad], rows
        across, columns along.
    start : tuple of float
        Where the crack begins (x, y) [mm].
    thickness : float
        Thickness of the plate [mm], above 0.
    step : float
        Length of one step along the line [mm], above 0.
    most : int
        Steps after which a line that comes to no edge ends [-].

    Returns
    -------
    numpy.ndarray, shape (points, 2)
        Points (x, y) of the line [mm]; its ends lie on edges or on the line itself.
    """
    field = _Field(x, y, np.cos(2 * direction), np.sin(2 * direction))
    first = field.across(*start)
    one = _half(field, start, first, thickness, step, most)
    if one[-1] == tuple(start):  # round a wheel
        return np.array([start, *one])
    other = _half(field, start, (-first[0], -first[1]), thickness, step, most)
    one, other = (_until_it_meets_itself([start, *half], step) for half in (one, other))
    return np.array([*reversed(one), *other[1:]])


class _Field:
    """Directions between the grid points; the double angle has no jump where the angle has."""

    def __init__(self, x, y, cosine, sine):
        self.x0, self.y0, self.x1, self.y1 = (float(v) for v in (x[0], y[0], x[-1], y[-1]))
        self.dx, self.dy = float(x[1] - x[0]), float(y[1] - y[0])
        self.columns, self.rows = len(x), len(y)
        self.cosine, self.sine = cosine.tolist(), sine.tolist()

    def across(self, x, y):
        """Unit vector across the largest tension."""
        u = min(max((x - self.x0) / self.dx, 0.0), self.columns - 1.000001)
        v = min(max((y - self.y0) / self.dy, 0.0), self.rows - 1.000001)
        i, j = int(u), int(v)
        u, v = u - i, v - j
        angle = math.atan2(_mixed(self.sine, i, j, u, v), _mixed(self.cosine, i, j, u, v)) / 2
        return -math.sin(angle), math.cos(angle)

    def edge(self, x, y):
        """Distance to the nearest edge [mm], and the point of it."""
        ends = (
            (x - self.x0, (self.x0, y)),
            (self.x1 - x, (self.x1, y)),
            (y - self.y0, (x, self.y0)),
            (self.y1 - y, (x, self.y1)),
        )
        return min(ends)


def _mixed(values, i, j, u, v):
    low, high = values[j], values[j + 1]
    return (1 - v) * ((1 - u) * low[i] + u * low[i + 1]) + v * ((1 - u) * high[i] + u * high[i + 1])


def _half(field, start, way, thickness, step, most):
    """Points from the start to an edge, the start left out."""
    points, (x, y) = [], start
    left = field.edge(x, y)[0] > _NEAR * thickness  # one that begins at an edge may leave it
    for _count in range(most):
        middle = _along(field.across(x + way[0] * step / 2, y + way[1] * step / 2), way)
        x, y, way = x + middle[0] * step, y + middle[1] * step, middle
        if len(points) > _TURN and math.hypot(x - start[0], y - start[1]) < step:
            return [*points, tuple(start)]
        away, foot = field.edge(x, y)
        if away <= 0 or (left and away <= _NEAR * thickness):
            return [*points, foot]
        left = left or away > _NEAR * thickness
        points.append((x, y))
    return points


def _until_it_meets_itself(points, step):
    """Points up to the first that is no step away from where the line was before, and that place.

    Points of one and the same turn do not count.
    """
    x, y = np.array(points).T
    close = np.hypot(x[:, None] - x, y[:, None] - y) < step
    again, before = np.nonzero(np.tril(close, -_TURN - 1))
    if not again.size:
        return points
    return [*points[: again[0]], points[before[0]]]


def _along(vector, way):
    """The vector or its opposite, whichever goes on the way."""
    forth = vector[0] * way[0] + vector[1] * way[1] >= 0
    return vector if forth else (-vector[0], -vector[1])
