"""Closed answers for curling: strips in full contact, and a heavy strip that lifts off.

A difference of the free strains of the faces stands for a temperature (alpha dT) or for drying.
"""

import numpy as np

from crackkit.words import _


def held_flat_stress(modulus, difference, poisson=0.15):
    """Stress at the faces of a slab so large that its middle stays flat.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa].
    difference : float
        Difference of the free strains of the faces [-].
    poisson : float
        Poisson's ratio nu [-]; 0 for an edge, which is free to bend along its other side.

    Returns
    -------
    float
        E d/(2 (1 - nu)) [MPa] (WESTERGAARD1927).
    """
    return modulus * difference / (2.0 * (1.0 - poisson))


def edge_curl_rise(distance, difference, thickness, reach, poisson=0.15):
    """Rise near the free edge of a half-infinite slab that sticks to its springs.

    Parameters
    ----------
    distance : float or array_like
        Distance y from the edge [mm].
    difference : float
        Shortening of the top beyond that of the bottom d [-].
    thickness : float
        Thickness h [mm].
    reach : float
        Radius of relative stiffness l [mm].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float or numpy.ndarray
        w0 sqrt2 cos(y/(l sqrt2) + pi/4) exp(-y/(l sqrt2)) with w0 = (1 + nu) d l^2/h, upward
        positive [mm] (WESTERGAARD1927).
    """
    u = np.asarray(distance) / (reach * np.sqrt(2.0))
    edge = (1.0 + poisson) * difference * reach**2 / thickness
    return edge * np.sqrt(2.0) * np.cos(u + 0.25 * np.pi) * np.exp(-u)


def edge_curl_share(distance, reach):
    """Part of the held-flat stress that acts at right angles to a free edge.

    Parameters
    ----------
    distance : float or array_like
        Distance y from the edge [mm].
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float or numpy.ndarray
        1 - sqrt2 sin(y/(l sqrt2) + pi/4) exp(-y/(l sqrt2)) [-] (WESTERGAARD1927).
    """
    u = np.asarray(distance) / (reach * np.sqrt(2.0))
    return 1.0 - np.sqrt(2.0) * np.sin(u + 0.25 * np.pi) * np.exp(-u)


def curl_coefficient(length, reach):
    """Part of the held-flat stress that acts in the middle of a strip in full contact.

    Parameters
    ----------
    length : float or array_like
        Length B of the strip [mm], above 0.
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float or numpy.ndarray
        C = 1 - 2 cos(u) cosh(u)/(sin 2u + sinh 2u) (tan u + tanh u) with u = B/(l sqrt8) [-],
        (BRADBURY1938), after WESTERGAARD1927; partly from memory.
    """
    u = np.asarray(length) / (reach * np.sqrt(8.0))
    waves = np.sin(u) * np.cosh(u) + np.cos(u) * np.sinh(u)  # cos cosh (tan + tanh), no poles
    return 1.0 - 2.0 * waves / (np.sin(2.0 * u) + np.sinh(2.0 * u))


def middle_curl_stress(modulus, difference, along, across, poisson=0.15):
    """Stress at a face in the middle of a slab in full contact.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa].
    difference : float
        Difference of the free strains of the faces [-].
    along, across : float
        Coefficients C of the direction of the stress and of the other one [-].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float
        E d/(2 (1 - nu^2)) (Cx + nu Cy) [MPa] (BRADBURY1938); the slab is taken as two strips.
    """
    return modulus * difference * (along + poisson * across) / (2.0 * (1.0 - poisson**2))


def edge_curl_stress(modulus, difference, along):
    """Stress at a face along an edge, at half its length, in full contact.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa].
    difference : float
        Difference of the free strains of the faces [-].
    along : float
        Coefficient C of the direction of the edge [-].

    Returns
    -------
    float
        C E d/2 [MPa] (BRADBURY1938).
    """
    return 0.5 * modulus * difference * along


def corner_curl_stress(modulus, difference, radius, reach, poisson=0.15):
    """Stress near a corner from curling, where a load stands in it.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa].
    difference : float
        Difference of the free strains of the faces [-].
    radius : float
        Radius a of the loaded circle [mm].
    reach : float
        Radius of relative stiffness l [mm].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float
        E d/(3 (1 - nu)) sqrt(a/l) [MPa] (BRADBURY1938).
    """
    return modulus * difference / (3.0 * (1.0 - poisson)) * np.sqrt(radius / reach)


def lifted_length(rigidity, curvature, weight):
    """Length of a heavy strip that lifts off a rigid base at its end.

    Where it leaves the base the moment of its weight just undoes the free curvature.

    Parameters
    ----------
    rigidity : float
        Bending stiffness of 1 mm of width [N mm].
    curvature : float
        Free curvature [1/mm], 0 or more.
    weight : float
        Weight [N/mm2], above 0.

    Returns
    -------
    float
        sqrt(2 EI kappa/w) [mm]; elementary statics of a strip that is long enough.

    Raises
    ------
    ValueError
        If the strip would rise in the middle instead, or weighs nothing.
    """
    if not (curvature >= 0 and weight > 0):
        raise ValueError(_("A strip lifts its ends if its top shortens and it weighs something."))
    return np.sqrt(2.0 * rigidity * curvature / weight)


def lifted_rise(rigidity, curvature, weight):
    """Rise of the end of a heavy strip on a rigid base.

    Parameters
    ----------
    rigidity : float
        Bending stiffness of 1 mm of width [N mm].
    curvature : float
        Free curvature [1/mm], 0 or more.
    weight : float
        Weight [N/mm2], above 0.

    Returns
    -------
    float
        kappa a^2/4 with a the lifted length [mm]; elementary statics.
    """
    return 0.25 * curvature * lifted_length(rigidity, curvature, weight) ** 2


def free_curl_rise(difference, length, thickness):
    """Rise of the ends of a strip that curls without any weight.

    Parameters
    ----------
    difference : float
        Shortening of the top beyond that of the bottom d [-].
    length : float
        Length L [mm].
    thickness : float
        Thickness t [mm].

    Returns
    -------
    float
        d L^2/(8 t) [mm]; an arc of the free curvature.
    """
    return difference * length**2 / (8.0 * thickness)
