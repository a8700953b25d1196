"""Places along a member as its reader counts them: from its origin, either way."""

from crackkit.units import shown
from crackkit.words import _


def place_told(structure, at: float, system: str) -> str:
    """Give a place [mm from the left end] as the distance from where the reader counts.

    Only an arm is counted from a place inside it, its root; behind that the distance says so
    instead of being negative.
    """
    off = at - structure.origin
    text = shown(abs(off), "length", system)
    return _("{distance} behind the root").format(distance=text) if off < -0.5 else text


def place_named(structure, at: float, system: str) -> str:
    """Give a place [mm from the left end] and where it is counted from."""
    told = place_told(structure, at, system)
    return told if at < structure.origin - 0.5 else f"{told} {structure.origin_name}"


def stretch_told(structure, start: float, end: float, system: str) -> str:
    """Give a stretch [mm from the left end], or a place where both ends read the same."""
    a, b = (place_told(structure, at, system) for at in (start, end))
    return a if a == b else _("{a} to {b}").format(a=a, b=b)
