"""Bars seen from the side: their lines, hooks, and what of them can be dragged."""

import math

import numpy as np

from crackkit.drawing.body import Body
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Circle, Group, Handle, Polyline, rectangle
from crackkit.units import shown
from crackkit.units.places import place_named
from crackkit.words import _

DROP_GRIP, END_GRIP = 6.0, 4.0  # radius
CLEAR = 15.0  # least distance of two grips
BEND = 5.0  # drawn radius of a hook
TAIL = 0.3  # length of a hook's tail, as a share of the drawn depth


def rods(outcome, body: Body, view: View) -> list:
    """Draw the bars, each layer with the grips that there is room for."""
    drawn = [_rod(item, body) for item in outcome.steel]
    if not view.live:
        return [Group((rod,)) for rod in drawn]
    grips = [outcome.structure.bar_grips(item.key) for item in outcome.steel]
    rows = list(zip(outcome.steel, drawn, grips, strict=True))
    taken, lines, ends = [], [], []
    for item, rod, (drop, start, end) in rows:
        lines.append(_dropped(item, rod, drop, start or end, body, view, taken))
    for item, _rod_drawn, (_drop, start, end) in rows:
        names = (_("start of the {bars}"), start), (_("end of the {bars}"), end)
        for name, grip in names:
            if grip is not None:
                ends += _end(item, name, grip, outcome.structure, body, view, taken)
    return [*lines, *ends]


def _rod(item, body: Body) -> Polyline:
    points = body.points(item.path)
    thick = min(max(item.diameter * body.down, 2.0), 6.0)
    if item.hooks[0]:
        points = np.concatenate([_hook(points[0], 1.0, item.face, body)[::-1], points[1:]])
    if item.hooks[1]:
        points = np.concatenate([points[:-1], _hook(points[-1], -1.0, item.face, body)])
    return Polyline(points, "bar", thick)


def _hook(end, inward: float, face: str, body: Body) -> np.ndarray:
    """Points of a right-angled bend into the concrete, from the bar to the tip."""
    into = 1.0 if face == "top" else -1.0
    turn = np.linspace(0.0, math.pi / 2, 5)
    x = end[0] + inward * BEND * (1.0 - np.sin(turn))
    y = end[1] + into * BEND * (1.0 - np.cos(turn))
    tip = (end[0], end[1] + into * max(TAIL * body.depth, 2 * BEND))
    return np.concatenate([np.column_stack([x, y]), [tip]])


def _dropped(item, rod, drop, has_ends, body: Body, view: View, taken: list) -> Group:
    """A layer that can be dragged up and down as a whole, if it has a grip for that."""
    if drop is None:
        return Group((rod,))
    (left, _y), (right, _y2) = body.points(item.path[[0, -1]]).tolist()
    wish = (left + right) / 2 if has_ends else left + 26 if item.face == "bottom" else right - 26
    x, y = _free_place(item, wish, body, taken)
    top, bottom = rod.points[:, 1].min(), rod.points[:, 1].max()
    if not any(item.hooks):
        hit = rectangle(left, top - 7, right - left, bottom - top + 14, "hit")
    else:
        hit = rectangle(left, y - 7, right - left, 14, "hit")
    taken.append((x, y))
    return Group((hit, rod, Circle(x, y, DROP_GRIP, "grip")), _drop_handle(item, drop, body, view))


def _free_place(item, wish: float, body: Body, taken: list) -> tuple[float, float]:
    """The place on a layer nearest the wished one where no other grip is."""
    for step in (0.0, CLEAR, -CLEAR, 2 * CLEAR, -2 * CLEAR):
        place = wish + step, _height(item, wish + step, body)
        if not _crowded(place, taken):
            return place
    return wish, _height(item, wish, body)


def _crowded(place: tuple[float, float], taken) -> bool:
    """Whether a grip there could not be told from one that is taken."""
    beside = [other for other in taken if abs(place[0] - other[0]) < CLEAR]
    return any(math.dist(place, other) < CLEAR for other in beside)


def _height(item, x: float, body: Body) -> float:
    return _height_at(item, (x - body.along.left) / body.along.scale, body)


def _height_at(item, at: float, body: Body) -> float:
    """Height on the drawing of the bars of a layer at a place [mm]."""
    level = len(item.path) == 2 and item.path[0, 1] == item.path[1, 1]
    depth = float(item.path[0, 1]) if level else item.depth_at(at)
    return body.top + depth * body.down


def _drop_handle(item, drop, body: Body, view: View) -> Handle:
    text = _("dropped by {drop}").format(drop=shown(drop.value, "size", view.system))
    return Handle(
        drop.path, item.label, text, "y", 1 / body.down, drop.value, drop.low, drop.high, 5.0
    )


def _end(item, name: str, grip, structure, body: Body, view: View, taken: list) -> list:
    """A small grip at an end of a layer; none where another is too near to tell them apart."""
    at = min(max(grip.value, 0.0), body.along.length)
    x, y = float(body.along(at)), _height_at(item, at, body)
    if _crowded((x, y), taken):
        return []
    taken.append((x, y))
    text = place_named(structure, at, view.system)
    handle = Handle(
        grip.path,
        name.format(bars=item.label),
        text,
        "x",
        1 / body.along.scale,
        grip.value,
        grip.low,
        grip.high,
        50.0,
    )
    hit = rectangle(x - 8, y - 8, 16, 16, "hit")
    return [Group((hit, Circle(x, y, END_GRIP, "grip")), handle)]
