"""Where a slab is stretched most, and the line along which it breaks, on its plan."""

import numpy as np

from crackkit.drawing.cracks_drawn import noise
from crackkit.drawing.curled_plan import CurledPlan
from crackkit.drawing.shapes import Polygons, Polyline

POINTS = 28  # along the drawn crack
RAGGED, ROUGH = 4.0, 0.5  # how far it strays, and how much its width does
WIDE = (3.2, 6.0)  # drawn width where bars hold it, and where nothing does
RING = 9.0


def break_shapes(line, middle: np.ndarray, plan: CurledPlan) -> list:
    """Draw the crack ragged, light below dark.

    Parameters
    ----------
    line : BreakLine or None
    middle : ndarray
        Its `drawn_line`.
    plan : CurledPlan
    """
    if line is None:
        return []
    way = np.gradient(middle, axis=0)
    normal = np.column_stack([-way[:, 1], way[:, 0]])
    normal /= np.maximum(np.hypot(normal[:, 0], normal[:, 1]), 1e-9)[:, None]
    inside = np.ones(POINTS)
    inside[[0, -1]] = 0.0  # it ends where it was found to end
    middle = middle + normal * (RAGGED * noise(1, POINTS, 3)[0] * inside)[:, None]
    half = WIDE[line.width is None] / 2 * (1.0 + ROUGH * noise(1, POINTS, 4)[0])
    reach = normal * half[:, None]
    outline = np.concatenate([middle - reach, (middle + reach)[::-1]])
    bounds = (plan.left, plan.top), (plan.right, plan.bottom)
    return [
        Polyline(np.clip(middle, *bounds)[1:-1], "symbol", WIDE[line.width is None] + 4.0),
        Polygons(np.clip(outline, *bounds)[None], "crack_gap"),
    ]


def drawn_line(line, plan: CurledPlan) -> np.ndarray:
    """Points on the paper, evenly apart along the line; none without one."""
    if line is None:
        return np.zeros((0, 2))
    points = plan(line.points)
    steps = np.hypot(*np.diff(points, axis=0).T)
    way = np.concatenate([[0.0], np.cumsum(steps)])
    at = np.linspace(0.0, way[-1], POINTS)
    return np.column_stack([np.interp(at, way, points[:, k]) for k in (0, 1)])


def peak_ring(face, plan: CurledPlan) -> list[Polyline]:
    """Draw a ring where a face is stretched most, light below dark."""
    turn = np.linspace(0.0, 2 * np.pi, 25)
    ring = ring_place(face, plan) + RING * np.column_stack([np.cos(turn), np.sin(turn)])
    return [Polyline(ring, "symbol", 4.6), Polyline(ring, "limit", 2.0)]


def ring_place(face, plan: CurledPlan) -> np.ndarray:
    """Give its middle on the paper, so that the ring stays on the slab and its joints."""
    return plan(face.at)
