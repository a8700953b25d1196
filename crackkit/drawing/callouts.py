"""Words in a column beside a drawing, each with a line to its place."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import Frame
from crackkit.drawing.labels import spread
from crackkit.drawing.shapes import Polyline, Text
from crackkit.drawing.words_on import wrapped

LINE, PAD = 16.0, 9.0  # from line to line, and between two call-outs


@dataclass(frozen=True)
class Callout:
    """Words on a place of a drawing, wishing to stand so far below it [drawing units]."""

    place: tuple[float, float]
    words: str
    role: str
    below: float = 0.0


def callouts(found: list[Callout], room: Frame, pad: float = PAD) -> list:
    """Write them below each other in the order of their places.

    Parameters
    ----------
    found : list of Callout
    room : Frame
        For the words; lines go from it to the left.
    pad : float
        Least room between two [drawing units].
    """
    found = sorted(found, key=lambda one: one.place[1])
    told = [(one, wrapped(one.words, one.role, room.width)) for one in found]
    tall = [LINE * len(lines) for _one, lines in told]
    middles = spread([one.place[1] + one.below for one in found], tall, room.top, room.bottom, pad)
    shapes = []
    for (one, lines), middle, height in zip(told, middles, tall, strict=True):
        points = [(room.left - 5.0, middle), (room.left - 16.0, middle), one.place]
        shapes.append(Polyline(np.array(points), "bears", 1.2))
        shapes += [
            Text(room.left, middle - height / 2 + LINE * k + 13.0, words, one.role)
            for k, words in enumerate(lines)
        ]
    return shapes


def fitting(found: list[Callout], room: Frame, pad: float = PAD) -> list[Callout]:
    """Keep the first ones that there is room for."""
    left, kept = room.height + pad, []
    for one in found:
        left -= LINE * len(wrapped(one.words, one.role, room.width)) + pad
        if left < 0:
            break
        kept.append(one)
    return kept
