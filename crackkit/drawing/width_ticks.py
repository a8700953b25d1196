"""Crack widths on the scale of a limit: a tick for each, and names over the ones that matter."""

import numpy as np

from crackkit.drawing.labels import GAP, spread, width_of
from crackkit.drawing.shapes import Lines, Text, line, rectangle
from crackkit.drawing.width_scale import Scale

LOWER, UPPER = 1.5, -9.5  # tops of ticks in the halves of the scale, from its middle
TALL = 8.0


def width_ticks(scale: Scale, widths, top: float = LOWER) -> list[Lines]:
    """Draw a tick for each width in one half of the scale.

    Parameters
    ----------
    scale : Scale
    widths : sequence of float
        Crack widths [mm].
    top : float
        ``LOWER`` or ``UPPER``.
    """
    if not len(widths):
        return []
    ticks = np.empty((len(widths), 2, 2))
    ticks[:, :, 0] = np.array([scale(width) for width in widths])[:, None]
    ticks[:, 0, 1], ticks[:, 1, 1] = scale.line + top, scale.line + top + TALL
    return [Lines(ticks, "crack")]


def width_names(scale: Scale, rows) -> list:
    """Write names over the scale, moved apart, each with a leader to its width.

    Parameters
    ----------
    scale : Scale
    rows : sequence of (float, str, str)
        Width [mm], words and role of each.
    """
    wide = [width_of(words, role) for _width, words, role in rows]
    places = [scale(width) for width, _words, _role in rows]
    placed = spread(places, wide, scale.left, scale.frame.right - 4.0, GAP)
    y, shapes = scale.line - 24.0, []
    for (_width, words, role), x, centre, room in zip(rows, places, placed, wide, strict=True):
        foot = min(max(x, centre - room / 2), centre + room / 2)
        # the line of the limit must not run through the words
        shapes += [
            rectangle(centre - room / 2 - 2, y - 11, room + 4, 14, "paper"),
            line(foot, y + 4, x, scale.line - 8, "leader"),
            Text(centre, y, words, role, "middle"),
        ]
    return shapes
