"""Shrinkage in time as EN 1992-1-1:2004 estimates it, 3.1.4(6) and Annex B.2.

From memory but for (3.10) and Table 3.3. The nominal value is a mean with a coefficient of
variation of about 30 %.
"""

import numpy as np

from crackkit.mechanics.cement_class import of_class
from crackkit.mechanics.concrete import mean_strength_en
from crackkit.mechanics.shrinkage_strain import Shrinkage, days_dried

_SIZES = (100.0, 200.0, 300.0, 500.0)  # mm
_OF_SIZES = (1.00, 0.85, 0.75, 0.70)
_DRYING = {"S": (3.0, 0.13), "N": (4.0, 0.12), "R": (6.0, 0.11)}


def shrinkage_en(ages, strength, humidity, notional_size, curing_days, cement_class="N"):
    """Shrinkage of concrete that is free to move.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t [days].
    strength : float or array_like
        Characteristic cylinder strength fck, 12 to 90 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 20 to 100 [%].
    notional_size : float or array_like
        h0 = 2 Ac/u with u the edge that dries, above 0 [mm]; twice the thickness of a slab that
        dries from one face.
    curing_days : float or array_like
        Age ts at which drying begins [days].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    Shrinkage
        Drying and autogenous shrinkage (EN 1992-1-1:2004, (3.8) to (3.13), from memory).
    """
    end = size_factor(notional_size) * nominal_drying(strength, humidity, cement_class)
    share = drying_share(days_dried(ages, curing_days), notional_size)
    return Shrinkage(drying=share * end, basic=autogenous(ages, strength))


def nominal_drying(strength, humidity, cement_class="N"):
    """Nominal drying shrinkage eps_cd,0, before the factor of size.

    Parameters
    ----------
    strength : float or array_like
        Characteristic cylinder strength fck, 12 to 90 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 20 to 100 [%].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        Shortening [-] (EN 1992-1-1:2004, (B.11), from memory; Table 3.2 rounds it).

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    a1, a2 = of_class(_DRYING, cement_class)
    fcm = mean_strength_en(np.asarray(strength, dtype=float))
    mix = (220.0 + 110.0 * a1) * np.exp(-a2 * fcm / 10.0)
    return 0.85e-6 * mix * humidity_factor(humidity)


def humidity_factor(humidity):
    """Factor of the air on drying shrinkage.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity, 20 to 100 [%].

    Returns
    -------
    float or numpy.ndarray
        1.55 (1 - (RH/100)^3) [-] (EN 1992-1-1:2004, (B.12), from memory).
    """
    return 1.55 * (1.0 - (np.asarray(humidity, dtype=float) / 100.0) ** 3)


def size_factor(notional_size):
    """Factor of size kh, straight between the entries of the table.

    Parameters
    ----------
    notional_size : float or array_like
        h0 = 2 Ac/u [mm]; the table runs from 100 to 500.

    Returns
    -------
    float or numpy.ndarray
        1.00 to 0.70 [-] (EN 1992-1-1:2004, Table 3.3).
    """
    return np.interp(notional_size, _SIZES, _OF_SIZES)


def drying_share(days, notional_size):
    """Share of the end value after some days of drying.

    Parameters
    ----------
    days : float or array_like
        Days of drying, t - ts, 0 or more [days].
    notional_size : float or array_like
        h0 = 2 Ac/u, above 0 [mm].

    Returns
    -------
    float or numpy.ndarray
        beta_ds, 0 to 1 [-] (EN 1992-1-1:2004, (3.10), as a draft of it has the equation).
    """
    t = np.maximum(np.asarray(days, dtype=float), 0.0)
    return t / (t + 0.04 * np.asarray(notional_size, dtype=float) ** 1.5)


def autogenous(ages, strength):
    """Autogenous shrinkage, which comes without drying.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t, 0 or more [days].
    strength : float or array_like
        Characteristic cylinder strength fck, 12 to 90 [MPa].

    Returns
    -------
    float or numpy.ndarray
        Shortening [-] (EN 1992-1-1:2004, (3.11) to (3.13), from memory).
    """
    t = np.maximum(np.asarray(ages, dtype=float), 0.0)
    end = 2.5e-6 * np.maximum(np.asarray(strength, dtype=float) - 10.0, 0.0)
    return (1.0 - np.exp(-0.2 * np.sqrt(t))) * end
