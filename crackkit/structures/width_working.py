"""The working of the crack width rules, line by line as they print it."""

from collections.abc import Iterator

from crackkit.mechanics.crack_width import CrackWidth, with_numbers
from crackkit.structures.cracking import GOVERNING
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _

# unit as the rules print it -> key of the units table
_QUANTITY = {"MPa": "strength", "mm": "size", "mm2": "area", "-": "plain", "": "plain"}


def width_steps(answers: tuple[CrackWidth, ...], code: str) -> Iterator[WorkingStep]:
    """List the lines of several rules; the rule that belongs to the code family decides.

    Parameters
    ----------
    answers : tuple of CrackWidth
        The rules, each worked out for one crack.
    code : str
        Family of rules.
    """
    for answer in answers:
        mark = _("decides") if answer.rule == GOVERNING[code] else ""
        topic = _("Crack width: {rule}").format(rule=answer.name) + (f" ({mark})" if mark else "")
        yield from _lines(answer, topic)


def _lines(answer: CrackWidth, topic: str) -> Iterator[WorkingStep]:
    for step in answer.steps:
        formula = step.formula or ""
        numbers = with_numbers(formula, answer.values) if formula else ""
        clause = _clause(answer, step) if formula else step.clause
        quantity = "width" if step.symbol in ("w", "w_k") else _QUANTITY.get(step.unit, "plain")
        yield WorkingStep(step.symbol, formula, numbers, float(step.value), quantity, clause, topic)


def _clause(answer: CrackWidth, step) -> str:
    """Where a line stands: an equation is looked for in the clause of its rule."""
    if step.clause.startswith("Eq."):
        return f"{answer.clause} {step.clause}"
    return step.clause or answer.clause
