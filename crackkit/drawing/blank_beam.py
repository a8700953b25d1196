"""A beam before anything is known of it: loads, supports, and paper to draw predictions on."""

import itertools

import numpy as np

from crackkit.drawing import footings, loads_on
from crackkit.drawing.frames import Along, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.live_blocks import live_blocks, live_label
from crackkit.drawing.shapes import (
    Arrow,
    Group,
    Picture,
    line,
    rectangle,
)
from crackkit.drawing.words_on import Label, label_row
from crackkit.drawing.written_lines import written_lines
from crackkit.units import shown
from crackkit.units.places import place_told
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
    """Draw the loads and supports of a member, with room and lines to write on.

    Parameters
    ----------
    structure : object
        Has footings, hung and spread loads, length, width and depth; its bars are left out.
    view : View
        Units.
    """
    along = Along(60.0, 940.0, structure.length)
    depth = float(np.clip(structure.depth * along.scale, *DEPTHS))
    shapes = (
        *_loads(structure, along, view),
        *footings.blocks(structure, along, BEAM_TOP, BEAM_TOP + depth, 20.0),
        rectangle(along.left, BEAM_TOP, along.right - along.left, depth, "support"),
        *footings.root_lines(structure, along, BEAM_TOP, BEAM_TOP + depth),
        *_supports(structure, along, BEAM_TOP + depth),
        *_sizes(structure, along, BEAM_TOP + depth, view),
        *written_lines(QUESTIONS, FIRST_TASK, TASK, 52.0),
    )
    return Picture(WIDTH, HEIGHT, shapes, _("Your prediction"), description(structure, view))


def description(structure, view: View) -> str:
    """Say in words what is drawn."""
    loads = ", ".join(
        _("{force} at {place}").format(
            force=shown(load.force, "force", view.system),
            place=place_told(structure, load.at, view.system),
        )
        for load in structure.hung
        if load.force
    )
    text = _("A beam without bars, {sizes}. Point loads: {loads}. Spread load: {spread}.")
    return text.format(
        sizes=size_words(structure, view) + _ends_said(structure, view),
        loads=loads or _("none"),
        spread=_spread_said(structure, view),
    )


def _ends_said(structure, view: View) -> str:
    ends = [shown(b - a, "length", view.system) for a, b in ends_past(structure)]
    if not ends:
        return ""
    return _(", reaching {ends} past the outer supports").format(ends=_(" and ").join(ends))


def _spread_said(structure, view: View) -> str:
    totals = [shown(load.total, "line_load", view.system) for load in loads_on.lasting(structure)]
    if loads_on.live(structure):
        totals.append(loads_on.live_words(structure, view))
    return ", ".join(dict.fromkeys(totals)) or shown(0.0, "line_load", view.system)


def _loads(structure, along: Along, view: View) -> list:
    labels = [
        Label(float(along(load.at)), shown(load.force, "force", view.system), "load_word")
        for load in structure.hung
        if load.force
    ]
    shapes = [
        Arrow(x, BEAM_TOP - 26, x, BEAM_TOP - 2, "spread_load", 6.0)
        for load in loads_on.lasting(structure)
        for x in along(loads_on.arrow_places(load, along, 19)).tolist()
    ]
    shapes += live_blocks(structure, along, lambda _at: BEAM_TOP - 28, view)
    shapes += [
        Arrow(float(along(load.at)), 46.0, float(along(load.at)), BEAM_TOP - 2, "load", 11.0)
        for load in structure.hung
        if load.force
    ]
    room = WIDTH - 20.0 - sum(width_of(one.text, one.role) + 8.0 for one in labels)
    spread = spread_labels(structure, along, view, room, loads_on.with_its_own_weight)
    return [*label_row([*spread, *labels], 36.0, 10.0, WIDTH - 10.0), *shapes]


def spread_labels(structure, along: Along, view: View, room: float, say) -> list[Label]:
    """Words for the spread loads, those that come and go too; see `loads_on.lasting_labels`."""
    live = live_label(structure, view)
    room -= width_of(live, "note") + 8.0
    labels = loads_on.lasting_labels(structure, along, view, room, say)
    at = along.left + width_of(live, "note") / 2
    return [*labels, Label(at, live, "note")] if live else labels


def _supports(structure, along: Along, y: float) -> list:
    shapes, letters = [], []
    for footing in footings.pinned(structure):
        x = float(along(footing.at))
        mark = footings.triangle(x, y, 14, 22), line(x - 20, y + 24, x + 20, y + 24, "ground")
        shapes.append(Group(mark))
        if footing.letter:
            letters.append(Label(x + 22, footing.letter, "label_bold"))
    return [*shapes, *label_row(letters, y + 18, along.left, WIDTH - 10.0)]


def size_words(structure, view: View) -> str:
    """Say how long, wide and deep a member is."""
    marks = clear_marks(structure)
    spans = [shown(b - a, "length", view.system) for a, b in itertools.pairwise(marks)]
    many = _("spans of {spans}, {width} wide, {depth} deep")
    text = _("{spans} between supports, {width} wide, {depth} deep") if len(spans) == 1 else many
    if len(structure.footings) == 1:
        spans = [shown(structure.length - structure.origin, "length", view.system)]
        text = _("{spans} from root to tip, {width} wide, {depth} deep")
    return text.format(
        spans=", ".join(spans),
        width=shown(structure.width, "size", view.system),
        depth=shown(structure.depth, "size", view.system),
    )


def ends_past(structure) -> list[tuple[float, float]]:
    """Stretches [mm] that reach past the outer supports."""
    marks = clear_marks(structure)
    ends = [(0.0, marks[0]), (marks[-1], structure.length)] if len(structure.footings) > 1 else []
    return [(a, b) for a, b in ends if b > a]


def clear_marks(structure) -> list[float]:
    """Places [mm] between which the spans are measured: the supports, or root and tip."""
    places = [footing.at for footing in structure.footings]
    return places if len(places) > 1 else [places[0], structure.length]


def _sizes(structure, along: Along, bottom: float, view: View) -> list:
    y, shapes = bottom + 36.0, []
    marks, ends = clear_marks(structure), ends_past(structure)
    for a, b in [*itertools.pairwise(marks), *ends]:
        left, right = float(along(a)), float(along(b))
        shapes += [
            Arrow((left + right) / 2, y, left, y, "spread_load", 7.0),
            Arrow((left + right) / 2, y, right, y, "spread_load", 7.0),
        ]
    middle = float(along((marks[0] + marks[-1]) / 2))
    labels = [Label(middle, size_words(structure, view), "label")]
    for a, b in ends:
        past = shown(b - a, "length", view.system)
        labels.append(Label(float(along((a + b) / 2)), past, "label"))
    return [*shapes, *label_row(labels, y + 18, 10.0, WIDTH - 10.0)]
