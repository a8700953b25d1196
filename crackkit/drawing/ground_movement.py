"""Band 1 of a slab on the ground, how does it move? Its ends creep in, and the base holds back."""

import numpy as np

from crackkit.drawing.frames import Along, Frame, View
from crackkit.drawing.ground_base import base_name
from crackkit.drawing.ground_body import GroundBody, drawn_depth
from crackkit.drawing.labels import width_of
from crackkit.drawing.movement_band import ROOM, exaggeration, factor_notes
from crackkit.drawing.shapes import Arrow, Polygons, Polyline, Text
from crackkit.drawing.strip_frames import along_strip
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.structures.outcome import Lengthening
from crackkit.units import shown
from crackkit.words import _

STILL = 1e-3  # mm that nobody would call a movement
SEEN = 0.05  # mm, from which the way of an end is told
TOP = 60.0  # of the slab below the top of the band
WIDEST_GAP = 0.35  # of the length of a piece
ARROWS = 18  # places where friction is drawn
LONGEST = 15.0  # of these arrows
LEAST = 0.04  # share of the friction that is worth an arrow


def ground_movement(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    along = along_strip(frame, outcome.structure.length)
    body = GroundBody(outcome.structure, along, frame.top + TOP, drawn_depth(outcome.structure))
    factor = drawn_larger(outcome, along)
    outlines = moved(outcome, body, factor)
    return [
        *_heading(outcome, frame, factor),
        *body.base(),
        Polygons(outlines, "concrete"),
        *_bars(outcome, body, outlines),
        *body.holds(),
        body.concrete("ghost"),
        *_creep(outcome, body),
        *held_words(body, view, end_words(outcome, view)),
        *_friction(outcome, body),
        *_lines(body),
    ]


def _largest(state) -> float:
    """Greatest way anything goes [mm]."""
    gaps = [one.width for one in state.cracks] + [joint.opening for joint in state.joints]
    return max([float(np.abs(state.slip).max()), *gaps])


def drawn_larger(outcome, along: Along) -> float:
    """How many times larger the movement is drawn: gaps must not eat up the pieces."""
    ends = pieces(outcome)
    gaps = (ends[1:, 0] + ends[1:, 1]) - (ends[:-1, 2] + ends[:-1, 3])
    piece = float(np.median(ends[:, 2] - ends[:, 0])) * along.scale
    crowd = float(gaps.max(initial=0.0)) * ROOM / (WIDEST_GAP * piece)
    return exaggeration(Lengthening(max(_largest(outcome.ground), crowd)), along)


def _heading(outcome, frame: Frame, factor: float) -> list:
    question = _("How does it move?")
    if _largest(outcome.ground) < STILL:
        return heading(frame, 1, question, (_("nothing moves yet"), _("no movement")))
    return heading(frame, 1, question, factor_notes(factor))


def pieces(outcome) -> np.ndarray:
    """Ends of the pieces between cracks: place and slip, left and right [mm], a row for each."""
    state, rows, first = outcome.ground, [], 0
    for start, past in state.pieces:
        count = len(past.stations)
        x, slip = state.x[first : first + count], state.slip[first : first + count]
        first += count
        at, moved_by = float(x[0]), float(slip[0])
        for crack in state.cracks:
            if start < crack.at < start + past.piece.length:
                here = float(np.interp(crack.at, x, slip))
                rows.append((at, moved_by, crack.at, here))
                at, moved_by = crack.at, here + crack.width
        rows.append((at, moved_by, float(x[-1]), float(slip[-1])))
    return np.array(rows)


def moved(outcome, body: GroundBody, factor: float) -> np.ndarray:
    """Outlines of the pieces on the drawing, their way drawn `factor` times larger."""
    ends = pieces(outcome)
    left = body.along(ends[:, 0] + factor * ends[:, 1])
    right = np.maximum(body.along(ends[:, 2] + factor * ends[:, 3]), left + 0.5)
    outlines = np.empty((len(ends), 4, 2))
    outlines[:, (0, 3), 0], outlines[:, (1, 2), 0] = left[:, None], right[:, None]
    outlines[:, :2, 1], outlines[:, 2:, 1] = body.top, body.bottom
    return outlines


def _creep(outcome, body: GroundBody) -> list:
    """Arrows at the ends that creep in."""
    s, slip, y = outcome.structure, outcome.ground.slip, (body.top + body.bottom) / 2
    shapes = []
    if slip[0] > SEEN:
        x = body.along.left - (16.0 if s.left > 0 else 6.0)
        shapes.append(Arrow(x - 24.0, y, x, y, "load", 8.0))
    if slip[-1] < -SEEN:
        x = body.along.right + (16.0 if s.right > 0 else 6.0)
        shapes.append(Arrow(x + 24.0, y, x, y, "load", 8.0))
    return shapes


def end_words(outcome, view: View) -> tuple[str, str]:
    """How far each end has crept in."""
    slip = outcome.ground.slip
    ways = max(float(slip[0]), 0.0), max(-float(slip[-1]), 0.0)
    left, right = (
        _("creeps in {way}").format(way=shown(way, "movement", view.system))
        if way > SEEN
        else _("stays")
        for way in ways
    )
    return left, right


def held_words(body: GroundBody, view: View, ways=("", "")) -> list:
    """Say over the slab what holds its ends and its middle, and how far the ends have crept."""
    s, along = body.structure, body.along
    rows = [(along.left, s.left, ways[0]), (along.right, s.right, ways[1])]
    labels = [Label(x, _end(degree, way), "label") for x, degree, way in rows]
    if s.middle > 0:
        words = _("column {n} %").format(n=round(100 * s.middle))
        labels.insert(1, Label((along.left + along.right) / 2, words, "label"))
    return label_row(labels, body.top - 22.0, along.left - 46.0, along.right + 46.0)


def _end(degree: float, way: str) -> str:
    held = _("held {n} %").format(n=round(100 * degree)) if degree > 0 else _("free")
    return f"{held}: {way}" if way else held


def _bars(outcome, body: GroundBody, outlines: np.ndarray) -> list:
    """The bars go along with the slab, across its cracks; where they are cut they end."""
    s = outcome.structure
    if s.bar is None:
        return []
    firsts = _first_pieces(outcome.ground)
    lasts = [*(k - 1 for k in firsts[1:]), -1]
    role = "bar_slack" if s.place == "ground" else "bar"
    return [
        Polyline(
            np.array(
                [
                    (outlines[first, 0, 0] + 4.0, body.level),
                    (outlines[last, 1, 0] - 4.0, body.level),
                ]
            ),
            role,
            2.6,
        )
        for first, last in zip(firsts, lasts, strict=True)
    ]


def _first_pieces(state) -> list[int]:
    """Number of the first piece of each stretch that the bars hold together."""
    found, count = [], 0
    for start, past in state.pieces:
        found.append(count)
        inside = (start < crack.at < start + past.piece.length for crack in state.cracks)
        count += 1 + sum(inside)
    return found


def _friction(outcome, body: GroundBody) -> list:
    """Arrows under the base: how it holds back, bold where the slab slides on it."""
    under, y = outcome.structure.under, body.under + 9.0
    x = (np.arange(ARROWS) + 0.5) * (body.along.length / ARROWS)
    share = np.clip(np.interp(x, outcome.ground.x, outcome.ground.slip) / under.slip, -1.0, 1.0)
    shapes = []
    for at, pull in zip(body.along(x).tolist(), share.tolist(), strict=True):
        if abs(pull) > LEAST:
            way = -0.5 * pull * (LONGEST if abs(pull) > 0.5 else 2 * LONGEST * abs(pull))
            role = "load" if abs(pull) >= 1.0 else "spread_load"
            half = max(abs(way), 3.0) * (1 if way > 0 else -1)
            shapes.append(Arrow(at - half, y, at + half, y, role, 5.0))
    return shapes


def _lines(body: GroundBody) -> list:
    """Name the base, and say what the arrows are."""
    y, left, right = body.under + 29.0, body.along.left, body.along.right
    told = (
        _("arrows: friction, bold where it slides"),
        _("bold arrows: it slides"),
        _("arrows: friction"),
    )
    name = base_name(body.structure.base)
    for on in name:
        for words in told:
            if width_of(on, "note") + width_of(words, "note") + 16 <= right - left + 60:
                return [
                    Text(left - 30, y, on, "note"),
                    Text(right + 30, y, words, "note", "end"),
                ]
    return [Text(left - 30, y, name[-1], "note")]
