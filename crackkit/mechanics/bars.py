"""Reinforcing bars: nominal sizes, and the room between them that concrete needs to get through."""

import math
from dataclasses import dataclass

from crackkit.mechanics.us_customary import FOOT, INCH, POUND
from crackkit.words import _


@dataclass(frozen=True)
class Bar:
    """A reinforcing bar by its nominal size.

    Parameters
    ----------
    name : str
        Size as the trade calls it, "#5" or "16".
    diameter : float
        Nominal diameter [mm].
    area : float
        Nominal area of the cross-section [mm2].
    mass : float
        Mass of a metre of bar [kg/m].
    """

    name: str
    diameter: float
    area: float
    mass: float


def _astm(name, inches, square_inches, pounds_per_foot):
    mass = pounds_per_foot * POUND / (FOOT / 1000)
    return Bar(name, inches * INCH, square_inches * INCH**2, mass)


def _metric(diameter):
    area = math.pi * diameter**2 / 4
    return Bar(str(diameter), float(diameter), area, 7850 * area * 1e-6)


# ASTM A615/A615M: nominal diameter [in], area [in2], mass [lb/ft].
ASTM = {
    bar.name: bar
    for bar in (
        _astm("#3", 0.375, 0.11, 0.376),
        _astm("#4", 0.500, 0.20, 0.668),
        _astm("#5", 0.625, 0.31, 1.043),
        _astm("#6", 0.750, 0.44, 1.502),
        _astm("#7", 0.875, 0.60, 2.044),
        _astm("#8", 1.000, 0.79, 2.670),
        _astm("#9", 1.128, 1.00, 3.400),
        _astm("#10", 1.270, 1.27, 4.303),
        _astm("#11", 1.410, 1.56, 5.313),
        _astm("#14", 1.693, 2.25, 7.65),
        _astm("#18", 2.257, 4.00, 13.60),
    )
}

METRIC = {str(d): _metric(d) for d in (6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40)}


def bar(name):
    """Bar of a named size.

    Parameters
    ----------
    name : str
        "#3" to "#18" (ASTM A615) or "6" to "40" (millimetres).

    Returns
    -------
    Bar
        Nominal diameter [mm], area [mm2] and mass [kg/m].

    Raises
    ------
    ValueError
        If no bar has that name; the message lists the known sizes.
    """
    found = ASTM.get(str(name).strip()) or METRIC.get(str(name).strip())
    if found is None:
        sizes = ", ".join([*ASTM, *METRIC])
        text = _("There is no bar called {name}. Known sizes: {sizes}.")
        raise ValueError(text.format(name=name, sizes=sizes))
    return found


def clear_spacing(width, side_cover_to_bar, diameter, number):
    """Clear gap between equal bars laid evenly in one layer.

    Parameters
    ----------
    width : float
        Width of the member [mm].
    side_cover_to_bar : float
        Concrete between each side face and the outermost bar, stirrup included [mm].
    diameter : float
        Diameter of the bars [mm].
    number : int
        Number of bars in the layer [-], 1 or more.

    Returns
    -------
    float
        Clear gap [mm]; negative where the bars do not fit, infinite for a single bar.
    """
    if number < 2:
        return math.inf
    return (width - 2 * side_cover_to_bar - number * diameter) / (number - 1)


def least_clear_spacing_aci(diameter, aggregate):
    """Smallest clear gap allowed in a layer: 1 in, db, 4/3 dagg (ACI 318-19, 25.2.1).

    Parameters
    ----------
    diameter : float
        Diameter of the bars db [mm].
    aggregate : float
        Nominal largest size of the aggregate dagg [mm].

    Returns
    -------
    float
        Least clear spacing [mm].
    """
    return max(INCH, diameter, 4 / 3 * aggregate)


def least_clear_spacing_en(diameter, aggregate):
    """Smallest clear gap allowed: phi, dg + 5 mm, 20 mm (EN 1992-1-1:2004, 8.2(2)).

    Parameters
    ----------
    diameter : float
        Diameter of the bars phi [mm].
    aggregate : float
        Largest size of the aggregate dg [mm].

    Returns
    -------
    float
        Least clear spacing [mm], with the recommended k1 = 1 and k2 = 5 mm.
    """
    return max(diameter, aggregate + 5.0, 20.0)
