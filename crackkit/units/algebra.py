"""The algebra of units: how many inner units one unit of the trade holds.

Only words of the trade are let through. Left to itself a units library reads far too much into
a slip of the pen (``pli`` becomes a length of a picolink).
"""

import re
from functools import lru_cache

from crackkit.units.quantities import QUANTITIES

_WORDS = {
    "mm": "millimeter",
    "cm": "centimeter",
    "m": "meter",
    "metre": "meter",
    "metres": "meter",
    "meter": "meter",
    "meters": "meter",
    "in": "inch",
    "inch": "inch",
    "inches": "inch",
    '"': "inch",
    "''": "inch",
    "ft": "foot",
    "feet": "foot",
    "foot": "foot",
    "'": "foot",
    "yd": "yard",
    "yards": "yard",
    "km": "kilometer",
    "mile": "mile",
    "miles": "mile",
    "mph": "mile/hour",
    "kmh": "kilometer/hour",
    "kph": "kilometer/hour",
    "n": "newton",
    "kn": "kilonewton",
    "MN": "meganewton",
    "lbf": "force_pound",
    "kip": "kip",
    "kips": "kip",
    "k": "kip",
    "pa": "pascal",
    "kpa": "kilopascal",
    "mpa": "megapascal",
    "gpa": "gigapascal",
    "psi": "force_pound/inch**2",
    "ksi": "kip/inch**2",
    "pci": "force_pound/inch**3",
    "psf": "force_pound/foot**2",
    "ksf": "kip/foot**2",
    "plf": "force_pound/foot",
    "klf": "kip/foot",
    "kg": "kilogram",
    "g": "gram",
    "t": "metric_ton",
    "lb": "pound",
    "lbs": "pound",
    "‰": "permille",
    "%": "percent",
    "micro": "ppm",
    "microstrain": "ppm",
    "millionths": "ppm",
    "µε": "ppm",
    "με": "ppm",
    "°": "degree",
    "deg": "degree",
    "degree": "degree",
    "degrees": "degree",
    "rad": "radian",
    "°c": "delta_degree_Celsius",
    "c": "delta_degree_Celsius",
    "°f": "delta_degree_Fahrenheit",
    "f": "delta_degree_Fahrenheit",
    "s": "second",
    "h": "hour",
    "hour": "hour",
    "d": "day",
    "day": "day",
    "days": "day",
    "week": "week",
    "weeks": "week",
    "month": "common_month",
    "months": "common_month",
    "year": "common_year",  # of 365 days: ten years are 3650 days
    "years": "common_year",
}
_POWERS = str.maketrans("²³⁴", "234")
_TERM = re.compile(r"([^\W\d_]+|°[CFcf]?|‰|%|\"|'{1,2})([234]?)")
_SPELLED = [
    (re.compile(r"\b([kM]?N)m\b"), r"\1*m"),  # a moment as most people write it
    (re.compile(r"(?<=[a-z])-(?=[a-z])|[·⋅]", re.IGNORECASE), "*"),
    (re.compile(r" per "), "/"),
    (re.compile(r"(?:\^|\*\*)(?=[234])"), ""),
    (re.compile(r" ?([*/]) ?"), r"\1"),
    (re.compile(r"(?<=\w) (?=[a-z])", re.IGNORECASE), "*"),
]


_OURS = {'"': "in", "''": "in", "inch": "in", "inches": "in"} | {
    "'": "ft",
    "feet": "ft",
    "foot": "ft",
    "kips": "kip",
    "k": "kip",
}


class UnknownUnit(ValueError):
    """A unit that is not in the list of the trade's words."""


class WrongKind(ValueError):
    """A unit that measures something else."""


@lru_cache(maxsize=256)
def inner_factor(unit: str, quantity: str) -> float:
    """Give the number of inner units of a quantity in one unit as people spell it.

    Parameters
    ----------
    unit : str
        A unit such as ``kip/ft``, ``N/mm2``, ``lb per ft``, ``kip-ft``.
    quantity : str
        Key of the table of quantities.

    Raises
    ------
    UnknownUnit
        If a word of it is not known.
    WrongKind
        If it does not measure this quantity.
    """
    asked = QUANTITIES[quantity]
    known = _own_labels(asked.inner).get(_OURS.get(unit, unit))
    if known:
        return known
    # A pound on a structure is a force, a pound of steel on the scales is a mass.
    force = not quantity.startswith("mass")
    return _converted(_expression(unit, force), asked.inner)


@lru_cache(maxsize=32)
def _own_labels(inner: str) -> dict[str, float]:
    same = [q for q in QUANTITIES.values() if q.inner == inner]
    return {way.label: way.factor for q in same for way in (q.SI, q.US)}


def _expression(unit: str, force: bool) -> str:
    text = unit.translate(_POWERS)
    for pattern, written in _SPELLED:
        text = pattern.sub(written, text)
    return "".join(_spelled(part, force) for part in re.split(r"([*/])", text))


def _spelled(part: str, force: bool) -> str:
    if part in ("*", "/"):
        return part
    term = _TERM.fullmatch(part)
    word = term and (_WORDS.get(term[1]) or _WORDS.get(term[1].lower()))
    if not word:
        raise UnknownUnit(part)
    if word == "pound" and force:
        word = "force_pound"
    return f"({word})**{term[2] or 1}"


def _converted(expression: str, inner: str) -> float:
    import pint

    try:
        return float(_registry().Quantity(1.0, expression).m_as(inner))
    except pint.DimensionalityError:
        raise WrongKind(expression) from None


@lru_cache(maxsize=1)
def _registry():
    # Half a second to load: only when somebody types a unit that is not one of our own labels.
    import pint

    registry = pint.UnitRegistry()
    registry.define("common_month = common_year / 12")  # pint's own years have a leap day in four
    return registry
