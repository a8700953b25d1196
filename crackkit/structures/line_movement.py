"""How a bent member moves: curvature of the cracked member summed up along its length."""

import numpy as np

from crackkit.mechanics.deflection import deflection_from_curvature
from crackkit.mechanics.tension_stiffening import mean_curvature
from crackkit.structures.member import LASTING_STRENGTH_ACI, Member
from crackkit.structures.outcome import Movement
from crackkit.structures.stretching import Stretch, nearest, peaks

FALL = 1 / 14  # drawn drop of a member that falls, as a share of its length


def curvature(stretched: Stretch) -> np.ndarray:
    """Mean curvature along the member [1/mm], sagging positive, tension stiffening included.

    EN 1992-1-1 (7.18)-(7.19); by ACI 318-19 Table 24.2.3.5 the same interpolation stands with
    two thirds of the cracking moment.
    """
    member, along = stretched.member, stretched.states
    row = np.where(stretched.moment >= 0, 1, 2)
    _axis, inertia = along.at_row(row)
    uncracked = member.modulus * along.inertia[0]
    cracked = np.where(inertia > 0, member.modulus * inertia, uncracked)
    first = _cracking_moment(stretched) * _strength_share(member)
    return mean_curvature(stretched.moment, first, uncracked, cracked, _beta(member))


def _cracking_moment(stretched: Stretch) -> np.ndarray:
    member, along = stretched.member, stretched.states
    reach = np.where(stretched.moment >= 0, member.section.depth - along.axis[0], along.axis[0])
    return member.concrete.flexural * along.inertia[0] / reach


def _strength_share(member: Member) -> float:
    if member.code == "ACI":
        return LASTING_STRENGTH_ACI
    return member.cracking_strength / member.concrete.flexural


def _beta(member: Member) -> float:
    return 0.5 if member.code == "EN" and member.duration == "lasting" else 1.0


def movement(stretched: Stretch, supports: tuple[float, float], falls_at=None) -> Movement:
    """Give the shape of the member on two supports [mm]; a picture of the fall if it falls."""
    x = stretched.x
    if falls_at is None:
        down = deflection_from_curvature(x, curvature(stretched), supports)
    else:
        down = _fall(stretched, supports, falls_at)
    at = nearest(peaks(x, np.abs(down)), x[-1] / 2)
    return Movement(x, down, float(np.interp(at, x, down)), at, falls_at)


def _fall(stretched: Stretch, supports: tuple[float, float], at: float) -> np.ndarray:
    """Two stiff pieces with a hinge at the crack; the largest movement says nothing.

    The hinge drops where the member sags; where it hogs, the end past the support drops and the
    hinge is lifted.
    """
    x, (left, right) = stretched.x, supports
    if not left < at < right:
        shape = np.maximum(at - x if at <= left else x - at, 0.0)
    else:
        hinge = 1.0 if np.interp(at, x, stretched.moment) >= 0 else -1.0
        shape = hinge * np.minimum((x - left) / (at - left), (right - x) / (right - at))
    return FALL * x[-1] * shape / np.abs(shape).max()
