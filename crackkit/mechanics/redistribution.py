"""Moments of a beam that cracks: where it turns soft, moments move to where it is still stiff.

Statics leaves some moments open (`self_stress`); they are found from the condition that the bent
beam fits its supports: the integral of curvature times each pattern, with the kinks at hinges, is
what the settlements ask for (force method, principle of virtual forces; see any text on
structural analysis). Newton's method, on a curvature that is read off at moments a small stride
apart and drawn straight between them. So a step of the curvature at cracking becomes a steep rise,
the moments follow the loads without a jump, and the last stride is two thousandths of the
largest moment.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.mechanics.self_stress import seen_from_left, self_stress
from crackkit.mechanics.supports import checked_supports
from crackkit.words import _

STRIDES = (0.03, 0.002)
"""Strides of the moment, one after the other, as parts of the largest moment [-]."""

MOST_STEPS = 30
"""Newton steps for each stride [-]."""

CLOSE = 1e-9
"""A Newton step no longer than this part of the largest moment ends the search [-]."""

SOFTEST = 1000.0
"""Curvature counted at most, as a multiple of that of the softest uncracked station [-]."""


@dataclass(frozen=True, eq=False)
class Redistributed:
    """Moments that balance the loads and fit the supports.

    Parameters
    ----------
    x : ndarray
        Stations [mm].
    moment : ndarray
        Moments at the stations, sagging positive [N mm]; if the beam does not stand, those given.
    curvature : ndarray
        Curvature that goes with them; where the curvature steps it lies within the step [1/mm].
    kinks : ndarray
        Angle at each hinge in the order given, positive where it opens at the bottom [rad].
    stands : bool
        False if the hinges make the beam a mechanism: moments and kinks mean nothing then.
    loose : tuple of float
        Hinges that turn when it falls [mm].
    converged : bool
        Whether the search came to rest: no further than `CLOSE` of the largest moment to go.
    steps : int
        Newton steps taken, all strides together [-].
    """

    x: np.ndarray
    moment: np.ndarray
    curvature: np.ndarray
    kinks: np.ndarray
    stands: bool
    loose: tuple[float, ...]
    converged: bool
    steps: int


def redistributed(x, moment, supports, curvature, hinges=(), stiffness=None) -> Redistributed:
    """Moments of a beam whose curvature is any rising function of its moment.

    Parameters
    ----------
    x : array_like
        Stations, never decreasing, from end to end of the beam [mm]; every support among them,
        and twice where it is fixed and has beam on both sides: first as seen from the left.
    moment : array_like
        Any moments at the stations that balance the loads, sagging positive [N mm]: those of the
        uncracked beam, say.
    supports : sequence of Support
        The supports in any order.
    curvature : callable
        Gives the curvatures [1/mm] for moments [N mm], shape (cases, stations); nowhere falling
        with the moment. It may step. Where it is infinite, the beam turns as far as it must to
        stay at that moment.
    hinges : sequence of float
        Places of cracks that nothing holds [mm], best at stations: no moment, and the beam turns
        freely. At a fixed support with beam on both sides, a hinge lies just right of it; at an
        end of the beam that is not fixed it changes nothing.
    stiffness : float or array_like, optional
        EI [N mm2] that fits the given moments, if these already are those of an elastic beam on
        the same, also settled, supports. Then the curvature runs straight between stations only
        in what cracking adds, and an uncracked beam keeps its moments exactly.

    Returns
    -------
    Redistributed
        Moments, curvatures and kinks.

    Raises
    ------
    ValueError
        If stations and moments do not fit, the beam is not held without hinges, a support is no
        station, or a hinge lies outside.
    """
    beam = _Beam(x, moment, supports, curvature, stiffness)
    frame = _Hinged(beam, np.asarray(hinges, dtype=float).reshape(-1))
    if not frame.stands:
        kappa, _rise = beam.reading(beam.start, STRIDES[-1] * beam.scale)
        kinks = np.zeros(frame.places.size)
        return Redistributed(beam.x, beam.start, kappa, kinks, False, frame.loose, True, 0)
    y, steps = np.zeros(frame.free.shape[1]), 0
    for part, close in zip(STRIDES, (STRIDES[0], CLOSE), strict=True):
        y, kappa, converged, more = _fitted(frame, y, part * beam.scale, close * beam.scale)
        steps += more
    kinks = frame.kinks(beam.gap(kappa))
    return Redistributed(beam.x, frame.moment(y), kappa, kinks, True, (), converged, steps)


class _Beam:
    """Stations, the moments to begin with, patterns, and how the patterns weigh curvature."""

    def __init__(self, x, moment, supports, curvature, stiffness):
        self.x, self.start = _stations(x, moment)
        ordered = checked_supports(float(self.x[-1]), supports)
        patterns = self_stress(ordered)
        before = seen_from_left(self.x, patterns)
        self.patterns, self.law = patterns, curvature
        self.m = patterns.values(self.x, before)
        self.weights = _weights(self.x, self.m)
        self.asked, self.ahead = patterns.turned_by_settlement, np.zeros(self.x.size)
        if stiffness is not None:
            self.asked, self.ahead = np.zeros(self.m.shape[0]), self.start / stiffness
        self.scale = float(np.abs(self.start).max()) or 1.0

    @cached_property
    def softest(self) -> float:
        """Curvature counted at most."""
        stride = STRIDES[-1] * self.scale
        low, high = self.law(np.array([[-stride], [stride]]) + np.zeros(self.x.size))
        rise = (high - low) / (2.0 * stride)
        return SOFTEST * self.scale * float(rise.max(initial=0.0, where=np.isfinite(rise)))

    def reading(self, M, stride):
        """Curvature and its rise, straight between moments one stride apart."""
        lower = stride * np.floor(M / stride)
        ends = self.law(np.stack([lower, lower + stride]))
        if not np.isfinite(ends).all():
            ends = np.clip(ends, -self.softest, self.softest)
        rise = (ends[1] - ends[0]) / stride
        return ends[0] + rise * (M - lower), rise

    def gap(self, kappa):
        """By how much the bent beam misses its supports, for each pattern."""
        return self.weights @ (kappa - self.ahead) - self.asked


class _Hinged:
    """Shares of the patterns that leave no moment at the hinges."""

    def __init__(self, beam: _Beam, places):
        self.beam, self.places = beam, places
        counts = self._counting(places)
        self.counts, inner = counts, places[counts]
        self.H = beam.patterns.values(inner, inner >= beam.x[-1]).T
        U, s, Vt = np.linalg.svd(self.H)
        rank = int((s > 1e-9).sum())
        idle = (U[:, rank:] ** 2).sum(axis=1) > 1e-9
        self.loose = tuple(dict.fromkeys(inner[idle].tolist()))
        self.stands = not self.loose
        self.free, self.inverse = Vt[rank:].T, np.linalg.pinv(self.H)
        at_hinges = np.interp(inner, beam.x, beam.start)
        self.first = -self.inverse @ at_hinges

    def _counting(self, places):
        """First hinge at each place; none at an end of the beam that carries no moment anyway."""
        x, patterns = self.beam.x, self.beam.patterns
        if places.size and not (x[0] <= places.min() and places.max() <= x[-1]):
            raise ValueError(_("A hinge lies outside the beam."))
        held = patterns.at[patterns.fixed]
        first = np.zeros(places.size, dtype=bool)
        first[np.unique(places, return_index=True)[1]] = True
        return first & (((places > x[0]) & (places < x[-1])) | np.isin(places, held))

    def moment(self, y):
        return self.beam.start + (self.first + self.free @ y) @ self.beam.m

    def kinks(self, gap):
        """Angles that close the gaps; none where two hinges share a place with the first."""
        angles = np.zeros(self.places.size)
        angles[self.counts] = -self.inverse.T @ gap
        return angles


def _stations(x, moment):
    x, M = np.asarray(x, dtype=float), np.asarray(moment, dtype=float)
    if x.ndim != 1 or x.size < 2 or M.shape != x.shape:
        raise ValueError(_("Every station needs one moment, and there must be two or more."))
    if (x[1:] < x[:-1]).any():
        raise ValueError(_("Stations must run from left to right."))
    return x, M


def _weights(x, m):
    """Turns the curvatures at the stations into the integral of curvature times each pattern."""
    h = np.diff(x) / 6.0
    weights = np.zeros_like(m)
    weights[:, :-1] = h * (2.0 * m[:, :-1] + m[:, 1:])
    weights[:, 1:] += h * (m[:, :-1] + 2.0 * m[:, 1:])
    return weights


def _fitted(frame: _Hinged, y, stride, close):
    """Shares that close the gaps, their curvature, whether they came to rest, and the steps."""
    beam, Z = frame.beam, frame.free
    W, m = Z.T @ beam.weights, Z.T @ beam.m

    def fit(y):
        kappa, rise = beam.reading(frame.moment(y), stride)
        return Z.T @ beam.gap(kappa), kappa, rise

    R, kappa, rise = fit(y)
    for step in range(MOST_STEPS):
        d = _newton_step((W * rise) @ m.T, R)
        if not np.abs(d).max(initial=0.0) > close:
            return y, kappa, not np.isnan(d).any(), step
        y, R, kappa, rise = _along(fit, y, d, R)
    return y, kappa, False, MOST_STEPS


def _newton_step(J, R):
    """The step that closes the gaps of the tangent; nan where there is none."""
    try:
        return np.linalg.solve(J, -R)
    except np.linalg.LinAlgError:
        return np.full(R.size, np.nan)


def _along(fit, y, d, R):
    """Go along a Newton step, less far where it leads past the place that fits best."""
    t, before, new = 1.0, d @ R, fit(y + d)
    for _attempt in range(8):
        after = d @ new[0]
        if not after > 0.5 * abs(before):
            break
        t *= min(max(before / (before - after), 0.1), 0.7)
        new = fit(y + t * d)
    return y + t * d, *new
