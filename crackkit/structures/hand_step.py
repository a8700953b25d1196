"""One line of a working that can be checked by hand: what, formula, numbers put in, result."""

import math
import re
from collections.abc import Iterable, Iterator
from dataclasses import replace

from crackkit.structures.outcome import WorkingStep

DIGITS = 4  # of a number that is put into a formula


def by_hand(
    symbol: str,
    what: str,
    formula: str,
    given: dict,
    value: float | str,
    quantity: str,
    clause: str = "",
) -> WorkingStep:
    """Make a step whose formula shows the numbers that were put in.

    Parameters
    ----------
    symbol, what : str
        The letter, and what it stands for in plain words.
    formula : str
        Arithmetic in letters of `given`, as Python writes it; empty for what is given.
    given : dict
        The number of each letter [N, mm, MPa]; letters that do not occur do not matter.
    value : float or str
        The result by the mechanics, not by the formula, so that each checks the other.
    quantity, clause : str
        As in WorkingStep.
    """
    if not formula:
        return WorkingStep(symbol, what, "", value, quantity, clause)
    told = f"{what}: {formula}" if what else formula
    return WorkingStep(symbol, told, put_in(formula, given), value, quantity, clause)


def put_in(formula: str, given: dict) -> str:
    """Write a formula with numbers in the place of its letters."""
    return re.sub(
        r"[A-Za-z]\w*",
        lambda m: written(given[m.group()]) if m.group() in given else m.group(),
        formula,
    )


def written(number: float) -> str:
    """Write a number with four digits, without powers of ten: 12256, 0.2777, 0.00002777."""
    if not number:
        return "0"
    above = math.floor(math.log10(abs(number))) + 1
    text = f"{number:.{max(DIGITS - above, 0)}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return f"({text})" if number < 0 else text


def under(topic: str, steps: Iterable[WorkingStep]) -> Iterator[WorkingStep]:
    """Put steps under a heading."""
    return (replace(step, topic=topic) for step in steps)
