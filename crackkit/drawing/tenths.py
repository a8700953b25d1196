"""Numbers on paper, written to a tenth: few as they are, many as steps from point to point."""

from functools import cache

import numpy as np

FEW = 24  # numbers that are sooner written one by one
_BEGINS = 10**9  # added to the first number of a piece, which has a sign of its own


def tenths(numbers: np.ndarray, signs: tuple[str, ...]) -> str:
    """Write numbers one after the other, each with its sign before it.

    Parameters
    ----------
    numbers : ndarray
        Of any shape; as many as there are signs, or a multiple.
    signs : tuple of str
        What stands before the first number, the second and so on; then over again.

    Returns
    -------
    str
        For instance `` 1.0,2.0 3.0,4.0`` with the signs ``(" ", ",")``.
    """
    return _template(signs, numbers.size) % tuple(numbers.ravel().tolist())


@cache
def _template(signs: tuple[str, ...], count: int) -> str:
    """One formatting call for all the numbers of a shape instead of one for each point."""
    return "".join([f"{sign}%.1f" for sign in signs]) * (count // len(signs))


def steps(pieces: np.ndarray, closed: bool = False) -> str:
    """Write the path along many points as steps from each to the next.

    Steps are shorter to write than places, and so few are different that they are looked up.
    Places are rounded before they are taken apart, so that no error adds up.

    Parameters
    ----------
    pieces : ndarray, shape (pieces, points, 2)
        Points on the paper; each piece is a stroke of its own.
    closed : bool
        Whether each piece ends where it began.

    Returns
    -------
    str
        For instance ``M0 0m1 2 3-.5`` from (1, 2) to (4, 1.5).
    """
    places = np.rint(10.0 * pieces).astype(np.int64)
    moves = places.copy()
    moves[:, 1:] -= places[:, :-1]
    moves[1:, 0] -= places[:-1, 0 if closed else -1]
    moves[:, 0, 0] += _BEGINS
    text = "".join(map(_WRITTEN[closed].__getitem__, moves.ravel().tolist()))
    return f"M0 0{text[1:]}z" if closed else f"M0 0{text}"


class _Written(dict):
    """Text of each number of tenths, written when it is first asked for."""

    def __init__(self, begin: str):
        super().__init__()
        self.begin = begin

    def __missing__(self, tenths: int) -> str:
        if tenths > _BEGINS // 2:
            text = self.begin + _plain(tenths - _BEGINS).lstrip()
        else:
            text = _plain(tenths)
        self[tenths] = text
        return text


def _plain(tenths: int) -> str:
    """Write tenths as short as can be, the sign or a space before them."""
    whole, rest = divmod(abs(tenths), 10)
    sign = "-" if tenths < 0 else " "
    return f"{sign}{whole or ''}.{rest}" if rest else f"{sign}{whole}"


# a piece that is closed ends with the beginning of the next one
_WRITTEN = {False: _Written("m"), True: _Written("zm")}
