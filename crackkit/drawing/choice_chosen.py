"""The chosen bars on the field; in a slab they can be dragged along their lane."""

import numpy as np

from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_section_words import size_told
from crackkit.drawing.choice_sizes import size_handle
from crackkit.drawing.frames import View
from crackkit.drawing.labels import Box, width_of
from crackkit.drawing.shapes import Circle, Group, Polygon, Text, rectangle
from crackkit.structures.control_ranges import is_slab
from crackkit.units import shown
from crackkit.words import _

GRIP, CORE = 8.0, 4.2


def chosen_place(field: ChoiceField) -> tuple[float, float]:
    """Where the chosen bars stand, at the edge where they are off the field."""
    x = float(min(max(field.x(field.spacing), field.left), field.right))
    if field.chosen is None:
        return x, field.frame.top - 8.0
    return x, field.middle(field.chosen)


def chosen_box(field: ChoiceField) -> Box:
    """Room that the mark takes."""
    x, y = chosen_place(field)
    return Box(x - GRIP - 2, y - GRIP - 2, x + GRIP + 2, y + GRIP + 2, "")


def chosen_mark(field: ChoiceField, view: View) -> list:
    """Draw the mark of the chosen bars."""
    x, y = chosen_place(field)
    if field.chosen is None:
        return _off(field, x, y)
    ring = Circle(x, y, GRIP, "grip")
    core = Circle(x, y, CORE, "badge")
    if not (view.live and is_slab(field.outcome.structure)):
        return [ring, core]
    structure = field.outcome.structure
    words = shown(structure.spacing, "size", view.system)
    span = field.chart.spacings[-1] - field.chart.spacings[0]
    way = float(span / (field.right - field.left))
    label = _("spacing of the bars, on the chart")
    handle = size_handle(structure, "spacing", label, words, "x", way, view)
    hit = rectangle(x - 14, y - 14, 28, 28, "hit")
    return [Group((hit, ring, core), handle)]


def _off(field: ChoiceField, x: float, y: float) -> list:
    """Bars thicker than all lanes: a mark over them that points up."""
    corners = np.array([(x, y - 6), (x + 6, y + 5), (x - 6, y + 5)])
    words = _("{size}: thicker than these").format(size=size_told(field.outcome.structure.size))
    wide = width_of(words, "note")
    start = x + 12 if x + 12 + wide <= field.right + 8 else x - 12 - wide
    return [Polygon(corners, "badge"), Text(start, y + 4, words, "note")]
