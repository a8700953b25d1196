"""Ages in words that people use: days at first, then months, then years."""

from crackkit.words import _

YEAR, MONTH = 365.0, 365.0 / 12.0  # days
LEAST_YEARS = 2.0  # from which months are no longer counted


def age_words(days: float) -> str:
    """Say how old: ``55 days``, ``14 months``, ``2 years``.

    Parameters
    ----------
    days : float
        Age [days].
    """
    if days < YEAR - 0.5:
        return _one_or_many(_tidy(days), _("{n} day"), _("{n} days"))
    if days < LEAST_YEARS * YEAR - MONTH / 2 and round(days / MONTH) != 12:
        return _("{n} months").format(n=round(days / MONTH))
    return _one_or_many(f"{days / YEAR:.1f}".removesuffix(".0"), _("{n} year"), _("{n} years"))


def day_words(days: float) -> str:
    """Say when, in few letters: ``day 55``, ``1.2 y``.

    Parameters
    ----------
    days : float
        Age [days].
    """
    if days < YEAR - 0.5:
        return _("day {n}").format(n=_tidy(days))
    return _("{n} y").format(n=f"{days / YEAR:.1f}".removesuffix(".0"))


def _tidy(days: float) -> str:
    """Whole days, and tenths only where there are but a few."""
    return f"{days:.1f}".removesuffix(".0") if days < 5.0 else f"{days:.0f}"


def _one_or_many(number: str, one: str, many: str) -> str:
    return (one if number == "1" else many).format(n=number)
