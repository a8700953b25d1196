"""Band 1 of a pulled member, how does it move? It gets longer, crack by crack."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.dimension_line import dimension_line
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.movement_band import exaggeration, factor_notes
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_pull import pull_arrows
from crackkit.drawing.shapes import Polygons, Text, line
from crackkit.drawing.strip_frames import along_strip
from crackkit.drawing.words_on import heading
from crackkit.structures.outcome import YIELDS
from crackkit.units import shown
from crackkit.words import _

BODY = 30.0  # drawn depth of the member
APART = 10.0  # how far each half of a torn member is moved
STILL = 1e-6  # mm that nobody would call a movement


def pulled_movement(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    along = along_strip(frame, outcome.structure.length)
    body = PulledBody(outcome.structure, along, frame.top + 62.0, BODY)
    if outcome.movement.falls_at is not None:
        return _torn(outcome, body, frame, view)
    factor = exaggeration(outcome.movement, along)
    shape = moved(outcome, body, factor)
    left, right = shape.left, shape.right
    return [
        *_heading(outcome, frame, factor),
        *body.bars(left - body.stub, right + body.stub),
        *body.grips(left, right),
        Polygons(shape.pieces, "concrete"),
        *body.bars(left - body.stub, right + body.stub),
        body.block(along.left, along.right, "ghost"),
        *pull_arrows(body, left, right, frame, view),
        *_how_much(outcome, body, shape, frame, view),
    ]


@dataclass(frozen=True)
class Moved:
    """The lengthened member on the drawing: its pieces, and the ends of its bars."""

    pieces: np.ndarray
    left: float
    right: float


def moved(outcome, body: PulledBody, factor: float) -> Moved:
    """Move the pieces of concrete apart by their cracks, drawn `factor` times larger.

    Bars slip out of the end faces they stick out of, so concrete lags behind them there.
    """
    now, along = outcome.pulled.now, body.along
    total, length = outcome.movement.largest, along.length
    lag = -float(now.slip[0]), float(now.slip[-1])
    strain = (total - now.widths.sum() - sum(lag)) / length
    opened = np.concatenate([[0.0], np.cumsum(now.widths)])
    starts, ends = np.append(0.0, now.cracks), np.append(now.cracks, length)
    shift = lag[0] - total / 2 + opened
    left = along(starts + factor * (shift + strain * starts))
    right = along(ends + factor * (shift + strain * ends))
    pieces = np.empty((starts.size, 4, 2))
    pieces[:, (0, 3), 0], pieces[:, (1, 2), 0] = left[:, None], right[:, None]
    pieces[:, :2, 1], pieces[:, 2:, 1] = body.top, body.bottom
    half = factor * total / 2
    return Moved(pieces, float(along(-half)), float(along(length + half)))


def _heading(outcome, frame: Frame, factor: float) -> list:
    question = _("How does it move?")
    if abs(outcome.movement.largest) < STILL:
        return heading(frame, 1, question, (_("nothing moves yet"), _("no movement")))
    return heading(frame, 1, question, factor_notes(factor))


def _how_much(outcome, body: PulledBody, shape: Moved, frame: Frame, view: View) -> list:
    """The old and the new length, and how much longer it is."""
    total = outcome.movement.largest
    if abs(total) < STILL:
        return []
    y = body.bottom + 26.0
    x = (body.along.left + body.along.right) / 2
    text, role = length_words(outcome, view), "label_bold"
    olds = [line(old, body.top - 9, old, body.bottom + 9, "ghost") for old in _old(body)]
    return [
        *olds,
        *dimension_line(shape.left, shape.right, y, body.bottom + 4, text, role, x),
    ]


def _old(body: PulledBody) -> tuple[float, float]:
    return body.along.left, body.along.right


def length_words(outcome, view: View) -> str:
    """Say how much longer the member gets, or shorter where it dries."""
    total = outcome.movement.largest
    way = _("{movement} longer") if total >= 0 else _("{movement} shorter")
    words = way.format(movement=shown(abs(total), "movement", view.system))
    # once bars yield the member moves on; what is worked out is the least
    yields = outcome.verdict.key == YIELDS
    return _("more than {movement}").format(movement=words) if yields else words


def _torn(outcome, body: PulledBody, frame: Frame, view: View) -> list:
    at, along = float(body.along(outcome.movement.falls_at)), body.along
    words = _("parted at {force}").format(
        force=shown(outcome.pulled.first_pull or 0.0, "force", view.system)
    )
    half = width_of(words, "bad_word") / 2
    place = min(max(at, along.left + half), along.right - half)
    note = (_("it parts here: not to scale"),)
    return [
        *heading(frame, 1, _("How does it move?"), note, "bad_word"),
        *body.grips(along.left - APART, along.right + APART),
        *body.halves(at, APART),
        *body.torn_bars(at, APART),
        body.block(along.left, along.right, "ghost"),
        *pull_arrows(body, along.left - APART, along.right + APART, frame, view),
        Text(place, body.bottom + 30.5, words, "bad_word", "middle"),
    ]
