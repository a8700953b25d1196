"""Factors of the stiffness of a slab: made once, used for many loads, or cut down to a few nodes.

Nodes that are asked for come last in the order of elimination. What is left of the stiffness when
all others are eliminated is the stiffness of the slab as these nodes feel it, a small full matrix:
it costs far less than a solution for each of them.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np


@dataclass(frozen=True, eq=False)
class PlaneFactor:
    """Factors of a stiffness; made by `plane_factor`.

    Parameters
    ----------
    factors : scipy.sparse.linalg.SuperLU
        Factors of the stiffness in the order of elimination [N/mm].
    order : numpy.ndarray of int or None
        Which equation is eliminated when [-], shape (2 n,); None for the order of the nodes.
    kept : int
        How many equations are kept for last [-].
    """

    factors: object
    order: np.ndarray | None = None
    kept: int = 0

    @property
    def shape(self):
        """Equations and unknowns [-], (2 n, 2 n)."""
        return self.factors.shape

    def solve(self, forces):
        """Movements from forces.

        Parameters
        ----------
        forces : numpy.ndarray
            Forces [N], shape (2 n,) or (2 n, k).

        Returns
        -------
        numpy.ndarray
            Movements [mm], shape as of the forces.
        """
        if self.order is None:
            return self.factors.solve(forces)
        whole = np.empty(forces.shape)
        whole[self.order] = self.factors.solve(np.ascontiguousarray(forces[self.order]))
        return whole

    @cached_property
    def condensed(self):
        """Stiffness as the nodes that were kept for last feel it [N/mm], shape (2 k, 2 k).

        Its order is x of the first node, y of the first node, x of the second and so on. The
        forces that belong to it are those that hold these nodes in place under the other loads.
        """
        k, first = self.kept, self.factors.shape[0] - self.kept
        rows, columns = (p[first:] - first for p in (self.factors.perm_r, self.factors.perm_c))
        if k and min(rows.min(), columns.min()) < 0:  # eliminated earlier after all
            unit = np.zeros((first + k, k))
            unit[first:] = np.eye(k)
            return np.linalg.inv(self.factors.solve(unit)[first:])
        L, U = (each[:, first:][first:].toarray() for each in (self.factors.L, self.factors.U))
        return (L @ U)[rows[:, None], columns]


def plane_factor(stiffness, is_free, last=None):
    """Factors of a stiffness, its rows and columns of what is held replaced by their diagonal.

    Parameters
    ----------
    stiffness : scipy.sparse.csr_array
        Stiffness [N/mm], shape (2 n, 2 n), symmetric.
    is_free : numpy.ndarray of bool
        Which movements are free, shape (2 n,).
    last : array_like of int, optional
        Nodes that are kept for last [-], shape (k,).

    Returns
    -------
    PlaneFactor
        Factors [N/mm].

    Raises
    ------
    RuntimeError
        If the stiffness is singular.
    """
    from scipy.sparse import csc_array

    K = stiffness
    rows = np.repeat(np.arange(K.shape[0]), np.diff(K.indptr))
    keep = (is_free[rows] & is_free[K.indices]) | (rows == K.indices)
    held = csc_array((np.where(keep, K.data, 0.0), K.indices, K.indptr), shape=K.shape)
    if last is None or not len(last):
        return PlaneFactor(symmetric_factors(held))
    nodes = _elimination(held, np.asarray(last))
    order = (2 * nodes[:, None] + np.arange(2)).ravel()
    factors = symmetric_factors(held[order][:, order].tocsc(), "NATURAL")
    return PlaneFactor(factors, order, 2 * len(last))


def symmetric_factors(matrix, order="MMD_AT_PLUS_A"):
    """Factors of a symmetric matrix whose pivots may be taken as they come.

    Parameters
    ----------
    matrix : scipy.sparse.csc_array
        Such as a stiffness [N/mm], shape (n, n).
    order : str
        Order of elimination, as of `scipy.sparse.linalg.splu`.

    Returns
    -------
    scipy.sparse.linalg.SuperLU
        Factors [N/mm].

    Raises
    ------
    RuntimeError
        If the matrix is singular.
    """
    from scipy.sparse.linalg import splu

    # columns of triangles are alike as they are: none need be put together, which costs time
    more = {"diag_pivot_thresh": 0.0, "relax": 1, "options": {"SymmetricMode": True}}
    return splu(matrix, permc_spec=order, **more)


def _elimination(held, last):
    """Order of the nodes: of least degree first, those kept for last at the end."""
    from scipy.sparse import csc_array

    inner = np.ones(held.shape[0] // 2, dtype=bool)
    inner[last] = False
    inner = np.flatnonzero(inner)
    links = held[2 * inner][:, 2 * inner].tocsc()
    columns = np.repeat(np.arange(len(inner)), np.diff(links.indptr))
    # Only the pattern counts; a strong diagonal keeps the trial factors sound.
    values = np.where(links.indices == columns, float(len(inner)), -1.0)
    trial = csc_array((values, links.indices, links.indptr), shape=links.shape)
    return np.r_[inner[np.argsort(symmetric_factors(trial).perm_c)], last]
