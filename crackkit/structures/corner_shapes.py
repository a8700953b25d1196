"""The forms of a slab with inside corners: outline, corners, and what sides may be tied."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.mechanics.plane_bodies import (
    l_slab,
    slab_round_column,
    slab_with_opening,
    tee_slab,
    wall_with_door,
)
from crackkit.mechanics.plane_outline import PlaneOutline, PlaneSide, left_turn
from crackkit.words import _

SHAPES = (
    ("corner", _("an L: one quarter is missing")),
    ("opening", _("a rectangle with an opening")),
    ("column", _("a rectangle with a box-out round a column")),
    ("door", _("a wall with a door")),
    ("depot", _("a T, with a box-out round a column")),
)
TURNS = (
    ("square", _("square, along the sides")),
    ("turned", _("square, turned by 45 degrees")),
    ("round", _("round")),
)
LEFT = 300.0
"""Least concrete that is left beside what is missing [mm]."""
SHARP = 5.0
"""Radius below which a corner counts as sharp [mm]."""
_FORMS = {"square": "square", "turned": "diamond", "round": "round"}
_STRAIGHT = 1e-6


_USUAL = {  # width, missing along, missing across [mm]
    "corner": (6000.0, 3000.0, 3000.0),
    "opening": (6000.0, 1200.0, 1200.0),
    "column": (6000.0, 600.0, 600.0),
    "door": (3000.0, 1000.0, 2100.0),
    "depot": (6000.0, 1800.0, 2000.0),
}
BOX = 500.0
"""Usual side of the box-out in a T [mm]."""


def usual_sizes(shape: str, length: float, width: float | None) -> dict:
    """Sizes of a shape where nobody says others [mm]; a `width` of None is that of the shape."""
    wide, along, across = _USUAL.get(shape, _USUAL["corner"])
    wide = wide if width is None else width
    tee = shape == "depot"
    across = min(across, (0.3 if tee else 0.7) * wide)
    return {
        "width": wide,
        "cut_length": min(along, length / (4 if tee else 2)),
        "cut_width": across,
        "cut_x": length / 2,
        "cut_y": (wide - across) / 2 if tee else wide / 2,
    }


@dataclass(frozen=True)
class Form:
    """What the plan of the slab depends on; lengths in [mm], names as in CornerSlab."""

    shape: str
    length: float
    width: float
    cut: tuple[float, float]
    at: tuple[float, float]
    rounding: float = 0.0
    turn: str = "square"
    box: float = 0.0


@dataclass(frozen=True)
class Nook:
    """An inside corner of the plan, sharp or rounded.

    Attributes
    ----------
    at : tuple of float
        The corner, or the middle of the arc [mm].
    inward : float
        Way into the concrete that halves it [rad].
    before, after : PlaneSide
        Sides that meet there.
    arc : PlaneSide or None
        The arc between them.
    """

    at: tuple[float, float]
    inward: float
    before: PlaneSide
    after: PlaneSide
    arc: PlaneSide | None = None


def form(it) -> Form:
    """Read the plan off a CornerSlab; inputs that do not matter do not count."""
    square = it.shape == "column"
    cut = (it.cut_length, it.cut_length if square else it.cut_width)
    at = {
        "corner": (0.0, 0.0),
        "door": (it.cut_x, 0.0),
    }.get(it.shape, (it.cut_x, it.cut_y))
    rounding = it.rounding if it.shape in ("corner", "opening") else 0.0
    tee = it.shape == "depot"
    turn, box = it.turn if square or tee else "square", it.box if tee else 0.0
    return Form(it.shape, it.length, it.width, cut, at, rounding, turn, box)


@lru_cache(maxsize=64)
def outline(of: Form) -> PlaneOutline:
    """Outline of the plan [mm]."""
    radius = of.rounding if of.rounding >= SHARP else 0.0
    if of.shape == "corner":
        return l_slab(of.length, of.width, *of.cut, radius)
    if of.shape == "opening":
        return slab_with_opening(of.length, of.width, of.at, of.cut, radius)
    if of.shape == "column":
        return slab_round_column(of.length, of.width, of.at, of.cut[0], _FORMS[of.turn])
    if of.shape == "depot":
        return tee_slab(of.length, of.width, *of.cut, (of.at, of.box, _FORMS[of.turn]))
    return wall_with_door(of.length, of.width, of.at[0] - of.cut[0] / 2, *of.cut)


def nooks(of: Form) -> tuple[Nook, ...]:
    """List the inside corners of the plan, in order along its loops."""
    return tuple(
        nook
        for loop in outline(of).loops
        for before, after in zip(loop[-1:] + loop[:-1], loop, strict=True)
        for nook in _nooks_at(loop, before, after)
    )


def _nooks_at(loop, before: PlaneSide, after: PlaneSide):
    turn = left_turn(before.direction(1.0), after.direction(0.0))
    if turn < -_STRAIGHT:
        middle = after.direction(0.0) + 0.5 * (np.pi - turn)
        yield Nook(after.start, float(middle % (2 * np.pi)), before, after)
    if after.turn < 0:
        (at,) = after.points([0.5]).tolist()
        following = loop[(loop.index(after) + 1) % len(loop)]
        inward = (after.direction(0.5) + np.pi / 2) % (2 * np.pi)
        yield Nook(tuple(at), float(inward), before, following, after)


def outer_sides(of: Form) -> tuple[str, ...]:
    """Names of the sides of the rectangle round the plan."""
    names = ("near", "foot left", "foot right", "right", "far", "top", "left")
    there = {side.name for side in outline(of).loops[0]}
    return tuple(name for name in names if name in there)


def end_sides(of: Form) -> tuple[str, str]:
    """Names of the short ends; those left and right where both ways are as long."""
    if of.shape == "door" or of.length >= of.width:
        return ("left", "right")
    return ("near", "far")


def foot_sides(of: Form) -> tuple[str, ...]:
    """Names of the sides on which a wall stands."""
    return ("foot left", "foot right") if of.shape == "door" else ("near",)


def sides_named(of: Form, names) -> tuple[PlaneSide, ...]:
    """Sides of these names, in order along the outline."""
    return tuple(side for side in outline(of).sides if side.name in names)


@lru_cache(maxsize=64)
def polygons(of: Form) -> tuple[np.ndarray, ...]:
    """Loops as polygons [mm]; arcs are cut into short sides."""
    shares = {False: np.array([0.0]), True: np.arange(16) / 16}
    return tuple(
        np.concatenate([side.points(shares[side.turn != 0]) for side in loop])
        for loop in outline(of).loops
    )
