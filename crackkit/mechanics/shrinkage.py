"""How much a slab would shorten if nothing held it, by the code of one's choice.

The three codes differ by tens of per cent for the same slab: keep to one of them.
"""

from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.shrinkage_aci import (
    curing_factor,
    drying_moist,
    end_value,
    size_factor,
    slump_factor,
)
from crackkit.mechanics.shrinkage_en import shrinkage_en
from crackkit.mechanics.shrinkage_mc2010 import shrinkage_mc2010
from crackkit.mechanics.shrinkage_strain import Shrinkage, days_dried
from crackkit.words import _


def free_shrinkage(ages, slab: DryingSlab, code):
    """Shrinkage of a slab that is free to move, its mean over the thickness.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, 0 or more [days].
    slab : DryingSlab
        The slab, its air and its curing.
    code : str
        "ACI" (ACI 209R-92; moist curing, the mix standard but for its slump), "EN"
        (EN 1992-1-1:2004) or "MC2010" (fib Model Code 2010); all from memory.

    Returns
    -------
    Shrinkage
        Shortening is positive; nothing dries before the end of curing.

    Raises
    ------
    ValueError
        If the code is not known.
    """
    if code not in _CODES:
        message = _("The code must be ACI, EN or MC2010, not {code}.")
        raise ValueError(message.format(code=code))
    return _CODES[code](ages, slab)


def _aci(ages, slab):
    size, curing = size_factor(slab.volume_surface), curing_factor(slab.curing_days)
    end = end_value(slab.humidity, size, curing, slump_factor(slab.slump))
    drying = drying_moist(days_dried(ages, slab.curing_days), end)
    return Shrinkage(drying=drying, basic=0.0 * drying)


def _en(ages, slab):
    return shrinkage_en(ages, slab.strength, *_conditions(slab))


def _mc2010(ages, slab):
    return shrinkage_mc2010(ages, slab.mean_strength, *_conditions(slab))


def _conditions(slab):
    return slab.humidity, slab.notional_size, slab.curing_days, slab.cement_class


_CODES = {"ACI": _aci, "EN": _en, "MC2010": _mc2010}
