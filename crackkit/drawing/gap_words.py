"""Gaps in words: where no bar guards a stretch that some load cracks, and which load that is."""

from crackkit.drawing.places import beside_support
from crackkit.words import _


def gap_words(gap, structure, view) -> str:
    """Say where a gap is, what is amiss, and which load stretches the place.

    Parameters
    ----------
    gap : Gap
    structure : object
        Has ``footings`` and ``origin``.
    view : View
        Units.

    Returns
    -------
    str
        For instance ``top, 0.40 m past support B: no bar crosses (live load on spans 1 and 3)``.
    """
    return _("{face}, {place}: {fault} ({loads})").format(
        face=_("top") if gap.face == "top" else _("bottom"),
        place=beside_support(gap.at, structure, view),
        fault=gap.fault_words,
        loads=arrangement_words(gap.arrangement),
    )


def arrangement_words(arrangement) -> str:
    """Say where the loads that come and go stand in an Arrangement."""
    return arrangement.words


def gaps_sentence(outcome, view) -> str:
    """Say in words what the range shows; empty where no loads come and go."""
    if outcome.range is None:
        return ""
    gaps = [gap_words(gap, outcome.structure, view) for gap in outcome.range.gaps]
    if not gaps:
        return _("Whatever the load does, bars cross every stretch that cracks.")
    return _("Not guarded by bars: {gaps}.").format(gaps="; ".join(gaps))
