"""A picture put together from its parts: verdict, what answers the questions, tiles, title."""

from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.told_numbers import told_texts
from crackkit.drawing.verdict_card import tile_cards, verdict_card, verdict_word
from crackkit.words import _


def composed(outcome, layout, shapes, description: str, view: View, tiles=None) -> Picture:
    """Put the picture of a structure that is not bent together.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of it.
    layout : object
        Where things stand: ``width``, ``height``, ``verdict`` and ``tiles``.
    shapes : sequence
        What answers the four questions.
    description : str
        What is seen, in words.
    view : View
        Units, layout, and whether handles are wanted.
    tiles : list of (str, str), optional
        Words and numbers of the tiles, where they are not just those of the outcome.
    """
    told = told_texts(outcome.numbers, view.system) if tiles is None else tiles
    title = _("{structure}: {verdict}").format(
        structure=outcome.structure.title, verdict=verdict_word(outcome)
    )
    every = (
        *verdict_card(outcome, layout.verdict, view),
        *shapes,
        *tile_cards(told, layout.tiles),
    )
    return Picture(layout.width, layout.height, every, title, description)
