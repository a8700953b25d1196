"""What a slab lies on, drawn by its kind: sheets, grains, stones, stiff ground."""

from functools import cache

import numpy as np

from crackkit.drawing.shapes import Lines, Polygons, line, rectangle
from crackkit.mechanics.base_friction import base

DEEP = 16.0  # height of the base on the drawing
SHEETS = {"two_sheets": 2, "one_sheet": 1}
STONES = {"gravel": 4, "crushed_stone": 4}
ROUND, SHARP = 8, 4  # corners of a stone: river gravel, crushed stone
DUST = 7.0  # from grain to grain


def base_shapes(key: str, left: float, right: float, top: float) -> list:
    """Draw a base between two places on the drawing, from the underside of the slab down."""
    if key in SHEETS:
        return _sheets(SHEETS[key], left, right, top)
    edge = line(left, top + DEEP, right, top + DEEP, "ground")
    if key in ("gravel", "crushed_stone"):
        stones = _stones(round((right - left) / 11.0), ROUND if key == "gravel" else SHARP)
        return [Polygons(stones + (left, top), "wall")]
    if key == "sand":
        return [_strokes(left, right, top, 1.4, DUST), edge]
    if key in ("stabilised", "surface_treatment"):
        filled = rectangle(left, top, right - left, DEEP, "concrete_area")
        return [filled, edge, *([_grid(left, right, top)] if key == "stabilised" else [])]
    return [_strokes(left, right, top, 7.0, 11.0), edge]


def base_name(key: str) -> tuple[str, ...]:
    """Ways to name a base, the longest first."""
    name = base(key).label
    return tuple(dict.fromkeys((name, name.split(",")[0])))


def _sheets(count: int, left: float, right: float, top: float) -> list:
    """Sheets as lines that are seen apart, on ground."""
    shapes = [
        line(left, top + 2.5 + 4.0 * k, right, top + 2.5 + 4.0 * k, "squeezed_line")
        for k in range(count)
    ]
    down = top + 4.0 * count + 1.0
    shapes.append(_strokes(left, right, down, 6.0, 11.0, DEEP - 4.0 * count - 1.0))
    return shapes


def _strokes(left, right, top, tall, pitch, deep: float = DEEP) -> Lines:
    """Slanted strokes in two rows, as ground is drawn; short ones look like grains."""
    rows = 2 if tall < 4.0 or deep > 12.0 else 1
    x = np.arange(left + 2.0, right - tall, pitch)
    parts = []
    for k in range(rows):
        y = top + deep * (k + 0.5) / rows - tall / 2
        at = x + (pitch / 2 if k else 0.0)
        at = at[at < right - tall]
        ends = np.empty((at.size, 2, 2))
        ends[:, 0, 0], ends[:, 1, 0], ends[:, 0, 1], ends[:, 1, 1] = at + tall, at, y, y + tall
        parts.append(ends)
    return Lines(np.concatenate(parts), "ground")


def _grid(left: float, right: float, top: float) -> Lines:
    x = np.arange(left + 8.0, right, 16.0)
    ends = np.empty((x.size, 2, 2))
    ends[:, :, 0], ends[:, 0, 1], ends[:, 1, 1] = x[:, None], top, top + DEEP
    return Lines(ends, "ground")


@cache
def _stones(count: int, corners: int) -> np.ndarray:
    """Outlines of stones in two rows, from (0, 0); always the same."""
    turn = np.linspace(0.0, 2 * np.pi, corners, endpoint=False)
    k = np.arange(2 * count)
    wild = np.modf(np.abs(np.sin(12.9898 * k + 4.1) * 43758.5453))[0]
    radius = (3.1 + 1.1 * wild)[:, None] * np.ones(corners)
    angle = turn + (6.0 * wild)[:, None]
    x = 5.5 + 11.0 * (k % count) + np.where(k < count, -0.8, 0.8)
    y = np.where(k < count, 4.4, DEEP - 4.0)
    return np.stack([x[:, None] + radius * np.cos(angle), y[:, None] + radius * np.sin(angle)], -1)
