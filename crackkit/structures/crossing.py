"""What crosses the cracks of one face: the bars, and the zone that every width rule reads."""

from dataclasses import dataclass

from crackkit.mechanics.concrete import modulus_en, tensile_strength_en
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.structures.member import STEEL_MODULUS, Layer, Member, section_states
from crackkit.structures.stretching import SENSE, Stretch

ROW = {"bottom": 1, "top": 2}  # of the section states


@dataclass(frozen=True)
class Crossing:
    """The bars that cross the cracks of one face, all of one combination of layers.

    Attributes
    ----------
    face : str
        The cracked face.
    stretched : tuple of (index, Layer)
        Layers on the stretched side of the cracked section.
    squeezed : float
        Depth of the squeezed zone [mm].
    inertia : float
        Inertia of the cracked section [mm4]; 0 where nothing holds the crack.
    axis : float
        Depth of the neutral axis from the top [mm]; of the whole section where nothing holds
        the crack.
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
    member = stretched.member
    here = [(k, item) for k, item in enumerate(member.layers) if item.start < at < item.end]
    rows = section_states(member, [item for _k, item in here])
    axis, inertia = rows[ROW[face]]
    if not inertia:
        axis, here = rows[0][0], []
    pulled = tuple(pair for pair in here if SENSE[face] * (pair[1].depth - axis) > 0)
    squeezed = axis if face == "bottom" else member.section.depth - axis
    return Crossing(face, pulled, squeezed, inertia, axis)


def crack_zone(member: Member, held: Crossing, steel_stress) -> CrackZone:
    """Describe the cracked zone in the words that every crack width rule reads."""
    _index, outer = held.outermost
    layers = [item for _i, item in held.stretched if _near_face(member, held, item)]
    area = sum(item.area for item in layers)
    centroid = sum(item.area * item.depth for item in layers) / area
    depth, width, bottom = member.section.depth, face_width(member, held.face), _is_bottom(held)
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
    reach = (member.section.depth - held.squeezed) / 2
    edge = member.section.depth if _is_bottom(held) else 0.0
    return abs(edge - item.depth) <= reach or item is held.outermost[1]


def bar_spacing(width: float, item: Layer) -> float:
    """Distance of the bars of a layer, centre to centre [mm]; the width for a single bar."""
    if item.number < 2:
        return width
    outer = 2 * (item.side_cover + item.bar.diameter / 2)
    return max((width - outer) / (item.number - 1), item.bar.diameter)
