"""The two faces as strips: which stretches some load cracks, and which of them no bar guards."""

import numpy as np

from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polyline, Text, rectangle
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
    words = [shape for part in _free(face, found) for shape in _covered_word(part, y, chart)]
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
    areas = [rectangle(left, y, right - left, STRIP, "covered") for left, right in parts]
    return [*areas, *_slanted(parts, y, (1.0,), "calm_hatch")]


def _drawn(stretches, chart) -> list[tuple[float, float]]:
    """Ends of stretches [mm] on the drawing."""
    return [(float(chart.along(a)), float(chart.along(b))) for a, b in stretches]


def _covered_word(part, y: float, chart) -> list:
    left, right = (float(chart.along(at)) for at in part)
    return _word(_("bars cross"), "tick", left, right, y)


def _open(gaps, y: float, chart) -> list:
    parts = _drawn([(gap.start, gap.end) for gap in gaps], chart)
    shapes = []
    for left, right in parts:
        shapes.append(rectangle(left, y, right - left, STRIP, "paper"))
        shapes.append(rectangle(left, y, right - left, STRIP, "uncovered"))
    shapes += _slanted(parts, y, (1.0, -1.0), "bad_line")
    for gap, (left, right) in zip(gaps, parts, strict=True):
        corners = [(left, y), (right, y), (right, y + STRIP), (left, y + STRIP), (left, y)]
        shapes.append(Polyline(np.array(corners), "bad_line"))
        shapes += _word(FAULTS[gap.fault], "bad_word", left, right, y)
    return shapes


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
