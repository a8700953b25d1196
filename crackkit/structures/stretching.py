"""Where a bent member is stretched, and where the stretch is more than the concrete can bear."""

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.structures.member import Member, States, states
from crackkit.structures.outcome import TensionZone

FACES = ("bottom", "top")
SENSE = {"bottom": 1, "top": -1}


@dataclass(frozen=True)
class Stretch:
    """Bending along the member and what it does to the uncracked concrete.

    Attributes
    ----------
    x, moment, shear : ndarray, shape (n,)
        Stations [mm], sagging moment [N mm], shear [N].
    states : States
        Section states at the stations.
    face_ratio : dict of ndarray
        Pull at each face as a multiple of the cracking strength [-].
    """

    member: Member
    x: np.ndarray
    moment: np.ndarray
    shear: np.ndarray
    states: States
    face_ratio: dict

    @cached_property
    def places(self) -> list[float]:
        """The stations [mm] once more: a few numbers are sooner looked at one by one."""
        return self.x.tolist()

    @cached_property
    def moments(self) -> list[float]:
        """The moments at the stations [N mm] once more."""
        return self.moment.tolist()

    @property
    def cracked(self) -> np.ndarray:
        """Whether the section cracks at each station."""
        return np.maximum(self.face_ratio["bottom"], self.face_ratio["top"]) > 1.0

    @property
    def row(self) -> np.ndarray:
        """Row of the section state at each station: 0 uncracked, 1 bottom, 2 top cracked."""
        return np.where(self.cracked, np.where(self.moment >= 0, 1, 2), 0)


def stretch(member: Member, x, moment, shear) -> Stretch:
    """Work out the pull at both faces at stations x [mm] for moment [N mm] and shear [N]."""
    along = states(member, x)
    per_moment = moment / (along.inertia[0] * member.cracking_strength)
    ratios = {
        "bottom": per_moment * (along.depth - along.axis[0]),
        "top": -per_moment * along.axis[0],
    }
    return Stretch(member, x, moment, shear, along, ratios)


def intervals(x: np.ndarray, y: np.ndarray) -> list[tuple[float, float]]:
    """List the stretches of x where y is positive, ends placed by straight-line interpolation."""
    inside = y > 0
    edges = np.flatnonzero(inside[1:] != inside[:-1])
    # the crossing between two stations, where y changes sign
    crossings = x[edges] - y[edges] * (x[edges + 1] - x[edges]) / (y[edges + 1] - y[edges])
    bounds = crossings.tolist()
    if inside[0]:
        bounds.insert(0, float(x[0]))
    if inside[-1]:
        bounds.append(float(x[-1]))
    return list(zip(bounds[::2], bounds[1::2], strict=True))


def peaks(x: np.ndarray, y: np.ndarray) -> list[float]:
    """List the places where y is largest: the middle of each stretch where it stays so.

    What is the same to one part in a million counts as the same, so that a beam and its mirror
    image have mirrored peaks.
    """
    top = y.max()
    return _middles(x, np.flatnonzero(y >= top - 1e-6 * abs(top)).tolist())


def peaks_of_few(x: list[float], y: list[float]) -> list[float]:
    """List the same as `peaks` for so few numbers that lists are quicker than arrays."""
    top = max(y)
    least = top - 1e-6 * abs(top)
    return _middles(x, [k for k, value in enumerate(y) if value >= least])


def _middles(x, high: list[int]) -> list[float]:
    """Middles of the runs of neighbours among the numbers of the highest places."""
    found, first, last = [], high[0], high[0]
    for k in high[1:]:
        if k != last + 1:
            found.append(0.5 * float(x[first] + x[last]))
            first = k
        last = k
    return [*found, 0.5 * float(x[first] + x[last])]


def between(at: float, x: list[float], y: list[float]) -> float:
    """Read y off at one place, straight between its neighbours: ``np.interp`` for one place."""
    k = bisect_right(x, at) - 1
    if k < 0:
        return y[0]
    if k == len(x) - 1 or x[k] == at:
        return y[k]
    return (y[k + 1] - y[k]) / (x[k + 1] - x[k]) * (at - x[k]) + y[k]


def nearest(places, middle: float) -> float:
    """Of several places [mm], the one nearest the middle."""
    return min(places, key=lambda place: round(abs(place - middle), 3))


def tension_zones(stretched: Stretch) -> tuple[TensionZone, ...]:
    """List the zones of both faces where the concrete is pulled, and where it cracks."""
    zones = []
    for face in FACES:
        ratio = stretched.face_ratio[face]
        cracking = intervals(stretched.x, ratio - 1.0)
        for start, end in intervals(stretched.x, ratio - 1e-6):
            zones.append(_zone(stretched.x, ratio, face, start, end, cracking))
    return tuple(zone for zone in zones if zone.end - zone.start > 1.0)


def _zone(x, ratio, face, start, end, cracking) -> TensionZone:
    inside = slice(x.searchsorted(start), x.searchsorted(end, side="right"))
    values = ratio[inside]
    at = nearest(peaks(x[inside], values), (start + end) / 2)
    parts = tuple((a, b) for a, b in cracking if a >= start - 1e-6 and b <= end + 1e-6)
    return TensionZone(face, start, end, float(values.max()), at, parts)
