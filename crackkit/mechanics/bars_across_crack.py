"""Bars that cross a crack in the plane of a slab: where, how they are anchored, how hard they pull.

A bar is a spring between the concrete on one side of the crack and that on the other. Its ends
hold on to the concrete over some length, not at a point, so its elongation is the mean movement
along itself over such a length on one side, less that on the other; concrete that shrinks beside
the crack takes its part of that away. It pulls along itself only: a bar that crosses at a slant
acts by the cosine, and dowel action (a bar that is bent where the faces slide) is neglected. Seen
in its plane, a slab has no depth: whether the bar lies near the face where the crack is widest is
not asked here.
"""

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from crackkit.mechanics.bond import BondLaw
from crackkit.mechanics.plane_meeting import cross, meeting_shares

_GRIP = 20.0  # diameters over which a bar hands its force to the concrete
_CONFINED = 5.0  # diameters of cover from which a bar pulls out and does not split its cover
FINE = 2e-3  # mm of elongation below which the law is a straight line
_STATIONS = 12
# mm, close enough that bends, where a bar begins to slip or to yield, are met to 0.2 %
_TABLE = np.concatenate([[0.0], np.geomspace(FINE, 10.0, 1200)])


@dataclass(frozen=True)
class SlabBar:
    """A straight bar, or several one above the other, in the plane of a slab.

    Parameters
    ----------
    start, end : tuple of float
        Its ends, x and y [mm].
    diameter : float
        Diameter [mm], above 0.
    area : float
        Area of its cross-section [mm2], above 0.
    bond : BondLaw
        How the concrete holds it; see `near_surface` where its cover is small.
    number : int
        Bars one above the other [-].
    modulus : float
        Modulus of steel [MPa].
    yield_stress : float
        Stress at which it yields [MPa].
    """

    start: tuple
    end: tuple
    diameter: float
    area: float
    bond: BondLaw
    number: int = 1
    modulus: float = 200e3
    yield_stress: float = 500.0

    def stress(self, elongation, anchorage):
        """Stress where the bar crosses the crack.

        Bond does as much work as the bar takes up: stress^2 = (8 Es/phi) integral of tau ds up
        to half of the elongation, for a bar that is long (Balazs 1993, ACI Materials Journal
        90(4), from memory). A short end slips as a whole; it holds no more than its surface
        times the bond stress. Squeezed, the bar does nothing: the concrete does it.

        Parameters
        ----------
        elongation : array_like
            Elongation across the crack [mm].
        anchorage : array_like
            Length of bar on that side of the crack where it is shorter [mm], above 0.

        Returns
        -------
        numpy.ndarray
            Stress [MPa]; it grows evenly up to 0.002 mm, where the law would begin infinitely
            steep.
        """
        e = np.maximum(np.asarray(elongation, dtype=float), 0.0)
        slip = 0.5 * np.maximum(e, FINE)
        long = np.sqrt(8.0 * self.modulus / self.diameter * self.bond.work(slip))
        surface = np.pi * self.diameter * anchorage
        short = surface * np.minimum(self.bond.stress(slip), self.bond.peak) / self.area
        stress = np.minimum(np.minimum(long, short), self.yield_stress)
        return stress * np.minimum(e / FINE, 1.0)


@dataclass(frozen=True, eq=False)
class Crossing:
    """A bar that crosses a crack.

    Parameters
    ----------
    bar : SlabBar
        The bar.
    number : int
        Its place in the list that was given [-].
    along : float
        Distance from the mouth of the crack to where the bar crosses it [mm].
    cosine : float
        Of the angle between the bar and the square to the crack [-], 0 to 1.
    anchorage : float
        Length inside of the concrete on the shorter side [mm].
    row : numpy.ndarray
        Elongation from the displacements of all nodes [-], shape (2 n,).
    """

    bar: SlabBar
    number: int
    along: float
    cosine: float
    anchorage: float
    row: np.ndarray


