"""Numbers on paper, written to a tenth: there are so few of them that they are looked up."""

from functools import cache
from operator import itemgetter

import numpy as np

MOST = 1400.0  # larger numbers are written one by one, as are those below nothing
FEW = 24  # numbers that are sooner written than looked up
_COUNT = round(10 * MOST) + 1


def tenths(numbers: np.ndarray, signs: tuple[str, ...]) -> str:
    """Write numbers one after the other, each with its sign before it.

    Parameters
    ----------
    numbers : ndarray
        Of any shape, at least two of them.
    signs : tuple of str
        What stands before the first number, the second and so on; then over again.

    Returns
    -------
    str
        For instance `` 1.0,2.0 3.0,4.0`` with the signs ``(" ", ",")``.
    """
    if numbers.size <= FEW:
        return _template(signs, numbers.size) % tuple(numbers.ravel().tolist())
    steps = np.rint(10.0 * numbers).astype(np.int64)
    if steps.min() < 0 or steps.max() >= _COUNT:
        return _template(signs, numbers.size) % tuple(numbers.ravel().tolist())
    rows = steps.reshape(-1, len(signs)) + _starts(signs)
    return "".join(itemgetter(*rows.ravel().tolist())(_written(signs)))


@cache
def _template(signs: tuple[str, ...], count: int) -> str:
    """One formatting call for all the numbers of a shape instead of one for each point."""
    return "".join([f"{sign}%.1f" for sign in signs]) * (count // len(signs))


@cache
def _written(signs: tuple[str, ...]) -> list[str]:
    """All numbers with all the signs, those of one sign after those of another."""
    return [sign + text for sign in dict.fromkeys(signs) for text in _plain()]


@cache
def _plain() -> list[str]:
    return [f"{k / 10:.1f}" for k in range(_COUNT)]


@cache
def _starts(signs: tuple[str, ...]) -> np.ndarray:
    """Where in that list the numbers begin that go with each sign."""
    different = list(dict.fromkeys(signs))
    return np.array([different.index(sign) * _COUNT for sign in signs])
