"""Band 2 of a slab with inside corners: where is it stretched, where does it crack?"""

from dataclasses import replace

import numpy as np

from crackkit.drawing.callouts import Callout, callouts
from crackkit.drawing.choice_chips import chip
from crackkit.drawing.corner_bars import corner_bars
from crackkit.drawing.corner_break import (
    HAIR,
    at_way,
    crack_shapes,
    jointed,
    length_shapes,
    ring,
    saw_shapes,
    wider_notes,
)
from crackkit.drawing.corner_grips import grips
from crackkit.drawing.corner_map import shade_words, stress_map
from crackkit.drawing.corner_plan import CornerPlan, plan_in
from crackkit.drawing.corner_sides import tied_sides
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Raster, Text
from crackkit.drawing.words_on import heading
from crackkit.units import shown
from crackkit.words import _

ASIDE = 0.65  # share of the room beside the plan that lies to its left: it stands near its words
KEY, ROW, SWATCH = 104.0, 20.0, 30.0  # height of the key, of its rows, width of its signs
CHIP = "label_bold"
AROUND = 24.0  # from a corner to the words on it
ASLANT = 30.0  # words on the pull stand so far above the corner


def corner_stretch(outcome, layout, view: View) -> list:
    """Draw the band: map, strokes, material length, crack, corners that tear, words beside it."""
    state, plan = outcome.cornered, plan_in(outcome.structure, layout.plan, ASIDE)
    bounds = (plan.left, plan.top), (plan.right, plan.bottom)
    question = _("Where is it stretched? Where does it crack?")
    drawn, places = grips(state, plan, view)
    room, key = _rooms(layout.words)
    return [
        *heading(layout.stretch, 2, question, wider_notes(state.crack, plan.scale)),
        *stress_map(state, plan),
        *tied_sides(plan.structure, state.tied, state.loops, plan),
        *plan.column(),
        *corner_bars(state.bars, plan),
        *saw_shapes(state.crack, plan, bounds),
        *crack_shapes(state.crack, plan, bounds),
        *length_shapes(state.corner, plan),
        *callouts(_told(outcome, plan, view), room),
        *_others(state, plan, places),
        *_key(outcome, key),
        *plan.dimensions(view, 14.0),
        *drawn,
    ]


def _rooms(words: Frame) -> tuple[Frame, Frame]:
    """Room for the call-outs, and for the key below them."""
    upper = Frame(words.left, words.top, words.width, words.height - KEY)
    return upper, Frame(words.left, upper.bottom, words.width, KEY)


def _told(outcome, plan: CornerPlan, view: View) -> list[Callout]:
    """Words on pull and crack, their lines aslant: none is to lie on a side of the corner."""
    state = outcome.cornered
    others = _on_the_crack(outcome, plan, view)
    pull = _on_the_pull(state, plan, others, view)
    level = float(plan(state.corner.at)[1])
    near = [0.0 <= one.place[1] - level < ASLANT for one in others]
    lower = [
        replace(one, below=ASLANT) if by else one for one, by in zip(others, near, strict=True)
    ]
    return [pull, *lower]


def _on_the_pull(state, plan: CornerPlan, others: list[Callout], view: View) -> Callout:
    """Words on the pull, above it unless their line would cross that of others."""
    x, y = ((plan(state.corner.at) + plan(state.corner.end)) / 2).tolist()
    free = all(abs(y - ASLANT / 2 - one.place[1]) > ASLANT / 2 for one in others)
    aside = -ASLANT if free else 0.0
    return Callout((x, y), pull_words(state, view), "stretched_word", aside)


def _on_the_crack(outcome, plan: CornerPlan, view: View) -> list[Callout]:
    crack = outcome.cornered.crack
    wide = crack.runs and crack.widest > outcome.verdict.limit.width
    place = plan(at_way(crack, np.array([_named_at(crack)])))[0]
    words, role = crack_words(crack, view), "bad_word" if wide else "label_bold"
    found = [Callout(tuple(place.tolist()), words, role)]
    if crack.saw > 0:
        end = plan(at_way(crack, np.array([0.75 * crack.saw])))[0]
        words = _("a joint: here it may open") if jointed(crack) else _("saw cut")
        found.append(Callout(tuple(end.tolist()), words, "label"))
    return found


