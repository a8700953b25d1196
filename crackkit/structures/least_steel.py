"""Whether a section has enough steel to take over what the concrete lets go as it cracks."""

from crackkit.mechanics.minimum_steel import (
    least_beam_steel_aci,
    least_bending_steel_en,
    least_slab_steel_aci,
)
from crackkit.structures.member import Layer, Member

CLAUSES = {"EN": "EN 1992-1-1 9.2.1.1", "beam": "ACI 318-19 9.6.1.2", "slab": "ACI 318-19 7.6.1.1"}


def least_steel(member: Member, face: str, at: float, layers: list[Layer]) -> tuple[float, str]:
    """Give the least area of stretched bars [mm2] at a place, and the clause that asks for it.

    Parameters
    ----------
    member : Member
    face : str
        Stretched face.
    at : float
        The place [mm].
    layers : list of Layer
        Bars that cross there on the stretched side, one or more.
    """
    section = member.section_at(at)
    area = sum(item.area for item in layers)
    centre = sum(item.area * float(member.layer_depth(item, at)) for item in layers) / area
    effective = centre if face == "bottom" else section.depth - centre
    strength, concrete = member.yield_strength, member.concrete
    if member.code == "EN":
        width = _stretched_width(section, face)
        return least_bending_steel_en(width, effective, strength, concrete.tensile), CLAUSES["EN"]
    if layers[0].spacing:
        return least_slab_steel_aci(section.width, section.depth), CLAUSES["slab"]
    least = least_beam_steel_aci(section.width, effective, strength, concrete.strength)
    return least, CLAUSES["beam"]


def _stretched_width(section, face: str) -> float:
    """Mean width of the stretched part of the whole section [mm]."""
    if face == "bottom" or not section.flange_width:
        return section.width
    axis = section.centroid
    flange = min(section.flange_depth, axis)
    return section.width + (section.flange_width - section.width) * flange / axis
