"""Where a plate lies on its ground and where it has lifted off: springs push and never pull.

The energy is convex, and piecewise quadratic: springs are in touch or they are not. So each step
solves the plate on the springs that were in touch (Newton's method for a kink), until those that
are in touch stay the same.
"""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.mechanics.plate_band import factorised, solution
from crackkit.mechanics.plate_operator import PlateOperator

_FULL_STEPS, _MOST_STEPS, _SETTLED = 16, 60, 1e-12


@dataclass(frozen=True, eq=False)
class Stiffness:
    """What a plate and its ground are made of, besides its splines.

    Parameters
    ----------
    operator : PlateOperator
        Splines and bands.
    rigidity : float
        Bending stiffness D [N mm].
    ground : float
        Stiffness of the ground [N/mm3].
    joints : tuple of float
        Stiffness along the edges: start and end of x, start and end of y [N/mm2].
    """

    operator: PlateOperator
    rigidity: float
    ground: float
    joints: tuple = (0.0, 0.0, 0.0, 0.0)

    def base(self):
        """Band of everything but the ground.

        Returns
        -------
        numpy.ndarray
            Lower band [N/mm].
        """
        return _base(self.operator, self.rigidity, self.joints)

    def resting(self):
        """Factor for a plate that lies on all its springs, kept for the next time.

        Returns
        -------
        numpy.ndarray
            As from `factorised` [N/mm].
        """
        return _resting(self.operator, self.rigidity, self.ground, self.joints)

    def on_springs(self, touching, room):
        """Factor for a plate on some of its springs.

        Parameters
        ----------
        touching : numpy.ndarray of bool
            Which springs push, at the Gauss places.
        room : numpy.ndarray
            Room for the factor [N/mm]; it is overwritten.

        Returns
        -------
        numpy.ndarray
            As from `factorised` [N/mm].
        """
        return factorised(self.operator.springs(self.ground * touching, self.base(), room))


@dataclass(frozen=True, eq=False)
class Rest:
    """Where a plate comes to rest.

    Parameters
    ----------
    heights : numpy.ndarray
        Coefficients of the splines [mm], shape (splines along x, splines along y).
    touching : numpy.ndarray of bool
        Which Gauss places push on the ground.
    steps : int
        Rounds until nothing changed [-].
    converged : bool
        Whether it came to rest.
    """

    heights: np.ndarray
    touching: np.ndarray
    steps: int
    converged: bool


def plate_rest(stiffness, load, start=None):
    """Bring a plate on springs to rest.

    Parameters
    ----------
    stiffness : Stiffness
        Plate and ground.
    load : numpy.ndarray
        Load on each spline [N], in the order of the equations.
    start : numpy.ndarray, optional
        Which Gauss places push at first [-]; all of them if left out.

    Returns
    -------
    Rest
        Coefficients of the deflection [mm], and where it touches.
    """
    operator = stiffness.operator
    x, y = (side.values[0, slice(*side.kept)] for side in (operator.x, operator.y))
    room, whole = np.empty_like(operator.bending), start is None or start.all()
    factor = stiffness.resting() if whole else stiffness.on_springs(start, room)
    touching = np.ones((x.shape[1], y.shape[1]), dtype=bool) if start is None else start
    u = solution(factor, load)
    for step in range(1, _MOST_STEPS):
        now = x.T @ operator.field(u) @ y > 0.0
        if stiffness.ground == 0.0 or (now == touching).all():
            return Rest(operator.field(u), touching, step, True)
        new = solution(stiffness.on_springs(now, room), load)
        if abs(new - u).max() <= _SETTLED * abs(new).max():
            return Rest(operator.field(new), now, step, True)
        u, touching = (new if step < _FULL_STEPS else 0.5 * (u + new)), now
    return Rest(operator.field(u), touching, _MOST_STEPS, False)


@lru_cache(maxsize=8)
def _base(operator, rigidity, joints):
    band = rigidity * operator.bending
    return band + operator.edge_springs(joints) if any(joints) else band


@lru_cache(maxsize=8)
def _resting(operator, rigidity, ground, joints):
    whole = np.full((operator.x.places.size, operator.y.places.size), ground)
    base = _base(operator, rigidity, joints)
    return factorised(operator.springs(whole, base, np.empty_like(base)))
