"""A guided walk: a few small changes, each followed by the question what happened."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from crackkit.learning.telling import Retold
from crackkit.structures.outcome import Outcome, Told
from crackkit.units import shown
from crackkit.words import _


@dataclass(frozen=True)
class WalkStep:
    """One step of a walk.

    Attributes
    ----------
    text : str
        What to try, and what to look at.
    changes : dict
        What the button sets: path to value in N, mm, MPa.
    answer : str
        What happened, and why.
    from_start : bool
        Whether its numbers are told beside those of the structure as it was at first; otherwise
        beside those that stood there when the step came up.
    """

    text: str
    changes: dict
    answer: str
    from_start: bool = False


class Walk(tuple):
    """The steps of a walk, which can be told again when the reader changes units.

    Parameters
    ----------
    make : callable
        From a system of units to the steps; see `Retold`.
    system : str
        ``"SI"`` or ``"US"``: what is walked through has round numbers in these units.
    """

    def __new__(cls, make: Callable[[str], tuple[WalkStep, ...]], system: str) -> "Walk":
        """Make the steps, told in the units that their numbers are round in."""
        walk = super().__new__(cls, make(system))
        walk.make, walk.system = make, system
        return walk

    def told(self, system: str) -> tuple[WalkStep, ...]:
        """Give the same steps, which set the same numbers, told in the units of a system."""
        return self if system == self.system else self.make(Retold(self.system, system))


def change_told(before: Outcome, after: Outcome, system: str) -> str:
    """Say in numbers what a step changed: widest crack, pull, strength to spare, movement.

    Of a floor also the moments over its inner supports, the places without bars, and the steel;
    of a structure that is not bent, the numbers that sum it up.
    """
    rows = _of_numbers(before, after, system) if after.numbers else _of_bent(before, after, system)
    told = [f"{name}: {a} → {b}" for name, a, b in rows if a != b]
    return "; ".join(told) if told else _("No number changed.")


def _of_numbers(before: Outcome, after: Outcome, system: str) -> list[tuple[str, str, str]]:
    return [
        (b.label, told_text(a, system), told_text(b, system))
        for a, b in zip(before.numbers, after.numbers, strict=True)
    ]


def told_text(number: Told, system: str) -> str:
    """Write one of the numbers that sum up an Outcome."""
    if isinstance(number.value, str):
        return number.value
    return shown(number.value, number.quantity, system)


def _of_bent(before: Outcome, after: Outcome, system: str) -> list[tuple[str, str, str]]:
    return [
        (_("widest crack"), _width(before, system), _width(after, system)),
        (_("pull in the bars"), _pull(before, system), _pull(after, system)),
        (_("gives way at"), _strength(before), _strength(after)),
        (_("moves at most"), _movement(before, system), _movement(after, system)),
        *_of_floor(before, after, system),
    ]


def _width(outcome: Outcome, system: str) -> str:
    widest = outcome.widest
    if widest is None:
        return _("no crack")
    if widest.width is None:
        return _("not held")
    return shown(widest.width.governing, "width", system)


def _pull(outcome: Outcome, system: str) -> str:
    return shown(outcome.worst.steel_stress, "stress", system)


def _strength(outcome: Outcome) -> str:
    worst = outcome.worst
    if not worst.moment:
        return _("no load")
    if not worst.ultimate_moment:
        return _("not held")
    return _("{n} times this load").format(n=f"{worst.ultimate_moment / worst.moment:.1f}")


def _movement(outcome: Outcome, system: str) -> str:
    if outcome.movement.falls_at is not None:
        return _("falls")
    return shown(abs(outcome.movement.largest), "movement", system)


def _of_floor(before: Outcome, after: Outcome, system: str) -> list[tuple[str, str, str]]:
    """What only a floor has whose loads come and go."""
    if before.range is None or after.range is None:
        return []
    rows = zip(_over_supports(before, system), _over_supports(after, system), strict=False)
    over = [(_("moment over {letter}").format(letter=a[0]), a[1], b[1]) for a, b in rows]
    places = (_("places without bars"), str(len(before.range.gaps)), str(len(after.range.gaps)))
    masses = (shown(each.steel_mass, "mass", system) for each in (before, after))
    return [*over, places, (_("bars weigh"), *masses)]


def _over_supports(outcome: Outcome, system: str) -> list[tuple[str, str]]:
    inner = [footing for footing in outcome.structure.footings[1:-1] if footing.letter]
    moments = np.interp([footing.at for footing in inner], outcome.x, outcome.moment)
    return [(f.letter, shown(m, "moment", system)) for f, m in zip(inner, moments, strict=True)]
