"""Places along a structure, told as its reader counts them."""

from crackkit.units import shown
from crackkit.units.places import at_place
from crackkit.words import _

_HERE = 1.0  # mm within which a place counts as that of a support


def reach_words(structure, start: float, end: float, system: str) -> str:
    """Say from where to where something reaches, from the structure's own origin."""
    if start >= structure.origin - _HERE:
        a, b = (shown(max(x - structure.origin, 0.0), "length", system) for x in (start, end))
        return _("from {a} to {b} {origin}").format(a=a, b=b, origin=structure.origin_name)
    a, b = (at_place(structure, x, system) for x in (start, end))
    return _("from {a} to {b}").format(a=a, b=b)


def piece_at(structure, place: float) -> tuple[float, str]:
    """Give the length of the piece a place lies in, and what it is called.

    Returns
    -------
    tuple of (float, str)
        Between two supports the span, past the outer ones the end that reaches out [mm].
    """
    supports = sorted(footing.at for footing in structure.footings)
    if place < supports[0]:
        return supports[0], _("of the overhang")
    if place > supports[-1]:
        return structure.length - supports[-1], _("of the overhang")
    pairs = zip(supports, supports[1:], strict=False)
    spans = [b - a for a, b in pairs if a <= place <= b]
    return (spans[0] if spans else structure.length), _("of the span")
