"""Words on the plan of a slab: where there is air below it, and where it rests."""

import numpy as np

from crackkit.drawing.choice_chips import chip
from crackkit.drawing.curled_grid import at_grid
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.labels import width_of
from crackkit.words import _

CLEAR = 18.0  # between words and what they must not hide
TALL = 8.0  # half the height of a chip
THIN = 3  # so many pieces of the edge are looked at once
GRID = 9  # places that are tried, each way
ROLE = "label_bold"


def chips(outcome, plan: CurledPlan, edge: np.ndarray, taken: np.ndarray) -> list:
    """Write them where they hide neither loads nor the crack nor the edge of the air.

    Parameters
    ----------
    outcome : Outcome
    plan : CurledPlan
    edge : ndarray, shape (n, 2, 2)
        The edge of the air on the paper.
    taken : ndarray, shape (k, 2)
        Points on the paper that stay clear.
    """
    state, shapes = outcome.curled, []
    edge = edge[::THIN, 0]
    for words, sign in ((_("air below"), 1.0), (_("rests on the ground"), -1.0)):
        place = _place(state, plan, words, sign, edge, taken)
        if place is not None:
            x, y = place
            shapes += chip(x, y + 4.5, words, ROLE)
            half = width_of(words, ROLE) / 2
            blocked = np.array([(x + dx, y) for dx in (-half, 0.0, half)])
            taken = np.concatenate([taken, blocked])
    return shapes


def _place(state, plan: CurledPlan, words: str, sign: float, edge, taken):
    """The best place for the words, or None: inside the plan, on the right side of the edge."""
    half = width_of(words, ROLE) / 2 + 4.0
    if plan.right - plan.left < 2 * half:
        return None
    x = np.linspace(plan.left + half, plan.right - half, GRID)
    y = np.linspace(plan.top + TALL + 5.0, plan.bottom - TALL - 5.0, GRID)
    columns, rows = (x - plan.left) / plan.scale, (plan.bottom - y[::-1]) / plan.scale
    lift = at_grid(state.lift, state.x, state.y, columns, rows)[::-1].ravel()
    tried = np.empty((GRID, GRID, 2))
    tried[..., 0], tried[..., 1] = x, y[:, None]
    side = (lift > 0) == (sign > 0)
    tried, lift = tried.reshape(-1, 2)[side], lift[side]
    free = _free(tried, taken, half + CLEAR, TALL + CLEAR)
    tried, lift = tried[free], lift[free]
    free = _free(tried, edge, half, TALL + 3.0)
    if not free.any():
        return None
    return tried[np.where(free, _worth(tried, plan, lift, sign), -np.inf).argmax()].tolist()


def _free(tried: np.ndarray, points: np.ndarray, wide: float, tall: float) -> np.ndarray:
    """Tell which of the places keep so far from every point."""
    near = np.abs(tried[:, 0, None] - points[:, 0]) <= wide
    near &= np.abs(tried[:, 1, None] - points[:, 1]) <= tall
    return ~near.any(axis=1)


def _worth(tried: np.ndarray, plan: CurledPlan, lift: np.ndarray, sign: float) -> np.ndarray:
    """Air is named where it is highest, the rest near the middle of the slab."""
    if sign > 0:
        return lift
    middle = np.array([(plan.left + plan.right) / 2, (plan.top + plan.bottom) / 2])
    return -np.hypot(*(tried - middle).T)
