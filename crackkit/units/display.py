"""Inner values shown to people, and display numbers brought back inside."""

import math
from functools import lru_cache

from crackkit.units.quantities import scale

# The narrow no-break space keeps number and unit on one line.
THIN = "\u202f"
MINUS = "\u2212"


def number(value: float, quantity: str, system: str) -> float:
    """Give a value in display units.

    Parameters
    ----------
    value : float
        Value in the inner unit of the quantity [N, mm, MPa].
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"`` or ``"US"``.
    """
    way = scale(quantity, system)
    return (value - way.zero) / way.factor


def inner(
    number: float,
    quantity: str,
    system: str,
    low: float = -math.inf,
    high: float = math.inf,
) -> float:
    """Give a display number in inner units, without falling off the end of a range by rounding.

    A value beyond `low` or `high` by no more than one part in 10⁹, of the end or of the whole
    range, is put on the end; one that is truly outside is left there, so that whoever checks it
    can say so.

    Parameters
    ----------
    number : float
        Number in the display unit of the system.
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"`` or ``"US"``.
    low, high : float
        Ends of the allowed range in the inner unit [N, mm, MPa].
    """
    way = scale(quantity, system)
    value = tidy(number * way.factor + way.zero)
    reach = high - low
    hair = 1e-9 * reach if math.isfinite(reach) else 1e-12
    if value < low and math.isclose(value, low, rel_tol=1e-9, abs_tol=hair):
        return low
    if value > high and math.isclose(value, high, rel_tol=1e-9, abs_tol=hair):
        return high
    return value


def tidy(value: float) -> float:
    """Cut a product at fourteen digits, so that 1.5 in is 38.1 mm and not 38.099999999999994."""
    return float(f"{value:.14g}")


def unit(quantity: str, system: str) -> str:
    """Give the label of the unit, empty for counts and ratios."""
    return scale(quantity, system).label


@lru_cache(maxsize=4096)  # most values of a step are those of the one before it
def shown(value: float, quantity: str, system: str) -> str:
    """Write a value with its unit, such as ``6.10 m`` or ``20.0 ft``.

    Parameters
    ----------
    value : float
        Value in the inner unit of the quantity [N, mm, MPa]; infinity is
        written ∞, and a value that is not a number as a dash.
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"`` or ``"US"``.
    """
    way = scale(quantity, system)
    if value != value:
        return "—"
    return joined(digits((value - way.zero) / way.factor, way.decimals), way.label)


def digits(number: float, decimals: int) -> str:
    """Write a number with fixed decimals [-], a true minus and thin spaces from 10 000 up."""
    if not math.isfinite(number):
        return "∞" if number > 0 else f"{MINUS}∞"
    # Adding zero turns a rounded -0.0 into 0.0.
    text = f"{round(number, decimals) + 0.0:.{decimals}f}"
    if number <= -10_000 or number >= 9_999:
        text = _grouped(text)
    return text.replace("-", MINUS) if text[0] == "-" else text


def _grouped(text: str) -> str:
    whole, dot, rest = text.partition(".")
    if len(whole.lstrip("-")) < 5:
        return text
    return f"{int(whole):,}".replace(",", THIN) + dot + rest


def joined(text: str, label: str) -> str:
    """Put a number and its unit together; a degree sign stands close to its number."""
    if not label:
        return text
    return text + label if label == "°" else f"{text}{THIN}{label}"
