"""How much work it takes to tear concrete apart, and the length that follows from it.

Strength says when a crack may begin; the work says whether it runs. Both together make a length,
by which one knows how far from a sharp corner the stress has to be looked at.
"""

import numpy as np

from crackkit.words import _

_AGGREGATES = np.array([8.0, 16.0, 32.0])
_BASE_ENERGIES = np.array([0.025, 0.030, 0.058])


def fracture_energy(mean_strength):
    """Fracture energy of normal concrete (fib Model Code 2010, 5.1.5.2, from memory: `MC2010`).

    Parameters
    ----------
    mean_strength : float or array_like
        Mean cylinder strength fcm [MPa], above 0.

    Returns
    -------
    float or numpy.ndarray
        G_F = 73 fcm^0.18 in N/m, given in [N/mm]. Tests scatter by a quarter and more.

    Raises
    ------
    ValueError
        If the strength is not above 0.
    """
    _check(mean_strength)
    return 0.073 * np.asarray(mean_strength, dtype=float)[()] ** 0.18


def fracture_energy_by_aggregate(mean_strength, aggregate):
    """Fracture energy by the size of the stones (CEB-FIP Model Code 1990, from memory).

    Parameters
    ----------
    mean_strength : float or array_like
        Mean cylinder strength fcm [MPa], above 0.
    aggregate : float
        Greatest size of the aggregate [mm], 8 to 32. The code (`CEB1990`) lists 8, 16 and 32;
        between them a straight line is drawn (our choice).

    Returns
    -------
    float or numpy.ndarray
        G_F = G_F0 (fcm/10)^0.7 [N/mm], with G_F0 of 25, 30 and 58 N/m for 8, 16 and 32 mm.

    Raises
    ------
    ValueError
        If the strength is not above 0, or the aggregate outside of the list.
    """
    _check(mean_strength)
    if not _AGGREGATES[0] <= aggregate <= _AGGREGATES[-1]:
        raise ValueError(_("The list of the code runs from 8 to 32 mm of aggregate."))
    base = np.interp(aggregate, _AGGREGATES, _BASE_ENERGIES)
    return base * (np.asarray(mean_strength, dtype=float)[()] / 10.0) ** 0.7


def characteristic_length(modulus, energy, tensile):
    """Length that tells how brittle a concrete is (Hillerborg and others 1976, from memory).

    Parameters
    ----------
    modulus : float
        Modulus E [MPa], above 0.
    energy : float
        Fracture energy G_F [N/mm], above 0.
    tensile : float
        Tensile strength ft [MPa], above 0.

    Returns
    -------
    float
        l_ch = E G_F / ft^2 [mm]: the shorter, the more brittle.

    Raises
    ------
    ValueError
        If a number is not above 0.
    """
    if not min(modulus, energy, tensile) > 0:
        raise ValueError(_("Modulus, fracture energy and strength are above zero."))
    return modulus * energy / tensile**2


def averaging_length(modulus, energy, tensile):
    """Length over which the mean tension at a sharp corner tells whether a crack runs.

    Chosen so that, for the straight crack which is the sharpest of all corners, a mean tension of
    ft over it says the same as the work G_F: the mean of K/sqrt(2 pi r) from 0 to d is ft, and K^2
    is E G_F.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa], above 0.
    energy : float
        Fracture energy G_F [N/mm], above 0.
    tensile : float
        Tensile strength ft [MPa], above 0.

    Returns
    -------
    float
        d = (2/pi) E G_F / ft^2 [mm].

    Raises
    ------
    ValueError
        If a number is not above 0.
    """
    return 2.0 / np.pi * characteristic_length(modulus, energy, tensile)


def _check(strength):
    if not np.all(np.asarray(strength) > 0):
        raise ValueError(_("The strength must be greater than zero."))
