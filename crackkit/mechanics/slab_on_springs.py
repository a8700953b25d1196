"""Closed answers for slabs on the ground: loads inside, on edges and corners, and curling.

All of them see the ground as springs that push and pull, but for the heavy strip on a rigid base,
which lifts off. They are what a plate is checked against, and what a pocket calculator can do.
"""

import numpy as np

EULER = 0.5772156649015329
"""Euler's constant [-]."""


def reach(modulus, thickness, ground, poisson=0.15):
    """Radius of relative stiffness.

    Parameters
    ----------
    modulus : float
        Modulus E [MPa].
    thickness : float
        Thickness h [mm].
    ground : float
        Stiffness of the ground k [N/mm3], above 0.
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4) [mm] (WESTERGAARD1926).
    """
    return (modulus * thickness**3 / (12.0 * (1.0 - poisson**2) * ground)) ** 0.25


def thick_radius(radius, thickness):
    """Radius that a thin plate needs to feel a small load as a thick one does.

    Parameters
    ----------
    radius : float
        Radius a of the loaded circle [mm].
    thickness : float
        Thickness h [mm].

    Returns
    -------
    float
        b = sqrt(1.6 a^2 + h^2) - 0.675 h for a < 1.724 h, else a [mm] (WESTERGAARD1926).
    """
    if radius >= 1.724 * thickness:
        return radius
    return np.sqrt(1.6 * radius**2 + thickness**2) - 0.675 * thickness


def interior_stress(force, radius, thickness, reach, poisson=0.15):
    """Stress in the bottom under a circle of load far from all edges.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius b of the circle [mm]; see `thick_radius`.
    thickness : float
        Thickness h [mm].
    reach : float
        Radius of relative stiffness l [mm].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float
        3 P (1+nu)/(2 pi h^2) (ln(2l/b) + 0.5 - 0.5772) + 3 P (1+nu)/(64 h^2) (b/l)^2 [MPa],
        Westergaard as IOANNIDES1985 give it.
    """
    share = 3.0 * force * (1.0 + poisson) / thickness**2
    bent = (np.log(2.0 * reach / radius) + 0.5 - EULER) / (2.0 * np.pi)
    return share * (bent + (radius / reach) ** 2 / 64.0)


def interior_deflection(force, radius, reach, ground):
    """Deflection under a circle of load far from all edges.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius a of the circle [mm]; 0 for a point, which gives P/(8 k l^2).
    reach : float
        Radius of relative stiffness l [mm].
    ground : float
        Stiffness of the ground k [N/mm3].

    Returns
    -------
    float
        P/(8 k l^2) (1 + (ln(a/2l) - 0.673) (a/l)^2 / (2 pi)) [mm] (WESTERGAARD1926, from memory).
    """
    point = force / (8.0 * ground * reach**2)
    if radius == 0.0:
        return point
    spread = (np.log(0.5 * radius / reach) - 0.673) * (radius / reach) ** 2
    return point * (1.0 + spread / (2.0 * np.pi))


def edge_stress(force, radius, thickness, reach):
    """Stress along the bottom of a free edge under a circle that touches it, for nu 0.15.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius a of the circle [mm].
    thickness : float
        Thickness h [mm].
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float
        0.803 P/h^2 (4 log10(l/a) + 0.666 a/l - 0.034) [MPa], Westergaard 1948 as
        IOANNIDES1985 give it.
    """
    bent = 4.0 * np.log10(reach / radius) + 0.666 * radius / reach - 0.034
    return 0.803 * force / thickness**2 * bent


def edge_deflection(force, radius, reach, ground):
    """Deflection of a free edge under a circle that touches it, for nu 0.15.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius a of the circle [mm].
    reach : float
        Radius of relative stiffness l [mm].
    ground : float
        Stiffness of the ground k [N/mm3].

    Returns
    -------
    float
        0.431 P/(k l^2) (1 - 0.82 a/l) [mm], Westergaard 1948 as IOANNIDES1985 give it.
    """
    return 0.431 * force / (ground * reach**2) * (1.0 - 0.82 * radius / reach)


def edge_point_deflection(force, reach, ground, poisson=0.15):
    """Deflection of a free edge under a point load.

    Parameters
    ----------
    force : float
        Load P [N].
    reach : float
        Radius of relative stiffness l [mm].
    ground : float
        Stiffness of the ground k [N/mm3].
    poisson : float
        Poisson's ratio nu [-].

    Returns
    -------
    float
        sqrt(2 + 1.2 nu) / sqrt(12 (1 - nu^2)) P/(k l^2) [mm] (WESTERGAARD1926, from memory).
    """
    shape = np.sqrt((2.0 + 1.2 * poisson) / (12.0 * (1.0 - poisson**2)))
    return shape * force / (ground * reach**2)


def corner_stress_westergaard(force, radius, thickness, reach):
    """Stress in the top near a corner under a circle that touches both edges.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius a of the circle [mm].
    thickness : float
        Thickness h [mm].
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float
        3 P/h^2 (1 - (a sqrt2/l)^0.6) [MPa] (WESTERGAARD1926).
    """
    return 3.0 * force / thickness**2 * (1.0 - (radius * np.sqrt(2.0) / reach) ** 0.6)


def corner_deflection_westergaard(force, radius, reach, ground):
    """Deflection of a corner under a circle that touches both edges.

    Parameters
    ----------
    force : float
        Load P [N].
    radius : float
        Radius a of the circle [mm].
    reach : float
        Radius of relative stiffness l [mm].
    ground : float
        Stiffness of the ground k [N/mm3].

    Returns
    -------
    float
        P/(k l^2) (1.1 - 0.88 a sqrt2/l) [mm] (WESTERGAARD1926).
    """
    return force / (ground * reach**2) * (1.1 - 0.88 * radius * np.sqrt(2.0) / reach)


def corner_stress_ioannides(force, side, thickness, reach):
    """Stress in the top near a corner under a square of load in it.

    Parameters
    ----------
    force : float
        Load P [N].
    side : float
        Side c of the square [mm], 1.772 times the radius of a circle of its area.
    thickness : float
        Thickness h [mm].
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float
        3 P/h^2 (1 - (c/l)^0.72) [MPa], fitted to finite elements (IOANNIDES1985).
    """
    return 3.0 * force / thickness**2 * (1.0 - (side / reach) ** 0.72)


def corner_deflection_ioannides(force, side, reach, ground):
    """Deflection of a corner under a square of load in it.

    Parameters
    ----------
    force : float
        Load P [N].
    side : float
        Side c of the square [mm].
    reach : float
        Radius of relative stiffness l [mm].
    ground : float
        Stiffness of the ground k [N/mm3].

    Returns
    -------
    float
        P/(k l^2) (1.205 - 0.69 c/l) [mm], fitted to finite elements (IOANNIDES1985).
    """
    return force / (ground * reach**2) * (1.205 - 0.69 * side / reach)


def break_distance_ioannides(side, reach):
    """Distance from the corner at which a load in it stretches the top most.

    Parameters
    ----------
    side : float
        Side c of the square of load [mm].
    reach : float
        Radius of relative stiffness l [mm].

    Returns
    -------
    float
        1.80 c^0.32 l^0.59 [mm] with lengths in inches, as the powers ask for (IOANNIDES1985).
    """
    inch = 25.4
    return 1.80 * (side / inch) ** 0.32 * (reach / inch) ** 0.59 * inch
