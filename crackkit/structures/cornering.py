"""How a slab with inside corners fares: from its shrinkage to the crack and its bars.

What does not hang on the age is worked out once and kept: plan, restraint, line of the crack, the
body split along it, and the bars.
"""

from functools import partial

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.crack_state import CrackState
from crackkit.mechanics.plane_solution import principal
from crackkit.structures.corner_ages import AtAge
from crackkit.structures.corner_bars import Laid, laid_bars, layout
from crackkit.structures.corner_field import plan_grid
from crackkit.structures.corner_history import bare, opened, openings, steps_to
from crackkit.structures.corner_looked import told_corners
from crackkit.structures.corner_opening import Line, split_slab
from crackkit.structures.corner_rest import is_settled
from crackkit.structures.corner_restraint import Uncracked, tied, uncracked
from crackkit.structures.corner_shapes import outline
from crackkit.structures.cornered import (
    CornerCrack,
    Cornered,
    LaidBar,
    PlanField,
)
from crackkit.structures.outcome import WidthBand
from crackkit.words import _

HAIR = 0.01  # mm
TORN = 2.0  # openings G_F/f_t from which the concrete hardly holds the faces any more
SCATTER = 1.5  # real cracks are half again as wide, or narrow
FULL = 0.95  # of what a bar could build up


def cornered(it) -> Cornered:
    """Work out the state of a CornerSlab at its age."""
    steps = steps_to(it, it.age)
    now, line = steps[-1].now, steps[-1].line
    of, by = line.form, line.by
    state = uncracked(of, by, now.modulus, now.free)
    held, alone = opened(it, steps), bare(steps)
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
        corners=told_corners(it, state, now),
        worst=line.which,
        crack=_crack(it, line, now, held, alone),
        bars=_bars(laid_bars(layout(it)), held),
        told_openings=partial(openings, it),
        settled=is_settled(held) and is_settled(alone),
    )


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
