"""Roots of many functions at once, each of which crosses 0 once, upwards."""

import numpy as np


def rising_root(function, low, high, tolerance):
    """Roots of many rising functions at once, by false position that halves a stuck end.

    Parameters
    ----------
    function : callable
        Gives the values at an array of arguments, each by its own function.
    low : array_like
        Arguments at which the values are 0 or less [-].
    high : array_like
        Arguments at which they are 0 or more [-]; where they are not, these are the answers.
    tolerance : float or array_like
        Size of a value that counts as 0, in the unit of the values [-].

    Returns
    -------
    numpy.ndarray
        The roots [-].
    """
    below, above = function(low), function(high)
    low = np.where(above < 0, high, low)
    last = np.zeros_like(below)
    for _step in range(200):
        gap = np.where(above > below, above - below, 1.0)
        x = np.where(above > below, (low * above - high * below) / gap, high)
        value = function(x)
        if np.all((np.abs(value) <= tolerance) | (high - low <= 1e-15) | (above < 0)):
            break
        up = value > 0
        # Illinois: an end that stays twice counts half, so that it moves soon.
        above, below = (
            np.where(up, value, np.where(last < 0, above / 2, above)),
            np.where(up, np.where(last > 0, below / 2, below), value),
        )
        low, high = np.where(up, low, x), np.where(up, x, high)
        last = np.where(up, 1.0, -1.0)
    return x
