"""Where cracks open in a bent member, and what crosses each of them.

A cracked zone is cut at the ends of the bars, so that one set of bars crosses all cracks of a
piece. Cracks stand where the member is bent most and from there outwards at the mean spacing of
the code family; where bars would slip near their ends, the nearest crack is moved to the worst
place, so that no short-cut bar goes unnoticed between two cracks.
"""

import math
from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from functools import partial

import numpy as np

from crackkit.mechanics.crack_width import en_2004, frosch
from crackkit.structures.crossing import (
    ROW,
    Crossing,
    crack_zone,
    crossing,
    developed_shares,
    spread_out,
    steel_stress,
)
from crackkit.structures.member import Member
from crackkit.structures.outcome import TensionZone
from crackkit.structures.stretching import Stretch, between, peaks, peaks_of_few

SPACING_RULE = {"ACI": frosch, "EN": en_2004}
MEAN_TO_LARGEST = {"ACI": 1.5 / 2.0, "EN": 1 / 1.7}  # Frosch 1999; EN 1992-1-1 (history of 7.8)
MOST_CRACKS = 100  # on the whole member; closer ones are thinned evenly
INSIDE = 0.5  # mm that a crack keeps from the end of a bar, so that it is clear what crosses it
SHORTEST = 1.0  # mm; no shorter piece of a cracked zone counts


@dataclass(frozen=True)
class Piece:
    """A piece of a cracked zone with one set of bars.

    Attributes
    ----------
    held : Crossing
        What crosses its cracks.
    start, end : float
        From where to where [mm].
    """

    held: Crossing
    start: float
    end: float


def pieces(stretched: Stretch, zones: tuple[TensionZone, ...]) -> list[Piece]:
    """Cut all cracked zones into pieces, from left to right in each."""
    return [
        Piece(_crossing(stretched, zone.face, (a + b) / 2), a, b)
        for zone in zones
        for start, end in zone.cracked
        for a, b in cuts(stretched, zone.face, start, end)
    ]


def _crossing(stretched: Stretch, face: str, at: float) -> Crossing:
    """What crosses a piece; the same bars in a member of one depth are looked at once."""
    member = stretched.member
    if member.tapered:
        return crossing(stretched, face, at)
    bars = tuple([k for k, item in enumerate(member.layers) if item.start < at < item.end])
    return member.once((face, bars), partial(crossing, stretched, face, at))


def cuts(stretched: Stretch, face: str, start: float, end: float) -> list[tuple[float, float]]:
    """Cut a cracked zone [mm] at the ends of the bars, and where bars stop to hold."""
    ends = stretched.member.bar_ends
    if stretched.member.tapered:
        ends = sorted({*ends, *_changes(stretched, face)})
    inside = slice(bisect_right(ends, start + SHORTEST), bisect_left(ends, end - SHORTEST))
    at = [start, *ends[inside], end]
    return list(zip(at[:-1], at[1:], strict=True))


def _changes(stretched: Stretch, face: str) -> set[float]:
    """Places where bars of a tapered member come to lie on the stretched side, or leave it."""
    holds = stretched.states.inertia[ROW[face]] > 0
    edges = np.flatnonzero(holds[1:] != holds[:-1])
    return set((0.5 * (stretched.x[edges] + stretched.x[edges + 1])).tolist())


def all_places(stretched: Stretch, piece: Piece) -> list[float]:
    """Every crack of a piece [mm]; where nothing holds, only the ones that open first."""
    seeds = most_bent(stretched, piece.start, piece.end)
    if not piece.held.stretched:
        return _clear(seeds, piece)
    spacing = _spacing(stretched, piece, seeds[0])
    slips = _slipping(stretched, piece)
    return _clear(
        _snapped(places(seeds, piece.start, piece.end, spacing), slips, seeds, spacing), piece
    )


def _spacing(stretched: Stretch, piece: Piece, seed: float) -> float:
    """Distance of the cracks of a piece [mm]; in a member of one depth only bars change it."""
    found = partial(_spacing_at, stretched, piece, seed)
    if stretched.member.tapered:
        return found()
    return stretched.member.once(("spacing", piece.held.likeness), found)


