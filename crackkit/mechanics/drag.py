"""Old rules of slabs on the ground: drag steel, joint spacing, joint opening, tie bars, saw cuts.

They take the base as sliding all along. Drag steel holds a crack closed against that; it does not
stop a slab from cracking and says nothing of widths. Any units that fit together may be used.
"""

from crackkit.mechanics.us_customary import FOOT
from crackkit.words import _

_OPENING_SHARES = {"stabilised": 0.65, "granular": 0.80}
_SPACING_THICKNESSES = {"fine": 24.0, "coarse": 30.0, "low_slump": 36.0}
_SAW_SHARE = 0.25


def drag_steel(friction, length, weight, steel_stress):
    """Bars that drag half of a slab over its base, without breaking at a crack.

    Parameters
    ----------
    friction : float or array_like
        Coefficient of resistance F [-], 0 or more.
    length : float or array_like
        Distance L between free ends [mm], 0 or more.
    weight : float or array_like
        Weight of the slab on its base w [MPa].
    steel_stress : float or array_like
        Stress that the bars may have fs [MPa], above 0; two thirds to three quarters of the yield
        strength (common practice).

    Returns
    -------
    float or numpy.ndarray
        Area for 1 mm of width As = F L w/(2 fs) [mm] (ACI 360R and PCA, from memory).
    """
    return friction * length * weight / (2 * steel_stress)


def drag_stress(friction, length, unit_weight):
    """Stress in the middle of a free slab that slides all along.

    Parameters
    ----------
    friction : float or array_like
        Coefficient of resistance mu [-], 0 or more.
    length : float or array_like
        Distance L between free ends [mm], 0 or more.
    unit_weight : float or array_like
        Weight of the concrete gamma [N/mm3].

    Returns
    -------
    float or numpy.ndarray
        sigma = mu gamma L/2 [MPa].
    """
    return friction * unit_weight * length / 2


def drag_joint_spacing(allowed_stress, friction, unit_weight):
    """Distance of joints at which the drag stress is the allowed one.

    Parameters
    ----------
    allowed_stress : float or array_like
        Mean stress that the slab may have [MPa], 0 or more.
    friction : float or array_like
        Coefficient of resistance mu [-], above 0.
    unit_weight : float or array_like
        Weight of the concrete gamma [N/mm3], above 0.

    Returns
    -------
    float or numpy.ndarray
        L = 2 sigma/(mu gamma) [mm].
    """
    return 2 * allowed_stress / (friction * unit_weight)


def joint_opening(length, cooling, shrinkage, base="granular", expansion=1e-5):
    """How far a joint opens as the slabs beside it cool and dry.

    Parameters
    ----------
    length : float or array_like
        Distance of the joints L [mm].
    cooling : float or array_like
        Fall of the temperature since the concrete set [K].
    shrinkage : float or array_like
        Drying shrinkage [-].
    base : str
        "granular" (C = 0.80) or "stabilised" (0.65).
    expansion : float
        Coefficient of thermal expansion [1/K]; 1e-5 is common practice.

    Returns
    -------
    float or numpy.ndarray
        C L (alpha dT + eps) [mm] (AASHTO1993, from memory).

    Raises
    ------
    ValueError
        If the base is neither of the two.
    """
    if base not in _OPENING_SHARES:
        raise ValueError(_("The base is granular or stabilised, not {!r}.").format(base))
    return _OPENING_SHARES[base] * length * (expansion * cooling + shrinkage)


def tie_bar_length(diameter, steel_stress, bond_stress):
    """Length of a tie bar over a joint, both sides together.

    Parameters
    ----------
    diameter : float or array_like
        Diameter of the bar [mm], above 0.
    steel_stress : float or array_like
        Stress that the bar may have [MPa].
    bond_stress : float or array_like
        Bond stress that it may have [MPa], above 0.

    Returns
    -------
    float or numpy.ndarray
        2 (diameter fs)/(4 u) [mm]; practice adds some for bars that are laid askew. The area is
        that of `drag_steel` for twice the distance to the next free edge.
    """
    return diameter * steel_stress / (2 * bond_stress)


def joint_spacing_by_thickness(thickness, concrete="fine"):
    """Distance of joints by a rule of thumb of the trade.

    Parameters
    ----------
    thickness : float or array_like
        Thickness h [mm].
    concrete : str
        "fine" (24 h; stones below 19 mm), "coarse" (30 h; larger stones) or "low_slump" (36 h)
        (PCA, as the trade repeats it).

    Returns
    -------
    float or numpy.ndarray
        Distance [mm]; 18 ft is the most that ACI 302.1R-96 speaks of, see `WIDEST_JOINTS`.

    Raises
    ------
    ValueError
        If the concrete is none of the three.
    """
    if concrete not in _SPACING_THICKNESSES:
        raise ValueError(_("No rule is known for {!r} concrete.").format(concrete))
    return _SPACING_THICKNESSES[concrete] * thickness


WIDEST_JOINTS = 18 * FOOT
"""Greatest distance of joints in a plain slab [mm] (ACI 302.1R-96); less in hot, dry weather."""

LONGEST_PANEL = 1.5
"""Greatest length over width of a panel between joints [-], ACI 302.1R-80."""


def saw_cut_depth(thickness):
    """Depth of a saw cut that makes the crack come where it is wanted.

    Parameters
    ----------
    thickness : float or array_like
        Thickness h [mm].

    Returns
    -------
    float or numpy.ndarray
        h/4 [mm], common practice for a cut within a day; saws for the first hours cut less.
    """
    return _SAW_SHARE * thickness
