"""One frame of a lattice that cracks: an illustration of how a crack finds its own way."""

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan, plan_in
from crackkit.drawing.corner_sides import BLOCK, ROLLER, tied_sides
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.lattice_frames import LatticeLayout, lattice_layout
from crackkit.drawing.lattice_torn import torn_shapes
from crackkit.drawing.lattice_words import (
    STATES,
    state_key,
    tile_words,
    words_beside,
    words_height,
)
from crackkit.drawing.movement_band import FACTORS, factor_notes
from crackkit.drawing.shapes import Picture, Text
from crackkit.drawing.verdict_card import tile_cards
from crackkit.drawing.words_on import wrapped
from crackkit.words import _

ROOM = 14.0  # drawing units that the largest movement of a run may take


def picture(structure, run, number: int, tied=(), day=None, view: View = PLAIN) -> Picture:
    """Compose the picture of one frame; all frames of a run are laid out alike.

    Parameters
    ----------
    structure : CornerSlab
    run : LatticeRun
        Of this slab.
    number : int
        Of the frame, 0 to ``len(run.frames) - 1``.
    tied : sequence of ndarray, shape (2, 2)
        Sides that are tied, as in Cornered [mm].
    day : float, optional
        Age at which so much has shrunk [days]; without it the shrinkage is told twice.
    view : View
        Units and layout.

    Returns
    -------
    Picture
    """
    number = range(len(run.frames))[number]
    frame = run.frame(number)
    layout = lattice_layout(view, structure.width / structure.length, words_height)
    plan = plan_in(structure, layout.plan)
    factor = enlarged(run, plan.scale)
    told = tile_words(structure, run, frame, day, view)
    shapes = (
        *_heading(layout, factor),
        *_plan(structure, run, frame, tied, factor, plan),
        *plan.dimensions(view, BLOCK + 2 * ROLLER),
        *words_beside(run, number, layout.words),
        *tile_cards(told, layout.tiles),
    )
    title = _("An illustration: the crack finds its own way")
    return Picture(layout.width, layout.height, shapes, title, _said(told, run, number))


def enlarged(run, scale: float) -> float:
    """Pick how many times larger movement is drawn, for all frames of a run."""
    drawn = float(np.hypot(*np.moveaxis(run.movements, -1, 0)).max()) * scale
    fitting = [f for f in FACTORS if drawn * f <= ROOM]
    return float(fitting[-1]) if fitting else ROOM / drawn


def _heading(layout: LatticeLayout, factor: float) -> list[Text]:
    head = layout.head
    notes = (
        _("an illustration: chance strews the bonds; {larger}"),
        _("an illustration; {larger}"),
    )
    larger = factor_notes(factor)[0]
    fitting = [
        text.format(larger=larger)
        for text in notes
        if len(wrapped(text.format(larger=larger), "note", head.width)) == 1
    ]
    return [
        Text(head.left, head.top + 16, _("Watch it crack"), "heading"),
        Text(head.left, head.top + 34, fitting[0], "note"),
    ]


def _plan(structure, run, frame, tied, factor: float, plan: CornerPlan) -> list:
    """Draw the slab as it has moved, what it is tied to, and what gives way."""
    moved = run.points + factor * frame.movement
    loops, after = ([points[loop] for loop in run.loops] for points in (run.points, moved))
    return [
        *tied_sides(structure, tied, loops, plan),
        *plan.concrete(after),
        *plan.column(),
        *plan.edges(loops, "ghost"),
        *torn_shapes(run, frame, factor, plan),
    ]


def _said(told, run, number: int) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    what = _("An illustration, in which a crack finds its own way through a lattice of bonds.")
    numbers = "; ".join(f"{words} {value}" for words, value in told)
    return f"{what} {STATES[state_key(run, number)]} {numbers[0].upper()}{numbers[1:]}."
