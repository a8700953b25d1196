"""Length a bar needs in sound concrete before it can pull with its full strength."""

import math

import numpy as np

from crackkit.mechanics.concrete import tensile_strength_lower_en
from crackkit.mechanics.us_customary import INCH, PSI
from crackkit.words import _


def development_length(diameter, yield_strength, concrete_strength, code):
    """Development length of a straight, uncoated, well-spaced bar near the bottom of a pour.

    Parameters
    ----------
    diameter : float
        Bar diameter [mm].
    yield_strength : float
        Yield strength of the steel [MPa].
    concrete_strength : float
        Cylinder strength of the concrete [MPa].
    code : str
        "ACI" (ACI 318-19, 25.4.2) or "EN" (EN 1992-1-1:2004, 8.4, design stress fyk/1.15).

    Returns
    -------
    float
        Development length [mm].

    Raises
    ------
    ValueError
        If the code is not known.
    """
    if code == "ACI":
        return development_length_aci(diameter, yield_strength, concrete_strength)
    if code == "EN":
        return development_length_en(diameter, yield_strength / 1.15, concrete_strength)
    raise ValueError(_("The code must be ACI or EN, not {code}.").format(code=code))


def development_length_aci(
    diameter,
    yield_strength,
    concrete_strength,
    confinement=1.5,
    top_cast=1.0,
    coating=1.0,
    lightweight=1.0,
):
    """Tension development length of a deformed bar (ACI 318-19, 25.4.2.4).

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm].
    yield_strength : float
        Yield strength fy [MPa].
    concrete_strength : float
        Cylinder strength f'c [MPa]; sqrt(f'c) counts up to 100 psi (25.4.1.4).
    confinement : float
        (cb + Ktr)/db [-], above 0, counted up to 2.5; the 1.5 assumed here is what the simple
        rule of 25.4.2.3 assumes for well-spaced bars. See `confinement_aci`.
    top_cast : float
        psi_t [-]: 1.3 with more than 12 in of fresh concrete below the bar, else 1.
    coating : float
        psi_e [-]: 1.5 or 1.2 for epoxy-coated bars, else 1; psi_t psi_e counts up to 1.7.
    lightweight : float
        Factor lambda [-], 0.75 to 1.

    Returns
    -------
    float
        Development length ld [mm], at least 12 in.
    """
    bond = lightweight * bond_root_aci(concrete_strength)
    psi = min(top_cast * coating, 1.7) * size_factor_aci(diameter)
    psi *= grade_factor_aci(yield_strength)
    ld = 3 / 40 * (yield_strength / bond) * psi / min(confinement, 2.5) * diameter
    return max(ld, 12 * INCH)


def development_length_aci_simple(
    diameter,
    yield_strength,
    concrete_strength,
    spacing_factor=1.0,
    top_cast=1.0,
    coating=1.0,
    lightweight=1.0,
):
    """Tension development length by the simple rule (ACI 318-19, 25.4.2.3).

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm].
    yield_strength : float
        Yield strength fy [MPa].
    concrete_strength : float
        Cylinder strength f'c [MPa]; sqrt(f'c) counts up to 100 psi (25.4.1.4).
    spacing_factor : float
        1 for bars with the clear spacing and cover of the first row of the table; 1.5 for the
        "other cases" [-].
    top_cast : float
        psi_t [-]: 1.3 with more than 12 in of fresh concrete below the bar, else 1.
    coating : float
        psi_e [-]: 1.5 or 1.2 for epoxy-coated bars, else 1; psi_t psi_e counts up to 1.7.
    lightweight : float
        Factor lambda [-], 0.75 to 1.

    Returns
    -------
    float
        Development length ld [mm], at least 12 in.
    """
    divisor = 25 if diameter <= _NUMBER_SIX else 20
    psi = min(top_cast * coating, 1.7) * grade_factor_aci(yield_strength)
    bond = lightweight * bond_root_aci(concrete_strength)
    ld = spacing_factor * yield_strength * psi / (divisor * bond) * diameter
    return max(ld, 12 * INCH)


def confinement_aci(diameter, centre_cover, spacing, tie_area=0.0, tie_spacing=math.inf, number=1):
    """How well concrete and ties keep a bar from splitting its cover, (cb + Ktr)/db.

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm].
    centre_cover : float
        Distance from the bar centre to the nearest face [mm].
    spacing : float
        Centre-to-centre spacing of the bars [mm].
    tie_area : float
        Area of the ties that cross the splitting plane within `tie_spacing` [mm2].
    tie_spacing : float
        Spacing of the ties along the bar [mm].
    number : int
        Number of bars developed along the splitting plane [-].

    Returns
    -------
    float
        Confinement [-], at most 2.5 (ACI 318-19, 25.4.2.4).
    """
    cb = min(centre_cover, spacing / 2)
    Ktr = 40 * tie_area / (tie_spacing * number)
    return min((cb + Ktr) / diameter, 2.5)


