"""A pulled member before anything is known of it: to make a call on, and a page to draw on."""

import numpy as np

from crackkit.drawing.frames import PLAIN, Along, Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_pull import force_words
from crackkit.drawing.pulled_section import pulled_section, section_texts
from crackkit.drawing.shapes import Arrow, Picture, Text, line, rectangle
from crackkit.drawing.written_lines import written_lines
from crackkit.units import shown
from crackkit.words import _

WIDTHS = (460.0, 1100.0)  # least and largest width of the paper on a screen
TOP, DEPTHS = 62.0, (56.0, 84.0)
SIDE = 66.0  # beside the member: arrows
SHEET = 1000.0, 652.0
FIRST_TASK, TASK = 366.0, 72.0
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
    width = float(np.clip(view.width or 840.0, *WIDTHS))
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
    body = _body(structure, Along(90.0, 910.0, structure.length), 74.0)
    section = Frame(90.0, 216.0, 300.0, 118.0)
    shapes = (
        *_member(body, width, view),
        *pulled_section(structure, section, view),
        rectangle(430.0, 226.0, 480.0, 104.0, "support"),
        Text(440.0, 244.0, _("room to sketch"), "note"),
        *written_lines(QUESTIONS, FIRST_TASK, TASK),
    )
    return Picture(width, height, shapes, _("Your prediction"), _told(structure, view))


def _body(structure, along: Along, top: float) -> PulledBody:
    depth = float(np.clip(structure.depth * along.scale, *DEPTHS))
    return PulledBody(structure, along, top, depth)


def _member(body: PulledBody, width: float, view: View) -> list:
    left, right = body.along.left, body.along.right
    shapes = [body.block(left, right), *body.grips(left, right), *body.whole_bars()]
    return [*shapes, *_pull(body, width, view), *_length(body, width, view)]


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


def _length(body: PulledBody, width: float, view: View) -> list:
    """Length of the member, between two arrows below it."""
    words = shown(body.structure.length, "length", view.system)
    left, right = body.along.left, body.along.right
    y, middle = body.bottom + 24.0, (left + right) / 2
    half = width_of(words, "label") / 2 + 8.0
    return [
        Arrow(middle - half, y, left, y, "spread_load", 7.0),
        Arrow(middle + half, y, right, y, "spread_load", 7.0),
        line(left, body.bottom + 6, left, y + 6, "leader"),
        line(right, body.bottom + 6, right, y + 6, "leader"),
        Text(middle, y + 4.5, words, "label", "middle"),
    ]


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
