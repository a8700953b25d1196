"""A fresh slab before anything is known of it: to make a call on, and to draw on."""

from crackkit.drawing.blank_page import SHEET, TASK, paper_width
from crackkit.drawing.frames import PLAIN, Frame, View
from crackkit.drawing.fresh_section import Section, slab, weather
from crackkit.drawing.shapes import Picture
from crackkit.drawing.written_lines import written_lines
from crackkit.units import shown
from crackkit.words import _

TALL = 272.0  # of the section
FIRST_TASK = 372.0
QUESTIONS = (
    _("Which way does the water go? Draw arrows in the concrete, and over its face."),
    _("What makes more of it leave: wind, dry air, warm air, warm concrete? Mark each + or −."),
    _("Where does it crack, when, and how deep? Draw the cracks. Would bars hold them?"),
    _("What do you do before the truck comes, and what as soon as it is placed? Two of each."),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the slab and its weather, and nothing of what comes of it.

    Parameters
    ----------
    structure : FreshSlab
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    shapes = _drawn(structure, Frame(14.0, 8.0, width - 28.0, TALL), view)
    return Picture(width, TALL + 8.0, shapes, _("Your call"), weather_told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : FreshSlab
    view : View
        Units.
    """
    width, height = SHEET
    drawn = _drawn(structure, Frame(180.0, 40.0, 640.0, TALL), view)
    shapes = (*drawn, *written_lines(QUESTIONS, FIRST_TASK, TASK))
    return Picture(width, height, shapes, _("Your prediction"), weather_told(structure, view))


def _drawn(structure, frame: Frame, view: View) -> tuple:
    section = Section(frame)
    return (*weather(structure, section, view), *slab(structure, section, view))


def weather_told(structure, view: View) -> str:
    """Say in words what is drawn."""
    text = _("Fresh concrete at {concrete}; air at {air} with a humidity of {share}; wind {wind}.")
    return text.format(
        concrete=shown(structure.concrete, "warmth", view.system),
        air=shown(structure.air, "warmth", view.system),
        share=shown(structure.humidity, "ratio", view.system),
        wind=shown(structure.wind, "wind", view.system),
    )
