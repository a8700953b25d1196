"""Band 2 of a pulled member, where is it stretched, where does it crack?"""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.pulled_cracks import badges_that_fit, birth_badges
from crackkit.drawing.pulled_strength import strength_strip
from crackkit.drawing.shapes import Text
from crackkit.drawing.strip_frames import along_strip, height_notes
from crackkit.drawing.strip_map import OFF, RIBBON, hatch_places, hatches, map_places, stress_map
from crackkit.drawing.through_cracks import through_cracks
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _

DEPTHS = (44.0, 62.0)  # least and largest drawn depth of the member
TOP = 68.0  # of the member below the top of the band
NOTHING = 0.03  # share of the strength that is not worth a hatch or a word
NEAR = 0.9  # share of the strength there from which it is about to crack
APART = 16.0  # how far each half of a torn member is moved


def pulled_stretch(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    body = stretch_body(outcome.structure, frame)
    question = _("Where is it stretched? Where does it crack?")
    top = heading(frame, 2, question, height_notes(body))
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
    along = along_strip(frame, structure.length)
    depth = min(max(structure.depth * along.scale, DEPTHS[0]), DEPTHS[1])
    return PulledBody(structure, along, frame.top + TOP + (DEPTHS[1] - depth) / 2, depth)


def _map(outcome, body: PulledBody) -> list:
    """The stress of the concrete along the member."""
    now = outcome.pulled.now
    stress = np.interp(map_places(body.along), now.x, now.concrete_stress)
    return stress_map(body.along, body.top, body.depth, stress / outcome.pulled.sample.tensile)


def _ribbons(outcome, body: PulledBody) -> list:
    """Hatch along both faces where the concrete is stretched; dense where it is about to tear."""
    now, tie = outcome.pulled.now, outcome.pulled.history.tie
    x, at = hatch_places(body.along)
    stress = np.interp(at, now.x, now.concrete_stress)
    near = stress > NEAR * np.interp(at, tie.stations, tie.strengths)
    some = stress > NOTHING * outcome.pulled.sample.tensile
    return hatches(x, some, near, (body.top - OFF, body.bottom + OFF + RIBBON))


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
