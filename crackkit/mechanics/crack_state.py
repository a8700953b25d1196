"""What a crack that has come to rest shows: how wide it is, what holds it, what it has cost."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np


@dataclass(frozen=True, eq=False)
class CrackState:
    """A crack at rest, to be read.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    opened : Opened
        Where it has come to rest.
    """

    crack: object
    opened: object

    @property
    def load(self):
        """Growing load [-], such as the shortening."""
        return self.opened.load

    @property
    def along(self):
        """Distance of the nodes of the line from its mouth [mm], shape (p,)."""
        return self.crack.body.line.along

    @property
    def opening(self):
        """Opening at these nodes, negative by a hair where they are pressed together [mm], (p,)."""
        return self.opened.q[: self.crack.count]

    @property
    def sliding(self):
        """How far the first face has moved along the line against the second [mm], shape (p,)."""
        return self.opened.q[self.crack.count : 2 * self.crack.count]

    @property
    def mouth(self):
        """Opening at the mouth [mm]."""
        return float(self.opening[0])

    @cached_property
    def faces(self):
        """Stress between the faces [MPa]."""
        return self.crack.faces(self.opened.q, self.opened.greatest)

    @property
    def stress(self):
        """Stress across the line, tension positive [MPa], shape (p,)."""
        return self.faces.normal

    @cached_property
    def reach(self):
        """Distance from the mouth to the farthest place that has passed its strength [mm]."""
        torn = np.flatnonzero(~self.faces.whole & (self.crack.share > 0.0))
        return float(self.along[torn[-1]]) if len(torn) else 0.0

    @property
    def elongations(self):
        """Elongation of each bar across the crack [mm], shape (bars,)."""
        return self.opened.q[2 * self.crack.count :]

    @cached_property
    def bar_forces(self):
        """Pull of each bar, all that lie one above the other together [N], shape (bars,)."""
        return self.crack.pull.pull(self.elongations)[0]

    @cached_property
    def bar_stresses(self):
        """Stress of each bar where it crosses the crack [MPa], shape (bars,)."""
        steel = [each.bar.number * each.bar.area for each in self.crack.bars]
        return self.bar_forces / np.array(steel)

    @cached_property
    def opening_at_bars(self):
        """Opening of the crack where each bar crosses it [mm], shape (bars,)."""
        where = [each.along for each in self.crack.bars]
        return np.interp(where, self.along, self.opening)

    @cached_property
    def spent(self):
        """Work that has gone into breaking the concrete [N mm]."""
        return self.crack.spent(self.opened.greatest)

    @cached_property
    def stored_in_bars(self):
        """Work that bars and their bond have taken up [N mm]."""
        return float(self.crack.pull.stored(self.elongations).sum())

    @cached_property
    def movement(self):
        """Movement of all nodes along x and y [mm], shape (n, 2); rigid holds do not move."""
        opened = self.opened
        unknowns = self.crack.unknowns(opened.q, opened.load, opened.greatest)
        return (self.crack.body.spread @ unknowns).reshape(-1, 2)
