"""Which way a member bends, and the sentences that say what bending does to a face."""

import numpy as np

from crackkit.structures.on_drawing import WALL
from crackkit.words import _

SMILE, FROWN, STRAIGHT = "smile", "frown", "straight"
FACE_NAMES = {"bottom": _("bottom"), "top": _("top")}
ROW = {"top": 0, "bottom": -1}
NOTHING = 0.02  # pull, as a multiple of the strength [-], below which a member counts as idle
SLACK = 1.0  # mm
NEAR = 0.08  # share of the length [-] within which a frown belongs to a support


def face_stress(outcome, face: str, places) -> np.ndarray:
    """Read the stress along a face: multiples of the strength [-], pull positive.

    Parameters
    ----------
    outcome : Outcome
    face : str
        ``"top"`` or ``"bottom"``.
    places : array_like
        Where [mm from the left end].
    """
    return np.interp(places, outcome.stresses.x, outcome.stresses.ratio[ROW[face]])


def largest_stress(outcome) -> float:
    """Largest stress at any face, pull or squeeze [-]; 0 for a member that is as good as idle."""
    rows = outcome.stresses.ratio[[0, -1]]
    largest = float(np.abs(rows).max())
    return largest if largest > NOTHING else 0.0


def bend(outcome, start: float, end: float) -> str:
    """Tell which way the member bends, mostly, from start to end [mm]."""
    here = np.linspace(start, end, 21)
    moment = np.interp(here, outcome.x, outcome.moment)
    strongest = float(moment[np.argmax(np.abs(moment))])
    if abs(strongest) <= 1e-3 * float(np.abs(outcome.moment).max(initial=0.0)):
        return STRAIGHT
    return SMILE if strongest > 0 else FROWN


def why(outcome, face: str, start: float, end: float) -> str:
    """Say what bending does to a face from start to end [mm], and how."""
    way = bend(outcome, start, end)
    if way == STRAIGHT:
        return _("Nothing bends it here: neither face is stretched.")
    return f"{_cause(outcome, way, start, end)} {_effect(face, way)}"


def _effect(face: str, way: str) -> str:
    stretched = (face == "bottom") == (way == SMILE)
    if face == "bottom":
        if stretched:
            return _("the bottom gets longer, so it is stretched.")
        return _("the bottom gets shorter, so it is squeezed, not stretched.")
    if stretched:
        return _("the top gets longer, so it is stretched.")
    return _("the top gets shorter, so it is squeezed, not stretched.")


def _cause(outcome, way: str, start: float, end: float) -> str:
    if way == SMILE:
        return _("Here it bends like a smile:")
    first, last = outer_supports(outcome)
    if held_by_a_wall(outcome):
        return _("The wall holds the root fast and the tip hangs down, so it bends like a frown:")
    if _straddles(start, end, first) or _straddles(start, end, last):
        return _(
            "The end hangs down past its support, and it bends like a frown there and for a way "
            "back:"
        )
    if start < first - SLACK or end > last + SLACK:
        return _("Past the support the end hangs down, and it bends like a frown:")
    if _hangs_past(outcome, start, end):
        return _("Beside this support the hanging end still bends it like a frown:")
    return _frown_inside(outcome, start, end)


def _frown_inside(outcome, start: float, end: float) -> str:
    """Words for a frown between the outer supports: over one of them, or in a span."""
    places = sorted(footing.at for footing in outcome.structure.footings)
    if len(places) < 3:
        return _("Over the support it bends like a frown:")
    middles = [(a + b) / 2 for a, b in zip(places, places[1:], strict=False)]
    lifted = any(start < at < end for at in middles)
    near = SLACK if lifted else NEAR * (places[-1] - places[0])
    over = any(start - near <= at <= end + near for at in places[1:-1])
    if over and not lifted:
        return _("Over the support it bends like a frown:")
    if over:
        return _("Over the support, and on into the span that is lifted, it bends like a frown:")
    return _("The neighbours lift this span, so it bends like a frown:")


def _straddles(start: float, end: float, place: float) -> bool:
    return start < place - SLACK and end > place + SLACK


def _hangs_past(outcome, start: float, end: float) -> bool:
    first, last = outer_supports(outcome)
    return any(
        zone.face == "top"
        and zone.start <= end
        and zone.end >= start
        and (zone.start < first - SLACK or zone.end > last + SLACK)
        for zone in outcome.tension
    )


def outer_supports(outcome) -> tuple[float, float]:
    """First and last support [mm]; the ends of the member where it names no supports."""
    places = [footing.at for footing in outcome.structure.footings]
    if not places:
        return float(outcome.x[0]), float(outcome.x[-1])
    return float(min(places)), float(max(places))


def held_by_a_wall(outcome) -> bool:
    """Tell whether it grows out of a wall."""
    return any(footing.kind == WALL for footing in outcome.structure.footings)


def in_a_wall(outcome, places) -> np.ndarray:
    """Tell for places [mm] whether they lie inside a wall, where nobody sees a face."""
    places = np.asarray(places, dtype=float)
    walls = [footing for footing in outcome.structure.footings if footing.kind == WALL]
    inside = [(wall.start <= places) & (places <= wall.end) for wall in walls]
    return np.any(inside, axis=0) if inside else np.zeros(places.shape, dtype=bool)


def loads_between(outcome, start: float, end: float) -> bool:
    """Tell whether a point load presses on the top from start to end [mm]."""
    return any(load.force > 0 and start <= load.at <= end for load in outcome.structure.hung)
