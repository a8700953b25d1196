"""Band 2 of a slab on the ground, where is it stretched, where does it crack, on which day?"""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_ages import day_words
from crackkit.drawing.ground_body import GroundBody, drawn_depth, height_notes
from crackkit.drawing.ground_frames import along_ground
from crackkit.drawing.ground_strength import strength_strip
from crackkit.drawing.labels import GAP, width_of
from crackkit.drawing.pulled_cracks import through_cracks
from crackkit.drawing.shapes import Lines, Raster
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.units import shown
from crackkit.words import _

TOP = 68.0  # of the slab below the top of the band
COLUMNS = 240  # of the stress map
FULL_SHADE = 1.15  # share of the strength that has the full colour
NOTHING = 0.05  # share of the strength that is not worth a hatch or a word
NEAR = 0.9  # share from which it is about to crack
RIBBON = 7.0  # height of the hatch over the top face
WIDE = 4.0  # mm, crack that is drawn widest
CAP = 0.5  # mm, width that `through_cracks` draws widest
CROWD = 0.75  # share of the row that days may fill
OPEN = 1e-3  # mm, from which an opening is drawn


def ground_stretch(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    along = along_ground(frame, outcome.structure.length)
    body = GroundBody(outcome.structure, along, frame.top + TOP, drawn_depth(outcome.structure))
    question = _("Where is it stretched? Where does it crack?")
    return [
        *heading(frame, 2, question, height_notes(body)),
        *_map(outcome, body),
        *_ribbon(outcome, body),
        *body.base(),
        body.concrete("outline"),
        *body.holds(),
        *body.bars(),
        *body.cuts(),
        *_cracks(outcome, body),
        *_days(outcome, body),
        *_words(outcome, body, view),
        *strength_strip(outcome, frame, view),
    ]


def _share(outcome, x: np.ndarray) -> np.ndarray:
    """Stress over strength at places [mm]."""
    state = outcome.ground
    return np.interp(x, state.x, state.felt) / np.interp(x, state.x, state.strength)


def _map(outcome, body: GroundBody) -> list:
    """The mean stress, the same over the whole thickness."""
    along = body.along
    x = (np.arange(COLUMNS) + 0.5) * (along.length / COLUMNS)
    values = np.tile(_share(outcome, x) / FULL_SHADE, (2, 1))
    return [Raster(along.left, body.top, along.right - along.left, body.depth, values)]


def _ribbon(outcome, body: GroundBody) -> list:
    """Hatch over the top face where it is stretched; dense where it is about to tear."""
    along = body.along
    x = np.arange(along.left, along.right - 4.0, 4.5)
    share = _share(outcome, (x + 2.0 - along.left) / along.scale)
    some = (share > NOTHING) & (np.arange(x.size) % 2 == 0)
    near = share > NEAR
    return [*_strokes(body, x[some & ~near], "hatch"), *_strokes(body, x[near], "hatch_dense")]


def _strokes(body: GroundBody, x: np.ndarray, role: str) -> list:
    if not x.size:
        return []
    strokes = np.empty((x.size, 2, 2))
    strokes[:, 0, 0], strokes[:, 1, 0] = x, x + 5.0
    strokes[:, 0, 1], strokes[:, 1, 1] = body.top - 2.0, body.top - 2.0 - RIBBON
    return [Lines(strokes, role)]


def _cracks(outcome, body: GroundBody) -> list:
    """Cracks right through, those at joints too, wider where they are wider."""
    state = outcome.ground
    births = {crack.at: crack.birth for crack in state.cracks}
    gaps = {crack.at: crack.width for crack in state.wild}
    gaps |= {joint.at: joint.opening for joint in state.joints if joint.opening > OPEN}
    places = np.array(sorted(gaps))
    if not places.size:
        return []
    widths = np.array([gaps[at] for at in places.tolist()])
    drawn = CAP * np.sqrt(np.minimum(widths / WIDE, 1.0))
    age = np.array([births.get(at, 0.0) for at in places.tolist()])
    order = np.argsort(np.argsort(age, kind="stable"), kind="stable") + 1
    return through_cracks(drawn, body.along(places), order, body.top, body.depth)


def dated(outcome, body: GroundBody) -> list:
    """Cracks that have their day written over them: all, or the first that there is room for."""
    room, chosen = CROWD * (body.along.right - body.along.left), []
    for crack in sorted(outcome.ground.wild, key=lambda one: one.birth):
        room -= width_of(day_words(crack.birth), "label_bold") + GAP
        if room < 0:
            break
        chosen.append(crack)
    return sorted(chosen, key=lambda one: one.at)


def _days(outcome, body: GroundBody) -> list:
    y, mouth = body.top - 26.0, body.top - 1.0
    labels = [
        Label(float(body.along(crack.at)), day_words(crack.birth), "label_bold", mouth)
        for crack in dated(outcome, body)
    ]
    return label_row(labels, y, body.along.left - 30.0, body.along.right + 30.0)


def _words(outcome, body: GroundBody, view: View) -> list:
    """What the concrete feels, and the widest crack and joint, in a row under the base."""
    state, labels = outcome.ground, []
    share = state.felt / state.strength
    most = int(np.argmax(share))
    if share[most] > NOTHING:
        x = float(body.along(state.x[most]))
        labels.append(Label(x, _("most stretched"), "stretched_word"))
    for words, one, gap in _widest(state):
        text = words.format(width=shown(gap, "width", view.system))
        labels.append(Label(float(body.along(one.at)), text, "label_bold", body.under + 1.0))
    text = _not_shown(outcome, body)
    if text:
        labels.append(Label(body.along.right, text, "note"))
    return label_row(labels, body.under + 19.0, body.along.left - 40.0, body.along.right + 40.0)


def _not_shown(outcome, body: GroundBody) -> str:
    """Say what of the cracks cannot be seen: days that had no room, cracks beyond those counted."""
    if not outcome.ground.complete:
        return _("more cracks than are drawn")
    missing = len(outcome.ground.wild) - len(dated(outcome, body))
    return _("{n} more not dated").format(n=missing) if missing else ""


def _widest(state):
    """The widest crack and the widest joint, each with its words and width."""
    crack = max(state.wild, key=lambda one: one.width, default=None)
    if crack is not None:
        yield _("crack {width}"), crack, crack.width
    joint = max(state.joints, key=lambda one: one.opening, default=None)
    if joint is not None and joint.opening > OPEN:
        yield _("joint {width}"), joint, joint.opening