def size_factor_aci(diameter):
    """Factor psi_s: 0.8 for #6 and smaller, 1 for larger bars (ACI 318-19, Table 25.4.2.5).

    Parameters
    ----------
    diameter : float
        Bar diameter [mm].

    Returns
    -------
    float
        psi_s [-].
    """
    return 0.8 if diameter <= _NUMBER_SIX else 1.0


def grade_factor_aci(yield_strength):
    """Factor psi_g: 1 to Grade 60, 1.15 to Grade 80, 1.3 above (ACI 318-19, Table 25.4.2.5).

    Parameters
    ----------
    yield_strength : float
        Yield strength [MPa]; a grade between two of the table takes the higher factor.

    Returns
    -------
    float
        psi_g [-].
    """
    if yield_strength <= 420:
        return 1.0
    return 1.15 if yield_strength <= 552 else 1.3


def bond_root_aci(concrete_strength):
    """What bond grows with: the square root of f'c, counted up to 100 psi.

    Parameters
    ----------
    concrete_strength : float
        Cylinder strength f'c [MPa].

    Returns
    -------
    float
        sqrt(f'c) as a stress [MPa] (ACI 318-19, 25.4.1.4).
    """
    return min(math.sqrt(concrete_strength / PSI), 100) * PSI


def development_length_en(
    diameter, yield_stress, concrete_strength, good_bond=1.0, shape=1.0, partial_factor=1.5
):
    """Design anchorage length in tension (EN 1992-1-1:2004, 8.4.3 and 8.4.4).

    Parameters
    ----------
    diameter : float
        Bar diameter phi [mm].
    yield_stress : float
        Stress to be anchored sigma_sd [MPa], usually the design yield strength.
    concrete_strength : float
        Characteristic cylinder strength fck [MPa].
    good_bond : float
        eta1 [-]: 1 where bond is good, 0.7 elsewhere (8.4.2(2)).
    shape : float
        Product of alpha1 to alpha5 [-], 0.49 to 1; 1 for a straight bar with least cover.
    partial_factor : float
        gamma_c [-].

    Returns
    -------
    float
        Anchorage length lbd [mm], at least lb,min of (8.6).
    """
    fbd = bond_strength_en(diameter, concrete_strength, good_bond, partial_factor)
    required = diameter / 4 * yield_stress / fbd
    return max(shape * required, 0.3 * required, 10 * diameter, 100.0)


def bond_strength_en(diameter, concrete_strength, good_bond=1.0, partial_factor=1.5):
    """Design bond strength of ribbed bars fbd (EN 1992-1-1:2004, (8.2)).

    Parameters
    ----------
    diameter : float
        Bar diameter phi [mm]; bond falls above 32 mm.
    concrete_strength : float
        Characteristic cylinder strength fck [MPa]; counted up to C60/75.
    good_bond : float
        eta1 [-]: 1 where bond is good, 0.7 elsewhere.
    partial_factor : float
        gamma_c [-].

    Returns
    -------
    float
        Bond strength fbd [MPa], with the recommended alpha_ct = 1.
    """
    eta2 = 1.0 if diameter <= 32 else (132 - diameter) / 100
    fctd = tensile_strength_lower_en(min(concrete_strength, 60)) / partial_factor
    return 2.25 * good_bond * eta2 * fctd


def developed_share(x, start, end, start_length, end_length=None):
    """Share of its strength that a bar can develop at each station.

    Parameters
    ----------
    x : array_like
        Stations along the member [mm].
    start : float or array_like
        Left end of the bar, a hook measured to the outside of its bend [mm]; -inf where the bar
        runs on.
    end : float or array_like
        Right end of the bar [mm]; inf where the bar runs on.
    start_length : float or array_like
        Development length from the left end [mm], above 0.
    end_length : float or array_like or None
        Development length from the right end [mm], above 0; None where both ends are alike.

    Returns
    -------
    numpy.ndarray
        Share [-], 0 outside the bar, growing evenly from each end to 1: less stress needs less
        length in proportion (ACI 318-19, 25.4.10; EN 1992-1-1:2004, (8.3)). Of a hook ACI says
        nothing of the kind; the growth is ours there.
    """
    x = np.asarray(x, dtype=float)
    from_end = (end - x) / (start_length if end_length is None else end_length)
    return np.clip(np.minimum((x - start) / start_length, from_end), 0.0, 1.0)


# A #6 bar, the largest that counts as small; the hair allows for rounding of the inch.
_NUMBER_SIX = 0.75 * INCH + 1e-6
