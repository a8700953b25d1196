"""A guided walk: a few small changes, each followed by the question what happened."""

from dataclasses import dataclass

from crackkit.structures.outcome import Outcome
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


def change_told(before: Outcome, after: Outcome, system: str) -> str:
    """Say in numbers what a step changed: widest crack, pull, strength to spare, movement."""
    rows = [
        (_("widest crack"), _width(before, system), _width(after, system)),
        (_("pull in the bars"), _pull(before, system), _pull(after, system)),
        (_("gives way at"), _strength(before), _strength(after)),
        (_("moves at most"), _movement(before, system), _movement(after, system)),
    ]
    told = [f"{name}: {a} → {b}" for name, a, b in rows if a != b]
    return "; ".join(told) if told else _("No number changed.")


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
