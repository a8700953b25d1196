"""A section through a fresh slab: weather above it, water that leaves and water that bleeds."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.fresh_air import drops, vapour, wind_arrows
from crackkit.drawing.ground_base import base_shapes
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Arrow, Polygons, Text, rectangle
from crackkit.structures.outcome import DRIES_OUT
from crackkit.units import shown
from crackkit.words import _

FACE, DEEP = 180.0, 62.0  # of the slab: below the top of the frame, and its drawn thickness
BOARD, PROUD = 8.0, 5.0  # thickness of the boards at its ends, and how far they stand up
FILM = 7.0  # drawn bleed water where none leaves
CRACK = 26.0  # depth of the deepest drawn crack
MOST = 2.0  # times the limit: no more cracks or vapour are drawn beyond it
BETWEEN = 46.0  # from crack to crack where they are closest


@dataclass(frozen=True)
class Section:
    """The places of the slab on the paper."""

    frame: Frame

    @property
    def left(self) -> float:
        """Inside of the left board."""
        return self.frame.left + 10.0 + BOARD

    @property
    def right(self) -> float:
        """Inside of the right board."""
        return self.frame.right - 10.0 - BOARD

    @property
    def face(self) -> float:
        """Height of the face."""
        return self.frame.top + FACE

    @property
    def bottom(self) -> float:
        """Height of the underside."""
        return self.face + DEEP


def fresh_section(outcome, frame: Frame, view: View) -> list:
    """Draw the slab in its weather, and what the weather does to it."""
    section, state = Section(frame), outcome.fresh
    return [
        *weather(outcome.structure, section, view),
        *slab(outcome.structure, section, view),
        *_rising(section, concrete_words(outcome.structure, view)),
        *_film(section, state.times),
        *(_cracks(section, state.times) if state.level == DRIES_OUT else []),
        *vapour(section.left, section.right, section.face, state.times, outcome.structure.wind),
        *_leaving(outcome, section, view),
        *_key(outcome, section),
    ]


def weather(structure, section: Section, view: View) -> list:
    """Draw wind and moisture of the air, with their numbers."""
    frame = section.frame
    wind = _("wind {speed}").format(speed=shown(structure.wind, "wind", view.system))
    air = _("air {warmth}, humidity {share}").format(
        warmth=shown(structure.air, "warmth", view.system),
        share=shown(structure.humidity, "ratio", view.system),
    )
    return [
        Text(frame.left, frame.top + 14, _("The slab from the side"), "label_bold"),
        *drops(section.left, section.right, frame.top + 48, structure.humidity),
        *wind_arrows(section.left, section.right, frame.top + 56, structure.wind),
        Text(frame.left + 10, frame.top + 36, wind, "label"),
        Text(frame.right - 10, frame.top + 36, air, "label", "end"),
    ]


def slab(structure, section: Section, view: View) -> list:
    """Draw the concrete between its boards, on gravel."""
    left, right, face = section.left, section.right, section.face
    words, middle = concrete_words(structure, view), (left + right) / 2
    tall = DEEP + PROUD
    return [
        *base_shapes("gravel", left, right, section.bottom),
        rectangle(left, face, right - left, DEEP, "concrete"),
        rectangle(left - BOARD, face - PROUD, BOARD, tall, "wall"),
        rectangle(right, face - PROUD, BOARD, tall, "wall"),
        Text(middle, section.bottom - 10, words, "label_bold", "middle"),
    ]


def concrete_words(structure, view: View) -> str:
    """Say how warm the concrete is."""
    warmth = shown(structure.concrete, "warmth", view.system)
    return _("concrete {warmth}").format(warmth=warmth)


def _rising(section: Section, words: str) -> list:
    """Arrows of water that rises to the face, beside the words in the middle."""
    middle, clear = (section.left + section.right) / 2, width_of(words, "label_bold") / 2 + 16.0
    low, high = section.bottom - 8.0, section.bottom - 28.0
    places = np.arange(section.left + 24.0, middle - clear, 34.0).tolist()
    both = [*places, *(2 * middle - x for x in places)]
    return [Arrow(x, low, x, high, "spread_load", 6.0) for x in both]


def _film(section: Section, times: float) -> list:
    """The water that stands on the face; the more of it leaves, the thinner."""
    thick = FILM * (1.0 - times)
    if thick < 0.4:
        return []
    wide = section.right - section.left
    return [rectangle(section.left, section.face - thick, wide, thick, "squeezed_area")]


def _cracks(section: Section, times: float) -> list:
    """Short cracks from the face down: they are what threatens, their places are no forecast."""
    share = min(times / MOST, 1.0)
    count = max(round(share * (section.right - section.left - 30.0) / BETWEEN), 2)
    k = np.arange(count)
    wild = np.modf(np.abs(np.sin(12.9898 * k + 2.3) * 43758.5453))[0]
    x = section.left + 15.0 + (k + 0.3 + 0.4 * wild) * (section.right - section.left - 30.0) / count
    deep, lean = CRACK * share * (0.6 + 0.4 * wild), 5.0 * (wild - 0.5)
    half = 0.8 + 1.6 * share
    outlines = np.empty((count, 4, 2))
    outlines[:, :, 0] = x[:, None] + np.column_stack([0 * lean - half, 0 * lean + half, lean, lean])
    outlines[:, :2, 1] = section.face
    outlines[:, 2:, 1] = (section.face + deep)[:, None]
    return [Polygons(outlines, "crack_gap")]


def _leaving(outcome, section: Section, view: View) -> list:
    """Say how much water leaves, over the vapour."""
    rate = shown(outcome.fresh.rate, "mass_rate", view.system)
    words = _("water leaves: {rate}").format(rate=rate)
    middle = (section.left + section.right) / 2
    return [Text(middle, section.frame.top + 108, words, "squeezed_word", "middle")]


def _key(outcome, section: Section) -> list:
    """Say below the slab what its face shows."""
    key, x, y = outcome.fresh.level, section.frame.left + 10, section.frame.bottom - 4
    if key == DRIES_OUT:
        return [Text(x, y, _("No water stands on it: here it can tear."), "bad_word")]
    return [Text(x, y, _("Band on top: bleed water. Drops: moisture of the air."), "note")]
