"""A piece of the strip seen from the side, with its bars as they lie."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.drawing.choice_torn import torn
from crackkit.drawing.frames import Along, Frame
from crackkit.drawing.shapes import Circle, Polygon, Polyline
from crackkit.structures.strip_stress import BENT, effective_depth

TALL = (44.0, 84.0)  # least and largest drawn depth
LEAST_DOT, LEAST_LINE = 2.4, 2.2


@dataclass(frozen=True)
class Piece:
    """The way from (x, z) in mm to the drawing, and what is drawn of the strip itself."""

    structure: object
    frame: Frame
    top: float

    @cached_property
    def along(self) -> Along:
        """The way along the strip."""
        return Along(self.frame.left + 12, self.frame.right - 12, self.structure.length)

    @cached_property
    def tall(self) -> float:
        """Drawn depth."""
        return float(np.clip(self.structure.depth * self.along.scale, *TALL))

    @property
    def down(self) -> float:
        """Drawing units for one mm of depth."""
        return self.tall / self.structure.depth

    @property
    def bottom(self) -> float:
        """Height of the lower face."""
        return self.top + self.tall

    def y(self, depth: float) -> float:
        """Drawing coordinate of a depth [mm]."""
        return self.top + depth * self.down

    def points(self, path: np.ndarray) -> np.ndarray:
        """Drawing points of (x, z) [mm]; the last axis holds the pair."""
        return np.stack([self.along(path[..., 0]), self.y(path[..., 1])], axis=-1)

    @property
    def block(self) -> Polygon:
        """The concrete, torn off at both ends."""
        left, right = self.along.left, self.along.right
        return torn(Frame(left, self.top, right - left, self.tall), "concrete", "lr")

    def bars(self) -> list:
        """Main bars as lines, bars across as dots."""
        lines = [
            Polyline(np.array([(self.along.left, y), (self.along.right, y)]), "bar", thick)
            for y, thick in self._main()
        ]
        return [*lines, *self._across()]

    def _main(self) -> list[tuple[float, float]]:
        bars = self.structure.main_bars()
        thick = max(bars.diameter * self.down, LEAST_LINE)
        return [(self.y(z), thick) for z in layers(self.structure, bars)]

    def _across(self) -> list[Circle]:
        bars = self.structure.cross_bars()
        if bars is None:
            return []
        half, radius = self.structure.length / 2, max(bars.diameter / 2 * self.down, LEAST_DOT)
        count = int((half - radius) // bars.spacing)
        places = half + bars.spacing * np.arange(-count, count + 1)
        return [
            Circle(x, self.y(z), radius, "bar_dot")
            for z in layers(self.structure, bars)
            for x in self.along(places).tolist()
        ]


def layers(structure, bars) -> list[float]:
    """Depths of the layers of bars of one direction [mm]."""
    if bars.faces == 0.5:
        return [_middle_layer(structure, bars)]
    low = float(effective_depth(structure.strip, bars))
    return [low] if structure.action == BENT else [structure.depth - low, low]


def _middle_layer(structure, bars) -> float:
    """Depth of one layer at mid-depth: bars that cross lie one on the other [mm]."""
    main, across = structure.main_bars(), structure.cross_bars()
    if across is None:
        return structure.depth / 2
    lift = (main.diameter + across.diameter) / 4
    below = bars.cover == min(main.cover, across.cover)
    return structure.depth / 2 + (lift if below else -lift)
