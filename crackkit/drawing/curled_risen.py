"""Where a curled slab stands highest over the ground: a corner, an edge, or its middle."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import View
from crackkit.units import shown
from crackkit.words import _

FLAT = 1e-3  # mm that nobody would call a movement
SAME = 1e-3  # share by which two heights may differ and be called one
CORNER, EDGE, MIDDLE = "corner", "edge", "middle"


@dataclass(frozen=True)
class Risen:
    """The highest place of a slab.

    Attributes
    ----------
    x, y : float
        Where [mm].
    height : float
        Over the ground [mm].
    kind : str
        ``"corner"``, ``"edge"`` or ``"middle"``.
    told : float
        Height that is told [mm]: a corner's is counted from where the slab lay before.
    """

    x: float
    y: float
    height: float
    kind: str
    told: float

    @property
    def seen(self) -> bool:
        """Whether anybody would say that it has risen."""
        return self.height > FLAT

    @property
    def near(self) -> bool:
        """Whether it lies on the near side."""
        return self.y <= 0.0

    def words(self, view: View) -> str:
        """Say how high it stands."""
        texts = {
            CORNER: _("this corner stands up {rise}"),
            EDGE: _("this edge stands up {rise}"),
            MIDDLE: _("the middle stands up {rise}"),
        }
        return texts[self.kind].format(rise=shown(self.told, "movement", view.system))


def risen(state) -> Risen:
    """Give the highest place of a slab; of corners as good as equally high always the same one.

    Parameters
    ----------
    state : Curled
    """
    corner = _corner(state)
    most = float(state.lift.max())
    if most <= corner.height + SAME * abs(most) + FLAT:
        return corner
    k, j = np.unravel_index(state.lift.argmax(), state.lift.shape)
    ends = (k in (0, state.y.size - 1), j in (0, state.x.size - 1))
    kind = EDGE if any(ends) else MIDDLE
    return Risen(float(state.x[j]), float(state.y[k]), most, kind, most)


def _corner(state) -> Risen:
    """The highest corner: the near right one, if none stands higher."""
    found = [
        Risen(
            float(state.x[j]), float(state.y[k]), float(state.lift[k, j]), CORNER, state.corner_rise
        )
        for k, j in ((0, -1), (0, 0), (-1, -1), (-1, 0))
    ]
    most = max(corner.height for corner in found)
    return next(corner for corner in found if corner.height >= most - SAME * abs(most))
