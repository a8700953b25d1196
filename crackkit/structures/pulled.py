"""What a pulled member looks like at one pull, and how it came there."""

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.tension_response import TensionResponse, tension_response
from crackkit.structures.outcome import Crack, WidthBand
from crackkit.structures.pull_history import History, Sample, history
from crackkit.words import _

WHOLE, PARTED, YIELDED = "whole", "parted", "yielded"
BELOW = 1 - 1e-9  # share of the pull at which it parts, for the state just before


@dataclass(frozen=True)
class Sibling:
    """The same member made of other concrete, at the same pull.

    Attributes
    ----------
    seed : int
        Which concrete.
    cracks, widths : ndarray
        Places of its cracks [mm] and their widths [mm]; where it parted, those just before.
    parted_at : float or None
        Where it has parted [mm], if nothing held its first crack.
    """

    seed: int
    cracks: np.ndarray
    widths: np.ndarray
    parted_at: float | None = None


@dataclass(frozen=True)
class Pulled:
    """State and history of a pulled member.

    Attributes
    ----------
    sample : Sample
        The member in numbers.
    history : History
        Its cracks with their pulls, and its force-strain diagram.
    pull, greatest : float
        Pull now, and the greatest so far [N].
    ended : str
        ``"whole"``, ``"parted"`` (nothing held the first crack) or ``"yielded"``.
    now : TensionResponse
        Stresses along the member and crack widths; where it parted, those just before.
    order : tuple of int
        Which crack of all came first, second, ...: one number for each crack there is, from the
        left.
    rules : WidthBand or None
        What the published rules say at the greatest pull so far, also once it has let go; None
        where they do not speak: without cracks, bars or ribs.
    siblings : tuple of Sibling
        Members alike of other concrete; empty where they are not wanted.
    """

    sample: Sample
    history: History
    pull: float
    greatest: float
    ended: str
    now: TensionResponse
    order: tuple[int, ...]
    rules: WidthBand | None
    siblings: tuple[Sibling, ...] = ()

    @property
    def next_pull(self) -> float | None:
        """Pull at which the next crack comes [N]; None where none comes any more."""
        return next_pull(self.history, self.greatest)

    @property
    def first_pull(self) -> float | None:
        """Pull at which the first crack comes [N]; None where the bars yield before."""
        pulls = self.history.sequence.pull
        return float(pulls.min()) if pulls.size else None

    @property
    def steel_at_crack(self) -> float:
        """Stress in the bars where a crack leaves them alone [MPa]; 0 without bars."""
        area = self.sample.bars_area
        return min(self.pull / area, self.sample.yield_strength) if area else 0.0

    @property
    def greatest_at_crack(self) -> float:
        """Greatest stress that the bars had in a crack so far [MPa]; 0 without bars."""
        area = self.sample.bars_area
        return min(self.greatest / area, self.sample.yield_strength) if area else 0.0

    @property
    def bare_strain(self) -> float | None:
        """Strain that the bars alone would have [-]; None without bars."""
        stretching = self.history.tie.stretching
        return self.pull / stretching if stretching else None


def pulled(
    sample: Sample, pull: float, before: float, band_at: Callable, siblings: int = 0
) -> Pulled:
    """Give the state of a member at a pull.

    Parameters
    ----------
    sample : Sample
        The member.
    pull, before : float
        Pull now, and the greatest there was before [N].
    band_at : callable
        Gives what the published rules say at a steel stress in the cracks [MPa], as a WidthBand,
        or None where no rule speaks.
    siblings : int
        How many members of other concrete to lay beside it.
    """
    greatest, past = max(pull, before), history(sample)
    ended = _ended(past, greatest)
    now = _state(past, pull, greatest)
    found = past.sequence.formed(greatest) if ended != PARTED else past.sequence.station[:1]
    return Pulled(
        sample,
        past,
        pull,
        greatest,
        ended,
        now,
        _order(past, found),
        _rules(sample, found, greatest, ended, band_at),
        tuple(_sibling(sample, k, pull, greatest) for k in range(1, siblings + 1)),
    )


def next_pull(past: History, greatest: float) -> float | None:
    """Pull at which the next crack comes [N] after the greatest so far; None where none comes."""
    later = past.sequence.pull[past.sequence.pull > greatest]
    return float(later.min()) if later.size else None


def _rules(sample, found, greatest, ended, band_at) -> WidthBand | None:
    if not len(found) or ended == PARTED:
        return None
    return band_at(greatest / sample.bars_area)


def _ended(past: History, greatest: float) -> str:
    limit = past.sequence.greatest_pull
    if not past.sequence.held:
        return PARTED if greatest >= limit else WHOLE
    return YIELDED if greatest >= limit * BELOW else WHOLE


def _state(past: History, pull: float, greatest: float) -> TensionResponse:
    limit = past.sequence.greatest_pull
    top = limit if past.sequence.held else limit * BELOW
    return tension_response(past.tie, past.sequence, min(pull, top), min(greatest, top))


def _order(past: History, found) -> tuple[int, ...]:
    """Numbers of birth of the cracks at these stations, counted from 1."""
    born = {int(station): k + 1 for k, station in enumerate(past.sequence.station)}
    return tuple(born[int(station)] for station in found)


def _sibling(sample: Sample, other: int, pull: float, greatest: float) -> Sibling:
    twin = replace(sample, seed=sample.seed + other)
    past = history(twin)
    state = _state(past, pull, greatest)
    parted = _ended(past, greatest) == PARTED
    at = float(past.sequence.position[0]) if parted else None
    return Sibling(twin.seed, state.cracks, state.widths, at)


def pulled_cracks(state: Pulled, bars: tuple[str, ...], depth: float) -> tuple[Crack, ...]:
    """Give the cracks that are there, from the left, each with its own width.

    Parameters
    ----------
    state : Pulled
    bars : tuple of str
        Keys of the bars that cross them.
    depth : float
        Depth of the member [mm].
    """
    if state.ended == PARTED:
        at = float(state.history.sequence.position[0])
        return (Crack("both", at, _line(at, depth), None, 0.0, (), 0.0),)
    rows = zip(state.now.cracks.tolist(), state.now.widths.tolist(), strict=True)
    stress = state.steel_at_crack
    return tuple(
        Crack("both", at, _line(at, depth), _own(width), stress, bars, 1.0) for at, width in rows
    )


def _own(width: float) -> WidthBand:
    """Width that bond gives to this very crack: one number, and no rule."""
    return WidthBand(width, width, width, width, "bond", _("bond along the bars"), ())


def _line(at: float, depth: float) -> np.ndarray:
    return np.array([(at, 0.0), (at, depth)])
