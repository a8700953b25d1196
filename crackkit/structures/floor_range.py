"""What a floor must bear, whatever the loads that come and go do; which places no bar guards."""

from bisect import bisect_left, bisect_right
from dataclasses import replace
from functools import cached_property

import numpy as np

from crackkit.mechanics import beam as beams
from crackkit.mechanics.envelope import Envelope, moment_envelope
from crackkit.structures.cracking import worst_cracks
from crackkit.structures.crossing import LEVEL, ROW
from crackkit.structures.judging import Case
from crackkit.structures.moment_range import (
    NO_BAR,
    SLIPS,
    TOO_FEW,
    Arrangement,
    Gap,
    MomentRange,
)
from crackkit.structures.outcome import TIGHT, UNCRACKED, Verdict
from crackkit.structures.stretching import SENSE, Stretch, intervals, nearest, peaks, tension_zones
from crackkit.structures.worst_place import breaks_at
from crackkit.words import _

POSITIONS = 60  # of a travelling load, on the whole length
SHORTEST = 1.0  # mm; no shorter gap counts


def moment_range(floor, elastic: Stretch, shifted: np.ndarray) -> MomentRange:
    """Work out the moments of every arrangement, and the stretches that no bar guards.

    Parameters
    ----------
    floor : ContinuousBeam
    elastic : Stretch
        Present bending as if nothing had cracked.
    shifted : ndarray
        Present moments as cracks shift them [N mm].
    """
    found = envelope(floor, elastic.x, elastic.member.stiffness)
    sides = {
        "bottom": _bent(elastic, np.maximum(found.sagging, 0.0)),
        "top": _bent(elastic, np.minimum(found.hogging, 0.0)),
    }
    stretched, gaps, opened, borne = [], [], [], {}
    arrangement = _Arrangements(floor, found)
    for face, side in sides.items():
        zones = tension_zones(side)
        stretched += [(face, a, b) for zone in zones for a, b in zone.cracked]
        opened += worst_cracks(side, zones)
        borne[face] = bears(side, face)
        gaps += _gaps(side, face, borne[face], arrangement)
    cracks_bottom, cracks_top = cracking_moments(elastic)
    return MomentRange(
        x=elastic.x,
        sagging=found.sagging,
        hogging=found.hogging,
        elastic=elastic.moment,
        shifted=shifted,
        cracks_bottom=cracks_bottom,
        cracks_top=cracks_top,
        bears_bottom=borne["bottom"],
        bears_top=-borne["top"],
        stretched=tuple(stretched),
        gaps=tuple(sorted(gaps, key=lambda gap: gap.start - gap.end)),
        cracks=tuple(opened),
        arrangement=arrangement,
    )


def envelope(floor, x: np.ndarray, stiffness: float) -> Envelope:
    """Work out the largest and smallest moments at stations x [mm], EI [N mm2] being even."""
    own = floor.dead_load + floor.own_weight
    always = [beams.LineLoad(0.0, floor.length, own, own)] if own else []
    rows = zip(floor.places, floor.places[1:], strict=False)
    load = floor.live_load
    live = [beams.LineLoad(a, b, load, load) for a, b in rows] if load else []
    forces = [one.force for one in floor.hung]
    positions = np.linspace(0.0, floor.length, POSITIONS)
    return moment_envelope(
        floor.length, floor.held_by, always, live, forces, positions, x, stiffness
    )


def cracking_moments(stretched: Stretch) -> tuple[np.ndarray, np.ndarray]:
    """Moments that crack the bottom (positive) and the top (negative) at the stations [N mm]."""
    along = stretched.states
    bears = stretched.member.cracking_strength * along.inertia[0]
    return bears / (along.depth - along.axis[0]), -bears / along.axis[0]


def _bent(elastic: Stretch, moment: np.ndarray) -> Stretch:
    """The same member under other moments [N mm]."""
    bottom, top = cracking_moments(elastic)
    ratios = {"bottom": moment / bottom, "top": moment / top}
    # cracks of the range are not drawn: they need no shear
    return replace(elastic, moment=moment, shear=np.zeros_like(moment), face_ratio=ratios)


class _Arrangements:
    """Which arrangement of the loads stretches a face most at a place."""

    def __init__(self, floor, found: Envelope):
        self.floor, self.found = floor, found
        self.moving = tuple(k for k, load in enumerate(floor.loads) if load.force)
        self.stations, self.inner = found.x.tolist(), floor.places[1:-1]
        self.told = {}

    @cached_property
    def governs(self) -> dict[str, tuple[list, list]]:
        """For each face, at each station: which spans are loaded, and where loads stand."""
        found = self.found
        return {
            "bottom": (found.live_sagging.T.tolist(), found.at_sagging.T.tolist()),
            "top": (found.live_hogging.T.tolist(), found.at_hogging.T.tolist()),
        }

    def __call__(self, face: str, place: float) -> Arrangement:
        k = self._nearest(place)
        live, at = self.governs[face]
        spans = tuple([n for n, on in enumerate(live[k], 1) if on])
        # a place that is not a number is that of a load that is away
        places = tuple([None if p != p else p for p in at[k]])
        words = self._words(spans, tuple([self._span_of(p) for p in places]))
        return Arrangement(spans, places, words, len(self.inner) + 1, self.moving)

    def _nearest(self, place: float) -> int:
        """Number of the station nearest a place [mm]; of two alike the first."""
        k = min(max(bisect_left(self.stations, place), 1), len(self.stations) - 1)
        before, after = self.stations[k - 1], self.stations[k]
        return k - 1 if place - before <= after - place else k

    def _words(self, spans, loaded) -> str:
        """Words for an arrangement; neighbouring places mostly have the same."""
        if (spans, loaded) not in self.told:
            self.told[spans, loaded] = arrangement_words(spans, loaded)
        return self.told[spans, loaded]

    def _span_of(self, place) -> int | None:
        return None if place is None else bisect_right(self.inner, place) + 1


