"""A piece of a curled slab in section: air above, what is below, the mat, where it cracks."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import View
from crackkit.drawing.ground_base import DEEP, base_shapes
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Arrow, Circle, Polygon, Polyline, Text, line, rectangle
from crackkit.units import shown
from crackkit.words import _

LEAST_PITCH, MOST_PITCH = 16.0, 64.0  # drawn distance of two bars
LEAST_DOT = 2.4  # drawn radius
NOTCH = 0.42  # depth of the drawn crack, as share of the thickness
WATER = 15.0  # length of the arrows of the water that leaves
BASES = {"sheet": "one_sheet", "damp": "natural", "blotter": "sand", "open": "gravel"}
FILM = 9.0  # drawn depth of the layer over a sheet


@dataclass(frozen=True)
class CurledSection:
    """The place of the piece on the paper, and the way down into it."""

    structure: object
    left: float
    right: float
    top: float
    bottom: float

    def y(self, depth):
        """Height of a depth below the top [mm]."""
        return self.top + depth * self.per_mm

    @property
    def per_mm(self) -> float:
        """Drawing units for one mm of depth."""
        return (self.bottom - self.top) / self.structure.thickness


def curled_section(outcome, place: CurledSection, view: View) -> list:
    """Draw the piece."""
    s = outcome.structure
    wide, tall = place.right - place.left, place.bottom - place.top
    return [
        *below(s, place),
        rectangle(place.left, place.top, wide, tall, "concrete"),
        *mat(s, place),
        *_notch(outcome, place),
        *_water(s, place),
        *_words(s, place, view),
    ]


def below(structure, place: CurledSection) -> list:
    """Draw what it lies on."""
    left, right, top = place.left, place.right, place.bottom
    if structure.under == "blotter":
        return [
            *base_shapes("sand", left, right, top),
            line(left, top + DEEP + 2.0, right, top + DEEP + 2.0, "squeezed_line"),
        ]
    return base_shapes(BASES[structure.under], left, right, top)


def mat(structure, place: CurledSection) -> list:
    """Draw the mat: bars that are cut, and one along below them."""
    if structure.bar is None:
        return []
    across, along = mat_depths(structure)
    radius = max(structure.bar.diameter / 2 * place.per_mm, LEAST_DOT)
    pitch = min(max(structure.spacing * place.per_mm, LEAST_PITCH), MOST_PITCH)
    wide = place.right - place.left
    count = max(int((wide - 2 * radius - 4.0) / pitch), 1)
    x = (place.left + place.right) / 2 + pitch * (np.arange(count) - (count - 1) / 2)
    y = float(place.y(along))
    rod = np.array([(place.left + 3.0, y), (place.right - 3.0, y)])
    dots = [Circle(at, float(place.y(across)), radius, "bar_dot") for at in x.tolist()]
    return [Polyline(rod, "bar", max(2 * radius, 2.0)), *dots]


def mat_depths(structure) -> tuple[float, float]:
    """Depth of the two layers of the mat [mm], the upper one first."""
    diameter = structure.bar.diameter
    return structure.cover + diameter / 2, structure.cover + 1.5 * diameter


def _notch(outcome, place: CurledSection) -> list[Polygon]:
    """The crack from the face where it begins."""
    found = outcome.curled.line
    if found is None:
        return []
    x = place.left + 0.62 * (place.right - place.left)
    tall, half = NOTCH * (place.bottom - place.top), 2.6 if found.width is None else 1.6
    face, way = (place.top, 1.0) if found.face == "top" else (place.bottom, -1.0)
    tip = (x + 5.0, face + way * tall)
    bend = (x - 1.0, face + way * 0.55 * tall)
    points = [(x - half, face), (bend[0] - 0.6 * half, bend[1]), tip, (bend[0] + half, bend[1])]
    return [Polygon(np.array([*points, (x + half, face)]), "crack_gap")]


def _water(structure, place: CurledSection) -> list[Arrow]:
    """Arrows of the water that leaves: up, and down where it can."""
    places = np.linspace(place.left, place.right, 5)[1:-1].tolist()
    up = [Arrow(x, place.top - 2, x, place.top - 2 - WATER, "spread_load", 6.0) for x in places]
    if structure.under != "open":
        return up
    low = place.bottom + DEEP + 1.0
    return [*up, *(Arrow(x, low, x, low + WATER - 3.0, "spread_load", 6.0) for x in places[1:])]


UNDER_NAMES = {
    "sheet": (_("a sheet right below it"), _("a sheet below")),
    "damp": (_("damp ground"),),
    "blotter": (_("a dry layer over the sheet"), _("layer over a sheet")),
    "open": (_("dries from below as well"), _("dries below too")),
}


def _words(structure, place: CurledSection, view: View) -> list:
    """Name the air above and what is below."""
    room = place.right - place.left
    share = shown(structure.humidity, "ratio", view.system)
    air = _("air, humidity {share}").format(share=share), _("air {share}").format(share=share)
    low = place.bottom + DEEP + (30.0 if structure.under == "open" else 19.0)
    return [
        Text(place.left, place.top - WATER - 9.0, _fitting(air, room), "note"),
        Text(place.left, low, _fitting(UNDER_NAMES[structure.under], room), "note"),
    ]


def _fitting(ways, room: float) -> str:
    fitting = [words for words in ways if width_of(words, "note") <= room]
    return fitting[0] if fitting else ways[-1]
