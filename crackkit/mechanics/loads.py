"""What a beam carries: point loads and line loads, downward positive."""

from dataclasses import dataclass
from math import isfinite

import numpy as np

from crackkit.words import _


@dataclass(frozen=True)
class PointLoad:
    """A force at one place.

    Parameters
    ----------
    force : float
        The force, downward positive [N].
    at : float
        Distance from the left end of the beam [mm].

    Raises
    ------
    ValueError
        If a number is not finite.
    """

    force: float
    at: float

    def __post_init__(self):
        if not (isfinite(self.force) and isfinite(self.at)):
            raise ValueError(_("The size and the place of a point load must be numbers."))


@dataclass(frozen=True)
class LineLoad:
    """A load spread along the beam, straight from one intensity to another.

    Parameters
    ----------
    start : float
        Where the load begins, from the left end of the beam [mm].
    end : float
        Where the load ends, right of the start [mm].
    left : float
        Intensity at the start, downward positive [N/mm].
    right : float, optional
        Intensity at the end [N/mm]; the same as at the start when left out.

    Raises
    ------
    ValueError
        If the end is not right of the start or a number is not finite.
    """

    start: float
    end: float
    left: float
    right: float | None = None

    def __post_init__(self):
        if self.right is None:
            object.__setattr__(self, "right", self.left)
        if not all(map(isfinite, (self.start, self.end, self.left, self.right))):
            raise ValueError(_("The size and the place of a line load must be numbers."))
        if self.end <= self.start:
            raise ValueError(_("A line load must end to the right of where it starts."))


def sorted_loads(length: float, loads) -> tuple[list[PointLoad], list[LineLoad]]:
    """Point loads and line loads apart, once all are known to stand on the beam.

    Parameters
    ----------
    length : float
        Length of the beam [mm].
    loads : iterable of PointLoad or LineLoad
        The loads in any order.

    Returns
    -------
    points, lines : list
        The point loads and the line loads.

    Raises
    ------
    ValueError
        If a load lies, even partly, outside the beam.
    TypeError
        If something is neither a point load nor a line load.
    """
    points, lines = [], []
    for load in loads:
        if isinstance(load, PointLoad):
            inside = 0.0 <= load.at <= length
            points.append(load)
        elif isinstance(load, LineLoad):
            inside = load.start >= 0.0 and load.end <= length
            lines.append(load)
        else:
            raise TypeError(_("A load is a PointLoad or a LineLoad, not {!r}.").format(load))
        if not inside:
            raise ValueError(_("A load lies outside the beam: {}.").format(load))
    return points, lines


def point_forces(nodes, points) -> np.ndarray:
    """Sum of the point loads at each node.

    Parameters
    ----------
    nodes : ndarray
        Increasing places on the beam that contain the place of every point load [mm].
    points : sequence of PointLoad
        The point loads.

    Returns
    -------
    ndarray
        Force at each node, downward positive [N].
    """
    forces = np.zeros(len(nodes))
    if points:
        place = nodes.searchsorted([p.at for p in points])
        np.add.at(forces, place, [p.force for p in points])
    return forces


def line_intensities(nodes, lines) -> tuple[np.ndarray, np.ndarray]:
    """Line load on each piece between two nodes: intensity at its left end, and its slope.

    Parameters
    ----------
    nodes : ndarray
        Increasing places on the beam that contain the ends of every line load [mm].
    lines : sequence of LineLoad
        The line loads; where they overlap they add up.

    Returns
    -------
    intensity : ndarray
        Intensity at the left end of each piece, downward positive [N/mm].
    slope : ndarray
        Change of the intensity along each piece [N/mm2].
    """
    piece = nodes[:-1]
    if not lines:
        return np.zeros(piece.size), np.zeros(piece.size)
    table = np.array([(load.start, load.end, load.left, load.right) for load in lines])
    start, end, left, right = table.T[:, :, None]
    k = (right - left) / (end - start)
    covered = (piece >= start) & (piece < end)
    return (covered * (left + k * (piece - start))).sum(axis=0), (covered * k).sum(axis=0)
