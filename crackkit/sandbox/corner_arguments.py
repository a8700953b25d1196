"""What only a slab with an inside corner asks for: sides of a piece, a place, bars off a corner."""

import re
from dataclasses import dataclass
from typing import ClassVar, NamedTuple

from crackkit.sandbox.arguments import Argument, Knob, exact, is_nothing, read_amount
from crackkit.sandbox.bar_arguments import BarNote, bar_note
from crackkit.sandbox.lists import Amounts, amounts_of, parts_of
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.units.bar_notes import BarCount
from crackkit.units.reading import plain
from crackkit.words import _

MIDDLE = "middle"
_BY = re.compile(r"\s*(?:[x×*]|\bby\b)\s*", re.IGNORECASE)
_OFF = re.compile(r"\s*(?:@|\bat\b)\s*", re.IGNORECASE)


@dataclass(frozen=True)
class Sides(Argument):
    """Two sides of a piece, ``3 m x 2 m``; one alone is that of a square.

    The value is a pair of lengths [mm].

    Attributes
    ----------
    square : bool
        Whether it can have one side only.
    """

    square: bool = False
    quantity: ClassVar[str] = "length"

    def read(self, typed) -> tuple[float, float]:
        """Give both sides in mm."""
        found = tuple(read_amount(self, "length", part, typed) for part in _sides_of(typed))
        if self.square and len(set(found)) > 1:
            raise self.wrong(typed, _("it is as long as it is wide: give one side"))
        if len(found) not in (1, 2):
            raise self.wrong(typed, _("give one side of a square, or two: 3 m x 2 m"))
        return found * 2 if len(found) == 1 else found

    def written(self, value, system: str) -> str:
        """Write both, and of a square one."""
        texts = [exact(side, "length", system) for side in value]
        return texts[0] if texts[0] == texts[1] else " x ".join(texts)

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give both; of what is always square its side."""
        if self.square:
            return (Knob(self.label, "length", value[0]),)
        names = (_("{piece}, along"), _("{piece}, across"))
        return tuple(
            Knob(name.format(piece=self.label), "length", side)
            for name, side in zip(names, value, strict=True)
        )

    def turned(self, value, numbers) -> tuple[float, float]:
        """Give other sides."""
        return (numbers[0], numbers[-1])


def _sides_of(typed) -> list:
    parts = _BY.split(plain(typed)) if isinstance(typed, str) else parts_of(typed)
    return amounts_of(parts)


def sides(name, label, us, si, help="", square=False) -> Sides:
    """Declare the sides of a piece."""
    return Sides(name, label, {"US": us, "SI": si}, help, square=square)


@dataclass(frozen=True)
class Place(Amounts):
    """Where the middle of a piece lies, ``2 m, 1.5 m``: the value is empty for the middle."""

    unlike: ClassVar[str] = _("does not run from the middle: say where that is")

    def read(self, typed) -> tuple[float, ...]:
        """Give the places in mm."""
        if isinstance(typed, str) and typed.strip().lower() == MIDDLE:
            return ()
        return super().read(typed)

    def written(self, value, system: str) -> str:
        """Write the places."""
        return ", ".join(exact(one, "length", system) for one in value) or MIDDLE

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the place along and, where there is one, across."""
        names = (_("{place}, along"), _("{place}, across"))
        return tuple(
            Knob(name.format(place=self.label), "length", one)
            for name, one in zip(names, value, strict=False)
        )


def place(name, label, help="", path="") -> Place:
    """Declare where a piece lies; the middle is assumed."""
    return Place(name, label, {"US": MIDDLE, "SI": MIDDLE}, help, path, shares=False)


class PlacedBars(NamedTuple):
    """A number of bars, and how far the first one lies off [mm]; None where nobody said it."""

    bars: BarCount
    off: float | None


@dataclass(frozen=True)
class OffCorner(BarNote):
    """Bars beside a corner, ``2 x 12 mm at 50 mm``: the value is `PlacedBars`, or None."""

    counted: ClassVar[str] = _(
        "give number, size and how far the first one lies off: 2 x 12 mm at 50 mm, 2 #4 at 2 in"
    )
    unlike: ClassVar[str] = _("does not run between different sizes, or from nothing")

    def read(self, typed) -> PlacedBars | None:
        """Give number, size and distance."""
        if is_nothing(typed):
            return None
        bars, *off = _OFF.split(plain(str(typed)), maxsplit=1)
        note = self._counted(bars, typed)
        return PlacedBars(note, read_amount(self, "size", off[0], typed) if off else None)

    def _counted(self, bars: str, typed) -> BarCount:
        try:
            return self.one(bars, typed)
        except WrongInput:
            raise self.wrong(typed, self.counted) from None

    def written(self, value, system: str) -> str:
        """Write the note."""
        if value is None or not value.bars.count:
            return "none"
        text = bar_note(value.bars, system)
        return text if value.off is None else f"{text} at {exact(value.off, 'size', system)}"

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the number, and how far they lie off."""
        if value is None:
            return ()
        number = Knob(_("number of {bars}").format(bars=self.label), "count", value.bars.count)
        off = Knob(_("{bars}, off by").format(bars=self.label), "size", value.off)
        return (number,) if value.off is None else (number, off)

    def turned(self, value, numbers) -> PlacedBars:
        """Give another number of bars, at another distance."""
        bars = value.bars._replace(count=round(numbers[0]))
        return PlacedBars(bars, None if value.off is None else numbers[1])

    def alike(self, first, last) -> bool:
        """Whether both name the same size, and a distance or none."""
        if first is None or last is None:
            return False
        same_size = first.bars.size == last.bars.size
        return same_size and (first.off is None) == (last.off is None)


def off_corner(name, label, help="") -> OffCorner:
    """Declare bars beside a corner; none are assumed."""
    return OffCorner(name, label, {"US": "none", "SI": "none"}, help)
