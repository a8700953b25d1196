"""How a slab with inside corners fares: from its shrinkage to the crack and its bars.

What does not hang on the age is worked out once and kept: plan, restraint, line of the crack, the
body split along it, and the bars.
"""

from dataclasses import replace
from functools import lru_cache, partial

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.crack_state import CrackState
from crackkit.mechanics.plane_solution import principal
from crackkit.structures.corner_ages import AtAge, at_age
from crackkit.structures.corner_bars import Laid, laid_bars, layout
from crackkit.structures.corner_field import Pulled, plan_grid, pulled_corners
from crackkit.structures.corner_opening import Line, split_slab
from crackkit.structures.corner_rest import bare, bare_after, is_settled, opened
from crackkit.structures.corner_restraint import Uncracked, restraint, tied, uncracked, usual
from crackkit.structures.corner_shapes import form, outline
from crackkit.structures.cornered import (
    CornerCrack,
    Cornered,
    InsideCorner,
    LaidBar,
    PlanField,
)
from crackkit.structures.outcome import WidthBand
from crackkit.words import _

TOLD = np.array([0.0, 0.1, 0.22, 0.34, 0.46, 0.58, 0.7, 0.85, 1.0])
"""Places of the ages of the curve between the end of curing and the last day, in decades [-]."""
HAIR = 0.01  # mm
TORN = 2.0  # openings G_F/f_t from which the concrete hardly holds the faces any more
SCATTER = 1.5  # real cracks are half again as wide, or narrow
FULL = 0.95  # of what a bar could build up
ALIKE = 0.001  # share by which two corners are pulled alike


def cornered(it) -> Cornered:
    """Work out the state of a CornerSlab at its age."""
    of, by, now = form(it), restraint(it), at_age(it, it.age)
    state = uncracked(of, by, now.modulus, now.free)
    corners = pulled_corners(of, usual(by))
    told = tuple(_told(each, state, now) for each in corners)
    worst = looked_at(it, told)
    line = Line(of, by, worst)
    held, alone = opened(it, line, now), bare(line, now)
    loops, moved = _outline(line, held)
    return Cornered(
        loops=loops,
        moved=moved,
        tied=tied(of, by),
        free=now.free,
        strength=now.strength,
        modulus=now.modulus,
        toughness=now.toughness,
        material_length=now.material_length,
        field=_field(of, state, now),
        corners=told,
        worst=worst,
        crack=_crack(it, line, now, held, alone),
        bars=_bars(laid_bars(layout(it)), held),
        told_openings=partial(_openings_with_now, it, (held, alone)),
        settled=is_settled(held) and is_settled(alone),
    )


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


def _field(of, state: Uncracked, now: AtAge) -> PlanField:
    grid = plan_grid(of)
    s1, _s2, angle = principal(grid.carried(state.stress))
    return PlanField(grid.x, grid.y, s1 / now.strength, angle)


def _crack(it, line: Line, now: AtAge, held: CrackState, alone: CrackState) -> CornerCrack:
    points, along, opening = _whole_line(line, held)
    saw = {"none": 0.0, "saw": min(it.saw_length, along[-1]), "joint": along[-1]}[it.joint]
    wild = opening[along > saw] if saw else opening
    gapes = opening > HAIR
    widest = float(wild.max(initial=0.0))
    return CornerCrack(
        points=points,
        along=along,
        opening=opening,
        bare=_whole_line(line, alone)[2],
        saw=float(saw),
        runs=bool(widest > TORN * now.toughness / now.strength),
        length=float(along[gapes].max(initial=0.0)),
        band=_band(widest) if widest > HAIR else None,
    )


def _whole_line(line: Line, state: CrackState):
    """Points, distances and openings along the line, its tip with them."""
    cut = split_slab(line).slab.line
    opening = np.maximum(state.opening, 0.0)
    if len(cut.ends) > len(opening):
        end = cut.along[-1] + np.hypot(*(cut.ends[-1] - cut.ends[-2]))
        return cut.ends, np.append(cut.along, end), np.append(opening, 0.0)
    return cut.ends, cut.along, opening


def _band(width: float) -> WidthBand:
    name = _("cohesive crack")
    low, high = width / SCATTER, width * SCATTER
    return WidthBand(low, width, high, width, "cohesive", name, ((name, width),))


def _bars(bars: tuple[Laid, ...], held: CrackState) -> tuple[LaidBar, ...]:
    met = {each.number: k for k, each in enumerate(held.crack.bars)}
    return tuple(_bar(each, met.get(k), held) for k, each in enumerate(bars))


def _bar(laid: Laid, k: int | None, held: CrackState) -> LaidBar:
    diameter = bar(laid.size).diameter
    if k is None:
        return LaidBar(laid.start, laid.end, diameter, laid.kind, False, 0.0, "")
    stress, crossing = float(held.bar_stresses[k]), held.crack.bars[k]
    steel, pulled = crossing.bar, float(held.elongations[k])
    fault = ""
    if stress > 0.999 * steel.yield_stress:
        fault = "yields"
    elif stress < FULL * float(steel.stress(pulled, 1e6)):
        fault = "slips"
    return LaidBar(laid.start, laid.end, diameter, laid.kind, True, stress, fault)


def _outline(line: Line, held: CrackState):
    """Loops of the split slab and how far their points move; the mouth of the crack is twice."""
    slab, movement = split_slab(line).slab, held.movement
    loops = [_walk(slab.mesh, loop) for loop in outline(line.form).loops]
    return tuple(slab.mesh.points[k] for k in loops), tuple(movement[k] for k in loops)


def _walk(mesh, loop) -> np.ndarray:
    nodes = np.concatenate([mesh.sides[side.name][:, [0, 2, 1]].ravel() for side in loop])
    return nodes[np.append(nodes[1:] != nodes[:-1], nodes[-1] != nodes[0])]


def _openings_with_now(it, now: tuple[CrackState, CrackState]):
    """The curve, its age of today among the others."""
    ages, *rows = openings(replace(it, age=it.last_day))
    k = int(np.searchsorted(ages, it.age))
    if k < len(ages) and ages[k] == it.age:
        return ages, *rows
    here = (_widest(state) for state in now)
    rows = (np.insert(row, k, width) for row, width in zip(rows, here, strict=True))
    return np.insert(ages, k, it.age), *rows


def _widest(state: CrackState) -> float:
    return max(float(state.opening.max()), 0.0)


@lru_cache(maxsize=32)
def openings(it) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Ages [days], and the greatest openings then with and without bars [mm]."""
    ages = it.curing * (it.last_day / it.curing) ** TOLD
    widths, line, states = [], None, (None, None)
    for age in ages.tolist():
        now = at_age(it, age)
        last, line = line, _line_at(it, now)
        held, alone = states if line == last else (None, None)
        states = opened(it, line, now, held), bare_after(line, now, alone)
        widths.append([_widest(state) for state in states])
    return ages, *np.array(widths).T


def _line_at(it, now: AtAge) -> Line:
    of, by = form(it), restraint(it)
    state = uncracked(of, by, now.modulus, now.free)
    told = tuple(_told(each, state, now) for each in pulled_corners(of, usual(by)))
    return Line(of, by, looked_at(it, told))
