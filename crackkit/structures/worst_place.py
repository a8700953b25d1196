"""The section that decides, and the moments it can bear."""

from dataclasses import replace
from functools import lru_cache

import numpy as np

from crackkit.mechanics.moment_curvature import ultimate_moment, yield_moment
from crackkit.structures.crossing import ROW, crossing
from crackkit.structures.outcome import WorstSection, decisive
from crackkit.structures.stretching import SENSE, Stretch


def worst_section(stretched: Stretch, zones, found) -> WorstSection:
    """Pick the section through the worst crack, or the most stretched one if nothing cracks."""
    crack = decisive(found, stretched.member.length / 2)
    face, at = (crack.face, crack.at) if crack else _most_stretched(zones, stretched)
    sense, moment = SENSE[face], float(np.interp(at, stretched.x, stretched.moment))
    held = crossing(stretched, face, at)
    bars = _bars_at(stretched, at) if held.stretched else ([], [])
    return WorstSection(
        at=at,
        face=face,
        axis=held.axis if crack else float(np.interp(at, stretched.x, stretched.states.axis[0])),
        cracked=crack is not None,
        moment=abs(moment),
        cracking_moment=_cracking_moment(stretched, face, at),
        yield_moment=_yield_moment(stretched, at, bars, sense),
        ultimate_moment=_ultimate_moment(stretched, at, bars, sense),
        steel_stress=crack.steel_stress if crack else 0.0,
        section=stretched.member.section_at(at),
    )


def _most_stretched(zones, stretched: Stretch) -> tuple[str, float]:
    if zones:
        zone = max(zones, key=lambda z: round(z.peak, 6))
        return zone.face, zone.at
    return "bottom", stretched.member.length / 2


def _cracking_moment(stretched: Stretch, face: str, at: float) -> float:
    member, along = stretched.member, stretched.states
    axis, inertia = (np.interp(at, along.x, rows[0]) for rows in (along.axis, along.inertia))
    reach = float(member.depth_at(at)) - axis if face == "bottom" else axis
    return float(member.cracking_strength * inertia / reach)


def _bars_at(stretched: Stretch, at: float) -> tuple[list, list]:
    """Depths [mm] and areas [mm2] of the bars at a place, counted by their developed share."""
    along, member = stretched.states, stretched.member
    shares = [float(np.interp(at, along.x, row)) for row in along.share]
    rows = [
        (float(member.layer_depth(i, at)), i.area * part)
        for i, part in zip(member.layers, shares, strict=True)
        if part > 0
    ]
    return [depth for depth, _a in rows], [area for _d, area in rows]


def _yield_moment(stretched: Stretch, at: float, bars, sense: int) -> float:
    # with the modulus of this load, as the stress in the bars is worked out
    member = stretched.member
    material = replace(member.concrete, modulus=member.modulus)
    return _bar_moment(yield_moment, stretched, at, bars, material, sense)


def _ultimate_moment(stretched: Stretch, at: float, bars, sense: int) -> float:
    return _bar_moment(ultimate_moment, stretched, at, bars, stretched.member.concrete, sense)


def _bar_moment(rule, stretched: Stretch, at: float, bars, material, sense: int) -> float:
    depths, areas = bars
    if not areas:
        return 0.0
    member = stretched.member
    strength, section = member.yield_strength, member.section_at(at)
    return _known(rule, section, tuple(depths), tuple(areas), material, strength, sense)


@lru_cache(maxsize=256)  # a load that moves along a beam meets the same few sections
def _known(rule, section, depths, areas, material, yield_strength, sense: int) -> float:
    return float(rule(section, depths, areas, material, yield_strength, sense=sense))


def breaks_at(stretched: Stretch, found) -> float | None:
    """Where the member breaks [mm]: at a crack nothing holds, or beyond the ultimate moment."""
    if any(crack.width is None for crack in found):
        return decisive(found, stretched.member.length / 2).at
    spent = [(_spent(stretched, crack), crack.at) for crack in _candidates(found)]
    most, at = max(spent, default=(0.0, 0.0))
    return at if most > 1.0 else None


def _candidates(found) -> list:
    """The cracks that could break first: of each face, the one that strains its bars most."""
    chosen = {}
    for face in ROW:
        own = [crack for crack in found if crack.face == face]
        if own:
            strained = max(own, key=lambda c: round(c.steel_stress, 3))
            slipping = max(own, key=lambda c: round(c.steel_stress / max(c.developed, 1e-9), 3))
            chosen |= {strained.at: strained, slipping.at: slipping}
    return list(chosen.values())


def _spent(stretched: Stretch, crack) -> float:
    """Moment at a crack as a share of the moment it can bear [-]."""
    moment = abs(float(np.interp(crack.at, stretched.x, stretched.moment)))
    bars = _bars_at(stretched, crack.at)
    bears = _ultimate_moment(stretched, crack.at, bars, SENSE[crack.face])
    return moment / bears if bears > 0 else np.inf
