"""How deep the air turns concrete from a keeper of steel into a mere cover: carbonation.

Carbon dioxide creeps in from the face and takes the alkalinity that keeps bars from rusting. All
depths and years here are means, those that half of the places exceed: a bar is at risk earlier.
Everything is from memory: fib Bulletin 34, annex B (FIB2006), taken over by Model Code 2010
(MC2010), with concrete of plain Portland cement (CEM I).
"""

import numpy as np

from crackkit.mechanics.us_customary import PSI
from crackkit.words import _

# Inverse resistance in the accelerated test, 1e-11 (m2/s)/(kg/m3), by water over cement.
_MIXES = (0.40, 0.45, 0.50, 0.55, 0.60)
_INVERSE_RESISTANCE = (3.1, 5.2, 6.8, 9.8, 13.4)
_MM2_PER_YEAR = 315.576  # in 1e-11 m2/s, with years of 365.25 days
_TEST_FACTOR, _TEST_ERROR = 1.25, 315.5  # k_t [-] and eps_t [(mm2/a)/(kg/m3)]
_CARBON_DIOXIDE = 0.00082  # kg/m3 of air
_TEST_HUMIDITY = 65.0  # %
_FIRST_YEARS = 28.0 / 365.0  # t_0, age at the test

# ACI 211.1-91, concrete without air-entraining: average strength of cylinders at 28 days.
_STRENGTHS = np.array([2000.0, 3000.0, 4000.0, 5000.0, 6000.0]) * PSI
_THEIR_MIXES = (0.82, 0.68, 0.57, 0.48, 0.41)


def carbonation_depth(years, water_cement, humidity, curing_days, *, rain_share=0.0, wet_days=0.0):
    """Give the mean depth that carbonation has reached.

    Parameters
    ----------
    years : float or array_like
        Age t, 0 or more [years].
    water_cement : float or array_like
        Water over cement by weight, 0.40 to 0.60 [-]; see `water_cement_of`.
    humidity : float or array_like
        Mean relative humidity of the air, 0 to 100 [%]. Below about 50 % the rule errs upwards:
        concrete that is dry all through hardly carbonates.
    curing_days : float or array_like
        How long the face was kept moist after casting, 1 or more [days].
    rain_share : float or array_like
        Chance that rain strikes the face on a wet day, 0 to 1 [-]: 0 for a sheltered face, 1 for
        one that lies open to the sky.
    wet_days : float or array_like
        Days in a year with 2.5 mm of rain or more, 0 to 365 [days].

    Returns
    -------
    float or numpy.ndarray
        Mean depth x_c [mm]: half of the places are carbonated deeper.

    Raises
    ------
    ValueError
        If an argument is out of range.

    Notes
    -----
    FIB2006 B1 and MC2010, from memory: x_c = sqrt(2 k_e k_c (k_t R + eps_t) C_s) sqrt(t) W with
    k_e = ((1 - (RH/100)^5)/(1 - 0.65^5))^2.5, k_c = (t_c/7)^-0.567 and
    W = (t_0/t)^((p_SR ToW)^0.446/2).
    """
    _check(np.asarray(years) >= 0.0, _("A face cannot be younger than 0 years."))
    pace = _pace(water_cement, humidity, curing_days)
    slowing = _slowing(rain_share, wet_days)
    t = np.asarray(years, dtype=float)
    return (pace * _FIRST_YEARS**slowing * t ** (0.5 - slowing))[()]


