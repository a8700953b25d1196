"""Outline of a slab or a wall seen from its broad side: closed loops of straight sides and arcs.

The body lies on the left of one who walks along a loop: the outer loop runs counter-clockwise,
the loop of a hole clockwise.
"""

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

import numpy as np

from crackkit.words import _

_STRAIGHT = 1e-9  # turn of a straight corner [rad]


@dataclass(frozen=True)
class PlaneSide:
    """One side of a loop: a straight line, or an arc of a circle.

    Parameters
    ----------
    name : str
        What the side is called.
    start, end : tuple of float
        Where it begins and ends, x and y [mm].
    turn : float
        Angle by which one who walks along it turns to the left [rad], -pi to pi: 0 for a straight
        side; negative round a hole, where the body lies outside of the circle.

    Raises
    ------
    ValueError
        If the side has no length or turns by more than half a circle.
    """

    name: str
    start: tuple[float, float]
    end: tuple[float, float]
    turn: float = 0.0

    def __post_init__(self):
        if self.start == self.end or abs(self.turn) > np.pi:
            raise ValueError(_("A side has a length and turns by half a circle at most."))

    @cached_property
    def chord(self):
        """From its beginning to its end, as a complex number [mm]."""
        return complex(*self.end) - complex(*self.start)

    @cached_property
    def radius(self):
        """Radius of an arc [mm]; infinite for a straight side."""
        return abs(self.chord / (2.0 * np.sin(0.5 * self.turn))) if self.turn else np.inf

    @cached_property
    def length(self):
        """Length along the side [mm]."""
        return self.radius * abs(self.turn) if self.turn else abs(self.chord)

    @cached_property
    def centre(self):
        """Centre of the circle of an arc, x and y [mm]; None for a straight side."""
        if not self.turn:
            return None
        half = 0.5 * self.turn
        c = complex(*self.start) + 0.5 * self.chord * (1.0 + 1j / np.tan(half))
        return c.real, c.imag

    @cached_property
    def circle(self):
        """Centre x, y and radius of an arc [mm], direction of its middle, half its angle [rad]."""
        outward = self.direction(0.5) - 0.5 * np.pi * np.sign(self.turn)
        return (*self.centre, self.radius, outward, 0.5 * abs(self.turn))

    def points(self, shares):
        """Points along the side.

        Parameters
        ----------
        shares : array_like
            How far along the side, as a share of its length [-], 0 to 1.

        Returns
        -------
        numpy.ndarray
            Their x and y [mm], one row for each; beginning and end exactly as given.
        """
        t = np.asarray(shares, dtype=float)
        part = t
        if self.turn:
            half = 0.5 * self.turn
            part = np.exp(1j * half * (t - 1.0)) * np.sin(half * t) / np.sin(half)
        z = complex(*self.start) + part * self.chord
        found = np.stack([z.real, z.imag], axis=-1)
        found[t == 1.0] = self.end
        return found

    def direction(self, share):
        """Direction in which one walks.

        Parameters
        ----------
        share : float
            How far along the side [-], 0 to 1.

        Returns
        -------
        float
            Angle from the x axis, counter-clockwise [rad].
        """
        return float(np.angle(self.chord)) + self.turn * (share - 0.5)

    def share_of(self, point):
        """How far along the side a point lies.

        Parameters
        ----------
        point : array_like
            Its x and y [mm].

        Returns
        -------
        share, distance : float
            Share of the length of the nearest place on the whole line or circle [-], and how far
            the point is from it [mm].
        """
        z = (complex(*point) - complex(*self.start)) / self.chord
        if not self.turn:
            return z.real, abs(z.imag) * abs(self.chord)
        c = 0.5 * (1.0 + 1j / np.tan(0.5 * self.turn))
        angle = np.angle((z - c) * 1j * np.sign(self.turn))  # from the middle of the arc
        return 0.5 + angle / self.turn, abs(abs(z - c) - abs(c)) * abs(self.chord)

    def cut_at(self, shares):
        """Cut the side into pieces of the same name.

        Parameters
        ----------
        shares : sequence of float
            Where, as shares of the length [-], between 0 and 1 and increasing.

        Returns
        -------
        list of PlaneSide
            The pieces, in order, in [mm].
        """
        ends = [self.start, *map(tuple, self.points(shares).tolist()), self.end]
        turns = self.turn * np.diff([0.0, *shares, 1.0])
        return [
            PlaneSide(self.name, a, b, float(turn))
            for (a, b), turn in zip(pairwise(ends), turns, strict=True)
        ]


