"""How far concrete gives way under a stress that stays, by the code of one's choice."""

from crackkit.mechanics import creep_aci
from crackkit.mechanics.creep_en import creep_en
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.shrinkage_strain import days_dried
from crackkit.words import _


def creep_coefficient(ages, loaded, slab: DryingSlab, code):
    """Creep strain over elastic strain.

    Parameters
    ----------
    ages : float or array_like
        Days since casting, t [days].
    loaded : float or array_like
        Age at loading, t0, above 0 [days]; together with `ages` as NumPy broadcasts them.
    slab : DryingSlab
        The slab, its air and its mix.
    code : str
        "ACI" (ACI 209R-92: moist curing; goes with the modulus at loading) or "EN"
        (EN 1992-1-1:2004: goes with 1.05 times the modulus at 28 days); from memory.

    Returns
    -------
    float or numpy.ndarray
        phi(t, t0), 0 before loading [-].

    Raises
    ------
    ValueError
        If the code is not known.
    """
    if code not in _CODES:
        raise ValueError(_("The code must be ACI or EN, not {code}.").format(code=code))
    return _CODES[code](ages, loaded, slab)


def _aci(ages, loaded, slab):
    end = creep_aci.end_value(
        slab.humidity,
        creep_aci.loading_factor_moist(loaded),
        creep_aci.size_factor(slab.volume_surface),
        creep_aci.slump_factor(slab.slump),
    )
    return creep_aci.creep(days_dried(ages, loaded), end)


def _en(ages, loaded, slab):
    air, size = slab.humidity, slab.notional_size
    return creep_en(ages, loaded, slab.mean_strength, air, size, slab.cement_class)


_CODES = {"ACI": _aci, "EN": _en}
