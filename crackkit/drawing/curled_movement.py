"""Band 1 of a curled slab, how does it move? Its corners stand up, there is air below them."""

import numpy as np

from crackkit.drawing.curled_oblique import (
    FLAT,
    Oblique,
    ground,
    oblique_in,
    on_top,
    slab,
)
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.movement_band import factor_notes
from crackkit.drawing.shapes import Arrow, Circle, Lines, Polygon, Polyline
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.units import shown
from crackkit.words import _

ROW, HEAD, FOOT = 42.0, 96.0, 22.0  # words over the slab, room above and below the flat slab
TYRE, HUB = 9.0, 3.0  # drawn wheel
ARROW = 30.0  # of the load
SEEN = 4.0  # drawn height of a gap that is named
SAME = 1e-3  # share by which two heights may differ and be called one
BESIDE, TALL = 7.0, 12.0  # of the arrow at a corner: its distance, and the least it is drawn for


def curled_movement(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    room = Frame(frame.left, frame.top + HEAD, frame.width, frame.height - HEAD - FOOT)
    sight = oblique_in(outcome, room)
    return [
        *_heading(outcome, frame, sight.factor),
        *ground(outcome.structure, sight),
        *slab(outcome, sight),
        *_break(outcome, sight),
        *_risen(outcome, sight),
        *_wheels(outcome, sight, frame),
        *_rows(outcome, sight, frame, view),
    ]


def _heading(outcome, frame: Frame, factor: float) -> list:
    question = _("How does it move?")
    if float(np.abs(outcome.curled.lift).max()) < FLAT:
        return heading(frame, 1, question, (_("it lies flat"),))
    return heading(frame, 1, question, factor_notes(factor))


def _break(outcome, sight: Oblique) -> list:
    """The crack on the top face, where it begins there."""
    found = outcome.curled.line
    if found is None or found.face != "top":
        return []
    return [Polyline(on_top(outcome, sight, found.points), "crack", 2.6)]


def _wheels(outcome, sight: Oblique, frame: Frame) -> list:
    """Loads on the slab: the square they press on, a wheel, an arrow."""
    shapes = []
    for load in pressing(outcome.structure):
        half = load.side / 2
        turns = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)])
        foot = on_top(outcome, sight, np.array((load.x, load.y)) + half * turns)
        x, y = on_top(outcome, sight, (load.x, load.y))[0].tolist()
        tip = y - 2 * TYRE - 1.0
        start = max(tip - ARROW, frame.top + ROW + 6.0)
        shapes += [
            Polygon(foot, "badge"),
            Circle(x, y - TYRE, TYRE, "rule_dot_chosen"),
            Circle(x, y - TYRE, HUB, "paper"),
            Arrow(x, start, x, tip, "load"),
        ]
    return shapes


def pressing(structure) -> list:
    """List the loads that press at all, the far ones first."""
    return sorted((one for one in structure.loads if one.force > 0), key=lambda one: -one.y)


def _rows(outcome, sight: Oblique, frame: Frame, view: View) -> list:
    """Words over the slab and below it, each with a leader to what it names."""
    over, under = [], []
    for load in pressing(outcome.structure):
        x = float(on_top(outcome, sight, (load.x, load.y))[0, 0])
        over.append(Label(x, shown(load.force, "force", view.system), "load_word"))
    label, far = _corner_label(outcome, sight, view)
    if label is not None:
        (over if far else under).append(label)
    under += _air_labels(outcome, sight) if far else []
    low, high = frame.left + 4.0, frame.right - 4.0
    return [
        *label_row(over, frame.top + ROW, low, high),
        *label_row(under, frame.bottom - 5.0, low, high),
    ]


def highest_corner(outcome) -> tuple[float, float, float]:
    """Give place (x, y) [mm] and height [mm] of the corner that stands highest."""
    s, lift = outcome.structure, outcome.curled.lift
    corners = [
        (s.length, 0.0, float(lift[0, -1])),
        (0.0, 0.0, float(lift[0, 0])),
        (s.length, s.width, float(lift[-1, -1])),
        (0.0, s.width, float(lift[-1, 0])),
    ]
    # of corners as good as equally high always the same one, so that words stay where they are
    most = max(height for _x, _y, height in corners)
    return next(corner for corner in corners if corner[2] >= most - SAME * abs(most))


def _risen(outcome, sight: Oblique) -> list:
    """An arrow from the ground to the underside at the highest corner; light within the gap."""
    x, y, height = highest_corner(outcome)
    (at, low), (_at, high) = sight(x, y).tolist(), sight(x, y, height).tolist()
    if low - high < TALL:
        return []
    if x > 0 and y == 0:
        at -= BESIDE
        tip, wing = (at, high + 1.5), 4.0
        wings = [(tip, (at - wing, tip[1] + 5.0)), (tip, (at + wing, tip[1] + 5.0))]
        return [Lines(np.array([((at, low - 1.0), tip), *wings]), "air_line")]
    at += BESIDE if x > 0 else -BESIDE
    return [Arrow(at, low, at, high, "live_load", 7.0)]


def _corner_label(outcome, sight: Oblique, view: View):
    """Words on the highest corner, and whether it is a far one."""
    x, y, height = highest_corner(outcome)
    if height < FLAT:
        return None, False
    point = sight.top(x, y, height) if y > 0 else sight(x, y, height / 2)
    words = _("this corner stands up {rise}: air below it")
    words = words.format(rise=shown(height, "movement", view.system))
    return Label(float(point[0]), words, "label_bold", float(point[1])), y > 0


def _air_labels(outcome, sight: Oblique) -> list[Label]:
    """Name the widest gap of the near side."""
    state = outcome.curled
    k = int(state.lift[0].argmax())
    height = float(state.lift[0, k])
    if height * sight.factor * sight.scale < SEEN:
        return []
    x, y = sight(float(state.x[k]), 0.0, 0.35 * height).tolist()
    return [Label(x, _("air below"), "label_bold", y)]
