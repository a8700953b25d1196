"""A slab on the ground looked at along and across: each way is a strip that cracks on its own."""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.structures.ground import Ground, Joint, ground
from crackkit.structures.slab_history import LAST_DAY, Piece, panels, piece_history

CLEAR = 1.0  # mm: what lies closer to the end of a stretch does not lie inside of it


@dataclass(frozen=True)
class Way:
    """One of the two ways to look at a slab.

    Attributes
    ----------
    slab : GroundSlab
    length : float
        From end to end this way [mm].
    ends : tuple of float
        How far its two ends are held, 0 free to 1 fast [-].
    bars : bool
        Whether bars lie this way.
    seed : int
        Which concrete.
    """

    slab: object
    length: float
    ends: tuple[float, float]
    bars: bool
    seed: int

    @property
    def panels(self) -> int:
        """Panels between joints."""
        return panels(self.length, self.slab.joint_every) if self.slab.jointed else 1

    @property
    def joint_places(self) -> tuple[float, ...]:
        """Where joints are cut [mm from its first end]."""
        step = self.length / self.panels
        return tuple(step * k for k in range(1, self.panels))

    @property
    def _weak_places(self) -> tuple[float, ...]:
        """Joints at which it may open: dowels that bind keep them shut."""
        return () if self.slab.dowels == "bound" else self.joint_places

    @property
    def _steel(self) -> tuple[float, float] | None:
        return (self.slab.area, self.slab.bar.diameter) if self.bars and self.slab.area else None

    @property
    def parted(self) -> bool:
        """Whether joints part it: bars hold the panels together, none cross the joints."""
        through = self.slab.through == "through"
        return bool(self._steel and self._weak_places) and not through

    @property
    def state(self) -> Ground:
        """How it fares at the age of the slab."""
        marks = (0.0, *(self._working_joints if self.parted else ()), self.length)
        pieces = [
            (start, piece_history(self._piece(start, end)))
            for start, end in zip(marks, marks[1:], strict=False)
        ]
        found = ground(pieces, self.slab.age, marks[1:-1])
        if self._weak_places:
            return found
        return replace(found, joints=tuple(Joint(at, 0.0) for at in self.joint_places))

    @property
    def _working_joints(self) -> tuple[float, ...]:
        """Joints that crack in ten years where no bars cross them [mm].

        The first ones ease the slab so much that others may stay shut. They count as open from
        the first day.
        """
        bare = piece_history(replace(self._piece(0.0, self.length), steel=None))
        ended = ground([(0.0, bare)], LAST_DAY, ())
        places = np.array(self.joint_places)
        found = {
            float(places[np.abs(places - crack.at).argmin()])
            for crack in ended.cracks
            if crack.at_joint
        }
        return tuple(sorted(found))

    def _piece(self, start: float, end: float) -> Piece:
        """The stretch between two places, with the joints inside of it."""
        it, length = self.slab, end - start
        middle = self.length / 2 - start
        inside = it.middle > 0 and CLEAR < middle < length - CLEAR
        first, last = self.ends
        ends = (first if start == 0.0 else 0.0, last if end == self.length else 0.0)
        joints = tuple(at - start for at in self._weak_places if start + CLEAR < at < end - CLEAR)
        return Piece(
            length=length,
            thickness=it.thickness,
            ends=ends,
            held=((middle, it.middle),) if inside else (),
            joints=joints,
            cut=it.cut,
            cut_age=it.cut_age,
            base=it.base,
            steel=self._steel,
            slab=it.concrete,
            code=it.code,
            model=it.model,
            cooling=it.cooling,
            spent=it.spent,
            scatter=it.scatter,
            seed=self.seed + round(start / 1000.0),  # other concrete in each stretch
            yield_strength=it.yield_strength,
        )


def along(it) -> Way:
    """Look at a GroundSlab along: from its left to its right end."""
    return Way(it, it.length, (it.left, it.right), True, int(it.seed))


def across(it) -> Way:
    """Look at a GroundSlab across: from side to side, with bars if they lie both ways."""
    return Way(it, it.width, (it.sides, it.sides), it.both_ways, int(it.seed) + 100)
