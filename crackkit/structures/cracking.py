"""Which cracks open in a bent member, what crosses them, and how wide they are."""

import math
from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.concrete import modulus_en, tensile_strength_en
from crackkit.mechanics.crack_path import crack_paths
from crackkit.mechanics.crack_width import all_widths, band
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.structures.member import STEEL_MODULUS, Layer, Member
from crackkit.structures.outcome import Crack, TensionZone, WidthBand
from crackkit.structures.stretching import SENSE, Stretch

GOVERNING = {"ACI": "gergely_lutz", "EN": "en_2004"}
SPACING_RULE = {"ACI": "frosch", "EN": "en_2004"}
MEAN_TO_LARGEST = {"ACI": 1.5 / 2.0, "EN": 1 / 1.7}  # Frosch 1999; EN 1992-1-1 (history of 7.8)
MOST_CRACKS = 40
THROUGH = 0.04  # share of the depth that stays under a crack nothing holds, for the drawing


@dataclass(frozen=True)
class Crossing:
    """The bars that cross the cracks of one face, all of one combination of layers.

    Attributes
    ----------
    stretched : tuple of (index, Layer)
        Layers on the stretched side of the cracked section.
    squeezed : float
        Depth of the squeezed zone [mm].
    inertia : float
        Inertia of the cracked section [mm4]; 0 where no bar is stretched.
    axis : float
        Depth of the neutral axis from the top [mm].
    """

    face: str
    stretched: tuple
    squeezed: float
    inertia: float
    axis: float

    @property
    def outermost(self) -> tuple[int, Layer]:
        """Index and layer of the stretched bars nearest the cracked face."""
        return max(self.stretched, key=lambda pair: SENSE[self.face] * pair[1].depth)


def crossing(stretched: Stretch, face: str, at: float) -> Crossing:
    """Find the bars that cross a crack of a face at place `at` [mm]."""
    member, along = stretched.member, stretched.states
    station = int(np.argmin(np.abs(along.x - at)))
    row = 1 if face == "bottom" else 2
    axis, inertia = float(along.axis[row, station]), float(along.inertia[row, station])
    layers = tuple(
        (index, item)
        for index, item in enumerate(member.layers)
        if along.present[index, station] and inertia and SENSE[face] * (item.depth - axis) > 0
    )
    squeezed = axis if face == "bottom" else member.section.depth - axis
    return Crossing(face, layers, squeezed, inertia, axis)


def crack_zone(member: Member, held: Crossing, steel_stress) -> CrackZone:
    """Describe the cracked zone in the words that every crack width rule reads."""
    _index, outer = held.outermost
    layers = [item for _i, item in held.stretched if _near_face(member, held, item)]
    area = sum(item.area for item in layers)
    centroid = sum(item.area * item.depth for item in layers) / area
    depth, bottom = member.section.depth, held.face == "bottom"
    width = member.section.width
    if not bottom and member.section.flange_width:
        width = member.section.flange_width
    cover = (depth - outer.depth if bottom else outer.depth) - outer.bar.diameter / 2
    return CrackZone(
        steel_stress=steel_stress,
        diameter=outer.bar.diameter,
        clear_cover=max(cover, 0.0),
        spacing=bar_spacing(width, outer),
        steel_area=area,
        width=width,
        depth=depth,
        effective_depth=centroid if bottom else depth - centroid,
        neutral_axis=held.squeezed,
        side_cover=outer.side_cover,
        number=outer.number,
        # only the European rules read these two, so they follow EN 1992-1-1 Table 3.1
        tensile_strength=tensile_strength_en(member.concrete.strength),
        modular_ratio=STEEL_MODULUS / modulus_en(member.concrete.strength),
        duration=member.duration,
        bond="good" if bottom else "poor",
    )


def _near_face(member: Member, held: Crossing, item: Layer) -> bool:
    # Bars near the neutral axis share hardly any of the pull: only those in the outer half of
    # the stretched part count as the steel of the cracked zone.
    reach = (member.section.depth - held.squeezed) / 2
    edge = member.section.depth if held.face == "bottom" else 0.0
    return abs(edge - item.depth) <= reach or item is held.outermost[1]