@dataclass(frozen=True, eq=False)
class BarForces:
    """What all bars across a crack pull, from a table that is read quickly.

    Parameters
    ----------
    forces : numpy.ndarray
        Force of each bar, all that lie one above the other together, at each elongation of the
        table [N], shape (bars, elongations).
    """

    forces: np.ndarray

    @cached_property
    def slopes(self):
        """How fast the force grows from each elongation to the next [N/mm]; level at the end."""
        steep = np.diff(self.forces, axis=1) / np.diff(_TABLE)
        return np.concatenate([steep, np.zeros((len(steep), 1))], axis=1)

    @cached_property
    def works(self):
        """Work taken up to each elongation of the table [N mm]."""
        steps = 0.5 * (self.forces[:, 1:] + self.forces[:, :-1]) * np.diff(_TABLE)
        return np.concatenate([np.zeros((len(steps), 1)), np.cumsum(steps, axis=1)], axis=1)

    def pull(self, elongation):
        """Pull of each bar.

        Parameters
        ----------
        elongation : numpy.ndarray
            Elongation of each bar [mm], shape (bars,).

        Returns
        -------
        force, slope : numpy.ndarray
            Force [N] and how fast it grows [N/mm], shape (bars,).
        """
        at, k, beyond = self._place(elongation)
        slope = np.where(elongation > 0.0, self.slopes[at, k], 0.0)
        return self.forces[at, k] + slope * beyond, slope

    def stored(self, elongation):
        """Work that each bar and its bond have taken up.

        Parameters
        ----------
        elongation : numpy.ndarray
            Elongation of each bar [mm], shape (bars,).

        Returns
        -------
        numpy.ndarray
            Integral of the force over the elongation [N mm], shape (bars,).
        """
        at, k, beyond = self._place(elongation)
        rise = 0.5 * self.slopes[at, k] * beyond
        return self.works[at, k] + (self.forces[at, k] + rise) * beyond

    def _place(self, elongation):
        e = np.maximum(elongation, 0.0)
        k = np.searchsorted(_TABLE, e, side="right") - 1
        return np.arange(len(e)), k, e - _TABLE[k]


def bar_forces(crossings):
    """Table of what bars pull.

    Parameters
    ----------
    crossings : sequence of Crossing
        Bars that cross the crack.

    Returns
    -------
    BarForces
        Forces [N] for elongations up to 10 mm.
    """
    rows = np.zeros((len(crossings), len(_TABLE)))
    alike = {}
    for k, each in enumerate(crossings):
        alike.setdefault(replace(each.bar, start=(), end=(), number=1), []).append(k)
    for bar, members in alike.items():  # bars of one kind differ in their anchorage alone
        anchorage = np.array([crossings[k].anchorage for k in members])[:, None]
        area = bar.area * np.array([crossings[k].bar.number for k in members])[:, None]
        rows[members] = area * bar.stress(_TABLE, anchorage)
    return BarForces(rows)


def near_surface(bond, cover, diameter):
    """Bond of a bar whose cover splits before it is pulled out.

    The bond stress follows the same curve, but only up to a share of its peak: the square root of
    the cover over five diameters (fib Model Code 2010, 6.1.1.3 and 6.1.3.3, from memory). It is
    kept from there, as long as the slip is smaller than that at which bond falls.

    Parameters
    ----------
    bond : BondLaw
        Bond of a bar far from any surface.
    cover : float
        Concrete between the bar and the nearest surface [mm], above 0.
    diameter : float
        Diameter [mm].

    Returns
    -------
    BondLaw
        The same law with a lower peak [MPa]; the law itself from five diameters on.
    """
    share = min((cover / (_CONFINED * diameter)) ** 0.5, 1.0)
    if share == 1.0:
        return bond
    first = bond.peak_slip * share ** (1.0 / bond.exponent)
    peak = bond.peak * share
    rest = bond.level_end, bond.friction_slip, bond.exponent, min(bond.friction, peak)
    return BondLaw(peak, first, *rest)


