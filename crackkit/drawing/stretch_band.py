"""Band 2, where is it stretched and where does it crack? Stress map, hatch, cracks and bars."""

import numpy as np

from crackkit.drawing import footings
from crackkit.drawing.body import Body
from crackkit.drawing.cracks_drawn import crack_shapes
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.gap_marks import RADIUS, badge_place, gap_marks
from crackkit.drawing.labels import GAP, spread, width_of
from crackkit.drawing.rods import rods
from crackkit.drawing.shapes import Lines, Text
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.structures.on_drawing import WALL
from crackkit.units import shown
from crackkit.words import _

RIBBON = 8.0  # height of the hatch beside a stretched face
BESIDE = 14.0  # how far the letter of a support is from its mark
CLOSE = 2.0  # least distance of a letter and a badge


def stretch_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    body = Body(outcome, frame)
    return [
        *heading(frame, 2, _("Where is it stretched? Where does it crack?"), _notes(body)),
        *footings.blocks(outcome.structure, body.along, body.top, body.bottom, 13.0),
        *body.raster(outcome.stresses),
        *_ribbons(outcome.tension, body),
        body.outline(),
        *footings.root_lines(outcome.structure, body.along, body.top, body.bottom),
        *crack_shapes(outcome.cracks, body),
        *rods(outcome, body, view),
        *_support_marks(outcome.structure, body),
        *_letters_and_gaps(outcome, body),
        *_top_words(outcome, body, view),
        *_bottom_words(outcome, body, view),
    ]


def _notes(body: Body) -> tuple[str, ...]:
    """State how the height is drawn where it is not to the scale of the length."""
    factor = body.down / body.along.scale
    if abs(factor - 1.0) < 0.05:
        return ()
    long, short = _("height drawn {n} times larger"), _("height ×{n}")
    return long.format(n=f"{factor:.2g}"), short.format(n=f"{factor:.2g}")


def _ribbons(zones, body: Body) -> list[Lines]:
    """Light hatch beside stretched faces; dense where it is more than the concrete can bear."""
    stretched = [(zone.face, zone.start, zone.end) for zone in zones]
    cracked = [(zone.face, start, end) for zone in zones for start, end in zone.cracked]
    return [*_hatch(body, stretched, 9.0, "hatch"), *_hatch(body, cracked, 4.5, "hatch_dense")]


def _hatch(body: Body, stretches, step: float, role: str) -> list[Lines]:
    """Strokes along stretches (face, start, end) [mm], all of them in one shape."""
    if not stretches:
        return []
    ends = [(float(body.along(start)), float(body.along(end))) for _face, start, end in stretches]
    runs = [np.arange(left, max(right - 4.0, left + 1.0), step) for left, right in ends]
    counts, x = [run.size for run in runs], np.concatenate(runs)
    stops = np.repeat([right for _left, right in ends], counts)
    below = np.repeat([face == "bottom" for face, _start, _end in stretches], counts)
    soffit, away = body.face("bottom", (x - body.along.left) / body.along.scale)
    y, away = np.where(below, soffit, body.top), np.where(below, away, -away)
    strokes = np.empty((x.size, 2, 2))
    strokes[:, 0, 0], strokes[:, 0, 1] = x, y + away * 2.0
    strokes[:, 1, 0], strokes[:, 1, 1] = np.minimum(x + 6.0, stops), y + away * (2.0 + RIBBON)
    return [Lines(strokes, role)]


def _support_marks(structure, body: Body) -> list:
    marks = []
    for footing in footings.pinned(structure):
        x, y = float(body.along(footing.at)), float(body.face("bottom", footing.at)[0])
        marks.append(footings.triangle(x, y + 1, 7, 11))
    return marks


def _letters_and_gaps(outcome, body: Body) -> list:
    """Name the supports, mark the gaps; letters and badges below make room for each other."""
    gaps = () if outcome.range is None else outcome.range.gaps
    above, below = ([gap for gap in gaps if gap.face == face] for face in ("top", "bottom"))
    named = [footing for footing in footings.pinned(outcome.structure) if footing.letter]
    centres = [_letter_place(footing, body) for footing in named]
    widths = [width_of(footing.letter, "label_bold") + GAP - CLOSE for footing in named]
    centres += [badge_place(gap, body) for gap in below]
    widths += [2 * RADIUS] * len(below)
    low, high = body.along.left - 2 * BESIDE, body.frame.right + (GAP - CLOSE) / 2 - 1
    placed = spread(centres, widths, low, high, CLOSE)
    letters, badges = placed[: len(named)], placed[len(named) :]
    y = body.bottom + 19
    return [
        *(
            Text(x, y, footing.letter, "label_bold", "middle")
            for footing, x in zip(named, letters, strict=True)
        ),
        *gap_marks(above, [badge_place(gap, body) for gap in above], body),
        *gap_marks(below, badges, body),
    ]


def _letter_place(footing, body: Body) -> float:
    """Beside the mark of a support: at the left end outside, where nothing can be stretched."""
    x = float(body.along(footing.at))
    return x - BESIDE if x - body.along.left < BESIDE else x + BESIDE


def _zone_words(outcome, face: str, body: Body) -> list[Label]:
    """The words stretched and squeezed for one face."""
    labels = []
    for zone in outcome.tension:
        own = zone.face == face
        words = (_("stretched"), "stretched_word") if own else (_("squeezed"), "squeezed_word")
        # over many spans a word stands only where it has room beside its own stretch
        least = 24.0 if outcome.range is None else width_of(*words)
        if (zone.end - zone.start) * body.along.scale >= least:
            labels.append(Label(float(body.along(_word_place(zone))), *words))
    return labels


def _word_place(zone) -> float:
    return 0.25 * (zone.start + zone.end) + 0.5 * zone.at


def _crack_word(outcome, face: str, body: Body, view: View) -> list[Label]:
    widest = outcome.widest
    if widest is None or widest.face != face:
        return []
    y, away = body.face(face, widest.at)
    x, mouth = float(body.along(widest.at)), float(y) + away * (RIBBON + 4)
    if widest.width is None:
        return [Label(x, _("nothing crosses this crack"), "bad_word", mouth)]
    words = _("widest crack {width}") if outcome.range is None else _("widest crack now {width}")
    words = words.format(width=shown(widest.width.governing, "width", view.system))
    return [Label(x, words, "label_bold", mouth)]


def _top_words(outcome, body: Body, view: View) -> list:
    labels = _zone_words(outcome, "top", body) + _crack_word(outcome, "top", body, view)
    return _word_row(labels, body.top - RIBBON - 9, outcome, body)


def _bottom_words(outcome, body: Body, view: View) -> list:
    labels = _zone_words(outcome, "bottom", body) + _crack_word(outcome, "bottom", body, view)
    return _word_row(labels, body.bottom + RIBBON + 24, outcome, body)


def _word_row(labels: list[Label], y: float, outcome, body: Body) -> list:
    low = body.along.left
    for footing in outcome.structure.footings:
        if footing.kind == WALL and footing.start <= 0.0:
            low = float(body.along(footing.end)) + 4  # a wall reaches up to the words
    return label_row(_fitting(labels, low, body), y, low, body.frame.right - 4)


def _fitting(labels: list[Label], low: float, body: Body) -> list[Label]:
    """Leave out words from the end of the list, the one on the crack last, until the row fits."""
    room, kept = body.frame.right - 4 - low, []
    for label in sorted(labels, key=lambda one: one.mouth is None):
        room -= width_of(label.text, label.role) + GAP
        if room > -GAP:
            kept.append(label)
    return sorted(kept, key=lambda one: labels.index(one))
