"""Where straight lines in a plane meet, many with many at once."""

import numpy as np


def cross(a, b):
    """Cross product of vectors in a plane.

    Parameters
    ----------
    a, b : numpy.ndarray
        Vectors [mm], shape (..., 2).

    Returns
    -------
    numpy.ndarray
        Twice the area between them [mm2], positive where b lies to the left of a, shape (...).
    """
    return a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]


def meeting_shares(starts, ways, others, steps):
    """Where lines meet other lines, both without end.

    Parameters
    ----------
    starts, ways : numpy.ndarray
        Where each of n lines begins, and from there to its end [mm], shape (n, 2).
    others, steps : numpy.ndarray
        The same of each of m other lines [mm], shape (m, 2).

    Returns
    -------
    on_lines, on_others : numpy.ndarray
        Share of the line, and of the other one, at which they meet [-], shape (n, m); infinite or
        not a number where they run alike.
    """
    gap, way = others - starts[:, None], ways[:, None]
    with np.errstate(divide="ignore", invalid="ignore"):
        spread = cross(way, steps)
        return cross(gap, steps) / spread, cross(gap, way) / spread
