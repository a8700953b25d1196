"""A slab with inside corners before anything is known of it: to make a call on, and to draw on."""

from crackkit.drawing.age_words import age_words
from crackkit.drawing.blank_page import SHEET, paper_width, sketch_page
from crackkit.drawing.corner_bars import corner_bars, mat_lines
from crackkit.drawing.corner_plan import CornerPlan, plan_in
from crackkit.drawing.corner_sides import tied_sides
from crackkit.drawing.corner_words import bars_words, held_words, joint_words, shape_words
from crackkit.drawing.frames import PLAIN, Frame, View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.words_on import paragraph
from crackkit.structures.corner_bars import laid_bars, layout
from crackkit.structures.corner_restraint import restraint, tied
from crackkit.structures.corner_shapes import form, polygons
from crackkit.units import shown
from crackkit.words import _

TOP, SIDE = 34.0, 104.0  # over and beside the plan
TALL = 320.0
QUESTIONS = (
    _("How does it move? Sketch in the box the shape it takes as it shrinks, and what holds it."),
    _("Where is it stretched most? Mark the place; draw the crack that comes, and which way."),
    _("What holds the crack? Draw two bars where they help most; write how far from the corner."),
    _("Is it tight enough after a year? Say whether bars close the crack or only trim it."),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the slab from above with what holds it and its bars, and nothing of what comes of it.

    Parameters
    ----------
    structure : CornerSlab
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    plan = plan_in(structure, Frame(SIDE, TOP, width - 2 * SIDE, TALL))
    facts = _facts(structure, view, 34.0, TOP + TALL + 62.0, width - 68.0)
    shapes = (*_slab(plan, view), *facts)
    return Picture(width, facts[-1].y + 16.0, shapes, _("Your call"), slab_told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : CornerSlab
    view : View
        Units.
    """
    width, height = SHEET
    plan = plan_in(structure, Frame(150.0, 48.0, 230.0, 236.0))
    facts = _facts(structure, view, 430.0, 66.0, 480.0)
    shapes = (*_slab(plan, view), *facts, *sketch_page(QUESTIONS))
    return Picture(width, height, shapes, _("Your prediction"), slab_told(structure, view))


def _slab(plan: CornerPlan, view: View) -> list:
    s, plan_of = plan.structure, form(plan.structure)
    loops, bars = polygons(plan_of), laid_bars(layout(s))
    return [
        *tied_sides(s, tied(plan_of, restraint(s)), loops, plan),
        *plan.concrete(loops),
        *plan.column(),
        *mat_lines(bars, plan),
        *corner_bars(bars, plan),
        *plan.dimensions(view, 14.0),
    ]


def slab_texts(structure, view: View) -> list[str]:
    """What is known of it."""
    s, system = structure, view.system
    texts = [
        shape_words(s, view),
        _("{thickness} thick").format(thickness=shown(s.thickness, "size", system)),
        held_words(s),
        *bars_words(s, view),
        joint_words(s, view),
        _("air with a humidity of {share}").format(share=shown(s.humidity, "ratio", system)),
        _("kept moist for {age}").format(age=age_words(s.curing)),
        _("looked at after {age}").format(age=age_words(s.age)),
    ]
    return [text for text in texts if text]


def _facts(structure, view: View, x: float, y: float, room: float) -> list:
    return paragraph(x, y, "; ".join(slab_texts(structure, view)), "label", room, 10)


def slab_told(structure, view: View) -> str:
    """Say in words what is drawn."""
    return _("{kind} {length} by {width}: {facts}.").format(
        kind=_("A wall") if structure.shape == "door" else _("A slab"),
        length=shown(structure.length, "length", view.system),
        width=shown(structure.width, "length", view.system),
        facts="; ".join(slab_texts(structure, view)),
    )
