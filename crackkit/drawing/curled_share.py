"""How hard each face of a slab is stretched, as a share of what its concrete can bear."""

import numpy as np

from crackkit.drawing.frames import Frame
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Text, line, rectangle
from crackkit.words import _

NAME, VALUE = 56.0, 40.0  # room for the name of a face and for its number
TALL, APART = 18.0, 28.0  # of a bar, and from one to the next
HEAD = 46.0
LEAST_HIGH, HEADROOM = 1.25, 1.08  # end of the scale
PITCH = 6.0  # of the hatch


def curled_share(outcome, frame: Frame) -> list:
    """Draw a bar for each face, with the line at which it tears."""
    state = outcome.curled
    faces = ((_("top"), state.top), (_("bottom"), state.bottom))
    shares = [max(face.peak, 0.0) / state.strength for _name, face in faces]
    left, right = frame.left + NAME, frame.right - VALUE
    per = (right - left) / max(LEAST_HIGH, HEADROOM * max(shares))
    top = frame.top + HEAD
    shapes = [
        Text(frame.left, frame.top + 14, _("Stress over strength"), "label_bold"),
        Text(frame.left, frame.top + 31, _("where each face is stretched most"), "note"),
        rectangle(left, top - 4, right - left, APART + TALL + 8, "card"),
    ]
    for k, ((name, _face), share) in enumerate(zip(faces, shares, strict=True)):
        chosen = share == max(shares)
        shapes += _bar(name, share, chosen, frame, left, top + APART * k, share * per)
    return [*shapes, *_tears(left + per, top - 4, top + APART + TALL + 4, frame)]


def _bar(name, share, chosen, frame: Frame, left, top, wide) -> list:
    """One face: its name, a hatched bar, its number; the worse one bold."""
    role = "stretched_word" if chosen else "label"
    shapes = [
        Text(frame.left, top + 14, name, role),
        Text(frame.right - 4, top + 14, f"{share:.2f}", role, "end"),
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
    centre = min(x, frame.right - half)
    return [
        line(x, top, x, bottom + 4, "capacity"),
        Text(centre, bottom + 18, words, "bad_word", "middle"),
    ]
