"""Marking a choice among drawings of bars: which one guards every place, with the least steel?"""

from dataclasses import dataclass

from crackkit.learning.remark import MISSED, RIGHT, WRONG, Marking, Remark
from crackkit.units import shown
from crackkit.words import _

HEAVIER = 0.5  # score [-] of a drawing that guards every place with more steel than another


@dataclass(frozen=True)
class Layout:
    """One drawing of bars.

    Attributes
    ----------
    key, label : str
        Its name inside, and what the reader chooses by.
    structure : object
        The structure with these bars; loads come and go on it.
    """

    key: str
    label: str
    structure: object


def mark_layout(chosen: str, layouts, system: str = "SI") -> Marking:
    """Judge which drawing was chosen.

    Parameters
    ----------
    chosen : str
        Key of one of them.
    layouts : sequence of Layout
        All that were offered.
    system : str
        Units of the remarks, ``"SI"`` or ``"US"``.

    Returns
    -------
    Marking
        It passes for the lightest of those whose bars cross every place that can crack.
    """
    outcomes = {layout.key: layout.structure.solve() for layout in layouts}
    found = outcomes[chosen]
    least = min(each.steel_mass for each in outcomes.values() if not each.range.gaps)
    if found.range.gaps:
        return Marking(False, 0.0, tuple(_gap_remark(gap) for gap in found.range.gaps[:2]))
    if found.steel_mass > least:
        return Marking(False, HEAVIER, (_heavy_remark(found, least, system),))
    text = _("Whatever the loads do, bars cross every place that cracks; no other does it lighter.")
    return Marking(True, 1.0, (_remark(found, RIGHT, text),))


def _remark(outcome, kind: str, text: str) -> Remark:
    return Remark("", 0.0, float(outcome.x[-1]), kind, text)


def _gap_remark(gap) -> Remark:
    face = _("on top") if gap.face == "top" else _("at the bottom")
    text = _("With {loads}, it cracks {face}: {fault}. Look at the picture.")
    said = text.format(loads=gap.arrangement.words, face=face, fault=gap.fault_words)
    return Remark("", gap.start, gap.end, WRONG, said)


def _heavy_remark(outcome, least: float, system: str) -> Remark:
    more = shown(outcome.steel_mass - least, "mass", system)
    text = _("It guards every place, but another drawing does so with {more} less steel.")
    return _remark(outcome, MISSED, text.format(more=more))
