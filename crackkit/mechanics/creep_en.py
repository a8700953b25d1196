"""Creep in time as EN 1992-1-1:2004 estimates it, Annex B.1; the clauses are from memory.

The coefficient is the creep strain over the elastic strain at 28 days, taken with the tangent
modulus 1.05 Ecm; `to_modulus_at_loading` refers it to the modulus at the age of loading. Its
coefficient of variation is about 20 %.
"""

import numpy as np

from crackkit.mechanics.cement_class import of_class

_YOUNGEST = 0.5  # days
_HARDENING = {"S": -1.0, "N": 0.0, "R": 1.0}


def creep_en(ages, loaded, mean_strength, humidity, notional_size, cement_class="N"):
    """Creep coefficient.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t [days].
    loaded : float or array_like
        Age at loading, t0, above 0 [days].
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    notional_size : float or array_like
        h0 = 2 Ac/u with u the edge that dries, above 0 [mm].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        phi(t, t0), 0 before loading [-] (EN 1992-1-1:2004, (B.1), from memory).
    """
    end = notional_creep(loaded, mean_strength, humidity, notional_size, cement_class)
    days = np.asarray(ages, dtype=float) - loaded
    return end * creep_share(days, mean_strength, humidity, notional_size)


def notional_creep(loaded, mean_strength, humidity, notional_size, cement_class="N"):
    """Creep coefficient after very long loading.

    Parameters
    ----------
    loaded : float or array_like
        Age at loading, t0, above 0 [days].
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    notional_size : float or array_like
        h0 = 2 Ac/u, above 0 [mm].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        phi_0 [-] (EN 1992-1-1:2004, (B.2), from memory).
    """
    air = humidity_factor(humidity, mean_strength, notional_size)
    age = loading_factor(aged_by_cement(loaded, cement_class))
    return air * strength_factor(mean_strength) * age


def humidity_factor(humidity, mean_strength, notional_size):
    """Factor of the air, phi_RH.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity, 40 to 100 [%].
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].
    notional_size : float or array_like
        h0 = 2 Ac/u, above 0 [mm].

    Returns
    -------
    float or numpy.ndarray
        phi_RH [-] (EN 1992-1-1:2004, (B.3), from memory).
    """
    dry = 1.0 - np.asarray(humidity, dtype=float) / 100.0
    size = 0.1 * np.cbrt(np.asarray(notional_size, dtype=float))
    a1, a2 = _stronger(mean_strength, 0.7), _stronger(mean_strength, 0.2)
    return (1.0 + dry / size * a1) * a2


def strength_factor(mean_strength):
    """Factor of strength, beta(fcm).

    Parameters
    ----------
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].

    Returns
    -------
    float or numpy.ndarray
        16.8/sqrt(fcm) [-] (EN 1992-1-1:2004, (B.4), from memory).
    """
    return 16.8 / np.sqrt(np.asarray(mean_strength, dtype=float))


def loading_factor(loaded):
    """Factor of the age at loading, beta(t0).

    Parameters
    ----------
    loaded : float or array_like
        Age at loading, t0, corrected for the cement, above 0 [days].

    Returns
    -------
    float or numpy.ndarray
        1/(0.1 + t0^0.2) [-] (EN 1992-1-1:2004, (B.5), from memory).
    """
    return 1.0 / (0.1 + np.asarray(loaded, dtype=float) ** 0.2)


def aged_by_cement(loaded, cement_class):
    """Age at loading as normal cement would need it to be as hard.

    Parameters
    ----------
    loaded : float or array_like
        Age at loading, above 0 [days].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float or numpy.ndarray
        t0 (9/(2 + t0^1.2) + 1)^alpha, 0.5 or more [days] (EN 1992-1-1:2004, (B.9), from memory).

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    t = np.asarray(loaded, dtype=float)
    alpha = of_class(_HARDENING, cement_class)
    return np.maximum(t * (9.0 / (2.0 + t**1.2) + 1.0) ** alpha, _YOUNGEST)[()]


def creep_share(days, mean_strength, humidity, notional_size):
    """Share of the end value after some days under load, beta_c(t, t0).

    Parameters
    ----------
    days : float or array_like
        Days since loading, t - t0 [days]; 0 before.
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    notional_size : float or array_like
        h0 = 2 Ac/u, above 0 [mm].

    Returns
    -------
    float or numpy.ndarray
        0 to 1 [-] (EN 1992-1-1:2004, (B.7), from memory).
    """
    t = np.maximum(np.asarray(days, dtype=float), 0.0)
    return (t / (creep_pace(mean_strength, humidity, notional_size) + t)) ** 0.3


def creep_pace(mean_strength, humidity, notional_size):
    """Days beta_H that say how slowly creep comes.

    Parameters
    ----------
    mean_strength : float or array_like
        Mean cylinder strength fcm, 20 to 98 [MPa].
    humidity : float or array_like
        Relative humidity of the air, 40 to 100 [%].
    notional_size : float or array_like
        h0 = 2 Ac/u, above 0 [mm].

    Returns
    -------
    float or numpy.ndarray
        beta_H [days] (EN 1992-1-1:2004, (B.8), from memory).
    """
    a3 = _stronger(mean_strength, 0.5)
    RH = np.asarray(humidity, dtype=float)
    slow = 1.5 * (1.0 + (0.012 * RH) ** 18) * np.asarray(notional_size, dtype=float) + 250.0 * a3
    return np.minimum(slow, 1500.0 * a3)[()]


def to_modulus_at_loading(creep, modulus_at_loading, modulus):
    """Creep coefficient that goes with the modulus at the age of loading.

    Parameters
    ----------
    creep : float or array_like
        phi(t, t0) of EN 1992-1-1, which goes with 1.05 Ecm [-].
    modulus_at_loading : float or array_like
        Secant modulus Ecm(t0) [MPa].
    modulus : float or array_like
        Secant modulus at 28 days, Ecm [MPa].

    Returns
    -------
    float or numpy.ndarray
        Creep strain over elastic strain at loading [-] (EN 1992-1-1:2004, 3.1.4(2), from memory).
    """
    return creep * np.asarray(modulus_at_loading, dtype=float) / (1.05 * modulus)


def _stronger(mean_strength, power):
    """Factors alpha_1 to alpha_3 of (B.8c) [-], 1 to 35 MPa."""
    return np.minimum((35.0 / np.asarray(mean_strength, dtype=float)) ** power, 1.0)
