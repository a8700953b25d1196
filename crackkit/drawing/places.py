"""Places along a member in words, told by its supports and spans."""

from crackkit.units import shown
from crackkit.units.places import stretch_told
from crackkit.words import _

NEAR = 50.0  # mm from a support that count as over it


def span_number(structure, at: float) -> int | None:
    """Number of the span that holds a place [mm], counted from 1; None past the outer supports."""
    before = sum(footing.at <= at for footing in structure.footings)
    return before if 0 < before < len(structure.footings) else None


def stretch_name(structure, start: float, end: float, view) -> str:
    """Name a stretch [mm] of the member: its span, or from where to where."""
    number = span_number(structure, (start + end) / 2)
    if number is not None:
        return _("span {n}").format(n=number)
    return stretch_told(structure, start, end, view.system)


def beside_support(at: float, structure, view) -> str:
    """Say where a place [mm] is, seen from the nearest support or the middle of its span."""
    nearest = min(structure.footings, key=lambda footing: abs(footing.at - at))
    off = at - nearest.at
    if abs(off) <= NEAR:
        return _("over {support}").format(support=nearest.name)
    if _in_the_middle(at, structure):
        return _("in the middle of span {n}").format(n=span_number(structure, at))
    text = _("{distance} past {support}") if off > 0 else _("{distance} before {support}")
    return text.format(distance=shown(abs(off), "length", view.system), support=nearest.name)


def _in_the_middle(at: float, structure) -> bool:
    number = span_number(structure, at)
    if number is None:
        return False
    left, right = (footing.at for footing in structure.footings[number - 1 : number + 1])
    return abs(at - (left + right) / 2) < 0.1 * (right - left)
