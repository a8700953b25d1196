"""A slab on the ground before anything is known of it: to make a call on, and to draw on."""

from crackkit.drawing.age_words import age_words
from crackkit.drawing.blank_page import ENDS, SHEET, paper_width, sketch_page
from crackkit.drawing.dimension_line import dimension_line
from crackkit.drawing.frames import PLAIN, Along, Frame, View
from crackkit.drawing.ground_base import base_name
from crackkit.drawing.ground_body import DEPTHS, GroundBody
from crackkit.drawing.ground_frames import PLAN
from crackkit.drawing.ground_held import bars_told
from crackkit.drawing.ground_movement import held_words
from crackkit.drawing.ground_plan import GroundPlan, laid, plan_shapes
from crackkit.drawing.ground_plan_words import scale_words
from crackkit.drawing.shapes import Picture
from crackkit.drawing.strip_frames import height_notes
from crackkit.drawing.words_on import paragraph
from crackkit.units import shown
from crackkit.words import _

TOP, DEPTH = 66.0, DEPTHS[1]
SIDE = 66.0  # beside the slab
QUESTIONS = (
    _("How does it move? Draw arrows at the ends, and where the base holds it back."),
    _("Where is it stretched most, where does it crack first? Draw the cracks and number them."),
    _("On which day does it crack? Sketch in the box how its stress grows, and its strength."),
    _("What holds the crack, is it tight enough? Say how wide it is after one year."),
)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the slab, its base, its joints and bars, and nothing of what comes of it.

    Parameters
    ----------
    structure : GroundSlab
    view : View
        Units and width of the paper.
    """
    width = paper_width(view)
    along = Along(SIDE, width - SIDE, structure.length)
    body = GroundBody(structure, along, TOP, DEPTH)
    plan = _plan(body)
    heights = [_("section: {height}").format(height=one) for one in height_notes(body)[:1]]
    drawn = [*heights, _plan_note(plan)]
    facts = _facts(body, view, plan.bottom + 32.0, width - 2 * SIDE, drawn)
    shapes = (*_slab(body, view), *plan_shapes(plan), *facts)
    return Picture(width, facts[-1].y + 16.0, shapes, _("Your call"), _told(structure, view))


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand.

    Parameters
    ----------
    structure : GroundSlab
    view : View
        Units.
    """
    width, height = SHEET
    body = GroundBody(structure, Along(*ENDS, structure.length), 74.0, DEPTH)
    shapes = (
        *_slab(body, view),
        *_facts(body, view, body.under + 56.0, 320.0, height_notes(body)[:1]),
        *sketch_page(QUESTIONS),
    )
    return Picture(width, height, shapes, _("Your prediction"), _told(structure, view))


def _plan(body: GroundBody) -> GroundPlan:
    """Lay the slab, seen from above, below its section."""
    along, top = body.along, body.under + 44.0
    room = Frame(along.left, top, along.right - along.left, (along.right - along.left) / PLAN)
    return laid(body.structure, room, along)


def _plan_note(plan: GroundPlan) -> str:
    return _("from above: {scale}").format(scale=scale_words(plan))


def _slab(body: GroundBody, view: View) -> list:
    shapes = [*body.base(), body.concrete(), *body.holds(), *body.bars(), *body.cuts()]
    return [*shapes, *held_words(body, view), *_length(body, view)]


def _length(body: GroundBody, view: View) -> list:
    words = shown(body.structure.length, "length", view.system)
    left, right = body.along.left, body.along.right
    return dimension_line(left, right, body.under + 20.0, body.under + 4, words)


def slab_texts(structure, view: View) -> list[str]:
    """What is known of it: base, thickness, joints, bars, curing."""
    texts = [
        _("on {base}").format(base=base_name(structure.base)[-1]),
        _("{width} wide").format(width=shown(structure.width, "length", view.system)),
        _("{thickness} thick").format(thickness=shown(structure.thickness, "size", view.system)),
        _joints(structure, view),
        _bars(structure, view),
        _("kept moist for {age}").format(age=age_words(structure.curing)),
    ]
    return texts


def _joints(structure, view: View) -> str:
    if not structure.joint_places:
        return _("no joints")
    every = shown(structure.length / structure.panels, "length", view.system)
    return _("a joint every {length}, cut after {age}").format(
        length=every, age=age_words(structure.cut_age)
    )


def _bars(structure, view: View) -> str:
    places = {
        "top": _("near the top"),
        "middle": _("in the middle"),
        "ground": _("on the ground"),
    }
    told = bars_told(structure, view)
    if structure.bar is None:
        return told
    told = _("{bars}, both ways").format(bars=told) if structure.both_ways else told
    return f"{told}, {places[structure.place]}"


def _facts(body: GroundBody, view: View, y: float, room: float, drawn=()) -> list:
    """What is known of the slab, and how it is drawn."""
    texts = "; ".join([*slab_texts(body.structure, view), *drawn])
    return paragraph(body.along.left, y, texts, "label", room, 8)


def _told(structure, view: View) -> str:
    """Say in words what is drawn."""
    ends = [
        _("{place} held {n} %").format(place=place, n=round(100 * degree))
        for place, degree in (
            (_("left end"), structure.left),
            (_("middle"), structure.middle),
            (_("right end"), structure.right),
            (_("sides"), structure.sides),
        )
        if degree > 0
    ]
    return _("A slab {length} long: {facts}; {ends}.").format(
        length=shown(structure.length, "length", view.system),
        facts="; ".join(slab_texts(structure, view)),
        ends=", ".join(ends) or _("both ends free"),
    )
