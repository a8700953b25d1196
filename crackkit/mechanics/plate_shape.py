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
        return self.moments_between(self.operator.x.at(x), self.operator.y.at(y))

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
        Knots and the middles between them [mm]; splines as from `SplineSide.at`.
    """
    middles = 0.5 * (side.knots[1:] + side.knots[:-1])
    places = np.sort(np.concatenate((side.knots, middles)))
    return places, side.at(places)
