"""Several rules side by side: an honest width is a band."""

import numpy as np

from crackkit.mechanics.crack_width.bs_8007 import bs_8007
from crackkit.mechanics.crack_width.bs_8110 import bs_8110
from crackkit.mechanics.crack_width.en_2004 import en_2004
from crackkit.mechanics.crack_width.en_2023 import en_2023
from crackkit.mechanics.crack_width.frosch import frosch
from crackkit.mechanics.crack_width.gergely_lutz import gergely_lutz
from crackkit.mechanics.crack_width.model_code_2010 import model_code_2010

FAMILIES = {
    "ACI": (gergely_lutz, frosch),
    "EN": (en_2004, en_2023, model_code_2010),
    "BS": (bs_8007, bs_8110),
}
# The British standards share one form. BS 8110 speaks for both in bending; direct tension is
# worked out in BS 8007 only. One answer must not count twice in the band.
_ECHOES = {"bending": (bs_8007,), "tension": (bs_8110,)}


def all_widths(zone, code=None):
    """Give the width by every rule that has an answer of its own, or by those of one family.

    BS 8007, for 0.2 mm, says the same as BS 8110: of the two the first answers in direct tension
    and the second in bending.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.
    code : {"ACI", "EN", "BS"}, optional
        Family of rules; all of them where none is named.

    Returns
    -------
    tuple of CrackWidth
        One answer for each rule, widths in [mm].

    Raises
    ------
    KeyError
        Where the family is unknown.

    Notes
    -----
    ACI224R-01, FROSCH1999, EN1992-1-1-2004, EN1992-1-1-2023, MC2010, BS8007-1987,
    BS8110-2-1985.
    """
    families = FAMILIES.values() if code is None else (FAMILIES[code],)
    echoes = _ECHOES[zone.action]
    return tuple(rule(zone) for family in families for rule in family if rule not in echoes)


def band(widths):
    """Give the narrowest, the middle and the widest of several answers.

    Parameters
    ----------
    widths : sequence of CrackWidth
        Answers of several rules for one zone, widths in [mm].

    Returns
    -------
    tuple
        Low, median and high width, each a float or an array [mm].

    Notes
    -----
    Common practice: no rule is right to better than half its value.
    """
    return spread(np.stack(np.broadcast_arrays(*(each.width for each in widths))))


def spread(rows):
    """Give the least, the middle and the greatest of each column.

    Parameters
    ----------
    rows : numpy.ndarray
        Widths by one rule in each row [mm], shape (rules, ...).

    Returns
    -------
    tuple
        Least, median and greatest, each of the shape of a row [mm].
    """
    rows = np.sort(rows, axis=0)
    n = len(rows)
    middle = 0.5 * (rows[(n - 1) // 2] + rows[n // 2])
    return rows[0], middle, rows[-1]
