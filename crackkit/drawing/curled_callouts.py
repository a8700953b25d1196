"""Words beside the plan of a curled slab: what to see in it, each with a line to its place."""

import numpy as np

from crackkit.drawing.callouts import Callout, callouts
from crackkit.drawing.curled_break import RING, ring_place
from crackkit.drawing.curled_movement import pressing
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.curled_risen import risen
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Lines, Raster, Text
from crackkit.units import shown
from crackkit.words import _

PAD = 10.0  # between two call-outs
KEY, ROW = 86.0, 20.0  # height of the key at the foot, and of its rows
SWATCH = 30.0
HARDLY = 0.05  # share of the strength that is not worth naming
SQUEEZED = 0.15  # share of the strength from which pressure is seen on the map
UNDER_IT = 1.0  # sides of its foot within which a place is under a wheel


def curled_callouts(outcome, plan: CurledPlan, crack, frame: Frame, view: View) -> list:
    """Draw them below each other in the order of their places, with the key at the foot.

    Parameters
    ----------
    outcome : Outcome
    plan : CurledPlan
    crack : ndarray
        Points of the crack on the paper, none without one.
    frame : Frame
        Room for the words.
    view : View
    """
    room = Frame(frame.left, frame.top, frame.width, frame.height - KEY)
    return [*callouts(_told(outcome, plan, crack, view), room, PAD), *_key(outcome, frame)]


def _told(outcome, plan: CurledPlan, crack, view: View) -> list[Callout]:
    """What to see."""
    return [*_pull(outcome, plan), *_break(outcome, crack, view), *_highest(outcome, plan, view)]


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


def _break(outcome, points: np.ndarray, view: View) -> list[Callout]:
    line = outcome.curled.line
    if line is None:
        return []
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


def _highest(outcome, plan: CurledPlan, view: View) -> list[Callout]:
    found = risen(outcome.curled)
    if not found.seen:
        return []
    place = tuple(plan((found.x, found.y)).tolist())
    return [Callout(place, found.words(view), "label_bold")]


def _key(outcome, frame: Frame) -> list:
    """What shades, strokes and teeth mean."""
    x, y = frame.left, frame.bottom - KEY + 34.0
    low, shade = _shades(outcome.curled)
    names = shade, _("way of the pull"), _("edge of the air")
    way, edge = y + ROW - 4, y + 2 * ROW - 2
    feet = x + 4 + 7 * np.arange(4.0)
    teeth = np.empty((4, 2, 2))
    teeth[..., 0], teeth[:, 0, 1], teeth[:, 1, 1] = feet[:, None], edge, edge - 6
    return [
        Raster(x, y - 10.0, SWATCH, 12.0, np.linspace(low, 1.0, 24)[None].repeat(2, 0)),
        Lines(np.concatenate([[[(x + 2, way), (x + 8, way)]], teeth]), "bears"),
        Lines(
            np.array([[(x + 14, way), (x + 29, way)], [(x, edge), (x + SWATCH, edge)]]), "outline"
        ),
        *(Text(x + SWATCH + 7.0, y + ROW * k, words, "note") for k, words in enumerate(names)),
    ]


def _shades(state) -> tuple[float, str]:
    """Least shade of the key, and its words: what is squeezed is named where it is to be seen."""
    top = state.top.peak >= state.bottom.peak
    if float((state.top if top else state.bottom).stress.min()) < -SQUEEZED * state.strength:
        return -1.0, _("squeezed to stretched")
    return 0.0, _("stretched, up to strength")
