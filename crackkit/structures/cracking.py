"""Which cracks open in a bent member, what crosses them, and how wide they are.

A cracked zone is cut at the ends of the bars, so that one set of bars crosses all cracks of a
piece. Cracks stand where the member is bent most and from there outwards at the mean spacing of
the code family; where bars would slip near their ends, the nearest crack is moved to the worst
place, so that no short-cut bar goes unnoticed between two cracks.
"""

import math

import numpy as np

from crackkit.mechanics.crack_path import crack_paths
from crackkit.mechanics.crack_width import all_widths, band, en_2004, frosch
from crackkit.structures.crossing import Crossing, crack_zone, crossing
from crackkit.structures.member import Member
from crackkit.structures.outcome import Crack, TensionZone, WidthBand
from crackkit.structures.stretching import Stretch, peaks

GOVERNING = {"ACI": "gergely_lutz", "EN": "en_2004"}
SPACING_RULE = {"ACI": frosch, "EN": en_2004}
MEAN_TO_LARGEST = {"ACI": 1.5 / 2.0, "EN": 1 / 1.7}  # Frosch 1999; EN 1992-1-1 (history of 7.8)
MOST_CRACKS = 100  # on the whole member; closer ones are thinned evenly
THROUGH = 0.04  # share of the depth that stays under a crack nothing holds, for the drawing
PATH_STEPS = 8
INSIDE = 0.5  # mm that a crack keeps from the end of a bar, so that it is clear what crosses it
SHORTEST = 1.0  # mm; no shorter piece of a cracked zone counts


def cracks(stretched: Stretch, zones: tuple[TensionZone, ...]) -> tuple[Crack, ...]:
    """Predict every crack of the member, zone by zone from left to right."""
    found = []
    for zone in zones:
        for start, end in zone.cracked:
            for a, b in pieces(stretched.member, start, end):
                _add(found, _cracks_of_piece(stretched, zone.face, a, b))
    return tuple(found)


def _add(found: list[Crack], more: list[Crack]) -> None:
    """Add the cracks of a piece; of two cracks that meet at a bar's end the graver one stays."""
    if found and abs(found[-1].at - more[0].at) < 4 * INSIDE and found[-1].face == more[0].face:
        graver = max(found.pop(), more.pop(0), key=_strain)
        found.append(graver)
    found.extend(more)


def _strain(crack: Crack) -> float:
    if crack.width is None:
        return math.inf
    return crack.steel_stress / max(crack.developed, 1e-9)


def pieces(member: Member, start: float, end: float) -> list[tuple[float, float]]:
    """Cut a cracked zone [mm] at the ends of the bars."""
    ends = {place for item in member.layers for place in (item.start, item.end)}
    cuts = [start, *sorted(p for p in ends if start + SHORTEST < p < end - SHORTEST), end]
    return list(zip(cuts[:-1], cuts[1:], strict=True))


def _cracks_of_piece(stretched: Stretch, face: str, start: float, end: float) -> list[Crack]:
    held = crossing(stretched, face, (start + end) / 2)
    seeds = _most_bent(stretched, start, end)
    if not held.stretched:
        return _made(stretched, held, _clear(seeds, start, end))
    spacing = mean_spacing(stretched.member, held, _steel_stress(stretched, held, seeds[0]))
    spacing = max(spacing, stretched.member.length / MOST_CRACKS)
    slips = _slipping(stretched, held, start, end)
    at = _snapped(places(seeds, start, end, spacing), slips, seeds, spacing)
    return _made(stretched, held, _clear(at, start, end))


def _clear(at, start: float, end: float) -> np.ndarray:
    inside = min(INSIDE, (end - start) / 4)
    return np.clip(np.asarray(at, dtype=float), start + inside, end - inside)


def _most_bent(stretched: Stretch, start: float, end: float) -> list[float]:
    x = np.array([start, *stretched.x[(stretched.x > start) & (stretched.x < end)], end])
    return peaks(x, np.abs(np.interp(x, stretched.x, stretched.moment)))


def mean_spacing(member: Member, held: Crossing, steel_stress: float) -> float:
    """Mean distance of cracks [mm] by the rule of the code family."""
    rule = SPACING_RULE[member.code](crack_zone(member, held, steel_stress))
    return float(rule.spacing) * MEAN_TO_LARGEST[member.code]


