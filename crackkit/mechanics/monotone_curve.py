"""A smooth curve through points that never overshoots them."""

import numpy as np


def monotone_curve(x, y, at):
    """Piecewise cubic through points, rising and falling only where they do.

    Parameters
    ----------
    x : numpy.ndarray
        Places of the points, growing; three or more [-].
    y : numpy.ndarray
        Values there [-].
    at : array_like
        Places between the first and the last [-].

    Returns
    -------
    numpy.ndarray
        Values of the curve [-]: slopes are weighted harmonic means of the neighbours' (Fritsch and
        Butland 1984), 0 at a turn.
    """
    h, rise = np.diff(x), np.diff(y) / np.diff(x)
    slope = _slopes(h, rise)
    k = np.clip(np.searchsorted(x, at, side="right") - 1, 0, h.size - 1)
    t = (np.asarray(at, dtype=float) - x[k]) / h[k]
    bend = (slope[k] + slope[k + 1] - 2 * rise[k]) * t * (t - 1)
    return y[k] + h[k] * t * (slope[k] + (rise[k] - slope[k]) * t + bend)


def _slopes(h, rise):
    slope = np.zeros(h.size + 1)
    a, b = 2 * h[1:] + h[:-1], h[1:] + 2 * h[:-1]
    same = rise[:-1] * rise[1:] > 0
    left, right = (np.where(same, each, 1.0) for each in (rise[:-1], rise[1:]))
    with np.errstate(over="ignore"):  # beside a rise of next to nothing the curve is level
        slope[1:-1] = np.where(same, (a + b) / (a / left + b / right), 0.0)
    slope[0], slope[-1] = _end(h[0], h[1], rise[0], rise[1]), _end(h[-1], h[-2], rise[-1], rise[-2])
    return slope


def _end(h, beside, rise, next_rise):
    """Slope at an end, from three points, kept from turning back."""
    slope = ((2 * h + beside) * rise - h * next_rise) / (h + beside)
    if slope * rise <= 0:
        return 0.0
    turns = rise * next_rise <= 0
    return 3 * rise if turns and abs(slope) > 3 * abs(rise) else slope
