"""From bending to Outcome: what all straight members with bars have in common."""

from functools import partial

import numpy as np

from crackkit.mechanics.elastic_profile import rectangle_profile
from crackkit.mechanics.moment_curvature import ultimate_moment, yield_moment
from crackkit.mechanics.stress_field import stress_field
from crackkit.structures.cracking import cracks
from crackkit.structures.judging import Case, cautions, verdict
from crackkit.structures.line_movement import movement
from crackkit.structures.line_working import working
from crackkit.structures.member import Layer, Member
from crackkit.structures.outcome import Outcome, SteelLine, StressMap, WorstSection
from crackkit.structures.stretching import SENSE, Stretch, stretch, tension_zones

STATIONS = 161
MAP_COLUMNS, MAP_ROWS = 120, 25


def outcome(structure, member: Member, bent, line_load: float) -> Outcome:
    """Answer the four questions for a straight member that has been solved for bending.

    Parameters
    ----------
    structure : object
        The inputs; kept in the Outcome. Has ``supports``, two places [mm].
    member : Member
        Section, bars and material.
    bent : BeamState
        Moments and shears along the member.
    line_load : float
        Spread load on the top face [N/mm].

    Returns
    -------
    Outcome
    """
    x = stations(member, bent)
    stretched = stretch(member, x, bent.moment(x), bent.shear(x))
    zones = tension_zones(stretched)
    found = cracks(stretched, zones)
    worst = worst_section(stretched, zones, found)
    falls_at = _falls_at(worst, found)
    case = Case(member, zones, found, falls_at is not None)
    return Outcome(
        structure=structure,
        movement=movement(stretched, structure.supports, falls_at),
        tension=zones,
        cracks=found,
        steel=tuple(_steel_line(stretched, k, item) for k, item in enumerate(member.layers)),
        verdict=verdict(case),
        cautions=cautions(case),
        stresses=stress_map(stretched, line_load),
        worst=worst,
        x=x,
        moment=stretched.moment,
        shear=stretched.shear,
        steel_mass=member.steel_mass,
        work=partial(working, stretched, worst),
    )


def stations(member: Member, bent) -> np.ndarray:
    """Stations [mm]: evenly spread, with every place where something begins, ends or peaks."""
    ends = [place for item in member.layers for place in _bar_places(member, item)]
    even = np.linspace(0.0, member.length, STATIONS)
    every = np.concatenate([even, bent.stations(), np.array(ends)])
    return np.unique(np.clip(every, 0.0, member.length))


def _bar_places(member: Member, item: Layer) -> tuple[float, ...]:
    reach = member.anchorage(item)
    return item.start, item.start + reach, item.end - reach, item.end


def _steel_line(stretched: Stretch, index: int, item: Layer) -> SteelLine:
    member, along = stretched.member, stretched.states
    axis, inertia = along.at_row(stretched.row)
    lever = member.ratio * (item.depth - axis)
    # where nothing stretched crosses a crack the cracked section has no stiffness, and bars on
    # the squeezed side carry nothing that could be told
    bears = along.present[index] & (inertia > 0)
    stress = np.where(bears, lever * stretched.moment / np.where(inertia > 0, inertia, 1.0), 0.0)
    capacity = along.share[index] * member.yield_strength
    return SteelLine(
        item.key,
        item.label,
        stretched.x,
        stress,
        capacity,
        item.depth,
        item.start,
        item.end,
        item.number,
        item.bar.diameter,
        item.bar.name,
        item.side_cover,
    )


def worst_section(stretched: Stretch, zones, found) -> WorstSection:
    """Pick the section through the worst crack, or the most stretched one if nothing cracks."""
    face, at = _worst_place(zones, found, stretched)
    station = int(np.argmin(np.abs(stretched.x - at)))
    along = stretched.states
    sense = SENSE[face]
    cracked = bool(stretched.face_ratio[face][station] > 1.0)
    row = (1 if face == "bottom" else 2) if cracked else 0
    size = abs(float(stretched.moment[station]))
    ratio = float(stretched.face_ratio[face][station])
    stress = max((c.steel_stress for c in found if c.face == face and c.at == at), default=0.0)
    return WorstSection(
        at=at,
        face=face,
        axis=float(along.axis[row, station]),
        cracked=cracked,
        moment=size,
        cracking_moment=size / ratio if ratio > 0 else 0.0,
        yield_moment=_bar_moment(yield_moment, stretched, station, sense),
        ultimate_moment=_bar_moment(ultimate_moment, stretched, station, sense),
        steel_stress=stress,
    )


def _worst_place(zones, found, stretched: Stretch) -> tuple[str, float]:
    if found:
        worst = max(found, key=lambda c: (c.width is None, c.width.governing if c.width else 0.0))
        return worst.face, worst.at
    if zones:
        zone = max(zones, key=lambda z: z.peak)
        return zone.face, zone.at
    return "bottom", float(stretched.x[stretched.x.size // 2])


def _bar_moment(rule, stretched: Stretch, station: int, sense: int) -> float:
    """Moment [N mm] by a rule of the cracked section, bars counted by their developed share."""
    member, share = stretched.member, stretched.states.share[:, station]
    areas = [item.area * part for item, part in zip(member.layers, share, strict=True)]
    pairs = [(i.depth, a) for i, a in zip(member.layers, areas, strict=True) if a > 0]
    if not pairs:
        return 0.0
    depths, areas = zip(*pairs, strict=True)
    return float(
        rule(
            member.section,
            list(depths),
            list(areas),
            member.concrete,
            member.yield_strength,
            sense=sense,
        )
    )


def _falls_at(worst: WorstSection, found) -> float | None:
    """Where the member breaks [mm]: at a crack nothing holds, or beyond the ultimate moment."""
    if any(crack.width is None for crack in found):
        return worst.at
    if worst.cracked and worst.moment > worst.ultimate_moment:
        return worst.at
    return None


def stress_map(stretched: Stretch, line_load: float) -> StressMap:
    """Map the principal stress of the uncracked member over a grid."""
    member, x = stretched.member, stretched.x
    columns = np.linspace(0.0, member.length, MAP_COLUMNS)
    rows = np.linspace(0.0, member.section.depth, MAP_ROWS)
    field = stress_field(
        columns,
        rectangle_profile(rows, member.section.width, member.section.depth),
        np.interp(columns, x, stretched.moment),
        np.interp(columns, x, stretched.shear),
        line_load,
    )
    larger = np.where(field.s1 > -field.s2, field.s1, field.s2)
    return StressMap(columns, rows, larger / member.cracking_strength)
