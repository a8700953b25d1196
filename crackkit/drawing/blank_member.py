"""A member on the screen before anything is known of it, and the answer laid over it later.

The faces are left free for cells that a learner paints; the page draws those itself (`Strips`
says where), so that a stroke needs no answer from the kernel.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.blank_beam import description
from crackkit.drawing.frames import Along, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import (
    Arrow,
    Picture,
    Polygon,
    Polyline,
    Raster,
    Text,
    line,
    rectangle,
)
from crackkit.drawing.stretch_band import FULL_SHADE, crack_shapes
from crackkit.drawing.words_on import Label, label_row
from crackkit.units import shown
from crackkit.words import _

WIDTHS = (460.0, 1100.0)  # least and largest width of the paper
TOP, DEPTH, STRIP = 92.0, 128.0, 34.0
HEIGHT = 288.0
LEFT, RIGHT = 62.0, 26.0
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
    depth_mm: float

    def points(self, path: np.ndarray) -> np.ndarray:
        """Drawing points of (x, z) [mm]; the last axis holds the pair."""
        down = DEPTH / self.depth_mm
        return np.stack([self.along(path[..., 0]), TOP + path[..., 1] * down], axis=-1)


def paper_width(view: View) -> float:
    """Width of the paper [drawing units] for a view."""
    return float(np.clip(view.width or 840.0, *WIDTHS))


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
        Has supports, loads, spread load, span, width, depth; its bars are left out.
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
        rectangle(along.left, TOP, along.right - along.left, DEPTH, "concrete"),
        *(_answer(outcome, along) if outcome else ()),
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
    paper = _Paper(along, float(outcome.stresses.z[-1]))
    return [
        Raster(along.left, TOP, wide, DEPTH, outcome.stresses.ratio / FULL_SHADE),
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
    labels, shapes = [], []
    if structure.line_load:
        shapes += _spread_arrows(along)
        words = _spread_words(structure, view)
        end = along.right - width_of(words, "note") / 2
        labels.append(Label(end, words, "note"))
    for load in structure.loads:
        if load.force:
            x = float(along(load.at))
            shapes.append(Arrow(x, 34.0, x, TOP - 1, "load", 11.0))
            labels.append(Label(x, shown(load.force, "force", view.system), "load_word", 32.0))
    return [*label_row(labels, 22.0, 6.0, along.right + RIGHT - 6), *shapes]


def _spread_arrows(along: Along) -> list:
    places = np.linspace(along.left, along.right, 17).tolist()
    return [Arrow(x, TOP - 22, x, TOP - 2, "spread_load", 5.0) for x in places]


def _spread_words(structure, view: View) -> str:
    words = _("{load} with own weight") if structure.self_weight else "{load}"
    return words.format(load=shown(structure.line_load, "line_load", view.system))


def _supports(structure, along: Along) -> list:
    shapes, y = [], TOP + DEPTH
    for at in structure.supports:
        x = float(along(at))
        corners = np.array([(x, y + 1), (x - 12, y + 20), (x + 12, y + 20)])
        shapes += [Polygon(corners, "support"), line(x - 18, y + 22, x + 18, y + 22, "ground")]
    return shapes


def _sizes(structure, along: Along, view: View) -> list:
    """Distances between the ends and the supports, under the member."""
    marks = sorted({0.0, *structure.supports, structure.length})
    y, shapes, labels = TOP + DEPTH + 36.0, [], []
    for start, end in zip(marks, marks[1:], strict=False):
        a, b = float(along(start)), float(along(end))
        shapes += [line(a, y, b, y, "leader"), line(a, y - 4, a, y + 4, "leader")]
        shapes.append(line(b, y - 4, b, y + 4, "leader"))
        labels.append(Label((a + b) / 2, shown(end - start, "length", view.system), "label"))
    return [*shapes, *label_row(labels, y + 19, 6.0, along.right + RIGHT - 6)]
