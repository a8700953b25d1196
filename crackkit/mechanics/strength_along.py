"""Tensile strength that differs from place to place, as it does in real concrete."""

import math

import numpy as np


def tensile_strength_along(length, stations, mean, variation, seed, reach=60.0):
    """Strengths along a member, scattered about a mean, alike at places that lie close.

    The logarithm is normal; places `reach` apart share 61 % of their deviation, and places four
    times as far apart none. The same seed gives the same concrete, whatever the number of
    stations; a longer member goes on where the shorter one ended.

    Parameters
    ----------
    length : float
        Length of the member [mm], above 0.
    stations : int
        Number of evenly spaced places, both ends counted [-], 2 or more.
    mean : float
        Mean tensile strength [MPa], above 0.
    variation : float
        Coefficient of variation [-], 0 or more; 0.05 to 0.15 in a member (common practice).
    seed : int
        Which concrete [-], 0 or more.
    reach : float
        Distance over which the strength hardly changes [mm], above 0.

    Returns
    -------
    numpy.ndarray
        Strength at each station [MPa].
    """
    knots = reach * np.arange(-4, math.ceil(length / reach) + 5)
    deviations = np.random.default_rng(seed).standard_normal(len(knots))
    x = np.linspace(0.0, length, stations)
    weights = np.exp(-np.square((x[:, None] - knots) / reach))
    g = weights @ deviations / np.sqrt(np.square(weights).sum(axis=1))
    zeta = math.sqrt(math.log1p(variation**2))
    return mean * np.exp(zeta * g - zeta**2 / 2)
