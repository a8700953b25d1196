"""The bent shape of a plate: deflection and moments at any place."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.mechanics.plate_faces import PlateMoments, plate_moments
from crackkit.mechanics.plate_operator import PlateOperator
from crackkit.mechanics.plate_slab import Curvature


@dataclass(frozen=True, eq=False)
class Bend:
    """What one stage adds to the shape of a plate.

    Parameters
    ----------
    heights : numpy.ndarray
        Coefficients of the splines [mm], shape (splines along x, splines along y).
    rigidity : float
        Bending stiffness D that this stage meets [N mm].
    free : Curvature
        Free curvature that came in this stage.
    """

    heights: np.ndarray
    rigidity: float
    free: Curvature


@dataclass(frozen=True, eq=False)
class PlateShape:
    """A bent plate, as the sum of its stages.

    Parameters
    ----------
    operator : PlateOperator
        Splines of the plate.
    poisson : float
        Poisson's ratio [-].
    bends : tuple of Bend
        What each stage adds.
    """

    operator: PlateOperator
    poisson: float
    bends: tuple

    @property
    def heights(self):
        """Coefficients of the whole deflection [mm]."""
        return sum(bend.heights for bend in self.bends)

    def deflection(self, x, y):
        """Deflection on a grid.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        numpy.ndarray
            Deflection, downward positive [mm], shape (places along x, places along y); 0 is the
            ground without load, and what lies above it has lifted off.
        """
        return self.operator.x.at(x)[0].T @ self.heights @ self.operator.y.at(y)[0]

    def moments(self, x, y):
        """Moments on a grid.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        PlateMoments
            Moments for each mm of width [N].
        """
        return self.moments_between(evened(self.operator.x, x), evened(self.operator.y, y))

    def moments_between(self, along, across):
        """Moments on a grid whose splines are known.

        Parameters
        ----------
        along, across : numpy.ndarray
            Splines as from `SplineSide.at` [-, 1/mm, 1/mm2].

        Returns
        -------
        PlateMoments
            Moments for each mm of width [N].
        """
        first, *others = (self._moments(bend, along, across) for bend in self.bends)
        for other in others:
            first = first.plus(other)
        return first

    def _moments(self, bend, along, across) -> PlateMoments:
        orders = (2, 0), (0, 2), (1, 1)
        curvatures = [along[a].T @ bend.heights @ across[b] for a, b in orders]
        return plate_moments(curvatures, bend.rigidity, self.poisson, bend.free)


@lru_cache(maxsize=64)
def stations(side):
    """Places that tell the shape along one side, and the splines there, kept for the next time.

    Parameters
    ----------
    side : SplineSide
        Splines along the side.

    Returns
    -------
    places, splines : numpy.ndarray
        Both ends, and between two knots each the middle and the two best places [mm]; splines as
        from `evened`.
    """
    middles = 0.5 * (side.knots[1:] + side.knots[:-1])
    places = np.sort(np.concatenate((side.knots[[0, -1]], middles, _best_places(side))))
    return places, evened(side, places)


def evened(side, x):
    """Splines at some places, their curvatures evened out at the knots.

    Curvatures of cubic splines are straight lines between knots. They come out best at two
    places of each line (the Gauss places, where errors of second order vanish) and worst at the
    knots, where they would show kinks that no moment has. So they are read at the best places,
    and on straight lines between these.

    Parameters
    ----------
    side : SplineSide
        Splines along a side.
    x : array_like
        Places along the side [mm].

    Returns
    -------
    numpy.ndarray
        Height [-], slope [1/mm] and curvature [1/mm2], as from `SplineSide.at`.
    """
    splines, best = side.at(x), _best_places(side)
    i = np.clip(np.searchsorted(best, x) - 1, 0, best.size - 2)
    part = (np.asarray(x) - best[i]) / (best[i + 1] - best[i])
    curved = side.at(best)[2]
    splines[2] = curved[:, i] * (1.0 - part) + curved[:, i + 1] * part
    return splines


def _best_places(side):
    middles, half = 0.5 * (side.knots[1:] + side.knots[:-1]), 0.5 * np.diff(side.knots)
    return (middles[:, None] + half[:, None] * [-(3**-0.5), 3**-0.5]).ravel()
