"""What a width rule answers: the width, and the steps that led to it."""

import re
from dataclasses import dataclass
from functools import cached_property

import numpy as np


@dataclass(frozen=True)
class Line:
    """One line of a rule as the code prints it, before any number is put in.

    Formulas are plain arithmetic in the symbols of the lines above them (``**`` is a power), so
    that they can be printed, handed to a symbolic package, or worked out again. A line without
    a formula is an input or a constant of the rule.

    Parameters
    ----------
    symbol, formula : str
        What is worked out, and how.
    unit : str
        Unit of the result.
    clause : str
        Where the formula stands.
    """

    symbol: str
    formula: str
    unit: str
    clause: str


@dataclass(frozen=True)
class Step:
    """One line of a rule with its value.

    Parameters
    ----------
    symbol, formula : str
        What is worked out, and how.
    value : float or ndarray
        The result, in the unit named beside it [-].
    unit : str
        Unit of the result.
    clause : str
        Where the formula stands.
    """

    symbol: str
    formula: str
    value: float | np.ndarray
    unit: str
    clause: str


@dataclass(frozen=True)
class CrackWidth:
    """The crack width by one published rule.

    Parameters
    ----------
    rule : str
        The rule, as its function is called.
    name : str
        The rule, as people call it.
    source : str
        Key in the bibliography.
    clause : str
        Where in the source.
    width : float or ndarray
        Crack width at the stretched face [mm].
    spacing : float or ndarray or None
        Largest crack spacing by the rule; None where the rule has none [mm].
    strain : float or ndarray or None
        Mean strain of steel less that of concrete; None where the rule has none [-].
    lines : tuple of Line
        The rule line by line.
    numbers : tuple
        The value of each line, in the same order; units as in the lines [-].
    """

    rule: str
    name: str
    source: str
    clause: str
    width: float | np.ndarray
    spacing: float | np.ndarray | None
    strain: float | np.ndarray | None
    lines: tuple[Line, ...]
    numbers: tuple

    @cached_property
    def steps(self) -> tuple[Step, ...]:
        """The whole working, input by input and line by line."""
        pairs = zip(self.lines, self.numbers, strict=True)
        return tuple(Step(n.symbol, n.formula, v, n.unit, n.clause) for n, v in pairs)

    @cached_property
    def values(self) -> dict:
        """The value of each symbol of the working."""
        symbols = (line.symbol for line in self.lines)
        return dict(zip(symbols, self.numbers, strict=True))


def with_numbers(formula: str, values: dict) -> str:
    """Put numbers in place of the symbols of a formula.

    Parameters
    ----------
    formula : str
        Arithmetic in the symbols of a working.
    values : dict
        The value of each symbol; one number each, not arrays.

    Returns
    -------
    str
        The formula with four significant digits for each symbol it names.
    """
    return re.sub(
        r"[A-Za-z]\w*",
        lambda m: f"{values[m.group()]:.4g}" if m.group() in values else m.group(),
        formula,
    )
