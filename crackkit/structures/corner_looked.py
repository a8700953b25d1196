"""Which inside corner of a slab is pulled hardest, and which of them is looked at."""

import numpy as np

from crackkit.structures.corner_ages import AtAge
from crackkit.structures.corner_field import Pulled, pulled_corners
from crackkit.structures.corner_opening import Line
from crackkit.structures.corner_restraint import Uncracked, restraint, uncracked, usual
from crackkit.structures.corner_shapes import form
from crackkit.structures.cornered import InsideCorner

ALIKE = 0.001  # share by which two corners are pulled alike


def told_corners(it, state: Uncracked, now: AtAge) -> tuple[InsideCorner, ...]:
    """How hard each inside corner of a CornerSlab is pulled before anything cracks."""
    pulled = pulled_corners(form(it), usual(restraint(it)))
    return tuple(_told(each, state, now) for each in pulled)


def _told(corner: Pulled, state: Uncracked, now: AtAge) -> InsideCorner:
    length = min(now.material_length, corner.longest)
    mean = corner.mean(state, length)
    across = (corner.direction + np.pi / 2) % np.pi
    return InsideCorner(corner.at, mean, mean / now.strength, across, corner.end(length))


def looked_at(it, corners: tuple[InsideCorner, ...]) -> int:
    """Number of the corner whose crack is worked out: the one that is asked for, or the worst."""
    return it.look - 1 if 0 < it.look <= len(corners) else _worst(corners)


def _worst(corners: tuple[InsideCorner, ...]) -> int:
    """The first of those that are pulled hardest."""
    most = max(each.share for each in corners)
    return next(k for k, each in enumerate(corners) if each.share >= most - ALIKE * abs(most))


def line_at(it, now: AtAge) -> Line:
    """Line of the crack of a CornerSlab that is looked at, in the concrete of an age."""
    of, by = form(it), restraint(it)
    if len(pulled_corners(of, usual(by))) == 1:  # no need to know how hard it is pulled
        return Line(of, by, 0)
    state = uncracked(of, by, now.modulus, now.free)
    return Line(of, by, looked_at(it, told_corners(it, state, now)))
