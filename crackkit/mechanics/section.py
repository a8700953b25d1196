"""A concrete section with bars, whole and cracked, while steel and concrete are elastic.

Plane sections stay plane. Bars count as n = Es/Ec times their area of concrete; a squeezed bar
counts n - 1, since it takes the place of concrete. Once cracked, stretched concrete counts
nothing. Depths are measured down from the top face; a sagging moment is positive.
"""

import math
from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True)
class Section:
    """Outline of a rectangular section or a T with its flange on top.

    Parameters
    ----------
    width : float
        Width of the rectangle or of the web [mm].
    depth : float
        Whole depth [mm].
    flange_width : float or None
        Width of the flange [mm]; None for a rectangle.
    flange_depth : float
        Depth of the flange [mm].
    """

    width: float
    depth: float
    flange_width: float | None = None
    flange_depth: float = 0.0

    @property
    def area(self):
        """Gross area [mm2]."""
        return sum(b * (end - start) for start, end, b in bands(self, 1))

    @property
    def centroid(self):
        """Depth of the gross centroid below the top face [mm]."""
        return sum(b * (end**2 - start**2) / 2 for start, end, b in bands(self, 1)) / self.area

    @property
    def inertia(self):
        """Second moment of the gross area about its centroid [mm4]."""
        return _concrete_inertia(bands(self, 1), self.centroid, self.depth)


@dataclass(frozen=True)
class ElasticSection:
    """A section as one elastic whole, all of it counted as concrete.

    Parameters
    ----------
    axis : float
        Depth of the neutral axis below the top face [mm].
    squeezed : float
        Depth of the squeezed zone, from the squeezed face to the axis [mm].
    inertia : float
        Second moment of the transformed section [mm4]; 0 when no bar crosses the crack.
    ratio : float
        Modular ratio n = Es/Ec [-].
    sense : int
        1 where the section sags (top squeezed), -1 where it hogs [-].
    """

    axis: float
    squeezed: float
    inertia: float
    ratio: float
    sense: int


def bands(section, sense):
    """Bands of constant width, met on the way in from the squeezed face.

    Parameters
    ----------
    section : Section
        The outline.
    sense : int
        1 to start from the top face, -1 from the bottom face [-].

    Returns
    -------
    tuple of tuple of float
        Start, end and width of each band [mm].
    """
    b, h = section.width, section.depth
    bf, hf = section.flange_width, min(section.flange_depth, h)
    if bf is None or hf <= 0:
        return ((0.0, h, b),)
    if sense > 0:
        return ((0.0, hf, bf), (hf, h, b))
    return ((0.0, h - hf, b), (h - hf, h, bf))


def uncracked(section, depths, areas, ratio, sense=1):
    """The whole section, bars counted n - 1 times.

    Parameters
    ----------
    section : Section
        The outline.
    depths : array_like
        Depth of each layer of bars below the top face [mm], 0 to the depth of the section.
    areas : array_like
        Steel area of each layer [mm2]; 0 is allowed.
    ratio : float
        Modular ratio n = Es/Ec [-], above 1.
    sense : int
        1 where the section sags, -1 where it hogs [-]; it only tells the squeezed face.

    Returns
    -------
    ElasticSection
        Transformed section (textbook mechanics).
    """
    layers = _layers(section, depths, areas, 1)
    m = ratio - 1
    A, z = section.area, section.centroid
    total = A + sum(m * a for _, a in layers)
    x = (A * z + sum(m * a * t for t, a in layers)) / total
    inertia = _concrete_inertia(bands(section, 1), x, section.depth)
    inertia += sum(m * a * (x - t) ** 2 for t, a in layers)
    squeezed = x if sense > 0 else section.depth - x
    return ElasticSection(x, squeezed, inertia, ratio, sense)


