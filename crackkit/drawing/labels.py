"""Where words go: boxes of text, and labels that make room for each other."""

import math
from dataclasses import dataclass
from functools import cache

from crackkit.drawing.lettering import ASCENT, DESCENT, text_width
from crackkit.drawing.palette import THEMES
from crackkit.drawing.shapes import Circle, Picture, Text, every_shape

ANCHORS = {"start": 0.0, "middle": 0.5, "end": 1.0}
GAP = 8.0  # drawing units between two labels in a row
BADGES = ("bad", "badge")  # roles of discs that carry a sign or a number


@dataclass(frozen=True)
class Box:
    """An upright box around a line of words [drawing units]."""

    left: float
    top: float
    right: float
    bottom: float
    text: str

    def meets(self, other: "Box", slack: float = 0.5) -> bool:
        """Tell whether two boxes overlap by more than `slack`."""
        across = min(self.right, other.right) - max(self.left, other.left)
        down = min(self.bottom, other.bottom) - max(self.top, other.top)
        return across > slack and down > slack


@cache
def width_of(text: str, role: str) -> float:
    """Width of words in a role [drawing units]; the same in every theme."""
    style = THEMES["light"].style(role)
    return text_width(text, style.size, style.bold)


def box(shape: Text) -> Box:
    """Box around a line of words."""
    size = THEMES["light"].style(shape.role).size
    width = width_of(shape.text, shape.role)
    left = shape.x - ANCHORS[shape.anchor] * width
    return Box(left, shape.y - ASCENT * size, left + width, shape.y + DESCENT * size, shape.text)


def text_boxes(picture: Picture) -> list[Box]:
    """Boxes around all the words of a picture."""
    return [box(s) for s in every_shape(picture.shapes) if isinstance(s, Text) and s.text]


def faults(picture: Picture) -> list[str]:
    """List words that overlap, leave the picture or lie on a badge; empty when all is well."""
    boxes, found = text_boxes(picture), []
    for k, one in enumerate(boxes):
        if one.left < 0 or one.top < 0 or one.right > picture.width or one.bottom > picture.height:
            found.append(f"'{one.text}' leaves the picture")
        found += [f"'{one.text}' meets '{o.text}'" for o in boxes[k + 1 :] if one.meets(o)]
    return found + _on_discs(boxes, picture, BADGES, "badge")


def covered_grips(picture: Picture) -> list[str]:
    """List words that lie on a grip; empty when every grip can be seen and taken."""
    return _on_discs(text_boxes(picture), picture, ("grip",), "grip")


def _on_discs(boxes, picture: Picture, roles, name: str) -> list[str]:
    """List words that lie on a disc; the number on a badge of its own belongs there."""
    discs = [s for s in every_shape(picture.shapes) if isinstance(s, Circle) and s.role in roles]
    return [
        f"'{one.text}' lies on a {name}" for disc in discs for one in boxes if _covers(one, disc)
    ]


def _covers(one: Box, disc: Circle) -> bool:
    across = max(one.left - disc.x, disc.x - one.right, 0.0)
    down = max(one.top - disc.y, disc.y - one.bottom, 0.0)
    held = abs(one.left + one.right - 2 * disc.x) < 1.0 and one.right - one.left < 2 * disc.radius
    if disc.role == "badge" and held and one.top < disc.y < one.bottom:
        return False
    return math.hypot(across, down) < disc.radius - 0.5


def spread(centres, widths, low: float, high: float, gap: float = GAP) -> list[float]:
    """Move labels in a row apart, each as near its wished centre as the others allow.

    Parameters
    ----------
    centres, widths : sequence of float
        Wished centres and widths of the labels [drawing units].
    low, high : float
        The row's ends.
    gap : float
        Least distance of two labels.

    Returns
    -------
    list of float
        New centres, in the order given. Labels that do not fit at all stay ordered and start at
        `low`.
    """
    order = sorted(range(len(centres)), key=lambda k: centres[k])
    blocks = []  # [wished left end of the block, width of the block, members]
    for k in order:
        left = min(max(centres[k] - widths[k] / 2, low), high - widths[k])
        blocks.append([left, widths[k], [k]])
        _merge(blocks, low, high, gap)
    placed = list(centres)
    for left, _width, members in blocks:
        at = left
        for k in members:
            placed[k] = at + widths[k] / 2
            at += widths[k] + gap
    return placed


def _merge(blocks, low, high, gap) -> None:
    """Push the last block into the ones before it while they overlap."""
    while len(blocks) > 1 and blocks[-2][0] + blocks[-2][1] + gap > blocks[-1][0]:
        left2, width2, members2 = blocks.pop()
        left1, width1, members1 = blocks.pop()
        width = width1 + gap + width2
        # both blocks give way in proportion to the labels they hold
        share = len(members1) / (len(members1) + len(members2))
        wished = share * left1 + (1 - share) * (left2 - width1 - gap)
        left = max(min(wished, high - width), low)
        blocks.append([left, width, members1 + members2])
