"""Where the cross-section of the strip lies on the paper: near the face, so that cover shows."""

from dataclasses import dataclass
from functools import cached_property

from crackkit.drawing.choice_piece import layers
from crackkit.drawing.frames import Frame
from crackkit.structures.control_ranges import is_slab

LEFT, RIGHT = 84.0, 112.0  # for the words on both sides
TOP, TALL = 38.0, 172.0  # from the frame to the concrete; largest drawn depth
BAYS = 2.05  # distances of bars that are shown at the least
COVERS, LEAST = 4.5, 160.0  # depth shown: so many covers, at the least so much [mm]
MIDDLE = 0.62  # share of the depth that shows bars at mid-depth


@dataclass(frozen=True)
class Cut:
    """The way from the section [mm] to the drawing; heights are told from the lower face."""

    structure: object
    frame: Frame

    @cached_property
    def shown(self) -> float:
        """How much of the depth is drawn [mm]."""
        structure = self.structure
        wanted = max(COVERS * self.main.cover, LEAST)
        if self.main.faces == 0.5:
            across = structure.cross_bars()
            thick = self.main.diameter + (across.diameter if across else 0.0)
            wanted = max(wanted, MIDDLE * structure.depth, structure.depth / 2 + thick)
        return structure.depth if wanted > 0.7 * structure.depth else wanted

    @property
    def whole(self) -> bool:
        """Whether the whole depth is drawn."""
        return self.shown == self.structure.depth

    @cached_property
    def main(self):
        """Main bars as they were ordered."""
        return self.structure.main_bars()

    @cached_property
    def room(self) -> float:
        """Width between the words at both sides."""
        return self.frame.width - LEFT - RIGHT

    @cached_property
    def scale(self) -> float:
        """Drawing units for one mm."""
        if is_slab(self.structure):
            across = BAYS * self.main.spacing
        else:
            across = self.structure.width
        return min(TALL / self.shown, self.room / across)

    @cached_property
    def wide(self) -> float:
        """Drawn width."""
        if is_slab(self.structure):
            return self.room
        return self.structure.width * self.scale

    @property
    def left(self) -> float:
        """Left edge of the concrete."""
        return self.frame.left + LEFT + (self.room - self.wide) / 2

    @property
    def right(self) -> float:
        """Right edge of the concrete."""
        return self.left + self.wide

    @property
    def tall(self) -> float:
        """Drawn depth."""
        return self.shown * self.scale

    @property
    def top(self) -> float:
        """Height of the upper edge."""
        return self.frame.top + TOP + (TALL - self.tall) / 2

    @property
    def face(self) -> float:
        """Height of the lower face."""
        return self.top + self.tall

    def y(self, over: float) -> float:
        """Drawing coordinate of a distance from the lower face [mm]."""
        return self.face - over * self.scale

    def heights(self, bars) -> list[float]:
        """Drawing coordinates of the layers of bars that are shown, none of them cut."""
        depth = self.structure.depth
        over = [depth - z for z in layers(self.structure, bars)]
        return [self.y(z) for z in over if self.whole or z + bars.diameter / 2 <= self.shown]

    @cached_property
    def places(self) -> list[float]:
        """Drawing coordinates of the main bars across the section."""
        bars, structure = self.main, self.structure
        middle, step = (self.left + self.right) / 2, bars.spacing * self.scale
        if is_slab(structure):
            half = self.wide / 2 - bars.diameter / 2 * self.scale
            count = int(half / step + 0.5)  # on either side, none of them cut
            return [middle + step * (k + 0.5) for k in range(-count, count)]
        edge = self.left + (structure.cover + bars.diameter / 2) * self.scale
        return [edge + step * k for k in range(structure.number)]

    @property
    def bay(self) -> tuple[float, float] | None:
        """The two bars in the middle, between which is measured; None for one bar."""
        if len(self.places) < 2:
            return None
        first = len(self.places) // 2 - 1
        return self.places[first], self.places[first + 1]
