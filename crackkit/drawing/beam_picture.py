"""The picture of a beam: four bands, the section at the worst place, the verdict, the tiles."""

from dataclasses import replace

from crackkit.drawing.blank_beam import blank_beam as sheet
from crackkit.drawing.blank_member import blank_member as before
from crackkit.drawing.frames import PLAIN, View, layout_of
from crackkit.drawing.gap_words import gaps_sentence
from crackkit.drawing.movement_band import movement_band
from crackkit.drawing.range_band import gap_list, range_band
from crackkit.drawing.section_view import section_view
from crackkit.drawing.seen import Seen
from crackkit.drawing.shapes import Picture
from crackkit.drawing.steel_band import steel_band
from crackkit.drawing.stretch_band import stretch_band
from crackkit.drawing.verdict_card import tiles, verdict_card, verdict_word
from crackkit.drawing.width_scale import width_scale
from crackkit.units import shown
from crackkit.units.places import place_told
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a beam.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of a straight member.
    view : View
        Units, layout, and whether handles are wanted.

    Returns
    -------
    Picture
    """
    outcome = replace(outcome, structure=Seen(outcome.structure))
    layout = layout_of(view, ranged=outcome.range is not None)
    shapes = (
        *verdict_card(outcome, layout.verdict, view),
        *movement_band(outcome, layout.movement, view),
        *stretch_band(outcome, layout.stretch, view),
        *_range(outcome, layout, view),
        *steel_band(outcome, layout.steel, view),
        *width_scale(outcome, layout.scale, view),
        *section_view(outcome, layout.section, view),
        *tiles(outcome, layout.tiles, view),
    )
    title = _("{structure}: {verdict}").format(
        structure=outcome.structure.title, verdict=verdict_word(outcome)
    )
    return Picture(layout.width, layout.height, shapes, title, description(outcome, view))


def _range(outcome, layout, view: View) -> list:
    if outcome.range is None:
        return []
    return [*range_band(outcome, layout.range, view), *gap_list(outcome, layout.gaps, view)]


def description(outcome, view: View) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    sentences = [_zone_sentence(zone, outcome.structure, view) for zone in outcome.tension]
    sentences.append(_crack_sentence(outcome, view))
    sentences.append(gaps_sentence(outcome, view))
    sentences.append(outcome.verdict.why)
    return " ".join(sentence for sentence in sentences if sentence)


def _zone_sentence(zone, structure, view: View) -> str:
    face = _("top") if zone.face == "top" else _("bottom")
    return _("The {face} is stretched from {a} to {b}, most at {c}.").format(
        face=face,
        a=place_told(structure, zone.start, view.system),
        b=place_told(structure, zone.end, view.system),
        c=place_told(structure, zone.at, view.system),
    )


def _crack_sentence(outcome, view: View) -> str:
    if not outcome.cracks:
        return _("No crack is expected.")
    widest = outcome.widest
    if widest.width is None:
        return _("A crack at {x} is crossed by no bar.").format(
            x=place_told(outcome.structure, widest.at, view.system)
        )
    return _("{n} cracks; the widest, {w}, at {x}.").format(
        n=len(outcome.cracks),
        w=shown(widest.width.governing, "width", view.system),
        x=place_told(outcome.structure, widest.at, view.system),
    )
