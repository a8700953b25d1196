"""Creep in time as ACI 209R-92 estimates it, 2.5; from memory.

The coefficient is the creep strain over the elastic strain at the age of loading.
"""

import numpy as np

from crackkit.mechanics.us_customary import INCH

AVERAGE_END = 2.35
"""Average creep coefficient after very long loading, standard conditions [-] (ACI 209R-92, 2.4)."""

_THIN = (2.0, 3.0, 4.0, 5.0, 6.0)  # in.
_OF_THIN = (1.30, 1.17, 1.11, 1.04, 1.00)  # those of 2, 4 and 6 in. as a textbook prints them


def creep_share(days):
    """Share of the end value after some days under load.

    Parameters
    ----------
    days : float or array_like
        Days since loading, 0 or more [days].

    Returns
    -------
    float or numpy.ndarray
        t^0.6/(10 + t^0.6), 0 to 1 [-] (ACI 209R-92, Eq. 2-8, from memory).
    """
    grown = np.maximum(np.asarray(days, dtype=float), 0.0) ** 0.6
    return grown / (10.0 + grown)


def creep(days, end):
    """Creep coefficient after some days under load.

    Parameters
    ----------
    days : float or array_like
        Days since loading, 0 or more [days].
    end : float or array_like
        End value, see `end_value` [-].

    Returns
    -------
    float or numpy.ndarray
        Creep coefficient [-] (ACI 209R-92, Eq. 2-8, from memory).
    """
    return creep_share(days) * end


def end_value(humidity, loading=1.0, size=1.0, mix=1.0):
    """Creep coefficient after very long loading.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity of the air, 0 to 100 [%].
    loading : float or array_like
        `loading_factor_moist` or `loading_factor_steam` [-].
    size : float or array_like
        `size_factor`, or one of the two factors of thickness in its place [-].
    mix : float or array_like
        `mix_factor`, or the product of those of its factors that are known [-].

    Returns
    -------
    float or numpy.ndarray
        End value v_u [-] (ACI 209R-92, 2.4 and 2.5, from memory).
    """
    return AVERAGE_END * humidity_factor(humidity) * loading * size * mix


def loading_factor_moist(loaded):
    """Factor of the age at loading, concrete cured moist.

    Parameters
    ----------
    loaded : float or array_like
        Age at loading, above 0 [days]. Before 7 days the formula goes on, beyond its range.

    Returns
    -------
    float or numpy.ndarray
        1.25 t^-0.118 [-] (ACI 209R-92, 2.5.1, from memory).
    """
    return 1.25 * np.asarray(loaded, dtype=float) ** -0.118


def loading_factor_steam(loaded):
    """Factor of the age at loading, concrete cured in steam for 1 to 3 days.

    Parameters
    ----------
    loaded : float or array_like
        Age at loading, above 0 [days].

    Returns
    -------
    float or numpy.ndarray
        1.13 t^-0.094 [-] (ACI 209R-92, 2.5.1, from memory).
    """
    return 1.13 * np.asarray(loaded, dtype=float) ** -0.094


def humidity_factor(humidity):
    """Factor of the air.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity, 0 to 100 [%]. Below 40 % the line goes on, beyond its range.

    Returns
    -------
    float or numpy.ndarray
        1.27 - 0.0067 RH [-] (ACI 209R-92, 2.5.4, from memory).
    """
    return 1.27 - 0.0067 * np.asarray(humidity, dtype=float)


def size_factor(volume_surface):
    """Factor of size from volume over drying surface.

    Parameters
    ----------
    volume_surface : float or array_like
        Volume over the surface that dries [mm]; the thickness of a slab that dries from one face.

    Returns
    -------
    float or numpy.ndarray
        2/3 (1 + 1.13 exp(-0.54 V/S)), V/S in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return 2 / 3 * (1.0 + 1.13 * np.exp(-0.54 / INCH * np.asarray(volume_surface, dtype=float)))


def thickness_factor_first_year(thickness):
    """Factor of size from average thickness, for the first year under load.

    Parameters
    ----------
    thickness : float or array_like
        Average thickness, 51 to 381 (2 to 15 in.) [mm].

    Returns
    -------
    float or numpy.ndarray
        A table to 6 in., then 1.14 - 0.023 h, h in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return _of_thickness(thickness, 1.14, 0.023)


def thickness_factor_end(thickness):
    """Factor of size from average thickness, for the end value.

    Parameters
    ----------
    thickness : float or array_like
        Average thickness, 51 to 381 (2 to 15 in.) [mm].

    Returns
    -------
    float or numpy.ndarray
        A table to 6 in., then 1.10 - 0.017 h, h in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return _of_thickness(thickness, 1.10, 0.017)


def mix_factor(slump, fines=50.0, air=6.0):
    """Factor of the mix, the product of its three factors.

    Parameters
    ----------
    slump : float or array_like
        Slump [mm]; 68 gives 1.
    fines : float or array_like
        Fine aggregate over all aggregate by weight [%]; 50 gives 1.
    air : float or array_like
        Air [%]; 6 or less gives 1.

    Returns
    -------
    float or numpy.ndarray
        Product of the factors [-] (ACI 209R-92, 2.6, from memory).
    """
    return slump_factor(slump) * fines_factor(fines) * air_factor(air)


def slump_factor(slump):
    """Factor of slump.

    Parameters
    ----------
    slump : float or array_like
        Slump [mm].

    Returns
    -------
    float or numpy.ndarray
        0.82 + 0.067 s, s in inches [-] (ACI 209R-92, 2.6, from memory).
    """
    return 0.82 + 0.067 / INCH * np.asarray(slump, dtype=float)


def fines_factor(fines):
    """Factor of fine aggregate.

    Parameters
    ----------
    fines : float or array_like
        Fine aggregate over all aggregate by weight, 0 to 100 [%].

    Returns
    -------
    float or numpy.ndarray
        0.88 + 0.0024 psi [-] (ACI 209R-92, 2.6, from memory).
    """
    return 0.88 + 0.0024 * np.asarray(fines, dtype=float)


def air_factor(air):
    """Factor of air in the mix.

    Parameters
    ----------
    air : float or array_like
        Air [%].

    Returns
    -------
    float or numpy.ndarray
        0.46 + 0.09 alpha, 1 or more [-] (ACI 209R-92, 2.6, from memory).
    """
    return np.maximum(0.46 + 0.09 * np.asarray(air, dtype=float), 1.0)[()]


def _of_thickness(thickness, at_zero, slope):
    h = np.asarray(thickness, dtype=float) / INCH
    return np.where(h <= _THIN[-1], np.interp(h, _THIN, _OF_THIN), at_zero - slope * h)[()]
