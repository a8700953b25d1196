"""Band 2 of a curled slab, where is it stretched, where does it crack? The slab from above."""

import numpy as np

from crackkit.drawing.curled_break import break_shapes, drawn_line, peak_ring, ring_place
from crackkit.drawing.curled_callouts import HARDLY, curled_callouts
from crackkit.drawing.curled_map import air_edge, edge_shapes, stress_map, strokes
from crackkit.drawing.curled_places import chips
from crackkit.drawing.curled_plan import plan_in
from crackkit.drawing.curled_wheels import forces, wheels
from crackkit.drawing.frames import View
from crackkit.drawing.words_on import heading
from crackkit.words import _

ASIDE = 0.65  # share of the room beside the plan that lies to its left: it stands near its words


def curled_stretch(outcome, layout, view: View) -> list:
    """Draw the band: map, strokes, edge of the air, crack, loads, and words beside it."""
    state, plan = outcome.curled, plan_in(outcome.structure, layout.plan, ASIDE)
    name, face = worse_face(state)
    lines, teeth = air_edge(state, plan)
    crack = drawn_line(state.line, plan)
    taken = _taken(outcome.structure, face, crack, plan)
    told, taken = forces(outcome.structure, plan, taken, view)
    return [
        *heading(layout.stretch, 2, _("Where is it stretched? Where does it crack?"), _notes(name)),
        *plan.neighbours(),
        *stress_map(state, face, plan),
        *strokes(state, face, plan),
        *edge_shapes(lines, teeth),
        plan.concrete("outline"),
        *break_shapes(state.line, crack, plan),
        *(peak_ring(face, plan) if face.peak >= HARDLY * state.strength else []),
        *curled_callouts(outcome, plan, crack, layout.words, view),
        *chips(outcome, plan, lines, taken),
        *told,
        *wheels(outcome.structure, plan, view),
        *plan.dimensions(view),
    ]


def worse_face(state) -> tuple[str, object]:
    """Give the face with the larger share of its strength, with its name."""
    if state.top.peak >= state.bottom.peak:
        return "top", state.top
    return "bottom", state.bottom


def _notes(name: str) -> tuple[str, ...]:
    if name == "top":
        return _("seen from above: its top face"), _("its top face")
    return _("seen from above, through it: its bottom face"), _("its bottom face")


def _taken(structure, face, crack: np.ndarray, plan) -> np.ndarray:
    """Points that words on the plan keep clear of."""
    loads = np.array([(load.x, load.y) for load in structure.loads])
    return np.concatenate([ring_place(face, plan)[None], plan(loads), crack])