def arrangement_words(spans: tuple[int, ...], loaded: tuple[int | None, ...]) -> str:
    """Say where the loads that come and go stand.

    Parameters
    ----------
    spans : tuple of int
        Spans that carry live load, counted from 1.
    loaded : tuple of (int or None)
        Span on which each travelling load stands; None where it is away.
    """
    told = []
    if spans:
        one, many = _("live load on span {n}"), _("live load on spans {n}")
        text = one if len(spans) == 1 else many
        told.append(text.format(n=listed([str(n) for n in spans])))
    on = [str(n) for n in dict.fromkeys(loaded) if n is not None]
    if on:
        told.append(_("the travelling load on span {n}").format(n=listed(on)))
    return _(", ").join(told) if told else _("no live load anywhere")


def listed(words: list[str]) -> str:
    """Join words: a, b and c."""
    if len(words) < 2:
        return "".join(words)
    return _("{first} and {last}").format(first=", ".join(words[:-1]), last=words[-1])


def _gaps(side: Stretch, face: str, borne: np.ndarray, arrangement) -> list[Gap]:
    beyond, pulled = np.abs(side.moment) - borne, _pulled(side, face)
    found = []
    for a, b in _both(intervals(side.x, side.face_ratio[face] - 1.0), intervals(side.x, beyond)):
        at, fault = _fault(side, face, pulled, a, b)
        found.append(Gap(face, a, b, at, fault, arrangement(face, at)))
    return found


def bears(side: Stretch, face: str) -> np.ndarray:
    """Moment that makes the outermost bars across a crack of a face give way [N mm].

    They give way at the stress that they can build up at each station, by their developed
    share; bars that lap at one depth bear together. Where nothing holds a crack it is 0.
    """
    along, member, row = side.states, side.member, ROW[face]
    outward, pulled = SENSE[face] * along.bar_depth, _pulled(side, face)
    if not pulled.any():
        return np.zeros(side.x.size)
    outermost = np.where(pulled, outward, -np.inf).max(axis=0)
    areas = np.array([item.area for item in member.layers]).reshape(-1, 1)
    beside = areas * (pulled & (outward > outermost - LEVEL))
    share = (along.share * beside).sum(axis=0) / np.maximum(beside.sum(axis=0), 1e-9)
    lever = np.where(pulled.any(axis=0), outermost - SENSE[face] * along.axis[row], 1.0)
    return share * member.yield_strength * along.inertia[row] / (member.ratio * lever)


def _pulled(side: Stretch, face: str) -> np.ndarray:
    """Where each layer crosses on the stretched side of a crack that is held."""
    along, row = side.states, ROW[face]
    beyond = SENSE[face] * (along.bar_depth - along.axis[row]) > 0
    return along.present & beyond & (along.inertia[row] > 0)


def _both(some, others) -> list[tuple[float, float]]:
    """Stretches [mm] that lie in one list and in the other."""
    cut = [(max(a, c), min(b, d)) for a, b in some for c, d in others]
    return [(a, b) for a, b in cut if b - a > SHORTEST]


def _fault(side: Stretch, face: str, pulled, start: float, end: float) -> tuple[float, str]:
    """Give the worst place of a gap [mm] and what is amiss there.

    Where some of it is crossed by no bar at all, the worst place is sought there; else bars end
    too close by, or are too few. `pulled` tells where each layer crosses, see `_pulled`.
    """
    inside = (side.x >= start) & (side.x <= end)
    bare = inside & ~pulled.any(axis=0)
    if bare.any():
        return _worst(side, face, bare), NO_BAR
    if not inside.any():
        return (start + end) / 2, SLIPS
    at = _worst(side, face, inside)
    k = int(np.argmin(np.abs(side.x - at)))
    short = (side.states.share[:, k][pulled[:, k]] < 1.0 - 1e-6).any()
    return at, SLIPS if short else TOO_FEW


def _worst(side: Stretch, face: str, chosen: np.ndarray) -> float:
    """The most stretched of the chosen stations [mm], of several alike the one in the middle."""
    x, ratio = side.x[chosen], side.face_ratio[face][chosen]
    return nearest(peaks(x, ratio), float(x[0] + x[-1]) / 2)


def range_case(shown: Stretch, found: MomentRange) -> Case:
    """What verdict and cautions look at when every arrangement counts."""
    broken = any(crack.width is None for crack in found.cracks) or _crushed(shown, found)
    return Case(shown.member, (), found.cracks, broken)


def _crushed(shown: Stretch, found: MomentRange) -> bool:
    """Whether some arrangement is more than the section can bear, bars and concrete together."""
    for face, moment in (("bottom", found.sagging), ("top", found.hogging)):
        own = [crack for crack in found.cracks if crack.face == face]
        if own and breaks_at(replace(shown, moment=moment), own) is not None:
            return True
    return False


def worst_words(judged: Verdict, found: MomentRange) -> str:
    """Say which arrangement the verdict is about."""
    if judged.key in (UNCRACKED, TIGHT) or found.widest is None:
        return judged.why
    widest = found.widest
    words = found.arrangement(widest.face, widest.at).words
    return _("{loads}: {why}").format(loads=words[:1].upper() + words[1:], why=judged.why)
