"""The common vocabulary: what mechanics says of any structure, in answer to the four questions.

How does it move (`Movement`)? Where is it stretched (`TensionZone`, `StressMap`)? Where will it
crack (`Crack`)? What holds the crack, and is it tight enough (`SteelLine`, `Verdict`)?
Lengths in mm, forces in N, stresses in MPa; x from the left end, z down from the top face. Cracks
and their widths are named tuples: a floor has hundreds, and they are made in a third of the time.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

import numpy as np

from crackkit.mechanics.section import Section

UNCRACKED, TIGHT, TOO_WIDE, YIELDS, UNHELD = (
    "uncracked",
    "tight",
    "too_wide",
    "yields",
    "unheld",
)
# of a slab that is not hard yet
STAYS_WET, BE_READY, DRIES_OUT = "stays_wet", "be_ready", "dries_out"


@dataclass(frozen=True)
class Movement:
    """The shape the structure takes.

    Attributes
    ----------
    x, down : ndarray
        Stations [mm] and how far each moves down [mm].
    largest, at : float
        Largest movement [mm] (signed, down positive) and where [mm].
    falls_at : float or None
        Where it breaks [mm] when nothing holds it; the shape is then a picture of the fall.
    """

    x: np.ndarray
    down: np.ndarray
    largest: float
    at: float
    falls_at: float | None = None


@dataclass(frozen=True)
class Lengthening:
    """How much longer a pulled member gets.

    Attributes
    ----------
    largest : float
        By how much its bars get longer between the ends [mm]; negative where it shrinks.
    falls_at : float or None
        Where it parts [mm] when nothing holds it.
    """

    largest: float
    falls_at: float | None = None


@dataclass(frozen=True)
class TensionZone:
    """A stretch of one face where the concrete is pulled.

    Attributes
    ----------
    face : str
        ``"top"`` or ``"bottom"``; ``"both"`` where the whole cross-section is pulled.
    start, end : float
        Where it is stretched at all [mm].
    peak, at : float
        Largest stress as a multiple of the tensile strength [-], and where [mm].
    cracked : tuple of (start, end)
        The parts [mm] where the stress is beyond the strength.
    """

    face: str
    start: float
    end: float
    peak: float
    at: float
    cracked: tuple[tuple[float, float], ...]


class WidthBand(NamedTuple):
    """Crack width by several published rules.

    Attributes
    ----------
    low, middle, high : float
        Smallest, median and largest width [mm].
    governing : float
        Width [mm] by the rule that belongs to the chosen code family.
    rule, name : str
        That rule: as its function is called, and as people call it.
    by_rule : tuple of (name, width)
        All of them.
    """

    low: float
    middle: float
    high: float
    governing: float
    rule: str
    name: str
    by_rule: tuple[tuple[str, float], ...]


class Crack(NamedTuple):
    """One predicted crack.

    Attributes
    ----------
    face : str
        The face where it opens; ``"both"`` where it goes right through.
    at : float
        Where it opens [mm].
    path : ndarray
        Its line, points (x, z) [mm], from the face to the tip.
    width : WidthBand or None
        None where no bar crosses it: there is no rule for the width of a crack nothing holds.
    steel_stress : float
        Stress in the outermost bars that cross it [MPa]; 0 where none does.
    bars : tuple of str
        Keys of the layers of bars that cross it while they are stretched.
    developed : float
        Share [-] of their strength those bars can build up there.
    """

    face: str
    at: float
    path: np.ndarray
    width: WidthBand | None
    steel_stress: float
    bars: tuple[str, ...]
    developed: float


@dataclass(frozen=True)
class SteelLine:
    """Stress along one layer of bars.

    Attributes
    ----------
    key, label : str
        Name inside the structure, and for the reader.
    x, stress, capacity : ndarray
        Stations [mm], stress (tension positive) and what the bars can build up there [MPa].
    depth, start, end : float
        Depth of the centres from the top face and ends of the bars [mm].
    number : int
        Bars side by side.
    diameter : float
        Of each bar [mm].
    size : str
        Name of the bar size.
    side_cover : float
        Clear concrete beside the outer bars [mm].
    face : str
        The face the drawing asked for, ``"top"`` or ``"bottom"``.
    path : ndarray, shape (k, 2)
        The line of the centres, points (x, z) [mm], hooks left out.
    hooks : tuple of bool
        Whether the left and the right end are bent into a hook.
    spacing : float or None
        Distance of the bars of a mat, centre to centre [mm]; None where bars are counted.
    """

    key: str
    label: str
    x: np.ndarray
    stress: np.ndarray
    capacity: np.ndarray
    depth: float
    start: float
    end: float
    number: float
    diameter: float
    size: str
    side_cover: float
    face: str
    path: np.ndarray
    hooks: tuple[bool, bool] = (False, False)
    spacing: float | None = None

    def depth_at(self, place: float) -> float:
        """Depth of the centres from the top face [mm] at a place [mm]."""
        return float(np.interp(place, self.path[:, 0], self.path[:, 1]))


@dataclass(frozen=True)
class StressMap:
    """Stress in the uncracked member as a multiple of the tensile strength.

    Attributes
    ----------
    x, z : ndarray
        Grid lines [mm].
    ratio : ndarray, shape (len(z), len(x))
        The principal stress that is larger in size: pull positive, squeeze negative [-].
    """

    x: np.ndarray
    z: np.ndarray
    ratio: np.ndarray


@dataclass(frozen=True)
class WorstSection:
    """The cross-section through the worst crack, or through the most stretched place.

    Attributes
    ----------
    at : float
        Where [mm].
    face : str
        Its stretched face.
    axis : float
        Depth of the neutral axis from the top [mm].
    cracked : bool
        Whether the section is cracked there.
    moment, cracking_moment, yield_moment, ultimate_moment : float
        Moments [N mm], as positive numbers; the last two are 0 where no bar crosses.
    steel_stress : float
        Stress in the outermost stretched bars [MPa].
    section : Section
        Outline of the section there.
    """

    at: float
    face: str
    axis: float
    cracked: bool
    moment: float
    cracking_moment: float
    yield_moment: float
    ultimate_moment: float
    steel_stress: float
    section: Section


@dataclass(frozen=True)
class Verdict:
    """The answer in one word, with the limit it was held against.

    Attributes
    ----------
    key : str
        ``"uncracked"``, ``"tight"``, ``"too_wide"``, ``"yields"`` or ``"unheld"``; of fresh
        concrete ``"stays_wet"``, ``"be_ready"`` or ``"dries_out"``.
    width : float or None
        The width that was judged [mm].
    limit : Limit
        The limit for the chosen use, with its source.
    why : str
        One sentence.
    """

    key: str
    width: float | None
    limit: object
    why: str


@dataclass(frozen=True)
class Told:
    """A number that sums up an Outcome: on a tile, in the sandbox, before and after a change.

    Attributes
    ----------
    key, label : str
        Name in the code, and for people.
    value : float or str
        In N, mm, MPa; or a word where there is no number.
    quantity : str
        Kind of quantity, a key of the units table.
    """

    key: str
    label: str
    value: float | str
    quantity: str = "ratio"


@dataclass(frozen=True)
class Caution:
    """Something a user must be told about this very case; `grave` ones come first."""

    key: str
    text: str
    grave: bool = False


@dataclass(frozen=True)
class WorkingStep:
    """One line of the working, for checking by hand.

    Attributes
    ----------
    symbol, formula : str
        What is worked out, and how.
    numbers : str
        The formula with the numbers put in; may be empty.
    value : float or str
        Result in N, mm, MPa.
    quantity : str
        Kind of quantity, a key of the units table.
    clause : str
        Where the formula stands.
    topic : str
        Heading under which the step is listed.
    """

    symbol: str
    formula: str
    numbers: str
    value: float | str
    quantity: str
    clause: str
    topic: str = ""


@dataclass(frozen=True)
class Outcome:
    """What mechanics says of a structure; see the module's first lines.

    Some answers belong to one kind of structure. Of a bent member: ``stresses``, ``worst``, and
    at the stations ``x`` [mm] the sagging ``moment`` [N mm], ``shear`` [N] and ``depth`` of the
    member [mm]; ``range`` (a MomentRange) where loads come and go. Of a pulled member: ``pulled``
    (a Pulled). Of a strip whose bars are to be chosen: ``control`` (a Control). Of a slab on the
    ground: ``ground`` along and ``across`` it (each a Ground). Of one just placed: ``fresh``
    (a Drying). The last four say in ``numbers`` what sums them up.
    """

    structure: object
    movement: Movement | Lengthening | None
    tension: tuple[TensionZone, ...]
    cracks: tuple[Crack, ...]
    steel: tuple[SteelLine, ...]
    verdict: Verdict
    cautions: tuple[Caution, ...]
    steel_mass: float
    work: Callable[[], tuple[WorkingStep, ...]]
    x: np.ndarray
    stresses: StressMap | None = None
    worst: WorstSection | None = None
    moment: np.ndarray | None = None
    shear: np.ndarray | None = None
    depth: np.ndarray | None = None
    range: object = None
    pulled: object = None
    control: object = None
    ground: object = None
    across: object = None
    fresh: object = None
    curled: object = None
    cornered: object = None
    numbers: tuple[Told, ...] = ()

    @cached_property
    def working(self) -> tuple[WorkingStep, ...]:
        """The steps from the loads to the crack width; made when first asked for."""
        return self.work()

    @cached_property
    def widest(self) -> Crack | None:
        """The crack that decides, see `decisive`."""
        return decisive(self.cracks, float(self.x[-1]) / 2)


def decisive(cracks, middle: float) -> Crack | None:
    """Give the crack that decides: one that nothing holds, else the widest by the family's rule.

    Of several alike (to one part in a million) the one nearest the middle [mm] of the member.
    """
    grave = [c for c in cracks if c.width is None]
    if not grave:
        widest = max((c.width.governing for c in cracks), default=0.0)
        grave = [c for c in cracks if c.width.governing >= widest * (1 - 1e-6)]
    return min(grave, key=lambda c: round(abs(c.at - middle), 3), default=None)
