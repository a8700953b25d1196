"""Band 1, how does it move? The loads, and the shape the member takes, drawn larger."""

import numpy as np

from crackkit.drawing import footings, loads_on
from crackkit.drawing.deciding import gives_way
from crackkit.drawing.frames import Along, Frame, View, along
from crackkit.drawing.labels import GAP, width_of
from crackkit.drawing.live_blocks import live_blocks, live_label
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
from crackkit.units import shown
from crackkit.units.places import place_named
from crackkit.words import _

BODY = 26.0  # drawn depth of the member
ROOM = 24.0  # largest drawn movement
FACTORS = (4, 10, 25, 60, 150, 400, 1000, 2500)
FALL_ROOM = 34.0
POINTS = 61  # of the drawn shape
BELOW, BELOW_SUNK = 84.0, 94.0  # from the top face to the lower end; where supports may sink
LIVE_LIFT = 18.0  # how far above the top face the blocks of live load stand


def movement_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band; `outcome.structure` has footings, hung and spread loads."""
    scale = along(frame, float(outcome.x[-1]))
    factor = exaggeration(outcome.movement, scale)
    top = frame.bottom - (BELOW if outcome.range is None else BELOW_SUNK)
    shape = _Shape(outcome, scale, factor, top)
    return [
        *_heading(outcome, frame, factor),
        *footings.blocks(outcome.structure, scale, top, top + BODY, 20.0),
        *shape.ghost(),
        *shape.body(),
        *footings.root_lines(outcome.structure, scale, top, top + BODY),
        *_supports(outcome.structure, shape, view),
        *_loads(outcome.structure, shape, frame, view),
        *_letters(outcome.structure, shape),
        *_lowest_row(outcome, shape, frame, view),
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
    return heading(frame, 1, question, factor_notes(factor))


def factor_notes(factor: float) -> tuple[str, ...]:
    """State how many times larger the movement is drawn, the longest way first."""
    if factor < 1.0:
        return (_("movement not to scale"),)
    times = f"{factor:.3g}" if factor < 1000.0 else f"{factor:.0f}"
    long, short = _("movement drawn {n} times larger"), _("movement ×{n}")
    return long.format(n=times), short.format(n=times)


class _Shape:
    """The moved member on the drawing."""

    def __init__(self, outcome, scale: Along, factor: float, top: float):
        moved = outcome.movement
        places = [np.linspace(0.0, float(outcome.x[-1]), POINTS), [moved.at]]
        # where it falls the corners are among the points, so that they are drawn sharp
        self.x = np.sort(np.concatenate(places))
        if moved.falls_at is not None:
            self.x = np.unique(np.concatenate([self.x, _hinges(outcome)]))
        down = np.interp(self.x, moved.x, moved.down)
        self.scale, self.top = scale, top
        self.drop = down * scale.scale * factor
        self.tall = BODY * outcome.depth / outcome.depth.max()
        self.stations = outcome.x
        self.level = float(outcome.depth.min()) == float(outcome.depth.max())
        self.falls = moved.falls_at is not None

    def surface(self, at):
        """Height of the moved top face at place `at` [mm], or at many of them."""
        return self.top + np.interp(at, self.x, self.drop)

    def deep(self, at):
        """Drawn depth at place `at` [mm], or at many of them."""
        return BODY if self.level else np.interp(at, self.stations, self.tall)

    def soffit(self, at: float) -> float:
        """Height of the moved bottom face at place `at` [mm]."""
        return float(self.surface(at) + self.deep(at))

    def body(self) -> list:
        """Outline of the moved member."""
        upper = np.column_stack([self.scale(self.x), self.top + self.drop])
        lower = upper.copy()
        lower[:, 1] += self.deep(self.x)
        return [Polygon(np.concatenate([upper, lower[::-1]]), "concrete")]

    def ghost(self) -> list:
        """Outline of the member before it moved."""
        left, right = self.scale.left, self.scale.right
        if self.level:
            return [rectangle(left, self.top, right - left, BODY, "ghost")]
        upper = [(left, self.top), (right, self.top)]
        bends = np.column_stack([self.scale(self.x), np.interp(self.x, self.stations, self.tall)])
        lower = bends[::-1] + (0.0, self.top)
        return [Polygon(np.concatenate([upper, lower]), "ghost")]


def _hinges(outcome) -> list[float]:
    """Places where the shape of a member that falls has a corner [mm]."""
    return [outcome.movement.falls_at, *(one.at for one in outcome.structure.footings)]


def _supports(structure, shape: _Shape, view: View) -> list:
    shapes = []
    for footing in footings.pinned(structure):
        x = float(shape.scale(footing.at))
        y = shape.top + BODY if not footing.sunk or shape.falls else shape.soffit(footing.at)
        mark = footings.triangle(x, y, 12, 19), line(x - 17, y + 21, x + 17, y + 21, "ground")
        handle = _support_handle(footing, structure, shape, view)
        grip = [Circle(x, y + 12, 4.0, "grip")] if handle else []
        shapes.append(Group((*mark, *grip), handle))
    return shapes


def _support_handle(footing, structure, shape: _Shape, view: View) -> Handle | None:
    grip = footing.grip
    if grip is None or not view.live:
        return None
    text = place_named(structure, footing.at, view.system)
    way = 1 / shape.scale.scale
    return Handle(grip.path, footing.name, text, "x", way, grip.value, grip.low, grip.high, 100.0)


def _letters(structure, shape: _Shape) -> list:
    """The supports' letters, written on the member above them."""
    named = [footing for footing in structure.footings if footing.letter]
    labels = [Label(float(shape.scale(f.at)), f.letter, "label_bold") for f in named]
    row = label_row(labels, 0.0, shape.scale.left + 3, shape.scale.right - 3)
    heights = _letter_heights(np.array([footing.at for footing in named]), shape)
    return [
        Text(text.x, height, text.text, text.role, text.anchor)
        for height, text in zip(heights.tolist(), row, strict=True)
    ]


