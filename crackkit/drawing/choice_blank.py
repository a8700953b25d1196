"""A strip before anything is known of it: to make a call on, and a page to draw on."""

from crackkit.drawing.blank_page import SHEET, TASK, paper_width
from crackkit.drawing.choice_piece import Piece
from crackkit.drawing.choice_section import choice_section
from crackkit.drawing.choice_section_words import bars_told
from crackkit.drawing.frames import PLAIN, Frame, View
from crackkit.drawing.shapes import Picture, Text
from crackkit.drawing.written_lines import written_lines
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

FIRST_TASK = 372.0
QUESTIONS = (
    _("How does it move? Draw its shape with a dashed line; mark the face that gets longer."),
    _("Where is it stretched, where does it crack? Draw the cracks: how far apart?"),
    _("What holds the crack? Which bars would keep it finer with the same steel? Sketch them."),
    _("Is it tight enough? How wide is each crack, and what may it be in this place?"),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the strip from the side and its cross-section, and nothing of what comes of it.

    Parameters
    ----------
    structure : CrackControl
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    side = Frame(8.0, 0.0, width - 16.0, 150.0)
    section = Frame(14.0, 138.0, width - 28.0, 318.0)
    shapes = (*_side(structure, side, view), *_section(structure, section, view))
    height = section.bottom + 8.0
    return Picture(width, height, shapes, _("Your call"), _told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : CrackControl
    view : View
        Units.
    """
    width, height = SHEET
    side = Frame(60.0, 60.0, 420.0, 150.0)
    section = Frame(500.0, 12.0, 440.0, 318.0)
    shapes = (
        *_side(structure, side, view),
        *_section(structure, section, view),
        *written_lines(QUESTIONS, FIRST_TASK, TASK),
    )
    return Picture(width, height, shapes, _("Your prediction"), _told(structure, view))


def _side(structure, frame: Frame, view: View) -> list:
    piece = Piece(structure, frame, frame.top + 34.0)
    title = _("The strip from the side: {what}").format(what=_action_words(structure))
    return [Text(frame.left + 12, frame.top + 20, title, "label_bold"), piece.block, *piece.bars()]


def _section(structure, frame: Frame, view: View) -> list:
    still = View(view.system, view.layout, False, view.width)
    return choice_section(structure, None, frame, still)


def _action_words(structure) -> str:
    return _("bent, the bottom stretched") if structure.action == BENT else _("pulled straight")


def _told(structure, view: View) -> str:
    """Say in words what is drawn."""
    text = _("A strip {depth} deep, {action}. {bars} Cover: {cover}.")
    return text.format(
        depth=shown(structure.depth, "size", view.system),
        action=_action_words(structure),
        bars=bars_told(structure, view),
        cover=shown(structure.cover, "size", view.system),
    )
