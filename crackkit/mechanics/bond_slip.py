"""Slip of a bar inside a piece of concrete that ends at two cracks.

Slip grows away from the middle of the piece, where there is none: s'' = kappa tau(s). Its slope is
s' = e - beta sigma_c, where e is that at a crack (steel strain there, and the shrinkage of the
concrete). Multiplied by s' the equation can be integrated once: s'^2 = p^2 + 2 kappa times the
work of the bond, p being the slope in the middle. For a power law the second integral is one
curve, the same for all bars but for its scale; it is tabulated once. With an exponent below 1 the
zone of slip has an end: beyond it lies a core in which bar and concrete stretch alike (Balazs
1993, ACI Materials Journal 90(4), from memory). Constant bond beyond the peak makes a parabola.
"""

import math
from dataclasses import dataclass
from functools import cache

import numpy as np

from crackkit.mechanics.bond import BondLaw
from crackkit.mechanics.rising_root import rising_root
from crackkit.words import _


@dataclass(frozen=True)
class BondSlip:
    """The equation s'' = kappa tau(s) along a bar.

    Parameters
    ----------
    law : BondLaw
        Bond stress over slip.
    kappa : float
        Perimeter of the bars times (1/(As Es) + 1/(Ac Ec)) [1/(mm MPa)], above 0.
    """

    law: BondLaw
    kappa: float

    @property
    def steepness(self):
        """Factor c of the rising part, s'^2 = p^2 + c s^(1 + alpha)."""
        law, a = self.law, self.law.exponent
        return 2 * self.kappa * law.peak / ((1 + a) * law.peak_slip**a)

    @property
    def twist(self):
        """Power that turns the slope in the middle into a smooth unknown."""
        a = self.law.exponent
        return min((1 + a) / (1 - a), 6.0) if a < 1 else 6.0


def slip_in_long_bar(equation, gradient):
    """Slip at a crack when the next one is farther than two transfer lengths.

    s = ((1 + alpha) e^2 s1^alpha/(2 kappa tau_max))^(1/(1 + alpha)) on the rising part: the work
    of bond equals e^2/(2 kappa).

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    gradient : float or array_like
        Slope e of the slip at the crack [-], 0 or more.

    Returns
    -------
    numpy.ndarray
        Slip [mm].
    """
    e, law, c = np.asarray(gradient, dtype=float), equation.law, equation.steepness
    power = (e**2 / c) ** (1 / (1 + law.exponent))
    spare = e**2 - c * law.peak_slip ** (1 + law.exponent)
    level = law.peak_slip + spare / (2 * equation.kappa * law.peak)
    return np.where(power > law.peak_slip, level, power)


def transfer_length(equation, gradient):
    """Distance from a crack at which bar and concrete stretch alike again.

    On the rising part 2 s/((1 - alpha) e), with the slip s of the long bar.

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    gradient : float or array_like
        Slope e of the slip at the crack [-], above 0.

    Returns
    -------
    numpy.ndarray
        Length [mm]; infinite for linear bond.
    """
    e, law, c = np.asarray(gradient, dtype=float), equation.law, equation.steepness
    if law.exponent == 1:
        return np.full_like(e, np.inf)
    first = np.minimum(slip_in_long_bar(equation, e), law.peak_slip)
    q = np.sqrt(c * first ** (1 + law.exponent))
    rising = 2 / (1 - law.exponent) * first / q
    return rising + np.maximum(e - q, 0.0) / (equation.kappa * law.peak)


def slip_along(equation, distance, middle, core):
    """Slip and its slope at distances from the middle of a piece.

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    distance : float or array_like
        Distance from the middle [mm], 0 or more.
    middle : float or array_like
        Slope p of the slip in the middle [-], 0 or more.
    core : float or array_like
        Where p is 0: half length of the core without slip [mm].

    Returns
    -------
    slip, gradient : numpy.ndarray
        Slip away from the middle [mm] and its slope [-].
    """
    law, c, a = equation.law, equation.steepness, equation.law.exponent
    scale, rate = _scales(c, a, middle)
    s = scale * _shape(a).slip.through(distance * rate)
    if not np.all(scale):
        s = np.where(scale > 0, s, _core_slip(c, a, distance - core))
    q = np.sqrt(np.square(middle) + c * s ** (1 + a))
    if np.all(s <= law.peak_slip):
        return s, q
    return _with_level_part(equation, distance, middle, core, s, q)


def piece(equation, half_length, gradient):
    """Slope of the slip in the middle of a piece, or the core without slip, from that at its ends.

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    half_length : float or array_like
        Half the distance of the cracks [mm], above 0.
    gradient : float or array_like
        Slope e of the slip at the cracks: N/(As Es) and the shrinkage strain [-], 0 or more.

    Returns
    -------
    middle, core : numpy.ndarray
        Slope in the middle [-]; half length of the core [mm], 0 where the slope is not.
    """
    a, e = np.broadcast_arrays(np.asarray(half_length, float), np.asarray(gradient, float))

    def excess(theta):
        return slip_along(equation, a, *unfolded(equation, theta, a, e))[1] - e

    # A piece longer than two transfer lengths has a core, whose length is known.
    long = -np.maximum(1 - transfer_length(equation, np.maximum(e, 1e-12)) / a, 0.0)
    theta = rising_root(excess, long, np.ones_like(e), 1e-11 * e)
    return unfolded(equation, theta, a, e)


