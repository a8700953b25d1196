"""A reader with a pocket calculator: works out what a working shows, with the numbers shown."""

import math
import re
from typing import NamedTuple

from crackkit.units import QUANTITIES

LETTER = re.compile(r"[A-Za-z]\w*")
WORDS = {"sqrt": math.sqrt, "exp": math.exp, "ln": math.log, "min": min, "max": max, "pi": math.pi}
UNITS = {
    way.label: way.factor for each in QUANTITIES.values() for way in (each.US, each.SI) if way.label
}
UNITS |= {"": 1.0, "N/mm": 1.0, "N/mm³": 1.0, "%": 1.0, "d": 1.0}
PLACES = 4  # digits of a number that is put in
MOST = 5  # digits that a value has; zeros fill up the rest


class Read(NamedTuple):
    """A value as it is read: in N, mm, MPa, and half of its last digit."""

    value: float
    half: float


def formula_of(row) -> str:
    """The formula of a row without the words before it, as Python writes it."""
    return _plain(row.formula.rsplit(": ", 1)[-1])


def letters_of(row) -> list[str]:
    """The letters that a formula asks for, in their order, as often as they stand there."""
    return [name for name in LETTER.findall(formula_of(row)) if name not in WORDS]


def put_in(row) -> list[float]:
    """The numbers that stand in the place of these letters."""
    parts = re.split(LETTER, formula_of(row))
    names = LETTER.findall(formula_of(row))
    pattern = re.escape(parts[0])
    for name, part in zip(names, parts[1:], strict=True):
        pattern += re.escape(name) if name in WORDS else r"\(?(-?[\d.]+)\)?"
        pattern += re.escape(part)
    found = re.fullmatch(pattern, _plain(row.numbers))
    assert found, (row.symbol, formula_of(row), row.numbers)
    return [float(each) for each in found.groups()]


def worked_out(row) -> Read:
    """What the formula gives, and how far the digits that the numbers lack could shift it."""
    numbers = dict(zip(letters_of(row), put_in(row), strict=True))
    result = _evaluated(row, numbers)
    shifts = [_shift(row, numbers, name, result) for name, x in numbers.items() if x]
    return Read(result, sum(shifts))


def _shift(row, numbers: dict, name: str, result: float) -> float:
    """How far the digits that one number lacks could shift the result, where a formula has one."""
    x = numbers[name]
    near = [_evaluated(row, numbers | {name: x + d}) for d in (half_of(x), -half_of(x))]
    return max(abs(each - result) for each in near if not math.isnan(each))


def values_of(row) -> list[Read]:
    """The values of a row: in the units of the formula, then in those of the reader."""
    return [_read(text) for text in row.value.split(" = ")]


def _evaluated(row, numbers: dict) -> float:
    """What a formula gives; not a number where it asks for a root of less than nothing."""
    found = eval(formula_of(row), {"__builtins__": {}}, WORDS | numbers)
    return math.nan if isinstance(found, complex) else float(found)


def half_of(number: float) -> float:
    """Half of the last digit of a number that was put in with four digits."""
    if not number:
        return 0.0
    above = math.floor(math.log10(abs(number))) + 1
    return 0.5 * 10.0 ** min(above - PLACES, 0)


def _read(text: str) -> Read:
    text = text.replace("\u2212", "-")
    number, unit = re.fullmatch(r"(-?[\d\u202f]*\.?\d+)[\s\u202f]*(.*)", text).groups()
    number = number.replace("\u202f", "")
    whole, _dot, decimals = number.lstrip("-").partition(".")
    last = -len(decimals) if decimals else max(len(whole) - MOST, 0)  # 1 207 200 has five digits
    factor = UNITS[unit]
    return Read(float(number) * factor, 0.5 * 10.0**last * factor)


def _plain(text: str) -> str:
    return text.replace(" × ", "*").replace("^", "**")
