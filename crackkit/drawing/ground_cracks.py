"""Cracks and joints of a slab on the ground on its drawings: how wide, and which are dated."""

import numpy as np

from crackkit.drawing.age_words import day_words
from crackkit.drawing.labels import GAP, width_of

OPEN = 1e-3  # mm, from which an opening is drawn
WIDE = 4.0  # mm, crack that is drawn widest
CAP = 0.5  # mm, width that `through_cracks` draws widest
CROWD = 0.75  # share of the row that days may fill


def drawn_widths(widths) -> np.ndarray:
    """Widths for `through_cracks`: those of slabs reach from hair to thumb.

    Parameters
    ----------
    widths : sequence of float
        Crack widths [mm].
    """
    return CAP * np.sqrt(np.minimum(np.asarray(widths, dtype=float) / WIDE, 1.0))


def birth_order(births) -> np.ndarray:
    """Number of birth of each crack, from 1: it keeps its shape when others come."""
    return np.argsort(np.argsort(np.asarray(births), kind="stable"), kind="stable") + 1


def open_joints(state) -> list:
    """Joints that are open far enough to be drawn so."""
    return [joint for joint in state.joints if joint.opening > OPEN]


def widest_crack(state):
    """The widest crack that is at no joint; None without."""
    return max(state.wild, key=lambda one: one.width, default=None)


def by_birth(state) -> list:
    """Cracks as they came: first those at no joint, then those that came to a joint."""
    return sorted(state.cracks, key=lambda one: (one.at_joint, one.birth))


def day_role(crack) -> str:
    """Role of its day: cracks that nobody wanted stand out from those in joints."""
    return "label" if crack.at_joint else "label_bold"


def dated_in_row(state, room: float) -> list:
    """Cracks that have their day written in a row: all, or the first that there is room for.

    Parameters
    ----------
    state : Ground
    room : float
        Length of the row [drawing units].
    """
    rest, chosen = CROWD * room, []
    for crack in by_birth(state):
        rest -= width_of(day_words(crack.birth), day_role(crack)) + GAP
        if rest < 0:
            break
        chosen.append(crack)
    return sorted(chosen, key=lambda one: one.at)


def undated(state, dated) -> int:
    """Count the cracks at no joint that are not among these."""
    return len(state.wild) - sum(not crack.at_joint for crack in dated)
