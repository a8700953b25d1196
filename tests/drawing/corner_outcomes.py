"""Slabs with inside corners, made up so that each part of their picture has something to show.

They are no mechanics: pull that falls off from each corner, a crack along its bisector. They serve
to look at drawings of states that are rare or hard to reach. Plan and bars are those of the slab.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.crack_limits import limit
from crackkit.structures.corner_bars import laid_bars, layout
from crackkit.structures.corner_restraint import restraint, tied
from crackkit.structures.corner_shapes import form, nooks, polygons
from crackkit.structures.cornered import CornerCrack, Cornered, InsideCorner, LaidBar, PlanField
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    UNHELD,
    Lengthening,
    Outcome,
    Told,
    Verdict,
    WidthBand,
)

STRENGTH, REACH, FREE = 2.9, 320.0, 4e-4  # MPa, material length [mm], shrinkage [-]
GRID = 61  # lines of the field, each way
STEP, BEND = 25.0, 2e-5  # mm along the crack, how it turns away [1/mm]
HARD = 330.0  # MPa in the bar nearest to the corner
WHY = "The corner is pulled from two sides at once, and what lies across the crack is far off."


@dataclass(frozen=True)
class Corners:
    """What is made up of a slab: its corners, each with the way into the concrete."""

    at: np.ndarray
    into: np.ndarray


def outcome(slab, pull: float = 1.8) -> Outcome:
    """Make up what is said of a slab.

    Parameters
    ----------
    slab : CornerSlab
    pull : float
        Mean tension at the worst corner over the strength [-].
    """
    state = cornered(slab, pull)
    band, bound = state.crack.band, limit("EN", "moist")
    width = None if band is None else band.governing
    return Outcome(
        structure=slab,
        movement=Lengthening(-2.0),
        tension=(),
        cracks=(),
        steel=(),
        verdict=Verdict(_key(state, bound), width, bound, WHY),
        cautions=(),
        steel_mass=12.0,
        work=tuple,
        x=state.field.x,
        cornered=state,
        numbers=(
            Told("free", "wants to shrink", state.free, "strain"),
            Told("share", "pull over strength", state.share, "ratio"),
            Told("length", "crack is long", state.crack.length, "length"),
            Told("width", "crack", "none" if width is None else width, "width"),
            Told("stress", "pull in the bars", state.steel_stress, "stress"),
            Told("mass", "bars weigh", 12.0, "mass"),
        ),
    )


def _key(state, bound) -> str:
    if state.crack.band is None:
        return UNCRACKED
    if not any(one.crosses for one in state.bars):
        return UNHELD
    return TIGHT if state.crack.widest <= bound.width else TOO_WIDE


def cornered(slab, pull: float) -> Cornered:
    of = form(slab)
    loops, corners = polygons(of), corners_of(slab)
    line = _line(loops, corners, _looked_at(slab, corners))
    bars = bars_of(slab, line)
    crack = _crack(slab, line, bars, pull)
    return Cornered(
        loops=loops,
        moved=_moved(slab, loops, pull),
        tied=tied(of, restraint(slab)),
        free=FREE,
        strength=STRENGTH,
        modulus=15000.0,
        toughness=0.12,
        material_length=REACH,
        field=_field(slab, loops, corners, pull),
        corners=tuple(_inside_corner(corners, k, pull) for k in range(len(corners.at))),
        worst=_looked_at(slab, corners),
        crack=crack,
        bars=bars,
        told_openings=lambda: _history(slab, crack),
    )


def _looked_at(slab, corners: Corners) -> int:
    return min(max(int(slab.look) - 1, 0), len(corners.at) - 1)


def corners_of(slab) -> Corners:
    found = nooks(form(slab))
    turn = np.array([each.inward for each in found])
    ways = np.column_stack([np.cos(turn), np.sin(turn)])
    return Corners(np.array([each.at for each in found]), ways)


def _inside_corner(corners: Corners, k: int, pull: float) -> InsideCorner:
    at, into, share = corners.at[k], corners.into[k], pull * (1.0 - 0.08 * k)
    across = float(np.arctan2(into[0], -into[1]))
    return InsideCorner(
        tuple(at.tolist()), share * STRENGTH, share, across, tuple((at + REACH * into).tolist())
    )


def inside(points, loops) -> np.ndarray:
    """Which points lie in the concrete."""
    x, y = np.moveaxis(np.asarray(points), -1, 0)
    odd = np.zeros(x.shape, bool)
    for loop in loops:
        for (x1, y1), (x2, y2) in zip(loop, np.roll(loop, -1, axis=0), strict=True):
            if y1 != y2:
                odd ^= ((y1 > y) != (y2 > y)) & (x < x1 + (y - y1) * (x2 - x1) / (y2 - y1))
    return odd


def _field(slab, loops, corners: Corners, pull: float) -> PlanField:
    x, y = np.linspace(0.0, slab.length, GRID), np.linspace(0.0, slab.width, GRID)
    points = np.stack(np.meshgrid(x, y), axis=-1)
    far = np.array([np.hypot(*np.moveaxis(points - at, -1, 0)) for at in corners.at])
    near = far.argmin(axis=0)
    share = 0.6 * pull * (REACH / np.maximum(far.min(axis=0), 60.0)) ** 0.455
    direction = np.arctan2(corners.into[near, 0], -corners.into[near, 1])
    within = inside(np.clip(points, 1.0, (slab.length - 1.0, slab.width - 1.0)), loops)
    return PlanField(x, y, np.where(within, share, np.nan), np.where(within, direction, np.nan))


def _line(loops, corners: Corners, k: int) -> np.ndarray:
    """Points of the crack from a corner on, to where it leaves the concrete [mm]."""
    at, into = corners.at[k], corners.into[k]
    way = np.arange(0.0, 20000.0, STEP)[:, None]
    points = at + way * into + BEND * way**2 * np.array([-into[1], into[0]])
    leaves = ~inside(points[1:], loops)
    return points[: max(int(leaves.argmax()) + 1, 3)]


def _crack(slab, line: np.ndarray, bars, pull: float) -> CornerCrack:
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    end, runs = float(along[-1]), pull >= 1.0
    length = min(0.3 * pull, 1.0) * end * runs
    bare = 0.25 * pull * np.sqrt(np.maximum(1.0 - along / max(length, 1.0), 0.0)) * runs
    opening = bare * 0.85 ** min(sum(one.crosses for one in bars), 6)
    widest = float(opening.max())
    rules = (("cohesive", widest),)
    band = WidthBand(
        widest / 1.5, widest, 1.5 * widest, widest, "cohesive", "cohesive crack", rules
    )
    saw = {"none": 0.0, "saw": min(slab.saw_length, end), "joint": end}[slab.joint]
    return CornerCrack(line, along, opening, bare, saw, runs, length, band if runs else None)


def _history(slab, crack: CornerCrack) -> tuple:
    days = np.geomspace(1.0, 3650.0, 8)
    grow = np.log10(days) / np.log10(max(slab.age, 2.0))
    return days, crack.widest * grow, float(crack.bare.max()) * grow


def bars_of(slab, line: np.ndarray) -> tuple[LaidBar, ...]:
    return tuple(_bar(each, line) for each in laid_bars(layout(slab)))


def _bar(each, line: np.ndarray) -> LaidBar:
    start, end = np.array(each.start), np.array(each.end)
    place = _met(start, end, line)
    crosses = place is not None
    stress = HARD * np.exp(-np.hypot(*(place - line[0])) / 800.0) if crosses else 0.0
    fault = "yields" if stress > 310.0 else "slips" if 0.0 < stress < 60.0 else ""
    diameter = bar(each.size).diameter
    return LaidBar(each.start, each.end, diameter, each.kind, crosses, float(stress), fault)


def _met(start, end, line):
    """Where the line of the crack passes a bar, seen as straight."""
    matrix = np.column_stack([end - start, line[0] - line[-1]])
    if abs(np.linalg.det(matrix)) < 1e-6:
        return None
    share = np.linalg.solve(matrix, line[0] - start)
    return start + share[0] * (end - start) if ((share >= 0) & (share <= 1)).all() else None


def _moved(slab, loops, pull: float) -> tuple:
    """What is free shrinks to the middle; sides that are tied stay."""
    keeps = {"base": (1.0, 1.0), "ends": (0.0, 1.0), "edges": (0.0, 0.0), "foot": (0.3, 1.0)}
    middle = np.array([slab.length / 2, 0.0 if slab.shape == "door" else slab.width / 2])
    corners = corners_of(slab)
    opened = [
        np.exp(-np.hypot(*np.moveaxis(loop - corners.at[0], -1, 0)) / 1500.0)[:, None]
        * corners.into[0]
        for loop in loops
    ]
    way = np.array(keeps[restraint(slab).held])
    return tuple(
        FREE * (-(loop - middle) * way + 500.0 * pull * more)
        for loop, more in zip(loops, opened, strict=True)
    )
