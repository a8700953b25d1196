"""Band 2 once more, for loads that come and go: all the moments there can be, and the gaps."""

import numpy as np

from crackkit.drawing.axes import tick_text, ticks
from crackkit.drawing.frames import Frame, View, along
from crackkit.drawing.gap_marks import badge
from crackkit.drawing.gap_words import gap_words
from crackkit.drawing.labels import width_of
from crackkit.drawing.range_hints import range_hints
from crackkit.drawing.range_strips import STRIP, range_strips
from crackkit.drawing.shapes import Lines, Polygon, Polyline, Text, line
from crackkit.drawing.thinning import thinned
from crackkit.drawing.words_on import heading, wrapped
from crackkit.units import inner, number, unit
from crackkit.words import _

MOST_TOLD = 3  # gaps that are written out
UNIT = 50.0  # room for the unit beside the key
APART = 7.0  # least room between two entries of the key
EDGE = 9.0  # numbers keep this far from the strips
LINES = (
    ("now_line", _("now")),
    ("second_line", _("once cracked")),
    ("threshold", _("cracks from")),
    ("bears", _("bars bear")),
    ("stretched_area", _("any load")),
)


def range_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band; `outcome.range` is there."""
    chart = RangeChart(outcome, frame)
    return [
        *heading(frame, 2, _("Where can it be stretched, whatever the load does?")),
        *_key(frame, view),
        *_grid(chart, view),
        *_supports(outcome.structure, chart),
        *_curves(outcome.range, chart),
        *range_strips(outcome.range, chart),
        *(range_hints(outcome, chart, view) if view.live else ()),
    ]


class RangeChart:
    """The way from moment to height: sagging is drawn downward, on the side that is stretched."""

    def __init__(self, outcome, frame: Frame):
        self.frame, self.along = frame, along(frame, float(outcome.x[-1]))
        self.top = frame.top + 46.0 + STRIP + 2
        self.bottom = frame.bottom - 4.0 - STRIP - 2
        found = outcome.range
        self.low = min(float(found.hogging.min()), float(found.elastic.min()), 0.0)
        self.high = max(float(found.sagging.max()), float(found.elastic.max()), 0.0)
        if self.high - self.low < 1.0:
            self.low, self.high = -1.0, 1.0

    def __call__(self, moment):
        """Height of a moment [N mm]; beyond the chart it stays at the edge."""
        share = (moment - self.low) / (self.high - self.low)
        return self.top + np.minimum(np.maximum(share, 0.0), 1.0) * (self.bottom - self.top)

    def lines(self, x, *moments) -> list[np.ndarray]:
        """Points of lines of moments, without those that cannot be seen."""
        return thinned(self.along(x), self(np.array(moments)), few=20)


def _key(frame: Frame, view: View) -> list:
    """What the lines mean; the unit on the left."""
    shapes, right, y = [], frame.right - 8, frame.top + 36
    words_wide = sum(width_of(words, "note") for _role, words in LINES)
    # what is left for a sample and the room before it; the room is what keeps entries apart
    each = (frame.width - UNIT - words_wide) / len(LINES) - 6
    apart = min(max(each - 22.0, APART), 14.0)
    sample = min(each - apart, 22.0)
    for role, words in reversed(LINES):
        shapes.append(Text(right, y, words, "note", "end"))
        right -= width_of(words, "note") + 6
        shapes.append(_sample(role, right - sample, y - 4, sample))
        right -= sample + apart
    return [*shapes, Text(frame.left + 39, y, unit("moment", view.system), "tick", "end")]


def _sample(role: str, x: float, y: float, wide: float):
    if not role.endswith("_area"):
        return line(x, y, x + wide, y, role)
    corners = [(x, y - 5), (x + wide, y - 5), (x + wide, y + 5), (x, y + 5)]
    return Polygon(np.array(corners), role)


def _grid(chart: RangeChart, view: View) -> list:
    ends = (number(m, "moment", view.system) for m in (chart.low, chart.high))
    values = ticks(*ends, 3)
    heights = [float(chart(inner(float(v), "moment", view.system))) for v in values]
    left, right = chart.along.left, chart.along.right
    rows = np.array([[(left, y), (right, y)] for y in heights]).reshape(-1, 2, 2)
    zero = float(chart(0.0))
    shapes = [Lines(rows, "grid"), line(left, zero, right, zero, "axis")]
    for v, y in zip(values, heights, strict=True):
        if chart.top + EDGE < y < chart.bottom - EDGE:
            shapes.append(Text(left - 7, y + 4, tick_text(float(v)), "tick", "end"))
    return shapes


def _supports(structure, chart: RangeChart) -> list:
    places = [float(chart.along(footing.at)) for footing in structure.footings]
    rows = [[(x, chart.top), (x, chart.bottom)] for x in places]
    return [Lines(np.array(rows), "grid")]


def _curves(found, chart: RangeChart) -> list:
    ends, loads = (found.sagging, found.hogging), (found.elastic, found.shifted)
    lower, upper, now, later, *borne = chart.lines(
        found.x, *ends, *loads, found.bears_bottom, found.bears_top
    )
    shapes = [Polygon(np.concatenate([upper, lower[::-1]]), "stretched_area")]
    for moment in (found.cracks_bottom, found.cracks_top):
        ordered = np.sort(moment)
        if chart.low < float(ordered[ordered.size // 2]) < chart.high:
            # a level line has its ends and no more
            seen = slice(None, None, moment.size - 1 if ordered[0] == ordered[-1] else None)
            shapes.append(Polyline(chart.lines(found.x[seen], moment[seen])[0], "threshold"))
    if float(np.abs(found.shifted - found.elastic).max()) > 0.01 * (chart.high - chart.low):
        shapes.append(Polyline(later, "second_line"))
    shapes += [
        _bears(borne, chart),
        Polyline(upper, "stretched_line", 1.2),
        Polyline(lower, "stretched_line", 1.2),
        Polyline(now, "now_line"),
    ]
    return shapes


def _bears(lines, chart: RangeChart) -> Lines:
    """What the bars of both faces bear, where that is on the chart and more than nothing."""
    parts = []
    zero = chart(0.0)
    for points in lines:
        height = points[:, 1]
        low, high = np.minimum(height[1:], height[:-1]), np.maximum(height[1:], height[:-1])
        seen = (high > chart.top) & (low < chart.bottom) & ~((low == zero) & (high == zero))
        parts.append(np.stack([points[:-1][seen], points[1:][seen]], axis=1))
    return Lines(np.concatenate(parts), "bears")


def gap_list(outcome, frame: Frame, view: View) -> list:
    """Write out the gaps: three at the most, and how many more there are."""
    gaps = outcome.range.gaps
    if not gaps:
        words = _("Bars that hold cross every stretch that some load cracks.")
        return _lines(frame, frame.top + 17, wrapped(words, "note", frame.width - 12), "note")
    shapes, y = (
        [Text(frame.left, frame.top + 17, _("Not guarded by bars"), "label_bold")],
        frame.top + 36,
    )
    rest = len(gaps)
    for gap in gaps[:MOST_TOLD]:
        rows = wrapped(gap_words(gap, outcome.structure, view), "label", frame.width - 26)
        left_over = rest > 1
        if y + 15 * (len(rows) - 1) + (18 if left_over else 0) > frame.bottom + 1:
            break
        shapes += [*badge(frame.left + 8, y - 4.5), *_lines(frame, y, rows, "label", 22.0)]
        y += 15 * len(rows) + 4
        rest -= 1
    if rest:
        more = _("and {n} more") if rest < len(gaps) else _("at {n} places")
        shapes.append(Text(frame.left + 22, y, more.format(n=rest), "note"))
    return shapes


def _lines(frame: Frame, y: float, rows, role: str, indent: float = 0.0) -> list[Text]:
    return [Text(frame.left + indent, y + 15 * k, row, role) for k, row in enumerate(rows)]
