"""What is written beside or below the cross-section: bars, cover, neutral axis."""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import spread
from crackkit.drawing.section_scale import SectionScale
from crackkit.drawing.shapes import Polyline, Text, line
from crackkit.units import shown
from crackkit.words import _


def section_words(outcome, scale: SectionScale, frame: Frame, view: View) -> list:
    """Write the labels where the shape of the section leaves room."""
    return (_below if scale.flat else _beside)(_rows(outcome, scale, view), scale, frame)


def cut_layers(outcome) -> list:
    """List the layers of bars that run through the section."""
    return [item for item in outcome.steel if item.start <= outcome.worst.at <= item.end]


def _rows(outcome, scale: SectionScale, view: View) -> list[tuple[float, float, str, str]]:
    """Place on the section, words and role of each label."""
    worst = outcome.worst
    rows = [(scale.left, scale.y(worst.axis), _axis_words(outcome), "note")]
    for item in cut_layers(outcome):
        x, y = scale.x(bars_across(item, scale.width)[0]), scale.y(item.depth_at(worst.at))
        rows.append((x, y, bar_words(item, view), "label"))
    rows.append((scale.left, _cover_height(outcome, scale), _cover_words(outcome, view), "note"))
    # bars that lap at one depth are named once
    return list(dict.fromkeys(row for row in rows if row[2]))


def _beside(rows, scale: SectionScale, frame: Frame) -> list:
    """Labels to the right of the section, moved apart up and down."""
    heights = spread([r[1] for r in rows], [12.0] * len(rows), frame.top + 42, frame.bottom - 2, 4)
    x = scale.right + 14
    shapes = []
    for (_x, wish, words, role), y in zip(rows, heights, strict=True):
        shapes.append(line(x - 10, wish, x - 2, y, "leader"))
        shapes.append(Text(x, y + 4, words, role))
    return shapes


def _below(rows, scale: SectionScale, frame: Frame) -> list:
    """Labels in a column below the section, in the order of what they name, each with a leader."""
    shapes, y = [], scale.bottom + 22.0
    step = min(18.0, (frame.bottom - 2 - y) / max(len(rows) - 1, 1))
    for k, (at, wish, words, role) in enumerate(sorted(rows, key=lambda row: -row[1])):
        x, height = scale.left + 6.0 + 9.0 * k, y + step * k
        turns = [(max(at, x), wish), (x, wish), (x, height - 4), (scale.left + 56, height - 4)]
        shapes.append(Polyline(np.array(turns), "leader"))
        shapes.append(Text(scale.left + 60, height, words, role))
    return shapes


def bars_across(item, width: float) -> list[float]:
    """Places of the bars of a layer from the left edge of the web or the strip [mm]."""
    if item.spacing is not None:
        count = max(int(width / item.spacing + 0.5), 1)
        return [width / 2 + item.spacing * (k - (count - 1) / 2) for k in range(count)]
    edge = item.side_cover + item.diameter / 2
    return np.linspace(edge, width - edge, item.number).tolist() if item.number > 1 else [edge]


def bar_words(item, view: View) -> str:
    """Name a layer: how many bars, or how far apart those of a mat."""
    size = item.size if item.size.startswith("#") else f"{item.size} mm"
    if item.spacing is None:
        return f"{item.number:g} × {size}"
    every = shown(item.spacing, "size", view.system)
    return _("{size} every {distance}").format(size=size, distance=every)


def _axis_words(outcome) -> str:
    if outcome.widest is not None and outcome.widest.width is None:
        return _("axis until it cracks")
    return _("neutral axis")


def _nearest(outcome):
    """The stretched layer nearest the cracked face, if any."""
    worst = outcome.worst
    if outcome.widest is not None and outcome.widest.width is None:
        return None
    sense = 1 if worst.face == "bottom" else -1
    depths = {id(item): item.depth_at(worst.at) for item in cut_layers(outcome)}
    pulled = [i for i in cut_layers(outcome) if sense * (depths[id(i)] - worst.axis) > 0]
    return max(pulled, key=lambda item: sense * depths[id(item)], default=None)


def _clear_cover(outcome) -> float | None:
    item, worst = _nearest(outcome), outcome.worst
    if item is None:
        return None
    depth = item.depth_at(worst.at)
    centre = worst.section.depth - depth if worst.face == "bottom" else depth
    return max(centre - item.diameter / 2, 0.0)


def _cover_height(outcome, scale: SectionScale) -> float:
    return scale.y(scale.depth if outcome.worst.face == "bottom" else 0.0)


def _cover_words(outcome, view: View) -> str:
    cover = _clear_cover(outcome)
    if cover is None:
        return ""
    return _("cover of bars {c}").format(c=shown(cover, "size", view.system))
