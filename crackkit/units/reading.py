"""Reading what people type: ``20'-6"``, ``1 1/2 in``, ``6,1 m``, ``900 plf``."""

import math
import re

from crackkit.units.algebra import UnknownUnit, WrongKind, inner_factor
from crackkit.units.display import tidy
from crackkit.units.quantities import FOOT, INCH, QUANTITIES, scale
from crackkit.words import _

_LONGEST = 60  # characters; nothing sensible is longer

_SPACES = re.compile(r"\s+")
_SIGNS = str.maketrans(
    {"\u2212": "-", "\u2013": "-", "′": "'", "’": "'", "‘": "'", "″": '"', "”": '"', "“": '"'}
    | {"\u2044": "/", "½": " 1/2", "¼": " 1/4", "¾": " 3/4"}
    | {"⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8"}
)
_DECIMAL = r"(?:\d{1,3}(?:[ ,]\d{3})+(?!\d)(?:\.\d+)?|\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][-+]?\d{1,3})?"
_NUMBER = rf"(?:(?:\d+[ -] ?)?\d+ ?/ ?\d+|{_DECIMAL})"
_AMOUNT = re.compile(rf"([-+]?) ?({_NUMBER}) ?(.*)")
_FEET_INCHES = re.compile(
    rf"([-+]?) ?({_NUMBER}) ?(?:'|ft|feet|foot) ?-? ?({_NUMBER}) ?(?:\"|''|in|inch|inches)",
    re.IGNORECASE,
)
_FRACTION = re.compile(r"(?:(\d+)[ -] ?)?(\d+) ?/ ?(\d+)")
_TWO_MEANINGS = re.compile(r"[1-9]\d{0,2},\d{3}")


class UnitError(ValueError):
    """A text that cannot be read as the quantity asked for.

    Attributes
    ----------
    field : str
        The label a reader sees.
    text : str
        What was typed.
    quantity : str
        Key of the table of quantities.
    reason : str
        What is wrong with the text, as a part of a sentence.
    """

    def __init__(self, field: str, text: str, quantity: str, reason: str, examples=()):
        self.field, self.text, self.quantity, self.reason = field, text, quantity, reason
        short = text if len(text) <= _LONGEST else text[:_LONGEST] + "…"
        examples = examples or QUANTITIES[quantity].examples
        sentence = _("{field}: “{text}” {reason}. Write for example {examples}.")
        super().__init__(
            sentence.format(
                field=field, text=short, reason=reason, examples=_(" or ").join(examples)
            )
        )


def parse(
    text: str | float, quantity: str, system: str | None = None, field: str | None = None
) -> float:
    """Read a text such as ``20 ft`` and give its value in inner units.

    Parameters
    ----------
    text : str or float
        Number and unit. Fractions (``1 1/2 in``), feet and inches (``20'-6"``), a decimal comma
        (``6,1 m``) and a minus are understood.
    quantity : str
        Key of the table of quantities.
    system : str, optional
        ``"SI"`` or ``"US"``: a number without a unit is then read in the unit of this system.
        Without it such a number is an error, except for counts and ratios.
    field : str, optional
        Label for the message, the name of the quantity where none is given.

    Returns
    -------
    float
        Value in the inner unit of the quantity [N, mm, MPa].

    Raises
    ------
    UnitError
        If the text cannot be read as this quantity.
    """
    field = field or QUANTITIES[quantity].name.capitalize()
    try:
        return _value(plain(str(text)), quantity, system)
    except _Unreadable as unreadable:
        raise UnitError(field, str(text), quantity, str(unreadable)) from None


def plain(text: str) -> str:
    """Give the text with plain spaces, signs, quotes and fractions."""
    return _SPACES.sub(" ", text.translate(_SIGNS)).strip()


class _Unreadable(ValueError):
    """The reason why a text cannot be read, as a part of a sentence."""


def _value(text: str, quantity: str, system: str | None) -> float:
    if not text:
        raise _Unreadable(_("is empty"))
    if len(text) > _LONGEST:
        raise _Unreadable(_("is too long"))
    both = _FEET_INCHES.fullmatch(text)
    if both and QUANTITIES[quantity].inner == "mm":
        return _signed(both[1], _amount(both[2]) * FOOT + _amount(both[3]) * INCH)
    match = _AMOUNT.fullmatch(text)
    if not match:
        raise _Unreadable(_("does not begin with a number"))
    factor = _factor(match[3], quantity, system)
    return _signed(match[1], _amount(match[2]) * factor, _zero(factor, quantity))


def _zero(factor: float, quantity: str) -> float:
    """Where the scale with this factor begins [inner units]: a thermometer's 0 is not nothing."""
    both = QUANTITIES[quantity].SI, QUANTITIES[quantity].US
    return next((way.zero for way in both if math.isclose(way.factor, factor)), 0.0)


def _signed(sign: str, value: float, zero: float = 0.0) -> float:
    if not math.isfinite(value):
        raise _Unreadable(_("is too large"))
    return tidy((-value if sign == "-" else value) + zero)


def _amount(text: str) -> float:
    fraction = _FRACTION.fullmatch(text)
    if not fraction:
        return float(_with_point(text))
    whole, over, under = fraction.groups(default="0")
    if int(under) == 0:
        raise _Unreadable(_("divides by zero"))
    return int(whole) + int(over) / int(under)


def _with_point(text: str) -> str:
    # "4,000 psi" is 4000 to one reader and 4.000 to another; a guess could cost a factor of 1000.
    if _TWO_MEANINGS.fullmatch(text):
        both = text.replace(",", ""), text.replace(",", ".")
        raise _Unreadable(_("could mean {} or {}; write it without a comma").format(*both))
    text = text.replace(" ", "")
    grouped = text.count(",") > 1 or "." in text
    return text.replace(",", "" if grouped else ".")


def _factor(unit: str, quantity: str, system: str | None) -> float:
    if not unit:
        return _bare_factor(quantity, system)
    try:
        return inner_factor(unit, quantity)
    except UnknownUnit:
        raise _Unreadable(_("has an unknown unit, {}").format(unit)) from None
    except WrongKind:
        reason = _("has the unit {unit}, which does not measure {name}")
        name = QUANTITIES[quantity].name
        raise _Unreadable(reason.format(unit=unit, name=name)) from None


def _bare_factor(quantity: str, system: str | None) -> float:
    if system is not None:
        return scale(quantity, system).factor
    if quantity in ("count", "ratio"):
        return 1.0
    raise _Unreadable(_("has no unit"))
