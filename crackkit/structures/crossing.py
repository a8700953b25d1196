"""What crosses the cracks of one face: the bars, and the zone that every width rule reads."""

from dataclasses import dataclass, replace
from functools import cached_property, partial

import numpy as np

from crackkit.mechanics.concrete import modulus_en, tensile_strength_en
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.mechanics.tapered import states_along
from crackkit.structures.member import STEEL_MODULUS, Layer, Member, section_states
from crackkit.structures.stretching import SENSE, Stretch

ROW = {"bottom": 1, "top": 2}  # of the section states
LEVEL = 1.0  # mm of depth within which layers count as one


@dataclass(frozen=True)
class Crossing:
    """The bars that cross the cracks of one face, all of one combination of layers.

    Attributes
    ----------
    face : str
        The cracked face.
    stretched : tuple of (index, Layer)
        Layers on the stretched side of the cracked section.
    squeezed : float or ndarray
        Depth of the squeezed zone [mm].
    inertia : float or ndarray
        Inertia of the cracked section [mm4]; 0 where nothing holds the crack.
    axis : float or ndarray
        Depth of the neutral axis from the top [mm]; of the whole section where nothing holds
        the crack.
    depth : float or ndarray
        Depth of the section [mm].
    at : float or ndarray
        The place, or one for each crack [mm].
    bars : tuple of int
        Numbers of all layers that run through, also of those on the squeezed side.
    likeness : tuple
        What tells crossings that are alike: face, and size, count and place of all those bars.
    """

    face: str
    stretched: tuple
    squeezed: float | np.ndarray
    inertia: float | np.ndarray
    axis: float | np.ndarray
    depth: float | np.ndarray
    at: float | np.ndarray
    bars: tuple[int, ...]
    likeness: tuple

    @cached_property
    def outermost(self) -> tuple[int, Layer]:
        """Index and layer of the stretched bars nearest the cracked face."""
        return max(self.stretched, key=lambda pair: SENSE[self.face] * pair[1].depth)

    @cached_property
    def beside(self) -> list[tuple[int, Layer]]:
        """The outermost bars, and those that lie at the same depth."""
        _index, outer = self.outermost
        return [(k, item) for k, item in self.stretched if abs(item.depth - outer.depth) < LEVEL]


def crossing(stretched: Stretch, face: str, at: float) -> Crossing:
    """Find the bars that cross a crack of a face at place `at` [mm]."""
    member = stretched.member
    here = [(k, item) for k, item in enumerate(member.layers) if item.start < at < item.end]
    rows = _rows(member, [item for _k, item in here], at)
    axis, inertia = rows[ROW[face]]
    if not inertia:
        axis, here = rows[0][0], []
    pulled = tuple(
        (k, item)
        for k, item in here
        if SENSE[face] * (float(member.layer_depth(item, at)) - axis) > 0
    )
    depth = float(member.depth_at(at)) if member.tapered else member.section.depth
    bars = tuple(k for k, _item in here)
    likeness = face, tuple((i.bar.name, i.number, i.depth, i.side_cover) for _k, i in here)
    squeezed = _squeezed(face, axis, depth)
    return Crossing(face, pulled, squeezed, inertia, axis, depth, at, bars, likeness)


def _squeezed(face: str, axis, depth):
    return axis if face == "bottom" else depth - axis


def _rows(member: Member, layers, at) -> tuple[tuple[float, float], ...]:
    if not member.tapered:
        return section_states(member, layers)
    axis, inertia = _states_at(member, layers, np.array([at]))
    return tuple((float(z), float(i)) for z, i in zip(axis[:, 0], inertia[:, 0], strict=True))


def _states_at(member: Member, layers, at: np.ndarray):
    """Axis and inertia of the three states at places of a tapered member, shape (3, places)."""
    bars = [member.layer_depth(item, at) for item in layers]
    areas = [np.full(at.size, item.area) for item in layers]
    shape = (len(bars), at.size)
    rows = np.reshape(bars, shape), np.reshape(areas, shape)
    return states_along(member.section.width, member.depth_at(at), *rows, member.ratio)