def bar_spacing(width: float, item: Layer) -> float:
    """Distance of the bars of a layer, centre to centre [mm]; the width for a single bar."""
    if item.number < 2:
        return width
    outer = 2 * (item.side_cover + item.bar.diameter / 2)
    return max((width - outer) / (item.number - 1), item.bar.diameter)


def cracks(stretched: Stretch, zones: tuple[TensionZone, ...]) -> tuple[Crack, ...]:
    """Predict every crack of the member."""
    found = []
    for zone in zones:
        for start, end in zone.cracked:
            found.extend(_cracks_of_interval(stretched, zone.face, start, end))
    return tuple(found)


def _cracks_of_interval(stretched: Stretch, face: str, start: float, end: float) -> list[Crack]:
    inside = (stretched.x >= start) & (stretched.x <= end)
    size = np.where(inside, np.abs(stretched.moment), -1.0)
    peak = float(stretched.x[int(np.argmax(size))]) if inside.any() else (start + end) / 2
    held = crossing(stretched, face, peak)
    if not held.stretched:
        return _make(stretched, face, np.array([peak]))
    spacing = mean_spacing(stretched.member, held, _steel_stress(stretched, held, peak))
    return _make(stretched, face, _places(peak, start, end, spacing))


def mean_spacing(member: Member, held: Crossing, steel_stress: float) -> float:
    """Mean distance of cracks [mm] by the rule of the code family."""
    widths = all_widths(crack_zone(member, held, steel_stress))
    rule = next(w for w in widths if w.rule == SPACING_RULE[member.code])
    return float(rule.spacing) * MEAN_TO_LARGEST[member.code]


def _places(peak: float, start: float, end: float, spacing: float) -> np.ndarray:
    """Cracks at the peak and outwards from it, thinned evenly if they are too many to draw."""
    step = max(spacing, (end - start) / MOST_CRACKS)
    left, right = math.floor((peak - start) / step), math.floor((end - peak) / step)
    return peak + step * np.arange(-left, right + 1)


def _steel_stress(stretched: Stretch, held: Crossing, at):
    """Stress in the outermost bars at cracks `at` [MPa]."""
    _index, outer = held.outermost
    moment = np.interp(at, stretched.x, stretched.moment)
    return stretched.member.ratio * moment * (outer.depth - held.axis) / held.inertia


def _make(stretched: Stretch, face: str, at: np.ndarray) -> list[Crack]:
    """Make the cracks at places `at`, group by group of equal crossing bars."""
    crossings = [crossing(stretched, face, place) for place in at]
    tips = np.array([_tip(stretched.member, held) for held in crossings])
    paths = _paths(stretched, face, at, tips)
    made = [None] * at.size
    for held in set(crossings):
        chosen = [k for k, other in enumerate(crossings) if other == held]
        for k, crack in zip(chosen, _held_cracks(stretched, held, at[chosen]), strict=True):
            made[k] = Crack(face, float(at[k]), paths[k], *crack)
    return made


def _tip(member: Member, held: Crossing) -> float:
    if held.stretched:
        return held.axis
    through = THROUGH * member.section.depth
    return through if held.face == "bottom" else member.section.depth - through


def _paths(stretched: Stretch, face: str, at, tips) -> np.ndarray:
    return crack_paths(
        at,
        face,
        tips,
        stretched.member.section.depth,
        stretched.x,
        stretched.moment,
        stretched.shear,
    )


def _held_cracks(stretched: Stretch, held: Crossing, at) -> list[tuple]:
    """Width, steel stress, bars and developed share of cracks crossed by the same bars."""
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
    table = np.array([np.broadcast_to(w.width, count) for w in widths]).T.tolist()
    chosen = names.index(GOVERNING[code])
    return [
        WidthBand(a, b, c, row[chosen], names[chosen], tuple(zip(names, row, strict=True)))
        for a, b, c, row in zip(low, middle, high, table, strict=True)
    ]
