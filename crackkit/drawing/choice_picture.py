"""The picture of a choice of bars: the strip, its section, the verdict, and all other choices."""

from crackkit.drawing.choice_blank import before, sheet
from crackkit.drawing.choice_frames import choice_layout
from crackkit.drawing.choice_map import choice_map
from crackkit.drawing.choice_movement import choice_movement
from crackkit.drawing.choice_section import choice_section
from crackkit.drawing.choice_section_words import bars_told
from crackkit.drawing.choice_stretch import choice_stretch, cracks_told
from crackkit.drawing.choice_widths import choice_widths
from crackkit.drawing.composed import composed
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.shapes import Picture
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a choice of bars.

    Parameters
    ----------
    outcome : Outcome
        What mechanics and rules say of it.
    view : View
        Units, layout, and whether handles are wanted.

    Returns
    -------
    Picture
    """
    structure, control = outcome.structure, outcome.control
    layout = choice_layout(view)
    shapes = (
        *choice_movement(structure, control.load, layout.movement, view),
        *choice_stretch(outcome, layout.stretch, view),
        *choice_section(structure, control, layout.section, view),
        *choice_widths(outcome, layout.scale, view),
        *choice_map(outcome, layout.chart, view),
    )
    told = description(outcome, view)
    return composed(outcome, layout, shapes, told, view)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    structure = outcome.structure
    bent = structure.action == BENT
    sentences = [
        _("The bottom is stretched.") if bent else _("Both faces are stretched."),
        bars_told(structure, view),
        _cover_told(outcome, view),
        _cracks_sentence(outcome, view),
        outcome.verdict.why,
    ]
    return " ".join(sentence for sentence in sentences if sentence)


def _cracks_sentence(outcome, view: View) -> str:
    words = cracks_told(outcome, view)[0]
    return words if words.endswith(".") else f"{words[0].upper()}{words[1:]}."


def _cover_told(outcome, view: View) -> str:
    control = outcome.control
    text = _("Cover {cover}; asked for is {asked}.")
    return text.format(
        cover=shown(control.cover, "size", view.system),
        asked=shown(control.asked.cover, "size", view.system),
    )
