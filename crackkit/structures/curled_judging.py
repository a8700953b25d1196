"""The verdict on a slab that curls, its cracks, and the numbers that sum it up."""

import numpy as np

from crackkit.mechanics.crack_limits import limit
from crackkit.structures.curled import BreakLine, Curled
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


def verdict(it, state: Curled) -> Verdict:
    """Judge whether it breaks, and whether its mat keeps the crack small.

    Parameters
    ----------
    it : CurledSlab
    state : Curled
    """
    bound, line = limit(it.code, it.exposure), state.line
    if line is None:
        return Verdict(UNCRACKED, None, bound, _whole(state))
    if line.width is None:
        return Verdict(UNHELD, None, bound, _unheld(it, line))
    width = line.width.governing
    if line.steel_stress > it.yield_strength:
        return Verdict(YIELDS, width, bound, _("The mat is too light: its bars yield."))
    if width > bound.width:
        return Verdict(TOO_WIDE, width, bound, _("The mat holds the crack, but not small enough."))
    return Verdict(TIGHT, width, bound, _("The mat crosses the crack and keeps it fine."))


def _whole(state: Curled) -> str:
    if not any(patch.force for patch in state.patches):
        return _("It curls, but its own weight alone does not break it.")
    return _("It bends, but nowhere beyond what the concrete can bear.")


def _unheld(it, line: BreakLine) -> str:
    if it.area and line.face == "bottom":
        return _("It cracks from below, and the mat lies near the top.")
    if it.area:
        return _("It breaks from above, and the mat lies too deep to hold it.")
    if line.corner:
        return _("The corner breaks off from above: no bar crosses the crack.")
    return _("It breaks through: no bar crosses the crack.")


def stretched(it, state: Curled) -> tuple[TensionZone, ...]:
    """Give the zone of each face that is pulled beyond its strength, or the face pulled harder."""
    faces = {"top": state.top, "bottom": state.bottom}
    return tuple(_zone(it, state, name) for name in faces if faces[name].peak > 0.0)


def _zone(it, state: Curled, name: str) -> TensionZone:
    face = getattr(state, name)
    torn = np.any(face.stress > state.strength, axis=0)
    places = state.x[torn] if torn.any() else np.array([face.at[0], face.at[0]])
    share, torn = face.peak / state.strength, ((float(places[0]), float(places[-1])),)
    return TensionZone(name, 0.0, it.length, share, face.at[0], torn if share > 1.0 else ())


def cracks(it, state: Curled) -> tuple[Crack, ...]:
    """Give the crack, as a section along the slab would meet it."""
    line = state.line
    if line is None:
        return ()
    x = float(line.points[:, 0].mean())
    top, bottom = (0.0, it.thickness) if line.face == "top" else (it.thickness, 0.0)
    held = line.width is not None
    path = np.array([(x, top), (x, (top + bottom) / 2)])
    bars = ("mat",) if held else ()
    return (Crack(line.face, x, path, line.width, line.steel_stress, bars, float(held)),)


def numbers(it, state: Curled) -> tuple[Told, ...]:
    """Give the numbers that sum up the slab."""
    line = state.line
    width = _("none") if line is None else _("nothing holds it")
    if line is not None and line.width is not None:
        width = line.width.governing
    return (
        Told("gradient", _("top shrinks more by"), state.dryness.gradient, "strain"),
        Told("rise", _("corner stands up"), max(state.corner_rise, 0.0), "movement"),
        Told("open", _("share without ground"), state.open_share, "ratio"),
        Told("share", _("pull over strength"), state.share, "ratio"),
        Told("width", _("crack"), width, "width"),
        Told("mass", _("mat weighs"), it.mass, "mass_per_area"),
    )
