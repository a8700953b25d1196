"""How hard a slab is stretched at a corner: means over a length, which no finer mesh changes.

The tension at a sharp corner grows without bound as the mesh gets finer, so the peak says more of
the mesh than of the slab. Its mean over a length that belongs to the material
(`fracture_energy.averaging_length`) is a number of the slab. The triangles at the corner itself
are too coarse for stress that steep; over the first two rings of them the exact power of the
corner (`williams.opening_exponent`) takes their place.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_elements import shape_slopes, shapes
from crackkit.mechanics.plane_sampling import located
from crackkit.mechanics.plane_solution import principal
from crackkit.mechanics.williams import opening_exponent
from crackkit.words import _

_RINGS, _HEAD, _STEP = 2.0, 2.0, 1.6
_PLACES, _WEIGHTS = np.polynomial.legendre.leggauss(3)
_NEAR, _SMOOTH = 1e-6, 0.97
_CORNERS = shape_slopes(np.eye(3))


@dataclass(frozen=True)
class Corner:
    """What the body is like round one point of its rim.

    Parameters
    ----------
    angle : float
        Solid angle of the body [rad]; pi on a smooth rim, 2 pi inside.
    middle : float
        Direction of the middle line of the body, turned from the x axis [rad].
    ring : float
        Longest side of the triangles that meet there [mm].
    """

    angle: float
    middle: float
    ring: float

    @property
    def exponent(self):
        """Exponent lam of the movement near it [-]; 1 where the stress is bounded."""
        is_inside_corner = np.pi < self.angle <= 2 * np.pi * (1 - _NEAR)
        return opening_exponent(self.angle) if is_inside_corner else 1.0


def corner_at(mesh, place):
    """Look at the body round one point.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles. A mesh that is split for a crack counts as whole.
    place : array_like
        The point [mm], two numbers: a corner of triangles.

    Returns
    -------
    Corner
        Angle [rad], middle line [rad] and size of the triangles [mm].

    Raises
    ------
    ValueError
        If no triangle has a corner there.
    """
    corners = mesh.points[mesh.triangles]
    size = np.ptp(mesh.points, axis=0).max()
    which, node = np.nonzero(abs(corners[:, :3] - place).max(axis=-1) < _NEAR * size)
    if not len(which):
        raise ValueError(_("No triangle of the mesh has a corner at that point."))
    starts, turns = _wedges(corners[which], node)
    ring = np.hypot(*(corners[which, :3] - np.asarray(place)[None, None]).reshape(-1, 2).T).max()
    first, total = _gap(starts, turns)
    return Corner(total, first + 0.5 * total, ring)


def _wedges(corners, node):
    """Direction in which each triangle starts round its corner, and the angle it fills."""
    slopes = _CORNERS[node] @ corners
    # Along the shares of the second and third corner; the first is what both run away from.
    one, two = slopes[:, 0], slopes[:, 1]
    ways = np.stack(
        [np.stack([one, two]), np.stack([two - one, -one]), np.stack([-two, one - two])]
    )
    a, b = ways[node, :, np.arange(len(node))].transpose(1, 0, 2)
    start = np.arctan2(a[:, 1], a[:, 0])
    return start, np.arctan2(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0], (a * b).sum(axis=1))


def _gap(starts, turns):
    """Where the body begins round the point, counter-clockwise, and the angle that it fills."""
    order = np.argsort(starts)
    starts, turns = starts[order], turns[order]
    after = np.roll(starts, -1) + 2 * np.pi * (np.arange(len(starts)) == len(starts) - 1)
    widest = np.argmax(after - starts - turns)
    return after[widest] % (2 * np.pi), turns.sum()


@dataclass(frozen=True, eq=False)
class CornerPath:
    """A straight line from a point into the body, over which means are taken.

    Parameters
    ----------
    direction : float
        Its direction, turned from the x axis [rad].
    length : float
        Its length [mm].
    nodes : numpy.ndarray of int
        Nodes of the triangle of each place on it [-], shape (p, 6).
    shares : numpy.ndarray
        Share of each of them [-], shape (p, 6).
    weights : numpy.ndarray
        Share of each place in the mean [-], shape (p,); together 1 for an even stress, and more
        for the places next to a sharp corner, for what lies between them and the corner.
    """

    direction: float
    length: float
    nodes: np.ndarray
    shares: np.ndarray
    weights: np.ndarray

    def stress(self, state):
        """Stress at the places on the line.

        Parameters
        ----------
        state : PlaneState
            Stresses at the nodes [MPa].

        Returns
        -------
        numpy.ndarray
            Stress along x, along y and shear [MPa], shape (p, 3).
        """
        return (self.shares[:, None] @ state.stress[self.nodes])[:, 0]

    def principal_mean(self, state):
        """Mean of the greatest principal stress over the line.

        Parameters
        ----------
        state : PlaneState
            Stresses at the nodes [MPa].

        Returns
        -------
        float
            Mean tension [MPa].
        """
        return float(self.weights @ principal(self.stress(state))[0])

    def opening_mean(self, state):
        """Mean of the stress across the line: what would open a crack along it.

        Parameters
        ----------
        state : PlaneState
            Stresses at the nodes [MPa].

        Returns
        -------
        float
            Mean stress [MPa], tension positive.
        """
        x, y = -np.sin(self.direction), np.cos(self.direction)
        return float(self.weights @ self.stress(state) @ [x * x, y * y, 2 * x * y])


def corner_path(mesh, place, length, direction=None):
    """Lay a line from a corner into the body.

    Keep it for all loads of one mesh: the mean is then a matter of microseconds.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles; beside the corner a tenth of `length` in size or smaller.
    place : array_like
        Where the line starts [mm], two numbers: a corner of triangles.
    length : float
        Length of the line [mm], above 0.
    direction : float, optional
        Its direction, turned from the x axis [rad]; the middle line of the body if left out.

    Returns
    -------
    CornerPath
        Places on the line and their shares [-].

    Raises
    ------
    ValueError
        If no triangle has a corner there, if the triangles are too large for the length, or if
        the line leaves the body.
    """
    return corner_paths(mesh, place, [length], direction)[0]


def corner_paths(mesh, place, lengths, direction=None):
    """Lay lines of several lengths from a corner, all the same way.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles; beside the corner a tenth of the least length in size or smaller.
    place : array_like
        Where the lines start [mm], two numbers: a corner of triangles.
    lengths : sequence of float
        Lengths of the lines [mm], above 0.
    direction : float, optional
        Their direction, turned from the x axis [rad]; the middle line of the body if left out.

    Returns
    -------
    list of CornerPath
        One for each length.

    Raises
    ------
    ValueError
        As `corner_path`.
    """
    corner = corner_at(mesh, place)
    way = corner.middle if direction is None else direction
    return _paths(mesh, place, corner, [(length, way) for length in lengths])


def _paths(mesh, place, corner, lines):
    """Lines of some length and way each from one corner; all their triangles are found at once."""
    first = _RINGS * corner.ring
    if not min(length for length, _way in lines) >= _HEAD * first:
        raise ValueError(_("The triangles at the corner are too large for so short a line."))
    lengths = {length for length, _way in lines}
    graded = {length: _graded_places(first, length, corner.exponent) for length in lengths}
    rays = [np.outer(graded[length][0], [np.cos(way), np.sin(way)]) for length, way in lines]
    which, shares = located(mesh, np.asarray(place) + np.concatenate(rays))
    if (which < 0).any():
        raise ValueError(_("The line leaves the body."))
    ends = np.cumsum([len(ray) for ray in rays])[:-1]
    nodes, shares = (np.split(each, ends) for each in (mesh.triangles[which], shapes(shares)))
    return [
        CornerPath(float(way), length, nodes[k], shares[k], graded[length][1])
        for k, (length, way) in enumerate(lines)
    ]


def _graded_places(first, length, exponent):
    """Gauss places on growing pieces of the line, and their shares in the mean.

    At a sharp corner the places begin at `first`. What lies before it follows from the piece that
    comes next, where the stress goes as r to the power of lam - 1: the integral over 0 to a is to
    that over a to c as a^lam to c^lam - a^lam.
    """
    head, is_sharp = _HEAD * first, exponent < _SMOOTH
    count = int(np.ceil(np.log(length / head) / np.log(_STEP)))
    ends = np.r_[first if is_sharp else 0.0, np.geomspace(head, length, count + 1)]
    half = 0.5 * np.diff(ends)
    r = (ends[:-1] + half)[:, None] + half[:, None] * _PLACES
    weights = half[:, None] * _WEIGHTS / length
    if is_sharp:
        weights[0] *= 1.0 + 1.0 / (_HEAD**exponent - 1.0)
    return r.ravel(), weights.ravel()


def opening_direction(mesh, state, place, length, spread=np.pi / 3, count=25):
    """Direction from a corner in which the mean stress across the line is greatest.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles.
    state : PlaneState
        Stresses at the nodes [MPa].
    place : array_like
        The corner [mm], two numbers.
    length : float
        Length of the lines [mm], above 0.
    spread : float
        How far to look on both sides of the middle line [rad].
    count : int
        Number of directions that are tried [-], 3 or more; between them a parabola is laid.

    Returns
    -------
    float
        Direction, turned from the x axis [rad].

    Raises
    ------
    ValueError
        As `corner_path`.
    """
    corner = corner_at(mesh, place)
    ways = corner.middle + np.linspace(-spread, spread, count)
    paths = _paths(mesh, place, corner, [(length, way) for way in ways])
    means = [path.opening_mean(state) for path in paths]
    k = int(np.clip(np.argmax(means), 1, count - 2))
    low, top, high = means[k - 1 : k + 2]
    bend = low - 2 * top + high
    shift = np.clip(0.5 * (low - high) / bend, -1.0, 1.0) if bend < 0 else np.sign(high - low)
    return float(ways[k] + shift * (ways[1] - ways[0]))
