"""Equations in which each unknown is tied to its two neighbours only."""

import numpy as np

_FEW = 32  # unknowns that are quicker solved at one stroke


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


def tridiagonal_solutions(ties, diagonal, load):
    """Solve many such sets of equations, one in each row.

    Every second unknown is expressed by its neighbours until few are left (cyclic reduction).
    No unknown may need to change places with another, as in elimination without exchange.

    Parameters
    ----------
    ties : numpy.ndarray
        Coefficient between each unknown and the next one, one fewer than unknowns [any].
    diagonal : numpy.ndarray
        Coefficients of the unknowns in their own equations, not 0 [any].
    load : numpy.ndarray
        Right-hand sides [any].

    Returns
    -------
    numpy.ndarray
        The unknowns, in the unit of load over diagonal [any].
    """
    A, M = diagonal.shape
    if M <= _FEW:
        return _at_one_stroke(ties, diagonal, load)
    n, m = M // 2, (M - 1) // 2  # unknowns that leave, and those of them with two neighbours
    own, pull, before, after = diagonal[:, 1::2], load[:, 1::2], ties[:, ::2], ties[:, 1::2]
    left, right = before / own, after / own[:, :m]
    b, d = diagonal[:, ::2].copy(), load[:, ::2].copy()
    b[:, :n] -= left * before
    d[:, :n] -= left * pull
    b[:, 1 : m + 1] -= right * after
    d[:, 1 : m + 1] -= right * pull[:, :m]
    kept = tridiagonal_solutions(-left[:, :m] * after, b, d)
    found = np.empty((A, M))
    found[:, ::2], found[:, 1::2] = kept, pull / own - left * kept[:, :n]
    found[:, 1 : 2 * m : 2] -= right * kept[:, 1 : m + 1]
    return found


def _at_one_stroke(ties, diagonal, load):
    A, M = diagonal.shape
    K = np.zeros((A, M * M))
    K[:, :: M + 1] = diagonal
    K[:, 1 :: M + 1] = K[:, M :: M + 1] = ties
    return np.linalg.solve(K.reshape(A, M, M), load[..., None])[..., 0]
