"""The map of stress in the uncracked member, as a multiple of what the concrete can bear."""

import numpy as np

from crackkit.mechanics.elastic_profile import rectangle_profile, tee_profile
from crackkit.mechanics.stress_field import stress_field
from crackkit.mechanics.tapered_field import tapered_stress_field
from crackkit.structures.member import Member
from crackkit.structures.outcome import StressMap
from crackkit.structures.stretching import Stretch

COLUMNS, ROWS = 120, 25


def stress_map(stretched: Stretch, spread=()) -> StressMap:
    """Map the principal stress that is larger in size over a grid.

    Parameters
    ----------
    stretched : Stretch
    spread : sequence of SpreadLoad
        Loads on the top face.

    Returns
    -------
    StressMap
        Not-a-number below the soffit of a tapered member.
    """
    member = stretched.member
    columns = np.linspace(0.0, member.length, COLUMNS)
    rows = np.linspace(0.0, member.section.depth, ROWS)
    moment = np.interp(columns, stretched.x, stretched.moment)
    shear = np.interp(columns, stretched.x, stretched.shear)
    load = _intensity(columns, spread)
    field = _field(member, columns, rows, moment, shear, load)
    larger = np.where(field.s1 > -field.s2, field.s1, field.s2)
    return StressMap(columns, rows, larger / member.cracking_strength)


def _field(member: Member, columns, rows, moment, shear, load):
    section = member.section
    if member.tapered:
        depth = member.depth_at(columns)
        return tapered_stress_field(columns, rows, section.width, depth, moment, shear, load)
    if section.flange_width:
        profile = tee_profile(
            rows, section.width, section.depth, section.flange_width, section.flange_depth
        )
    else:
        profile = rectangle_profile(rows, section.width, section.depth)
    return stress_field(columns, profile, moment, shear, load)


def _intensity(columns: np.ndarray, spread) -> np.ndarray:
    """Load on the top face at each column [N/mm]."""
    load = np.zeros(columns.size)
    for one in spread:
        load[(columns >= one.start) & (columns <= one.end)] += one.total
    return load
