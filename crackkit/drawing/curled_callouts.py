"""Words beside the plan of a curled slab: what to see in it, each with a line to its place."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.curled_break import RING, drawn_line, ring_place
from crackkit.drawing.curled_movement import highest_corner, pressing
from crackkit.drawing.curled_oblique import FLAT
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import spread
from crackkit.drawing.shapes import Lines, Polyline, Raster, Text
from crackkit.drawing.words_on import wrapped
from crackkit.units import shown
from crackkit.words import _

LINE, PAD = 16.0, 10.0  # from line to line, and between two call-outs
KEY, ROW = 86.0, 20.0  # height of the key at the foot, and of its rows
SWATCH = 30.0
HARDLY = 0.05  # share of the strength that is not worth naming
UNDER_IT = 1.0  # sides of its foot within which a place is under a wheel


@dataclass(frozen=True)
class Callout:
    """Words on a place of the plan [drawing units]."""

    place: tuple[float, float]
    words: str
    role: str


def callouts(outcome, plan: CurledPlan, frame: Frame, view: View) -> list:
    """Draw them below each other in the order of their places, with the key at the foot."""
    told = [(one, wrapped(one.words, one.role, frame.width)) for one in _told(outcome, plan, view)]
    tall = [LINE * len(lines) for _one, lines in told]
    low, high = frame.top, frame.bottom - KEY
    middles = spread([one.place[1] for one, _lines in told], tall, low, high, PAD)
    shapes = []
    for (one, lines), middle, height in zip(told, middles, tall, strict=True):
        top = middle - height / 2
        shapes += [_leader(one, plan, frame.left, middle)]
        shapes += [
            Text(frame.left, top + LINE * k + 13.0, words, one.role)
            for k, words in enumerate(lines)
        ]
    return [*shapes, *_key(frame)]


def _leader(one: Callout, plan: CurledPlan, left: float, middle: float) -> Polyline:
    """From the words across the joint to the place."""
    points = [(left - 5.0, middle), (left - 16.0, middle), one.place]
    return Polyline(np.array(points), "bears", 1.2)


def _told(outcome, plan: CurledPlan, view: View) -> list[Callout]:
    """What to see, in the order of the plan from the far side down."""
    found = [*_pull(outcome, plan), *_break(outcome, plan, view), *_corner(outcome, plan, view)]
    return sorted(found, key=lambda one: one.place[1])


def _pull(outcome, plan: CurledPlan) -> list[Callout]:
    state = outcome.curled
    top = state.top.peak >= state.bottom.peak
    face = state.top if top else state.bottom
    if face.peak < HARDLY * state.strength:
        return []
    x, y = ring_place(face, plan).tolist()
    words = pull_words(outcome, top, face)
    return [Callout((x + RING, y), words, "stretched_word")]


def pull_words(outcome, top: bool, face) -> str:
    """Say which face is stretched most, by what, and how much."""
    share = f"{max(face.peak, 0.0) / outcome.curled.strength:.2f}"
    if face.peak < HARDLY * outcome.curled.strength:
        return _("neither face is pulled hard")
    if top:
        text = (
            _("the wheel pulls the TOP most here: {share}\u00a0×\u00a0its\u00a0strength")
            if pressing(outcome.structure)
            else _("drying pulls the TOP most here: {share}\u00a0×\u00a0its\u00a0strength")
        )
    elif _under_a_wheel(outcome, face):
        text = _("under the wheel the BOTTOM is pulled most: {share}\u00a0×\u00a0its\u00a0strength")
    else:
        text = _("the BOTTOM is pulled most here: {share}\u00a0×\u00a0its\u00a0strength")
    return text.format(share=share)


def _under_a_wheel(outcome, face) -> bool:
    x, y = face.at
    return any(
        max(abs(x - load.x), abs(y - load.y)) <= UNDER_IT * load.side
        for load in pressing(outcome.structure)
    )


def _break(outcome, plan: CurledPlan, view: View) -> list[Callout]:
    line = outcome.curled.line
    if line is None:
        return []
    points = drawn_line(line, plan)
    # where the words' line meets it first, but off its end
    k = int(points[2:-2, 0].argmax()) + 2
    role = "bad_word" if line.width is None else "label_bold"
    return [Callout(tuple(points[k].tolist()), break_words(line, view), role)]


def break_words(line, view: View) -> str:
    """Say what becomes of the slab along the line."""
    if line.width is not None:
        width = shown(line.width.governing, "width", view.system)
        return _("it cracks along this line: {width}, the mat holds it").format(width=width)
    if line.corner:
        return _("it breaks along this line: the corner comes off")
    return _("it breaks along this line: nothing holds it")


def _corner(outcome, plan: CurledPlan, view: View) -> list[Callout]:
    x, y, height = highest_corner(outcome)
    if height < FLAT:
        return []
    rise = shown(height, "movement", view.system)
    place = tuple(plan((x, y)).tolist())
    return [Callout(place, _("this corner stands up {rise}").format(rise=rise), "label_bold")]


def _key(frame: Frame) -> list:
    """What shades, strokes and teeth mean."""
    x, y = frame.left, frame.bottom - KEY + 34.0
    shapes = [Raster(x, y - 10.0, SWATCH, 12.0, np.linspace(0.0, 1.0, 24)[None].repeat(2, 0))]
    strokes = np.array([[(x + 2, y + ROW - 4), (x + 8, y + ROW - 4)]])
    bold = np.array([[(x + 14, y + ROW - 4), (x + 29, y + ROW - 4)]])
    edge = np.array([[(x, y + 2 * ROW - 2), (x + SWATCH, y + 2 * ROW - 2)]])
    teeth = np.array(
        [[(x + 4 + 7 * k, edge[0, 0, 1]), (x + 4 + 7 * k, edge[0, 0, 1] - 6)] for k in range(4)]
    )
    shapes += [
        Lines(strokes, "bears"),
        Lines(bold, "outline"),
        Lines(edge, "outline"),
        Lines(teeth, "bears"),
    ]
    names = _("stretched, up to strength"), _("way of the pull"), _("edge of the air")
    return shapes + [
        Text(x + SWATCH + 7.0, y + ROW * k, words, "note") for k, words in enumerate(names)
    ]
