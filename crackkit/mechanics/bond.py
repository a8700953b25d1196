"""How hard concrete holds a bar that begins to slip through it.

Bond stress grows with slip as the ribs bite, stays level while they crush the concrete before
them, and falls to friction once they have sheared it off. A slip that turns back comes down a
stiff straight line, the same line that it climbs again.
"""

import math
from dataclasses import dataclass

import numpy as np

from crackkit.words import _

UNLOADING = 200.0
"""Slope of the line along which a slip turns back [MPa/mm], CEB-FIP Model Code 1990, 3.1.1 (from
memory)."""

STICKING = 1e9
"""Slope that stands for a bar that has not slipped [MPa/mm]."""

_CONDITIONS = {"good": 0, "other": 1}


@dataclass(frozen=True)
class BondLaw:
    """Bond stress tau over slip s: a power of s, then level, then falling to friction.

    tau = tau_max (s/s1)^alpha up to s1, tau_max up to s2, a line down to tau_f at s3 (fib Model
    Code 2010, (6.1-1) to (6.1-4)). A slip of the other sign meets a stress of the other sign.

    Parameters
    ----------
    peak : float
        Greatest bond stress tau_max [MPa], above 0.
    peak_slip : float
        Slip s1 at which it is reached [mm], above 0.
    level_end : float
        Slip s2 at which it begins to fall [mm], s1 or more; may be infinite.
    friction_slip : float
        Slip s3 from which only friction is left [mm], s2 or more; may be infinite.
    exponent : float
        Exponent alpha of the rising part [-], above 0, up to 1.
    friction : float
        Bond stress tau_f that is left in the end [MPa], 0 to tau_max.

    Raises
    ------
    ValueError
        If a number lies outside of its range.
    """

    peak: float
    peak_slip: float
    level_end: float
    friction_slip: float
    exponent: float
    friction: float

    def __post_init__(self):
        rising = 0 < self.peak_slip <= self.level_end <= self.friction_slip
        if not (rising and 0 < self.exponent <= 1 and 0 <= self.friction <= self.peak > 0):
            raise ValueError(_("A bond law must rise to a peak and fall from it, if it falls."))

    def stress(self, slip):
        """Bond stress while the slip grows.

        Parameters
        ----------
        slip : float or array_like
            Slip s of the bar against the concrete [mm], of either sign.

        Returns
        -------
        numpy.ndarray
            Bond stress tau [MPa], of the sign of the slip.
        """
        slip = np.asarray(slip, dtype=float)
        s = np.abs(slip)
        rising = self.peak * np.minimum(s / self.peak_slip, 1.0) ** self.exponent
        fallen = self._fallen(s)
        tau = rising - (self.peak - self.friction) * fallen
        return np.copysign(tau, slip)

    def work(self, slip):
        """Work done on a square millimetre of bar surface while the slip grows.

        Parameters
        ----------
        slip : float or array_like
            Slip reached, starting from none [mm].

        Returns
        -------
        numpy.ndarray
            Integral of tau ds [N/mm], never negative.
        """
        s = np.abs(np.asarray(slip, dtype=float))
        s1, a = self.peak_slip, self.exponent
        rising = self.peak * s1 * np.minimum(s / s1, 1.0) ** (1 + a) / (1 + a)
        level = self.peak * np.maximum(s - s1, 0.0)
        fall = self.friction_slip - self.level_end
        ramp = 0.5 * fall * self._fallen(s) ** 2 if math.isfinite(fall) else 0.0 * s
        beyond = np.maximum(s - self.friction_slip, 0.0)
        return rising + level - (self.peak - self.friction) * (ramp + beyond)

    def unloading_stiffness(self, greatest):
        """Slope of the line along which a slip turns back, and climbs again.

        It is 200 MPa/mm, or that of the line to the origin where this is steeper: at the
        smallest slips the softer one would give back more work than was done. So no bond law
        gives back more than it took, and no crack shuts more than it opened.

        Parameters
        ----------
        greatest : float or array_like
            Slip from which it turns back [mm].

        Returns
        -------
        numpy.ndarray
            Slope [MPa/mm], up to 1e9, which stands for a bar that has not slipped.
        """
        s = np.abs(np.asarray(greatest, dtype=float))
        tau = np.abs(self.stress(s))
        start = self.peak / self.peak_slip if self.exponent == 1 else STICKING
        secant = np.divide(tau, s, out=np.full_like(s, start), where=s > 0)
        return np.clip(secant, UNLOADING, STICKING)

    def stress_turned_back(self, slip, greatest):
        """Bond stress once the slip has turned back from the greatest it had.

        The line goes on below zero: friction against the bar on its way back is not limited.

        Parameters
        ----------
        slip : float or array_like
            Slip now [mm].
        greatest : float or array_like
            Slip that it had, with the sign that it had [mm].

        Returns
        -------
        numpy.ndarray
            Bond stress [MPa].
        """
        back = np.asarray(greatest, dtype=float) - np.asarray(slip, dtype=float)
        return self.stress(greatest) - self.unloading_stiffness(greatest) * back

    def _fallen(self, s):
        """Share of the fall from peak to friction that is done [-]."""
        fall = self.friction_slip - self.level_end
        if not math.isfinite(self.level_end) or not math.isfinite(fall):
            return np.zeros_like(s)
        if fall == 0:
            return np.where(s > self.level_end, 1.0, 0.0)
        return np.clip((s - self.level_end) / fall, 0.0, 1.0)


