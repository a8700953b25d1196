"""The picture of a slab with inside corners: plan twice, close-up, openings; verdict, corners."""

from crackkit.drawing.composed import composed
from crackkit.drawing.corner_blank import before, sheet, slab_told
from crackkit.drawing.corner_days import corner_days
from crackkit.drawing.corner_effect import effect_words
from crackkit.drawing.corner_frames import corner_layout
from crackkit.drawing.corner_held import corner_held
from crackkit.drawing.corner_movement import corner_movement, largest
from crackkit.drawing.corner_share import corner_share, shown_corners
from crackkit.drawing.corner_stretch import corner_stretch, crack_words, pull_words
from crackkit.drawing.corner_widths import corner_widths, tight_heading
from crackkit.drawing.corner_words import corner_names
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.told_numbers import told_texts
from crackkit.units import shown
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]
SHORT = {  # by the keys of what sums it up
    "share": _("pull over strength"),
    "widest": _("crack at its widest"),
}


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a slab with inside corners.

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
    layout = corner_layout(view, len(outcome.numbers), shown_corners(outcome.cornered))
    shapes = (
        *corner_movement(outcome, layout.movement, view),
        *corner_stretch(outcome, layout, view),
        *corner_held(outcome, layout.held, view),
        *tight_heading(outcome, layout.tight),
        *corner_widths(outcome, layout.along, view),
        *corner_days(outcome, layout.days, view),
        *corner_share(outcome, layout.share, view),
    )
    told = description(outcome, view)
    return composed(outcome, layout, shapes, told, view, _tiles(outcome, view))


def _tiles(outcome, view: View) -> list[tuple[str, str]]:
    """Words and number of each tile; some are said in other words here."""
    texts = told_texts(outcome.numbers, view.system)
    return [
        (SHORT.get(told.key, words), value)
        for told, (words, value) in zip(outcome.numbers, texts, strict=True)
    ]


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    state = outcome.cornered
    moves = _("its edge moves {way} at most").format(
        way=shown(largest(state)[0], "movement", view.system)
    )
    sentences = [
        moves,
        _("{corner}: {pull}").format(corner=_named(outcome), pull=pull_words(state, view)),
        crack_words(state.crack, view),
        effect_words(outcome, view)[0],
    ]
    told = [slab_told(outcome.structure, view), *(_sentence(words) for words in sentences)]
    return " ".join([*told, outcome.verdict.why])


def _named(outcome) -> str:
    """Name the corner that is looked at."""
    state = outcome.cornered
    name = corner_names(state.corners, outcome.structure.shape == "door")[state.worst]
    return _("corner {name}").format(name=name) if len(state.corners) > 1 else name


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:] + "."
