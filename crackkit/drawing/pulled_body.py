"""A pulled member seen from the side: concrete, bars that stick out or ends that are gripped."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.drawing.footings import BLOCK, hatched_block
from crackkit.drawing.frames import Along
from crackkit.drawing.shapes import Polygon, Polyline, rectangle
from crackkit.structures import tie_bars

STUB = 11.0  # how far bars stick out on the drawing
PAST = 7.0  # how far a grip reaches past the member above and below
TORN = np.array([0.0, 3.4, -2.6, 2.2, -3.6, 1.8, -1.2, 2.8, 0.0])  # of a face that was torn


@dataclass(frozen=True)
class PulledBody:
    """The way from the member to the paper; `top` and `depth` are those of the drawing."""

    structure: object
    along: Along
    top: float
    depth: float

    @property
    def own_depth(self) -> float:
        """Depth of the member itself [mm]."""
        return self.structure.depth

    @property
    def bottom(self) -> float:
        """Height of the bottom face."""
        return self.top + self.depth

    @cached_property
    def rows(self) -> list[float]:
        """Heights of the bars on the drawing."""
        s = self.structure
        across = tie_bars.places(s.number, s.bar, s.width, s.depth, s.cover)
        return [self.top + z * self.depth / s.depth for z in sorted({z for _y, z in across})]

    @property
    def thick(self) -> float:
        """Drawn thickness of a bar."""
        return min(max(self.structure.bar.diameter * self.depth / self.structure.depth, 2.0), 5.0)

    @property
    def stub(self) -> float:
        """How far bars stick out on the drawing."""
        s = self.structure
        return STUB if s.number and s.ends == "bars" else 0.0

    @property
    def hold(self) -> float:
        """How far what is taken hold of reaches past each end on the drawing."""
        return self.stub or BLOCK

    def bars(self, left: float, right: float) -> list[Polyline]:
        """Draw all bars from one place on the drawing to another."""
        return [Polyline(np.array([(left, y), (right, y)]), "bar", self.thick) for y in self.rows]

    def whole_bars(self) -> list[Polyline]:
        """Draw the bars as they lie in a member that is whole."""
        return self.bars(self.along.left - self.stub, self.along.right + self.stub)

    def grips(self, left: float, right: float) -> list:
        """Draw what holds the ends where they are gripped: at these places on the drawing."""
        if self.stub:
            return []
        top, bottom = self.top - PAST, self.bottom + PAST
        return [
            *hatched_block(left - BLOCK, left, top, bottom),
            *hatched_block(right, right + BLOCK, top, bottom),
        ]

    def block(self, left: float, right: float, role: str = "concrete") -> Polygon:
        """Draw a piece of concrete between two places on the drawing."""
        return rectangle(left, self.top, right - left, self.depth, role)

    def halves(self, at: float, apart: float) -> list[Polygon]:
        """Draw both parts of a torn member; its crack was at `at` [drawing units]."""
        y = np.linspace(self.top, self.bottom, TORN.size)
        face = np.column_stack([at + TORN, y])
        left, right = self.along.left, self.along.right
        ends = [(x, y) for x in (left, right) for y in (self.bottom, self.top)]
        return [
            Polygon(np.concatenate([face, ends[:2]]) - (apart, 0.0), "concrete"),
            Polygon(np.concatenate([face, ends[2:]]) + (apart, 0.0), "concrete"),
        ]

    def torn_bars(self, at: float, apart: float) -> list[Polyline]:
        """Draw the bars of a torn member: both ends of each, with nothing between."""
        left = self.bars(self.along.left - self.stub - apart, at - apart + 4.0)
        return [*left, *self.bars(at + apart - 4.0, self.along.right + self.stub + apart)]
