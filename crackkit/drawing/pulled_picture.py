"""The picture of a pulled member: four bands, section, verdict, and the way of its pull."""

from crackkit.drawing.composed import composed
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.pulled_beside import pulled_beside
from crackkit.drawing.pulled_blank import before, sheet
from crackkit.drawing.pulled_diagram import pulled_diagram
from crackkit.drawing.pulled_frames import pulled_layout
from crackkit.drawing.pulled_movement import STILL, length_words, pulled_movement
from crackkit.drawing.pulled_section import pulled_section
from crackkit.drawing.pulled_steel import pulled_steel
from crackkit.drawing.pulled_stretch import pulled_stretch
from crackkit.drawing.pulled_widths import pulled_widths
from crackkit.drawing.shapes import Picture
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.units.places import place_told
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a pulled member.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of it.
    view : View
        Units, layout, and whether handles are wanted.

    Returns
    -------
    Picture
    """
    structure = outcome.structure
    layout = pulled_layout(view, structure.beside)
    shapes = (
        *pulled_movement(outcome, layout.movement, view),
        *pulled_stretch(outcome, layout.stretch, view),
        *pulled_steel(outcome, layout.steel, view),
        *pulled_section(structure, layout.section, view),
        *pulled_widths(outcome, layout.scale, view),
        *pulled_diagram(outcome, layout.diagram, view),
        *(pulled_beside(outcome, layout.beside, view) if layout.beside else ()),
    )
    told = description(outcome, view)
    return composed(outcome, layout, shapes, told, view)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    sentences = [_pull_sentence(outcome, view), _crack_sentence(outcome, view)]
    sentences += [_next_sentence(outcome, view), outcome.verdict.why]
    return " ".join(sentence for sentence in sentences if sentence)


def _pull_sentence(outcome, view: View) -> str:
    force = shown(outcome.structure.pull, "force", view.system)
    if outcome.pulled.ended == PARTED:
        return _("Pulled with {force}, it has parted in two.").format(force=force)
    if not outcome.structure.pull and abs(outcome.movement.largest) < STILL:
        return ""
    text = _("Pulled with {force} it is {longer}.")
    if not outcome.structure.pull:
        text = _("Without any pull it is {longer}.")
    return text.format(force=force, longer=length_words(outcome, view))


def _crack_sentence(outcome, view: View) -> str:
    if not outcome.cracks:
        return _("It has no crack.")
    widest = outcome.widest
    place = place_told(outcome.structure, widest.at, view.system)
    if widest.width is None:
        return _("One crack, at {place}, goes right through.").format(place=place)
    width = shown(widest.width.governing, "width", view.system)
    if len(outcome.cracks) == 1:
        return _("1 crack, {width}, at {place}.").format(width=width, place=place)
    text = _("{n} cracks; the widest, {width}, at {place}.")
    return text.format(n=len(outcome.cracks), width=width, place=place)


def _next_sentence(outcome, view: View) -> str:
    pull = outcome.pulled.next_pull
    if pull is None or outcome.pulled.ended == PARTED:
        return ""
    return _("The next crack comes at {force}.").format(force=shown(pull, "force", view.system))
