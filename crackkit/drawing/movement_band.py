"""Band 1, how does it move? The loads, and the shape the member takes, drawn larger."""

import numpy as np

from crackkit.drawing.frames import Along, Frame, View, along
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Handle,
    Polygon,
    Polyline,
    Text,
    line,
    rectangle,
)
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.structures.outcome import YIELDS
from crackkit.units import shown
from crackkit.words import _

BODY = 26.0  # drawn depth of the member
ROOM = 24.0  # largest drawn movement
FACTORS = (4, 10, 25, 60, 150, 400, 1000, 2500)
FALL_ROOM = 34.0
POINTS = 61  # of the drawn shape


def movement_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band; `outcome.structure` has supports, loads and spread load."""
    scale = along(frame, float(outcome.x[-1]))
    factor = exaggeration(outcome.movement, scale)
    top = frame.top + 92.0
    shape = _Shape(outcome, scale, factor, top)
    return [
        *_heading(outcome, frame, factor),
        rectangle(scale.left, top, scale.right - scale.left, BODY, "ghost"),
        *shape.body(),
        *_supports(outcome.structure, scale, top + BODY, view),
        *_loads(outcome.structure, scale, shape, frame, view),
        *_largest(outcome, scale, shape, frame, view),
    ]


def exaggeration(movement, scale: Along) -> float:
    """Pick how many times larger the movement is drawn: few, far apart steps."""
    drawn = abs(movement.largest) * scale.scale
    if movement.falls_at is not None:
        return FALL_ROOM / drawn if drawn else 1.0
    fitting = [f for f in FACTORS if drawn * f <= ROOM]
    return float(fitting[-1]) if fitting else ROOM / drawn


def _heading(outcome, frame: Frame, factor: float) -> list:
    question = _("How does it move?")
    if outcome.movement.falls_at is not None:
        return heading(frame, 1, question, (_("it breaks here: not to scale"),), "bad_word")
    long, short = _("movement drawn {n} times larger"), _("movement ×{n}")
    notes = tuple(words.format(n=f"{factor:.3g}") for words in (long, short))
    return heading(frame, 1, question, notes)


class _Shape:
    """The moved member on the drawing."""

    def __init__(self, outcome, scale: Along, factor: float, top: float):
        moved = outcome.movement
        # the largest movement is among the points, so that a hinge is drawn sharp
        self.x = np.sort(np.append(np.linspace(0.0, float(outcome.x[-1]), POINTS), moved.at))
        down = np.interp(self.x, moved.x, moved.down)
        self.scale, self.top = scale, top
        self.drop = down * scale.scale * factor

    def surface(self, at: float) -> float:
        """Height of the moved top face at place `at` [mm]."""
        return self.top + float(np.interp(at, self.x, self.drop))

    def body(self) -> list:
        """Outline of the moved member."""
        upper = np.column_stack([self.scale(self.x), self.top + self.drop])
        lower = upper[::-1] + (0.0, BODY)
        return [Polygon(np.concatenate([upper, lower]), "concrete")]


def _supports(structure, scale: Along, y: float, view: View) -> list:
    shapes = []
    for footing in structure.footings:
        x = float(scale(footing.at))
        corners = np.array([(x, y), (x - 12, y + 19), (x + 12, y + 19)])
        triangle = [Polygon(corners, "support"), line(x - 17, y + 21, x + 17, y + 21, "ground")]
        handle = _support_handle(footing, scale, view) if view.live and footing.grip else None
        grip = [Circle(x, y + 12, 4.0, "grip")] if handle else []
        shapes.append(Group((*triangle, *grip), handle))
    return shapes


def _support_handle(footing, scale: Along, view: View) -> Handle:
    grip = footing.grip
    text = _("{place} from the left end").format(place=shown(footing.at, "length", view.system))
    return Handle(
        grip.path, footing.name, text, "x", 1 / scale.scale, grip.value, grip.low, grip.high, 100.0
    )


def _loads(structure, scale: Along, shape: _Shape, frame: Frame, view: View) -> list:
    y = frame.top + 40.0
    labels, shapes = [], []
    if structure.line_load:
        shapes += _spread_arrows(structure, scale, shape)
        words = _spread_words(structure, view)
        end = float(scale.right) - width_of(words, "note") / 2
        labels.append(Label(end, words, "note"))
    for index, load in enumerate(structure.loads):
        x = float(scale(load.at))
        words = shown(load.force, "force", view.system)
        labels.append(Label(x, words, "load_word", y + 11))
        shapes.append(_load(structure, index, load, x, y + 14, shape, scale, view))
    return [*label_row(labels, y, scale.left - 30, frame.right - 6), *shapes]


def _spread_words(structure, view: View) -> str:
    extra = shown(structure.uniform_load, "line_load", view.system)
    if not structure.self_weight:
        return extra
    if not structure.uniform_load:
        return _("own weight {load}").format(
            load=shown(structure.line_load, "line_load", view.system)
        )
    return _("{load} and own weight").format(load=extra)


def _spread_arrows(structure, scale: Along, shape: _Shape) -> list:
    places = np.linspace(0.0, scale.length, 15)
    tips = [shape.surface(at) for at in places]
    return [
        Arrow(x, tip - 15, x, tip - 1, "spread_load", 5.0)
        for x, tip in zip(scale(places).tolist(), tips, strict=True)
    ]


def _load(structure, index: int, load, x: float, tail: float, shape, scale, view) -> Group:
    tip = shape.surface(load.at) - 1
    role = "load" if load.force else "spread_load"
    parts = [rectangle(x - 12, tail - 6, 24, tip - tail + 10, "hit"), Arrow(x, tail, x, tip, role)]
    if not view.live:
        return Group(tuple(parts))
    parts.append(Circle(x, tail, 6.0, "grip"))
    words = _("{force} at {place} from the left end").format(
        force=shown(load.force, "force", view.system), place=shown(load.at, "length", view.system)
    )
    name = _("point load {n}").format(n=index + 1)
    handle = Handle(
        f"loads.{index}.at", name, words, "x", 1 / scale.scale, load.at, 0.0, scale.length, 100.0
    )
    return Group(tuple(parts), handle)


def _largest(outcome, scale: Along, shape: _Shape, frame: Frame, view: View) -> list:
    movement = outcome.movement
    if movement.falls_at is not None:
        return []
    words = shown(abs(movement.largest), "movement", view.system)
    way = _("down") if movement.largest >= 0 else _("up")
    text = f"{words} {way}"
    if outcome.verdict.key == YIELDS:
        # once bars yield or slip the member moves on; what is worked out is the least
        text = _("more than {movement}").format(movement=text)
    x = float(scale(movement.at))
    bottom = shape.surface(movement.at) + BODY
    half = width_of(text, "label_bold") / 2
    place = min(max(x, scale.left + 40 + half), scale.right - 40 - half)
    tip = Polyline(np.array([(x, bottom + 2), (x, frame.top + 150)]), "leader")
    return [tip, Text(place, frame.top + 164, text, "label_bold", "middle")]
