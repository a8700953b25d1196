"""Shrinkage in time as the fib Model Code 2010 estimates it, 5.1.9.4.4; all of it from memory."""

import numpy as np

from crackkit.mechanics.cement_class import of_class
from crackkit.mechanics.shrinkage_strain import Shrinkage, days_dried

_BASIC = {"S": 800.0, "N": 700.0, "R": 600.0}
_DRYING = {"S": (3.0, 0.013), "N": (4.0, 0.012), "R": (6.0, 0.012)}


def shrinkage_mc2010(ages, mean_strength, humidity, notional_size, curing_days, cement_class="N"):
    """Shrinkage of concrete that is free to move.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t [days].
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 130 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    notional_size : float or array_like
        h = 2 Ac/u with u the edge that dries, above 0 [mm]; twice the thickness of a slab that
        dries from one face.
    curing_days : float or array_like
        Age ts at which drying begins [days].
    cement_class : str
        "S", "N" or "R", for 32.5 N, for 32.5 R and 42.5 N, for 42.5 R and 52.5.

    Returns
    -------
    Shrinkage
        Drying and basic shrinkage (MC2010, Eqs. 5.1-75 to 5.1-84, from memory).
    """
    share = drying_share(days_dried(ages, curing_days), notional_size)
    return Shrinkage(
        drying=share * drying_end(mean_strength, humidity, cement_class),
        basic=basic(ages, mean_strength, cement_class),
    )


def basic(ages, mean_strength, cement_class="N"):
    """Basic shrinkage, which comes without drying.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t, 0 or more [days].
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 130 [MPa].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        Shortening eps_cbs [-] (MC2010, 5.1.9.4.4, from memory).

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    t = np.maximum(np.asarray(ages, dtype=float), 0.0)
    f = 0.1 * np.asarray(mean_strength, dtype=float)
    end = of_class(_BASIC, cement_class) * 1e-6 * (f / (6.0 + f)) ** 2.5
    return end * (1.0 - np.exp(-0.2 * np.sqrt(t)))


def drying_end(mean_strength, humidity, cement_class="N"):
    """Drying shrinkage after very long drying.

    Parameters
    ----------
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 130 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        Shortening eps_cds0 beta_RH [-], negative in wet air (MC2010, 5.1.9.4.4, from memory).

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    a1, a2 = of_class(_DRYING, cement_class)
    fcm = np.asarray(mean_strength, dtype=float)
    mix = (220.0 + 110.0 * a1) * np.exp(-a2 * fcm)
    return 1e-6 * mix * humidity_factor(humidity, fcm)


def humidity_factor(humidity, mean_strength):
    """Factor of the air on drying shrinkage.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity, 40 to 100 [%]; below 40 % the formula goes on, beyond its range.
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 130 [MPa].

    Returns
    -------
    float or numpy.ndarray
        1.55 (1 - (RH/100)^3) below RH = 99 beta_s1, -0.25 (swelling) from there on, with
        beta_s1 = (35/fcm)^0.1 <= 1 [-] (MC2010, 5.1.9.4.4, from memory).
    """
    RH = np.asarray(humidity, dtype=float)
    beta_s1 = np.minimum((35.0 / np.asarray(mean_strength, dtype=float)) ** 0.1, 1.0)
    swells = 99.0 * beta_s1 <= RH
    return np.where(swells, -0.25, 1.55 * (1.0 - (RH / 100.0) ** 3))[()]


def drying_share(days, notional_size):
    """Share of the end value after some days of drying.

    Parameters
    ----------
    days : float or array_like
        Days of drying, t - ts, 0 or more [days].
    notional_size : float or array_like
        h = 2 Ac/u, above 0 [mm].

    Returns
    -------
    float or numpy.ndarray
        sqrt((t - ts)/(0.035 h^2 + t - ts)), 0 to 1 [-] (MC2010, 5.1.9.4.4, from memory).
    """
    t = np.maximum(np.asarray(days, dtype=float), 0.0)
    return np.sqrt(t / (0.035 * np.asarray(notional_size, dtype=float) ** 2 + t))
