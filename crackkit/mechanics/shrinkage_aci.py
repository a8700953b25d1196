"""Drying shrinkage in time as ACI 209R-92 estimates it; all of it from memory.

One curve in time and one average end value, 0.00078, that factors fit to air, size, curing and
mix. The report does not tell shrinkage without drying apart. Measured values scatter about the
estimate by 30 % and more.
"""

import numpy as np

from crackkit.mechanics.us_customary import INCH, POUND
from crackkit.words import _

AVERAGE_END = 780e-6
"""Average shrinkage after very long drying, under standard conditions [-] (ACI 209R-92, 2.4)."""

_CURING = (1.0, 3.0, 7.0, 14.0, 28.0, 90.0)  # days
_OF_CURING = (1.20, 1.10, 1.00, 0.93, 0.86, 0.75)
_THIN = (2.0, 3.0, 4.0, 5.0, 6.0)  # in.
_OF_THIN = (1.35, 1.25, 1.17, 1.08, 1.00)
_POUND_PER_CUBIC_YARD = POUND / (36 * INCH / 1000) ** 3  # kg/m3


def drying_share_moist(days):
    """Share of the end value after some days of drying, concrete cured moist.

    Parameters
    ----------
    days : float or array_like
        Days since the end of moist curing, 0 or more [days].

    Returns
    -------
    float or numpy.ndarray
        t/(35 + t), 0 to 1 [-] (ACI 209R-92, Eq. 2-9, from memory).
    """
    return _share(days, 35.0)


def drying_share_steam(days):
    """Share of the end value after some days of drying, concrete cured in steam for 1 to 3 days.

    Parameters
    ----------
    days : float or array_like
        Days since the end of steam curing, 0 or more [days].

    Returns
    -------
    float or numpy.ndarray
        t/(55 + t), 0 to 1 [-] (ACI 209R-92, Eq. 2-10, from memory).
    """
    return _share(days, 55.0)


def drying_moist(days, end):
    """Drying shrinkage of concrete cured moist.

    Parameters
    ----------
    days : float or array_like
        Days since the end of moist curing, 0 or more [days].
    end : float or array_like
        End value, see `end_value` [-].

    Returns
    -------
    float or numpy.ndarray
        Shortening [-] (ACI 209R-92, Eq. 2-9, from memory).
    """
    return drying_share_moist(days) * end


def drying_steam(days, end):
    """Drying shrinkage of concrete cured in steam for 1 to 3 days.

    Parameters
    ----------
    days : float or array_like
        Days since the end of steam curing, 0 or more [days].
    end : float or array_like
        End value, see `end_value`; its curing factor is 1 [-].

    Returns
    -------
    float or numpy.ndarray
        Shortening [-] (ACI 209R-92, Eq. 2-10, from memory).
    """
    return drying_share_steam(days) * end


def end_value(humidity, size=1.0, curing=1.0, mix=1.0):
    """Shrinkage after very long drying.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity of the air, 0 to 100 [%].
    size : float or array_like
        `size_factor`, or one of the two factors of thickness in its place [-].
    curing : float or array_like
        `curing_factor`; 1 for steam curing [-].
    mix : float or array_like
        `mix_factor`, or the product of those of its factors that are known [-].

    Returns
    -------
    float or numpy.ndarray
        End value of shortening [-] (ACI 209R-92, 2.4, from memory).
    """
    return AVERAGE_END * humidity_factor(humidity) * size * curing * mix


def curing_factor(days):
    """Factor of moist curing, straight between the entries of the table.

    Parameters
    ----------
    days : float or array_like
        How long the concrete was kept moist, 1 or more [days]; 90 days is the last entry.

    Returns
    -------
    float or numpy.ndarray
        1.20 for one day to 0.75 for 90 [-] (ACI 209R-92, Table 2.5.3, from memory).

    Raises
    ------
    ValueError
        If the concrete is cured for less than one day.
    """
    if not np.all(np.asarray(days) >= 1.0):
        raise ValueError(_("Curing lasts a day or more."))
    return np.interp(days, _CURING, _OF_CURING)


def humidity_factor(humidity):
    """Factor of the air.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity, 0 to 100 [%]. Below 40 % the line goes on: the report gives no value
        there and says only that it lies above 1.

    Returns
    -------
    float or numpy.ndarray
        1.40 - 0.010 RH to 80 %, 3.00 - 0.030 RH above [-] (ACI 209R-92, 2.5.4, from memory).
    """
    RH = np.asarray(humidity, dtype=float)
    return np.minimum(1.40 - 0.010 * RH, 3.00 - 0.030 * RH)[()]


