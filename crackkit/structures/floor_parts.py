"""The parts of a continuous floor that come several times: spans, supports, travelling loads."""

from dataclasses import dataclass

from crackkit.structures import fields
from crackkit.structures.anchored_bars import is_beam, is_slab
from crackkit.words import _

SHORTEST, LONGEST = 1000.0, 10000.0  # span, mm


def _cut(floor, _owner) -> bool:
    return not floor.through


def _mat_and_cut(floor, owner) -> bool:
    return is_slab(floor) and _cut(floor, owner)


def _has_left(floor, support) -> bool:
    return _cut(floor, support) and support is not floor.supports[0]


def _has_right(floor, support) -> bool:
    return _cut(floor, support) and support is not floor.supports[-1]


def _half(_floor, span) -> float:
    return 0.45 * span.length


def _into_left(floor, span) -> float:
    """Bottom bars reach past a support by less than half of the span there [mm]."""
    index = _index(floor.spans, span)
    return -0.45 * floor.spans[index - 1].length if index else 0.0


def _into_right(floor, span) -> float:
    index = _index(floor.spans, span) + 1
    return -0.45 * floor.spans[index].length if index < len(floor.spans) else 0.0


def _left_length(floor, support) -> float:
    index = _index(floor.supports, support)
    return floor.spans[index - 1].length if index else 0.0


def _right_length(floor, support) -> float:
    index = _index(floor.supports, support)
    return floor.spans[index].length if index < len(floor.spans) else 0.0


def _length(floor, _load) -> float:
    return floor.length


def _index(items, one) -> int:
    return next(k for k, item in enumerate(items) if item is one)


@dataclass(frozen=True)
class Span:
    """One span: its length, whether live load stands on it, and its bottom bars."""

    length: float = fields.number(
        _("Length"), "length", SHORTEST, LONGEST, 5000.0, _("From support to support.")
    )
    live: bool = fields.switch(_("Live load here"), True, _("People, goods: loads that go again."))
    number: int = fields.number(
        _("Bottom bars"), "count", 0, 12, 3, _("Bars side by side."), when=is_beam
    )
    laid: bool = fields.switch(_("Bottom bars here"), True, when=_mat_and_cut)
    left_gap: float = fields.number(
        _("They start, from its left support"),
        "length",
        _into_left,
        _half,
        0.0,
        _("Below zero: they reach past the support into the next span."),
        when=_cut,
    )
    right_gap: float = fields.number(
        _("They stop, before its right support"),
        "length",
        _into_right,
        _half,
        0.0,
        _("Below zero: they reach past the support into the next span."),
        when=_cut,
    )


@dataclass(frozen=True)
class Support:
    """One support: how far it has sunk, and the top bars over it."""

    sunk: float = fields.number(
        _("Sunk by"), "movement", 0.0, 30.0, 0.0, _("How far the support has settled.")
    )
    number: int = fields.number(
        _("Top bars"), "count", 0, 12, 3, _("Bars side by side."), when=is_beam
    )
    laid: bool = fields.switch(_("Top bars here"), True, when=_mat_and_cut)
    left_reach: float = fields.number(
        _("They reach left"),
        "length",
        0.0,
        _left_length,
        1300.0,
        _("From the support into the span on its left."),
        when=_has_left,
    )
    right_reach: float = fields.number(
        _("They reach right"),
        "length",
        0.0,
        _right_length,
        1300.0,
        _("From the support into the span on its right."),
        when=_has_right,
    )


@dataclass(frozen=True)
class Traveller:
    """A load that travels along the floor; it is judged at every place it can reach."""

    force: float = fields.number(_("Load"), "force", 0.0, 200e3, 0.0, _("Pushes down."))
    at: float = fields.number(
        _("Stands now"), "length", 0.0, _length, 2500.0, _("From the left end.")
    )
