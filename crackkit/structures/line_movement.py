"""How a bent member moves: curvature of the cracked member summed up along its length."""

import numpy as np

from crackkit.mechanics.deflection import deflection_over_supports
from crackkit.mechanics.tension_stiffening import mean_curvature
from crackkit.structures.member import LASTING_STRENGTH_ACI, Member
from crackkit.structures.outcome import Movement
from crackkit.structures.stretching import Stretch, nearest, peaks

FALL = 1 / 14  # drawn drop of a member that falls, as a share of its length


def curvature(stretched: Stretch) -> np.ndarray:
    """Mean curvature along the member [1/mm], sagging positive, tension stiffening included."""
    return Bending(stretched)(stretched.moment)


class Bending:
    """How much the member bends at each station under any moment there.

    EN 1992-1-1 (7.18)-(7.19); by ACI 318-19 Table 24.2.3.5 the same interpolation stands with
    two thirds of the cracking moment.
    """

    def __init__(self, stretched: Stretch):
        member, along = stretched.member, stretched.states
        self.whole = member.modulus * along.inertia[0]
        cracked = member.modulus * along.inertia[1:]
        # where nothing holds a crack the whole section counts: such a crack is a hinge of its own
        self.cracked = np.where(cracked > 0, cracked, self.whole)
        reach = np.stack([along.depth - along.axis[0], along.axis[0]])
        strength = member.concrete.flexural * _strength_share(member)
        self.cracks_at = strength * along.inertia[0] / reach
        self.beta = _beta(member)

    def __call__(self, moment: np.ndarray) -> np.ndarray:
        """Mean curvature [1/mm] under moments [N mm] at the stations."""
        sags = moment >= 0
        first = np.where(sags, self.cracks_at[0], self.cracks_at[1])
        cracked = np.where(sags, self.cracked[0], self.cracked[1])
        return mean_curvature(moment, first, self.whole, cracked, self.beta)


def _strength_share(member: Member) -> float:
    if member.code == "ACI":
        return LASTING_STRENGTH_ACI
    return member.cracking_strength / member.concrete.flexural


def _beta(member: Member) -> float:
    return 0.5 if member.code == "EN" and member.duration == "lasting" else 1.0


def movement(stretched: Stretch, held_by, falls_at=None) -> Movement:
    """Give the shape of the member on its supports; a picture of the fall if it falls."""
    x = stretched.x
    if falls_at is None:
        down = deflection_over_supports(x, curvature(stretched), held_by)
    else:
        down = fall(stretched, held_by, falls_at)
    return moved(x, down, falls_at)


def moved(x: np.ndarray, down: np.ndarray, falls_at=None) -> Movement:
    """Give a movement from how far each station [mm] moves down [mm]."""
    at = nearest(peaks(x, np.abs(down)), x[-1] / 2)
    return Movement(x, down, float(np.interp(at, x, down)), at, falls_at)


def fall(stretched: Stretch, held_by, at: float) -> np.ndarray:
    """Stiff pieces with a hinge at the crack [mm]; the largest movement says nothing.

    The hinge drops where the member sags; where it hogs, the end past the support drops and the
    hinge is lifted.
    """
    x, places = stretched.x, sorted(support.at for support in held_by)
    if not places[0] < at < places[-1]:
        shape = np.maximum(at - x if at <= places[0] else x - at, 0.0)
    else:
        (left, right), sags = places, np.interp(at, x, stretched.moment) >= 0
        shape = np.minimum((x - left) / (at - left), (right - x) / (right - at))
        shape = shape if sags else -shape
    return FALL * x[-1] * shape / np.abs(shape).max()


def fall_between(x: np.ndarray, left: float, right: float, at: float) -> np.ndarray:
    """One span that falls with a hinge at a crack, its neighbours staying up [mm]."""
    at = min(max(at, left + 1.0), right - 1.0)
    shape = np.minimum((x - left) / (at - left), (right - x) / (right - at))
    return FALL * (right - left) * np.maximum(shape, 0.0)
