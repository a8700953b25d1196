"""Short notes of the trade: ``3 #6``, ``#5 @ 12 in``, ``10 kip at 8 ft``."""

import re
from typing import NamedTuple

from crackkit.units.reading import UnitError, parse, plain
from crackkit.words import _

_SIZE = r"(?:#|no\.? ?)(?P<us>\d{1,2})|[ø⌀]? ?(?P<mm>\d{1,2})(?: ?mm)?"
# Without the gap "416" could be read as 41 bars of 6 mm.
_GAP = r"(?: ?[x×*-] ?| |(?=[#nø⌀]))"
_COUNTED = re.compile(rf"\(?(?P<count>\d{{1,3}})\)?{_GAP}(?:{_SIZE})", re.IGNORECASE)
_SPACED = re.compile(rf"(?:{_SIZE}) ?(?:@| at ) ?(?P<spacing>.+)", re.IGNORECASE)
_BETWEEN = re.compile(r";|\+|(?<!\d),|,(?!\d)|\band\b")
_AT = re.compile(r" ?(?:@|\bat\b) ?", re.IGNORECASE)

_BAR_EXAMPLES = ("3 #6", "4 x 16 mm", "#5 @ 12 in", "12 @ 150 mm")
_LOAD_EXAMPLES = ("45 kN at 2.5 m", "10 kip at 8 ft")


class BarCount(NamedTuple):
    """A number of bars of one size; `size` is ``"#6"`` or ``"16"`` (mm)."""

    count: int
    size: str


class BarSpacing(NamedTuple):
    """Bars of one size at a spacing [mm]; `size` is ``"#5"`` or ``"12"`` (mm)."""

    size: str
    spacing: float


class PointLoad(NamedTuple):
    """A force [N] and where it stands [mm]."""

    force: float
    position: float


def parse_bars(text: str, field: str | None = None) -> BarCount | BarSpacing:
    """Read a number of bars (``3 #6``, ``4 x 16 mm``) or a spacing (``#5 @ 12 in``).

    Parameters
    ----------
    text : str
        The note. A spacing without a unit is in inches for inch bars and in mm for mm bars.
    field : str, optional
        Label for the message.

    Returns
    -------
    BarCount or BarSpacing
        Number [-] and size, or size and spacing [mm].

    Raises
    ------
    UnitError
        If the note cannot be read, or names no bar at all.
    """
    field = field or _("Bars")
    note = plain(text)
    spaced = _SPACED.fullmatch(note)
    if spaced:
        return BarSpacing(_size(spaced), _spacing(spaced, field))
    counted = _COUNTED.fullmatch(note)
    if not counted or _nameless(counted):
        raise UnitError(field, text, "size", _("is not a note of bars"), _BAR_EXAMPLES)
    return BarCount(int(counted["count"]), _size(counted))


def _nameless(match) -> bool:
    return int(match["us"] or match["mm"]) == 0


def _size(match) -> str:
    return f"#{int(match['us'])}" if match["us"] else str(int(match["mm"]))


def _spacing(match, field: str) -> float:
    spacing = parse(match["spacing"], "size", "US" if match["us"] else "SI", field)
    if spacing <= 0 or _nameless(match):
        raise UnitError(field, match[0], "size", _("is not a note of bars"), _BAR_EXAMPLES)
    return spacing


def parse_point_load(text: str, field: str | None = None) -> PointLoad:
    """Read a force and its place, ``10 kip at 8 ft`` or ``45 kN @ 2.5 m``.

    Parameters
    ----------
    text : str
        Force, ``at`` or ``@``, distance from the left end.
    field : str, optional
        Label for the message.

    Returns
    -------
    PointLoad
        Force [N] and position [mm].

    Raises
    ------
    UnitError
        If either part cannot be read.
    """
    field = field or _("Load")
    parts = _AT.split(plain(text))
    if len(parts) != 2:
        reason = _("is not a force at a place")
        raise UnitError(field, text, "force", reason, _LOAD_EXAMPLES)
    return PointLoad(parse(parts[0], "force", None, field), parse(parts[1], "length", None, field))


def parse_point_loads(text: str, field: str | None = None) -> tuple[PointLoad, ...]:
    """Read several point loads divided by a comma, a semicolon, a plus or ``and``.

    Parameters
    ----------
    text : str
        Such as ``10 kip at 8 ft, 5 kip at 12 ft``; an empty text holds no load.
    field : str, optional
        Label for the message.

    Returns
    -------
    tuple of PointLoad
        Forces [N] and positions [mm] in the order written.

    Raises
    ------
    UnitError
        If one of them cannot be read.
    """
    parts = [part for part in _BETWEEN.split(plain(text)) if part.strip()]
    return tuple(parse_point_load(part, field) for part in parts)
