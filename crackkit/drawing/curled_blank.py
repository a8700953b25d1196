"""A slab that will curl before anything is known of it: to make a call on, and to draw on."""

from dataclasses import replace

from crackkit.drawing.age_words import age_words
from crackkit.drawing.blank_page import SHEET, paper_width, sketch_page
from crackkit.drawing.curled_held import mat_told
from crackkit.drawing.curled_plan import CurledPlan, plan_in
from crackkit.drawing.curled_section import UNDER_NAMES
from crackkit.drawing.curled_wheels import forces, place_told, wheels
from crackkit.drawing.frames import PLAIN, Frame, View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.words_on import Label, label_row, paragraph
from crackkit.units import shown
from crackkit.words import _

TOP, SIDE = 44.0, 96.0  # over and beside the plan
TALL = 300.0
QUESTIONS = (
    _("How does it move? Draw in the box, from the side, the shape it takes as its top dries."),
    _("Where is there air below it? Shade it on the plan. Which face is stretched, and where?"),
    _("Where does it break when the wheel stands at the corner? Draw the line."),
    _("What holds the crack, is it tight enough? Name two things that keep the corners down."),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the slab from above with its loads and joints, and nothing of what comes of it.

    Parameters
    ----------
    structure : CurledSlab
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    plan = plan_in(structure, Frame(SIDE, TOP, width - 2 * SIDE, TALL))
    facts = _facts(structure, view, 34.0, TOP + TALL + 62.0, width - 68.0)
    shapes = (*_slab(plan, view, 8.0, width - 8.0), *facts)
    return Picture(width, facts[-1].y + 16.0, shapes, _("Your call"), slab_told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : CurledSlab
    view : View
        Units.
    """
    width, height = SHEET
    plan = plan_in(structure, Frame(150.0, 48.0, 230.0, 236.0))
    facts = _facts(structure, view, 430.0, 66.0, 480.0)
    shapes = (*_slab(plan, view, 20.0, 415.0), *facts, *sketch_page(QUESTIONS))
    return Picture(width, height, shapes, _("Your prediction"), slab_told(structure, view))


def _slab(plan: CurledPlan, view: View, low: float, high: float) -> list:
    """The plan, and how much presses over each load."""
    s = plan.structure
    return [
        *plan.neighbours(),
        plan.concrete(),
        *wheels(s, plan, replace(view, live=False)),
        *plan.dimensions(view),
        *_presses(plan, view, low, high),
    ]


def _presses(plan: CurledPlan, view: View, low: float, high: float) -> list:
    """How much presses: beside each load, or over the plan where there is no room for all."""
    s = plan.structure
    places = plan([(load.x, load.y) for load in s.loads])
    beside, taken = forces(s, plan, places, view)
    if len(taken) == 4 * len(places):  # three points for each words
        return beside
    labels = [
        Label(
            float(plan((load.x, load.y))[0]),
            shown(load.force, "force", view.system),
            "load_word",
            float(plan((load.x, load.y))[1]) - 8.0,
        )
        for load in s.loads
    ]
    return label_row(labels, plan.top - 18.0, low, high)


def slab_texts(structure, view: View) -> list[str]:
    """What is known of it."""
    s, system = structure, view.system
    return [
        _("{thickness} thick").format(thickness=shown(s.thickness, "size", system)),
        UNDER_NAMES[s.under][0],
        _("air with a humidity of {share}").format(share=shown(s.humidity, "ratio", system)),
        _("kept moist for {age}").format(age=age_words(s.curing)),
        _joints(s),
        mat_told(s, view),
        _("looked at after {age}").format(age=age_words(s.age)),
    ]


def _joints(structure) -> str:
    n = round(100 * structure.transfer)
    if n == 0:
        return _("joints pass nothing on")
    return _("joints pass on {n} % of a wheel's load").format(n=n)


def _facts(structure, view: View, x: float, y: float, room: float) -> list:
    return paragraph(x, y, "; ".join(slab_texts(structure, view)), "label", room, 8)


def slab_told(structure, view: View) -> str:
    """Say in words what is drawn."""
    loads = [
        _("{force} at {place}").format(
            force=shown(load.force, "force", view.system), place=place_told(load, view)
        )
        for load in structure.loads
    ]
    return _("A slab {length} by {width}: {facts}. Wheels: {loads}.").format(
        length=shown(structure.length, "length", view.system),
        width=shown(structure.width, "length", view.system),
        facts="; ".join(slab_texts(structure, view)),
        loads="; ".join(loads),
    )
