"""The loads on the plan of a slab: feet to scale, each with a grip that goes all over the plan."""

import numpy as np

from crackkit.drawing.choice_chips import chip
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Group, Handle, Polygon, rectangle
from crackkit.structures.fields import part_input
from crackkit.units import shown
from crackkit.units.quantities import scale
from crackkit.words import _

LEAST = 8.0  # drawn side of the smallest foot
DISC, DOT, REACH = 10.0, 3.0, 16.0  # radius of a grip, of its dot; half of what a finger may touch
ROLE = "load_word"
CLEAR = 4.0  # from a grip to its words
RIM = 9.0  # from the middle of words to the edge of the slab, at least


def wheels(structure, plan: CurledPlan, view: View) -> list:
    """Draw the loads: discs with their feet; on a live page they can be dragged all over."""
    return [
        shape
        for k, load in enumerate(structure.loads)
        for shape in _wheel(structure, k, load, plan, view)
    ]


def _wheel(structure, k: int, load, plan: CurledPlan, view: View) -> list:
    """A disc with the foot in it, or on the foot where that is larger."""
    x, y = plan((load.x, load.y)).tolist()
    foot = Polygon(plan(foot_corners(load, structure, LEAST / plan.scale)), _look(load))
    disc = Circle(x, y, DISC, "grip" if view.live else "support")
    small = load.side * plan.scale < 1.3 * DISC
    drawn = (disc, foot) if small else (foot, disc, Circle(x, y, DOT, _look(load)))
    if not view.live:
        return list(drawn)
    hit = rectangle(x - REACH, y - REACH, 2 * REACH, 2 * REACH, "hit")
    return [Group((hit, *drawn), _handle(structure, k, plan, view))]


def _look(load) -> str:
    """Role of a foot: empty where nothing presses."""
    return "badge" if load.force > 0 else "outline"


def foot_corners(load, structure, least: float = 0.0) -> np.ndarray:
    """Corners (x, y) of what a load presses on [mm]: as much of its foot as stands on the slab.

    Parameters
    ----------
    load : WheelLoad
    structure : CurledSlab
    least : float
        Side of the smallest foot that is drawn [mm].
    """
    half = max(load.side, least) / 2
    x = np.clip((load.x - half, load.x + half), 0.0, structure.length)
    y = np.clip((load.y - half, load.y + half), 0.0, structure.width)
    return np.array([(x[0], y[0]), (x[1], y[0]), (x[1], y[1]), (x[0], y[1])])


def forces(structure, plan: CurledPlan, taken: np.ndarray, view: View) -> tuple[list, np.ndarray]:
    """Write how much presses beside each load, where that hides nothing.

    Parameters
    ----------
    structure : CurledSlab
    plan : CurledPlan
    taken : ndarray, shape (n, 2)
        Points on the paper that stay clear.
    view : View

    Returns
    -------
    shapes : list
    taken : ndarray
        With the places of these words.
    """
    shapes = []
    for load in structure.loads:
        words = shown(load.force, "force", view.system)
        half = width_of(words, ROLE) / 2 + 2.0
        for place in _beside(load, plan, half) if load.force > 0 else ():
            if _free(place, half, taken, plan):
                x, y = place
                shapes += chip(x, y + 4.5, words, ROLE)
                taken = np.concatenate([taken, [(x - half, y), (x, y), (x + half, y)]])
                break
    return shapes, taken


def _beside(load, plan: CurledPlan, half: float) -> list[tuple[float, float]]:
    """Places for words beside a load, the best first."""
    x, y = plan((load.x, load.y)).tolist()
    away = max(DISC, load.side * plan.scale / 2) + CLEAR
    level, upright = away + half, away + 8.0
    row = min(max(y, plan.top + RIM), plan.bottom - RIM)
    return [(x - level, row), (x, y + upright), (x, y - upright), (x + level, row)]


def _free(place, half: float, taken: np.ndarray, plan: CurledPlan) -> bool:
    """Tell whether words fit on the slab there, and hide none of these points."""
    x, y = place
    inside = plan.left <= x - half and x + half <= plan.right
    inside &= plan.top + RIM <= y <= plan.bottom - RIM
    away = np.abs(taken - place)
    return inside and bool(((away[:, 0] > half + 10.0) | (away[:, 1] > 19.0)).all())


def _handle(structure, k: int, plan: CurledPlan, view: View) -> Handle:
    """Along and across in one grip; across runs up the paper, so its steps count backwards."""
    many = len(structure.loads) > 1
    along = _("wheel {n}, along") if many else _("wheel, along")
    across = _("wheel {n}, across") if many else _("wheel, across")
    upright = _way(structure, k, "y", across, plan, view)
    return _way(structure, k, "x", along, plan, view, upright)


def _way(structure, k: int, axis: str, label, plan, view, upright=None) -> Handle:
    load, path, keys = structure.loads[k], f"loads.{k}.{axis}", scale("length", view.system)
    found, turn = part_input(structure, load, path), 1.0 if axis == "x" else -1.0
    return Handle(
        path=path,
        label=label.format(n=k + 1),
        text=place_told(load, view),
        axis=axis,
        per_unit=turn / plan.scale,
        value=found.value,
        low=found.low,
        high=found.high,
        step=turn * keys.step * keys.factor,
        upright=upright,
    )


def place_told(load, view: View) -> str:
    """Say where a load stands: along, across."""
    return ", ".join(shown(way, "length", view.system) for way in (load.x, load.y))
