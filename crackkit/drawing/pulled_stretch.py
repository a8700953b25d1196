"""Band 2 of a pulled member, where is it stretched, where does it crack?"""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_cracks import badges_that_fit, birth_badges, through_cracks
from crackkit.drawing.pulled_frames import along_pulled
from crackkit.drawing.pulled_strength import strength_strip
from crackkit.drawing.shapes import Lines, Raster, Text
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _

DEPTHS = (44.0, 62.0)  # least and largest drawn depth of the member
TOP = 68.0  # of the member below the top of the band
FULL_SHADE = 1.15  # multiple of the mean strength that has the full colour
COLUMNS = 240  # of the stress map
RIBBON = 7.0  # height of the hatch beside the faces
NOTHING = 0.03  # share of the strength that is not worth a hatch or a word
NEAR = 0.9  # share of the strength there from which it is about to crack
APART = 16.0  # how far each half of a torn member is moved


def pulled_stretch(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    body = stretch_body(outcome.structure, frame)
    question = _("Where is it stretched? Where does it crack?")
    top = heading(frame, 2, question, _notes(body))
    if outcome.pulled.ended == PARTED:
        return [*top, *_torn(outcome, body), *strength_strip(outcome, frame, view)]
    now = outcome.pulled.now
    places = body.along(now.cracks)
    return [
        *top,
        *_map(outcome, body),
        *_ribbons(outcome, body),
        body.block(body.along.left, body.along.right, "outline"),
        *body.grips(body.along.left, body.along.right),
        *through_cracks(now.widths, places, outcome.pulled.order, body.top, body.depth),
        *body.whole_bars(),
        *birth_badges(outcome.pulled.order, places, body),
        *_words(outcome, body, view),
        *strength_strip(outcome, frame, view),
    ]


def stretch_body(structure, frame: Frame) -> PulledBody:
    """Lay the member into the band."""
    along = along_pulled(frame, structure.length)
    depth = min(max(structure.depth * along.scale, DEPTHS[0]), DEPTHS[1])
    return PulledBody(structure, along, frame.top + TOP + (DEPTHS[1] - depth) / 2, depth)


def _notes(body: PulledBody) -> tuple[str, ...]:
    """State how the height is drawn where it is not to the scale of the length."""
    factor = body.depth / body.structure.depth / body.along.scale
    if abs(factor - 1.0) < 0.05:
        return ()
    long, short = _("height drawn {n} times larger"), _("height ×{n}")
    notes = tuple(words.format(n=f"{factor:.2g}") for words in (long, short))
    return notes if factor > 1.0 else notes[1:]


def _map(outcome, body: PulledBody) -> list:
    """The stress of the concrete along the member, the same over the whole depth."""
    now, along = outcome.pulled.now, body.along
    x = (np.arange(COLUMNS) + 0.5) * (along.length / COLUMNS)
    ratio = np.interp(x, now.x, now.concrete_stress) / outcome.pulled.sample.tensile
    values = np.tile(ratio / FULL_SHADE, (2, 1))
    return [Raster(along.left, body.top, along.right - along.left, body.depth, values)]


def _ribbons(outcome, body: PulledBody) -> list[Lines]:
    """Hatch along both faces where the concrete is stretched; dense where it is about to tear."""
    now, along, tie = outcome.pulled.now, body.along, outcome.pulled.history.tie
    x = np.arange(along.left, along.right - 4.0, 4.5)
    at = (x + 2.0 - along.left) / along.scale
    stress = np.interp(at, now.x, now.concrete_stress)
    near = stress > NEAR * np.interp(at, tie.stations, tie.strengths)
    some = (stress > NOTHING * outcome.pulled.sample.tensile) & (np.arange(x.size) % 2 == 0)
    return [
        *_strokes(body, x[some & ~near], "hatch"),
        *_strokes(body, x[near], "hatch_dense"),
    ]


def _strokes(body: PulledBody, x: np.ndarray, role: str) -> list[Lines]:
    if not x.size:
        return []
    strokes = np.empty((2, x.size, 2, 2))
    strokes[:, :, 0, 0], strokes[:, :, 1, 0] = x, x + 5.0
    strokes[0, :, 0, 1], strokes[0, :, 1, 1] = body.top - 2.0, body.top - 2.0 - RIBBON
    strokes[1, :, 0, 1], strokes[1, :, 1, 1] = body.bottom + 2.0, body.bottom + 2.0 + RIBBON
    return [Lines(strokes.reshape(-1, 2, 2), role)]


def _words(outcome, body: PulledBody, view: View) -> list:
    """What the concrete feels, and the widest crack, in a row under the member."""
    now, least = outcome.pulled.now, NOTHING * outcome.pulled.sample.tensile
    labels = []
    for role, word, stress in (
        ("stretched_word", _("stretched"), now.concrete_stress),
        ("squeezed_word", _("squeezed"), -now.concrete_stress),
    ):
        greatest = float(stress.max())
        if greatest > least:
            most = now.x[stress >= 0.999 * greatest]
            labels.append(Label(float(body.along(most[most.size // 2])), word, role))
    widest = outcome.widest
    if widest is not None:
        words = _("widest crack {width}")
        words = words.format(width=shown(widest.width.governing, "width", view.system))
        mouth = body.bottom + 1.0
        labels.append(Label(float(body.along(widest.at)), words, "label_bold", mouth))
    labels += _numbered(outcome.pulled.order, body)
    return label_row(labels, body.bottom + RIBBON + 20.0, body.along.left, body.along.right)


def _numbered(order, body: PulledBody) -> list[Label]:
    """Say how many are numbered where there is no room for all."""
    most = badges_that_fit(len(order), body)
    if most == len(order):
        return []
    words = _("the first {n} are numbered").format(n=most)
    return [Label(body.along.right, words, "note")]


def _torn(outcome, body: PulledBody) -> list:
    along = body.along
    at = float(along(outcome.movement.falls_at))
    words = _("it is over: nothing holds the two halves together")
    middle = (along.left + along.right) / 2
    return [
        *body.grips(along.left - APART, along.right + APART),
        *body.halves(at, APART),
        *body.torn_bars(at, APART),
        Text(middle, body.bottom + RIBBON + 20.0, words, "bad_word", "middle"),
    ]
