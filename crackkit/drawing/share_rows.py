"""Bars of pull over strength, one below the other, with the line at which it tears."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import Frame
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Text, line, rectangle
from crackkit.words import _

HEAD = 46.0  # from the top of the frame to the first bar
LEAST_HIGH, HEADROOM = 1.25, 1.08  # end of the scale
PITCH = 6.0  # of the hatch


@dataclass(frozen=True)
class ShareRow:
    """What is pulled, and how much of its strength that takes [-]; the worst one is bold."""

    name: str
    share: float
    bold: bool


@dataclass(frozen=True)
class RowSize:
    """How large bars and the room around them are [drawing units].

    Attributes
    ----------
    name, value : float
        Room for the names on the left and for the numbers on the right.
    tall, apart : float
        Of a bar, and from one to the next.
    foot : float
        From the top of a bar down to the line its words stand on.
    under : float
        From the last bar down to the line the words on tearing stand on.
    """

    name: float
    value: float
    tall: float
    apart: float
    foot: float
    under: float


def share_rows(title: str, note: str, rows, frame: Frame, size: RowSize) -> list:
    """Draw title and note, a bar for each row, and the line at which it tears.

    Parameters
    ----------
    title, note : str
    rows : sequence of ShareRow
    frame : Frame
    size : RowSize
    """
    left, right = frame.left + size.name, frame.right - size.value
    per = (right - left) / max(LEAST_HIGH, HEADROOM * max(row.share for row in rows))
    top = frame.top + HEAD
    low = top + size.apart * (len(rows) - 1) + size.tall
    shapes = [
        Text(frame.left, frame.top + 14, title, "label_bold"),
        Text(frame.left, frame.top + 31, note, "note"),
        rectangle(left, top - 4, right - left, low - top + 8, "card"),
    ]
    for k, row in enumerate(rows):
        y = top + size.apart * k
        shapes += _words(row, frame, y + size.foot)
        shapes += _bar(left, y, max(row.share, 0.0) * per, size.tall, row.share)
    return [*shapes, *_tears(left + per, top - 4, low, low + size.under, frame)]


def _words(row: ShareRow, frame: Frame, y: float) -> list[Text]:
    role = "stretched_word" if row.bold else "label"
    return [
        Text(frame.left, y, row.name, role),
        Text(frame.right - 4, y, f"{row.share:.2f}", role, "end"),
    ]


def _bar(left: float, top: float, wide: float, tall: float, share: float) -> list:
    if wide < 1.0:
        return []
    return [rectangle(left, top, wide, tall, "band"), *_hatch(left, top, wide, tall, share)]


def _hatch(left: float, top: float, wide: float, tall: float, share: float) -> list[Lines]:
    x = np.arange(left + 1.0, left + wide - 1.0, PITCH)
    ends = np.empty((x.size, 2, 2))
    ends[:, 0, 0], ends[:, 1, 0] = x, np.minimum(x + 7.0, left + wide)
    ends[:, 0, 1] = top + tall
    ends[:, 1, 1] = top + tall - tall * (ends[:, 1, 0] - x) / 7.0
    return [Lines(ends, "hatch_dense" if share >= 1.0 else "hatch")] if x.size else []


def _tears(x: float, top: float, low: float, foot: float, frame: Frame) -> list:
    words = _("1: it tears")
    half = width_of(words, "bad_word") / 2
    centre = min(max(x, frame.left + half), frame.right - half)
    return [
        line(x, top, x, low + 8, "capacity"),
        Text(centre, foot, words, "bad_word", "middle"),
    ]
