"""From bending to Outcome: what all straight members with bars have in common."""

from functools import partial

import numpy as np

from crackkit.structures.cracking import cracks
from crackkit.structures.judging import Case, cautions, verdict
from crackkit.structures.line_movement import movement
from crackkit.structures.line_working import working
from crackkit.structures.member import Layer, Member
from crackkit.structures.outcome import Movement, Outcome, SteelLine
from crackkit.structures.stress_mapping import stress_map
from crackkit.structures.stretching import Stretch, stretch, tension_zones
from crackkit.structures.worst_place import breaks_at, worst_section

STATIONS = 161
BESIDE = 0.001  # mm beside a support that holds the member fast, where the moment jumps


def outcome(structure, member: Member, bent) -> Outcome:
    """Answer the four questions for a straight member whose moments follow from statics.

    Parameters
    ----------
    structure : object
        The inputs; kept in the Outcome. Has ``held_by`` (supports) and ``spread`` (loads).
    member : Member
        Section, bars and material.
    bent : BeamState
        Moments and shears along the member.

    Returns
    -------
    Outcome
    """
    stretched = stretched_by(member, bent, structure.held_by)
    zones = tension_zones(stretched)
    found = cracks(stretched, zones)
    broken = breaks_at(stretched, found)
    case = Case(member, zones, found, broken is not None, tuple(bent.reactions.tolist()))
    moved = movement(stretched, structure.held_by, broken)
    return assembled(structure, stretched, case, moved)


def assembled(structure, stretched: Stretch, case: Case, moved: Movement, **more) -> Outcome:
    """Put the answers together.

    Parameters
    ----------
    structure : object
        The inputs.
    stretched : Stretch
        Bending under the present loads.
    case : Case
        Zones and cracks under the present loads.
    moved : Movement
    more
        Fields of the Outcome that are not the usual ones.
    """
    member, worst = stretched.member, worst_section(stretched, case.zones, case.cracks)
    usual = {
        "structure": structure,
        "movement": moved,
        "tension": case.zones,
        "cracks": case.cracks,
        "steel": _steel_lines(stretched),
        "stresses": stress_map(stretched, structure.spread),
        "worst": worst,
        "x": stretched.x,
        "moment": stretched.moment,
        "shear": stretched.shear,
        "steel_mass": member.steel_mass,
        "work": partial(working, stretched, worst),
        "depth": stretched.states.depth,
    }
    judged = {} if "verdict" in more else {"verdict": verdict(case), "cautions": cautions(case)}
    return Outcome(**{**usual, **judged, **more})


def stretched_by(member: Member, bent, held_by) -> Stretch:
    """Work out the pull at both faces along a member that has been solved for bending."""
    x = stations(member, bent, held_by)
    shear = 0.5 * (bent.shear(x, "left") + bent.shear(x))
    return stretch(member, x, bent.moment(x), shear)


def stations(member: Member, bent, held_by=()) -> np.ndarray:
    """Stations [mm]: evenly spread, with every place where something begins, ends or peaks."""
    rows = zip(member.layers, member.developing, strict=True)
    ends = [place for item, lengths in rows for place in _bar_places(item, *lengths)]
    ends += [place for place, _depth in member.depths]
    ends += [support.at - BESIDE for support in held_by if support.kind == "fixed"]
    even = np.linspace(0.0, member.length, STATIONS)
    every = np.concatenate([even, bent.stations(), np.array(ends)])
    return np.unique(np.clip(every, 0.0, member.length))


def _bar_places(item: Layer, left: float, right: float) -> tuple[float, ...]:
    return item.start, item.start + left, item.end - right, item.end


def _steel_lines(stretched: Stretch) -> tuple[SteelLine, ...]:
    """Stress along every layer of bars."""
    member, along = stretched.member, stretched.states
    axis, inertia = along.at_row(stretched.row)
    per_lever = member.ratio * stretched.moment / np.where(inertia > 0, inertia, 1.0)
    # where nothing stretched crosses a crack the cracked section has no stiffness, and bars on
    # the squeezed side carry nothing that could be told
    bears = along.present & (inertia > 0)
    stress = np.where(bears, (along.bar_depth - axis) * per_lever, 0.0)
    capacity = along.share * member.yield_strength
    rows = zip(member.layers, stress, capacity, strict=True)
    return tuple(_steel_line(member, stretched.x, *row) for row in rows)


def _steel_line(member: Member, x: np.ndarray, item: Layer, stress, capacity) -> SteelLine:
    return SteelLine(
        item.key,
        item.label,
        x,
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
