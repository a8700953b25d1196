"""Band 1, how does it move? A strip that is bent, or pulled: which faces get longer."""

from functools import lru_cache

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Arrow, Lines, Polygon, Polyline, rectangle
from crackkit.drawing.words_on import heading, paragraph
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

SKETCH, THICK, SAG = 168.0, 24.0, 22.0  # drawn length and depth of the strip, and how it sags
POINTS = 21


def choice_movement(structure, load: float | None, frame: Frame, view: View) -> list:
    """Draw the band.

    Parameters
    ----------
    structure : CrackControl
    load : float or None
        Moment [N mm] or pull [N]; None where it is not told.
    frame : Frame
    view : View
    """
    sketch = Frame(frame.left + 26, frame.top + 44, SKETCH, THICK)
    bent = structure.action == BENT
    words = [_bent_words() if bent else _pulled_words(), _load_words(structure, load, view)]
    if load == 0.0:
        words = [_("No load: nothing stretches it but its own shrinking.")]
    x = sketch.right + 56
    return [
        *heading(frame, 1, _("How does it move?"), (_("not to scale"),)),
        *_sketch(sketch, load, bent),
        *paragraph(x, frame.top + 44, " ".join(words), "label", frame.right - x - 4, 5),
    ]


def _sketch(sketch: Frame, load: float | None, bent: bool) -> list | tuple:
    if load == 0.0:
        return [rectangle(sketch.left, sketch.top, SKETCH, THICK, "concrete")]
    return _bent(sketch) if bent else _pulled(sketch)


def _bent_words() -> str:
    return _("It bends: its bottom gets longer, its top shorter.")


def _pulled_words() -> str:
    return _("It gets longer: both faces are stretched alike.")


def _load_words(structure, load: float | None, view: View) -> str:
    if load is None:
        return ""
    width = shown(structure.width, "size", view.system)
    bent = structure.action == BENT
    told = shown(load, "moment" if bent else "force", view.system)
    text = (
        _("Moment {load} on {width} of width.") if bent else _("Pull {load} on {width} of width.")
    )
    return text.format(load=told, width=width)


@lru_cache(maxsize=8)
def _bent(sketch: Frame) -> tuple:
    """The strip sags; its faces in the colours of stretched and squeezed."""
    t = np.linspace(-1.0, 1.0, POINTS)
    lean = SAG * 4.0 / SKETCH * t  # slope of the sagging line
    middle = np.column_stack([sketch.left + SKETCH / 2 * (t + 1.0), sketch.top + SAG * (1 - t * t)])
    middle[:, 1] -= SAG / 2 - THICK / 2
    away = np.column_stack([lean, np.ones_like(t)]) * THICK / 2
    upper, lower = middle - away, middle + away
    return (
        rectangle(sketch.left, sketch.top - 4, SKETCH, THICK, "ghost"),
        Polygon(np.concatenate([upper, lower[::-1]]), "concrete"),
        Polyline(upper, "squeezed_line"),
        Polyline(lower, "stretched_line"),
        *_turning(sketch, upper[0], lower[0], -1.0),
        *_turning(sketch, upper[-1], lower[-1], 1.0),
    )


def _turning(sketch: Frame, upper, lower, way: float) -> list:
    """A bowed arrow that turns an end of the strip."""
    middle, radius = (upper + lower) / 2, 19.0
    angle = np.linspace(1.1, -0.75, 9)
    x = middle[0] + way * radius * np.cos(angle)
    y = middle[1] + radius * np.sin(angle)
    tip, before = (x[-1], y[-1]), (x[-2], y[-2])
    head = Arrow(float(before[0]), float(before[1]), float(tip[0]), float(tip[1]), "load", 9.0)
    return [Polyline(np.column_stack([x[:-1], y[:-1]]), "load"), head]


def _pulled(sketch: Frame) -> list:
    y, longer = sketch.top + THICK / 2, 9.0
    left, right = sketch.left - longer + 14, sketch.right + longer - 14
    faces = [(sketch.top, left, right), (sketch.top + THICK, left, right)]
    ends = np.array([[(a, h), (b, h)] for h, a, b in faces])
    return [
        rectangle(left, sketch.top, right - left, THICK, "concrete"),
        rectangle(sketch.left + 14, sketch.top - 5, SKETCH - 28, THICK + 10, "ghost"),
        *(Lines(ends[k : k + 1], "stretched_line") for k in range(2)),
        Arrow(left - 2, y, left - 30, y, "load", 11.0),
        Arrow(right + 2, y, right + 30, y, "load", 11.0),
    ]
