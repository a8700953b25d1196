"""The two faces as strips: which stretches some load cracks, and which of them no bar guards."""

import numpy as np

from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polygons, Polyline, Text, rectangle
from crackkit.structures.moment_range import NO_BAR, SLIPS, TOO_FEW
from crackkit.words import _

FAULTS = {NO_BAR: _("no bar"), SLIPS: _("slips"), TOO_FEW: _("too few")}

STRIP = 15.0  # height of a strip
PITCH = 8.0  # of the hatch


def range_strips(found, chart) -> list:
    """Draw both strips, of a MomentRange on a RangeChart."""
    return [*_strip("top", chart.top - STRIP - 2, found, chart), *_lower(found, chart)]


def _lower(found, chart) -> list:
    return _strip("bottom", chart.bottom + 2, found, chart)


def _strip(face: str, y: float, found, chart) -> list:
    left, right = chart.along.left, chart.along.right
    name = _("top") if face == "top" else _("bottom")
    shapes = [
        Text(left - 7, y + 11.5, name, "tick", "end"),
        rectangle(left, y, right - left, STRIP, "card"),
    ]
    stretched = [(a, b) for side, a, b in found.stretched if side == face]
    gaps = [gap for gap in found.gaps if gap.face == face]
    words = _covered_words(_free(face, found), y, chart)
    return [*shapes, *_covered(stretched, y, chart), *_open(gaps, y, chart), *words]


def _free(face: str, found) -> list[tuple[float, float]]:
    """The stretches of a face [mm] that crack and are guarded."""
    parts = []
    for side, start, end in found.stretched:
        if side != face:
            continue
        for gap in sorted((g for g in found.gaps if g.face == face), key=lambda g: g.start):
            if start < gap.end and gap.start < end:
                parts.append((start, gap.start))
                start = max(start, gap.end)
        parts.append((start, end))
    return [(a, b) for a, b in parts if b > a]


def _covered(stretched, y: float, chart) -> list:
    parts = _drawn(stretched, chart)
    areas = _areas(parts, y, STRIP, "covered")
    return [*areas, *_slanted(parts, y, (1.0,), "calm_hatch")]


def _areas(parts, y: float, tall: float, role: str) -> list[Polygons]:
    """Upright rectangles from end to end of each part, all in one shape."""
    if not parts:
        return []
    low = y + tall
    corners = [[(a, y), (b, y), (b, low), (a, low)] for a, b in parts]
    return [Polygons(np.array(corners), role)]


def _drawn(stretches, chart) -> list[tuple[float, float]]:
    """Ends of stretches [mm] on the drawing."""
    return [(float(chart.along(a)), float(chart.along(b))) for a, b in stretches]


def _covered_words(stretches, y: float, chart) -> list:
    words = [(_("bars cross"), *ends) for ends in _drawn(stretches, chart)]
    return _words(words, "tick", y)


def _open(gaps, y: float, chart) -> list:
    parts = _drawn([(gap.start, gap.end) for gap in gaps], chart)
    shapes = [*_areas(parts, y, STRIP, "paper"), *_areas(parts, y, STRIP, "uncovered")]
    shapes += _slanted(parts, y, (1.0, -1.0), "bad_line")
    for left, right in parts:
        corners = [(left, y), (right, y), (right, y + STRIP), (left, y + STRIP), (left, y)]
        shapes.append(Polyline(np.array(corners), "bad_line"))
    words = [(FAULTS[gap.fault], *ends) for gap, ends in zip(gaps, parts, strict=True)]
    return [*shapes, *_words(words, "bad_word", y)]


def _words(stretches, role: str, y: float) -> list:
    """Words in the middle of each stretch (words, left, right) that is long enough for them."""
    texts, under = [], []
    for words, left, right in stretches:
        half, x = width_of(words, role) / 2 + 3, (left + right) / 2
        if right - left >= 2 * half + 4:
            under.append((x - half, x + half))
            texts.append(Text(x, y + 11.8, words, role, "middle"))
    return [*_areas(under, y + 1, STRIP - 2, "paper"), *texts]


def _slanted(parts, y: float, ways, role: str) -> list[Lines]:
    """Diagonals inside stretches of a strip, rising to the right for a way of 1, falling for -1."""
    if not parts:
        return []
    left, right = np.array(parts).T[:, :, None]
    start = np.arange(left.min() - STRIP, right.max(), PITCH)
    x1, x2 = np.maximum(start, left), np.minimum(start + STRIP, right)
    seen = x2 > x1
    x = np.array([x1[seen], x2[seen]]).T
    rise = np.array([(x1 - start)[seen], (x2 - start)[seen]]).T
    strokes = np.empty((len(ways), *x.shape, 2))
    for stroke, way in zip(strokes, ways, strict=True):
        stroke[..., 0], stroke[..., 1] = x, (y + STRIP if way > 0 else y) - way * rise
    return [Lines(strokes.reshape(-1, 2, 2), role)]
