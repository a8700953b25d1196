"""Places along a member in words, as its reader counts them: from its origin, either way.

A structure says where that is: ``origin`` [mm from the left end] and ``origin_name``.
"""

from crackkit.units.display import shown
from crackkit.words import _

AT = 2.0  # mm from the root that count as at it


def place_told(structure, at: float, system: str) -> str:
    """Give a place [mm from the left end] as the distance from where the reader counts.

    Only an arm is counted from a place inside it, its root: there the words say on which side.
    """
    off = at - structure.origin
    if structure.origin and abs(off) < AT:
        return _("the root")
    text = shown(abs(off), "length", system)
    if off < 0 and structure.origin:
        return _("{distance} behind the root").format(distance=text)
    return f"{text} {structure.origin_name}" if structure.origin else text


def place_named(structure, at: float, system: str) -> str:
    """Give a place [mm from the left end] and where it is counted from."""
    told = place_told(structure, at, system)
    return told if structure.origin else f"{told} {structure.origin_name}"


def at_place(structure, at: float, system: str) -> str:
    """Give a place [mm from the left end] as the end of a sentence: "it breaks at the root"."""
    named = place_named(structure, at, system)
    return _("at {place}").format(place=named) if named == _("the root") else named


def stretch_told(structure, start: float, end: float, system: str) -> str:
    """Give a stretch [mm from the left end], or a place where both ends read the same."""
    a, b = (place_told(structure, at, system) for at in (start, end))
    if a == b:
        return a
    if structure.origin and _one_side(structure, start, end):
        # the side is said once
        a = shown(abs(start - structure.origin), "length", system)
    return _("{a} to {b}").format(a=a, b=b)


def _one_side(structure, start: float, end: float) -> bool:
    return not start - AT <= structure.origin <= end + AT
