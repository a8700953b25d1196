"""A beam before anything is known of it: loads, supports, and paper to draw predictions on."""

import numpy as np

from crackkit.drawing.frames import Along, View
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Picture,
    Polygon,
    Text,
    line,
    rectangle,
)
from crackkit.drawing.words_on import Label, label_row
from crackkit.units import shown
from crackkit.words import _

WIDTH, HEIGHT = 1000.0, 652.0
BEAM_TOP, DEPTHS = 132.0, (100.0, 150.0)
FIRST_TASK, TASK = 350.0, 74.0
QUESTIONS = (
    _("How does it move? Draw its shape with a dashed line, larger than it would be."),
    _("Where is it stretched? Hatch the stretched parts of the faces."),
    _("Where will it crack? Draw each crack from the face it starts at, leaning as it will lean."),
    _("What will hold the cracks? Draw the bars: which face, from where to where. Why there?"),
)


def blank_beam(structure, view: View) -> Picture:
    """Draw the loads and supports of a beam, with room and lines to write on.

    Parameters
    ----------
    structure : SimpleBeam
        Its bars, if any, are left out.
    view : View
        Units.
    """
    along = Along(60.0, 940.0, structure.length)
    depth = float(np.clip(structure.depth * along.scale, *DEPTHS))
    shapes = (
        *_loads(structure, along, view),
        rectangle(along.left, BEAM_TOP, along.right - along.left, depth, "support"),
        *_supports(structure, along, BEAM_TOP + depth),
        *_sizes(structure, along, BEAM_TOP + depth, view),
        *_questions(),
    )
    return Picture(WIDTH, HEIGHT, shapes, _("Your prediction"), description(structure, view))


def description(structure, view: View) -> str:
    """Say in words what is drawn."""
    loads = ", ".join(
        _("{force} at {place}").format(
            force=shown(load.force, "force", view.system),
            place=shown(load.at, "length", view.system),
        )
        for load in structure.loads
        if load.force
    )
    text = _("A beam without bars, {sizes}. Point loads: {loads}. Spread load: {spread}.")
    return text.format(
        sizes=_size_words(structure, view),
        loads=loads or _("none"),
        spread=shown(structure.line_load, "line_load", view.system),
    )


def _loads(structure, along: Along, view: View) -> list:
    labels, shapes = [], []
    if structure.line_load:
        shapes += [
            Arrow(x, BEAM_TOP - 26, x, BEAM_TOP - 2, "spread_load", 6.0)
            for x in np.linspace(along.left, along.right, 19).tolist()
        ]
        words = _("{load} with its own weight") if structure.self_weight else "{load}"
        words = words.format(load=shown(structure.line_load, "line_load", view.system))
        labels.append(Label(along.right, words, "note"))
    for load in structure.loads:
        if load.force:
            x = float(along(load.at))
            shapes.append(Arrow(x, 46.0, x, BEAM_TOP - 2, "load", 11.0))
            labels.append(Label(x, shown(load.force, "force", view.system), "load_word"))
    return [*label_row(labels, 36.0, 10.0, WIDTH - 10.0), *shapes]


def _supports(structure, along: Along, y: float) -> list:
    shapes = []
    for at in structure.supports:
        x = float(along(at))
        corners = np.array([(x, y), (x - 14, y + 22), (x + 14, y + 22)])
        ground = line(x - 20, y + 24, x + 20, y + 24, "ground")
        shapes.append(Group((Polygon(corners, "support"), ground)))
    return shapes


def _size_words(structure, view: View) -> str:
    return _("{span} between supports, {width} wide, {depth} deep").format(
        span=shown(structure.span, "length", view.system),
        width=shown(structure.width, "size", view.system),
        depth=shown(structure.depth, "size", view.system),
    )


def _sizes(structure, along: Along, bottom: float, view: View) -> list:
    left, right = (float(along(at)) for at in structure.supports)
    y = bottom + 36.0
    return [
        Arrow((left + right) / 2, y, left, y, "spread_load", 7.0),
        Arrow((left + right) / 2, y, right, y, "spread_load", 7.0),
        Text((left + right) / 2, y + 18, _size_words(structure, view), "label", "middle"),
    ]


def _questions() -> list:
    shapes = []
    for k, question in enumerate(QUESTIONS):
        y = FIRST_TASK + TASK * k
        shapes += [
            Circle(70.0, y - 5, 10.0, "badge"),
            Text(70.0, y - 0.8, str(k + 1), "badge_word", "middle"),
            Text(90.0, y, question, "label"),
            line(90.0, y + 26, 940.0, y + 26, "grid"),
            line(90.0, y + 52, 940.0, y + 52, "grid"),
        ]
    return shapes
