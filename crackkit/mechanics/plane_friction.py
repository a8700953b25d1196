"""A slab that slides on its base while it grows shorter: friction all over its underside.

The base pulls against the movement, the more the farther the slab moves, and never more than it
can: t = -tau u / max(|u|, d0), with u the movement in the plane. One operator serves all rounds:
the slab on a bed as stiff as a base that nowhere slides, tau/d0. What that bed pulls too much where
the slab slides is given back as a load, and Anderson's mixing of the last rounds makes the rounds
few.
"""

from dataclasses import dataclass, field

import numpy as np

from crackkit.mechanics.plane_elements import PlaneElements
from crackkit.mechanics.plane_solution import PlaneBody, PlaneState, plane_body
from crackkit.words import _

_REMEMBERED, _MOST_ROUNDS, _SETTLED, _RIDGE = 8, 400, 1e-6, 1e-12
_LEAST_SLIP = 0.01


@dataclass(frozen=True, eq=False)
class SlidingBody:
    """A slab with its holds on a base that drags; made by `sliding_body`.

    Parameters
    ----------
    body : PlaneBody
        The slab on a bed that never slides [N/mm].
    shear : float
        Greatest shear between slab and base tau [MPa].
    slip : float
        Slip d0 from which the slab slides [mm].
    """

    body: PlaneBody
    shear: float
    slip: float

    def state(self, forces=None, shortening=0.0, start=None):
        """Where the slab comes to rest.

        Slip is taken as growing all the time: a slab that warms up again is held more than this
        says.

        Parameters
        ----------
        forces : numpy.ndarray, optional
            Forces on the nodes [N], shape (2 n,); none if left out.
        shortening : float or array_like
            Free shortening [-], as in `PlaneBody.shrinkage_forces`.
        start : numpy.ndarray, optional
            Movement of the nodes to begin with [mm], shape (n, 2), such as that of the last
            slider step; that of a base which nowhere slides if left out.

        Returns
        -------
        SlidingState
            Movements [mm], stresses [MPa] and the shear of the base [MPa].

        Raises
        ------
        ArithmeticError
            If the slab does not come to rest.
        """
        body = self.body
        stuck = body.state(forces, shortening).movement.ravel()
        if self.shear == 0.0:
            return SlidingState(body, stuck.reshape(-1, 2), shortening, self, 1)

        def next_round(u):
            return stuck + body.solve(body.elements.base_forces(self._given_back(u)))

        u = stuck if start is None else np.asarray(start, dtype=float).ravel()
        scale = max(abs(stuck).max(), self.slip)
        u, rounds = _mixed(next_round, u, _SETTLED * scale)
        return SlidingState(body, u.reshape(-1, 2), shortening, self, rounds)

    def _given_back(self, movement):
        """What the bed that never slides pulls beyond the base, at the inner points [MPa]."""
        u = self.body.elements.inside(movement.reshape(-1, 2))
        far = np.maximum(np.hypot(u[..., 0], u[..., 1]), self.slip)
        return self.shear * u * (1 / self.slip - 1 / far)[..., None]

    def base_shear(self, movement):
        """Shear of the base on the slab.

        Parameters
        ----------
        movement : numpy.ndarray
            Movement along x and y [mm], shape (..., 2).

        Returns
        -------
        numpy.ndarray
            Shear on the slab along x and y [MPa], of that shape; against the movement.
        """
        far = np.maximum(np.hypot(movement[..., 0], movement[..., 1]), self.slip)
        return -self.shear * movement / far[..., None]


@dataclass(frozen=True, eq=False)
class SlidingState(PlaneState):
    """Movements and stresses of a slab that slides on its base.

    Parameters
    ----------
    body : PlaneBody
        The slab on a bed that never slides.
    movement : numpy.ndarray
        Movement of the nodes along x and y [mm], shape (n, 2).
    shortening : float or array_like
        Free shortening that is counted in [-].
    sliding : SlidingBody
        Slab and base.
    rounds : int
        Rounds until it came to rest [-].
    """

    sliding: SlidingBody = field(default=None)
    rounds: int = 0

    @property
    def base_forces(self):
        """Forces of the base on the nodes [N], shape (2 n,)."""
        elements = self.body.elements
        return elements.base_forces(self.sliding.base_shear(elements.inside(self.movement)))

    @property
    def slides(self):
        """Which nodes slide, shape (n,)."""
        return np.hypot(*self.movement.T) >= self.sliding.slip


def sliding_body(mesh, sheet, shear, slip, holds=(), extra=None):
    """Make a slab on a base ready to be solved.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes, triangles, named sides.
    sheet : Sheet
        What the slab is made of.
    shear : float
        Greatest shear between slab and base, mu gamma h [MPa], 0 or more.
    slip : float
        Slip from which the slab slides [mm], 0.01 or more.
    holds : sequence of Hold
        What holds its edges besides; none are needed where the base drags.
    extra : scipy.sparse.sparray, optional
        Stiffness of anything else between the nodes [N/mm], as in `plane_body`.

    Returns
    -------
    SlidingBody
        Slab whose stiffness [N/mm] is factorised.

    Raises
    ------
    ValueError
        If a number lies outside of its range, or nothing holds the slab.
    """
    if not (shear >= 0 and slip >= _LEAST_SLIP):
        raise ValueError(_("A base drags with 0 or more, and a slab slides after 0.01 mm or more."))
    if shear > 0:
        elements = PlaneElements(np.asarray(mesh.points, float), np.asarray(mesh.triangles))
        bed = elements.grip(shear / slip)
        extra = bed if extra is None else extra + bed
    return SlidingBody(plane_body(mesh, sheet, holds, extra), shear, slip)


def _mixed(next_round, u, settled):
    """Fixed point of `next_round`, by Anderson's mixing (type II) of the last rounds."""
    steps, changes = [], []
    new = next_round(u)
    gap = new - u
    for rounds in range(1, _MOST_ROUNDS):
        if abs(gap).max() <= settled:
            return new, rounds
        old_new, old_gap = new, gap
        u = new - _correction(steps, changes, gap) if steps else new
        new = next_round(u)
        gap = new - u
        steps, changes = steps[1 - _REMEMBERED :], changes[1 - _REMEMBERED :]
        steps.append(new - old_new)
        changes.append(gap - old_gap)
    raise ArithmeticError(_("The slab does not come to rest on its base."))


def _correction(steps, changes, gap):
    """Mix of the steps whose changes of the gap come nearest to closing it (least squares).

    The normal equations do: an inexact mix costs a round, never the answer.
    """
    F = np.stack(changes)
    gram = F @ F.T
    gram.flat[:: len(gram) + 1] *= 1 + _RIDGE
    return np.linalg.solve(gram, F @ gap) @ np.stack(steps)
