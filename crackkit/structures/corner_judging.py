"""The verdict on a slab with inside corners, its cracks, and the numbers that sum it up."""

import numpy as np

from crackkit.mechanics.crack_limits import limit
from crackkit.structures.cornered import Cornered
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    UNHELD,
    YIELDS,
    Crack,
    TensionZone,
    Told,
    Verdict,
)
from crackkit.words import _


def verdict(it, state: Cornered) -> Verdict:
    """Judge the crack from the worst corner against the limit of the chosen use.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    bound, crack = limit(it.code, it.exposure), state.crack
    if not crack.runs:
        return Verdict(UNCRACKED, None, bound, _whole(it, state))
    width = crack.band.governing
    crossing = [bar for bar in state.bars if bar.crosses]
    if not crossing and not _bridged(it):
        return Verdict(UNHELD, width, bound, _unheld(it))
    if width <= bound.width:
        return Verdict(TIGHT, width, bound, _("What crosses the crack keeps it fine."))
    if any(bar.fault == "yields" for bar in crossing):
        return Verdict(YIELDS, width, bound, _("Bars across the crack yield: it opens on."))
    return Verdict(TOO_WIDE, width, bound, _wide(it, state))


def _bridged(it) -> bool:
    return it.fibres != "none"


def _whole(it, state: Cornered) -> str:
    if it.joint == "joint":
        return _("The joint opens instead of a crack.")
    if it.joint == "saw" and state.crack.widest > state.crack.bare.max() * 0.1:
        return _("It opens under the saw cut, and nowhere else.")
    if state.share >= 1.0:
        return _("The corner tears a little, but what crosses it keeps the crack from running.")
    return _("The corner is pulled, but not so hard that a crack would run from it.")


def _unheld(it) -> str:
    if it.diagonals == it.edges == it.mat == "none":
        return _("No bar crosses the crack: it gapes as far as the slab shrinks.")
    return _("There are bars, but none crosses the crack.")


def _wide(it, state: Cornered) -> str:
    if any(bar.fault == "slips" for bar in state.bars):
        return _("Bars across the crack are too short beyond it: they slip.")
    if state.crack.widest > 0.75 * state.crack.bare.max():
        return _("The bars trim the crack, but the slab is held so fast that it still opens.")
    return _("Bars hold the crack, but not small enough.")


def stretched(it, state: Cornered) -> tuple[TensionZone, ...]:
    """Give the worst corner as a zone along the slab."""
    share, at = state.share, state.corner.at[0]
    if share <= 0.0:
        return ()
    torn = np.nanmax(np.where(state.field.share > 1.0, 1.0, 0.0), axis=0) > 0
    places = state.field.x[torn]
    cracked = ((float(places[0]), float(places[-1])),) if share > 1.0 and len(places) else ()
    return (TensionZone("both", 0.0, it.length, share, at, cracked),)


def cracks(it, state: Cornered) -> tuple[Crack, ...]:
    """Give the crack that runs, as a section along the slab would meet it."""
    if not state.crack.runs:
        return ()
    x = float(state.corner.at[0])
    crossing = [bar for bar in state.bars if bar.crosses]
    held = bool(crossing) or _bridged(it)
    path = np.array([(x, 0.0), (x, it.thickness)])
    kinds = tuple(dict.fromkeys(bar.kind for bar in crossing))
    band = state.crack.band if held else None
    return (Crack("both", x, path, band, state.steel_stress, kinds, float(bool(crossing))),)


def numbers(it, state: Cornered) -> tuple[Told, ...]:
    """Give the numbers that sum up the slab."""
    opening = state.crack.widest if state.crack.runs else _("none that runs")
    return (
        Told("free", _("wants to shrink by"), state.free, "strain"),
        Told("share", _("pull at the corner over strength"), state.share, "ratio"),
        Told("widest", _("crack at its widest"), opening, "width"),
        Told("bare", _("without bars"), float(state.crack.bare.max()), "width"),
        Told("steel", _("stress in the bars"), state.steel_stress, "stress"),
        Told("mass", _("bars weigh"), it.mass, "mass"),
    )
