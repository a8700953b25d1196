"""A slab on the ground seen from the side: concrete, bars, saw cuts, what holds it."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.footings import BLOCK, hatched_block
from crackkit.drawing.frames import Along
from crackkit.drawing.ground_base import DEEP, base_shapes
from crackkit.drawing.shapes import Lines, Polygon, Polyline, rectangle

PAST = 10.0  # how far a wall reaches past the top face
POST, TALL = 6.0, 18.0  # half width of a column, and its height over the slab
DEPTHS = (30.0, 50.0)  # least and largest drawn thickness
FULL = 220.0  # mm of thickness that are drawn with the largest


@dataclass(frozen=True)
class GroundBody:
    """The way from the slab to the paper; `top` and `depth` are those of the drawing."""

    structure: object
    along: Along
    top: float
    depth: float

    @property
    def own_depth(self) -> float:
        """Thickness of the slab itself [mm]."""
        return self.structure.thickness

    @property
    def bottom(self) -> float:
        """Height of the underside."""
        return self.top + self.depth

    @property
    def under(self) -> float:
        """Height of the lower edge of the base."""
        return self.bottom + DEEP

    def concrete(self, role: str = "concrete") -> Polygon:
        """Draw the slab as it was cast."""
        wide = self.along.right - self.along.left
        return rectangle(self.along.left, self.top, wide, self.depth, role)

    def base(self) -> list:
        """Draw what it lies on."""
        return base_shapes(self.structure.base, self.along.left, self.along.right, self.bottom)

    def holds(self) -> list:
        """Draw walls at ends that are held, and a column in the middle."""
        s, shapes = self.structure, []
        high, low = self.top - PAST, self.under
        left, right = self.along.left, self.along.right
        if s.left > 0:
            shapes += hatched_block(left - BLOCK, left, high, low)
        if s.right > 0:
            shapes += hatched_block(right, right + BLOCK, high, low)
        return [*shapes, *self.column()]

    def column(self) -> list:
        """Draw the column that holds the middle."""
        if self.structure.middle <= 0:
            return []
        x = (self.along.left + self.along.right) / 2
        return hatched_block(x - POST, x + POST, self.top - TALL, self.bottom)

    def cuts(self) -> list:
        """Draw the saw cuts as slots from the top."""
        s = self.structure
        if not s.joint_places:
            return []
        x = self.along(np.array(s.joint_places))
        ends = np.empty((x.size, 2, 2))
        ends[:, :, 0] = x[:, None]
        ends[:, 0, 1], ends[:, 1, 1] = self.top, self.top + s.cut * self.depth
        return [Lines(ends, "limit")]

    @property
    def level(self) -> float:
        """Height of the bars on the drawing."""
        s = self.structure
        if s.place == "middle":
            return self.top + self.depth / 2
        if s.place == "ground":
            return self.bottom - 1.5
        share = (s.cover + s.bar.diameter / 2) / s.thickness
        return self.top + share * self.depth

    def bars(self) -> list:
        """Draw the bars along the slab; cut at joints where they are."""
        s = self.structure
        if s.bar is None:
            return []
        gap = 5.0 if s.joint_places and s.through == "cut" else 0.0
        ends = self.along(np.array([0.0, *(s.joint_places if gap else ()), s.length]))
        role = "bar_slack" if s.place == "ground" else "bar"
        return [
            Polyline(
                np.array([(a + max(gap, 4.0), self.level), (b - max(gap, 4.0), self.level)]),
                role,
                2.6,
            )
            for a, b in zip(ends, ends[1:], strict=False)
        ]


def drawn_depth(structure) -> float:
    """Thickness of the slab on the drawing: thicker ones are drawn thicker."""
    return min(max(DEPTHS[1] * structure.thickness / FULL, DEPTHS[0]), DEPTHS[1])
