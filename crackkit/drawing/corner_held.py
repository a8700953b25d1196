"""Band 3 of a slab with inside corners, what holds the crack? The worst corner from near by."""

import math

import numpy as np

from crackkit.drawing.callouts import Callout, callouts, fitting
from crackkit.drawing.corner_break import HAIR, jointed, wider_notes
from crackkit.drawing.corner_close import CloseUp, close_shapes, close_up, crossing
from crackkit.drawing.corner_effect import effect_lines
from crackkit.drawing.corner_grips import handle_of
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Group, Lines, Text, rectangle
from crackkit.drawing.words_on import heading, wrapped
from crackkit.units import shown
from crackkit.units.quantities import INCH, scale
from crackkit.words import _

HEAD, FOOT = 34.0, 76.0  # over and under the close-up
WIDE = (0.40, 330.0)  # of the close-up: share of the band, and the most
APART = 40.0  # from it to the words
PAD, DOT = 4.0, 2.8  # between two call-outs; radius of the dot that they point to
RULER = {"SI": 250.0, "US": 12 * INCH}  # mm, length of the ruler beside the close-up
MAT = 3  # bars of a mat that are named
GRIP, REACH, ASIDE = 7.0, 13.0, 34.0  # of the grip: radius, reach, how far along the bar it lies
KINDS = {
    "diagonal": _("diagonal: {stress}"),
    "edge": _("edge bar: {stress}"),
    "mat": _("bar of the mat: {stress}"),
}
FAULTS = {"yields": _("{bar}, it yields"), "slips": _("{bar}, it slips")}


def corner_held(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    state = outcome.cornered
    tall, wide = frame.height - HEAD - FOOT, min(WIDE[0] * frame.width, WIDE[1])
    near = close_up(state, Frame(frame.left + 14.0, frame.top + HEAD, wide, tall))
    left = near.frame.right + APART
    room = Frame(left, near.frame.top + 4.0, frame.right - 4.0 - left, tall - 34.0)
    return [
        *heading(frame, 3, _("What holds the crack?"), wider_notes(state.crack, near.scale)),
        *close_shapes(state, near),
        *_stresses(state, near, room, view),
        *_ruler(near, left, view),
        *_grip(outcome, near, view),
        *effect_lines(
            outcome, frame.left + 14.0, frame.bottom - FOOT + 22.0, frame.width - 20.0, view
        ),
    ]


def _ruler(near: CloseUp, left: float, view: View) -> list:
    """How large the close-up is drawn."""
    length = RULER[view.system]
    y, right = near.frame.bottom - 5.0, left + length * near.scale
    ends = [[(x, y - 4.0), (x, y + 4.0)] for x in (left, right)]
    words = shown(length, "size", view.system)
    lines = np.array([[(left, y), (right, y)], *ends])
    return [Lines(lines, "axis"), Text(right + 8.0, y + 4.5, words, "note")]


def _stresses(state, near: CloseUp, room: Frame, view: View) -> list:
    """Name the stress of each bar where it crosses the crack, the most pulled ones first."""
    found = [Callout(place, bar_told(one, view), _role(one)) for one, place in _across(state, near)]
    if found:
        kept = fitting(found, room, PAD)
        dots = [Circle(*one.place, DOT, "rule_dot") for one in kept]
        return [*callouts(kept, room, PAD), *dots]
    words = wrapped(_nothing(state), "label_bold", room.width)
    return [
        Text(room.left, room.top + 14.0 + 16.0 * k, one, "label_bold")
        for k, one in enumerate(words)
    ]


def _across(state, near: CloseUp) -> list:
    """Bars across the crack and where, those that are seen, the most pulled first; few of a mat."""
    found, mat = [], 0
    for one in sorted((each for each in state.bars if each.crosses), key=lambda each: -each.stress):
        place = crossing(one, state.crack.points)
        if place is None or not _seen(near(place), near):
            continue
        mat += one.kind == "mat"
        if one.kind != "mat" or mat <= MAT:
            found.append((one, tuple(near(place).tolist())))
    return found


def _seen(place: np.ndarray, near: CloseUp) -> bool:
    low, high = near.bounds
    return bool(np.all((place >= low) & (place <= high)))


def _role(one) -> str:
    return "bad_word" if one.fault else "label"


def bar_told(one, view: View) -> str:
    """Say how hard a bar is pulled where it crosses the crack, and what fails there."""
    words = KINDS[one.kind].format(stress=shown(one.stress, "stress", view.system))
    return FAULTS[one.fault].format(bar=words) if one.fault else words


def _nothing(state) -> str:
    if any(one.crosses for one in state.bars):
        return _("bars cross the crack farther off, not here at the corner")
    if jointed(state.crack):
        return _("no bar crosses the joint: it opens as it should")
    if state.crack.widest < HAIR:
        return _("no bar lies across the line along which it would crack")
    return _("no bar crosses the crack: it opens as it likes")


def _grip(outcome, near: CloseUp, view: View) -> list:
    """The grip on the nearest diagonal: it draws the bars away from the corner."""
    found = nearest_diagonal(outcome.cornered)
    if found is None or not view.live:
        return []
    foot, along, out = found
    way = out * (1.0, -1.0)  # up the paper is across the slab
    turn = 1.0 if way[0] >= 0 else -1.0
    if abs(way[0]) < 0.1:
        return []
    place = near(foot) + ASIDE * along * (1.0, -1.0)
    low, high = (np.array(end) for end in near.bounds)
    x, y = np.clip(place, low + GRIP, high - GRIP).tolist()
    keys = scale("size", view.system)
    handle = handle_of(
        outcome.structure,
        "diagonal_off",
        _("diagonal bars, away from the corner"),
        view,
        "x",
        1.0 / (near.scale * way[0]),
        turn * keys.step * keys.factor,
    )
    hit = rectangle(x - REACH, y - REACH, 2 * REACH, 2 * REACH, "hit")
    return [Group((hit, Circle(x, y, GRIP, "grip")), handle)]


def nearest_diagonal(state) -> tuple | None:
    """The diagonal bar nearest to the worst corner; None without.

    Returns
    -------
    foot : ndarray
        Its point nearest to the corner [mm].
    along, out : ndarray
        Unit ways along the bar, to the left of the slab, and from the corner to it.
    """
    at, found = np.array(state.corner.at), []
    for one in (each for each in state.bars if each.kind == "diagonal"):
        start, end = np.array(one.start), np.array(one.end)
        way = (end - start) / max(math.dist(one.start, one.end), 1e-9)
        share = float(np.clip((at - start) @ way, 0.0, math.dist(one.start, one.end)))
        foot = start + share * way
        found.append((float(np.hypot(*(foot - at))), foot, way if way[0] < 0 else -way))
    if not found:
        return None
    far, foot, along = min(found, key=lambda each: each[0])
    return foot, along, (foot - at) / max(far, 1e-9)
