"""The equations of a plate on splines, as bands that LAPACK factorises, kept for each geometry.

Kirchhoff's plate with a tensor product of cubic B-splines. Splines are numbered so that the side
with more of them is walked slowly: the band is then three times the number on the other side.
"""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.mechanics.plate_splines import DEGREE, SplineSide, spline_side


@dataclass(frozen=True, eq=False)
class PlateOperator:
    """What is the same for every load on a plate.

    Parameters
    ----------
    x, y : SplineSide
        Splines along both sides.
    turned : bool
        Whether the side y is walked slowly.
    bending : numpy.ndarray
        Energy of bending for a rigidity of 1, each row the lower band of one spline [1/mm2].
    pairs_slow, pairs_fast : numpy.ndarray
        Products of neighbouring splines at the Gauss places, weights counted in [mm].
    """

    x: SplineSide
    y: SplineSide
    turned: bool
    bending: np.ndarray
    pairs_slow: np.ndarray
    pairs_fast: np.ndarray

    @property
    def shape(self):
        """Numbers of splines along x and y."""
        return self.x.size, self.y.size

    def vector(self, field):
        """Put one number for each spline in the order of the equations.

        Parameters
        ----------
        field : numpy.ndarray
            Numbers [any], shape (splines along x, splines along y).

        Returns
        -------
        numpy.ndarray
            The same in a row [any].
        """
        return (field.T if self.turned else field).ravel()

    def field(self, vector):
        """Put numbers in the order of the equations back in their places on the plate.

        Parameters
        ----------
        vector : numpy.ndarray
            One number for each spline [any].

        Returns
        -------
        numpy.ndarray
            The same [any], shape (splines along x, splines along y).
        """
        return vector.reshape(self.shape[::-1]).T if self.turned else vector.reshape(self.shape)

    def springs(self, stiffness, base, band):
        """Write the band of a plate on springs into room that is there: taking new is slow.

        Parameters
        ----------
        stiffness : numpy.ndarray
            Stiffness of the ground [N/mm3] at the Gauss places, shape (places x, places y).
        base : numpy.ndarray
            Lower band of all but the ground, as in `bending` [N/mm].
        band : numpy.ndarray
            Room for the lower band [N/mm]; it is overwritten.

        Returns
        -------
        numpy.ndarray
            The same band, filled [N/mm].
        """
        under = stiffness.T if self.turned else stiffness
        np.copyto(band, base)
        return _added(band, self.pairs_slow @ under @ self.pairs_fast, *self._sizes)

    def edge_springs(self, stiffness):
        """Band of springs along the edges.

        Parameters
        ----------
        stiffness : tuple of float
            Stiffness along the edges at the start and end of x, then of y [N/mm2].

        Returns
        -------
        numpy.ndarray
            Lower band as in `bending` [N/mm].
        """
        ends = np.zeros((2, *self.shape))
        ends[0, 0], ends[0, -1], ends[1, :, 0], ends[1, :, -1] = stiffness
        x, y = (_bands(side, side.matrix(0, 0))[DEGREE:] for side in (self.x, self.y))
        across = ends[0][:, :, None] * y.T
        along = ends[1][:, :, None] * x.T[:, None]
        return self._placed(along, across)

    def _placed(self, along, across):
        """Bands of ties along x and of ties along y, each shaped (x, y, distance)."""
        slow, fast = (across, along) if self.turned else (along, across)
        if self.turned:
            slow, fast = slow.transpose(1, 0, 2), fast.transpose(1, 0, 2)
        band = np.zeros((*slow.shape[:2], DEGREE * (slow.shape[1] + 1) + 1))
        for d in range(DEGREE + 1):
            band[..., d * slow.shape[1]] += slow[..., d]
            band[..., d] += fast[..., d]
        return band.reshape(-1, band.shape[-1])

    @property
    def _sizes(self):
        return self.shape[::-1] if self.turned else self.shape


@lru_cache(maxsize=24)
def plate_operator(knots_x, knots_y, held_x, held_y, poisson):
    """Equations of a plate, kept for the next load.

    Parameters
    ----------
    knots_x, knots_y : tuple of float
        Knots along both sides [mm].
    held_x, held_y : tuple of (int, int)
        What is held at the ends of the sides, as in `spline_side` [-].
    poisson : float
        Poisson's ratio [-].

    Returns
    -------
    PlateOperator
        Splines, and bands for a rigidity of 1.
    """
    x, y = spline_side(knots_x, held_x), spline_side(knots_y, held_y)
    turned = y.size > x.size
    slow, fast = (y, x) if turned else (x, y)
    room = np.zeros((slow.size * fast.size, DEGREE * (fast.size + 1) + 1))
    bending = _added(room, _bending(slow, fast, poisson), slow.size, fast.size)
    pairs = _pairs(slow)[DEGREE:].reshape(-1, slow.places.size)
    return PlateOperator(x, y, turned, bending, pairs, _pairs(fast).reshape(-1, fast.places.size).T)


def _bending(slow, fast, nu):
    """Sum of products over both sides, rows (distance, slow), columns (distance, fast)."""
    A, B = ({k: side.matrix(*k) for k in ((0, 0), (1, 1), (2, 2), (2, 0))} for side in (slow, fast))
    terms = (
        (A[2, 2], B[0, 0]), (A[0, 0], B[2, 2]), (nu * A[2, 0], B[2, 0].T),
        (nu * A[2, 0].T, B[2, 0]), (2 * (1 - nu) * A[1, 1], B[1, 1]),
    )  # fmt: skip
    rows = np.stack([_bands(slow, a)[DEGREE:].ravel() for a, _b in terms])
    return rows.T @ np.stack([_bands(fast, b).ravel() for _a, b in terms])


def _bands(side, matrix):
    """Diagonals -3 to 3 of a matrix over the splines that may move; shape (7, splines)."""
    first, last = side.kept
    kept = np.zeros((side.size + 2 * DEGREE, side.size))
    kept[DEGREE:-DEGREE] = matrix[first:last, first:last]
    column = np.arange(side.size)
    return kept[np.arange(2 * DEGREE + 1)[:, None] + column, column]


def _pairs(side):
    """Weighted products of each spline with its neighbours -3 to 3 at the Gauss places."""
    first, last = side.kept
    own = side.values[0, first:last]
    wide = np.zeros((side.size + 2 * DEGREE, own.shape[1]))
    wide[DEGREE:-DEGREE] = own
    neighbour = np.arange(2 * DEGREE + 1)[:, None] + np.arange(side.size)
    return wide[neighbour] * (own * side.weights)


def _added(band, products, slow, fast):
    """Add products to a lower band: rows (distance 0 to 3, slow), columns (-3 to 3, fast)."""
    parts = products.reshape(DEGREE + 1, slow, 2 * DEGREE + 1, fast)
    places = band.reshape(slow, fast, -1)
    for far in range(DEGREE + 1):
        for d in range(-DEGREE if far else 0, DEGREE + 1):
            if far * fast + d >= 0:  # in a narrow plate such ties do not exist and are zero
                places[:, :, far * fast + d] += parts[far, :, d + DEGREE]
    return band
