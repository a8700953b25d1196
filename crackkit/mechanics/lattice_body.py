"""A lattice that is held and shrinks: springs between points, and between points and what holds.

Between two points acts one spring along the line between them. The sections of the springs make
a lattice of equal triangles as stiff as a sheet of the modulus asked for, with a Poisson's ratio
of one third: no other is to be had where only the distance of neighbours counts (Hrennikoff 1941,
from memory). Uneven triangles are as stiff when pulled both ways at once, and about a twentieth
softer when pulled one way: their points do not move evenly.

Movements are told apart as a free shrinking towards the origin, which stretches nothing, and the
rest: the holds then move away from the origin by as much as the concrete shrinks.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.mechanics.lattice_points import LatticePoints
from crackkit.words import _

_STIFF = 1.5  # section of a bond over its width; then E holds for even pull of any direction
_WAYS = {"x": (1.0, 0.0), "y": (0.0, 1.0)}


@dataclass(frozen=True, eq=False)
class LatticeBody:
    """A lattice with its holds; made by `lattice_body`.

    Parameters
    ----------
    lattice : LatticePoints
        Points and bonds.
    modulus : float
        Modulus E [MPa].
    thickness : float
        Thickness [mm].
    is_held : numpy.ndarray of bool
        Which movements rigid holds stop, shape (2 n,): x of point 0, y of point 0 and so on.
    grips : tuple of numpy.ndarray
        Points that springs of holds grip [-] (g,), their directions [-] (g, 2), and their
        stiffness [N/mm] (g,).
    """

    lattice: LatticePoints
    modulus: float
    thickness: float
    is_held: np.ndarray
    grips: tuple

    @cached_property
    def sections(self):
        """Section of each bond [mm2], shape (b,)."""
        return _STIFF * self.thickness * self.lattice.widths

    @cached_property
    def stiffness(self):
        """Force for each mm of elongation [N/mm], of bonds (b,) and then of grips (g,)."""
        bonds = self.modulus * self.sections / self.lattice.lengths
        return np.concatenate([bonds, self.grips[2]])

    @cached_property
    def rows(self):
        """What elongates by which movement [-], sparse, shape (b + g, 2 n)."""
        from scipy.sparse import csr_array

        bonds, n = self.lattice.bonds, len(self.lattice.points)
        at, way, _k = self.grips
        d = self.lattice.directions
        columns = (2 * bonds[:, :, None] + np.arange(2)).ravel()
        columns = np.concatenate([columns, (2 * at[:, None] + np.arange(2)).ravel()])
        values = np.concatenate([np.concatenate([-d, d], axis=1).ravel(), way.ravel()])
        b = len(bonds)
        starts = np.concatenate([4 * np.arange(b), 4 * b + 2 * np.arange(len(at) + 1)])
        return csr_array((values, columns, starts), shape=(b + len(at), 2 * n))

    @cached_property
    def free(self):
        """Numbers of the movements that no rigid hold stops [-]."""
        return np.flatnonzero(~self.is_held)

    @cached_property
    def free_rows(self):
        """Columns of `rows` of the free movements [-]."""
        return self.rows[:, self.free].tocsr()

    @cached_property
    def given(self):
        """Movement of rigid holds away from the origin for a shrinkage of 1 [mm], shape (2 n,)."""
        return np.where(self.is_held, self.lattice.points.ravel(), 0.0)

    @cached_property
    def pulled(self):
        """Elongations for a shrinkage of 1 while no free point moves [mm], shape (b + g,)."""
        at, way, _k = self.grips
        found = self.rows @ self.given
        found[len(self.lattice.bonds) :] -= (self.lattice.points[at] * way).sum(axis=1)
        return found

    def factor(self, stiffness):
        """Factors of the stiffness of the free movements.

        Parameters
        ----------
        stiffness : numpy.ndarray
            Stiffness of bonds and grips [N/mm], shape (b + g,).

        Returns
        -------
        scipy.sparse.linalg.SuperLU
            What gives movements [mm] from forces [N].
        """
        from scipy.sparse.linalg import splu

        each = self.free_rows
        whole = (each.T @ (each * stiffness[:, None])).tocsc()
        return splu(
            whole,
            permc_spec="MMD_AT_PLUS_A",
            diag_pivot_thresh=0.0,
            options={"SymmetricMode": True},
        )

    def pairs(self, bonds):
        """Forces of 1 N that pull the ends of bonds apart, one pair after the other.

        Parameters
        ----------
        bonds : sequence of int
            Numbers of bonds [-], k of them.

        Returns
        -------
        numpy.ndarray
            On the free ones of the movements [N], shape (f, k).
        """
        at, way = self.lattice.bonds[bonds], self.lattice.directions[bonds]
        n, k = len(self.lattice.points), len(bonds)
        forces = np.zeros((k, n, 2))
        each = np.arange(k)
        forces[each, at[:, 0]], forces[each, at[:, 1]] = -way, way
        return forces.reshape(k, 2 * n)[:, self.free].T

    def rest(self, factor, stiffness):
        """Movements and elongations for a shrinkage of 1, with nothing counted as shrinking.

        Parameters
        ----------
        factor : scipy.sparse.linalg.SuperLU
            Factors that belong to the stiffness.
        stiffness : numpy.ndarray
            Stiffness of bonds and grips [N/mm], shape (b + g,).

        Returns
        -------
        movement : numpy.ndarray
            Of the free ones of the movements [mm].
        elongation : numpy.ndarray
            Of bonds and grips [mm], shape (b + g,).
        """
        movement = factor.solve(-(self.free_rows.T @ (stiffness * self.pulled)))
        return movement, self.pulled + self.free_rows @ movement

    def moved(self, movement):
        """True movement of all points for a shrinkage of 1.

        Parameters
        ----------
        movement : numpy.ndarray
            Of the free ones of the movements, as in `rest` [mm], shape (..., f).

        Returns
        -------
        numpy.ndarray
            x and y [mm], shape (..., n, 2).
        """
        points = self.lattice.points
        whole = np.empty((*movement.shape[:-1], 2 * len(points)))
        whole[...] = self.given
        whole[..., self.free] = movement
        return whole.reshape(*movement.shape[:-1], len(points), 2) - points

    def solved(self, softness=None):
        """Movements and elongations for a shrinkage of 1, worked out from the beginning.

        Parameters
        ----------
        softness : numpy.ndarray, optional
            What is left of the stiffness of each bond [-], shape (b,); all of it if left out.

        Returns
        -------
        movement : numpy.ndarray
            True movement of the points [mm], shape (n, 2).
        elongation : numpy.ndarray
            Of the bonds [mm], shape (b,).
        """
        stiffness = self.stiffness.copy()
        b = len(self.lattice.bonds)
        if softness is not None:
            stiffness[:b] *= softness
        movement, elongation = self.rest(self.factor(stiffness), stiffness)
        return self.moved(movement), elongation[:b]


def lattice_body(lattice, holds, modulus, thickness):
    """Hold a lattice.

    Parameters
    ----------
    lattice : LatticePoints
        Points and bonds.
    holds : sequence of Hold
        What holds which side [mm, MPa]; their own movement does not count.
    modulus : float
        Modulus E [MPa], above 0.
    thickness : float
        Thickness [mm], above 0.

    Returns
    -------
    LatticeBody
        Ready to shrink.

    Raises
    ------
    ValueError
        If modulus or thickness is not above 0, a side is unknown, one that does not run along x or
        y is held rigidly square to itself, or the holds let the lattice move as a whole.
    """
    if not min(modulus, thickness) > 0:
        raise ValueError(_("Modulus and thickness must be greater than zero."))
    is_held = np.zeros((len(lattice.points), 2), dtype=bool)
    at, way, stiff = [], [], []
    for hold in holds:
        nodes, normal, length = _held(lattice, hold)
        if hold.is_rigid:
            is_held[nodes, _axis(normal)] = True
        else:
            at.append(nodes)
            way.append(normal)
            stiff.append(hold.stiffness * length)
    empty = [np.empty(0, dtype=int), np.empty((0, 2)), np.empty(0)]
    grips = tuple(
        np.concatenate([none, *some]) for none, some in zip(empty, (at, way, stiff), strict=True)
    )
    _must_be_held(lattice, is_held, grips)
    return LatticeBody(lattice, modulus, thickness, is_held.ravel(), grips)


def _held(lattice, hold):
    """Points that a hold acts on, its direction at each, and the length each stands for."""
    if not isinstance(hold.where, str):
        nodes = np.atleast_1d(hold.where)
        return nodes, np.tile(_WAYS[hold.direction], (len(nodes), 1)), np.ones(len(nodes))
    if hold.where not in lattice.sides:
        raise ValueError(_("The slab has no side named {!r}.").format(hold.where))
    nodes = lattice.sides[hold.where]
    along = np.diff(lattice.points[nodes], axis=0)
    each = 0.5 * np.append(along, [[0.0, 0.0]], axis=0)
    each[1:] += 0.5 * along
    length = np.hypot(*each.T)
    way = np.stack([each[:, 1], -each[:, 0]], axis=1) / length[:, None]
    if hold.direction in _WAYS:
        way = np.tile(_WAYS[hold.direction], (len(nodes), 1))
    return nodes, way, length


def _axis(way):
    axis = int(np.argmax(abs(way[0])))
    if abs(abs(way) - np.eye(2)[axis]).max() > 1e-9:
        raise ValueError(_("Only a side along x or y can be held rigidly square to itself."))
    return axis


def _must_be_held(lattice, is_held, grips):
    """Refuse holds that some way and turn of the whole lattice would not stretch."""
    nodes, axes = np.nonzero(is_held)
    gripped = grips[2] > 0
    at = np.concatenate([nodes, grips[0][gripped]])
    way = np.concatenate([np.eye(2)[axes], grips[1][gripped]])
    arm = lattice.points[at] - lattice.points.mean(axis=0)
    turn = (way[:, 1] * arm[:, 0] - way[:, 0] * arm[:, 1]) / np.ptp(lattice.points, axis=0).max()
    if np.linalg.matrix_rank(np.column_stack([way, turn]), tol=1e-6) < 3:
        raise ValueError(_("The holds let the slab move as a whole."))
