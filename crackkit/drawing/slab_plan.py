"""A slab seen from above at its true proportions: its place on the paper, and its dimensions."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.dimension_line import dimension_line
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Text, line
from crackkit.units import shown

DOWN = 30.0  # from the near side to the dimension


@dataclass(frozen=True)
class SlabPlan:
    """The way from the slab to the paper; its near side is below.

    Attributes
    ----------
    structure
        Has a `length`, to the right, and a `width`, upward [mm].
    left, bottom : float
        Where its near left corner lies [drawing units].
    scale : float
        Drawing units for one mm.
    """

    structure: object
    left: float
    bottom: float
    scale: float

    @property
    def right(self) -> float:
        """Edge at the right end."""
        return self.left + self.scale * self.structure.length

    @property
    def top(self) -> float:
        """Edge of the far side."""
        return self.bottom - self.scale * self.structure.width

    def __call__(self, points) -> np.ndarray:
        """Bring points (x, y) [mm] onto the paper; any shape that ends with 2."""
        return (self.left, self.bottom) + np.asarray(points) * (self.scale, -self.scale)


def place_in(structure, room: Frame, aside: float) -> tuple[float, float, float]:
    """Give left, bottom and scale of a slab that is laid into a room, as large as it fits.

    Parameters
    ----------
    structure
        Has a `length` and a `width` [mm].
    room : Frame
    aside : float
        Share of the width that is left over that lies to the left of it [-].
    """
    scale = min(room.width / structure.length, room.height / structure.width)
    left = room.left + aside * (room.width - scale * structure.length)
    bottom = room.bottom - (room.height - scale * structure.width) / 2
    return left, bottom, scale


def plan_dimensions(plan: SlabPlan, view: View, beside: float, below: float) -> list:
    """Write length and width of a slab beside it.

    Parameters
    ----------
    plan : SlabPlan
    view : View
    beside, below : float
        How far they keep from its left edge and from its near one [drawing units].
    """
    s, system = plan.structure, view.system
    words = shown(s.length, "length", system)
    y, edge = plan.bottom + DOWN, plan.left - beside
    middle = (plan.top + plan.bottom) / 2
    return [
        *dimension_line(plan.left, plan.right, y, plan.bottom + below, words),
        Text(edge - 6.0, middle + 4.5, shown(s.width, "length", system), "label", "end"),
        line(edge - 5.0, plan.top, edge - 5.0, middle - 11.0, "leader"),
        line(edge - 5.0, middle + 11.0, edge - 5.0, plan.bottom, "leader"),
    ]
