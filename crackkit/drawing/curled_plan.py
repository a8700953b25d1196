"""A slab on the ground seen from above, to scale: its near side is below, its neighbours around."""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Lines, Polygon, Polygons, rectangle
from crackkit.drawing.slab_plan import SlabPlan, place_in, plan_dimensions

GAP, STRIP = 3.0, 9.0  # drawn width of a joint, and of what is shown of the neighbours
DOWELS = 26.0  # from dowel to dowel


class CurledPlan(SlabPlan):
    """The way from the slab to the paper, and what of it is drawn."""

    def concrete(self, role: str = "concrete") -> Polygon:
        """Draw the slab."""
        wide, tall = self.right - self.left, self.bottom - self.top
        return rectangle(self.left, self.top, wide, tall, role)

    def neighbours(self) -> list:
        """Draw strips of the slabs around it, with dowels where joints pass something on."""
        near, far = GAP, GAP + STRIP
        left, right, top, bottom = self.left, self.right, self.top, self.bottom
        boxes = (
            (left, top - far, right, top - near),
            (left, bottom + near, right, bottom + far),
            (left - far, top, left - near, bottom),
            (right + near, top, right + far, bottom),
        )
        corners = [[(a, b), (c, b), (c, d), (a, d)] for a, b, c, d in boxes]
        strips = Polygons(np.array(corners), "wall")
        return [strips, *self._dowels()]

    def _dowels(self) -> list[Lines]:
        if self.structure.transfer <= 0:
            return []
        reach = GAP / 2 + 6.0
        x = np.arange(self.left + DOWELS / 2, self.right, DOWELS)
        y = np.arange(self.top + DOWELS / 2, self.bottom, DOWELS)
        ways = [_across(x, edge, reach) for edge in (self.top - GAP / 2, self.bottom + GAP / 2)]
        sides = [_across(y, edge, reach) for edge in (self.left - GAP / 2, self.right + GAP / 2)]
        return [Lines(np.concatenate([*ways, *(one[..., ::-1] for one in sides)]), "bears")]

    def dimensions(self, view: View) -> list:
        """Write length and width beside it."""
        return plan_dimensions(self, view, GAP + STRIP, GAP + STRIP + 3.0)


def _across(places: np.ndarray, edge: float, reach: float) -> np.ndarray:
    lines = np.empty((places.size, 2, 2))
    lines[..., 0] = places[:, None]
    lines[:, 0, 1], lines[:, 1, 1] = edge - reach, edge + reach
    return lines


def plan_in(structure, room: Frame, aside: float = 0.5) -> CurledPlan:
    """Lay a slab into a room, as large as it fits.

    Parameters
    ----------
    structure : CurledSlab
    room : Frame
        For the slab itself; neighbours and dimensions stand around it.
    aside : float
        Share of the width that is left over that lies to the left of it [-].
    """
    return CurledPlan(structure, *place_in(structure, room, aside))
