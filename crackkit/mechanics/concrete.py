"""Stiffness and tensile strength of hardened concrete, as the standards estimate them."""

import math
from dataclasses import dataclass

from crackkit.mechanics.us_customary import PCF, PSI
from crackkit.words import _


@dataclass(frozen=True)
class Concrete:
    """What a section needs to know of its concrete.

    Parameters
    ----------
    strength : float
        Specified cylinder strength in compression [MPa].
    modulus : float
        Short-term modulus of elasticity [MPa].
    mean_strength : float
        Mean cylinder strength [MPa].
    tensile : float
        Mean strength in direct tension [MPa].
    flexural : float
        Strength in bending, the modulus of rupture [MPa].
    """

    strength: float
    modulus: float
    mean_strength: float
    tensile: float
    flexural: float


def concrete(strength, depth, code):
    """Concrete of a given strength, its other properties estimated by one standard.

    Parameters
    ----------
    strength : float
        Cylinder strength, f'c or fck [MPa], above 0.
    depth : float
        Depth of the member [mm], above 0; it matters to EN only (size effect in bending).
    code : str
        "ACI" (ACI 318-19 chapter 19, ACI 224.2R) or "EN" (EN 1992-1-1:2004, 3.1).

    Returns
    -------
    Concrete
        With ACI, the mean strength is taken as the specified one.

    Raises
    ------
    ValueError
        If the strength or depth is not above zero, or the code is not known.
    """
    if not (strength > 0 and depth > 0):
        raise ValueError(_("The strength and the depth must be greater than zero."))
    if code == "ACI":
        return _concrete_aci(strength)
    if code == "EN":
        return _concrete_en(strength, depth)
    raise ValueError(_("The code must be ACI or EN, not {code}.").format(code=code))


def _concrete_aci(strength):
    return Concrete(
        strength=strength,
        modulus=modulus_aci(strength),
        mean_strength=strength,
        tensile=direct_tension_aci(strength),
        flexural=flexural_strength_aci(strength),
    )


def _concrete_en(strength, depth):
    return Concrete(
        strength=strength,
        modulus=modulus_en(strength),
        mean_strength=mean_strength_en(strength),
        tensile=tensile_strength_en(strength),
        flexural=flexural_strength_en(strength, depth),
    )


def modulus_aci(strength):
    """Modulus of normal-weight concrete, 57 000 sqrt(f'c) in psi (ACI 318-19, 19.2.2.1(b)).

    Parameters
    ----------
    strength : float
        Cylinder strength f'c [MPa].

    Returns
    -------
    float
        Modulus of elasticity [MPa]; 0.7 % above the rounded 4700 sqrt(f'c) of the SI edition.
    """
    return 57000 * math.sqrt(strength * PSI)


def modulus_aci_density(strength, density):
    """Modulus from strength and density, 33 wc^1.5 sqrt(f'c) in pcf and psi (19.2.2.1(a)).

    Parameters
    ----------
    strength : float
        Cylinder strength f'c [MPa].
    density : float
        Density of the concrete wc [kg/m3], 1440 to 2560.

    Returns
    -------
    float
        Modulus of elasticity [MPa] (ACI 318-19, 19.2.2.1(a)).
    """
    return 33 * (density / PCF) ** 1.5 * math.sqrt(strength * PSI)


def flexural_strength_aci(strength, lightweight=1.0):
    """Modulus of rupture, 7.5 lambda sqrt(f'c) in psi (ACI 318-19, 19.2.3.1).

    Parameters
    ----------
    strength : float
        Cylinder strength f'c [MPa].
    lightweight : float
        Factor lambda [-], 0.75 to 1; 1 for normal-weight concrete.

    Returns
    -------
    float
        Strength in bending fr [MPa].
    """
    return 7.5 * lightweight * math.sqrt(strength * PSI)


def direct_tension_aci(strength, lightweight=1.0):
    """Strength in direct tension, 4 lambda sqrt(f'c) in psi (ACI 224.2R, from memory).

    Parameters
    ----------
    strength : float
        Cylinder strength f'c [MPa].
    lightweight : float
        Factor lambda [-], 0.75 to 1; 1 for normal-weight concrete.

    Returns
    -------
    float
        Mean direct tensile strength [MPa].
    """
    return 4.0 * lightweight * math.sqrt(strength * PSI)


def mean_strength_en(strength):
    """Mean cylinder strength fcm = fck + 8 (EN 1992-1-1:2004, Table 3.1).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90.

    Returns
    -------
    float
        Mean strength fcm [MPa].
    """
    return strength + 8.0


def tensile_strength_en(strength):
    """Mean direct tensile strength fctm (EN 1992-1-1:2004, Table 3.1).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90; the formula changes above C50/60.

    Returns
    -------
    float
        Mean tensile strength fctm [MPa].
    """
    if strength <= 50:
        return 0.30 * strength ** (2 / 3)
    return 2.12 * math.log1p(mean_strength_en(strength) / 10)


def tensile_strength_lower_en(strength):
    """Tensile strength that one test in twenty falls below, fctk,0.05 (Table 3.1).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90.

    Returns
    -------
    float
        5 % fractile of the tensile strength [MPa] (EN 1992-1-1:2004, Table 3.1).
    """
    return 0.7 * tensile_strength_en(strength)


def tensile_strength_upper_en(strength):
    """Tensile strength that one test in twenty exceeds, fctk,0.95 (Table 3.1).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90.

    Returns
    -------
    float
        95 % fractile of the tensile strength [MPa] (EN 1992-1-1:2004, Table 3.1).
    """
    return 1.3 * tensile_strength_en(strength)


def modulus_en(strength):
    """Mean secant modulus Ecm = 22 (fcm/10)^0.3 GPa (EN 1992-1-1:2004, Table 3.1).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90 (quartzite aggregate).

    Returns
    -------
    float
        Modulus of elasticity Ecm [MPa].
    """
    return 22000.0 * (mean_strength_en(strength) / 10) ** 0.3


def flexural_strength_en(strength, depth):
    """Mean strength in bending, larger in shallow members (EN 1992-1-1:2004, (3.23)).

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], 12 to 90.
    depth : float
        Depth of the member h [mm]; the gain ends at 600 mm.

    Returns
    -------
    float
        Flexural strength fctm,fl [MPa].
    """
    return max(1.6 - depth / 1000, 1.0) * tensile_strength_en(strength)


def effective_modulus(modulus, creep):
    """Modulus under lasting load, Ec/(1 + phi) (EN 1992-1-1:2004, 7.4.3(5)).

    Parameters
    ----------
    modulus : float
        Short-term modulus [MPa].
    creep : float
        Creep coefficient phi [-], 0 or more; 2 to 3 indoors after years.

    Returns
    -------
    float
        Effective modulus [MPa].
    """
    return modulus / (1 + creep)
