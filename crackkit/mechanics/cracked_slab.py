"""A slab with its holds and a line along which it may crack, made ready from its mesh."""

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from crackkit.mechanics.bars_across_crack import crossings
from crackkit.mechanics.cohesive_crack import cohesive_crack
from crackkit.mechanics.crack_line import crack_line
from crackkit.mechanics.plane_elements import PlaneElements
from crackkit.mechanics.plane_supports import fixed_movements, springs
from crackkit.mechanics.split_body import line_stiffness, split_body
from crackkit.words import _


@dataclass(frozen=True, eq=False)
class CrackedSlab:
    """A slab that dries and may crack along a line; made by `cracked_slab`.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles, split along the line.
    sheet : Sheet
        What the slab is made of.
    elements : PlaneElements
        The triangles.
    stiffness : scipy.sparse.csr_array
        Stiffness of the split slab with all springs, free of rigid holds [N/mm], shape
        (2 n, 2 n).
    body : SplitBody
        The slab as its line feels it.
    grip : scipy.sparse.csr_array
        That part of the stiffness that springs of the holds give [N/mm], shape (2 n, 2 n).
    """

    mesh: object
    sheet: object
    elements: PlaneElements
    stiffness: object
    body: object
    grip: object

    @property
    def line(self):
        """Nodes of the line, with lengths [mm]."""
        return self.body.line

    @cached_property
    def shrinkage(self):
        """Forces on the nodes that stand for a free shortening of 1, alike all over [N], (2 n,)."""
        stress = -self.sheet.matrix @ np.array([1.0, 1.0, 0.0])
        return self.elements.forces(stress, self.sheet.thickness)

    @cached_property
    def shrunk(self):
        """Unknowns under that, its line held [mm], shape (unknowns,)."""
        return self.body.unknowns(self.body.spread.T @ self.shrinkage)

    def held(self, times):
        """The same slab, what holds it yielding more or less; nothing is factorised anew.

        Parameters
        ----------
        times : float
            How many times as stiff as now all springs of its holds are [-], above 0. Rigid holds
            stay as they are.

        Returns
        -------
        CrackedSlab
            To be changed no further [N/mm].
        """
        grip = times * self.grip
        stiffness = self.stiffness + (grip - self.grip)
        return replace(self, stiffness=stiffness, body=self.body.held(times), grip=grip)

    def crack(self, law, bars=(), share=1.0, growing=None, lasting=None):
        """The crack, ready to be opened.

        Parameters
        ----------
        law : CohesiveLaw
            What holds the faces together.
        bars : sequence of SlabBar
            All bars, wherever the crew left them; only those that cross the line act.
        share : float or array_like
            Part of the thickness that is not cut before [-], see `cut_before`.
        growing : numpy.ndarray, optional
            Forces on all nodes for a growing load of 1 [N], shape (2 n,); those of a free
            shortening of 1 if left out, so that the load is the shortening.
        lasting : numpy.ndarray, optional
            Forces that are there from the start [N], shape (2 n,).

        Returns
        -------
        CohesiveCrack
            To be given to `growth` or `at_load`; lengths in [mm].
        """
        met, moved = crossings(self.mesh, self.line, bars), None
        if growing is None:
            growing, moved = self.shrinkage, self.shrunk
        return cohesive_crack(self.body, law, growing, lasting, met, share, moved)


def cracked_slab(mesh, sheet, holds=(), extra=None):
    """Make a slab that is split along a line ready to crack.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles, split along the line.
    sheet : Sheet
        What the slab is made of.
    holds : sequence of Hold
        What holds it; none of them is moved.
    extra : scipy.sparse.sparray, optional
        Stiffness of anything else between the nodes [N/mm], shape (2 n, 2 n), symmetric.

    Returns
    -------
    CrackedSlab
        With its stiffness [N/mm] factorised.

    Raises
    ------
    ValueError
        If the mesh is not split, or a hold is moved.
    ArithmeticError
        If nothing keeps the slab where it is.
    """
    if mesh.crack is None:
        raise ValueError(_("The mesh must be split along the line of the crack."))
    if any(np.any(hold.movement) for hold in holds):
        raise ValueError(_("Where a slab cracks, its holds stay where they are."))
    elements = PlaneElements(mesh.points, mesh.triangles)
    stiffness, grip = elements.stiffness(sheet), springs(mesh, holds)[0]
    for more in (grip, extra):
        if more is not None and more.nnz:
            stiffness = stiffness + more
    free = np.isnan(fixed_movements(mesh, holds))
    line = crack_line(mesh.points, mesh.crack)
    springs_there = line_stiffness(sheet.modulus)
    body = split_body(stiffness, free, line, sheet.thickness, springs_there, grip)
    return CrackedSlab(mesh, sheet, elements, stiffness, body, grip)
