"""Band 2 of a slab on the ground, where is it stretched, where does it crack, on which day?"""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_body import GroundBody, drawn_depth
from crackkit.drawing.ground_cracks import (
    birth_order,
    dated_in_row,
    drawn_widths,
    open_joints,
    undated,
    widest_crack,
)
from crackkit.drawing.ground_plan import GroundPlan, laid, plan_shapes
from crackkit.drawing.ground_plan_words import days_across, days_along, plan_caption
from crackkit.drawing.ground_strength import strength_strip
from crackkit.drawing.strip_frames import along_strip, height_notes
from crackkit.drawing.strip_map import OFF, hatch_places, hatches, map_places, stress_map
from crackkit.drawing.through_cracks import through_cracks
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.units import shown
from crackkit.words import _

TOP = 68.0  # of the slab below the top of the band
BELOW = 62.0  # from the plan down to the strip of stresses
NOTHING = 0.05  # share of the strength that is not worth a hatch or a word
NEAR = 0.9  # share from which it is about to crack


def ground_stretch(outcome, frame: Frame, plan: Frame, view: View) -> list:
    """Draw the band: section, plan, and the strip of stresses, with all places below each other.

    Parameters
    ----------
    outcome : Outcome
    frame, plan : Frame
        The band, and the part of it for the plan.
    view : View
    """
    along = along_strip(frame, outcome.structure.length)
    body = GroundBody(outcome.structure, along, frame.top + TOP, drawn_depth(outcome.structure))
    above = laid(outcome.structure, plan, along)
    question = _("Where is it stretched? Where does it crack?")
    return [
        *heading(frame, 2, question, height_notes(body)),
        *_section(outcome, body),
        *_words(outcome, body, view),
        *_plan(outcome, body, above, frame, view),
        *strength_strip(outcome, frame, above.bottom + BELOW, view),
    ]


def _section(outcome, body: GroundBody) -> list:
    return [
        *_map(outcome, body),
        *_ribbon(outcome, body),
        *body.base(),
        body.concrete("outline"),
        *body.holds(),
        *body.bars(),
        *body.cuts(),
        *_cracks(outcome, body),
    ]


def _plan(outcome, body: GroundBody, plan: GroundPlan, frame: Frame, view: View) -> list:
    return [
        *plan_shapes(plan),
        *plan.opened(outcome.ground, outcome.across),
        *days_across(plan, outcome.ground, body.under),
        *days_along(plan, outcome.across),
        *plan_caption(plan, outcome.across, frame, view),
    ]


def _share(outcome, x: np.ndarray) -> np.ndarray:
    """Stress over strength at places [mm]."""
    state = outcome.ground
    return np.interp(x, state.x, state.felt) / np.interp(x, state.x, state.strength)


def _map(outcome, body: GroundBody) -> list:
    """The mean stress."""
    ratio = _share(outcome, map_places(body.along))
    return stress_map(body.along, body.top, body.depth, ratio)


def _ribbon(outcome, body: GroundBody) -> list:
    """Hatch over the top face where it is stretched; dense where it is about to tear."""
    x, at = hatch_places(body.along)
    share = _share(outcome, at)
    return hatches(x, share > NOTHING, share > NEAR, (body.top - OFF,))


def _cracks(outcome, body: GroundBody) -> list:
    """Cracks right through, those at joints too, wider where they are wider."""
    state = outcome.ground
    births = {crack.at: crack.birth for crack in state.cracks}
    gaps = {crack.at: crack.width for crack in state.wild}
    gaps |= {joint.at: joint.opening for joint in open_joints(state)}
    places = np.array(sorted(gaps))
    if not places.size:
        return []
    drawn = drawn_widths([gaps[at] for at in places.tolist()])
    order = birth_order([births.get(at, 0.0) for at in places.tolist()])
    return through_cracks(drawn, body.along(places), order, body.top, body.depth)


def _words(outcome, body: GroundBody, view: View) -> list:
    """What the concrete feels, and the widest crack and joint, in a row over the section."""
    state, labels, mouth = outcome.ground, [], body.top - 1.0
    share = state.felt / state.strength
    most = int(np.argmax(share))
    if share[most] > NOTHING:
        x = float(body.along(state.x[most]))
        labels.append(Label(x, _("most stretched"), "stretched_word", mouth))
    for words, one, gap in _widest(state):
        text = words.format(width=shown(gap, "width", view.system))
        labels.append(Label(float(body.along(one.at)), text, "label_bold", mouth))
    text = _not_shown(outcome, body)
    if text:
        labels.append(Label(body.along.right, text, "note"))
    return label_row(labels, body.top - 26.0, body.along.left - 40.0, body.along.right + 40.0)


def _not_shown(outcome, body: GroundBody) -> str:
    """Say what of the cracks cannot be seen: days that had no room, cracks beyond those counted."""
    if not outcome.ground.complete:
        return _("more cracks than are drawn")
    dated = dated_in_row(outcome.ground, body.along.right - body.along.left)
    missing = undated(outcome.ground, dated)
    return _("{n} more not dated").format(n=missing) if missing else ""


def _widest(state):
    """The widest crack and the widest joint, each with its words and width."""
    crack = widest_crack(state)
    if crack is not None:
        yield _("crack {width}"), crack, crack.width
    joint = max(open_joints(state), key=lambda one: one.opening, default=None)
    if joint is not None:
        yield _("joint {width}"), joint, joint.opening
