"""What is to be said of all bars under the same load: tight, too wide, not to be laid."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

TIGHT, WIDE, GAPING, YIELDS, CLOSE, FAR = range(6)
HALF_AGAIN = 1.5  # times the limit: beyond it no scatter excuses the width
FINE = 301  # places along a lane


@dataclass(frozen=True)
class ChoiceKinds:
    """Widths of all sizes at many spacings, and the kind of each."""

    outcome: object

    @property
    def chart(self):
        """Widths over sizes and spacings."""
        return self.outcome.control.chart

    @cached_property
    def spacings(self) -> np.ndarray:
        """Places along a lane [mm]."""
        return np.linspace(self.chart.spacings[0], self.chart.spacings[-1], FINE)

    @cached_property
    def widths(self) -> np.ndarray:
        """Crack width of each size at each place [mm]."""
        return np.array(
            [np.interp(self.spacings, self.chart.spacings, w) for w in self.chart.widths]
        )

    @cached_property
    def said(self) -> np.ndarray:
        """What is to be said of each size at each place."""
        limit, s = self.outcome.verdict.limit.width, self.spacings
        near = np.abs(s[:, None] - self.chart.spacings).argmin(axis=1)
        found = (self.widths > limit).astype(int) + (self.widths > HALF_AGAIN * limit)
        found = np.where(self.chart.idle[:, near], np.maximum(found, WIDE), found)
        # bars so deep that no rule gives a width hold nothing
        found[self.chart.yields[:, near] | np.isnan(self.widths)] = YIELDS
        found[~self.chart.buildable[:, near]] = FAR
        found[s < self.chart.least_spacings[:, None]] = CLOSE
        return found
