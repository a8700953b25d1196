"""A slab with inside corners seen from above, or a wall from its face, to scale."""

import numpy as np

from crackkit.drawing.corner_sides import BLOCK
from crackkit.drawing.footings import hatched_block
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Polygon, Polyline
from crackkit.drawing.slab_plan import SlabPlan, place_in, plan_dimensions

COLUMN = 0.44  # side of a column over that of the box-out round it
PAST = 2.0  # how far paper reaches over the edge of a map


class CornerPlan(SlabPlan):
    """The way from the slab to the paper, and what of it is drawn."""

    def concrete(self, loops) -> list[Polygon]:
        """Draw the concrete, and paper where there is a hole in it."""
        outside, *holes = (self(loop) for loop in loops)
        body = [Polygon(outside, "concrete"), *(Polygon(hole, "paper") for hole in holes)]
        return [*body, *self.edges(loops)]

    def edges(self, loops, role: str = "outline") -> list[Polyline]:
        """Draw the edge of the concrete."""
        return [Polyline(self(_closed(loop)), role) for loop in loops]

    def beside(self, loops) -> list[Polygon]:
        """Lay paper over all that is not concrete: over a map, whose edge is in steps."""
        outside, *holes = (self(loop) for loop in loops)
        cover = [] if len(outside) == 4 else [_around(outside, self)]
        return [*cover, *(Polygon(hole, "paper") for hole in holes)]

    def column(self) -> list:
        """Draw the column that a box-out goes round."""
        s = self.structure
        if s.box_out <= 0:
            return []
        x, y = self((s.cut_x, s.cut_y)).tolist()
        half = COLUMN * s.box_out * self.scale / 2
        return hatched_block(x - half, x + half, y - half, y + half)

    def dimensions(self, view: View, out: float = BLOCK) -> list:
        """Write length and width beside it, `out` from its edges."""
        return plan_dimensions(self, view, out + 3.0, out + 3.0)


def _closed(loop: np.ndarray) -> np.ndarray:
    return np.concatenate([loop, loop[:1]])


def _around(outside: np.ndarray, plan: CornerPlan) -> Polygon:
    """Everything in a box round a loop that is not within it, as one outline with a slit."""
    left, right = plan.left - PAST, plan.right + PAST
    top, bottom = plan.top - PAST, plan.bottom + PAST
    # the slit goes from the corner of the box to the nearest point: there is no map below it
    first = int(np.hypot(*(outside - (left, bottom)).T).argmin())
    ring = _closed(np.roll(outside, -first, axis=0))
    box = np.array(
        [(left, bottom), (left, top), (right, top), (right, bottom), (left, bottom)], dtype=float
    )
    # the two must run opposite ways, or the loop would be filled as well
    x, y = ring.T
    turns = float(np.sum(x[:-1] * y[1:] - x[1:] * y[:-1]))
    return Polygon(np.concatenate([box, ring if turns < 0 else ring[::-1]]), "paper")


def plan_in(structure, room: Frame, aside: float = 0.5) -> CornerPlan:
    """Lay a slab into a room, as large as it fits.

    Parameters
    ----------
    structure : CornerSlab
    room : Frame
        For the slab itself; what holds it and dimensions stand around it.
    aside : float
        Share of the width that is left over that lies to the left of it [-].
    """
    return CornerPlan(structure, *place_in(structure, room, aside))
