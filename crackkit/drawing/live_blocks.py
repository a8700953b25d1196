"""Loads that come and go: a block over each span, pressed to turn it on and off."""

import numpy as np

from crackkit.drawing.frames import Along, View
from crackkit.drawing.loads_on import arrow_places, live, live_words
from crackkit.drawing.places import stretch_name
from crackkit.drawing.shapes import Arrow, Group, Handle, Polyline, rectangle
from crackkit.units import shown
from crackkit.words import _

TALL = 15.0  # of a block
APART = 3.0  # between neighbouring blocks
ARROWS = 27  # on the whole length
UNDER = np.linspace(0.0, 1.0, 9)  # where along a block the member must stay clear of it


def live_blocks(structure, along: Along, surface, view: View) -> list[Group]:
    """Draw the blocks; `surface` gives the heights above which places [mm] are free."""
    loads = live(structure)
    under = np.array([load.start + (load.end - load.start) * UNDER for load in loads])
    clear = np.broadcast_to(surface(under), under.shape).min(axis=-1).tolist() if loads else ()
    rows = zip(loads, clear, strict=True)
    return [_block(load, height - 1.0, structure, along, view) for load, height in rows]


def _block(load, bottom: float, structure, along: Along, view: View) -> Group:
    left, right = float(along(load.start)) + APART / 2, float(along(load.end)) - APART / 2
    top = bottom - TALL
    hit = rectangle(left, top - 2, right - left, TALL + 4, "hit")
    drawn = _arrows if load.on else _empty
    shapes = (hit, *drawn(load, along, left, right, top, bottom))
    return Group(shapes, _switch(load, structure, view) if view.live and load.path else None)


def _arrows(load, along: Along, left, right, top, bottom) -> list:
    places = [
        min(max(x, left + 2), right - 2) for x in along(arrow_places(load, along, ARROWS)).tolist()
    ]
    beam = Polyline(np.array([(left, top), (right, top)]), "live_load", 2.4)
    return [beam, *(Arrow(x, top, x, bottom, "live_load", 6.0) for x in places)]


def _empty(_load, _along: Along, left, right, top, bottom) -> list:
    corners = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)]
    return [Polyline(np.array(corners), "live_off")]


def _switch(load, structure, view: View) -> Handle:
    where = stretch_name(structure, load.start, load.end, view)
    amount = shown(load.added, "line_load", view.system)
    name = _("live load {load}, {where}").format(load=amount, where=where)
    state = _("on") if load.on else _("off")
    return Handle(load.path, name, state, "toggle", 0.0, float(load.on), 0.0, 1.0, 1.0)


def live_label(structure, view: View) -> str:
    """Words for all blocks; empty where no load comes and goes."""
    return live_words(structure, view) if live(structure) else ""
