"""The pull at both ends of a member: arrows, their force, and the grip to drag it by."""

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.pulled_body import PulledBody
from crackkit.drawing.shapes import Arrow, Circle, Group, Handle, Text, rectangle
from crackkit.structures import fields
from crackkit.units import shown
from crackkit.units.quantities import scale
from crackkit.words import _

GRIP, OUT = 6.0, 7.0  # radius, and how far out on the arrow
LEAST, MORE = 20.0, 12.0  # length of an arrow at a small pull, and what a great one adds
LIFT = 22.0  # of the words over the top face


def pull_arrows(body: PulledBody, left: float, right: float, frame: Frame, view: View) -> list:
    """Draw the arrows from the ends of the member; the right one can be dragged.

    Parameters
    ----------
    body : PulledBody
    left, right : float
        Ends of the member on the drawing.
    frame : Frame
        The band.
    view : View
    """
    pull = fields.input_at(body.structure, "pull")
    y = (body.top + body.bottom) / 2
    reach = LEAST + MORE * pull.value / (pull.high or 1.0)
    start = right + body.hold
    tip = min(start + reach, frame.right - 1.0)
    shapes = [_dragged(start, tip, y, body, pull, view)]
    if not pull.value:
        return [*shapes, *_invitation(body, tip, frame, view)]
    end = left - body.hold
    shapes.append(Arrow(end, y, max(end - reach, frame.left + 1.0), y, "load"))
    return [*shapes, *force_words(body, frame.left, frame.right, view)]


def force_words(body: PulledBody, low: float, high: float, view: View) -> list:
    """Write the pull over both ends, between two places on the drawing."""
    words = shown(body.structure.pull, "force", view.system)
    y = body.top - LIFT
    half = width_of(words, "load_word") / 2
    left, right = body.along.left - body.hold - 8.0, body.along.right + body.hold + 8.0
    return [
        Text(max(left, low + half), y, words, "load_word", "middle"),
        Text(min(right, high - half), y, words, "load_word", "middle"),
    ]


def _invitation(body: PulledBody, tip: float, frame: Frame, view: View) -> list:
    if not view.live:
        return []
    return [Text(frame.right - 2.0, body.top - LIFT, _("pull here"), "note", "end")]


def _dragged(start: float, tip: float, y: float, body: PulledBody, pull, view: View) -> Group:
    role = "load" if pull.value else "spread_load"
    parts = [Arrow(start, y, tip, y, role)] if pull.value or view.live else []
    if not view.live:
        return Group(tuple(parts))
    parts.insert(0, rectangle(start - 14, y - 16, tip - start + 28, 32, "hit"))
    parts.append(Circle(start + OUT, y, GRIP, "grip"))
    return Group(tuple(parts), _handle(body, pull, view))


def _handle(body: PulledBody, pull, view: View) -> Handle:
    """A way as long as the member goes through the whole range."""
    way = (pull.high - pull.low) / (body.along.right - body.along.left)
    keys = scale("force", view.system)
    words = shown(pull.value, "force", view.system)
    step = keys.step * keys.factor
    return Handle("pull", _("pull"), words, "x", way, pull.value, pull.low, pull.high, step)
