"""How concrete grows strong and stiff, told from its values at 28 days."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.cement_class import of_class
from crackkit.mechanics.concrete import Concrete
from crackkit.words import _

_MOIST = {"I": (4.0, 0.85), "III": (2.3, 0.92)}
_STEAM = {"I": (1.0, 0.95), "III": (0.70, 0.98)}
_TYPE = {"S": "I", "N": "I", "R": "III"}
_HARDENING = {"S": 0.38, "N": 0.25, "R": 0.20}


@dataclass(frozen=True)
class AgedConcrete:
    """What concrete can do at some ages.

    Parameters
    ----------
    compressive : float or numpy.ndarray
        Mean cylinder strength in compression [MPa].
    tensile : float or numpy.ndarray
        Mean strength in direct tension [MPa].
    flexural : float or numpy.ndarray
        Strength in bending, the modulus of rupture [MPa].
    modulus : float or numpy.ndarray
        Modulus of elasticity [MPa].
    """

    compressive: float | np.ndarray
    tensile: float | np.ndarray
    flexural: float | np.ndarray
    modulus: float | np.ndarray


def concrete_in_time(ages, concrete: Concrete, code, cement_class="N"):
    """Concrete at some ages, kept moist at about 20 degrees Celsius.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    concrete : Concrete
        The concrete at 28 days.
    code : str
        "ACI" (ACI 209R-92, 2.2: stiffness and tension follow the root of strength) or "EN"
        (EN 1992-1-1:2004, 3.1.2(6), (9) and 3.1.3(3)); from memory.
    cement_class : str
        "S", "N" or "R"; with ACI, R is taken as cement type III, the others as type I.

    Returns
    -------
    AgedConcrete
        Strengths and modulus at these ages.

    Raises
    ------
    ValueError
        If the code or the class of cement is not known.
    """
    if code == "ACI":
        strength = strength_share_moist(ages, of_class(_TYPE, cement_class))
        tension = stiffness = np.sqrt(strength)
    elif code == "EN":
        strength = strength_share_en(ages, cement_class)
        tension = tension_share_en(ages, cement_class)
        stiffness = stiffness_share_en(ages, cement_class)
    else:
        raise ValueError(_("The code must be ACI or EN, not {code}.").format(code=code))
    return AgedConcrete(
        compressive=strength * concrete.mean_strength,
        tensile=tension * concrete.tensile,
        flexural=tension * concrete.flexural,
        modulus=stiffness * concrete.modulus,
    )


def strength_share_moist(ages, cement_type="I"):
    """Strength over that at 28 days, concrete cured moist.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    cement_type : str
        "I" or "III".

    Returns
    -------
    float or numpy.ndarray
        t/(a + b t), within 1 % of 1 at 28 days [-] (ACI 209R-92, Eq. 2-1, from memory).

    Raises
    ------
    ValueError
        If the type of cement is not known.
    """
    return _hyperbola(ages, _MOIST, cement_type)


def strength_share_steam(ages, cement_type="I"):
    """Strength over that at 28 days, concrete cured in steam.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    cement_type : str
        "I" or "III".

    Returns
    -------
    float or numpy.ndarray
        t/(a + b t), within 2 % of 1 at 28 days [-] (ACI 209R-92, Eq. 2-1, from memory).

    Raises
    ------
    ValueError
        If the type of cement is not known.
    """
    return _hyperbola(ages, _STEAM, cement_type)


def strength_share_en(ages, cement_class="N"):
    """Mean strength over that at 28 days.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        beta_cc [-] (EN 1992-1-1:2004, (3.2), from memory).

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    s = of_class(_HARDENING, cement_class)
    t = np.asarray(ages, dtype=float)
    with np.errstate(divide="ignore"):  # fresh concrete has no strength: exp(-inf)
        return np.exp(s * (1.0 - np.sqrt(28.0 / t)))


def tension_share_en(ages, cement_class="N"):
    """Mean tensile strength over that at 28 days.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        beta_cc before 28 days, beta_cc^(2/3) after [-] (EN 1992-1-1:2004, (3.4), from memory).
    """
    power = np.where(np.asarray(ages) < 28.0, 1.0, 2 / 3)
    return (strength_share_en(ages, cement_class) ** power)[()]


def stiffness_share_en(ages, cement_class="N"):
    """Modulus of elasticity over that at 28 days.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        beta_cc^0.3 [-] (EN 1992-1-1:2004, (3.5), from memory).
    """
    return strength_share_en(ages, cement_class) ** 0.3


def _hyperbola(ages, constants, cement_type):
    if cement_type not in constants:
        raise ValueError(_("The type of cement must be I or III."))
    a, b = constants[cement_type]
    t = np.asarray(ages, dtype=float)
    return t / (a + b * t)
