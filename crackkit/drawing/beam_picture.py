"""The picture of a beam: four bands, the section at the worst place, the verdict, the tiles."""

from crackkit.drawing.frames import PLAIN, View, layout_of
from crackkit.drawing.movement_band import movement_band
from crackkit.drawing.section_view import section_view
from crackkit.drawing.shapes import Picture
from crackkit.drawing.steel_band import steel_band
from crackkit.drawing.stretch_band import stretch_band
from crackkit.drawing.verdict_card import tiles, verdict_card, verdict_word
from crackkit.drawing.width_scale import width_scale
from crackkit.units import shown
from crackkit.words import _


def beam_picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a beam.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of the beam.
    view : View
        Units, layout, and whether handles are wanted.

    Returns
    -------
    Picture
    """
    layout = layout_of(view)
    shapes = (
        *verdict_card(outcome, layout.verdict, view),
        *movement_band(outcome, layout.movement, view),
        *stretch_band(outcome, layout.stretch, view),
        *steel_band(outcome, layout.steel, view),
        *width_scale(outcome, layout.scale, view),
        *section_view(outcome, layout.section, view),
        *tiles(outcome, layout.tiles, view),
    )
    title = _("A beam on two supports: {verdict}").format(verdict=verdict_word(outcome))
    return Picture(layout.width, layout.height, shapes, title, description(outcome, view))


def description(outcome, view: View) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    sentences = [_zone_sentence(zone, view) for zone in outcome.tension]
    sentences.append(_crack_sentence(outcome, view))
    sentences.append(outcome.verdict.why)
    return " ".join(sentences)


def _zone_sentence(zone, view: View) -> str:
    face = _("top") if zone.face == "top" else _("bottom")
    return _("The {face} is stretched from {a} to {b}, most at {c}.").format(
        face=face,
        a=shown(zone.start, "length", view.system),
        b=shown(zone.end, "length", view.system),
        c=shown(zone.at, "length", view.system),
    )


def _crack_sentence(outcome, view: View) -> str:
    if not outcome.cracks:
        return _("No crack is expected.")
    widest = outcome.widest
    if widest.width is None:
        return _("A crack at {x} is crossed by no bar.").format(
            x=shown(widest.at, "length", view.system)
        )
    return _("{n} cracks; the widest, {w}, at {x}.").format(
        n=len(outcome.cracks),
        w=shown(widest.width.governing, "width", view.system),
        x=shown(widest.at, "length", view.system),
    )
