"""What presses on a plate and what holds it up, added up another way than it was solved.

Inner forces are summed from the moments at the Gauss places and not from the bands of the
solution, so that what is left over tells of a plate that has not come to rest.
"""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True)
class PlateForces:
    """Forces on a whole plate.

    Parameters
    ----------
    weight : float
        Own weight of the slab [N].
    patches : float
        Loads on it [N].
    ground : float
        Push of the ground, upward positive [N].
    joints : float
        What the joints carry to the neighbours, upward positive [N].
    supports : float
        What the held edges carry, upward positive [N].
    unbalanced : float
        Largest force left over on any spline, over all forces that press [-].
    """

    weight: float
    patches: float
    ground: float
    joints: float
    supports: float
    unbalanced: float

    @property
    def imbalance(self):
        """What is not held up, over all that presses or pushes [-]."""
        pressing, holding = self.weight + self.patches, self.ground + self.joints + self.supports
        scale = max(abs(self.weight) + abs(self.patches), abs(self.ground), abs(self.supports))
        return abs(pressing - holding) / scale if scale else 0.0


def plate_forces(slab, shape, patches, standing, joints, neighbour):
    """Forces on a plate at rest.

    Parameters
    ----------
    slab : PlateSlab
        The slab.
    shape : PlateShape
        Its bent shape.
    patches : tuple of LoadPatch
        The loads.
    standing : numpy.ndarray
        The same on the splines [N], as from `patch_load`.
    joints : tuple of float
        Stiffness along the edges: start and end of x, start and end of y [N/mm2].
    neighbour : numpy.ndarray
        Heights at which the neighbours rest, as coefficients of the splines [mm].

    Returns
    -------
    PlateForces
        All forces [N].
    """
    operator = shape.operator
    x, y = operator.x, operator.y
    u, before = _on_all(operator, shape.heights), _on_all(operator, neighbour)
    area = np.outer(x.weights, y.weights)
    push = slab.ground * np.maximum(x.values[0].T @ u @ y.values[0], 0.0) * area
    held = x.values[0] @ push @ y.values[0].T
    carried = _joint_forces(operator, joints, u - before)
    pressing = slab.weight * np.outer(x.values[0] @ x.weights, y.values[0] @ y.weights)
    pressing += _on_all(operator, standing)
    left = _inner(shape, area) + held + carried - pressing
    inside = left[slice(*x.kept), slice(*y.kept)]
    supports = left.sum() - inside.sum()
    loads = float(sum(patch.force for patch in patches))
    weight = slab.weight * slab.length * slab.width
    scale = weight + sum(abs(patch.force) for patch in patches)
    return PlateForces(
        weight, loads, float(push.sum()), float(carried.sum()), -float(supports),
        float(abs(inside).max() / scale) if scale else 0.0,
    )  # fmt: skip


def _on_all(operator, field):
    """Put the numbers of the splines that move among all of them, zero on the others."""
    x, y = operator.x, operator.y
    whole = np.zeros((x.values.shape[1], y.values.shape[1]))
    whole[slice(*x.kept), slice(*y.kept)] = field
    return whole


def _inner(shape, area):
    """Work of the moments on a unit of each spline, turned round: D w'' w''."""
    x, y = shape.operator.x.values, shape.operator.y.values
    kept = x[:, slice(*shape.operator.x.kept)], y[:, slice(*shape.operator.y.kept)]
    m = shape.moments_between(*kept)
    orders = (m.x, 2, 0), (m.y, 0, 2), (2.0 * m.twist, 1, 1)
    return -sum(x[a] @ (moment * area) @ y[b].T for moment, a, b in orders)


def _joint_forces(operator, joints, opening):
    """Force of each joint on each spline."""
    x, y = operator.x, operator.y
    forces = np.zeros(opening.shape)
    for index, stiffness in zip((0, -1), joints[:2], strict=True):
        forces[index] += stiffness * (y.matrix(0, 0) @ opening[index])
    for index, stiffness in zip((0, -1), joints[2:], strict=True):
        forces[:, index] += stiffness * (x.matrix(0, 0) @ opening[:, index])
    return forces
