"""Everything the moments of a member can be where loads come and go, and what that uncovers."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.structures.outcome import Crack, decisive
from crackkit.words import _

NO_BAR, SLIPS, TOO_FEW = "no_bar", "slips", "too_few"
FAULTS = {
    NO_BAR: _("no bar crosses"),
    SLIPS: _("the bars slip"),
    TOO_FEW: _("too few bars"),
}


@dataclass(frozen=True)
class Arrangement:
    """One way the loads that come and go can stand.

    Attributes
    ----------
    spans : tuple of int
        Spans that carry live load, counted from 1.
    at : tuple of (float or None)
        Place of each travelling load [mm]; None where it is away.
    words : str
        The same in words, for instance "live load on spans 1 and 3".
    count : int
        Number of spans [-].
    moving : tuple of int
        Which of the travelling loads those places belong to, counted from 0.
    """

    spans: tuple[int, ...]
    at: tuple[float | None, ...]
    words: str
    count: int
    moving: tuple[int, ...]

    @property
    def changes(self) -> dict:
        """What to set to see it: path to value.

        A load that is away goes over the end support, where it does nothing.
        """
        live = {f"spans.{k}.live": k + 1 in self.spans for k in range(self.count)}
        rows = zip(self.moving, self.at, strict=True)
        return live | {f"loads.{k}.at": 0.0 if at is None else at for k, at in rows}


@dataclass(frozen=True)
class Gap:
    """A stretch of one face that some arrangement cracks and no developed bar crosses.

    Attributes
    ----------
    face : str
        ``"top"`` or ``"bottom"``.
    start, end, at : float
        From where to where, and its worst place [mm].
    fault : str
        ``"no_bar"`` crosses somewhere in it, the bars end too close by (``"slips"``), or there
        are ``"too_few"`` of them.
    arrangement : Arrangement
        The loads that stretch the worst place most.
    """

    face: str
    start: float
    end: float
    at: float
    fault: str
    arrangement: Arrangement

    @property
    def fault_words(self) -> str:
        """What is amiss, in words."""
        return FAULTS[self.fault]


@dataclass(frozen=True)
class MomentRange:
    """Everything the moments can be, whatever the loads that come and go do.

    Attributes
    ----------
    x : ndarray, shape (n,)
        Stations [mm].
    sagging, hogging : ndarray
        Largest and smallest moment of all arrangements [N mm].
    elastic, shifted : ndarray
        Moment of the present loads [N mm] as if nothing had cracked, and as cracks shift it.
    cracks_bottom, cracks_top : ndarray
        Moments [N mm] that crack the bottom (positive) and the top (negative).
    bears_bottom, bears_top : ndarray
        Moments [N mm] that make the bars give way, bottom stretched (positive) and top stretched
        (negative); 0 where no bar holds a crack.
    stretched : tuple of (face, start, end)
        Stretches [mm] that some arrangement cracks.
    gaps : tuple of Gap
        Those of them that no developed bar crosses, the longest first.
    cracks : tuple of Crack
        The cracks of the worst arrangement of each place.
    arrangement : callable
        From (face, place [mm]) to the Arrangement that stretches it most.
    """

    x: np.ndarray
    sagging: np.ndarray
    hogging: np.ndarray
    elastic: np.ndarray
    shifted: np.ndarray
    cracks_bottom: np.ndarray
    cracks_top: np.ndarray
    bears_bottom: np.ndarray
    bears_top: np.ndarray
    stretched: tuple[tuple[str, float, float], ...]
    gaps: tuple[Gap, ...]
    cracks: tuple[Crack, ...]
    arrangement: Callable[[str, float], Arrangement]

    @cached_property
    def widest(self) -> Crack | None:
        """The crack that decides under all arrangements, see `decisive`."""
        return decisive(self.cracks, float(self.x[-1]) / 2)
