"""The working as rows of words: symbol, formula, numbers put in, value with unit, clause."""

import math
from decimal import Decimal
from itertools import groupby
from typing import NamedTuple

from crackkit.sandbox import markup
from crackkit.units import QUANTITIES, SI, shown
from crackkit.units.display import digits
from crackkit.words import _

# The formulas are evaluated in N, mm, MPa whatever the answers are shown in.
MOST = 5  # digits of a value
LEAST = 3  # digits that count, however small it is
NOTE = _("Numbers are put into the formulas in N, mm and MPa, unless a heading names other units.")


class Row(NamedTuple):
    """One step of the working, ready to be shown."""

    topic: str
    symbol: str
    formula: str
    numbers: str
    value: str
    clause: str


class Working(tuple):
    """All rows; in a notebook a table under a heading for each topic."""

    def _repr_html_(self) -> str:
        return markup.paragraph(NOTE) + "".join(
            markup.heading(topic) + table(rows) for topic, rows in by_topic(self)
        )

    def __repr__(self) -> str:
        lines = []
        for topic, rows in by_topic(self):
            lines += ["", topic]
            lines += [f"  {row.symbol} = {_chain(row)}  {row.clause}".rstrip() for row in rows]
        return "\n".join([NOTE, *lines])


def _chain(row: Row) -> str:
    return " = ".join(part for part in (row.formula, row.numbers, row.value) if part)


def by_topic(rows) -> list[tuple[str, list[Row]]]:
    """Give the rows topic by topic."""
    return [(topic, list(group)) for topic, group in groupby(rows, key=lambda row: row.topic)]


def table(rows) -> str:
    """Make the table of one topic; a column in which nothing stands is left out."""
    heads = (_("symbol"), _("formula"), _("numbers put in"), _("value"), _("clause"))
    columns = zip(heads, zip(*(row[1:] for row in rows), strict=True), strict=True)
    kept = [(head, texts) for head, texts in columns if any(texts)]
    return markup.table([head for head, _texts in kept], zip(*(t for _h, t in kept), strict=True))


def working(outcome, system: str) -> Working:
    """Give the steps from the loads to the crack width.

    Parameters
    ----------
    outcome : Outcome
    system : str
        ``"SI"`` or ``"US"``.
    """
    return Working(_row(step, system) for step in outcome.working)


def _row(step, system: str) -> Row:
    value = _value(step, system)
    formula, numbers = as_written(step.formula), as_written(step.numbers)
    return Row(step.topic, step.symbol, formula, numbers, value, step.clause)


def as_written(formula: str) -> str:
    """Write a formula with the signs of a hand calculation instead of those of a program."""
    return formula.replace("**", "^").replace("*", " × ")


def _value(step, system: str) -> str:
    if isinstance(step.value, str):
        return step.value
    if step.quantity not in QUANTITIES:
        return f"{Decimal(f'{step.value:.4g}'):f}"  # no powers of ten, as people write it
    here = _precise(step, system)
    if system == SI or here == _precise(step, SI):
        return here
    # as it goes into the formulas, so that they can be checked, then in the reader's units
    return f"{_precise(step, SI)} = {here}"


def _precise(step, system: str) -> str:
    """Write a value with three or four digits: enough to follow a calculation by hand."""
    way = getattr(QUANTITIES[step.quantity], system)
    number = (step.value - way.zero) / way.factor
    if not number:
        return shown(step.value, step.quantity, system)
    whole = len(str(int(abs(number))))
    if whole > MOST:  # no more than is known: a modulus of millions of psi is none to the pound
        number = round(number, MOST - whole)
    least = LEAST - 1 - math.floor(math.log10(abs(number)))
    decimals = max(min(way.decimals, MOST - whole), 4 - whole, least, 0)
    return f"{digits(number, decimals)}\u202f{way.label}".rstrip("\u202f")
