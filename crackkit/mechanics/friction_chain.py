"""Pieces of a shortening strip on a base that drags, tied to each other and to what holds them.

Along a piece E h u'' = q(u): the base pulls with q, which grows with the slip u up to the greatest
shear q0 at the slip s0 and then stays. So a piece has up to three zones: one slides to the right,
one sticks, one slides to the left. In each the answer is closed (parabola, sinh and cosh,
parabola); only the zones' ends are sought, see `friction_zones`. Slip is taken as growing: what
turns back is not followed, nor is a strip that grows longer.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

_LONGEST = 4.0  # of a stretch, in lengths over which slip fades: keeps cosh small


@dataclass(frozen=True)
class Chain:
    """Pieces in a row, for a strip 1 mm wide.

    Parameters
    ----------
    places : numpy.ndarray
        Ends of the pieces, from left to right [mm].
    ground : numpy.ndarray
        Stiffness with which each of these places is tied to what does not move [MPa], 0 or more;
        infinite where it is held.
    crossing : numpy.ndarray
        Stiffness of what crosses the place [MPa]: infinite where the concrete is whole, and at
        both ends; that of the bars at a crack, 0 where nothing crosses it.
    capacity : numpy.ndarray
        Greatest force of what crosses the place [N/mm]; infinite where the concrete is whole.
    """

    places: np.ndarray
    ground: np.ndarray
    crossing: np.ndarray
    capacity: np.ndarray

    @cached_property
    def length(self):
        """Length of the strip [mm]."""
        return self.places[-1] - self.places[0]

    @cached_property
    def lengths(self):
        """Length of each piece [mm]."""
        return np.diff(self.places)

    @cached_property
    def cracks(self):
        """Numbers of the places at which there is a crack or a joint [-]."""
        return np.flatnonzero(np.isfinite(self.crossing))

    def with_places(self, places, ground=0.0, crossing=np.inf, capacity=np.inf):
        """Give the chain with places added.

        Parameters
        ----------
        places : array_like
            Where, inside of the strip [mm].
        ground, crossing : float or array_like
            Stiffnesses there [MPa].
        capacity : float or array_like
            Greatest force there [N/mm].

        Returns
        -------
        Chain
            With its places in order [mm].
        """
        more = np.empty((4, np.size(places)))
        more[0], more[1], more[2], more[3] = places, ground, crossing, capacity
        parts = np.array([self.places, self.ground, self.crossing, self.capacity])
        joined = np.concatenate([parts, more], axis=1)
        return Chain(*joined[:, np.argsort(joined[0], kind="stable")])

    def in_stretches(self, fade):
        """Give the same chain with long pieces cut into stretches that stay whole.

        Parameters
        ----------
        fade : float
            Length over which slip fades [mm]: no stretch becomes longer than four of them.

        Returns
        -------
        Chain
            Places [mm] added, nothing else changed.
        """
        counts = np.ceil(self.lengths / (_LONGEST * fade)).astype(int)
        if counts.max() <= 1:
            return self
        starts = zip(self.places[:-1], self.places[1:], np.maximum(counts, 1), strict=True)
        return self.with_places(
            np.concatenate([np.linspace(a, b, n + 1)[1:-1] for a, b, n in starts])
        )


@dataclass(frozen=True)
class Drag:
    """What shortens the strip and what the base does against it, at one age or at many.

    Parameters
    ----------
    stiffness : numpy.ndarray
        Modulus times thickness E h at each age [N/mm], above 0.
    shortening : numpy.ndarray
        Free shortening at each age [-], 0 or more.
    shear : float
        Greatest shear q0 between slab and base [MPa], 0 or more.
    slip : float
        Slip s0 at which it is reached [mm], above 0.
    """

    stiffness: np.ndarray
    shortening: np.ndarray
    shear: float
    slip: float

    def rate(self, length):
        """Rate sqrt(q0/(E h s0)) at which slip fades.

        Parameters
        ----------
        length : float
            Length of the strip [mm]; the rate is kept at 1/10 000 of it or more, which stands
            for a base without friction.

        Returns
        -------
        numpy.ndarray
            Rate at each age [1/mm], in a column.
        """
        rate = np.sqrt(self.shear / (self.slip * self.stiffness))
        return np.maximum(rate, 1e-4 / length)[:, None]


@dataclass(frozen=True)
class ChainState:
    """Answer for all pieces (columns) at all ages (rows).

    Parameters
    ----------
    chain : Chain
        The pieces; long ones in stretches.
    drag : Drag
        What moves them.
    start_slip, end_slip : numpy.ndarray
        Slip at the left and the right end of each piece, to the right positive [mm].
    slope : numpy.ndarray
        Slope of the slip at the left end of each piece [-].
    zones : numpy.ndarray
        Lengths of the zones that slide to the right, and of those that stick [mm].
    yields : numpy.ndarray of bool
        Whether what crosses each crack gives all it can [-].
    rounds : int
        Rounds it took [-].
    """

    chain: Chain
    drag: Drag
    start_slip: np.ndarray
    end_slip: np.ndarray
    slope: np.ndarray
    zones: np.ndarray
    yields: np.ndarray
    rounds: int = 0

    @property
    def opening(self):
        """Width of each crack [mm], one row for each age."""
        at = self.chain.cracks
        return self.start_slip[:, at] - self.end_slip[:, at - 1]

    @property
    def crossing_force(self):
        """Pull of what crosses each crack [N/mm], one row for each age."""
        at = self.chain.cracks
        return np.minimum(self.chain.crossing[at] * self.opening, self.chain.capacity[at])

    @property
    def nowhere_slides(self):
        """Whether all pieces stick, at the last age."""
        return np.array_equal(self.zones[1, -1], self.chain.lengths)

    def until(self, row):
        """Give the answer for the ages up to one.

        Parameters
        ----------
        row : int
            Number of that age [-].

        Returns
        -------
        ChainState
            Slips in [mm].
        """
        k, it = slice(0, row + 1), self.drag
        drag = Drag(it.stiffness[k], it.shortening[k], it.shear, it.slip)
        ends = self.start_slip[k], self.end_slip[k], self.slope[k]
        return ChainState(self.chain, drag, *ends, self.zones[:, k], self.yields[k], self.rounds)

    def along(self, stations):
        """Slip and force at stations; at the end of a piece those of the piece to its left.

        Parameters
        ----------
        stations : array_like
            Distances from the left end of the strip [mm].

        Returns
        -------
        slip, force : numpy.ndarray
            Slip to the right [mm] and pull [N/mm], one row for each age.
        """
        rate = self.drag.rate(self.chain.length)
        (u, v), t, rest = self._parts(stations, rate)
        u, v = stuck(u, v, rate, t)
        u, v = slid(u, v, -rate * rate * self.drag.slip, rest)
        return u, self._force(v)

    def force(self, stations):
        """Force at stations, as `along` tells it with the slip, but quicker.

        Parameters
        ----------
        stations : array_like
            Distances from the left end of the strip [mm].

        Returns
        -------
        numpy.ndarray
            Pull [N/mm], one row for each age.
        """
        rate = self.drag.rate(self.chain.length)
        (u, v), t, rest = self._parts(stations, rate)
        t *= rate
        v *= np.cosh(t)
        v += np.multiply(rate, u) * np.sinh(t)
        v -= rate * rate * self.drag.slip * rest
        return self._force(v)

    def _parts(self, stations, rate):
        """Slip and slope where a station's piece begins to stick or, if it comes before that, at
        the station; how much of the way there sticks, and how much slides after that.
        """
        x, places = np.asarray(stations, dtype=float), self.chain.places
        k = np.minimum(np.maximum(np.searchsorted(places, x) - 1, 0), len(places) - 2)
        start, slope, first, second = (
            np.take(each, k, axis=1) for each in (self.start_slip, self.slope, *self.zones)
        )
        t = x - places[k]
        slides = np.minimum(t, first)
        rest = t - slides
        sticks = np.minimum(rest, second)
        begin = slid(start, slope, rate * rate * self.drag.slip, slides)
        return begin, sticks, rest - sticks

    def _force(self, slope):
        return self.drag.stiffness[:, None] * (slope + self.drag.shortening[:, None])


def slid(slip, slope, curvature, distance):
    """Slip and its slope where the slab slides: a parabola.

    Parameters
    ----------
    slip, slope : array_like
        Slip [mm] and slope [-] at the start.
    curvature : array_like
        Curvature of the slip, q0/(E h), negative where it slides to the left [1/mm].
    distance : array_like
        Distance from the start to the right [mm].

    Returns
    -------
    slip, slope : numpy.ndarray
        There [mm], [-].
    """
    bend = curvature * distance
    return slip + (slope + 0.5 * bend) * distance, slope + bend


def stuck(slip, slope, rate, distance):
    """Slip and its slope where friction is still growing with the slip: sinh and cosh.

    Parameters
    ----------
    slip, slope : array_like
        Slip [mm] and slope [-] at the start.
    rate : array_like
        Rate at which slip fades [1/mm].
    distance : array_like
        Distance from the start to the right [mm].

    Returns
    -------
    slip, slope : numpy.ndarray
        There [mm], [-].
    """
    C, S = np.cosh(rate * distance), np.sinh(rate * distance)
    return slip * C + slope / rate * S, rate * slip * S + slope * C
