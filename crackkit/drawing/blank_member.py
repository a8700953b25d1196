"""A member on the screen before anything is known of it, and the answer laid over it later.

The faces are left free for cells that a learner paints; the page draws those itself (`Strips`
says where), so that a stroke needs no answer from the kernel.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing import footings, loads_on
from crackkit.drawing.blank_beam import description, spread_labels
from crackkit.drawing.blank_page import paper_width
from crackkit.drawing.body import FULL_SHADE, drawn_down
from crackkit.drawing.cracks_drawn import crack_shapes
from crackkit.drawing.frames import Along, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.live_blocks import live_blocks
from crackkit.drawing.shapes import (
    Arrow,
    Picture,
    Polyline,
    Raster,
    Text,
    line,
    rectangle,
)
from crackkit.drawing.words_on import Label, label_row
from crackkit.units import shown
from crackkit.words import _

TOP, DEPTH, STRIP = 92.0, 128.0, 34.0
HEIGHT = 288.0
LEFT, RIGHT = 62.0, 36.0
INSET = 0.14  # drawn distance of a bar from its face, as a share of the depth
BAR_PLACES = {"bottom": (1 - INSET,), "top": (INSET,), "middle": (0.5,), "both": (INSET, 1 - INSET)}


@dataclass(frozen=True)
class Strips:
    """Where the paintable cells lie [drawing units]: upper edges of both rows, and their ends."""

    left: float
    right: float
    top: float
    bottom: float
    height: float


@dataclass(frozen=True)
class _Paper:
    """The way from (x, z) in mm to the paper; what `crack_shapes` asks of a body."""

    along: Along
    outcome: object

    def points(self, path: np.ndarray) -> np.ndarray:
        """Drawing points of (x, z) [mm]; the last axis holds the pair.

        The faces are drawn level, so that the cells lie along them: a height is its share of the
        depth there.
        """
        share = path[..., 1] / np.interp(path[..., 0], self.outcome.x, self.outcome.depth)
        return np.stack([self.along(path[..., 0]), TOP + DEPTH * share], axis=-1)

    def values(self) -> np.ndarray:
        """The stress map, each column stretched to the drawn depth."""
        stresses = self.outcome.stresses
        depth = np.interp(stresses.x, self.outcome.x, self.outcome.depth)
        ratio = stresses.ratio
        if np.isfinite(ratio).all():
            return ratio / FULL_SHADE
        rows = np.linspace(0.0, 1.0, len(stresses.z))[:, None] * (depth / stresses.z[-1])
        row = np.rint(rows * (len(stresses.z) - 1)).astype(int)
        return drawn_down(ratio)[row, np.arange(stresses.x.size)] / FULL_SHADE


def _along(structure, view: View) -> Along:
    return Along(LEFT, paper_width(view) - RIGHT, structure.length)


def strips(structure, view: View) -> Strips:
    """Say where the cells along both faces lie."""
    along = _along(structure, view)
    return Strips(along.left, along.right, TOP, TOP + DEPTH - STRIP, STRIP)


def blank_member(structure, view: View, outcome=None, bars: str = "") -> Picture:
    """Draw loads, supports and empty concrete; with an outcome, stress and cracks in it.

    Parameters
    ----------
    structure : object
        Has footings, hung and spread loads, length, width, depth; its bars are left out.
    view : View
        Units and width of the paper.
    outcome : Outcome, optional
        What mechanics says; only once the learner has committed.
    bars : str
        Where the learner put bars: a key of `BAR_PLACES`, or nothing.

    Returns
    -------
    Picture
    """
    along = _along(structure, view)
    shapes = (
        *footings.blocks(structure, along, TOP, TOP + DEPTH, 18.0),
        rectangle(along.left, TOP, along.right - along.left, DEPTH, "concrete"),
        *(_answer(outcome, along) if outcome else ()),
        *footings.root_lines(structure, along, TOP, TOP + DEPTH),
        *_bars(bars, along),
        *_face_names(along),
        *_loads(structure, along, view),
        *_supports(structure, along),
        *_sizes(structure, along, view),
    )
    words = description(structure, view)
    return Picture(paper_width(view), HEIGHT, shapes, _("Your prediction"), words)


def _answer(outcome, along: Along) -> list:
    wide = along.right - along.left
    corners = [(along.left, TOP), (along.right, TOP), (along.right, TOP + DEPTH)]
    corners += [(along.left, TOP + DEPTH), (along.left, TOP)]
    paper = _Paper(along, outcome)
    return [
        Raster(along.left, TOP, wide, DEPTH, paper.values()),
        *crack_shapes(outcome.cracks, paper),
        Polyline(np.array(corners), "outline"),
    ]


def _bars(bars: str, along: Along) -> list:
    left, right = along.left + 8, along.right - 8
    heights = [TOP + share * DEPTH for share in BAR_PLACES.get(bars, ())]
    return [Polyline(np.array([(left, y), (right, y)]), "bar", 5.0) for y in heights]


def _face_names(along: Along) -> list:
    x = along.left - 8
    return [
        Text(x, TOP + STRIP / 2 + 5, _("top"), "label_bold", "end"),
        Text(x, TOP + DEPTH - STRIP / 2 + 5, _("bottom"), "label_bold", "end"),
    ]


def _loads(structure, along: Along, view: View) -> list:
    labels = [
        Label(float(along(load.at)), shown(load.force, "force", view.system), "load_word", 32.0)
        for load in structure.hung
        if load.force
    ]
    shapes = [
        Arrow(x, TOP - 22, x, TOP - 2, "spread_load", 5.0)
        for load in loads_on.lasting(structure)
        for x in along(loads_on.arrow_places(load, along, 17)).tolist()
    ]
    shapes += live_blocks(structure, along, lambda _at: TOP - 24, view)
    shapes += [
        Arrow(float(along(load.at)), 34.0, float(along(load.at)), TOP - 1, "load", 11.0)
        for load in structure.hung
        if load.force
    ]
    high = along.right + RIGHT - 6
    room = high - 6.0 - sum(width_of(one.text, one.role) + 8.0 for one in labels)
    spread = spread_labels(structure, along, view, room, loads_on.own_weight_counted)
    return [*label_row([*spread, *labels], 22.0, 6.0, high), *shapes]


def _supports(structure, along: Along) -> list:
    shapes, letters, y = [], [], TOP + DEPTH
    for footing in footings.pinned(structure):
        x = float(along(footing.at))
        ground = line(x - 18, y + 22, x + 18, y + 22, "ground")
        shapes += [footings.triangle(x, y + 1, 12, 19), ground]
        if footing.letter:
            letters.append(Label(x + 20, footing.letter, "label_bold"))
    return [*shapes, *label_row(letters, y + 18, along.left, along.right + RIGHT - 6)]


def _sizes(structure, along: Along, view: View) -> list:
    """Distances between the ends and the supports, under the member."""
    marks = sorted({0.0, *(one.at for one in structure.footings), structure.length})
    y, shapes, labels = TOP + DEPTH + 36.0, [], []
    for start, end in zip(marks, marks[1:], strict=False):
        a, b = float(along(start)), float(along(end))
        shapes += [line(a, y, b, y, "leader"), line(a, y - 4, a, y + 4, "leader")]
        shapes.append(line(b, y - 4, b, y + 4, "leader"))
        labels.append(Label((a + b) / 2, shown(end - start, "length", view.system), "label"))
    return [*shapes, *label_row(labels, y + 19, 6.0, along.right + RIGHT - 6)]
