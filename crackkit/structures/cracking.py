"""Which cracks open in a bent member, how they run, and how wide they are."""

import math

import numpy as np

from crackkit.mechanics.crack_path import crack_paths
from crackkit.mechanics.crack_width import all_widths, spread
from crackkit.structures.crack_places import INSIDE, Piece, all_places, pieces, worst_places
from crackkit.structures.crossing import (
    Crossing,
    crack_zone,
    developed_shares,
    spread_out,
    steel_stress,
)
from crackkit.structures.outcome import Crack, TensionZone, WidthBand
from crackkit.structures.stretching import Stretch, between

GOVERNING = {"ACI": "gergely_lutz", "EN": "en_2004"}
THROUGH = 0.04  # share of the depth that stays under a crack nothing holds, for the drawing
PATH_STEPS = 8
UNDRAWN = np.zeros((0, 2))  # line of a crack that is not drawn


def cracks(stretched: Stretch, zones: tuple[TensionZone, ...]) -> tuple[Crack, ...]:
    """Predict every crack of the member, zone by zone from left to right."""
    found = _of_pieces(stretched, pieces(stretched, zones), all_places)
    return tuple(_drawn(stretched, found))


def worst_cracks(stretched: Stretch, zones: tuple[TensionZone, ...]) -> tuple[Crack, ...]:
    """Only the cracks that could decide: the widest of each piece, without their lines."""
    return tuple(
        crack for crack, _held in _of_pieces(stretched, pieces(stretched, zones), worst_places)
    )


def _of_pieces(stretched: Stretch, parts: list[Piece], placed) -> list[tuple[Crack, Crossing]]:
    """Cracks of all pieces with what crosses them; those crossed alike are worked out at once."""
    at = [placed(stretched, part) for part in parts]
    alike: dict[tuple, list[int]] = {}
    for k, part in enumerate(parts):
        alike.setdefault(part.held.likeness, []).append(k)
    widths: list = [None] * len(parts)
    for members in alike.values():
        together = np.array([place for k in members for place in at[k]])
        rows = _widths(stretched, parts[members[0]].held, together)
        for k in members:
            widths[k], rows = rows[: len(at[k])], rows[len(at[k]) :]
    found: list = []
    for part, places, rows in zip(parts, at, widths, strict=True):
        _add(found, [(crack, part.held) for crack in _made(stretched, part.held, places, rows)])
    return found


def _add(found: list, more: list) -> None:
    """Add the cracks of a piece; of two cracks that meet at a bar's end the graver one stays."""
    if found and more:
        last, first = found[-1][0], more[0][0]
        if last.face == first.face and abs(last.at - first.at) < 4 * INSIDE:
            found.append(max(found.pop(), more.pop(0), key=lambda pair: _strain(pair[0])))
    found.extend(more)


def _strain(crack: Crack) -> float:
    if crack.width is None:
        return math.inf
    return crack.steel_stress / max(crack.developed, 1e-9)


def _made(stretched: Stretch, held: Crossing, at: list[float], widths) -> list[Crack]:
    """Make the cracks of a piece at places `at`, once their widths and steel stress are known."""
    if not held.stretched:
        return [Crack(held.face, place, UNDRAWN, None, 0.0, (), 0.0) for place in at]
    keys = tuple(item.key for _i, item in held.stretched)
    x, shares = stretched.places, developed_shares(stretched, held)
    return [
        Crack(held.face, place, UNDRAWN, width, pull, keys, between(place, x, shares))
        for place, (width, pull) in zip(at, widths, strict=True)
    ]


def _drawn(stretched: Stretch, found: list[tuple[Crack, Crossing]]) -> list[Crack]:
    """Give the cracks their lines, all at once."""
    if not found:
        return []
    at = np.array([crack.at for crack, _held in found])
    depth = stretched.member.depth_at(at)
    tips = [_tip(stretched, crack, held) for crack, held in found]
    paths = crack_paths(
        at,
        [crack.face for crack, _held in found],
        tips,
        depth,
        stretched.x,
        stretched.moment,
        stretched.shear,
        steps=PATH_STEPS,
    )
    return [
        Crack(c.face, c.at, path, c.width, c.steel_stress, c.bars, c.developed)
        for (c, _held), path in zip(found, paths, strict=True)
    ]


def _tip(stretched: Stretch, crack: Crack, held: Crossing) -> float:
    if held.stretched and not stretched.member.tapered:
        return held.axis
    if held.stretched:
        return float(np.max(spread_out(stretched, held, np.array([crack.at])).axis))
    depth = float(stretched.member.depth_at(crack.at))
    return THROUGH * depth if held.face == "bottom" else depth - THROUGH * depth


def _widths(stretched: Stretch, held: Crossing, at: np.ndarray) -> list[tuple[WidthBand, float]]:
    """Width and steel stress [MPa] of cracks at places `at`, all crossed alike."""
    if not held.stretched:
        return [()] * len(at)
    held = spread_out(stretched, held, at)
    stress = steel_stress(stretched, held, at)
    widths = all_widths(crack_zone(stretched.member, held, stress))
    return list(
        zip(width_bands(widths, stretched.member.code, len(at)), stress.tolist(), strict=True)
    )


def width_bands(widths, code: str, count: int) -> list[WidthBand]:
    """Give the band of several rules for each of many cracks.

    Parameters
    ----------
    widths : tuple of CrackWidth
        Answers of the rules, each one number or one for every crack [mm].
    code : str
        Family whose rule governs.
    count : int
        How many cracks.
    """
    names = [w.rule for w in widths]
    table = np.empty((count, len(widths)))
    for column, answer in enumerate(widths):
        table[:, column] = answer.width
    low, middle, high = (each.tolist() for each in spread(table.T))
    chosen = names.index(GOVERNING[code])
    rule = widths[chosen].rule, widths[chosen].name
    return [
        WidthBand(a, b, c, row[chosen], *rule, tuple(zip(names, row, strict=True)))
        for a, b, c, row in zip(low, middle, high, table.tolist(), strict=True)
    ]
