"""Equations in which each unknown is tied to its two neighbours only."""

import numpy as np


def tridiagonal_solution(ties, diagonal, load):
    """Solve a symmetric set of such equations, neighbours at a doubled distance in each round.

    Cyclic reduction (Hockney 1965) of all rows at once: as exact as elimination where the
    diagonal outweighs the ties, and done in a few strokes instead of row by row.

    Parameters
    ----------
    ties : array_like
        Coefficient between each unknown and the next one, one fewer than unknowns [any].
    diagonal : array_like
        Coefficients of the unknowns in their own equations [any], each larger than the sum of
        its ties.
    load : array_like
        Right-hand sides [any].

    Returns
    -------
    numpy.ndarray
        The unknowns, in the unit of load over diagonal [any].
    """
    b, d = np.array(diagonal, dtype=float), np.array(load, dtype=float)
    a, c, reach = np.r_[0.0, ties], np.r_[ties, 0.0], 1
    while reach < len(b):
        before, after = a[reach:] / b[:-reach], c[:-reach] / b[reach:]
        less_b, less_d = np.zeros_like(b), np.zeros_like(d)
        next_a, next_c = np.zeros_like(a), np.zeros_like(c)
        less_b[reach:], less_d[reach:] = before * c[:-reach], before * d[:-reach]
        less_b[:-reach] += after * a[reach:]
        less_d[:-reach] += after * d[reach:]
        next_a[reach:], next_c[:-reach] = -before * a[:-reach], -after * c[reach:]
        a, b, c, d, reach = next_a, b - less_b, next_c, d - less_d, 2 * reach
    return d / b
