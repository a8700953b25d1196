"""A slab that is held, dries and is pulled in its own plane: factorised once, solved many times."""

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from crackkit.mechanics.other_grip import Grip, moves_for_units
from crackkit.mechanics.plane_elements import PlaneElements, Sheet
from crackkit.mechanics.plane_factor import PlaneFactor, plane_factor
from crackkit.mechanics.plane_supports import fixed_movements, springs
from crackkit.mechanics.stress_field import principal_stresses
from crackkit.words import _

_LOOSE = 1e-9


@dataclass(frozen=True, eq=False)
class PlaneBody:
    """A slab with its holds, ready to be solved; made by `plane_body`.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes, triangles, named sides.
    sheet : Sheet
        What the slab is made of.
    elements : PlaneElements
        The triangles.
    stiffness : scipy.sparse.csr_array
        Stiffness with all springs, free of rigid holds [N/mm], shape (2 n, 2 n), in the order x
        of node 0, y of node 0, x of node 1 and so on.
    given : numpy.ndarray
        Movements that rigid holds give [mm], shape (2 n,); not a number where free.
    pushes : numpy.ndarray
        Forces of springs that are moved [N], shape (2 n,).
    factor : PlaneFactor
        Factors of the stiffness, rigid holds counted in [N/mm]; its `condensed` is the stiffness
        as the nodes feel it that were kept for last.
    springs : scipy.sparse.csr_array
        That part of the stiffness that yielding holds give [N/mm], shape (2 n, 2 n).
    """

    mesh: object
    sheet: Sheet
    elements: PlaneElements
    stiffness: object
    given: np.ndarray
    pushes: np.ndarray
    factor: PlaneFactor
    springs: object

    @cached_property
    def is_free(self):
        """Which movements no rigid hold gives, shape (2 n,)."""
        return np.isnan(self.given)

    def solve(self, forces):
        """Movements from forces alone; what rigid holds hold stays where it is.

        Parameters
        ----------
        forces : numpy.ndarray
            Forces [N], shape (2 n,), or (2 n, k) for k loads at once.

        Returns
        -------
        numpy.ndarray
            Movements [mm], shape as of the forces.
        """
        free = self.is_free if forces.ndim == 1 else self.is_free[:, None]
        return self.factor.solve(np.where(free, forces, 0.0))

    @cached_property
    def _grip(self):
        """What the springs do to the slab."""
        at = np.flatnonzero((np.diff(self.springs.indptr) > 0) & self.is_free)
        moves = moves_for_units(self.factor, len(self.given), at)
        return Grip(self.factor, at, self.springs[at][:, at].toarray(), moves[at])

    def held(self, times):
        """The same slab, what holds it yielding more or less; nothing is factorised anew.

        Parameters
        ----------
        times : float
            How many times as stiff as now all springs of its holds are [-], above 0. Rigid holds
            stay as they are.

        Returns
        -------
        PlaneBody
            To be changed no further; its `factor` can only solve [N/mm].
        """
        factor = self._grip.held(times)
        springs = times * self.springs
        stiffness = self.stiffness + (springs - self.springs)
        pushes = times * self.pushes
        return replace(self, stiffness=stiffness, pushes=pushes, factor=factor, springs=springs)

    @cached_property
    def _movement_of_holds(self):
        """Movement that the holds cause when nothing else acts, shape (2 n,)."""
        still = np.where(self.is_free, 0.0, self.given)
        if not (still.any() or self.pushes.any()):
            return still
        return still + self.solve(self.pushes - self.stiffness @ still)

    def shrinkage_forces(self, shortening):
        """Forces on the nodes that stand for a free shortening.

        Parameters
        ----------
        shortening : float or array_like
            Free shortening from drying and cooling [-], positive where the slab wants to grow
            shorter; one for all, one for each triangle (m,), or one for each inner point (m, 3).

        Returns
        -------
        numpy.ndarray
            Forces [N], shape (2 n,).
        """
        stress = -self.sheet.matrix @ _even(shortening, self.elements)[..., None]
        return self.elements.forces(stress[..., 0], self.sheet.thickness)

    def state(self, forces=None, shortening=0.0):
        """Where the slab comes to rest.

        Parameters
        ----------
        forces : numpy.ndarray, optional
            Forces on the nodes [N], shape (2 n,); none if left out.
        shortening : float or array_like
            Free shortening [-], as in `shrinkage_forces`.

        Returns
        -------
        PlaneState
            Movements [mm] and stresses [MPa].
        """
        u = self._movement_of_holds
        if np.any(shortening):
            shrinkage = self.shrinkage_forces(shortening)
            forces = shrinkage if forces is None else forces + shrinkage
        if forces is not None:
            u = u + self.solve(forces)
        return PlaneState(self, u.reshape(-1, 2), shortening)

    def reactions(self, movement, forces=0.0):
        """Forces with which rigid holds act on the slab.

        Parameters
        ----------
        movement : numpy.ndarray
            Movement of the nodes [mm], shape (n, 2).
        forces : numpy.ndarray, optional
            All forces on the nodes besides, those of shrinkage counted in [N], shape (2 n,).

        Returns
        -------
        numpy.ndarray
            Forces [N], shape (n, 2), zero where nothing is held.
        """
        left = self.stiffness @ movement.ravel() - self.pushes - forces
        return np.where(self.is_free, 0.0, left).reshape(-1, 2)


