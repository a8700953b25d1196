"""What carries a member, for every drawing of it: blocks that hold it fast, and walls."""

import numpy as np

from crackkit.drawing.frames import Along
from crackkit.drawing.shapes import Lines, Polygon, Polyline, line, rectangle
from crackkit.structures.on_drawing import FIXED, WALL

BLOCK = 11.0  # drawn width of a block at an end that is held fast
PITCH = 7.0  # of the hatch


def pinned(structure) -> list:
    """List the footings that a member can turn on."""
    return [footing for footing in structure.footings if footing.kind not in (FIXED, WALL)]


def holding(structure) -> list:
    """List the footings that hold a member fast."""
    return [footing for footing in structure.footings if footing.kind in (FIXED, WALL)]


def triangle(x: float, y: float, half: float, tall: float) -> Polygon:
    """Make a support that lets the member turn, its tip at (x, y)."""
    return Polygon(np.array([(x, y), (x - half, y + tall), (x + half, y + tall)]), "support")


def blocks(structure, along: Along, top: float, bottom: float, past: float) -> list:
    """Draw the footings that hold fast, reaching past the member above and below."""
    shapes = []
    for footing in holding(structure):
        left, right = extent(footing, along)
        shapes += hatched_block(left, right, top - past, bottom + past)
    return shapes


def extent(footing, along: Along) -> tuple[float, float]:
    """Left and right edge of a block or a wall on the drawing."""
    if footing.kind == WALL:
        return float(along(footing.start)), float(along(footing.end))
    x = float(along(footing.at))
    return (x - BLOCK, x) if x < (along.left + along.right) / 2 else (x, x + BLOCK)


def hatched_block(left: float, right: float, top: float, bottom: float) -> list:
    """Draw an upright block with diagonals, as walls are drawn in section."""
    block = rectangle(left, top, right - left, bottom - top, "wall")
    return [block, _diagonals(left, right, top, bottom)]


def _diagonals(left: float, right: float, top: float, bottom: float) -> Lines:
    wide = right - left
    start = np.arange(top + PITCH / 2, bottom + wide, PITCH)
    y1, y2 = np.minimum(start, bottom), np.maximum(start - wide, top)
    x1, x2 = left + (start - y1), left + (start - y2)
    pairs = np.stack([np.stack([x1, y1], -1), np.stack([x2, y2], -1)], axis=1)
    return Lines(pairs[(x1 <= right) & (x2 > x1)], "ground")


def root_lines(structure, along: Along, top: float, bottom: float) -> list[Polyline]:
    """Mark the face of each wall across the member, which is drawn over the wall."""
    faces = [footing for footing in structure.footings if footing.kind == WALL]
    return [line(float(along(f.at)), top, float(along(f.at)), bottom, "ghost") for f in faces]