def places(seeds, start: float, end: float, spacing: float) -> np.ndarray:
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
    rows = [seeds[0] - spacing * np.arange(left, 0, -1)]
    for a, b in zip(seeds[:-1], seeds[1:], strict=True):
        rows.append(np.linspace(a, b, max(_fitting(b - a, spacing), 1), endpoint=False))
    return np.concatenate([*rows, seeds[-1] + spacing * np.arange(right + 1)])


def _fitting(room: float, spacing: float) -> int:
    # a hair more room, so that rounding does not decide on the last crack
    return max(math.floor(room / spacing + 1e-6), 0)


def _slipping(stretched: Stretch, held: Crossing, start: float, end: float) -> list[float]:
    """Places where the bars need most of what they can build up, if they would slip there."""
    index, _outer = held.outermost
    inside = (stretched.x >= start) & (stretched.x <= end)
    x, share = stretched.x[inside], stretched.states.share[index][inside]
    if share.size == 0 or share.min() >= 1.0:
        return []
    stress = _steel_stress(stretched, held, x)
    need = stress / (np.maximum(share, 1e-9) * stretched.member.yield_strength)
    return peaks(x, need) if need.max() > 1.0 else []


def _snapped(at: np.ndarray, targets, seeds, spacing: float) -> np.ndarray:
    """Move the nearest crack to each target, but none away from a seed; else add one."""
    for target in targets:
        if min(abs(target - seed) for seed in seeds) < SHORTEST:
            continue
        gap = np.where(np.isin(at, seeds), math.inf, np.abs(at - target))
        chosen = int(np.argmin(gap))
        kept = np.delete(at, chosen) if gap[chosen] < spacing else at
        at = np.append(kept, target)
    return np.sort(at)


def _steel_stress(stretched: Stretch, held: Crossing, at):
    """Stress in the outermost bars at cracks `at` [MPa]."""
    _index, outer = held.outermost
    moment = np.interp(at, stretched.x, stretched.moment)
    return stretched.member.ratio * moment * (outer.depth - held.axis) / held.inertia


def _made(stretched: Stretch, held: Crossing, at: np.ndarray) -> list[Crack]:
    """Make the cracks at places `at`, all crossed by the same bars."""
    rows = zip(at.tolist(), _paths(stretched, held, at), _held(stretched, held, at), strict=True)
    return [Crack(held.face, place, path, *row) for place, path, row in rows]


def _paths(stretched: Stretch, held: Crossing, at) -> np.ndarray:
    depth = stretched.member.section.depth
    return crack_paths(
        at,
        held.face,
        _tip(held, depth),
        depth,
        stretched.x,
        stretched.moment,
        stretched.shear,
        steps=PATH_STEPS,
    )


def _tip(held: Crossing, depth: float) -> float:
    if held.stretched:
        return held.axis
    return THROUGH * depth if held.face == "bottom" else depth - THROUGH * depth


def _held(stretched: Stretch, held: Crossing, at) -> list[tuple]:
    """Width, steel stress, bars and developed share of each crack."""
    if not held.stretched:
        return [(None, 0.0, (), 0.0)] * len(at)
    index, _outer = held.outermost
    stress = _steel_stress(stretched, held, at)
    share = np.interp(at, stretched.x, stretched.states.share[index])
    widths = all_widths(crack_zone(stretched.member, held, stress))
    keys = tuple(item.key for _i, item in held.stretched)
    bands = _bands(widths, stretched.member.code, len(at))
    rows = zip(bands, stress.tolist(), share.tolist(), strict=True)
    return [(width, pull, keys, part) for width, pull, part in rows]


def _bands(widths, code: str, count: int) -> list[WidthBand]:
    low, middle, high = (np.broadcast_to(v, count).tolist() for v in band(widths))
    names = [w.rule for w in widths]
    table = np.empty((count, len(widths)))
    for column, answer in enumerate(widths):
        table[:, column] = answer.width
    chosen = names.index(GOVERNING[code])
    rule = widths[chosen].rule, widths[chosen].name
    return [
        WidthBand(a, b, c, row[chosen], *rule, tuple(zip(names, row, strict=True)))
        for a, b, c, row in zip(low, middle, high, table.tolist(), strict=True)
    ]
