"""Band 1 of a slab with inside corners, how does it move? The outline before and after."""

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan, plan_in
from crackkit.drawing.corner_sides import BLOCK, ROLLER, tied_sides
from crackkit.drawing.corner_words import held_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.movement_band import FACTORS, factor_notes
from crackkit.drawing.shapes import Arrow, Polygon, Polyline, Text
from crackkit.drawing.words_on import heading, wrapped
from crackkit.units import shown
from crackkit.words import _

HEAD, FOOT, LEFT = 54.0, 24.0, 36.0  # room round the plan
SIDE, APART = 236.0, 24.0  # least room for the words, and from what holds the plan to them
ROOM = 15.0  # drawing units that the largest movement may take
ARROW, ARROWS = 6.0, 5  # least drawn length of an arrow, and how many there are at most
LINE, PAD = 16.0, 9.0  # from line to line, and between two sentences


def corner_movement(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    state, s = outcome.cornered, outcome.structure
    wide = frame.width - LEFT - SIDE - APART - BLOCK - 2 * ROLLER
    room = Frame(frame.left + LEFT, frame.top + HEAD, wide, frame.height - HEAD - FOOT)
    plan = plan_in(s, room, 0.35)
    factor = enlarged(state, plan.scale)
    after = [loop + factor * way for loop, way in zip(state.loops, state.moved, strict=True)]
    notes = factor_notes(factor) if largest(state)[0] > 0 else (_("it does not move"),)
    return [
        *heading(frame, 1, _("How does it move?"), notes),
        *tied_sides(s, state.tied, state.loops, plan),
        *plan.concrete(after),
        *plan.column(),
        *plan.edges(state.loops, "ghost"),
        *_arrows(state, after, plan),
        *_words(outcome, plan, Frame(plan.right, room.top, frame.right - plan.right, room.height),
                view),
    ]  # fmt: skip


def enlarged(state, scale: float) -> float:
    """Pick how many times larger the movement is drawn: few, far apart steps."""
    drawn = largest(state)[0] * scale
    fitting = [f for f in FACTORS if drawn * f <= ROOM]
    return float(fitting[-1]) if fitting else ROOM / drawn


def largest(state) -> tuple[float, np.ndarray]:
    """Greatest movement of the outline [mm], and the point that moves so [mm]."""
    ways, points = np.concatenate(state.moved), np.concatenate(state.loops)
    reach = np.hypot(ways[:, 0], ways[:, 1])
    return float(reach.max()), points[int(reach.argmax())]


def _arrows(state, after, plan: CornerPlan) -> list[Arrow]:
    """Arrows from where corners were to where they have moved, the longest ones."""
    starts, ends = (plan(np.concatenate(loops)) for loops in (state.loops, after))
    long = np.hypot(*(ends - starts).T)
    shapes, taken = [], np.zeros((0, 2))
    for k in np.argsort(-long, kind="stable").tolist():
        if long[k] < ARROW or len(shapes) == ARROWS:
            break
        # of the many points of an arc one arrow is enough
        if not (np.hypot(*(taken - starts[k]).T) < 3 * ROOM).any():
            shapes.append(Arrow(*starts[k].tolist(), *ends[k].tolist(), "live_load", 6.0))
            taken = np.concatenate([taken, starts[k : k + 1]])
    return shapes


def _words(outcome, plan: CornerPlan, room: Frame, view: View) -> list:
    """Sentences beside the plan."""
    left = room.left + BLOCK + 2 * ROLLER + APART
    shapes, y = [], room.top + 6.0
    for words, role in _told(outcome, view):
        for line in wrapped(words, role, room.right - left - 4.0):
            shapes.append(Text(left, y, line, role))
            y += LINE
        y += PAD
    return [*_key(left, y, outcome.cornered), *shapes]


def _told(outcome, view: View) -> list[tuple[str, str]]:
    state, s, system = outcome.cornered, outcome.structure, view.system
    wants = _("left free it would shrink by {free}: {way} over its length").format(
        free=shown(state.free, "strain", system),
        way=shown(state.free * s.length, "movement", system),
    )
    moves = _("its edge moves {way} at most").format(
        way=shown(largest(state)[0], "movement", system)
    )
    return [(wants, "label"), (held_words(s), "label"), (moves, "label_bold")]


def _key(left: float, y: float, state) -> list:
    """What the dashed line and the hatch mean."""
    shapes = [
        Polyline(np.array([(left, y - 4), (left + 26, y - 4)]), "ghost"),
        Text(left + 34, y, _("as it was cast"), "note"),
    ]
    if not state.tied:
        return shapes
    low = y + 20.0
    box = np.array([(left, low - 9), (left + 26, low - 9), (left + 26, low), (left, low)])
    return [
        *shapes,
        Polygon(box, "wall"),
        *(
            Polyline(np.array([(left + x, low), (left + x + 7, low - 9)]), "ground")
            for x in (2.0, 9.0, 16.0)
        ),
        Text(left + 34, low, _("tied to something stiff"), "note"),
    ]
