"""A pulled member before anything is known of it: to make a call on, and a page to draw on."""

import numpy as np

from crackkit.drawing.blank_page import ENDS, SHEET, paper_width, sketch_page
from crackkit.drawing.dimension_line import dimension_line
from crackkit.drawing.frames import PLAIN, Along, Frame, View
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_pull import force_words
from crackkit.drawing.pulled_section import pulled_section, section_texts
from crackkit.drawing.shapes import Arrow, Picture, Text
from crackkit.units import shown
from crackkit.words import _

TOP, DEPTHS = 62.0, (56.0, 84.0)
SIDE = 66.0  # beside the member: arrows
QUESTIONS = (
    _("How does it move? Draw with a dashed line how long it gets, larger than it would be."),
    _("Where is it stretched, where does it crack first, second, third? Draw and number them."),
    _("What holds the cracks? Sketch in the box how hard the bars are pulled, from end to end."),
    _("Is it tight enough? How many cracks at the end, how far apart, and how wide?"),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the member, its bars and its pull, and nothing of what comes of it.

    Parameters
    ----------
    structure : TensionMember
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    body = _body(structure, Along(SIDE, width - SIDE, structure.length), TOP)
    section = Frame(SIDE - 12.0, body.bottom + 46.0, 260.0, 110.0)
    shapes = (*_member(body, width, view), *pulled_section(structure, section, view))
    return Picture(width, section.bottom + 10.0, shapes, _("Your call"), _told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : TensionMember
    view : View
        Units.
    """
    width, height = SHEET
    body = _body(structure, Along(*ENDS, structure.length), 74.0)
    section = Frame(90.0, 216.0, 300.0, 118.0)
    shapes = (
        *_member(body, width, view),
        *pulled_section(structure, section, view),
        *sketch_page(QUESTIONS),
    )
    return Picture(width, height, shapes, _("Your prediction"), _told(structure, view))


def _body(structure, along: Along, top: float) -> PulledBody:
    depth = float(np.clip(structure.depth * along.scale, *DEPTHS))
    return PulledBody(structure, along, top, depth)


def _member(body: PulledBody, width: float, view: View) -> list:
    left, right = body.along.left, body.along.right
    shapes = [body.block(left, right), *body.grips(left, right), *body.whole_bars()]
    return [*shapes, *_pull(body, width, view), *_length(body, view)]


def _pull(body: PulledBody, width: float, view: View) -> list:
    """Arrows at both ends, faint ones while nothing pulls, and none once the pull has let go."""
    structure = body.structure
    told = _before_words(structure, width, view)
    if told and not structure.pull:
        return told
    y, reach = (body.top + body.bottom) / 2, 32.0
    left, right = body.along.left - body.hold, body.along.right + body.hold
    role = "load" if structure.pull else "spread_load"
    arrows = [
        Arrow(left, y, left - reach, y, role, 11.0),
        Arrow(right, y, right + reach, y, role, 11.0),
    ]
    words = force_words(body, 6.0, width - 6.0, view) if structure.pull else []
    return [*arrows, *words, *told]


def _before_words(structure, width: float, view: View) -> list:
    """Tell that the member was pulled harder before."""
    if structure.before <= structure.pull:
        return []
    force = shown(structure.before, "force", view.system)
    words = _("pulled before with {force}").format(force=force)
    return [Text(width / 2, 22.0, words, "label", "middle")]


def _length(body: PulledBody, view: View) -> list:
    words = shown(body.structure.length, "length", view.system)
    left, right = body.along.left, body.along.right
    return dimension_line(left, right, body.bottom + 24.0, body.bottom + 6, words)


def _told(structure, view: View) -> str:
    """Say in words what is drawn."""
    parts = ", ".join(text for text, _role in section_texts(structure, view))
    held = _("by its bars") if structure.number and structure.ends == "bars" else _("by its ends")
    return _("A member {length} long ({parts}), pulled {held} with {force}.").format(
        length=shown(structure.length, "length", view.system),
        parts=parts,
        held=held,
        force=shown(structure.pull, "force", view.system),
    )