def crossings(mesh, line, bars):
    """Find the bars that cross a crack.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles, split along the line.
    line : CrackLine
        The line.
    bars : sequence of SlabBar
        All bars, wherever the crew left them.

    Returns
    -------
    tuple of Crossing
        Those that cross the line and hold on to concrete on both sides of it, in their order
        [mm].
    """
    met = _met(line, bars) if bars else []
    if not met:
        return ()
    rows = _rows(mesh, met)
    return tuple(
        Crossing(bar, k, where[1], abs(where[2]), row[1], row[0])
        for (k, bar, where), row in zip(met, rows, strict=True)
        if row is not None
    )


def _met(line, bars):
    """Bars that meet the line: number, bar, and where on the bar, where on the line, and the
    cosine there, signed.
    """
    start = np.array([bar.start for bar in bars], dtype=float)
    way = np.array([bar.end for bar in bars], dtype=float) - start
    a, step = line.ends[:-1], np.diff(line.ends, axis=0)
    on_bar, on_line = meeting_shares(start, way, a, step)
    hit = (on_bar > 0) & (on_bar < 1) & (on_line >= 0) & (on_line < 1)
    size, length = np.hypot(*way.T), np.hypot(*step.T)
    before = np.cumsum(length) - length
    found = []
    for b in np.flatnonzero(hit.any(axis=1)).tolist():
        k = int(np.argmax(hit[b]))
        cosine = cross(step[k], way[b]) / (length[k] * size[b])
        along = before[k] + on_line[b, k] * length[k]
        found.append((b, bars[b], (on_bar[b, k] * size[b], float(along), float(cosine))))
    return found


def _rows(mesh, met):
    """Row and anchorage of each bar; None where one of its sides hangs in the air."""
    from crackkit.mechanics.plane_elements import shapes
    from crackkit.mechanics.plane_sampling import located

    distance, places, way, whole = _stations(met)
    which, shares = located(mesh, places.reshape(-1, 2))
    inside = (which >= 0).reshape(distance.shape)
    # up to where the bar leaves the concrete
    within = np.cumprod(inside, axis=2)
    held = within.sum(axis=2)
    weights = shapes(np.where(which[:, None] >= 0, shares, 0.0)).reshape(*distance.shape, 6)
    mean = within * np.array([[-1.0], [1.0]]) / np.maximum(held, 1)[..., None]
    rows = np.zeros((len(met), len(mesh.points), 2))
    bars = np.arange(len(met))[:, None, None, None]
    nodes = mesh.triangles[which].reshape(weights.shape)
    np.add.at(
        rows, (bars, nodes), (mean[..., None] * weights)[..., None] * way[:, None, None, None]
    )
    reached = distance[..., 0] * 2 * held  # as many steps as lie inside of the concrete
    length = np.where(held < _STATIONS, reached, whole).min(axis=1)
    return [
        (row.ravel(), float(size)) if there else None
        for row, size, there in zip(rows, length, held.all(axis=1), strict=True)
    ]


def _stations(met):
    """Distances from the crack on both sides of each bar, where that is, the way along the bar,
    and how long its sides are.
    """
    start = np.array([bar.start for _k, bar, _where in met], dtype=float)
    way = np.array([bar.end for _k, bar, _where in met], dtype=float) - start
    size = np.hypot(*way.T)
    way /= size[:, None]
    along = np.array([where[0] for _k, _bar, where in met])
    whole = np.stack([along, size - along], axis=1)
    grip = _GRIP * np.array([bar.diameter for _k, bar, _where in met])
    room = np.minimum(whole, grip[:, None])
    distance = room[..., None] * (np.arange(_STATIONS) + 0.5) / _STATIONS
    signed = along[:, None, None] + distance * np.array([[-1.0], [1.0]])
    places = start[:, None, None] + signed[..., None] * way[:, None, None]
    return distance, places, way, whole
