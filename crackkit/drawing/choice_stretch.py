"""Band 2, where is it stretched and where does it crack? A piece of the strip from the side."""

import numpy as np

from crackkit.drawing.choice_piece import Piece
from crackkit.drawing.choice_torn import hatch
from crackkit.drawing.cracks_drawn import crack_shapes
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Arrow, Lines, Text, line, rectangle
from crackkit.drawing.through_cracks import through_cracks
from crackkit.drawing.words_on import heading
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

POINTS = 7  # along a crack
TOP = 44.0  # from the frame to the upper face
SIZE_ROW, WORD_ROW = 22.0, 48.0  # under the lower face


def choice_stretch(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    piece = Piece(outcome.structure, frame, frame.top + _lift(outcome.structure, frame))
    return [
        *heading(frame, 2, _("Where is it stretched? Where does it crack?"), height_notes(piece)),
        piece.block,
        *_stretched(outcome, piece),
        *_cracks(outcome, piece),
        *piece.bars(),
        *_distance(outcome, piece),
        *_words(outcome, piece, view),
    ]


def _lift(structure, frame: Frame) -> float:
    """A thin strip stands in the middle of its room."""
    tall = Piece(structure, frame, 0.0).tall
    return TOP + max((frame.height - TOP - tall - 66.0) / 2, 0.0)


def height_notes(piece: Piece) -> tuple[str, ...]:
    """State how the height is drawn where it is not to the scale of the length."""
    factor = piece.down / piece.along.scale
    if abs(factor - 1.0) < 0.05:
        return ()
    long, short = _("height drawn {n} times as large"), _("height ×{n}")
    return long.format(n=f"{factor:.2g}"), short.format(n=f"{factor:.2g}")


def _stretched(outcome, piece: Piece) -> list:
    """Tint and hatch what is stretched: all of it, or what lies below the axis."""
    structure, control = outcome.structure, outcome.control
    if not outcome.tension:
        return []
    axis = 0.0
    if structure.action == BENT:
        axis = float(control.main.held.axis) if outcome.cracks else structure.depth / 2
    left, right, top = piece.along.left, piece.along.right, piece.y(axis)
    role = "hatch" if outcome.cracks else "hatch_faint"
    shapes = [
        rectangle(left, top, right - left, piece.bottom - top, "stretched_area"),
        Lines(hatch([(left, top, right, piece.bottom)]), role),
    ]
    if axis:
        shapes.append(line(left, top, right, top, "neutral"))
    return shapes


def _cracks(outcome, piece: Piece) -> list:
    if not outcome.cracks:
        return []
    if outcome.structure.action == BENT:
        share = np.linspace(0.0, 1.0, POINTS)[:, None]
        finer = [
            c._replace(path=c.path[0] * (1 - share) + c.path[1] * share) for c in outcome.cracks
        ]
        return crack_shapes(finer, piece)
    places = np.array([piece.along(crack.at) for crack in outcome.cracks])
    widths = np.array([crack.width.governing for crack in outcome.cracks])
    order = np.arange(1, places.size + 1)
    return through_cracks(widths, places, order, piece.top, piece.tall)


def _pair(outcome) -> tuple[float, float] | None:
    """Two cracks side by side, the first in the middle; None where one is drawn."""
    places = [crack.at for crack in outcome.cracks]
    if len(places) < 2:
        return None
    first = len(places) // 2
    return places[first], places[first + 1]


def _distance(outcome, piece: Piece) -> list:
    """The distance of two cracks, between arrows under them."""
    pair = _pair(outcome)
    if pair is None:
        return []
    a, b = (float(piece.along(at)) for at in pair)
    y = piece.bottom + SIZE_ROW
    marks = [line(x, piece.bottom + 4, x, y + 5, "leader") for x in (a, b)]
    if b - a < 24.0:
        outer = [
            Arrow(a - 16, y, a, y, "spread_load", 6.0),
            Arrow(b + 16, y, b, y, "spread_load", 6.0),
        ]
        return [*marks, *outer]
    middle = (a + b) / 2
    inner = [Arrow(middle, y, x, y, "spread_load", 6.0) for x in (a, b)]
    return [*marks, *inner]


def _words(outcome, piece: Piece, view: View) -> list:
    y = piece.bottom + WORD_ROW
    room = piece.along.right - piece.along.left
    for words in cracks_told(outcome, view):
        if width_of(words, "label") <= room:
            break
    half = width_of(words, "label") / 2
    pair = _pair(outcome)
    wish = piece.along(sum(pair) / 2 if pair else outcome.structure.length / 2)
    centre = min(max(float(wish), piece.along.left + half), piece.along.right - half)
    face = [Text(piece.along.left, piece.bottom + 18, _("stretched"), "stretched_word")]
    return [*(face if outcome.tension else []), Text(centre, y, words, "label", "middle")]


def cracks_told(outcome, view: View) -> tuple[str, ...]:
    """Say how far apart the cracks are and how wide, the longest way first."""
    if not outcome.cracks:
        return (_("This load does not crack it."),)
    every = shown(outcome.control.main.spacing, "size", view.system)
    width = shown(outcome.control.main.band.governing, "width", view.system)
    long = _("a crack about every {distance}, each about {width} wide")
    short = _("every {distance}, {width} wide")
    if _pair(outcome) is None:
        long = _("one crack here, {width} wide, the next about {distance} away")
        short = _("{width} wide, the next {distance} away")
    words = tuple(text.format(distance=every, width=width) for text in (long, short))
    other = outcome.control.across
    if other is None or not other.band:
        return words
    other_width = shown(other.band.governing, "width", view.system)
    return tuple(
        _("{words}; the other way {width}").format(words=w, width=other_width) for w in words
    )