def years_to_reach(cover, water_cement, humidity, curing_days, *, rain_share=0.0, wet_days=0.0):
    """Give the years after which the mean carbonation depth is that of the bars.

    Rust may begin then; where the concrete is dry it need not. Half of the bars are reached
    earlier.

    Parameters
    ----------
    cover : float or array_like
        Clear concrete over the bars, 0 or more [mm].
    water_cement : float or array_like
        Water over cement by weight, 0.40 to 0.60 [-].
    humidity : float or array_like
        Mean relative humidity of the air, 0 to 100 [%].
    curing_days : float or array_like
        How long the face was kept moist after casting, 1 or more [days].
    rain_share : float or array_like
        Chance that rain strikes the face on a wet day, 0 to 1 [-].
    wet_days : float or array_like
        Days in a year with 2.5 mm of rain or more, 0 to 365 [days].

    Returns
    -------
    float or numpy.ndarray
        Age [years]; infinite where carbonation never gets there.

    Raises
    ------
    ValueError
        If an argument is out of range.

    Notes
    -----
    FIB2006 B1 and MC2010, from memory, solved for the age.
    """
    _check(np.asarray(cover) >= 0.0, _("The cover cannot be negative."))
    slowing = _slowing(rain_share, wet_days)
    first = _pace(water_cement, humidity, curing_days) * _FIRST_YEARS**slowing
    x, first, power = np.broadcast_arrays(np.asarray(cover, float), first, 0.5 - slowing)
    moves = (first > 0.0) & (power > 1e-12)
    with np.errstate(over="ignore"):  # more years than can be counted are infinite
        t = (x / np.where(moves, first, 1.0)) ** (1.0 / np.where(moves, power, 1.0))
    return np.where(moves, t, np.where(x > first, np.inf, 0.0))[()]


def water_cement_of(strength):
    """Give the water over cement that a strength hints at, for who knows the strength only.

    Common practice: a starting point for trial mixes, no more. Concretes of one strength differ
    in their water, and the average strength is meant, which lies above the one asked for.

    Parameters
    ----------
    strength : float or array_like
        Average strength of cylinders at 28 days, above 0 [MPa].

    Returns
    -------
    float or numpy.ndarray
        Water over cement by weight [-], held to 0.40 to 0.60, for which carbonation is known.

    Raises
    ------
    ValueError
        If a strength is not above 0.

    Notes
    -----
    ACI 211.1-91, table of strengths without air-entraining, from memory; straight between
    entries.
    """
    f = np.asarray(strength, dtype=float)
    _check(f > 0.0, _("The strength must be above 0."))
    mix = np.interp(f, _STRENGTHS, _THEIR_MIXES)
    return np.clip(mix, _MIXES[0], _MIXES[-1])[()]


def _pace(water_cement, humidity, curing_days):
    """Depth after one year without rain [mm]."""
    mix, air, cured = (np.asarray(v, float) for v in (water_cement, humidity, curing_days))
    _check(
        (mix >= _MIXES[0]) & (mix <= _MIXES[-1]),
        _("Carbonation is known for 0.40 to 0.60 of water over cement."),
    )
    _check((air >= 0.0) & (air <= 100.0), _("Humidity runs from 0 to 100 %."))
    _check(cured >= 1.0, _("Curing lasts a day or more."))
    k_e = ((1.0 - (air / 100.0) ** 5) / (1.0 - (_TEST_HUMIDITY / 100.0) ** 5)) ** 2.5
    k_c = (cured / 7.0) ** -0.567
    R = np.interp(mix, _MIXES, _INVERSE_RESISTANCE) * _MM2_PER_YEAR
    return np.sqrt(2.0 * k_e * k_c * (_TEST_FACTOR * R + _TEST_ERROR) * _CARBON_DIOXIDE)


def _slowing(rain_share, wet_days):
    """Exponent w of the weather [-], 0 for a sheltered face to 0.5 for one that is always wet."""
    share, days = np.asarray(rain_share, float), np.asarray(wet_days, float)
    _check((share >= 0.0) & (share <= 1.0), _("The share of rain runs from 0 to 1."))
    _check((days >= 0.0) & (days <= 365.0), _("A year has 0 to 365 wet days."))
    return 0.5 * (share * days / 365.0) ** 0.446


def _check(holds, message):
    if not np.all(holds):
        raise ValueError(message)
