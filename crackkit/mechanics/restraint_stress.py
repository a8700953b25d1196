"""Stress in concrete that wants to shorten and may not, eased by its own creep.

The age-adjusted effective modulus, Trost 1967 and Bazant 1972: a stress that grows step by step
creeps less than one that stands from the first day, chi phi instead of phi.
"""

import numpy as np

from crackkit.words import _

AGEING = 0.8
"""Usual ageing coefficient chi, 0.6 to 0.9 [-] (from memory)."""


def age_adjusted_modulus(modulus, creep, ageing=AGEING):
    """Stress over strain for a strain that grows slowly from the age of loading on.

    Parameters
    ----------
    modulus : float or array_like
        Modulus of elasticity at the age of loading [MPa].
    creep : float or array_like
        Creep coefficient phi(t, t0) that goes with that modulus [-].
    ageing : float or array_like
        Ageing coefficient chi, 0 to 1 [-]; 1 gives the effective modulus.

    Returns
    -------
    float or numpy.ndarray
        E/(1 + chi phi) [MPa] (BAZANT1972, theorem).
    """
    return modulus / (1.0 + ageing * np.asarray(creep, dtype=float))


def relaxation(modulus, creep, ageing=AGEING):
    """Stress over strain for a strain that comes at once and then stays.

    Parameters
    ----------
    modulus : float or array_like
        Modulus of elasticity at the age of loading [MPa].
    creep : float or array_like
        Creep coefficient phi(t, t0) that goes with that modulus [-].
    ageing : float or array_like
        Ageing coefficient chi, 0 to 1 [-].

    Returns
    -------
    float or numpy.ndarray
        E - phi E/(1 + chi phi) [MPa] (BAZANT1972, theorem).
    """
    return modulus - creep * age_adjusted_modulus(modulus, creep, ageing)


def grown_stress(strain, modulus, creep, ageing=AGEING):
    """Stress from a strain that grew slowly and was fully held, in one step.

    Parameters
    ----------
    strain : float or array_like
        Free shortening that is held back [-].
    modulus : float or array_like
        Modulus of elasticity at the age of loading [MPa].
    creep : float or array_like
        Creep coefficient phi(t, t0) that goes with that modulus [-].
    ageing : float or array_like
        Ageing coefficient chi, 0 to 1 [-].

    Returns
    -------
    float or numpy.ndarray
        Tension [MPa].
    """
    return strain * age_adjusted_modulus(modulus, creep, ageing)


def restraint_stress(ages, free_strain, restraint, modulus, creep, ageing=AGEING):
    """Stress history of concrete that is held back while it shortens.

    Every increment of stress has an age of its own and creeps from that age on: the stresses are
    those whose elastic and creep strains add up to the strain that is held back, at each age.

    Parameters
    ----------
    ages : array_like
        Days since casting, above 0 and rising [days].
    free_strain : array_like
        Shortening of free concrete at these ages [-]; what stands at the first age comes at once.
        Several histories of the same concrete stand beside each other, one row for each age.
    restraint : float or array_like
        Share of the shortening that is held back, 0 to 1, at all ages or at each [-].
    modulus : float or array_like
        Modulus of elasticity, at all ages or at each [MPa].
    creep : callable
        Creep coefficient as a function of (ages, age at loading), arrays that broadcast; it goes
        with the modulus at loading.
    ageing : float
        Ageing coefficient chi of the increments within their own step, 0 to 1 [-].

    Returns
    -------
    numpy.ndarray
        Stress at each age and in each history, tension positive [MPa].

    Raises
    ------
    ValueError
        If the ages do not rise, or the restraint is not between 0 and 1.
    """
    t = np.asarray(ages, dtype=float)
    held = np.asarray(restraint, dtype=float)
    if not (t[0] > 0 and np.all(np.diff(t) > 0)):
        raise ValueError(_("The ages must be above zero and rise."))
    if not np.all((held >= 0) & (held <= 1)):
        raise ValueError(_("The restraint runs from 0 to 1."))
    flexibility = _flexibility(t, creep, ageing) / _at_start(modulus, t)
    free = np.asarray(free_strain, dtype=float)
    strain = np.broadcast_to((held * free.T).T, t.shape + free.shape[1:])
    # Read from the end the matrix is upper triangular: solved row by row, no row is exchanged.
    return np.cumsum(np.linalg.solve(flexibility[::-1, ::-1], strain[::-1])[::-1], axis=0)


def _flexibility(t, creep, ageing):
    """Strain at each age (rows) from each increment of stress, in units of 1/E [-].

    An increment grows over its step. While it does, it creeps by chi phi from the start of the
    step; later it creeps as one that came in the middle of the step.
    """
    start = np.concatenate([t[:1], t[:-1]])
    middle = 0.5 * (start + t)
    flexible = np.tril(1.0 + creep(t[:, None], middle[None, :]), -1)
    np.fill_diagonal(flexible, 1.0 + ageing * creep(t, start))
    return flexible


def _at_start(modulus, t):
    E = np.broadcast_to(np.asarray(modulus, dtype=float), t.shape)
    return np.concatenate([E[:1], E[:-1]])
