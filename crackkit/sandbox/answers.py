"""The four questions, answered in sentences."""

from crackkit.drawing.verdict_card import VERDICTS
from crackkit.sandbox.kinds import kind_of
from crackkit.words import _

SIGNS = {"good": "✓", "warn": "!", "bad": "✗"}


def verdict_words(outcome) -> str:
    """Say the verdict with its sign."""
    word, colour = VERDICTS[outcome.verdict.key]
    return f"{SIGNS[colour]} {word}"


def answers(outcome, system: str) -> tuple[tuple[str, str], ...]:
    """Give the four questions with their answers.

    Parameters
    ----------
    outcome : Outcome
    system : str
        ``"SI"`` or ``"US"``.
    """
    told = kind_of(outcome)
    return (
        (_("How does it move?"), told.moves(outcome, system)),
        (_("Where is it stretched?"), told.stretched(outcome, system)),
        (_("Where will it crack?"), told.cracked(outcome, system)),
        (_("What holds the cracks, and is it tight enough?"), told.held(outcome, system)),
    )


def judged_width(outcome):
    """Give the widths of the crack that decides, and what the rules say.

    None without a crack, and where the bars do not hold it.
    """
    return kind_of(outcome).widths(outcome)