def end_slip(equation, half_length, gradient):
    """Slip at both cracks of a piece: what it adds to the width of each.

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    half_length : float or array_like
        Half the distance of the cracks [mm], above 0.
    gradient : float or array_like
        Slope e of the slip at the cracks [-], 0 or more.

    Returns
    -------
    numpy.ndarray
        Slip [mm].

    Raises
    ------
    ValueError
        If the bar slips so far that bond begins to fall: there is no calm answer any more.
    """
    s, _q = slip_along(equation, half_length, *piece(equation, half_length, gradient))
    if np.any(s > equation.law.level_end):
        raise ValueError(_("The bars slip so far that they are torn out of the concrete."))
    return s


def unfolded(equation, theta, half_length, gradient):
    """State of the middle of a piece from one unknown, with which all slopes grow.

    Parameters
    ----------
    equation : BondSlip
        Law and stiffness.
    theta : array_like
        -1 for a core as long as the piece, 0 where the core ends, 1 for a slope in the middle
        like that of a bar alone [-].
    half_length : array_like
        Half the distance of the cracks [mm].
    gradient : float or array_like
        Greatest slope of the slip in the middle [-].

    Returns
    -------
    middle, core : numpy.ndarray
        Slope in the middle [-] and half length of the core [mm]; one of them is 0.
    """
    p = gradient * np.maximum(theta, 0.0) ** equation.twist
    return p, np.where(theta < 0, -theta * half_length, 0.0)


def _scales(c, a, middle):
    """Slip that stands for 1 in the tabulated shape, and 1 over the length that does."""
    p = np.asarray(middle, dtype=float)
    scale = (p**2 / c) ** (1 / (1 + a))
    return scale, p / np.maximum(scale, 1e-300)


def _core_slip(c, a, beyond):
    if a == 1:
        return np.zeros_like(beyond)
    return (0.5 * (1 - a) * math.sqrt(c) * np.maximum(beyond, 0.0)) ** (2 / (1 - a))


def _with_level_part(equation, distance, middle, core, s, q):
    law, c, a = equation.law, equation.steepness, equation.law.exponent
    s1, pull = law.peak_slip, equation.kappa * law.peak
    scale, rate = _scales(c, a, middle)
    q1 = np.sqrt(np.square(middle) + c * s1 ** (1 + a))
    safe = np.where(scale > 0, scale, s1)
    risen = _shape(a).place.through(s1 / safe) / np.maximum(rate, 1e-300)
    alone = core + (2 / (1 - a) * s1 / q1 if a < 1 else np.inf)
    x = np.maximum(distance - np.where(scale > 0, risen, alone), 0.0)
    level = s1 + q1 * x + 0.5 * pull * x**2
    return np.where(s > s1, level, s), np.where(s > s1, q1 + pull * x, q)


@dataclass(frozen=True)
class _Table:
    """A curve over evenly spaced numbers: one cubic for each step, a straight line before them."""

    start: float
    step: float
    cubics: np.ndarray

    @classmethod
    def of(cls, x, y, slope):
        h, rise = x[1] - x[0], np.diff(y)
        m0, m1 = h * slope[:-1], h * slope[1:]
        cubics = np.array([y[:-1], m0, 3 * rise - 2 * m0 - m1, m0 + m1 - 2 * rise]).T.copy()
        cubics[0, 2:] = 0.0
        return cls(float(x[0]), float(h), cubics)

    def __call__(self, x):
        last = len(self.cubics)
        place = np.minimum((x - self.start) / self.step, last)
        k = np.minimum(np.maximum(place, 0.0).astype(int), last - 1)
        t = place - k
        a, b, c, d = np.moveaxis(self.cubics.take(k, axis=0), -1, 0)
        return a + t * (b + t * (c + t * d))

    def through(self, values):
        """Read a table of logarithms."""
        return np.exp(self(np.log(np.maximum(values, 1e-300))))


@dataclass(frozen=True)
class _Shape:
    """The curve v'' = (1 + alpha)/2 v^alpha with v = 0 and v' = 1 at y = 0, both ways."""

    place: _Table
    slip: _Table


@cache
def _shape(a):
    """Tabulate y, the integral of dv/sqrt(1 + v^(1 + a)), against v, both by their logarithms."""
    u = np.linspace(-20.0, 60.0, 1601)
    nodes, weights = np.polynomial.legendre.leggauss(5)
    half = 0.5 * (u[1] - u[0])
    inner = np.exp(u[:-1, None] + half * (1 + nodes))
    steps = half * (inner / np.sqrt(1 + inner ** (1 + a))) @ weights
    log_y = np.log(np.cumsum([math.exp(u[0]), *steps]))
    place = _Table.of(u, log_y, _steepness_of_place(u, log_y, a))
    even = np.linspace(log_y[0], log_y[-1], len(u))
    log_v = np.interp(even, log_y, u)
    for _newton in range(4):
        log_v = log_v - (place(log_v) - even) / _steepness_of_place(log_v, even, a)
    return _Shape(place, _Table.of(even, log_v, 1 / _steepness_of_place(log_v, even, a)))


def _steepness_of_place(log_v, log_y, a):
    return np.exp(log_v - log_y) / np.sqrt(1 + np.exp((1 + a) * log_v))
