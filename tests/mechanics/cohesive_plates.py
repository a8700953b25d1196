"""Plates of our own for the tests of cracks: a grid of quadratic triangles, split along a line.

Nothing here is shared with the code that is tested: the grid, the stiffness and the split are
written anew, and slowly.
"""

from collections import namedtuple
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

_GAUSS = np.array([[1 / 6, 1 / 6], [2 / 3, 1 / 6], [1 / 6, 2 / 3]])  # exact for degree 2
Faces = namedtuple("Faces", "first second along")


@dataclass(frozen=True, eq=False)
class Plate:
    """A plate in plane stress, with or without a line along which it is split."""

    points: np.ndarray
    triangles: np.ndarray
    faces: object
    modulus: float
    poisson: float
    thickness: float
    fixed: np.ndarray  # unknowns that cannot move

    @cached_property
    def free(self):
        return np.setdiff1d(np.arange(self.points.size), self.fixed)

    @cached_property
    def stiffness(self):
        parts, _ = self._parts(0.0)
        rows = np.repeat(self._unknowns, 12, axis=1).ravel()
        columns = np.tile(self._unknowns, (1, 12)).ravel()
        size = self.points.size
        return coo_matrix((parts.ravel(), (rows, columns)), shape=(size, size)).tocsc()

    def shrinkage(self, strain=1.0):
        """Give the load of a shortening alike in all directions."""
        load = np.zeros(self.points.size)
        np.add.at(load, self._unknowns, -self._parts(strain)[1])
        return load

    def solve(self, load):
        u = np.zeros(self.points.size)
        inner = self.stiffness[self.free][:, self.free]
        u[self.free] = spsolve(inner.tocsc(), load[self.free])
        return u

    def pull(self, nodes, direction, stress):
        """Give the load of a stress on a straight side, its nodes in order, middles included."""
        load = np.zeros(self.points.size)
        places = self.points[nodes]
        along = np.linalg.norm(places - places[0], axis=1)
        for a in range(0, len(nodes) - 2, 2):
            length = along[a + 2] - along[a]
            share = np.array([1, 4, 1]) / 6 * length * self.thickness * stress
            np.add.at(load, 2 * np.asarray(nodes[a : a + 3]) + direction, share)
        return load

    @cached_property
    def _unknowns(self):
        return np.stack([2 * self.triangles, 2 * self.triangles + 1], axis=2).reshape(-1, 12)

    def _parts(self, strain):
        e, nu = self.modulus, self.poisson
        d = e / (1 - nu**2) * np.array([[1, nu, 0], [nu, 1, 0], [0, 0, (1 - nu) / 2]])
        k = np.zeros((len(self.triangles), 12, 12))
        f = np.zeros((len(self.triangles), 12))
        for r, s in _GAUSS:
            slopes = _slopes(r, s)
            jacobian = np.einsum("ak,mki->mai", slopes, self.points[self.triangles])
            g = np.linalg.solve(jacobian, np.broadcast_to(slopes, (len(k), 2, 6)))
            b = np.zeros((len(k), 3, 12))
            b[:, 0, 0::2], b[:, 1, 1::2] = g[:, 0], g[:, 1]
            b[:, 2, 0::2], b[:, 2, 1::2] = g[:, 1], g[:, 0]
            weight = np.linalg.det(jacobian) / 6 * self.thickness
            k += np.einsum("m,mai,ab,mbj->mij", weight, b, d, b)
            f += np.einsum("m,mai,ab,b->mi", weight, b, d, strain * np.array([1.0, 1.0, 0.0]))
        return k, f


def _slopes(r, s):
    t = 1 - r - s
    by_r = [1 - 4 * t, 4 * r - 1, 0, 4 * (t - r), 4 * s, -4 * s]
    by_s = [1 - 4 * t, 0, 4 * s - 1, -4 * r, 4 * r, 4 * (t - s)]
    return np.array([by_r, by_s])


def grid(x, y, keep=lambda x, y: True):
    """Give points and triangles of a grid; a cell is kept where `keep` says so of its middle."""
    fine = [np.interp(np.arange(2 * len(v) - 1) / 2, np.arange(len(v)), v) for v in (x, y)]
    number = np.arange(len(fine[0]) * len(fine[1])).reshape(len(fine[0]), len(fine[1]))
    triangles = []
    for i in range(0, 2 * len(x) - 2, 2):
        for j in range(0, 2 * len(y) - 2, 2):
            if keep(fine[0][i + 1], fine[1][j + 1]):
                c = number[i : i + 3, j : j + 3]
                triangles.append([c[0, 0], c[2, 0], c[2, 2], c[1, 0], c[2, 1], c[1, 1]])
                triangles.append([c[0, 0], c[2, 2], c[0, 2], c[1, 1], c[1, 2], c[0, 1]])
    points = np.stack(np.meshgrid(*fine, indexing="ij"), axis=2).reshape(-1, 2)
    used, renamed = np.unique(np.array(triangles), return_inverse=True)
    return points[used], renamed.reshape(-1, 6)


def nodes_on(points, start, end):
    """Give the nodes on a straight line, in order."""
    start, end = np.asarray(start, float), np.asarray(end, float)
    length = np.linalg.norm(end - start)
    way = (end - start) / length
    along = (points - start) @ way
    beside = (points - start) @ np.array([-way[1], way[0]])
    found = np.flatnonzero((abs(beside) < 1e-6) & (along > -1e-6) & (along < length + 1e-6))
    return found[np.argsort(along[found])]


def split(points, triangles, start, end, through=False):
    """Cut a grid open along a straight line from its edge; the tip stays whole unless through."""
    line = nodes_on(points, start, end)
    way = (np.asarray(end, float) - start) / np.linalg.norm(np.asarray(end, float) - start)
    torn = line if through else line[:-1]
    middles = points[triangles[:, :3]].mean(axis=1)
    right = (middles - start) @ np.array([way[1], -way[0]]) > 0
    renamed = np.arange(len(points))
    renamed[torn] = len(points) + np.arange(len(torn))
    triangles = np.where(right[:, None], renamed[triangles], triangles)
    along = (points[line] - start) @ way
    return np.vstack([points, points[torn]]), triangles, Faces(line, renamed[line], along)


def graded(length, finest, ratio, coarsest):
    """Give places from 0 to a length whose steps grow."""
    steps = [finest]
    while sum(steps) < length:
        steps.append(min(steps[-1] * ratio, coarsest))
    return np.concatenate([[0.0], np.cumsum(steps)]) * (length / sum(steps))
