"""What every arrangement of the loads does to a floor: the worst one, gaps, shifted moments."""

import numpy as np

from crackkit.drawing.deciding import deciding_crack
from crackkit.drawing.frames import View
from crackkit.drawing.gap_words import gap_words
from crackkit.drawing.places import beside_support
from crackkit.sandbox.told import Told
from crackkit.structures.floor_range import arrangement_words
from crackkit.units import shown
from crackkit.words import _


def arrangements(outcome, system: str) -> Told:
    """Say which arrangement of the loads opens the widest crack, and where.

    Parameters
    ----------
    outcome : Outcome
        With a ``range``.
    system : str
        ``"SI"`` or ``"US"``.
    """
    widest = deciding_crack(outcome)
    if widest is None:
        said = _("No arrangement of the loads cracks it.")
    else:
        said = _("{face}, {place}: {width}, for {loads}.").format(
            face=_face(widest.face),
            place=beside_support(widest.at, outcome.structure, View(system)),
            width=_width(outcome, widest, system),
            loads=outcome.range.arrangement(widest.face, widest.at).words,
        )
    title = _("Widest crack under any arrangement of the loads")
    return Told(title, (said, _now(outcome.structure)))


def _face(face: str) -> str:
    return _("Top") if face == "top" else _("Bottom")


def _width(outcome, crack, system: str) -> str:
    if crack.width is None:
        return _("nothing holds it")
    if outcome.verdict.width is None:
        return _("the bars cannot bear it")
    return shown(crack.width.governing, "width", system)


def _now(floor) -> str:
    """Say which loads picture, answers and working are about."""
    text = _("Picture, answers 1 to 3 and working show the loads as they stand now: {loads}.")
    on = tuple(k for k, span in enumerate(floor.spans, 1) if span.live and floor.live_load)
    under = (int(np.searchsorted(floor.places[1:-1], load.at, "right")) + 1 for load in floor.hung)
    return text.format(loads=arrangement_words(on, tuple(under)))


def uncovered(outcome, system: str) -> Told:
    """List the stretches that some arrangement cracks and that no bar guards."""
    gaps = tuple(_gap(gap, outcome.structure, system) for gap in outcome.range.gaps)
    return Told(_("Stretches without a guard"), gaps or (_no_gap(outcome),))


def _no_gap(outcome) -> str:
    if outcome.verdict.width is None and outcome.range.cracks:
        # the outer layer decides a crack; with the other layers the stretch as a whole may hold
        return _("None, and yet the outer bars at some crack are asked for too much: see above.")
    return _("None: bars guard every place that some arrangement of the loads cracks.")


def _gap(gap, floor, system: str) -> str:
    words = gap_words(gap, floor, View(system))
    return _("{words}; open from {a} to {b} from the left end.").format(
        words=words[:1].upper() + words[1:],
        a=shown(gap.start, "length", system),
        b=shown(gap.end, "length", system),
    )


def shifts(outcome, system: str) -> Told:
    """Put the moments at the supports side by side: uncracked, as cracks shift them, the worst."""
    found = outcome.range
    head = (_("moment"), _("as if uncracked"), _("as cracks shift it"), _("any arrangement"))
    rows = tuple(_row(found, footing, system) for footing in outcome.structure.footings)
    shown_rows = tuple(row for row in rows if row is not None)
    return Told(_("Moments over the supports"), (), head, shown_rows)


def _row(found, footing, system: str) -> tuple[str, ...] | None:
    curves = (found.elastic, found.shifted, found.hogging)
    values = [float(np.interp(footing.at, found.x, curve)) for curve in curves]
    if max(map(abs, values)) < 1.0:  # N mm: an end that is free to turn
        return None
    return (footing.name, *(shown(value, "moment", system) for value in values))
