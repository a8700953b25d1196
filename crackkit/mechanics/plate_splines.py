"""Cubic splines along one side of a plate: heights, slopes and curvatures at any places."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

DEGREE = 3
"""Degree of the splines: bent elements need slopes without kinks."""

_GAUSS = np.polynomial.legendre.leggauss(3)


@dataclass(frozen=True, eq=False)
class SplineSide:
    """One side of a plate: its splines, and places at which products of them are summed up.

    Parameters
    ----------
    knots : numpy.ndarray
        Where one cubic ends and the next begins, both ends of the side included [mm].
    places : numpy.ndarray
        Three Gauss places between each two knots [mm].
    weights : numpy.ndarray
        Length that each place stands for [mm].
    values : numpy.ndarray
        Height [-], slope [1/mm] and curvature [1/mm2] of each spline at each place; shape
        (3, splines, places).
    kept : tuple of (int, int)
        First spline that may move, and the first one after them that may not [-].
    """

    knots: np.ndarray
    places: np.ndarray
    weights: np.ndarray
    values: np.ndarray
    kept: tuple

    @property
    def size(self):
        """Number of splines that may move."""
        return self.kept[1] - self.kept[0]

    def at(self, x):
        """Give heights, slopes and curvatures of the splines that may move.

        Parameters
        ----------
        x : array_like
            Places along the side [mm].

        Returns
        -------
        numpy.ndarray
            As `values`, for the splines that may move [-, 1/mm, 1/mm2].
        """
        return spline_values(self.knots, x)[:, slice(*self.kept)]

    def matrix(self, left, right):
        """Integrals of the products of all splines.

        Parameters
        ----------
        left, right : int
            Order of the derivative of each factor [-], 0 to 2.

        Returns
        -------
        numpy.ndarray
            Square matrix of integrals [mm, less one for each derivative].
        """
        return (self.values[left] * self.weights) @ self.values[right].T


@lru_cache(maxsize=64)
def spline_side(knots, held):
    """Splines between given knots, kept for the next time.

    Parameters
    ----------
    knots : tuple of float
        Ends of the cubics [mm], rising.
    held : tuple of (int, int)
        What is held at the start and the end [-]: 0 nothing, 1 the height, 2 the slope as well.

    Returns
    -------
    SplineSide
        Splines and the places to sum up at.
    """
    line = np.array(knots)
    half = 0.5 * np.diff(line)[:, None]
    places = (line[:-1, None] + half * (1.0 + _GAUSS[0])).ravel()
    values = spline_values(line, places)
    kept = held[0], len(line) + DEGREE - 1 - held[1]
    return SplineSide(line, places, (half * _GAUSS[1]).ravel(), values, kept)


def spline_values(knots, x):
    """Heights, slopes and curvatures of cubic B-splines, by the recursion of Cox and de Boor.

    Parameters
    ----------
    knots : array_like
        Ends of the cubics [mm], rising.
    x : array_like
        Places [mm] between the first and the last knot.

    Returns
    -------
    numpy.ndarray
        Height [-], slope [1/mm] and curvature [1/mm2]; shape (3, splines, places).
    """
    line, x = np.asarray(knots, dtype=float), np.asarray(x, dtype=float)
    t = np.concatenate((line[:1].repeat(DEGREE), line, line[-1:].repeat(DEGREE)))
    last = np.clip(np.searchsorted(line, x, side="right") - 1, 0, len(line) - 2) + DEGREE
    near = t[last + np.arange(1 - DEGREE, DEGREE + 1)[:, None]]  # three knots on either side
    own = np.ones((1, 1, len(x)))
    for degree in range(1, DEGREE + 1):
        own = _raised(own, near, x, degree)
    values = np.zeros((3, len(line) + DEGREE - 1, len(x)))
    values[:, last + np.arange(-DEGREE, 1)[:, None], np.arange(len(x))] = own[:3]
    return values


def _raised(own, near, x, degree):
    """Splines that are not zero at their places, of one degree and one derivative more."""
    before, after = near[DEGREE - degree : DEGREE], near[DEGREE : DEGREE + degree]
    share = own / (after - before)
    raised = np.zeros((own.shape[0] + 1, degree + 1, len(x)))
    raised[0, :-1], raised[1:, :-1] = (after - x) * share[0], -degree * share
    raised[0, 1:] += (x - before) * share[0]
    raised[1:, 1:] += degree * share
    return raised
