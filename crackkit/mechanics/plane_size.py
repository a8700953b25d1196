"""How large the triangles of a plane mesh are to be, place by place.

Small at the corners that are asked for, along a crack and on arcs; from there the size grows in
proportion to the distance, up to the greatest. Each of these sources is a point, a straight piece
or an arc with a size of its own, and the size anywhere is the least that one of them asks for.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.words import _


@dataclass(frozen=True)
class MeshSize:
    """Sizes of triangles.

    Parameters
    ----------
    smallest : float
        At the corners asked for [mm], above 0.
    largest : float
        Far away [mm], at least the smallest.
    ratio : float
        By which triangles grow from one to the next [-], above 1 up to 2; 1.3 to 1.8 is sensible.
    crack : float
        Along the line of a crack [mm], above 0.
    per_turn : int
        Pieces into which a full circle is cut [-], 12 or more.

    Raises
    ------
    ValueError
        If a number lies outside of its range.
    """

    smallest: float = 20.0
    largest: float = 500.0
    ratio: float = 1.5
    crack: float = 50.0
    per_turn: int = 24

    def __post_init__(self):
        if not (0 < self.smallest <= self.largest and self.crack > 0):
            raise ValueError(_("Triangles need a size above zero."))
        if not (1 < self.ratio <= 2 and self.per_turn >= 12):
            raise ValueError(_("Triangles grow by a ratio above 1 and up to 2."))


@dataclass(frozen=True)
class SizeField:
    """Size of triangles as a function of the place.

    Parameters
    ----------
    largest : float
        Greatest size [mm].
    growth : float
        How much the size grows for each mm of distance from a source [-].
    points : numpy.ndarray
        Sources that are points: x, y and the size there [mm], one row for each.
    lines : numpy.ndarray
        Sources that are straight: x, y of the beginning, x, y of the end, and the size [mm].
    arcs : numpy.ndarray
        Sources that are arcs: x, y of the centre, radius [mm], direction of the middle and half
        the angle [rad], and the size [mm].
    """

    largest: float
    growth: float
    points: np.ndarray
    lines: np.ndarray
    arcs: np.ndarray

    @cached_property
    def count(self):
        """Number of sources [-]."""
        return len(self.points) + len(self.lines) + len(self.arcs)

    def left_of(self, axis):
        """Leave out sources that lie on the right of an axis.

        Parameters
        ----------
        axis : MirrorAxis
            The axis [mm].

        Returns
        -------
        SizeField
            The same on the left of the axis, if the sources are even about it.
        """
        near = -1e-6 * self.largest
        turned = self.arcs[:, 3]
        tops = self.arcs[:, :2] + self.arcs[:, 2:3] * np.stack(
            [np.cos(turned), np.sin(turned)], axis=1
        )
        points = self.points[axis.height(self.points[:, :2]) > near]
        arcs = self.arcs[axis.height(tops) > near]
        return SizeField(self.largest, self.growth, points, self.lines, arcs)

    def each(self, x, y):
        """Size that each source asks for.

        Parameters
        ----------
        x, y : numpy.ndarray
            Places [mm].

        Returns
        -------
        numpy.ndarray
            Sizes [mm], one row for each source: points, straight ones, arcs; the last row is the
            greatest size.
        """
        asked = np.empty((self.count + 1, x.size))
        p, s = len(self.points), len(self.points) + len(self.lines)
        far = np.empty_like(asked[:-1])
        far[:p] = _distance(x, y, *self.points[:, :2].T)
        far[p:s] = distance_to_lines(x, y, self.lines)
        far[s:] = distance_to_arcs(x, y, self.arcs)
        own = np.concatenate([self.points[:, -1], self.lines[:, -1], self.arcs[:, -1]])
        asked[:-1] = grown(own[:, None], far, self.growth)
        asked[-1] = self.largest
        return asked

    def at(self, points):
        """Size at places.

        Parameters
        ----------
        points : numpy.ndarray
            Their x and y [mm], one row for each.

        Returns
        -------
        numpy.ndarray
            Sizes [mm].
        """
        return self.each(points[:, 0], points[:, 1]).min(axis=0)


def grown(own, far, growth):
    """Size at a distance from a source: the source's own for one triangle, then growing.

    Parameters
    ----------
    own : array_like
        Size at the source [mm].
    far : array_like
        Distance from it [mm].
    growth : float
        How much the size grows for each mm beyond the first triangle [-].

    Returns
    -------
    numpy.ndarray
        Size [mm].
    """
    return own + growth * np.maximum(far - own, 0.0)


def size_field(outline, size, corners, crack):
    """Make the field of sizes for an outline.

    Parameters
    ----------
    outline : PlaneOutline
        The body; each of its arcs is a source, as fine as its radius asks [mm].
    size : MeshSize
        Sizes [mm] asked for.
    corners : numpy.ndarray
        Places with the smallest triangles: x and y [mm], one row for each.
    crack : numpy.ndarray
        Corners of the line of the crack: x and y [mm], one row for each; no rows without one.

    Returns
    -------
    SizeField
        Sizes [mm].
    """
    points = [(x, y, size.smallest) for x, y in corners]
    lines = [
        (*a, *b, min(size.crack, size.largest)) for a, b in zip(crack, crack[1:], strict=False)
    ]
    points += [(x, y, min(size.crack, size.largest)) for x, y in crack]
    # A side shorter than the triangles beside it would make them flat.
    short = (side for side in outline.sides if side.length < size.largest)
    points += [(*end, side.length) for side in short for end in (side.start, side.end)]
    arcs = []
    for side in (side for side in outline.sides if side.turn):
        own = min(size.largest, 2.0 * np.pi * side.radius / size.per_turn)
        arcs.append((*side.circle, own))
        points += [(*side.start, own), (*side.end, own)]
    rows = [np.array(each, dtype=float) for each in (points, lines, arcs)]
    shaped = [r.reshape(-1, n) for r, n in zip(rows, (3, 5, 6), strict=True)]
    return SizeField(size.largest, size.ratio - 1.0, *shaped)


def _distance(x, y, x0, y0):
    return np.hypot(x - x0[:, None], y - y0[:, None])


def distance_to_lines(x, y, lines):
    """Distance from straight pieces.

    Parameters
    ----------
    x, y : numpy.ndarray
        Places [mm].
    lines : numpy.ndarray
        x, y of the beginning and x, y of the end of each piece [mm], one row for each.

    Returns
    -------
    numpy.ndarray
        Distances [mm], one row for each piece.
    """
    x0, y0 = lines[:, 0, None], lines[:, 1, None]
    dx, dy = lines[:, 2, None] - x0, lines[:, 3, None] - y0
    part = ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)
    np.clip(part, 0.0, 1.0, out=part)
    return np.hypot(x - x0 - part * dx, y - y0 - part * dy)


def distance_to_arcs(x, y, arcs):
    """Distance from arcs; infinite where an end of the arc would be the nearest point.

    Parameters
    ----------
    x, y : numpy.ndarray
        Places [mm].
    arcs : numpy.ndarray
        x, y of the centre and radius [mm], direction of the middle and half the angle [rad] of
        each arc, one row for each.

    Returns
    -------
    numpy.ndarray
        Distances [mm], one row for each arc.
    """
    x, y = x - arcs[:, 0, None], y - arcs[:, 1, None]
    from_centre = np.hypot(x, y)
    ahead = x * np.cos(arcs[:, 3, None]) + y * np.sin(arcs[:, 3, None])
    beside = ahead < from_centre * np.cos(arcs[:, 4, None])
    return np.where(beside, np.inf, abs(from_centre - arcs[:, 2, None]))
