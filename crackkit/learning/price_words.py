"""Prices as people write them: per kg or per lb, with two decimals or three digits."""

from crackkit.learning.prices import PriceError, PriceList, unit_price
from crackkit.units.display import digits
from crackkit.units.reading import UnitError, parse
from crackkit.words import _

DIGITS = 3  # that count in a small price


def shown_price(key: str, price: float, system: str) -> str:
    """Write a price for one unit of the system, such as ``2.20`` for each kg.

    Parameters
    ----------
    key : str
        What it is for.
    price : float
        [money per SI unit of its measure].
    system : str
        ``"SI"`` or ``"US"``.
    """
    value = price * unit_price(key).measure.size(system)
    return digits(value, _decimals(value))


def _decimals(value: float) -> int:
    if value == 0 or (value >= 100 and value == round(value)):
        return 0
    return next((n for n in range(2, 6) if value * 10**n >= 10 ** (DIGITS - 1)), 6)


def shown_amount(key: str, amount: float, system: str) -> str:
    """Write how much of a thing there is, in the unit that its price is for.

    Parameters
    ----------
    key : str
        What it is.
    amount : float
        [SI units of its measure].
    system : str
        ``"SI"`` or ``"US"``.
    """
    value = amount / unit_price(key).measure.size(system)
    return digits(value, 1 if value < 100 else 0)


def shown_money(amount: float) -> str:
    """Write an amount of money, in whole units from ten up."""
    return digits(amount, 0 if amount >= 10 or amount == 0 else 2)


def with_typed(prices: PriceList, key: str, text: str, system: str) -> PriceList:
    """Give a list with one price as it was typed.

    Parameters
    ----------
    prices : PriceList
    key : str
        Which price.
    text : str
        For one unit of the system, for instance ``"2.20"`` or ``"2,20"``.
    system : str
        ``"SI"`` or ``"US"``.

    Raises
    ------
    PriceError
        If it cannot be read, or cannot be a price.
    """
    priced = unit_price(key)
    size = priced.measure.size(system)
    try:
        value = parse(text, "ratio", system, field=priced.label) / size
    except UnitError as error:
        told = _("{label}: “{text}” {reason}. Write for example {example}.")
        example = shown_price(key, priced.usual, system)
        raise PriceError(
            key, told.format(label=priced.label, text=text, reason=error.reason, example=example)
        ) from None
    low, high = priced.range
    if not low <= value <= high:
        told = _("{label}: {text} is outside {low} to {high} for each {unit}.")
        ends = {"low": shown_price(key, low, system), "high": shown_price(key, high, system)}
        unit = priced.measure.label(system)
        raise PriceError(key, told.format(label=priced.label, text=text, unit=unit, **ends))
    return prices.changed(key, value)