def _letter_heights(places: np.ndarray, shape: _Shape) -> np.ndarray:
    # a piece that falls would carry the letter onto what stands below
    top = np.full(places.size, shape.top) if shape.falls else shape.surface(places)
    return top + 0.5 * shape.deep(places) + 4.5


def _loads(structure, shape: _Shape, frame: Frame, view: View) -> list:
    comes_and_goes = loads_on.live(structure)
    y = frame.top + (57.0 if comes_and_goes else 40.0)
    low, high = shape.scale.left - 30, frame.right - 6
    hung = [
        Label(
            float(shape.scale(load.at)),
            shown(load.force, "force", view.system),
            "load_word",
            y + 11,
        )
        for load in structure.hung
        if load.force
    ]
    taken = 0.0 if comes_and_goes else sum(width_of(o.text, o.role) + GAP for o in hung)
    if comes_and_goes:
        taken = width_of(live_label(structure, view), "label_bold") + GAP
    words = loads_on.lasting_labels(
        structure, shape.scale, view, high - low - taken, loads_on.with_own_weight
    )
    arrows = [arrow for load in loads_on.lasting(structure) for arrow in _spread(load, shape)]
    # a load of no force is something to drag, and nothing to look at
    seen = [load for load in structure.hung if load.force or (view.live and load.grip)]
    carried = [_hung(load, y + 14, structure, shape, view) for load in seen]
    if not comes_and_goes:
        return [*label_row([*words, *hung], y, low, high), *arrows, *carried]
    centre = shape.scale.left + (taken - GAP) / 2
    words.append(Label(centre, live_label(structure, view), "label_bold"))
    over = live_blocks(structure, shape.scale, lambda at: shape.surface(at) - LIVE_LIFT, view)
    rows = [*label_row(words, y - 17, low, high), *label_row(hung, y, low, high)]
    return [*rows, *arrows, *over, *carried]


def _spread(load, shape: _Shape) -> list:
    places = loads_on.arrow_places(load, shape.scale, 15)
    tips = shape.surface(places).tolist()
    return [
        Arrow(x, tip - 15, x, tip - 1, "spread_load", 5.0)
        for x, tip in zip(shape.scale(places).tolist(), tips, strict=True)
    ]


def _hung(load, tail: float, structure, shape: _Shape, view: View) -> Group:
    x, tip = float(shape.scale(load.at)), float(shape.surface(load.at)) - 1
    role = "load" if load.force else "spread_load"
    parts = [rectangle(x - 12, tail - 6, 24, tip - tail + 10, "hit"), Arrow(x, tail, x, tip, role)]
    grip = load.grip
    if grip is None or not view.live:
        return Group(tuple(parts))
    parts.append(Circle(x, tail, 6.0, "grip"))
    words = _("{force} at {place}").format(
        force=shown(load.force, "force", view.system),
        place=place_named(structure, load.at, view.system),
    )
    way = 1 / shape.scale.scale
    handle = Handle(grip.path, load.name, words, "x", way, grip.value, grip.low, grip.high, 100.0)
    return Group(tuple(parts), handle)


def _lowest_row(outcome, shape: _Shape, frame: Frame, view: View) -> list:
    """How far it moves, or what it takes to break it; and which supports have sunk."""
    at, text, role = _largest(outcome, view)
    x = float(shape.scale(at))
    half = width_of(text, role) / 2
    place = min(max(x, shape.scale.left + 40 + half), shape.scale.right - 40 - half)
    y = frame.bottom - 12
    start = min(shape.soffit(at) + 2, y - 14)  # a member that falls may reach the words
    tip = Polyline(np.array([(x, start), (x, y - 14)]), "leader")
    sunk = _sunk(outcome.structure, shape, view, frame.width - 2 * half - 4 * GAP)
    if not sunk:
        return [tip, Text(place, y, text, role, "middle")]
    row = [Label(place, text, role), *sunk]
    return [tip, *label_row(row, y, shape.scale.left - 30, frame.right - 6)]


def _largest(outcome, view: View) -> tuple[float, str, str]:
    movement, worst = outcome.movement, outcome.worst
    if movement.falls_at is not None:
        bears = worst.ultimate_moment or worst.cracking_moment
        words = _("breaks at {moment}").format(moment=shown(bears, "moment", view.system))
        return movement.falls_at, words, "bad_word"
    words = shown(abs(movement.largest), "movement", view.system)
    way = _("down") if movement.largest >= 0 else _("up")
    text = f"{words} {way}"
    if gives_way(outcome):
        # once bars yield or slip the member moves on; what is worked out is the least
        text = _("more than {movement}").format(movement=text)
    return movement.at, text, "label_bold"


def _sunk(structure, shape: _Shape, view: View, room: float) -> list[Label]:
    """Name what has sunk, the most first, as far as there is room."""
    found = []
    for footing in sorted(structure.footings, key=lambda one: -abs(one.sunk)):
        if not footing.sunk:
            continue
        words = _("{letter} sunk {way}").format(
            letter=footing.letter, way=shown(footing.sunk, "movement", view.system)
        )
        room -= width_of(words, "note") + GAP
        if room > 0:
            found.append(Label(float(shape.scale(footing.at)), words, "note"))
    return found
