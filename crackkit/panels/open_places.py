"""Beside a floor: places that no bar guards, the widest crack, and the loads that do it."""

from crackkit.drawing.frames import View
from crackkit.drawing.gap_words import gap_words
from crackkit.drawing.places import beside_support
from crackkit.drawing.seen import Seen
from crackkit.units import shown
from crackkit.words import _


def told(outcome, system: str) -> dict:
    """Give heading and rows for the page; nothing where no loads come and go.

    Parameters
    ----------
    outcome : Outcome
    system : str
        Units.
    """
    if outcome.range is None:
        return {}
    view, gaps, floor = View(system), outcome.range.gaps, Seen(outcome.structure)
    head = _("Whatever the loads do, bars cross every stretch that cracks.")
    if gaps:
        head = _("Here no bar holds the concrete together:")
    rows = [gap_words(gap, floor, view) for gap in gaps]
    return {"head": head, "rows": [*rows, *_widest(outcome, floor, view)], "show": _("Show me")}


def changes(outcome, index: int) -> dict:
    """What to set so that the row of this number is seen: path to value."""
    gaps = outcome.range.gaps
    if index < len(gaps):
        return gaps[index].arrangement.changes
    widest = outcome.range.widest
    return outcome.range.arrangement(widest.face, widest.at).changes


def _widest(outcome, floor, view: View) -> list[str]:
    widest = outcome.range.widest
    if widest is None or widest.width is None:
        return []
    return [
        _("Widest crack of all: {width}, {face}, {place} ({loads})").format(
            width=shown(widest.width.governing, "width", view.system),
            face=_("top") if widest.face == "top" else _("bottom"),
            place=beside_support(widest.at, floor, view),
            loads=outcome.range.arrangement(widest.face, widest.at).words,
        )
    ]