def _spacing_at(stretched: Stretch, piece: Piece, seed: float) -> float:
    at = np.array(_clear([seed], piece))
    first = spread_out(stretched, piece.held, at)
    spacing = mean_spacing(stretched.member, first, steel_stress(stretched, first, at))
    return max(spacing, stretched.member.length / MOST_CRACKS)


def worst_places(stretched: Stretch, piece: Piece) -> list[float]:
    """Only the places of a piece where cracks are widest, and where bars would slip [mm]."""
    seeds = most_bent(stretched, piece.start, piece.end)
    slips = _slipping(stretched, piece) if piece.held.stretched else []
    return _clear(sorted({*seeds, *slips}), piece)


def _clear(at: list[float], piece: Piece) -> list[float]:
    inside = min(INSIDE, (piece.end - piece.start) / 4)
    low, high = piece.start + inside, piece.end - inside
    return [min(max(place, low), high) for place in at]


def most_bent(stretched: Stretch, start: float, end: float) -> list[float]:
    """Places of the largest moment between two places [mm]."""
    x, moment = stretched.places, stretched.moments
    inside = slice(bisect_right(x, start), bisect_right(x, end))
    bent = [between(start, x, moment), *moment[inside], between(end, x, moment)]
    return peaks_of_few([start, *x[inside], end], [abs(value) for value in bent])


def mean_spacing(member: Member, held: Crossing, steel_stress: float) -> float:
    """Mean distance of cracks [mm] by the rule of the code family."""
    rule = SPACING_RULE[member.code](crack_zone(member, held, steel_stress))
    return float(np.max(rule.spacing)) * MEAN_TO_LARGEST[member.code]


def places(seeds, start: float, end: float, spacing: float) -> list[float]:
    """Cracks at the seeds, evenly between them, and outwards from the outer ones [mm].

    Parameters
    ----------
    seeds : sequence of float
        Places of the largest moment, one or more, from left to right [mm].
    start, end : float
        Ends of the cracked piece [mm].
    spacing : float
        Least distance of two cracks [mm].
    """
    left, right = _fitting(seeds[0] - start, spacing), _fitting(end - seeds[-1], spacing)
    found = [seeds[0] - spacing * k for k in range(left, 0, -1)]
    for a, b in zip(seeds[:-1], seeds[1:], strict=True):
        count = max(_fitting(b - a, spacing), 1)
        found += [a + (b - a) / count * k for k in range(count)]
    return found + [seeds[-1] + spacing * k for k in range(right + 1)]


def _fitting(room: float, spacing: float) -> int:
    # a hair more room, so that rounding does not decide on the last crack
    return max(math.floor(room / spacing + 1e-6), 0)


def _slipping(stretched: Stretch, piece: Piece) -> list[float]:
    """Places where the bars need most of what they can build up, if they would slip there."""
    x = stretched.places
    inside = slice(bisect_left(x, piece.start), bisect_right(x, piece.end))
    shares = developed_shares(stretched, piece.held)[inside]
    if not shares or min(shares) >= 1.0:
        return []
    x, share = stretched.x[inside], np.array(shares)
    stress = steel_stress(stretched, spread_out(stretched, piece.held, x), x)
    need = stress / (np.maximum(share, 1e-9) * stretched.member.yield_strength)
    return peaks(x, need) if need.max() > 1.0 else []


def _snapped(at: list[float], targets, seeds, spacing: float) -> list[float]:
    """Move the nearest crack to each target, but none away from a seed; else add one."""
    for target in targets:
        if min(abs(target - seed) for seed in seeds) < SHORTEST:
            continue
        gaps = [math.inf if place in seeds else abs(place - target) for place in at]
        chosen = gaps.index(min(gaps))
        kept = at[:chosen] + at[chosen + 1 :] if gaps[chosen] < spacing else at
        at = [*kept, target]
    return sorted(at)