@dataclass(frozen=True)
class PlaneOutline:
    """Outline of a plane body.

    Parameters
    ----------
    loops : tuple of tuple of PlaneSide
        The outer loop, counter-clockwise, then the holes, clockwise; each side begins where the
        one before it ends.

    Raises
    ------
    ValueError
        If a loop does not close, runs the wrong way round, or two sides of different loops share
        a name.
    """

    loops: tuple[tuple[PlaneSide, ...], ...]

    def __post_init__(self):
        for k, loop in enumerate(self.loops):
            closes = all(a.end == b.start for a, b in zip(loop, loop[1:] + loop[:1], strict=True))
            if not closes or (_loop_area(loop) > 0) != (k == 0):
                raise ValueError(_("A loop must close, with the body on its left."))
        names = [side.name for side in self.sides]
        if len(set(names)) < len(names):
            raise ValueError(_("Every side needs a name of its own."))

    @cached_property
    def sides(self):
        """All sides, loop after loop."""
        return tuple(side for loop in self.loops for side in loop)

    @cached_property
    def area(self):
        """Area of the body [mm2], exact also where sides are arcs."""
        return sum(_loop_area(loop) for loop in self.loops)

    @cached_property
    def box(self):
        """Least and greatest x and y of the outer loop: two rows [mm]."""
        shares = np.linspace(0.0, 1.0, 33)
        points = np.concatenate([side.points(shares) for side in self.loops[0]])
        return np.array([points.min(axis=0), points.max(axis=0)])

    @cached_property
    def reach(self):
        """Greater size of the box [mm]."""
        return float(np.ptp(self.box, axis=0).max())

    @cached_property
    def inside_corners(self):
        """Sharp corners at which the body fills more than half a turn: x and y of each [mm]."""
        found = [
            b.start
            for loop in self.loops
            for a, b in zip(loop[-1:] + loop[:-1], loop, strict=True)
            if left_turn(a.direction(1.0), b.direction(0.0)) < -_STRAIGHT
        ]
        return np.array(found).reshape(-1, 2)


def left_turn(before, after):
    """Turn to the left from one direction to another.

    Parameters
    ----------
    before, after : float
        Directions, angles from the x axis [rad].

    Returns
    -------
    float
        Turn [rad], -pi up to pi; one that is a rounding error short of a half turn to the right
        counts as one to the left.
    """
    return (after - before + np.pi - _STRAIGHT) % (2.0 * np.pi) - np.pi + _STRAIGHT


def rounded_loop(corners, names, radii=0.0, rounded_names=None):
    """Make a loop of straight sides whose corners are sharp or rounded.

    Parameters
    ----------
    corners : array_like
        Corners x, y in walking order, the body on the left [mm], one row for each.
    names : sequence of str
        Name of the side that begins at each corner.
    radii : float or array_like
        Radius at each corner [mm], 0 = sharp; where two rounded corners use up all of a side
        (within a rounding error) the side is left out.
    rounded_names : sequence of str, optional
        Name of the arc at each corner; where it is missing, "corner of" the side that begins there.

    Returns
    -------
    tuple of PlaneSide
        The loop, sizes in [mm].

    Raises
    ------
    ValueError
        If the rounded corners do not fit on a side.
    """
    z = np.array([complex(x, y) for x, y in corners])
    chords = np.roll(z, -1) - z
    unit = chords / abs(chords)
    turns = np.angle(unit / np.roll(unit, 1))
    radii = np.broadcast_to(np.asarray(radii, dtype=float), z.shape)
    cut = radii * abs(np.tan(0.5 * turns))
    left = abs(chords) - cut - np.roll(cut, -1)
    if left.min() < -1e-9 * abs(chords).max():
        raise ValueError(_("The rounded corners are larger than the sides between them."))
    first, last = z + cut * unit, np.roll(z, -1) - np.roll(cut, -1) * unit
    gone = left < 1e-9 * abs(chords).max()
    last = np.where(gone, first, last)
    loop = []
    for k in range(z.size):
        if cut[k] > 0:
            name = rounded_names[k] if rounded_names else f"corner of {names[k]}"
            loop.append(PlaneSide(name, _xy(last[k - 1]), _xy(first[k]), float(turns[k])))
        if not gone[k]:
            loop.append(PlaneSide(names[k], _xy(first[k]), _xy(last[k])))
    return tuple(loop)


def _xy(z):
    return float(z.real), float(z.imag)


def _loop_area(loop):
    """Area inside of a loop, counter-clockwise positive: its chords and what arcs add to them."""
    polygon = sum((complex(*s.start).conjugate() * complex(*s.end)).imag for s in loop) / 2.0
    arcs = sum(0.5 * s.radius**2 * (s.turn - np.sin(s.turn)) for s in loop if s.turn)
    return float(polygon + arcs)