@dataclass(frozen=True, eq=False)
class PlaneState:
    """Movements and stresses of a slab in its own plane.

    Parameters
    ----------
    body : PlaneBody
        The slab and its holds.
    movement : numpy.ndarray
        Movement of the nodes along x and y [mm], shape (n, 2).
    shortening : float or array_like
        Free shortening that is counted in [-].
    """

    body: PlaneBody
    movement: np.ndarray
    shortening: object = 0.0

    @cached_property
    def inner_stress(self):
        """Stress along x, along y and shear at three points of each triangle [MPa], (m, 3, 3)."""
        elements = self.body.elements
        strain = elements.strains(self.movement) + _even(self.shortening, elements)
        return strain @ self.body.sheet.matrix

    @cached_property
    def element_stress(self):
        """The same at the nodes of each triangle, linear in it [MPa], shape (m, 6, 3)."""
        return self.body.elements.at_corners(self.inner_stress)

    @cached_property
    def stress(self):
        """Stress along x, along y and shear at the nodes, averaged [MPa], shape (n, 3)."""
        return self.body.elements.at_nodes(self.inner_stress)

    @cached_property
    def principal(self):
        """Greatest and least principal stress [MPa] and direction of the first, from x towards y
        [rad], at the nodes; see `principal`.
        """
        return principal(self.stress)

    def stress_at(self, places):
        """Stress at any places, between the averaged stresses at the nodes.

        Parameters
        ----------
        places : array_like
            Points [mm], shape (p, 2).

        Returns
        -------
        numpy.ndarray
            Stress along x, along y and shear [MPa], shape (p, 3); not a number outside.
        """
        from crackkit.mechanics.plane_sampling import sampled

        return sampled(self.body.mesh, self.stress, places)

    def movement_at(self, places):
        """Movement at any places.

        Parameters
        ----------
        places : array_like
            Points [mm], shape (p, 2).

        Returns
        -------
        numpy.ndarray
            Movement along x and y [mm], shape (p, 2); not a number outside.
        """
        from crackkit.mechanics.plane_sampling import sampled

        return sampled(self.body.mesh, self.movement, places)


def principal(stress):
    """Principal stresses, and the direction in which a slab is stretched most.

    Parameters
    ----------
    stress : numpy.ndarray
        Stress along x, along y and shear [MPa], shape (..., 3).

    Returns
    -------
    s1, s2, angle : numpy.ndarray
        Greatest and least principal stress [MPa]; direction of the greatest, from x towards y,
        -pi/2 to pi/2 [rad]. A crack runs at right angles to it.
    """
    return principal_stresses(stress[..., 0], stress[..., 1], stress[..., 2])


def plane_body(mesh, sheet, holds=(), extra=None, last=None):
    """Make a slab ready to be solved.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes, triangles, named sides.
    sheet : Sheet
        What the slab is made of.
    holds : sequence of Hold
        What holds it; where holds give one movement twice the last one counts.
    extra : scipy.sparse.sparray, optional
        Stiffness of anything else between the nodes [N/mm], shape (2 n, 2 n), symmetric: springs
        across a crack, the friction of a base.
    last : array_like of int, optional
        Nodes for which `PlaneFactor.condensed` is wanted [-], such as those of a crack.

    Returns
    -------
    PlaneBody
        Slab whose stiffness [N/mm] is factorised.

    Raises
    ------
    ValueError
        If the slab could slide or turn freely.
    """
    elements = PlaneElements(np.asarray(mesh.points, float), np.asarray(mesh.triangles))
    added, pushes = springs(mesh, holds)
    added = added if extra is None else added + extra
    given = fixed_movements(mesh, holds)
    _refuse_loose(elements.points, given, added)
    K = (elements.stiffness(sheet) + added).tocsr() if added.nnz else elements.stiffness(sheet)
    factor = plane_factor(K, np.isnan(given), last)
    return PlaneBody(mesh, sheet, elements, K, given, pushes, factor, added)


def _refuse_loose(points, given, added):
    """Refuse a slab that can move as a whole without anything that holds it back."""
    at = points - points.mean(axis=0)
    size = abs(at).max()
    turn = np.stack([-at[:, 1], at[:, 0]], axis=1).ravel() / size
    ways = np.stack([np.tile([1.0, 0.0], len(at)), np.tile([0.0, 1.0], len(at)), turn], axis=1)
    held = ways[~np.isnan(given)]
    grip = held.T @ held
    if added.nnz:
        pull = ways.T @ (added @ ways)
        grip = grip + pull / max(added.diagonal().max(), 1e-300)
    if np.linalg.eigvalsh(grip)[0] < _LOOSE:
        raise ValueError(_("Nothing keeps the slab from sliding or turning as a whole."))


def _even(shortening, elements):
    """Free shortening alike along x and y as strains, broadcast to (m, 3, 3)."""
    eps = np.asarray(shortening, dtype=float)
    eps = eps[:, None] if eps.ndim == 1 else eps
    eps = np.broadcast_to(eps, elements.weights.shape)
    return eps[..., None] * np.array([1.0, 1.0, 0.0])
