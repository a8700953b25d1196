"""Words on a small piece of paper of their own, so that no line runs through them."""

from crackkit.drawing.labels import Box, box, width_of
from crackkit.drawing.shapes import Text, rectangle

PAD = 2.0


def chip(centre: float, y: float, words: str, role: str) -> list:
    """Write words around a centre, baseline y."""
    wide = width_of(words, role)
    paper = rectangle(centre - wide / 2 - PAD, y - 11.0, wide + 2 * PAD, 14.5, "paper")
    return [paper, Text(centre, y, words, role, "middle")]


def chip_box(centre: float, y: float, words: str, role: str) -> Box:
    """Room that such words take."""
    inner = box(Text(centre, y, words, role, "middle"))
    return Box(inner.left - PAD, inner.top - PAD, inner.right + PAD, inner.bottom + PAD, words)