def _named_at(crack) -> float:
    """How far along the crack the line of its words meets it [mm]."""
    return 0.6 * crack.length if crack.length > 0 else 0.5 * float(crack.along[-1])


def pull_words(state, view: View) -> str:
    """Say how hard the worst corner is pulled, over which length."""
    text = _("pulled {share}\u00a0×\u00a0its\u00a0strength over {length} from the corner")
    if state.share >= 1.0:
        text = _("{share}\u00a0×\u00a0its\u00a0strength over {length} from the corner: it tears")
    return text.format(
        share=f"{state.share:.2f}", length=shown(state.material_length, "size", view.system)
    )


def crack_words(crack, view: View) -> str:
    """Say how wide and how long the crack is, or where it would come."""
    if crack.widest < HAIR:
        return _("along this line it would crack")
    text = _("it gapes {width} at the corner and runs no farther")
    if jointed(crack):
        text = _("the joint opens by {width}")
    elif crack.runs:
        text = _("crack: {width} wide, {length} long")
    return text.format(
        width=shown(crack.widest, "width", view.system),
        length=shown(crack.length, "length", view.system),
    )


def _others(state, plan: CornerPlan, taken: np.ndarray) -> list:
    """Number the other corners where there is room; ring those that tear as well."""
    crack = plan(at_way(state.crack, np.linspace(0.0, state.crack.along[-1], 25)))
    corners = plan([corner.at for corner in state.corners])
    taken = np.concatenate([taken, crack, corners])
    shapes = []
    for k, corner in enumerate(state.corners):
        if k == state.worst:
            continue
        torn = corner.share >= 1.0
        words = f"{k + 1}: {corner.share:.2f}\u00a0×" if torn else str(k + 1)
        place = _free_place(corners[k], width_of(words, CHIP) / 2, taken, plan)
        shapes += ring(corner, plan) if torn else []
        if place is not None:
            shapes += chip(place[0], place[1] + 4.5, words, CHIP)
            half = width_of(words, CHIP) / 2
            taken = np.concatenate([taken, place + [[-half, 0.0], [0.0, 0.0], [half, 0.0]]])
    return shapes


def _free_place(at: np.ndarray, half: float, taken: np.ndarray, plan: CornerPlan):
    """Give a place for words beside a corner where they hide nothing, or None."""
    turn = np.linspace(0.0, 2 * np.pi, 9)[:-1] + np.pi / 4
    ways = np.column_stack([np.cos(turn), np.sin(turn)])
    for place in at + ways * (AROUND + half, AROUND):
        inside = plan.left + half < place[0] < plan.right - half
        inside &= plan.top + 9.0 < place[1] < plan.bottom - 9.0
        away = np.abs(taken - place)
        if inside and ((away[:, 0] > half + 17.0) | (away[:, 1] > 25.0)).all():
            return place
    return None


def _key(outcome, room: Frame) -> list:
    """What shades, strokes and lines mean."""
    x, y = room.left, room.top + 30.0
    rows = [y + ROW * k for k in range(4)]
    names = (
        shade_words(outcome.cornered.field),
        _("way of the pull"),
        _("length it is averaged over"),
        _("where the crack will go on"),
    )
    way, length, coming = (row - 4 for row in rows[1:])
    ticks = [
        [(x, length - 5), (x, length + 5)],
        [(x + SWATCH, length - 5), (x + SWATCH, length + 5)],
    ]
    shapes = [
        Raster(x, y - 10.0, SWATCH, 12.0, np.linspace(0.0, 1.0, 24)[None].repeat(2, 0)),
        Lines(np.array([[(x + 2, way), (x + 8, way)]]), "bears"),
        Lines(np.array([[(x + 14, way), (x + 29, way)]]), "outline"),
        Lines(np.array([[(x, length), (x + SWATCH, length)], *ticks]), "limit"),
        Lines(np.array([[(x, coming), (x + SWATCH, coming)]]), "neutral"),
    ]
    words = [
        Text(x + SWATCH + 7.0, row, name, "note") for row, name in zip(rows, names, strict=True)
    ]
    return [*shapes, *words]
