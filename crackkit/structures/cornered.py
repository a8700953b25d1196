"""A slab or wall with an inside corner: where it is pulled, the crack that starts there, its bars.

Places are (x, y) on the plan [mm], x along and y across, from the near left corner of the body.
A wall stands on its near side: y is its height.
"""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from crackkit.structures.outcome import WidthBand


@dataclass(frozen=True)
class PlanField:
    """How hard the concrete is pulled over the plan, as if nothing had cracked.

    Attributes
    ----------
    x, y : ndarray
        Lines of the grid [mm].
    share : ndarray, shape (rows, columns)
        Largest principal tension over the strength [-]; not a number where there is no concrete.
    direction : ndarray, same shape
        Way of that tension, from the length towards the width [rad].
    """

    x: np.ndarray
    y: np.ndarray
    share: np.ndarray
    direction: np.ndarray


@dataclass(frozen=True)
class InsideCorner:
    """One inside corner.

    Attributes
    ----------
    at : tuple of float
        Place [mm]; on a rounded corner the most pulled place of the arc.
    mean : float
        Tension across the coming crack, averaged over the material length from the corner [MPa].
    share : float
        That over the strength [-]: from about 1 on a crack runs from here.
    across : float
        Way of that tension [rad]; the crack starts at a right angle to it.
    end : tuple of float
        Where the material length ends [mm], for the drawing.
    """

    at: tuple[float, float]
    mean: float
    share: float
    across: float
    end: tuple[float, float]


@dataclass(frozen=True)
class LaidBar:
    """One bar as laid.

    Attributes
    ----------
    start, end : tuple of float
        Its ends [mm].
    diameter : float
        [mm]
    kind : str
        ``"diagonal"``, ``"edge"`` (along a side of the corner) or ``"mat"``.
    crosses : bool
        Whether it crosses the crack that is worked out.
    stress : float
        Where it crosses that crack [MPa]; 0 elsewhere.
    fault : str
        ``""``, ``"slips"`` (too short beyond the crack) or ``"yields"``.
    """

    start: tuple[float, float]
    end: tuple[float, float]
    diameter: float
    kind: str
    crosses: bool
    stress: float
    fault: str


@dataclass(frozen=True)
class CornerCrack:
    """The crack from the worst corner.

    Attributes
    ----------
    points : ndarray, shape (points, 2)
        Its line, from the corner on [mm].
    along : ndarray, shape (points,)
        Distance from the corner along the line [mm].
    opening : ndarray, same shape
        How wide it is [mm]; 0 where it has not come to.
    bare : ndarray, same shape
        How wide it would be without any bars, fibres and joint [mm].
    saw : float
        How far a saw cut or joint reaches along the line [mm].
    runs : bool
        Whether it has run: beyond it the concrete carries nothing any more somewhere.
    length : float
        How far it gapes by more than a hair, 0.01 mm [mm].
    band : WidthBand or None
        Its greatest width by the model, with what real cracks scatter; None where it is closed.
    """

    points: np.ndarray
    along: np.ndarray
    opening: np.ndarray
    bare: np.ndarray
    saw: float
    runs: bool
    length: float
    band: WidthBand | None

    @property
    def widest(self) -> float:
        """Greatest opening [mm]."""
        return float(np.max(self.opening, initial=0.0))


@dataclass(frozen=True)
class Cornered:
    """What mechanics says of a slab with inside corners at one day.

    Attributes
    ----------
    loops : tuple of ndarray, shape (points, 2)
        Outline, outside first, then the hole [mm]; arcs are cut into short sides.
    moved : tuple of ndarray, same shapes
        How far each point of the loops moves [mm].
    tied : tuple of ndarray, shape (2, 2)
        Sides that are tied to something stiff, as ends of straight lines [mm].
    free : float
        What the concrete wants to shrink at this age, cooling counted [-].
    strength, modulus, toughness : float
        Tensile strength [MPa], modulus with creep [MPa] and fracture energy [N/mm] at this age.
    material_length : float
        Over which the tension at a corner is averaged [mm].
    field : PlanField
    corners : tuple of InsideCorner
    worst : int
        Number of the corner that is pulled hardest; the crack starts there.
    crack : CornerCrack
        From that corner, whether it gapes or not.
    bars : tuple of LaidBar
    told_openings : callable
        Gives ages [days] and the greatest openings then with and without bars [mm]: see `days`,
        `openings` and `bare_openings`. Worked out when first asked for.
    settled : bool
        Whether the crack was found at rest, with and without bars; if not, it is drawn as far as
        it could be followed.
    """

    loops: tuple[np.ndarray, ...]
    moved: tuple[np.ndarray, ...]
    tied: tuple[np.ndarray, ...]
    free: float
    strength: float
    modulus: float
    toughness: float
    material_length: float
    field: PlanField
    corners: tuple[InsideCorner, ...]
    worst: int
    crack: CornerCrack
    bars: tuple[LaidBar, ...]
    told_openings: Callable[[], tuple[np.ndarray, np.ndarray, np.ndarray]]
    settled: bool = True

    @property
    def corner(self) -> InsideCorner:
        """The corner where the crack starts."""
        return self.corners[self.worst]

    @property
    def share(self) -> float:
        """Mean tension at the worst corner over the strength [-]."""
        return self.corner.share

    @property
    def steel_stress(self) -> float:
        """Greatest stress in a bar that crosses the crack [MPa]; 0 without."""
        return max((bar.stress for bar in self.bars if bar.crosses), default=0.0)

    @property
    def days(self) -> np.ndarray:
        """Ages of the curves of the opening [days]."""
        return self.told_openings()[0]

    @property
    def openings(self) -> np.ndarray:
        """Greatest opening at these ages as laid [mm]."""
        return self.told_openings()[1]

    @property
    def bare_openings(self) -> np.ndarray:
        """Greatest opening at these ages without bars, fibres and joint [mm]."""
        return self.told_openings()[2]