def cracked(section, depths, areas, ratio, sense=1, squeezed_ratio=None):
    """The section once its stretched concrete has cracked.

    The axis is exact: the balance of forces is a chain of parabolas in the squeezed depth, one
    between each two neighbouring stops (layers, edge of the flange), and the one that crosses
    zero is solved in closed form.

    Parameters
    ----------
    section : Section
        The outline.
    depths : array_like
        Depth of each layer of bars below the top face [mm], 0 to the depth of the section.
    areas : array_like
        Steel area of each layer [mm2]; 0 is allowed.
    ratio : float
        Modular ratio n = Es/Ec [-], above 1.
    sense : int
        1 where the section sags, -1 where it hogs [-].
    squeezed_ratio : float or None
        What a squeezed bar counts [-], 0 or more; n - 1 when None. Under lasting load some
        take 2n - 1.

    Returns
    -------
    ElasticSection
        The cracked section (textbook mechanics). When no bar lies beyond the squeezed face,
        nothing holds the crack: the squeezed depth and the inertia are 0. A bar far on the
        wrong side still holds by a hair; its stress then tells that it must yield.
    """
    layers = _layers(section, depths, areas, sense)
    m = ratio - 1 if squeezed_ratio is None else squeezed_ratio
    widths = bands(section, sense)
    x = _squeezed_depth(widths, layers, ratio, m)
    inertia = _concrete_inertia(widths, x, x)
    inertia += sum((m if t < x else ratio) * a * (x - t) ** 2 for t, a in layers)
    axis = x if sense > 0 else section.depth - x
    return ElasticSection(axis, x, inertia, ratio, sense)


def cracking_moment(section_state, flexural, section, sense):
    """Moment at which the stretched face reaches its strength.

    Parameters
    ----------
    section_state : ElasticSection
        The uncracked section; give `uncracked` no bars for the gross section of ACI 318-19,
        24.2.3.5.
    flexural : float
        Strength in bending [MPa].
    section : Section
        The outline.
    sense : int
        1 for sagging (bottom face cracks), -1 for hogging (top face cracks) [-].

    Returns
    -------
    float
        Size of the cracking moment [N mm], positive in both senses.
    """
    axis = section_state.axis
    return flexural * section_state.inertia / (section.depth - axis if sense > 0 else axis)


def stress_in_concrete(state, moment, z):
    """Stress in the concrete at some depth, tension positive.

    Parameters
    ----------
    state : ElasticSection
        Whole or cracked section. A cracked one holds for moments of its own sense, and on its
        stretched side the value is only the line drawn on: cracked concrete pulls nothing.
    moment : float or array_like
        Bending moment, sagging positive [N mm].
    z : float or array_like
        Depth below the top face [mm].

    Returns
    -------
    float or numpy.ndarray
        Stress [MPa]; not-a-number where nothing holds the crack (inertia 0).
    """
    return _numeric(moment) * (_numeric(z) - state.axis) / (state.inertia or math.nan)


def stress_in_steel(state, moment, z):
    """Stress in a bar at some depth, tension positive, as long as the steel is elastic.

    Parameters
    ----------
    state : ElasticSection
        Whole or cracked section; a cracked one holds for moments of its own sense.
    moment : float or array_like
        Bending moment, sagging positive [N mm].
    z : float or array_like
        Depth of the bar below the top face [mm].

    Returns
    -------
    float or numpy.ndarray
        Stress [MPa], n times that of the concrete beside it; not-a-number where nothing holds
        the crack (inertia 0).
    """
    return state.ratio * stress_in_concrete(state, moment, z)


def _numeric(value):
    """Plain numbers as they are (much quicker), anything else as an array."""
    return value if isinstance(value, (float, int)) else np.asarray(value, dtype=float)


def _layers(section, depths, areas, sense):
    """Distance from the squeezed face and area of every layer that holds steel."""
    pairs = zip(_numbers(depths), _numbers(areas), strict=True)
    h = section.depth
    return [(z if sense > 0 else h - z, a) for z, a in pairs if a > 0]


def _numbers(values):
    return np.asarray(values, dtype=float).ravel().tolist()


def _squeezed_depth(widths, layers, n, m):
    """Root of the balance of forces, walking inwards from the squeezed face."""
    force = -n * sum(a * t for t, a in layers)
    if force >= 0:
        return 0.0
    slope = n * sum(a for _, a in layers)
    here = 0.0
    for stop in sorted({t for t, _ in layers} | {end for _, end, _ in widths}):
        b, step = _width(widths, here), stop - here
        gain = step * (slope + b * step / 2)
        if force + gain >= 0:
            break
        force += gain
        slope += b * step + (m - n) * sum(a for t, a in layers if t == stop)
        here = stop
    return here - 2 * force / (slope + math.sqrt(slope**2 - 2 * b * force))


def _width(widths, t):
    return next((b for _, end, b in widths if t < end), widths[-1][2])


def _concrete_inertia(widths, x, reach):
    """Second moment about x of the concrete down to a reach, all from the same face."""
    total = 0.0
    for start, end, b in widths:
        if start < reach:
            total += b * ((x - start) ** 3 - (x - min(end, reach)) ** 3) / 3
    return total
