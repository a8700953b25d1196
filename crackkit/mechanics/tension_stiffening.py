"""How concrete between cracks keeps a cracked member stiffer than its cracked sections."""

import numpy as np


def mean_curvature(moment, cracking_moment, stiffness_uncracked, stiffness_cracked, beta):
    """Curvature averaged over cracks and the concrete between them.

    kappa = zeta M/EI_II + (1 - zeta) M/EI_I with zeta = 1 - beta (Mcr/M)^2 once cracked
    (EN 1992-1-1:2004, (7.18) and (7.19)). With beta = 1 the curve has no step at Mcr; with
    beta = 0.5 it steps there, as the source has it.

    Parameters
    ----------
    moment : float or array_like
        Bending moment, sagging positive [N mm].
    cracking_moment : float or array_like
        Size of the cracking moment [N mm], above 0.
    stiffness_uncracked : float or array_like
        Bending stiffness of the whole section EI_I [N mm2], above 0.
    stiffness_cracked : float or array_like
        Bending stiffness at a crack EI_II [N mm2]; counted up to EI_I. With 0 (nothing holds
        the crack) a cracked station has no finite curvature.
    beta : float
        1 for a first short loading, 0.5 for lasting or repeated loading [-].

    Returns
    -------
    numpy.ndarray
        Mean curvature, sagging positive [1/mm].
    """
    M = np.asarray(moment, dtype=float)
    zeta = cracked_share(M, cracking_moment, beta)
    return M * _flexibility(zeta, stiffness_uncracked, stiffness_cracked)


def cracked_share(moment, cracking_moment, beta):
    """Distribution coefficient zeta between the whole and the cracked state (EN, (7.19)).

    Parameters
    ----------
    moment : float or array_like
        Bending moment [N mm]; its sign does not matter.
    cracking_moment : float or array_like
        Size of the cracking moment [N mm], above 0.
    beta : float
        1 for a first short loading, 0.5 for lasting or repeated loading [-].

    Returns
    -------
    numpy.ndarray
        zeta [-], 0 up to the cracking moment, then growing towards 1
        (EN 1992-1-1:2004, 7.4.3(3)).
    """
    Mcr = np.asarray(cracking_moment, dtype=float)
    M = np.abs(np.asarray(moment, dtype=float))
    return np.where(Mcr < M, 1 - beta * (Mcr / np.maximum(M, Mcr)) ** 2, 0.0)


def effective_inertia_aci(moment, cracking_moment, gross, cracked):
    """Effective second moment of area (ACI 318-19, Table 24.2.3.5).

    It is the interpolation of `mean_curvature` with beta = 1 and two thirds of the cracking
    moment (the third being lost to restrained shrinkage).

    Parameters
    ----------
    moment : float or array_like
        Service moment Ma [N mm]; its sign does not matter.
    cracking_moment : float or array_like
        Cracking moment Mcr of the gross section [N mm], above 0.
    gross : float or array_like
        Second moment of the gross section Ig [mm4].
    cracked : float or array_like
        Second moment of the cracked section Icr [mm4]; counted up to Ig.

    Returns
    -------
    numpy.ndarray
        Effective second moment Ie [mm4].
    """
    zeta = cracked_share(moment, 2 / 3 * np.asarray(cracking_moment, dtype=float), 1.0)
    return 1 / _flexibility(zeta, gross, cracked)


def effective_inertia_branson(moment, cracking_moment, gross, cracked):
    """Effective second moment of area as ACI 318 had it before 2019 (9.5.2.3 in 318-08).

    Parameters
    ----------
    moment : float or array_like
        Service moment Ma [N mm]; its sign does not matter.
    cracking_moment : float or array_like
        Cracking moment Mcr of the gross section [N mm], above 0.
    gross : float or array_like
        Second moment of the gross section Ig [mm4].
    cracked : float or array_like
        Second moment of the cracked section Icr [mm4]; counted up to Ig.

    Returns
    -------
    numpy.ndarray
        Effective second moment Ie [mm4], (Mcr/Ma)^3 Ig + (1 - (Mcr/Ma)^3) Icr, at most Ig.
    """
    Icr = np.minimum(cracked, gross)
    Mcr = np.asarray(cracking_moment, dtype=float)
    cube = (Mcr / np.maximum(np.abs(np.asarray(moment, dtype=float)), Mcr)) ** 3
    return cube * gross + (1 - cube) * Icr


def _flexibility(zeta, whole, cracked):
    """Mean of 1/EI, the cracked share counted once; endless where nothing holds the crack."""
    f1 = 1 / np.asarray(whole, dtype=float)
    with np.errstate(divide="ignore"):
        f2 = np.maximum(1 / np.asarray(cracked, dtype=float), f1)
    more = np.zeros(np.broadcast_shapes(np.shape(zeta), np.shape(f2)))
    return f1 + np.multiply(zeta, f2 - f1, where=zeta > 0, out=more)
