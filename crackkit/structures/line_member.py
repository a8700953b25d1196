"""From bending to Outcome: what all straight members with bars have in common."""

from functools import partial

import numpy as np

from crackkit.mechanics.elastic_profile import rectangle_profile
from crackkit.mechanics.stress_field import stress_field
from crackkit.structures.cracking import cracks
from crackkit.structures.judging import Case, cautions, verdict
from crackkit.structures.line_movement import movement
from crackkit.structures.line_working import working
from crackkit.structures.member import Layer, Member
from crackkit.structures.outcome import Outcome, SteelLine, StressMap
from crackkit.structures.stretching import Stretch, stretch, tension_zones
from crackkit.structures.worst_place import breaks_at, worst_section

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
    shear = 0.5 * (bent.shear(x, "left") + bent.shear(x))
    stretched = stretch(member, x, bent.moment(x), shear)
    zones = tension_zones(stretched)
    found = cracks(stretched, zones)
    worst = worst_section(stretched, zones, found)
    broken = breaks_at(stretched, found)
    case = Case(member, zones, found, broken is not None, tuple(bent.reactions.tolist()))
    return Outcome(
        structure=structure,
        movement=movement(stretched, structure.supports, broken),
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
        depth=member.depth_at(x),
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
        item.face,
        member.line_of(item),
        item.hooks,
        item.spacing,
    )


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
