"""The picture of a fresh slab: verdict, section in its weather, water that leaves against wind."""

from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.fresh_blank import before, sheet, weather_told
from crackkit.drawing.fresh_chart import fresh_chart
from crackkit.drawing.fresh_frames import fresh_layout
from crackkit.drawing.fresh_section import fresh_section
from crackkit.drawing.shapes import Picture
from crackkit.drawing.told_numbers import told_texts
from crackkit.drawing.verdict_card import tile_cards, verdict_card, verdict_word
from crackkit.structures.fresh import USUAL
from crackkit.units import shown
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a fresh slab.

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
    layout = fresh_layout(view)
    shapes = (
        *verdict_card(outcome, layout.verdict, view),
        *fresh_section(outcome, layout.section, view),
        *fresh_chart(outcome, layout.chart, view),
        *tile_cards(told_texts(outcome.numbers, view.system), layout.tiles),
    )
    title = _("Fresh slab: {verdict}").format(verdict=verdict_word(outcome))
    return Picture(layout.width, layout.height, shapes, title, description(outcome, view))


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    text = _("Water leaves at {rate}; precautions are asked for from {limit}.")
    told = text.format(
        rate=shown(outcome.fresh.rate, "mass_rate", view.system),
        limit=shown(USUAL.rate, "mass_rate", view.system),
    )
    return " ".join((weather_told(outcome.structure, view), told, outcome.verdict.why))
