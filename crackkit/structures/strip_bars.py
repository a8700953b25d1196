"""The bars of a strip: how much steel, how far apart, how deep; one case, or many at once."""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True)
class StripBars:
    """Bars of one direction near one face of a strip; each number may be an array of cases.

    Attributes
    ----------
    diameter : float or ndarray
        Of each bar [mm].
    each : float or ndarray
        Area of one bar [mm2].
    number : float or ndarray
        Bars in the strip near one face; those of a mat need not be whole [-].
    spacing : float or ndarray
        Centre to centre [mm].
    cover : float or ndarray
        Clear concrete from the face to the bars, as they were laid [mm].
    side_cover : float
        Clear concrete beside the outer bars [mm]; infinite in a slab.
    faces : float
        Faces that have such bars: 1 or 2, or 0.5 where one layer at mid-depth serves both [-].
    """

    diameter: float | np.ndarray
    each: float | np.ndarray
    number: float | np.ndarray
    spacing: float | np.ndarray
    cover: float | np.ndarray
    side_cover: float = np.inf
    faces: float = 1.0

    @property
    def area(self):
        """Area of the bars near one face [mm2]."""
        return self.number * self.each

    @property
    def total(self):
        """Area of all bars of this direction [mm2]; a layer at mid-depth is counted once."""
        return self.area * (2.0 if self.faces == 2.0 else 1.0)

    @property
    def gap(self):
        """Clear distance between neighbours [mm]."""
        return self.spacing - self.diameter
