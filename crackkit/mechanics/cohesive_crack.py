"""A crack along a given line, reduced to its own opening: all else is elastic and counted in.

Opening and sliding at the nodes of the line, and the elongation of the bars across it, are the
only unknowns that are left. With q for all of them and p(q) for the forces that law and bars
answer, q = a + b load - G (p(q) - kp q). G is the compliance of a body whose line is held by
springs kp, which so drop out again; where the line is whole the bracket is exactly zero.
"""

from dataclasses import dataclass, field, replace
from functools import cached_property

import numpy as np

from crackkit.mechanics.bars_across_crack import BarForces, bar_forces
from crackkit.mechanics.cohesive_faces import face_stress, spent

_ALIKE = 1e-5  # of the greatest pivot; bars that can be told apart leave more


@dataclass(frozen=True, eq=False)
class Held:
    """Answer of a body with its line held.

    Parameters
    ----------
    rows : scipy.sparse.csr_array
        Elongation of each bar from the unknowns of the body [-], shape (bars, unknowns).
    loads : numpy.ndarray
        Lasting load and growing load on the unknowns [N], shape (unknowns, 2).
    loaded : numpy.ndarray
        Unknowns under these loads [mm], shape (unknowns, 2).
    pulled : numpy.ndarray
        Unknowns under a pull of 1 N by each bar [mm], shape (unknowns, bars), of a body `softer`
        times as soft: with many bars they are long, and need not be copied for each concrete.
    softer : float
        See there [-].
    """

    rows: object
    loads: np.ndarray
    loaded: np.ndarray
    pulled: np.ndarray
    softer: float = 1.0


@dataclass(frozen=True, eq=False)
class CohesiveCrack:
    """A line that may crack, with what pulls it open and what holds it; see `cohesive_crack`.

    Parameters
    ----------
    body : SplitBody
        The body.
    law : CohesiveLaw
        What holds the faces together.
    share : numpy.ndarray
        Part of the thickness that is not cut before [-], shape (p,).
    bars : tuple of Crossing
        Bars that cross the line.
    held : Held
        Answers of the body [mm, N].
    pull : BarForces
        What the bars answer.
    unit : CohesiveCrack, optional
        The same line and bars in a body ``held.softer`` times as soft: what is known of that one
        need not be worked out anew.
    """

    body: object
    law: object
    share: np.ndarray
    bars: tuple
    held: Held
    pull: BarForces = field(repr=False)
    unit: "CohesiveCrack | None" = field(default=None, repr=False)

    @cached_property
    def count(self):
        """Nodes of the line [-]."""
        return len(self.body.area)

    @cached_property
    def compliance(self):
        """Opening, sliding and elongations for forces of 1 N [mm/N], shape (2 p + bars,) twice."""
        if self.unit:
            return self.unit.compliance / self.held.softer
        x = self.held.pulled / self.held.softer
        across = self.body.jumps @ x
        return np.block([[self.body.compliance, across], [across.T, self.held.rows @ x]])

    @cached_property
    def stiffness(self):
        """The compliance inverted: forces for moves of 1 mm [N/mm], the same shape.

        Bars that lie in one place move alike: what tells them apart takes no force here.
        """
        from scipy.linalg.lapack import dpotrf, dtrtri

        if self.unit:
            return self.unit.stiffness * self.held.softer
        half, fault = dpotrf(self.compliance)
        pivots = np.diag(half)
        if fault or pivots.min() < _ALIKE * pivots.max():
            return np.linalg.pinv(self.compliance, rcond=_ALIKE**2, hermitian=True)
        half, _fault = dtrtri(half)
        return half @ half.T

    @cached_property
    def responses(self):
        """Opening, sliding and elongations under the lasting load and under a growing load of 1,
        while the line is held [mm], shape (2, 2 p + bars).
        """
        x = self.held.loaded
        return np.concatenate([self.body.jumps @ x, self.held.rows @ x]).T

    @cached_property
    def springs(self):
        """Stiffness of the springs that hold the line at each node [N/mm], shape (p,)."""
        return self.body.area * self.body.stiffness

    @cached_property
    def mean_row(self):
        """Mean opening of the line from all unknowns [-], shape (2 p + bars,)."""
        row = np.zeros(len(self.compliance))
        row[: self.count] = self.body.area / self.body.area.sum()
        return row

    def faces(self, q, greatest):
        """Stress along the line.

        Parameters
        ----------
        q : numpy.ndarray
            Opening, sliding and elongations [mm], shape (2 p + bars,).
        greatest : numpy.ndarray
            Widest opening that there has been [mm], shape (p,).

        Returns
        -------
        FaceStress
            Stress [MPa].
        """
        jump = q[: 2 * self.count].reshape(2, -1)
        return face_stress(self.law, self.body.stiffness, self.share, jump, greatest)

    def forces(self, q, greatest):
        """All forces between the faces, those of the bars with them.

        Parameters
        ----------
        q : numpy.ndarray
            Opening, sliding and elongations [mm], shape (2 p + bars,).
        greatest : numpy.ndarray
            Widest opening that there has been [mm], shape (p,).

        Returns
        -------
        numpy.ndarray
            Forces [N], shape (2 p + bars,), tension positive.
        """
        faces, area = self.faces(q, greatest), self.body.area
        bars = self.pull.pull(q[2 * self.count :])[0]
        return np.concatenate([area * faces.normal, area * faces.shear, bars])

    def unknowns(self, q, load, greatest):
        """Unknowns of the whole body, of which the line feels only a part.

        Parameters
        ----------
        q : numpy.ndarray
            Opening, sliding and elongations [mm], shape (2 p + bars,).
        load : float
            Growing load [-].
        greatest : numpy.ndarray
            Widest opening that there has been [mm], shape (p,).

        Returns
        -------
        numpy.ndarray
            Unknowns [mm].
        """
        p, body = self.forces(q, greatest), self.body
        p[: 2 * self.count] -= np.tile(self.springs, 2) * q[: 2 * self.count]
        pushed = body.jumps.T @ p[: 2 * self.count]
        lasting, growing = self.held.loaded.T
        by_bars = self.held.pulled @ (p[2 * self.count :] / self.held.softer)
        return lasting + load * growing - body.unknowns(pushed) - by_bars

    def spent(self, greatest):
        """Work that has gone into breaking the line.

        Parameters
        ----------
        greatest : numpy.ndarray
            Widest opening that there has been [mm], shape (p,).

        Returns
        -------
        float
            Work [N mm].
        """
        each = spent(self.law, self.body.stiffness, self.share, greatest)
        return float(self.body.area @ each)

    def with_law(self, law):
        """The same crack in other concrete: nothing is solved anew.

        Parameters
        ----------
        law : CohesiveLaw
            What holds the faces together.

        Returns
        -------
        CohesiveCrack
            With the other law.
        """
        return replace(self, law=law)


