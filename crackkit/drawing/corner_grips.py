"""What can be dragged on the plan of a slab with inside corners: the opening, its rounding."""

import math

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Circle, Group, Handle, rectangle
from crackkit.structures.fields import input_at
from crackkit.units import shown
from crackkit.units.quantities import scale
from crackkit.words import _

GRIP, SMALL = 8.0, 6.0  # radius of the grip in the middle, and of that of the rounding
REACH = 14.0  # half of what a finger may touch
BESIDE = 20.0  # from the end of a rounding to its grip
CLEAR = 22.0  # least distance of the two grips


def grips(state, plan: CornerPlan, view: View) -> tuple[list, np.ndarray]:
    """Draw the grips of a live page.

    Parameters
    ----------
    state : Cornered
    plan : CornerPlan
    view : View

    Returns
    -------
    shapes : list
    places : ndarray, shape (n, 2)
        Their middles on the paper.
    """
    if not view.live:
        return [], np.zeros((0, 2))
    middle = _middle(plan, view)
    places = [at for at, _shape in middle]
    rounding = _rounding(state, plan, view, places)
    every = [*middle, *rounding]
    return [shape for _at, shape in every], np.array([at for at, _s in every]).reshape(-1, 2)


def _middle(plan: CornerPlan, view: View) -> list:
    """The grip that carries an opening over the slab; a door goes along its wall alone."""
    s = plan.structure
    if s.shape == "corner":
        return []
    door = s.shape == "door"
    across = None if door else _way(plan, view, "cut_y", "y", -1.0, _("opening, across"))
    handle = _way(plan, view, "cut_x", "x", 1.0, _("opening, along"), across)
    x, y = plan((s.cut_x, s.cut_width / 2 if door else s.cut_y)).tolist()
    return [((x, y), _grip(x, y, GRIP, handle))]


def _rounding(state, plan: CornerPlan, view: View, taken) -> list:
    """The grip at the end of a rounding, on the side along the slab."""
    if not input_at(plan.structure, "rounding").applies:
        return []
    (x, y), turn = sharp_corner(plan.structure, state.corner.at)
    x, y = plan((x + turn * plan.structure.rounding, y)).tolist()
    x += turn * BESIDE
    if any(math.dist((x, y), other) < CLEAR for other in taken):
        return []
    handle = _way(plan, view, "rounding", "x", turn, _("rounding of the corners"))
    return [((x, y), _grip(x, y, SMALL, handle))]


def sharp_corner(structure, worst) -> tuple:
    """Where the sides of an inside corner meet, and which way the side along the slab goes.

    Of several the one farthest from the worst, so that a grip there hides nothing.

    Parameters
    ----------
    structure : CornerSlab
    worst : (float, float)
        The most pulled corner [mm].
    """
    s = structure
    if s.shape == "corner":
        return (s.length - s.cut_length, s.width - s.cut_width), 1.0
    half = s.cut_length / 2
    heights = s.cut_y - s.cut_width / 2, s.cut_y + s.cut_width / 2
    every = [((s.cut_x - turn * half, y), turn) for turn in (1.0, -1.0) for y in heights]
    return max(every, key=lambda one: math.dist(one[0], worst))


def _grip(x: float, y: float, radius: float, handle: Handle) -> Group:
    hit = rectangle(x - REACH, y - REACH, 2 * REACH, 2 * REACH, "hit")
    return Group((hit, Circle(x, y, radius, "grip")), handle)


def _way(plan, view: View, path: str, axis: str, turn: float, label: str, upright=None) -> Handle:
    """One way of a grip; up the paper is across the slab, so its steps count backwards."""
    quantity = input_at(plan.structure, path).declared.quantity
    keys = scale(quantity, view.system)
    return handle_of(
        plan.structure, path, label, view, axis, turn / plan.scale, turn * keys.step * keys.factor,
        upright,
    )  # fmt: skip


def handle_of(structure, path, label, view: View, axis, per_unit, step, upright=None) -> Handle:
    """Make the handle of an input of a structure.

    Parameters
    ----------
    structure : CornerSlab
    path, label : str
        The input, and what the grip is called.
    view : View
    axis : str
        ``"x"`` or ``"y"``.
    per_unit, step : float
        Change for one drawing unit, and for one press of a key [mm].
    upright : Handle, optional
        What the grip does up and down.
    """
    found = input_at(structure, path)
    text = shown(found.value, found.declared.quantity, view.system)
    return Handle(
        path, label, text, axis, per_unit, found.value, found.low, found.high, step, upright
    )
