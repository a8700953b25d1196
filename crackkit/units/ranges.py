"""Ranges in the reader's units: what a slider may reach, and what to say about a value outside."""

import math
from functools import lru_cache

from crackkit.units.display import digits, joined, tidy
from crackkit.units.quantities import QUANTITIES, scale
from crackkit.words import _

_FINER = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)
_LADDER = (0.1, 0.2, 0.5, 1, 2, 4, 5, 10, 20, 25, 40, 50, 100)
_FEWEST = 4  # steps a slider must have to be of any use


@lru_cache(maxsize=1024)  # most ranges stay the same from step to step
def slider_range(
    low: float, high: float, quantity: str, system: str, step: float | None = None
) -> tuple[float, float, float]:
    """Give the ends and the step of a slider so that each position is inside the range.

    Parameters
    ----------
    low, high : float
        Ends of the allowed range in the inner unit [N, mm, MPa].
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"`` or ``"US"``.
    step : float, optional
        Wished step in the inner unit [N, mm, MPa]; the nearest handy one is taken. Without it
        the step of the table counts.

    Returns
    -------
    tuple of float
        First position, last position and step, in display units. The ends are moved inward to
        whole steps; the step is made finer where the range holds fewer than four.
    """
    way = scale(quantity, system)
    a, b = (low - way.zero) / way.factor, (high - way.zero) / way.factor
    if not b > a:
        return a, a, way.step
    h = way.step if step is None else _handy(step / way.factor, way.step)
    if quantity != "count":
        h = _fine_enough(h, b - a)
    first, last = math.ceil(a / h - 1e-9), math.floor(b / h + 1e-9)
    return tidy(first * h), tidy(last * h), tidy(h)


def _handy(wished: float, usual: float) -> float:
    nearest = min(_LADDER, key=lambda k: abs(math.log(k * usual / wished)))
    return nearest * usual


def _fine_enough(step: float, extent: float) -> float:
    finer = (step / k for k in _FINER if extent >= _FEWEST * step / k * (1 - 1e-9))
    return next(finer, extent / _FEWEST)


def explain(error, system: str) -> str:
    """Say in the reader's units what is wrong with an input.

    Parameters
    ----------
    error : Exception
        An error with the attributes field, value, low, high, quantity and perhaps choices, the
        values in inner units.
    system : str
        ``"SI"`` or ``"US"``.
    """
    if getattr(error, "choices", ()):
        return _choice_sentence(error)
    if not _is_number(error.value):
        return _("{field}: {value} is not a number.").format(field=error.field, value=error.value)
    return _range_sentence(error, system)


def _is_number(value) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool) and value == value


def _choice_sentence(error) -> str:
    if error.quantity == "switch":
        return _("{field}: say yes or no, not {value}.").format(
            field=error.field, value=error.value
        )
    return _("{field}: {value} is not one of {allowed}.").format(
        field=error.field, value=error.value, allowed=", ".join(str(c) for c in error.choices)
    )


def _range_sentence(error, system: str) -> str:
    quantity = error.quantity if error.quantity in QUANTITIES else "ratio"
    value, low, high = _told_apart((error.value, error.low, error.high), quantity, system)
    if error.low is None and error.high is None:
        text = _("{field}: {value} is not allowed.")
    elif error.high is None:
        text = _("{field}: {value} is below {low}.")
    elif error.low is None:
        text = _("{field}: {value} is above {high}.")
    else:
        text = _("{field}: {value} is outside {low} to {high}.")
        low = low if quantity == "angle" else low.removesuffix(scale(quantity, system).label)
    return text.format(field=error.field, value=value, low=low.strip(), high=high)


def _told_apart(values, quantity: str, system: str) -> list[str]:
    """Write value, low and high with as many decimals as it takes to see the difference."""
    way = scale(quantity, system)
    for more in range(6):
        texts = [_fixed(v, way, way.decimals + more) for v in values]
        if texts[0] not in texts[1:]:
            break
    return texts


def _fixed(value, way, decimals: int) -> str:
    if value is None:
        return ""
    return joined(digits((value - way.zero) / way.factor, decimals), way.label)
