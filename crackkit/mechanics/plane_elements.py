"""Triangles with six nodes for a slab that is pulled in its own plane (plane stress).

All triangles are worked out at once. The strains are those at three points inside of each
triangle, where such triangles are most exact; what a picture needs at the nodes follows from them.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.words import _

_PLACES = np.array([[4.0, 1.0, 1.0], [1.0, 4.0, 1.0], [1.0, 1.0, 4.0]]) / 6.0
_NODES = np.array(
    [[1, 0, 0], [0, 1, 0], [0, 0, 1], [0.5, 0.5, 0], [0, 0.5, 0.5], [0.5, 0, 0.5]], dtype=float
)
# A strain that is linear over the triangle, from its three points to its six nodes.
_OUTWARD = _NODES @ np.linalg.inv(_PLACES)


def shapes(places):
    """Shape functions of a triangle with six nodes.

    Parameters
    ----------
    places : array_like
        Shares of the three corners at some points [-], shape (p, 3); each row sums to 1.

    Returns
    -------
    numpy.ndarray
        Share of each node in what is there [-], shape (p, 6).
    """
    a, b, c = np.asarray(places, dtype=float).T
    corners = a * (2 * a - 1), b * (2 * b - 1), c * (2 * c - 1)
    return np.stack([*corners, 4 * a * b, 4 * b * c, 4 * c * a], axis=1)


def shape_slopes(places):
    """Slopes of the shape functions along the shares of the second and the third corner.

    Parameters
    ----------
    places : array_like
        Shares of the three corners at some points [-], shape (p, 3).

    Returns
    -------
    numpy.ndarray
        Slopes [-], shape (p, 2, 6).
    """
    a, b, c = np.asarray(places, dtype=float).T
    z = np.zeros_like(a)
    first = np.stack([4 * a - 1, z, z, 4 * b, z, 4 * c], axis=1)
    second = np.stack([z, 4 * b - 1, z, 4 * a, 4 * c, z], axis=1)
    third = np.stack([z, z, 4 * c - 1, z, 4 * b, 4 * a], axis=1)
    return np.stack([second - first, third - first], axis=1)


_SHAPES, _SLOPES = shapes(_PLACES), shape_slopes(_PLACES)


@dataclass(frozen=True)
class Sheet:
    """What a slab is made of, as far as its own plane is concerned.

    Parameters
    ----------
    modulus : float
        Modulus of the concrete, creep counted in [MPa], above 0.
    poisson : float
        Poisson's ratio [-], 0 up to below 0.5.
    thickness : float
        Thickness [mm], above 0.

    Raises
    ------
    ValueError
        If a number lies outside of its range.
    """

    modulus: float
    poisson: float
    thickness: float

    def __post_init__(self):
        if not (min(self.modulus, self.thickness) > 0 and 0 <= self.poisson < 0.5):
            raise ValueError(
                _("Modulus and thickness are above zero, Poisson's ratio from 0 to below 0.5.")
            )

    @property
    def matrix(self):
        """Stress for each unit of strain along x, along y and in shear [MPa], shape (3, 3)."""
        v = self.poisson
        whole = np.array([[1, v, 0], [v, 1, 0], [0, 0, 0.5 * (1 - v)]])
        return self.modulus / (1 - v * v) * whole


@dataclass(frozen=True, eq=False)
class PlaneElements:
    """The triangles of a mesh, with what strains and forces need to know of them.

    Parameters
    ----------
    points : numpy.ndarray
        Nodes [mm], shape (n, 2).
    triangles : numpy.ndarray of int
        Nodes of each triangle [-], shape (m, 6): corners, counter-clockwise, then the middles of
        the sides 0-1, 1-2 and 2-0.

    Raises
    ------
    ValueError
        If a triangle is turned over or folded.
    """

    points: np.ndarray
    triangles: np.ndarray

    def __post_init__(self):
        if not (self.weights > 0).all():
            raise ValueError(_("A triangle of the mesh is turned over or folded."))

    @cached_property
    def _jacobians(self):
        corners = self.points[self.triangles]
        J = (_SLOPES.reshape(6, 6) @ corners).reshape(-1, 3, 2, 2)
        return J, J[..., 0, 0] * J[..., 1, 1] - J[..., 0, 1] * J[..., 1, 0]

    @cached_property
    def weights(self):
        """Area that each of the three points of a triangle stands for [mm2], shape (m, 3)."""
        return self._jacobians[1] / 6.0

    @cached_property
    def slopes(self):
        """Slopes of the shape functions along x and y [1/mm], shape (m, 3, 2, 6)."""
        J, det = self._jacobians
        inverse = np.empty_like(J)
        inverse[..., 0, 0], inverse[..., 1, 1] = J[..., 1, 1], J[..., 0, 0]
        inverse[..., 0, 1], inverse[..., 1, 0] = -J[..., 0, 1], -J[..., 1, 0]
        inverse /= det[..., None, None]
        return inverse @ _SLOPES

    @cached_property
    def inner_places(self):
        """The three points of each triangle [mm], shape (m, 3, 2)."""
        return _SHAPES @ self.points[self.triangles]

    def stiffness(self, sheet):
        """Stiffness between all nodes.

        Parameters
        ----------
        sheet : Sheet
            What the slab is made of.

        Returns
        -------
        scipy.sparse.csr_array
            Force for each unit of movement [N/mm], shape (2 n, 2 n), in the order x of node 0,
            y of node 0, x of node 1 and so on.
        """
        x, y = self.slopes[:, :, 0], self.slopes[:, :, 1]
        w = sheet.thickness * self.weights[:, :, None]
        wx, wy = (np.ascontiguousarray((w * s).transpose(0, 2, 1)) for s in (x, y))
        xx, xy, yy = wx @ x, wx @ y, wy @ y
        (stretch, cross, _zero), _row, (*_zeros, shear) = sheet.matrix
        yx = xy.transpose(0, 2, 1)
        across = cross * xy + shear * yx
        blocks = np.stack(
            [
                stretch * xx + shear * yy,
                across,
                across.transpose(0, 2, 1),
                stretch * yy + shear * xx,
            ]
        )
        return self._assembled(blocks)

    def grip(self, stiffness):
        """Stiffness of an even bed that holds every place of the slab to where it was.

        Parameters
        ----------
        stiffness : float
            Shear for each unit of movement [N/mm3].

        Returns
        -------
        scipy.sparse.csr_array
            Force for each unit of movement [N/mm], order as in `stiffness`.
        """
        same = (stiffness * self.weights[:, None, :] * _SHAPES.T) @ _SHAPES
        none = np.zeros_like(same)
        return self._assembled(np.stack([same, none, none, same]))

    def _assembled(self, blocks):
        """Sum up (4, m, 6, 6) blocks xx, xy, yx, yy; all four lie in the same places."""
        # Imported here because it would slow the start of a lesson that needs no triangles.
        from scipy.sparse import bsr_array, coo_array

        n = len(self.points)
        at = np.repeat(self.triangles, 6, axis=1).ravel(), np.tile(self.triangles, 6).ravel()
        parts = [coo_array((b.ravel(), at), shape=(n, n)).tocsr() for b in blocks]
        data = np.stack([part.data for part in parts], axis=-1).reshape(-1, 2, 2)
        first = parts[0]
        return bsr_array((data, first.indices, first.indptr), shape=(2 * n, 2 * n)).tocsr()

    def forces(self, stress, thickness):
        """Forces on the nodes that hold a stress in balance.

        Parameters
        ----------
        stress : numpy.ndarray
            Stress along x, along y and shear at the inner points [MPa]; broadcast to (m, 3, 3).
        thickness : float
            Thickness [mm].

        Returns
        -------
        numpy.ndarray
            Forces [N], shape (2 n,).
        """
        w = (thickness * self.weights)[..., None] * stress
        fx = (self.slopes * w[..., [0, 2], None]).sum((1, 2))
        fy = (self.slopes * w[..., [2, 1], None]).sum((1, 2))
        return self._on_nodes(fx, fy)

    def base_forces(self, shear):
        """Forces on the nodes from a shear under the slab.

        Parameters
        ----------
        shear : numpy.ndarray
            Shear along x and y at the inner points [MPa], shape (m, 3, 2).

        Returns
        -------
        numpy.ndarray
            Forces [N], shape (2 n,).
        """
        each = (self.weights[..., None] * shear).transpose(0, 2, 1) @ _SHAPES
        return self._on_nodes(each[:, 0], each[:, 1])

    def _on_nodes(self, fx, fy):
        at, n = self.triangles.ravel(), len(self.points)
        both = [np.bincount(at, f.ravel(), minlength=n) for f in (fx, fy)]
        return np.stack(both, axis=1).ravel()

    def strains(self, movement):
        """Strains at the inner points.

        Parameters
        ----------
        movement : numpy.ndarray
            Movement of the nodes along x and y [mm], shape (n, 2).

        Returns
        -------
        numpy.ndarray
            Strain along x, along y and shear angle [-], shape (m, 3, 3).
        """
        slopes = self.slopes @ movement[self.triangles][:, None]
        shear = slopes[..., 0, 1] + slopes[..., 1, 0]
        return np.stack([slopes[..., 0, 0], slopes[..., 1, 1], shear], axis=-1)

    def inside(self, values):
        """Carry what is known at the nodes to the inner points.

        Parameters
        ----------
        values : numpy.ndarray
            Values at the nodes [any unit], shape (n, c).

        Returns
        -------
        numpy.ndarray
            Values at the inner points [same unit], shape (m, 3, c).
        """
        return _SHAPES @ values[self.triangles]

    def at_corners(self, values):
        """Carry what is known at the inner points to the nodes of each triangle.

        Parameters
        ----------
        values : numpy.ndarray
            Values at the inner points [any unit], shape (m, 3, c).

        Returns
        -------
        numpy.ndarray
            Values at the nodes of each triangle [same unit], shape (m, 6, c): linear in it.
        """
        return _OUTWARD @ values

    def at_nodes(self, values):
        """Mean at each node of what the triangles around it say.

        Parameters
        ----------
        values : numpy.ndarray
            Values at the inner points [any unit], shape (m, 3, c).

        Returns
        -------
        numpy.ndarray
            Values at the nodes [same unit], shape (n, c); triangles count by their area.
        """
        each, at, n = self.at_corners(values), self.triangles.ravel(), len(self.points)
        w = np.repeat(self.weights.sum(axis=1), 6)
        total = np.bincount(at, w, minlength=n)
        columns = [
            np.bincount(at, w * each[..., c].ravel(), minlength=n) for c in range(each.shape[-1])
        ]
        return np.stack(columns, axis=1) / total[:, None]
