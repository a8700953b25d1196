"""A slab whose top has dried more than its bottom: how it lifts, where it is stretched and breaks.

Grids run over the plan: rows from side to side (y), columns from end to end (x). Lift is
counted upward from where the flat slab touches the ground.
"""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from crackkit.structures.outcome import WidthBand


@dataclass(frozen=True)
class Patch:
    """A load on a square: its middle [mm], its side [mm], its force [N], its input's path."""

    x: float
    y: float
    side: float
    force: float
    path: str


@dataclass(frozen=True)
class FaceStress:
    """How one face is pulled.

    Attributes
    ----------
    stress : ndarray, shape (rows, columns)
        Largest principal tension [MPa]; squeezed all round where it is below 0.
    direction : ndarray, same shape
        Way of that tension, from the length towards the width [rad].
    peak : float
        The largest of it [MPa].
    at : tuple of float
        Where (x, y) [mm].
    """

    stress: np.ndarray
    direction: np.ndarray
    peak: float
    at: tuple[float, float]


@dataclass(frozen=True)
class BreakLine:
    """The crack it comes to.

    Attributes
    ----------
    face : str
        ``"top"`` or ``"bottom"``: where it begins.
    points : ndarray, shape (points, 2)
        Its line over the plan [mm].
    corner : bool
        Whether it cuts a corner off.
    width : WidthBand or None
        With bars across it; None where nothing holds it.
    steel_stress : float
        In those bars [MPa]; 0 without.
    """

    face: str
    points: np.ndarray
    corner: bool
    width: WidthBand | None
    steel_stress: float


@dataclass(frozen=True)
class Dryness:
    """What the air has done to the section by one day.

    Attributes
    ----------
    depth : ndarray
        Below the top [mm].
    humidity : ndarray
        Of the pores [-].
    shrinkage : ndarray
        What each layer wants to shrink [-].
    stress : ndarray
        Stress that balances itself within the section, tension above 0 [MPa].
    capped : bool
        Whether it was cut off at the strength: there the surface crazes.
    mean, gradient : float
        Mean shrinkage, and how much more the top wants to shrink than the bottom if it were a
        straight line [-].
    """

    depth: np.ndarray
    humidity: np.ndarray
    shrinkage: np.ndarray
    stress: np.ndarray
    capped: bool
    mean: float
    gradient: float


@dataclass(frozen=True)
class Curled:
    """What mechanics says of a curled slab at one day.

    Attributes
    ----------
    x, y : ndarray
        Lines of the grid along and across [mm].
    lift : ndarray, shape (rows, columns)
        How high it stands [mm]; below 0 it has sunk into the ground.
    open : ndarray of bool, same shape
        Where there is air below it.
    open_share : float
        Share of the plan that has lifted off [-].
    corner_rise : float
        Of the corner that stands highest [mm].
    top, bottom : FaceStress
    strength : float
        In bending, at this age [MPa].
    patches : tuple of Patch
        Loads on it.
    line : BreakLine or None
        None while it holds.
    dryness : Dryness
        Of the section.
    told_rises : callable
        Gives ages [days], and how high the corners stand then without any wheel [mm]: see `days`
        and `rises`. Worked out when first asked for.
    """

    x: np.ndarray
    y: np.ndarray
    lift: np.ndarray
    open: np.ndarray
    open_share: float
    corner_rise: float
    top: FaceStress
    bottom: FaceStress
    strength: float
    patches: tuple[Patch, ...]
    line: BreakLine | None
    dryness: Dryness
    told_rises: Callable[[], tuple[np.ndarray, np.ndarray]]

    @property
    def days(self) -> np.ndarray:
        """Ages of the curve of the rise [days]."""
        return self.told_rises()[0]

    @property
    def rises(self) -> np.ndarray:
        """How high the corners stand at these ages without any wheel [mm]."""
        return self.told_rises()[1]

    @property
    def share(self) -> float:
        """Largest tension over strength on either face [-]."""
        return max(self.top.peak, self.bottom.peak) / self.strength
