"""Several values in one text, divided by commas: ``5 m, 6 m, 5 m``; ``3 x 5 m``."""

import re
from dataclasses import dataclass
from typing import ClassVar

from crackkit.sandbox.arguments import Argument, Knob, chosen, exact, is_nothing, read_amount
from crackkit.units.reading import plain
from crackkit.words import _

# a comma between two digits is a decimal comma
_BETWEEN = re.compile(r"\s*(?:;|\+|(?<!\d),|,(?!\d)|\band\b)\s*")
_TIMES = re.compile(r"(\d) ?[x×*] ?(?=\d)(.+)", re.IGNORECASE)
_UNITLESS = re.compile(r"-?[\d.,]+")
_UNIT = re.compile(r"-?[\d.,]+ ?(\D+)")


def parts_of(typed) -> list:
    """Give the parts of a list that was typed as one text or as a list."""
    if isinstance(typed, (list, tuple)):
        return list(typed)
    if not isinstance(typed, str):
        return [typed]
    return [part for part in _BETWEEN.split(plain(typed)) if part]


def amounts_of(typed) -> list:
    """Give the parts of a list of amounts.

    ``3 x 5 m`` stands for three of them, and in ``5, 6, 5 m`` the unit goes for all.
    """
    parts = [one for part in parts_of(typed) for one in _repeated(part)]
    unit = _UNIT.fullmatch(parts[-1]) if parts and isinstance(parts[-1], str) else None
    if unit is None:
        return parts
    return [f"{part} {unit[1]}" if _is_unitless(part) else part for part in parts]


def _repeated(part) -> list:
    times = _TIMES.fullmatch(part) if isinstance(part, str) else None
    return [times[2]] * int(times[1]) if times else [part]


def _is_unitless(part) -> bool:
    return isinstance(part, str) and bool(_UNITLESS.fullmatch(part))


@dataclass(frozen=True)
class Amounts(Argument):
    """An amount for each place: the value is a tuple, of one that goes for every place or of all.

    Attributes
    ----------
    each : str
        Label of one of them, with its number put in for ``{n}``, its letter for ``{letter}``.
    shares : bool
        Whether one amount can stand for every place.
    """

    quantity: str = "length"
    each: str = ""
    shares: bool = True
    unlike: ClassVar[str] = _("start and end hold different numbers of values")

    def read(self, typed) -> tuple[float, ...]:
        """Give the amounts in the inner unit."""
        found = amounts_of(typed)
        if not found:
            raise self.wrong(typed, _("is empty"))
        return tuple(read_amount(self, self.quantity, part, typed) for part in found)

    def written(self, value, system: str) -> str:
        """Write one if it goes for every place, else all."""
        shared = self.shares and len(set(value)) == 1
        texts = [exact(one, self.quantity, system) for one in (value[:1] if shared else value)]
        return ", ".join(texts)

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give each of them."""
        if len(value) == 1:
            return (Knob(self.label, self.quantity, value[0]),)
        named = enumerate(value, 1)
        return tuple(
            Knob(self.each.format(n=n, letter=chr(ord("A") + n - 1)), self.quantity, one)
            for n, one in named
        )

    def turned(self, value, numbers) -> tuple[float, ...]:
        """Give the other numbers."""
        return tuple(numbers)


@dataclass(frozen=True)
class Lettered(Argument):
    """Amounts at places with a letter, ``B 10 mm, C 5 mm``: the value holds (letter, amount)."""

    quantity: str = "movement"
    unlike: ClassVar[str] = _("start and end name different places")

    def read(self, typed) -> tuple[tuple[str, float], ...]:
        """Give letters with their amounts in the inner unit."""
        if is_nothing(typed):
            return ()
        return tuple(self._one(part, typed) for part in parts_of(typed))

    def _one(self, part, typed) -> tuple[str, float]:
        letter, _blank, rest = str(part).strip().partition(" ")
        if not (len(letter) == 1 and letter.isalpha() and rest):
            raise self.wrong(typed, _("name the place and how much: B 10 mm"))
        return letter.upper(), read_amount(self, self.quantity, rest, typed)

    def written(self, value, system: str) -> str:
        """Write them."""
        texts = [f"{letter} {exact(one, self.quantity, system)}" for letter, one in value]
        return ", ".join(texts) or "none"

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give each amount."""
        return tuple(Knob(f"{self.label}, {a}", self.quantity, one) for a, one in value)

    def turned(self, value, numbers) -> tuple:
        """Give other amounts at the same places."""
        return tuple((a, x) for (a, _one), x in zip(value, numbers, strict=True))


@dataclass(frozen=True)
class Numbered(Argument):
    """Some of the places by their numbers, ``1, 3``, or ``all``, or ``none``.

    The value is a tuple of numbers; None for all.
    """

    def read(self, typed) -> tuple[int, ...] | None:
        """Give the numbers."""
        if str(typed).lower() == "all":
            return None
        if is_nothing(typed):
            return ()
        found = typed if isinstance(typed, (list, tuple)) else re.split(r"[,;\s]+|and", str(typed))
        try:
            return tuple(sorted({int(one) for one in found if str(one).strip()}))
        except ValueError:
            raise self.wrong(typed, _("say all, none, or which: 1, 3")) from None

    def written(self, value, system: str) -> str:
        """Write the numbers."""
        if value is None:
            return "all"
        return ", ".join(map(str, value)) or "none"


@dataclass(frozen=True)
class TwoWords(Argument):
    """Two words, for the left and the right end; one goes for both."""

    choices: tuple = ()

    def read(self, typed) -> tuple[str, str]:
        """Give both keys."""
        found = tuple(chosen(self, self.choices, str(part), typed) for part in parts_of(typed))
        if len(found) not in (1, 2):
            raise self.wrong(typed, _("name one for both ends, or the left and the right one"))
        return found * 2 if len(found) == 1 else found

    def written(self, value, system: str) -> str:
        """Write one if both are the same, else both."""
        return value[0] if value[0] == value[1] else ", ".join(value)