def size_factor(volume_surface):
    """Factor of size from volume over drying surface.

    Parameters
    ----------
    volume_surface : float or array_like
        Volume over the surface that dries [mm]; the thickness of a slab that dries from one face.

    Returns
    -------
    float or numpy.ndarray
        1.2 exp(-0.12 V/S), V/S in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return 1.2 * np.exp(-0.12 / INCH * np.asarray(volume_surface, dtype=float))


def thickness_factor_first_year(thickness):
    """Factor of size from average thickness, for the first year of drying.

    Parameters
    ----------
    thickness : float or array_like
        Average thickness, 51 to 381 (2 to 15 in.) [mm].

    Returns
    -------
    float or numpy.ndarray
        A table to 6 in., then 1.23 - 0.038 h, h in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return _of_thickness(thickness, 1.23, 0.038)


def thickness_factor_end(thickness):
    """Factor of size from average thickness, for the end value.

    Parameters
    ----------
    thickness : float or array_like
        Average thickness, 51 to 381 (2 to 15 in.) [mm].

    Returns
    -------
    float or numpy.ndarray
        A table to 6 in., then 1.17 - 0.029 h, h in inches [-] (ACI 209R-92, 2.5.5, from memory).
    """
    return _of_thickness(thickness, 1.17, 0.029)


def mix_factor(slump, fines=50.0, cement=412.0, air=6.0):
    """Factor of the mix, the product of its four factors.

    Parameters
    ----------
    slump : float or array_like
        Slump [mm]; 69 gives 1.
    fines : float or array_like
        Fine aggregate over all aggregate by weight [%]; 50 gives 1.
    cement : float or array_like
        Cement, 279 to 446 [kg/m3]; 412 gives 1.
    air : float or array_like
        Air [%]; 6 gives about 1.

    Returns
    -------
    float or numpy.ndarray
        Product of the factors [-] (ACI 209R-92, 2.6, from memory).
    """
    return slump_factor(slump) * fines_factor(fines) * cement_factor(cement) * air_factor(air)


def slump_factor(slump):
    """Factor of slump.

    Parameters
    ----------
    slump : float or array_like
        Slump [mm].

    Returns
    -------
    float or numpy.ndarray
        0.89 + 0.041 s, s in inches [-] (ACI 209R-92, 2.6, from memory).
    """
    return 0.89 + 0.041 / INCH * np.asarray(slump, dtype=float)


def fines_factor(fines):
    """Factor of fine aggregate.

    Parameters
    ----------
    fines : float or array_like
        Fine aggregate over all aggregate by weight, 0 to 100 [%].

    Returns
    -------
    float or numpy.ndarray
        0.30 + 0.014 psi to 50 %, 0.90 + 0.002 psi above [-] (ACI 209R-92, 2.6, from memory).
    """
    psi = np.asarray(fines, dtype=float)
    return np.minimum(0.30 + 0.014 * psi, 0.90 + 0.002 * psi)[()]


def cement_factor(cement):
    """Factor of cement content.

    Parameters
    ----------
    cement : float or array_like
        Cement, 279 to 446 [kg/m3].

    Returns
    -------
    float or numpy.ndarray
        0.75 + 0.00036 c, c in lb/yd3 [-] (ACI 209R-92, 2.6, from memory).
    """
    return 0.75 + 0.00036 / _POUND_PER_CUBIC_YARD * np.asarray(cement, dtype=float)


def air_factor(air):
    """Factor of air in the mix.

    Parameters
    ----------
    air : float or array_like
        Air [%].

    Returns
    -------
    float or numpy.ndarray
        0.95 + 0.008 alpha [-] (ACI 209R-92, 2.6, from memory).
    """
    return 0.95 + 0.008 * np.asarray(air, dtype=float)


def _share(days, half):
    t = np.maximum(np.asarray(days, dtype=float), 0.0)
    return (t / (half + t))[()]


def _of_thickness(thickness, at_zero, slope):
    h = np.asarray(thickness, dtype=float) / INCH
    return np.where(h <= _THIN[-1], np.interp(h, _THIN, _OF_THIN), at_zero - slope * h)[()]
