"""What the rules ask of bars as they lie: room for the stones, cover, not too far apart."""

import math

from crackkit.mechanics.bars import least_clear_spacing_aci, least_clear_spacing_en
from crackkit.mechanics.mat_spacing import widest_mat_spacing
from crackkit.mechanics.minimum_steel import (
    least_beam_steel_aci,
    least_bending_steel_en,
    least_slab_steel_aci,
    pulled_crack_control_steel_en,
)
from crackkit.mechanics.section import Section
from crackkit.structures.least_steel import CLAUSES
from crackkit.structures.strip_stress import BENT, Strip

TOGETHER = 5.0  # EN 1992-1-1 7.3.4(3)


def least_gap(code: str, diameter: float, stones: float) -> float:
    """Give the least clear distance of bars of a diameter for the largest stones [mm]."""
    rule = least_clear_spacing_aci if code == "ACI" else least_clear_spacing_en
    return rule(diameter, stones)


def widest_spacing(
    shape: str, strip: Strip, yield_strength: float, cover: float, diameter: float
) -> float:
    """Give the largest distance of the bars of a slab [mm]; infinite in a beam.

    With EN it is also that up to which bars act together on a crack, 5(c + phi/2) of 7.3.4(3).

    Parameters
    ----------
    shape : str
        ``"slab"`` or ``"beam"``.
    strip : Strip
    yield_strength : float
        Of the bars [MPa].
    cover : float
        From the face to the bars [mm].
    diameter : float
        Of the bars [mm].
    """
    if shape != "slab":
        return math.inf
    widest = widest_mat_spacing(strip.code, strip.depth, yield_strength, cover)
    return min(widest, TOGETHER * (cover + diameter / 2)) if strip.code == "EN" else widest


def least_strip_steel(
    strip: Strip, shape: str, d: float, yield_strength: float, tensile: float
) -> tuple[float, str]:
    """Give the least area of the bars of one direction, all faces together [mm2], and the clause.

    Parameters
    ----------
    strip : Strip
    shape : str
        ``"slab"`` or ``"beam"``.
    d : float
        Effective depth [mm].
    yield_strength : float
        Of the bars [MPa].
    tensile : float
        Mean strength of the concrete under direct pull [MPa].
    """
    section = Section(strip.width, strip.depth)
    if strip.action != BENT:
        least = pulled_crack_control_steel_en(section, yield_strength, tensile)
        return least, "EN 1992-1-1 (7.1)"
    if strip.code == "EN":
        least = least_bending_steel_en(strip.width, d, yield_strength, tensile)
        return least, CLAUSES["EN"]
    if shape == "beam":
        least = least_beam_steel_aci(strip.width, d, yield_strength, strip.strength)
        return least, CLAUSES["beam"]
    return least_slab_steel_aci(strip.width, strip.depth), CLAUSES["slab"]
