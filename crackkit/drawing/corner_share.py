"""How near to tearing each inside corner is: its mean pull as a share of the strength."""

import numpy as np

from crackkit.drawing.corner_words import corner_names
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Text, line, rectangle
from crackkit.units import shown
from crackkit.words import _

NAME, VALUE = 88.0, 42.0  # room for the name of a corner and for its number
TALL, ROW = 15.0, 22.0  # of a bar, and from one to the next
HEAD = 46.0
MOST = 6  # corners that are shown
LEAST_HIGH, HEADROOM = 1.25, 1.08  # end of the scale
PITCH = 6.0  # of the hatch


def shown_corners(state) -> int:
    """Count the corners that have a bar."""
    return min(len(state.corners), MOST)


def corner_share(outcome, frame: Frame, view: View) -> list:
    """Draw a bar for each corner, the one looked at first, with the line at which it tears."""
    state = outcome.cornered
    names = corner_names(state.corners, outcome.structure.shape == "door")
    order = sorted(
        range(len(names)), key=lambda k: (k != state.worst, -state.corners[k].share)
    )  # fmt: skip
    rows = [(names[k], state.corners[k]) for k in order[:MOST]]
    left, right = frame.left + NAME, frame.right - VALUE
    per = (right - left) / max(LEAST_HIGH, HEADROOM * max(corner.share for _name, corner in rows))
    top = frame.top + HEAD
    low = top + ROW * (len(rows) - 1) + TALL
    note = _("mean over {length} from each corner").format(
        length=shown(state.material_length, "size", view.system)
    )
    shapes = [
        Text(frame.left, frame.top + 14, _("Pull over strength"), "label_bold"),
        Text(frame.left, frame.top + 31, note, "note"),
        rectangle(left, top - 4, right - left, low - top + 8, "card"),
    ]
    for k, (name, corner) in enumerate(rows):
        wide = max(corner.share, 0.0) * per
        shapes += _bar(name, corner.share, k == 0, frame, left, top + ROW * k, wide)
    return [*shapes, *_tears(left + per, top - 4, low + 4, frame)]


def _bar(name, share, worst, frame: Frame, left, top, wide) -> list:
    """One corner: its name, a hatched bar, its share; the one that is looked at bold."""
    role = "stretched_word" if worst else "label"
    shapes = [
        Text(frame.left, top + 12, name, role),
        Text(frame.right - 4, top + 12, f"{share:.2f}", role, "end"),
    ]
    if wide < 1.0:
        return shapes
    return [*shapes, rectangle(left, top, wide, TALL, "band"), *_hatch(left, top, wide, share)]


def _hatch(left: float, top: float, wide: float, share: float) -> list[Lines]:
    x = np.arange(left + 1.0, left + wide - 1.0, PITCH)
    ends = np.empty((x.size, 2, 2))
    ends[:, 0, 0], ends[:, 1, 0] = x, np.minimum(x + 7.0, left + wide)
    ends[:, 0, 1] = top + TALL
    ends[:, 1, 1] = top + TALL - TALL * (ends[:, 1, 0] - x) / 7.0
    return [Lines(ends, "hatch_dense" if share >= 1.0 else "hatch")] if x.size else []


def _tears(x: float, top: float, bottom: float, frame: Frame) -> list:
    words = _("1: it tears")
    half = width_of(words, "bad_word") / 2
    centre = min(max(x, frame.left + half), frame.right - half)
    return [
        line(x, top, x, bottom + 4, "capacity"),
        Text(centre, bottom + 17, words, "bad_word", "middle"),
    ]
