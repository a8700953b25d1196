"""What is left over of the equation of a crack, and which way it has to move to lessen that.

The equation is q = a + b load - G (p(q) - kp q), see `cohesive_crack`. Where the line is whole the
bracket is zero, so that only nodes that have let go, and bars, bend the equation.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

TIGHT = 1e-7  # mm, of what is left over once a crack has come to rest
_NOTHING = 1e-12  # mm of opening
_PULLED = 1e-9  # mm of elongation


@dataclass(frozen=True, eq=False)
class Answer:
    """How the forces answer a small move.

    Parameters
    ----------
    active : numpy.ndarray of int
        Numbers of the unknowns that bend the equation [-]: opening and sliding of nodes that have
        let go, and bars, shape (2 torn + bars,).
    compliance : numpy.ndarray
        Move of all unknowns for forces of 1 N on these [mm/N], shape (2 p + bars, 2 torn + bars).
    stiff : numpy.ndarray
        How fast the force on each grows with itself [N/mm], shape (2 torn + bars,).
    coupling : numpy.ndarray
        How fast the force along the line grows with the opening [N/mm], shape (torn,).
    """

    active: np.ndarray
    compliance: np.ndarray
    stiff: np.ndarray
    coupling: np.ndarray

    @cached_property
    def _inner(self):
        """The equation of these unknowns alone [-]."""
        own, k = self.compliance[self.active], len(self.coupling)
        inner = own * self.stiff
        inner[:, :k] += own[:, k : 2 * k] * self.coupling
        inner[np.diag_indices(len(inner))] += 1.0
        return inner

    def move(self, aside):
        """How all unknowns move once their forces have answered.

        Parameters
        ----------
        aside : numpy.ndarray
            Moves if no force answered [mm], shape (2 p + bars, any).

        Returns
        -------
        numpy.ndarray
            Moves [mm], the same shape.
        """
        first = np.linalg.solve(self._inner, aside[self.active])
        forces, k = self.stiff[:, None] * first, len(self.coupling)
        forces[k : 2 * k] += self.coupling[:, None] * first[:k]
        return aside - self.compliance @ forces


def left_over(crack, q, load, greatest, tangent=1.0):
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
    tangent : float
        How the forces are taken to answer [-], 0 to 1: 1 as their slopes are (Newton's method), 0
        as if they grew straight from none (secants), between them a mean of both.

    Returns
    -------
    left : numpy.ndarray
        What is left over [mm], shape (2 p + bars,).
    answer : Answer
        How the forces answer.
    """
    p, body = crack.count, crack.body
    faces = crack.faces(q, greatest)
    pull, stiff = crack.pull.pull(q[2 * p :])
    torn = np.flatnonzero(~faces.whole)
    active = np.concatenate([torn, p + torn, np.arange(2 * p, len(q))])
    area, springs, open_by = body.area[torn], crack.springs[torn], q[torn]
    normal, slope = faces.normal[torn], faces.normal_slope[torn]
    shear = area * faces.shear[torn] - springs * q[p + torn]
    compliance = crack.compliance[:, active]
    at_start, per_load = crack.responses
    pushed = np.concatenate([area * normal - springs * open_by, shear, pull])
    left = q - at_start - load * per_load + compliance @ pushed
    coupling = area * faces.coupling[torn]
    if tangent < 1.0:
        slope = _mean(tangent, slope, normal, open_by, _NOTHING)
        stiff = _mean(tangent, stiff, pull, q[2 * p :], _PULLED)
        coupling = tangent * coupling
    along = area * faces.shear_slope[torn] - springs
    stiff = np.concatenate([area * slope - springs, along, stiff])
    return left, Answer(active, compliance, stiff, coupling)


def _mean(tangent, slope, force, move, least):
    """Mean of slopes and secants; slopes alone where nothing has moved."""
    secant = np.where(move > least, force / np.maximum(move, least), slope)
    return tangent * slope + (1.0 - tangent) * secant