def cohesive_crack(body, law, growing, lasting=None, bars=(), share=1.0, moved=None):
    """Make a crack ready to be opened.

    Parameters
    ----------
    body : SplitBody
        The body, split along the line.
    law : CohesiveLaw
        What holds the faces together.
    growing : numpy.ndarray
        Forces on all nodes for a growing load of 1 [N], shape (2 n,), as of a shortening of 1.
    lasting : numpy.ndarray, optional
        Forces that are there from the start [N], shape (2 n,); none if left out.
    bars : sequence of Crossing
        Bars that cross the line; see `crossings`.
    share : float or array_like
        Part of the thickness that is not cut before [-], 0 to 1, one for all or one for each node
        of the line; see `cut_before`.
    moved : numpy.ndarray, optional
        Unknowns under the growing load [mm], where they are known already.

    Returns
    -------
    CohesiveCrack
        Compliance in [mm/N].
    """
    from scipy.sparse import csr_array

    loads = np.zeros((len(growing), 2))
    loads[:, 1] = growing
    if lasting is not None:
        loads[:, 0] = lasting
    rows = csr_array(np.array([bar.row for bar in bars]).reshape(len(bars), len(growing)))
    loads, rows = body.spread.T @ loads, rows @ body.spread
    loaded = np.zeros(loads.shape)
    loaded[:, 1] = body.unknowns(loads[:, 1]) if moved is None else moved
    if lasting is not None:
        loaded[:, 0] = body.unknowns(loads[:, 0])
    pulled = rows.T.toarray()
    held = Held(rows, loads, loaded, body.unknowns(pulled) if bars else pulled)
    share = np.broadcast_to(np.asarray(share, dtype=float), body.area.shape)
    return CohesiveCrack(body, law, share, tuple(bars), held, bar_forces(bars))


def cut_before(line, length, depth=1.0):
    """Part of the thickness that a saw cut from the mouth has left.

    Parameters
    ----------
    line : CrackLine
        The line.
    length : float
        Length of the cut, from the mouth [mm]; infinite for a joint all along the line.
    depth : float
        Depth of the cut as a part of the thickness [-], 0 to 1.

    Returns
    -------
    numpy.ndarray
        What is left [-], shape (p,). Cut faces that are pressed together touch again.
    """
    return np.where(line.along < length, 1.0 - depth, 1.0)
