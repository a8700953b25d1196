"""Band 1 of a curled slab, how does it move? Its corners stand up, there is air below them."""

import numpy as np

from crackkit.drawing.curled_oblique import Oblique, ground, oblique_in, on_top, slab
from crackkit.drawing.curled_risen import CORNER, FLAT, risen
from crackkit.drawing.curled_wheels import foot_corners
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.movement_band import factor_notes
from crackkit.drawing.shapes import Arrow, Circle, Lines, Polygon, Polyline
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.units import shown
from crackkit.words import _

ROW, HEAD, FOOT = 38.0, 106.0, 22.0  # words over the slab, room above and below the flat slab
TYRE, HUB = 8.0, 2.8  # drawn wheel
LEAST, ARROW, FAR = 10.0, 30.0, 24.0  # of the load; its words farther off get a leader
SEEN = 4.0  # drawn height of a gap that is named
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
        corners = foot_corners(load, outcome.structure)
        *foot, (x, y) = on_top(outcome, sight, [*corners, (load.x, load.y)]).tolist()
        start, tip = _arrow(y, frame)
        shapes += [
            Polygon(np.array(foot), "badge"),
            Circle(x, y - TYRE, TYRE, "rule_dot_chosen"),
            Circle(x, y - TYRE, HUB, "paper"),
        ]
        shapes += [Arrow(x, start, x, tip, "load")] if tip - start >= LEAST else []
    return shapes


def _arrow(y: float, frame: Frame) -> tuple[float, float]:
    """Ends of the arrow over a wheel that stands at this height of the paper."""
    tip = y - 2 * TYRE - 1.0
    return max(tip - ARROW, frame.top + ROW + 6.0), tip


def pressing(structure) -> list:
    """List the loads that press at all, the far ones first."""
    return sorted((one for one in structure.loads if one.force > 0), key=lambda one: -one.y)


def _rows(outcome, sight: Oblique, frame: Frame, view: View) -> list:
    """Words over the slab and below it, each with a leader to what it names."""
    over, under = [], []
    for load in pressing(outcome.structure):
        x, y = on_top(outcome, sight, (load.x, load.y))[0].tolist()
        words, start = shown(load.force, "force", view.system), _arrow(y, frame)[0]
        far = start > frame.top + ROW + FAR  # nobody would see whose words they are
        over.append(Label(x, words, "load_word", start if far else None))
    labels, below = _risen_label(outcome, sight, view)
    (under if below else over).extend(labels)
    under += [] if below else _air_labels(outcome, sight)
    low, high = frame.left + 4.0, frame.right - 4.0
    return [
        *label_row(over, frame.top + ROW, low, high),
        *label_row(under, frame.bottom - 5.0, low, high),
    ]


def _risen(outcome, sight: Oblique) -> list:
    """An arrow from the ground to the underside at the highest corner; light within the gap."""
    found = risen(outcome.curled)
    x, y, height = found.x, found.y, found.height
    (at, low), (_at, high) = sight(x, y).tolist(), sight(x, y, height).tolist()
    hidden = x <= 0 < y  # behind the slab
    if found.kind != CORNER or hidden or low - high < TALL:
        return []
    if x > 0 and y == 0:
        at -= BESIDE
        tip, wing = (at, high + 1.5), 4.0
        wings = [(tip, (at - wing, tip[1] + 5.0)), (tip, (at + wing, tip[1] + 5.0))]
        return [Lines(np.array([((at, low - 1.0), tip), *wings]), "air_line")]
    at += BESIDE if x > 0 else -BESIDE
    return [Arrow(at, low, at, high, "live_load", 7.0)]


def _risen_label(outcome, sight: Oblique, view: View) -> tuple[list[Label], bool]:
    """Words on the highest place, and whether they stand below the slab."""
    found = risen(outcome.curled)
    if not found.seen:
        return [], False
    below = found.kind == CORNER and found.near
    x, y, height = found.x, found.y, found.height
    point = sight(x, y, height / 2) if below else sight.top(x, y, height)
    words = _("{risen}: air below it").format(risen=found.words(view))
    return [Label(float(point[0]), words, "label_bold", float(point[1]))], below


def _air_labels(outcome, sight: Oblique) -> list[Label]:
    """Name the widest gap of the near side."""
    state = outcome.curled
    k = int(state.lift[0].argmax())
    height = float(state.lift[0, k])
    if height * sight.factor * sight.scale < SEEN:
        return []
    x, y = sight(float(state.x[k]), 0.0, 0.35 * height).tolist()
    return [Label(x, _("air below"), "label_bold", y)]