def ribbed_bond(mean_strength, rib_spacing, condition="good"):
    """Bond of a ribbed bar that pulls out of well confined concrete.

    fib Model Code 2010, Table 6.1-1, pull-out failure (from memory): alpha = 0.4, tau_f = 0.4
    tau_max; good bond 2.5 sqrt(fcm), s1 = 1 mm, s2 = 2 mm; other bond 1.25 sqrt(fcm), s1 = 1.8
    mm, s2 = 3.6 mm. Concrete that splits along the bar holds less.

    Parameters
    ----------
    mean_strength : float
        Mean cylinder strength fcm [MPa], above 0.
    rib_spacing : float
        Clear distance of the ribs s3 [mm], at least s2; about half the diameter.
    condition : str
        "good" where the concrete settles onto the bar, "other" under top bars.

    Returns
    -------
    BondLaw
        The law [N, mm].

    Raises
    ------
    ValueError
        If the ribs stand closer than s2, or the condition is neither of the two.
    """
    factor, s1 = ((2.5, 1.0), (1.25, 1.8))[_condition(condition)]
    peak = factor * math.sqrt(mean_strength)
    return BondLaw(peak, s1, 2 * s1, rib_spacing, 0.4, 0.4 * peak)


def plain_bond(strength, condition="good"):
    """Bond of a plain bar, hot rolled: it sticks, then rubs.

    CEB-FIP Model Code 1990, Table 3.1.2 (from memory): 0.3 sqrt(fck) in good and 0.15 sqrt(fck)
    in other conditions, reached at 0.1 mm with alpha = 0.5 and kept from there.

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck [MPa], above 0.
    condition : str
        "good" where the concrete settles onto the bar, "other" under top bars.

    Returns
    -------
    BondLaw
        The law [N, mm].

    Raises
    ------
    ValueError
        If the condition is neither of the two.
    """
    peak = (0.3, 0.15)[_condition(condition)] * math.sqrt(strength)
    return BondLaw(peak, 0.1, math.inf, math.inf, 0.5, peak)


def linear_bond(stiffness):
    """Bond that grows in proportion to slip: no bar does this, but its answer is known.

    Parameters
    ----------
    stiffness : float
        Bond stress for a millimetre of slip [MPa/mm], above 0.

    Returns
    -------
    BondLaw
        The law [N, mm].
    """
    peak = stiffness * 1e3
    return BondLaw(peak, 1e3, math.inf, math.inf, 1.0, peak)


def _condition(name):
    if name not in _CONDITIONS:
        raise ValueError(_("Bond is either good or other, not {name}.").format(name=name))
    return _CONDITIONS[name]
