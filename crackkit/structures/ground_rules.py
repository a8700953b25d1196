"""Published rules for a slab whose two ends cannot move, beside what happens to this one.

They know nothing of the base, of joints, or of ends that give a little: the worst case.
"""

from dataclasses import dataclass

from crackkit.mechanics.restrained_cracking import (
    RestrainedSlab,
    end_restraint_strain,
    final_cracks,
    greatest_spacing_en,
)
from crackkit.structures.member import CREEP, STEEL_MODULUS
from crackkit.words import _

WIDE = 1000.0  # mm of its width that are looked at


@dataclass(frozen=True)
class HeldRule:
    """What a rule says.

    Attributes
    ----------
    key, name, where : str
        For programs, for people, and where it is published.
    spacing, width : float or None
        Distance of the cracks and their width [mm]; None where it has no answer.
    trouble : str
        Why it has none.
    """

    key: str
    name: str
    where: str
    spacing: float | None
    width: float | None
    trouble: str = ""


def held_rules(it, free: float) -> tuple[HeldRule, ...]:
    """Ask the rules for a GroundSlab that wants to shorten by `free` [-]; none without bars."""
    return (gilbert(it, free), eurocode(it)) if it.area else ()


def slab_between_walls(it, free: float) -> RestrainedSlab:
    """Describe a metre of its width to Gilbert's model; between joints where they part it."""
    return RestrainedSlab(
        length=it.length / (it.panels if it.parted else 1),
        concrete_area=WIDE * it.thickness,
        bars_area=WIDE * it.area,
        diameter=it.bar.diameter,
        tensile_strength=it.hardened.tensile * (1 - it.spent),
        concrete_modulus=it.hardened.modulus,
        creep=CREEP,
        shrinkage=max(free, 1e-9),
    )


def gilbert(it, free: float) -> HeldRule:
    """Final spacing and width (Gilbert 1992, from memory)."""
    name, where = "Gilbert", "Gilbert 1992"
    try:
        end = final_cracks(slab_between_walls(it, free))
    except ValueError as error:
        return HeldRule("gilbert", name, where, None, None, str(error))
    return HeldRule("gilbert", name, where, float(end.spacing), float(end.width))


def eurocode(it) -> HeldRule:
    """Greatest spacing and width (EN 1992-3 Annex M, from memory)."""
    rho = it.area / it.thickness
    strain = end_strain(it)
    spacing = float(greatest_spacing_en(it.clear_cover, it.bar.diameter, rho))
    return HeldRule("en_1992_3", "EN 1992-3", "EN 1992-3 (M.1)", spacing, spacing * strain)


def end_strain(it) -> float:
    """Strain of bars beyond that of the concrete, ends held (EN 1992-3 (M.1), from memory) [-]."""
    ratio = STEEL_MODULUS / it.hardened.modulus
    return float(end_restraint_strain(it.area / it.thickness, ratio, it.hardened.tensile))


def rule_label(rule: HeldRule) -> str:
    """Name a rule as a heading does."""
    return _("Held at both ends: {where}, from memory").format(where=rule.where)
