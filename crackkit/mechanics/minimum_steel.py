"""Least steel, so that a section does not snap when it cracks, and its cracks stay fine."""

import math

from crackkit.mechanics.section import bands
from crackkit.mechanics.us_customary import PSI

_LEAST_SHARE_EN = 0.0013
_SLAB_SHARE_ACI = 0.0018
_BENDING = 0.4  # kc of a web or rectangle bent without an axial force


def crack_control_steel_en(
    stretched_area, size, steel_stress, tensile_strength, stress_factor=_BENDING
):
    """Least steel that can take over what the concrete lets go as it cracks.

    Parameters
    ----------
    stretched_area : float
        Area Act of the part that is stretched just before the first crack [mm2].
    size : float
        Depth of the web or width of the flange, for the factor k [mm].
    steel_stress : float
        Stress sigma_s allowed in the bars right after cracking [MPa], above 0: the yield
        strength, or less to keep the crack fine.
    tensile_strength : float
        Mean strength of the concrete when it cracks fct,eff [MPa].
    stress_factor : float
        kc [-]: 0.4 in bending, 1 in direct tension; see `web_factor_en`, `flange_factor_en`.

    Returns
    -------
    float
        As,min [mm2] (EN 1992-1-1:2004, (7.1)).
    """
    k = size_factor_en(size)
    return stress_factor * k * tensile_strength * stretched_area / steel_stress


def bent_crack_control_steel_en(section, steel_stress, tensile_strength, sense=1):
    """Least steel for fine cracks in a rectangle or T under bending alone.

    Web and flange are looked at apart, as 7.3.2(2) asks; each counts as far as it is stretched
    just before the first crack.

    Parameters
    ----------
    section : Section
        The outline.
    steel_stress : float
        Stress sigma_s allowed in the bars right after cracking [MPa], above 0.
    tensile_strength : float
        Mean strength of the concrete when it cracks fct,eff [MPa].
    sense : int
        1 for sagging (bottom stretched), -1 for hogging (top stretched) [-].

    Returns
    -------
    float
        As,min [mm2], web and flange together (EN 1992-1-1:2004, (7.1)).
    """
    axis = section.centroid if sense > 0 else section.depth - section.centroid
    total = 0.0
    for start, end, b in bands(section, sense):
        near, far = max(start - axis, 0.0), max(end - axis, 0.0)
        share = 0.5 * (near + far) / (section.depth - axis)
        kc = _BENDING if b == section.width else flange_factor_en(share)
        part = b * (far - near), _size(section, b)
        total += crack_control_steel_en(*part, steel_stress, tensile_strength, kc)
    return total


def pulled_crack_control_steel_en(section, steel_stress, tensile_strength):
    """Least steel for fine cracks in a rectangle or T under direct tension, both faces together.

    Parameters
    ----------
    section : Section
        The outline.
    steel_stress : float
        Stress sigma_s allowed in the bars right after cracking [MPa], above 0.
    tensile_strength : float
        Mean strength of the concrete when it cracks fct,eff [MPa].

    Returns
    -------
    float
        As,min [mm2], web and flange together (EN 1992-1-1:2004, (7.1) with kc = 1).
    """
    return sum(
        crack_control_steel_en(
            b * (end - start), _size(section, b), steel_stress, tensile_strength, 1.0
        )
        for start, end, b in bands(section, 1)
    )


def size_factor_en(size):
    """Factor k: self-made stresses help thick parts to crack at less force.

    Parameters
    ----------
    size : float
        Depth of the web or width of the flange [mm].

    Returns
    -------
    float
        k [-]: 1 to 300 mm, 0.65 from 800 mm, straight between (EN 1992-1-1:2004, 7.3.2(2)).
    """
    return min(max(1.0 - 0.35 * (size - 300.0) / 500.0, 0.65), 1.0)


def web_factor_en(axial_stress, depth, tensile_strength):
    """Factor kc of a rectangle or web that is bent and pulled or pressed as well.

    Parameters
    ----------
    axial_stress : float
        Mean stress from the axial force on this part, tension positive [MPa].
    depth : float
        Depth h of the section [mm].
    tensile_strength : float
        Mean strength of the concrete when it cracks fct,eff [MPa].

    Returns
    -------
    float
        kc [-], 0 to 1; 0.4 without axial force (EN 1992-1-1:2004, (7.2)).
    """
    least = min(depth, 1000.0)  # h* of the clause
    k1 = 1.5 if axial_stress <= 0 else 2.0 * least / (3.0 * depth)
    kc = _BENDING * (1.0 + axial_stress / (k1 * (depth / least) * tensile_strength))
    return min(max(kc, 0.0), 1.0)


def flange_factor_en(mean_share):
    """Factor kc of a flange.

    Parameters
    ----------
    mean_share : float
        Tensile force of the flange just before cracking over its stretched area and strength,
        Fcr/(Act fct,eff) [-], 0 to 1.

    Returns
    -------
    float
        kc [-], at least 0.5 (EN 1992-1-1:2004, (7.3)).
    """
    return max(0.9 * mean_share, 0.5)


def least_bending_steel_en(width, effective_depth, yield_strength, tensile_strength):
    """Least steel of a beam or slab, so that it does not break without warning as it cracks.

    Parameters
    ----------
    width : float
        Mean width of the stretched part bt [mm]; of a T with its flange squeezed, the web.
    effective_depth : float
        Effective depth d [mm].
    yield_strength : float
        Characteristic yield strength fyk [MPa], above 0.
    tensile_strength : float
        Mean tensile strength of the concrete fctm [MPa].

    Returns
    -------
    float
        As,min [mm2] (EN 1992-1-1:2004, (9.1N); slabs by 9.3.1.1).
    """
    share = max(0.26 * tensile_strength / yield_strength, _LEAST_SHARE_EN)
    return share * width * effective_depth


def least_beam_steel_aci(width, effective_depth, yield_strength, concrete_strength):
    """Least stretched steel of a beam (ACI 318-19, 9.6.1.2).

    Parameters
    ----------
    width : float
        Width of the web bw [mm]; of a statically determinate beam with its flange stretched, such
        as a cantilever, twice that but no more than the flange.
    effective_depth : float
        Effective depth d [mm].
    yield_strength : float
        Yield strength fy [MPa], above 0, counted up to 80 000 psi.
    concrete_strength : float
        Cylinder strength f'c [MPa].

    Returns
    -------
    float
        As,min [mm2]: 3 sqrt(f'c)/fy bw d but at least 200/fy bw d, in psi, converted without
        rounding. A third more steel than is needed is enough everywhere (9.6.1.3).
    """
    fy = min(yield_strength, 80_000 * PSI)
    pull = max(3.0 * math.sqrt(concrete_strength / PSI), 200.0) * PSI
    return pull / fy * width * effective_depth


def least_slab_steel_aci(width, depth):
    """Least steel of a one-way slab, along its span and across it against shrinkage.

    Parameters
    ----------
    width : float
        Width of the strip [mm].
    depth : float
        Depth of the slab h [mm].

    Returns
    -------
    float
        As,min [mm2]: 0.0018 of the gross area, whatever the steel (ACI 318-19, 7.6.1.1 along the
        span, 24.4.3.2 across it).
    """
    return _SLAB_SHARE_ACI * width * depth


def _size(section, b):
    """What k goes by: the depth of a web, the width of a flange."""
    return section.depth if b == section.width else b
