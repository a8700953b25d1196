"""The verdict, readable from the back row, and the tiles of numbers."""

import numpy as np

from crackkit.drawing.deciding import deciding_crack, deciding_cracks, gives_way, strained
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Polygon, Polyline, Text, rectangle
from crackkit.drawing.words_on import paragraph
from crackkit.structures.outcome import (
    BE_READY,
    DRIES_OUT,
    STAYS_WET,
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    UNHELD,
    YIELDS,
)
from crackkit.units import shown
from crackkit.words import _

VERDICTS = {
    UNCRACKED: (_("uncracked"), "good"),
    TIGHT: (_("tight"), "good"),
    TOO_WIDE: (_("too wide"), "warn"),
    YIELDS: (_("bars give way"), "bad"),
    UNHELD: (_("nothing holds it"), "bad"),
    STAYS_WET: (_("stays wet"), "good"),
    BE_READY: (_("be ready"), "warn"),
    DRIES_OUT: (_("dries out"), "bad"),
}


def verdict_card(outcome, frame: Frame, view: View) -> list:
    """Draw the verdict with its symbol and one sentence."""
    word, colour = verdict_word(outcome), VERDICTS[outcome.verdict.key][1]
    x, y = frame.left + 24, frame.top + 28
    most = 3 + max(int((frame.height - 104) / 15), 0)
    return [
        rectangle(frame.left, frame.top, frame.width, frame.height, "card"),
        *_symbol(x, y, colour),
        Text(frame.left + 48, frame.top + 38, word, f"verdict_{colour}"),
        *paragraph(
            frame.left + 12, frame.top + 62, outcome.verdict.why, "note", frame.width - 20, most
        ),
    ]


def verdict_word(outcome) -> str:
    """Give the verdict in a word or three."""
    if outcome.worst is not None and outcome.verdict.key == YIELDS:
        strength = outcome.structure.yield_strength
        if not strained(deciding_cracks(outcome), strength):
            return _("crushed")
    return VERDICTS[outcome.verdict.key][0]


def _symbol(x: float, y: float, colour: str) -> list:
    """A tick in a disc, a bang in a triangle, a cross in a square: told apart without colour."""
    if colour == "good":
        tick = np.array([(x - 6, y), (x - 2, y + 5), (x + 7, y - 6)])
        return [Circle(x, y, 14, colour), Polyline(tick, "symbol")]
    if colour == "warn":
        corners = np.array([(x, y - 16), (x + 17, y + 13), (x - 17, y + 13)])
        bang = Polyline(np.array([(x, y - 6), (x, y + 3)]), "symbol")
        return [Polygon(corners, colour), bang, Circle(x, y + 8.5, 2.0, "paper")]
    arms = [np.array([(x - 6, y - 6), (x + 6, y + 6)]), np.array([(x - 6, y + 6), (x + 6, y - 6)])]
    square = rectangle(x - 14, y - 14, 28, 28, colour)
    return [square, *(Polyline(arm, "symbol") for arm in arms)]


def tiles(outcome, frames, view: View) -> list:
    """Draw the tiles of numbers of a bent member."""
    return tile_cards(tile_texts(outcome, view), frames)


def tile_cards(texts, frames) -> list:
    """Draw tiles, each of words and a number: pairs of texts."""
    shapes = []
    for frame, (words, value) in zip(frames, texts, strict=True):
        shapes.append(rectangle(frame.left, frame.top, frame.width, frame.height, "card"))
        shapes.append(Text(frame.left + 10, frame.top + 18, words, "tile_word"))
        fits = width_of(value, "tile_number") <= frame.width - 16
        role = "tile_number" if fits else "tile_number_small"
        shapes.append(Text(frame.left + 10, frame.top + 42, value, role))
    return shapes


def tile_texts(outcome, view: View) -> list[tuple[str, str]]:
    """Words and number of each tile."""
    worst, system = outcome.worst, view.system
    moves = shown(abs(outcome.movement.largest), "movement", system)
    if outcome.movement.falls_at is not None:
        moves = "—"
    elif gives_way(outcome):
        moves = f"> {moves}"
    widest = deciding_crack(outcome)
    width = _("none") if widest is None else "—"
    if widest is not None and widest.width is not None:
        width = shown(widest.width.governing, "width", system)
    stress = shown(worst.steel_stress, "stress", system) if worst.steel_stress else "—"
    return [
        (_("moves at most"), moves),
        (_("bending moment"), shown(worst.moment, "moment", system)),
        (_("cracks from"), shown(worst.cracking_moment, "moment", system)),
        (_("pull in the bars"), stress),
        (_("widest crack") if outcome.range is None else _("widest, any load"), width),
        (_("bars weigh"), shown(outcome.steel_mass, "mass", system)),
    ]
