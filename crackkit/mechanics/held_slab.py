"""Stress in a slab that is held back while it shrinks, by one code from the mix to the end."""

import numpy as np

from crackkit.mechanics.concrete import Concrete
from crackkit.mechanics.creep import creep_coefficient
from crackkit.mechanics.creep_en import to_modulus_at_loading
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.restraint_stress import AGEING, restraint_stress
from crackkit.mechanics.shrinkage import free_shrinkage
from crackkit.mechanics.strength_in_time import concrete_in_time


def held_stress(ages, slab: DryingSlab, concrete: Concrete, restraint, code, ageing=AGEING):
    """Mean stress over the thickness, from the first age on, at which there is none.

    Parameters
    ----------
    ages : array_like
        Days since casting, above 0 and rising [days].
    slab : DryingSlab
        The slab, its air and its curing.
    concrete : Concrete
        Its concrete at 28 days.
    restraint : float or array_like
        Share of the shortening that is held back, 0 to 1, at all ages or at each [-].
    code : str
        "ACI" (ACI 209R-92) or "EN" (EN 1992-1-1:2004), from memory; for shrinkage, creep and
        stiffness alike.
    ageing : float
        Ageing coefficient chi, 0 to 1 [-]; with fine steps it hardly matters.

    Returns
    -------
    numpy.ndarray
        Stress at each age, as if the slab did not crack; tension positive [MPa].

    Raises
    ------
    ValueError
        If the ages do not rise, the restraint is not between 0 and 1, or the code is not known.
    """
    strain = free_shrinkage(ages, slab, code).total
    modulus = _modulus(ages, slab, concrete, code)
    creep = creep_at_loading(slab, concrete, code)
    return restraint_stress(ages, strain - strain[0], restraint, modulus, creep, ageing)


def _modulus(ages, slab, concrete, code):
    return concrete_in_time(ages, concrete, code, slab.cement_class).modulus


def creep_at_loading(slab: DryingSlab, concrete: Concrete, code):
    """Creep over the elastic strain at loading, as superposition wants it.

    Parameters
    ----------
    slab : DryingSlab
        The slab, its air and its curing.
    concrete : Concrete
        Its concrete at 28 days.
    code : str
        "ACI" or "EN".

    Returns
    -------
    callable
        From (ages, age at loading) in days, arrays that broadcast, to the coefficient [-].
    """

    def at_loading(ages, loaded):
        phi = creep_coefficient(ages, loaded, slab, code)
        if code == "ACI":
            return phi
        young = _modulus(np.asarray(loaded), slab, concrete, code)
        return to_modulus_at_loading(phi, young, concrete.modulus)

    return at_loading
