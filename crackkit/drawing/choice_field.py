"""The field of all bars: a lane for each size, thin below, thick above; spacing runs across."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.drawing.choice_kinds import FINE, ChoiceKinds
from crackkit.drawing.frames import Frame
from crackkit.structures.control_ranges import is_slab

LEFT, RIGHT = 62.0, 14.0  # for the names of the sizes; for half of the last number
PARTED = 3.0  # between two lanes


@dataclass(frozen=True)
class ChoiceField:
    """The way from size and spacing to the drawing, and what is to be said of each place."""

    kinds: ChoiceKinds
    frame: Frame

    @property
    def outcome(self):
        """What is drawn."""
        return self.kinds.outcome

    @cached_property
    def chart(self):
        """Widths over sizes and spacings."""
        return self.kinds.chart

    @property
    def left(self) -> float:
        """Left end of the lanes."""
        return self.frame.left + LEFT

    @property
    def right(self) -> float:
        """Right end of the lanes."""
        return self.frame.right - RIGHT

    @cached_property
    def pitch(self) -> float:
        """From lane to lane."""
        return self.frame.height / len(self.chart.sizes)

    def x(self, spacing):
        """Drawing coordinate of a spacing [mm], or of many."""
        first, last = self.chart.spacings[0], self.chart.spacings[-1]
        return self.left + (spacing - first) / (last - first) * (self.right - self.left)

    def lane(self, k: int) -> tuple[float, float]:
        """Upper and lower edge of lane k, counted from the thinnest bars."""
        low = self.frame.bottom - self.pitch * k
        return low - self.pitch + PARTED / 2, low - PARTED / 2

    def middle(self, k: int) -> float:
        """Height of the middle of lane k."""
        return self.frame.bottom - self.pitch * (k + 0.5)

    @cached_property
    def runs(self) -> list[tuple[int, int, float, float]]:
        """Stretches of one kind: (kind, lane, left, right) on the drawing."""
        spacings = self.kinds.spacings
        edges = self.x((spacings[1:] + spacings[:-1]) / 2)
        found = []
        for k, row in enumerate(self.kinds.said):
            turns = np.flatnonzero(np.diff(row))
            ends = [self.left, *edges[turns].tolist(), self.right]
            kinds = row[np.append(turns, FINE - 1)].tolist()
            found += [(kinds[i], k, ends[i], ends[i + 1]) for i in range(len(kinds))]
        return found

    @property
    def spacing(self) -> float:
        """Spacing of the chosen bars [mm]; of a beam its width for each bar."""
        structure = self.outcome.structure
        return structure.spacing if is_slab(structure) else structure.width / structure.number

    @cached_property
    def chosen(self) -> int | None:
        """Lane of the chosen size; None where it is thicker than all of them."""
        sizes, size = self.chart.sizes, self.outcome.structure.size
        return sizes.index(size) if size in sizes else None
