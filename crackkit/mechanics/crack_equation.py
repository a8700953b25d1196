"""What is left over of the equation of a crack, and which way it has to move to lessen that.

The equation is q = a + b load - G (p(q) - kp q), see `cohesive_crack`. Where the line is whole the
bracket is zero, so that only nodes that have let go, and bars, bend the equation.
"""

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from crackkit.words import _

TIGHT = 1e-7  # mm, of what is left over once a crack has come to rest
_NOTHING = 1e-12  # mm of opening
_PULLED = 1e-9  # mm of elongation


@dataclass(frozen=True, eq=False)
class Answer:
    """How the forces answer a small move.

    Parameters
    ----------
    compliance : numpy.ndarray
        Move of all unknowns for forces of 1 N on each [mm/N], shape (2 p + bars, 2 p + bars).
    torn : numpy.ndarray of int
        Nodes of the line that have let go [-], shape (torn,).
    opening, sliding : numpy.ndarray
        How fast the force across each node grows with its opening, and the one along the line
        with its sliding [N/mm], shape (p,).
    coupling : numpy.ndarray
        How fast the force along the line grows with the opening [N/mm], shape (p,).
    bars : numpy.ndarray
        How fast the pull of each bar grows [N/mm], shape (bars,).
    grown : tuple of numpy.ndarray
        Force across each node and its opening, pull of each bar and its elongation [N, mm].
    springs : numpy.ndarray
        What `opening` and `sliding` leave out: the springs that hold the line [N/mm], shape (p,).
    """

    compliance: np.ndarray
    torn: np.ndarray
    opening: np.ndarray
    sliding: np.ndarray
    coupling: np.ndarray
    bars: np.ndarray
    grown: tuple
    springs: np.ndarray

    def stiffer(self, tangent):
        """The same, taken to answer more stiffly than the slopes say: as if from none, in part.

        Parameters
        ----------
        tangent : float
            Share of the slopes [-], 0 to 1; secants have the rest.

        Returns
        -------
        Answer
            Means of both [N/mm].
        """
        across, opened, pull, longer = self.grown
        across = _secant(across, opened, self.opening + self.springs, _NOTHING) - self.springs
        pull = _secant(pull, longer, self.bars, _PULLED)
        opening = tangent * self.opening + (1.0 - tangent) * across
        bars = tangent * self.bars + (1.0 - tangent) * pull
        found = replace(self, opening=opening, bars=bars, coupling=tangent * self.coupling)
        vars(found).update(active=self.active, _own=self._own)  # these know nothing of slopes
        return found

    @cached_property
    def active(self):
        """Numbers of the unknowns that bend the equation: at torn nodes, and bars [-]."""
        p = len(self.opening)
        return np.concatenate([self.torn, p + self.torn, np.arange(2 * p, len(self.compliance))])

    @cached_property
    def _stiff(self):
        """How fast the force on each of these grows with itself [N/mm]."""
        return np.concatenate([self.opening[self.torn], self.sliding[self.torn], self.bars])

    @cached_property
    def _own(self):
        """Move of these for forces of 1 N on them [mm/N]."""
        if len(self.active) == len(self.compliance):
            return self.compliance
        return self.compliance[self.active[:, None], self.active]

    @cached_property
    def _inner(self):
        """The equation of these unknowns alone, its rows and columns exchanged [-]."""
        own, k = self._own, len(self.torn)
        inner = self._stiff[:, None] * own  # the compliance is symmetric
        inner[:k] += self.coupling[self.torn, None] * own[k : 2 * k]
        inner.reshape(-1)[:: len(inner) + 1] += 1.0
        return inner

    def move(self, aside):
        """How all unknowns move once their forces have answered.

        Parameters
        ----------
        aside : numpy.ndarray
            Moves if no force answered [mm], shape (2 p + bars,) or (2 p + bars, any).

        Returns
        -------
        numpy.ndarray
            Moves [mm], the same shape.
        """
        first, k = _solved(self._inner.T, aside[self.active]), len(self.torn)
        along = (1,) * (aside.ndim - 1)
        answered = self._stiff.reshape(-1, *along) * first
        answered[k : 2 * k] += self.coupling[self.torn].reshape(-1, *along) * first[:k]
        forces = np.zeros(aside.shape)
        forces[self.active] = answered
        return aside - self.compliance @ forces


def _solved(matrix, right):
    """Solve a small full system; LAPACK itself, without the copies that a wrapper makes."""
    from scipy.linalg.lapack import dgesv

    if not len(matrix):
        return right
    _factors, _pivots, found, fault = dgesv(matrix, right)
    if fault:
        raise np.linalg.LinAlgError(_("The equation of the crack has no answer."))
    return found


def left_over(crack, q, load, greatest):
    """How far unknowns are from what their forces explain.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    q : numpy.ndarray
        Opening and sliding of the nodes of the line, elongation of the bars [mm], shape
        (2 p + bars,).
    load : float
        Growing load [-].
    greatest : numpy.ndarray
        Widest opening that there has been [mm], shape (p,).

    Returns
    -------
    left : numpy.ndarray
        What is left over [mm], shape (2 p + bars,).
    answer : Answer
        How the forces answer.
    """
    p, area, springs = crack.count, crack.body.area, crack.springs
    opening, sliding, elongation = q[:p], q[p : 2 * p], q[2 * p :]
    faces = crack.faces(q, greatest)
    pull, stiff = crack.pull.pull(elongation)
    force, torn = area * faces.normal, np.flatnonzero(~faces.whole)
    across = np.where(faces.whole, 0.0, force - springs * opening)
    along = np.where(faces.whole, 0.0, area * faces.shear - springs * sliding)
    at_start, per_load = crack.responses
    pushed = np.concatenate([across, along, pull])
    left = q - at_start - load * per_load + crack.compliance @ pushed
    slopes = area * faces.normal_slope - springs, area * faces.shear_slope - springs
    rest = area * faces.coupling, stiff, (force, opening, pull, elongation), springs
    return left, Answer(crack.compliance, torn, *slopes, *rest)


def _secant(force, move, slope, least):
    """How fast a force would have grown straight from none; its slope where nothing has moved."""
    return np.where(move > least, force / np.maximum(move, least), slope)