def spread_out(stretched: Stretch, held: Crossing, at: np.ndarray) -> Crossing:
    """Give the same crossing at several places at once, each with its own depth.

    Parameters
    ----------
    stretched : Stretch
    held : Crossing
        What crosses one crack of the piece.
    at : ndarray
        Places of the cracks [mm]; in a member of one depth they make no difference.
    """
    member = stretched.member
    if not member.tapered or not held.stretched:
        return held
    layers = [member.layers[k] for k in held.bars]
    axis, inertia = (rows[ROW[held.face]] for rows in _states_at(member, layers, at))
    levers = [member.layer_depth(item, at) - axis for _k, item in held.stretched]
    # a hair beside the place where bars come to lie on the stretched side, `held` still counts
    same = (inertia > 0) & (SENSE[held.face] * np.array(levers) > 0).all(axis=0)
    axis, inertia = np.where(same, axis, held.axis), np.where(same, inertia, held.inertia)
    at = np.where(same, at, held.at)
    depth = member.depth_at(at)
    squeezed = _squeezed(held.face, axis, depth)
    return replace(held, squeezed=squeezed, inertia=inertia, axis=axis, depth=depth, at=at)


def developed_along(stretched: Stretch, held: Crossing) -> np.ndarray:
    """Share of their strength that the outermost bars can build up at the stations [-].

    Bars of several layers that lap at one depth bear together.
    """
    if len(held.beside) == 1:
        return stretched.states.share[held.beside[0][0]]
    return _borne_together(stretched, held.beside)


def developed_shares(stretched: Stretch, held: Crossing) -> list[float]:
    """The same as `developed_along`, one by one [-]."""
    if len(held.beside) == 1:
        return stretched.states.shares[held.beside[0][0]]
    return _borne_together(stretched, held.beside).tolist()


def _borne_together(stretched: Stretch, beside) -> np.ndarray:
    share = sum(stretched.states.share[k] * item.area for k, item in beside)
    return share / sum(item.area for _k, item in beside)


def steel_stress(stretched: Stretch, held: Crossing, at):
    """Stress in the outermost bars at cracks `at` [MPa]."""
    _index, outer = held.outermost
    moment = np.interp(at, stretched.x, stretched.moment)
    lever = stretched.member.layer_depth(outer, held.at) - held.axis
    return stretched.member.ratio * moment * lever / held.inertia


def crack_zone(member: Member, held: Crossing, steel_stress) -> CrackZone:
    """Describe the cracked zone in the words that every crack width rule reads.

    In a member of one depth bars that cross alike make the same zone under every load.
    """
    found = partial(_zone, member, held, steel_stress)
    if member.tapered:
        return found()
    return replace(member.once(("zone", held.likeness), found), steel_stress=steel_stress)


def _zone(member: Member, held: Crossing, steel_stress) -> CrackZone:
    _index, outer = held.outermost
    layers = [item for _i, item in held.stretched if _near_face(member, held, item)]
    area = sum(item.area for item in layers)
    centroid = sum(item.area * member.layer_depth(item, held.at) for item in layers) / area
    depth, width, bottom = held.depth, face_width(member, held.face), _is_bottom(held)
    outer_depth = member.layer_depth(outer, held.at)
    cover = (depth - outer_depth if bottom else outer_depth) - outer.bar.diameter / 2
    return CrackZone(
        steel_stress=steel_stress,
        diameter=outer.bar.diameter,
        clear_cover=np.maximum(cover, 0.0),
        spacing=bar_spacing(width, outer),
        steel_area=area,
        width=width,
        depth=depth,
        effective_depth=centroid if bottom else depth - centroid,
        neutral_axis=held.squeezed,
        side_cover=outer.side_cover,
        # bars of several sizes count as area over the area of the largest (ACI 224R-01 4.2.1)
        number=area / max(item.bar.area for item in layers),
        # only the European rules read these two, so they follow EN 1992-1-1 Table 3.1
        tensile_strength=tensile_strength_en(member.concrete.strength),
        modular_ratio=STEEL_MODULUS / modulus_en(member.concrete.strength),
        duration=member.duration,
        bond=member.bond(outer),
    )


def face_width(member: Member, face: str) -> float:
    """Width of the section at a face [mm]."""
    section = member.section
    return section.width if face == "bottom" else section.flange_width or section.width


def _is_bottom(held: Crossing) -> bool:
    return held.face == "bottom"


def _near_face(member: Member, held: Crossing, item: Layer) -> bool:
    # Bars near the neutral axis share hardly any of the pull: only those in the outer half of
    # the stretched part count as the steel of the cracked zone.
    reach = np.min(held.depth - held.squeezed) / 2
    edge = held.depth if _is_bottom(held) else 0.0
    away = np.max(np.abs(edge - member.layer_depth(item, held.at)))
    return bool(away <= reach) or item is held.outermost[1]


def bar_spacing(width: float, item: Layer) -> float:
    """Distance of the bars of a layer, centre to centre [mm]; the width for a single bar."""
    if item.spacing:
        return item.spacing
    if item.number < 2:
        return width
    outer = 2 * (item.side_cover + item.bar.diameter / 2)
    return max((width - outer) / (item.number - 1), item.bar.diameter)
