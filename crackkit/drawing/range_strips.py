"""The two faces as strips: which stretches some load cracks, and which of them no bar guards."""

import numpy as np

from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polyline, Text, rectangle
from crackkit.words import _

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
    for side, start, end in found.stretched:
        if side == face:
            shapes += _covered(float(chart.along(start)), float(chart.along(end)), y)
    words = [shape for part in _free(face, found) for shape in _covered_word(part, y, chart)]
    for gap in found.gaps:
        if gap.face == face:
            shapes += _open(gap, y, chart)
    return [*shapes, *words]


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


def _covered(left: float, right: float, y: float) -> list:
    return [
        rectangle(left, y, right - left, STRIP, "covered"),
        _slanted(left, right, y, 1.0, "calm_hatch"),
    ]


def _covered_word(part, y: float, chart) -> list:
    left, right = (float(chart.along(at)) for at in part)
    return _word(_("bars cross"), "tick", left, right, y)


def _open(gap, y: float, chart) -> list:
    left, right = float(chart.along(gap.start)), float(chart.along(gap.end))
    wide = right - left
    words = _("slips") if gap.slips else _("no bar")
    corners = [(left, y), (right, y), (right, y + STRIP), (left, y + STRIP), (left, y)]
    return [
        rectangle(left, y, wide, STRIP, "paper"),
        rectangle(left, y, wide, STRIP, "uncovered"),
        _slanted(left, right, y, 1.0, "bad_line"),
        _slanted(left, right, y, -1.0, "bad_line"),
        Polyline(np.array(corners), "bad_line"),
        *_word(words, "bad_word", left, right, y),
    ]


def _word(words: str, role: str, left: float, right: float, y: float) -> list:
    """Words in the middle of a stretch that is long enough for them."""
    half = width_of(words, role) / 2 + 3
    if right - left < 2 * half + 4:
        return []
    x = (left + right) / 2
    return [
        rectangle(x - half, y + 1, 2 * half, STRIP - 2, "paper"),
        Text(x, y + 11.8, words, role, "middle"),
    ]


def _slanted(left: float, right: float, y: float, way: float, role: str) -> Lines:
    """Diagonals inside a stretch of a strip, rising to the right with `way` 1, falling with -1."""
    start = np.arange(left - STRIP + PITCH / 2, right, PITCH)
    x1, x2 = np.maximum(start, left), np.minimum(start + STRIP, right)
    up1, up2 = x1 - start, x2 - start
    base = y + STRIP if way > 0 else y
    pairs = np.stack(
        [np.stack([x1, base - way * up1], -1), np.stack([x2, base - way * up2], -1)], axis=1
    )
    return Lines(pairs[x2 > x1], role)
