"""Band 3, what holds the crack? The cross-section with its bars, their cover, and the air's way."""

import numpy as np

from crackkit.drawing.choice_cut import Cut
from crackkit.drawing.choice_section_words import side_words, told_below
from crackkit.drawing.choice_sizes import cover_size, gap_size, spacing_size
from crackkit.drawing.choice_torn import torn
from crackkit.drawing.cracks_drawn import noise
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Lines, Polyline, Text, line, rectangle
from crackkit.drawing.words_on import heading
from crackkit.structures.control_ranges import is_slab
from crackkit.structures.strip_stress import BENT
from crackkit.words import _

LEAST_DOT, LEAST_LINE = 2.6, 2.0
FIBRES, FIBRE = 90, 9.0  # how many are sprinkled, and how long each is drawn
TOUCH = 1.5  # room that an outline takes beyond its concrete


def choice_section(structure, control, frame: Frame, view: View) -> list:
    """Draw the band.

    Parameters
    ----------
    structure : CrackControl
    control : Control or None
        What rules and mechanics say; None before anything is known.
    frame : Frame
    view : View
    """
    cut = Cut(structure, frame)
    return [
        *_title(frame, control),
        *concrete_cut(cut),
        *(_air(cut, control) if control else []),
        *fibres(cut),
        *bars_cut(cut),
        *cover_size(cut, control, view),
        *spacing_size(cut, view),
        *gap_size(cut, control, view),
        *side_words(cut, control, view),
        *told_below(cut, view),
    ]


def _title(frame: Frame, control) -> list:
    """The question; before a call only what is drawn."""
    if control is None:
        return [Text(frame.left + 4, frame.top + 17, _("Cut through it"), "label_bold")]
    return heading(frame, 3, _("What holds the crack?"))


def concrete_cut(cut: Cut) -> list:
    """Outline the concrete, torn off where the strip goes on."""
    sides = "lr" if is_slab(cut.structure) else ""
    piece = Frame(cut.left, cut.top, cut.wide, cut.tall)
    return [torn(piece, "concrete", sides if cut.whole else sides + "t")]


def _air(cut: Cut, control) -> list:
    """What the air has reached after 50 years, from each face that is drawn."""
    deep = min(control.carbonated, cut.shown / 2) * cut.scale
    wide = cut.right - cut.left
    shapes = [rectangle(cut.left, cut.face - deep, wide, deep, "uncovered")]
    if cut.whole and cut.structure.action != BENT:
        shapes.append(rectangle(cut.left, cut.top, wide, deep, "uncovered"))
    asked = cut.y(control.asked.cover)
    if asked > cut.top:
        shapes.append(line(cut.left, asked, cut.right + 8, asked, "threshold"))
    return shapes


def fibres(cut: Cut) -> list:
    """Sprinkle fibres over the concrete, always in the same places."""
    if cut.structure.fibres == "none":
        return []
    x, y, turn = (noise(1, FIBRES, seed)[0] for seed in (3, 5, 7))
    along = FIBRE / 2 * np.stack([np.cos(2 * np.pi * turn), np.sin(2 * np.pi * turn)], -1)
    room = np.array((cut.wide, cut.tall)) - FIBRE - 2 * TOUCH
    middle = np.array((cut.left + cut.right, cut.top + cut.face)) / 2
    centre = middle + np.stack([x, y], -1) * np.maximum(room, 0.0)
    return [Lines(np.stack([centre - along, centre + along], axis=1), "leader")]


def bars_cut(cut: Cut) -> list:
    """Main bars as dots, bars across as lines."""
    shapes, across = [], cut.structure.cross_bars()
    if across is not None:
        thick = max(across.diameter * cut.scale, LEAST_LINE)
        ends = cut.left + 3, cut.right - 3
        shapes += [
            Polyline(np.array([(ends[0], y), (ends[1], y)]), "bar", thick)
            for y in cut.heights(across)
        ]
    radius = max(cut.main.diameter / 2 * cut.scale, LEAST_DOT)
    dots = [Circle(x, y, radius, "bar_dot") for y in cut.heights(cut.main) for x in cut.places]
    return [*shapes, *dots]
