"""The member on the drawing, seen from the side: the way from (x, z) in mm to the paper."""

import numpy as np

from crackkit.drawing.frames import Along, Frame, along
from crackkit.drawing.shapes import Polygon, Polyline, Raster

FULL_SHADE = 1.6  # multiple of the tensile strength that has the full colour
DEPTHS = (88.0, 112.0)  # least and largest drawn depth


class Body:
    """A member with a level top face; its bottom face may rise."""

    def __init__(self, outcome, frame: Frame):
        self.along: Along = along(frame, float(outcome.x[-1]))
        self.depth_mm = float(outcome.stresses.z[-1])
        self.depth = min(max(self.depth_mm * self.along.scale, DEPTHS[0]), DEPTHS[1])
        self.top = frame.top + 54.0 + (DEPTHS[1] - self.depth) / 2
        self.frame = frame
        self.x_mm, self.soffit_mm = corners(outcome.x, outcome.depth)

    @property
    def bottom(self) -> float:
        """Height of the bottom face where the member is deepest."""
        return self.top + self.depth

    @property
    def down(self) -> float:
        """Drawing units for one mm of depth."""
        return self.depth / self.depth_mm

    @property
    def tapered(self) -> bool:
        """Whether the bottom face rises somewhere."""
        return self.x_mm.size > 2 or self.soffit_mm[0] != self.soffit_mm[-1]

    def points(self, path: np.ndarray) -> np.ndarray:
        """Drawing points of (x, z) [mm]; the last axis holds the pair."""
        return path * (self.along.scale, self.down) + (self.along.left, self.top)

    def outline(self) -> Polyline:
        """The edge of the concrete."""
        left, right = self.along.left, self.along.right
        start = [(left, self.top), (right, self.top)]
        return Polyline(np.array([*start, *self._soffit()[::-1], start[0]]), "outline")

    def _soffit(self) -> list[tuple[float, float]]:
        heights = self.top + self.soffit_mm * self.down
        return list(zip(self.along(self.x_mm).tolist(), heights.tolist(), strict=True))

    def raster(self, stresses) -> list:
        """The stress map behind everything; below a rising face it is covered."""
        width = self.along.right - self.along.left
        values = stresses.ratio / FULL_SHADE
        if not self.tapered:
            return [Raster(self.along.left, self.top, width, self.depth, values)]
        shaded = Raster(self.along.left, self.top, width, self.depth, drawn_down(values))
        low = self.bottom + 1.0
        edge = [(self.along.left, low), *self._soffit(), (self.along.right, low)]
        return [shaded, Polygon(np.array(edge), "paper")]

    def face(self, face: str, at=0.0):
        """Height of a face at places [mm], and the direction away from the concrete."""
        if face == "top":
            return self.top, -1.0
        if not self.tapered:
            return self.bottom, 1.0
        return self.top + np.interp(at, self.x_mm, self.soffit_mm) * self.down, 1.0


def corners(x: np.ndarray, depth: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Points of a bottom face [mm] that are not on a straight line with their neighbours."""
    slope = np.diff(depth) / np.diff(x)
    turns = np.flatnonzero(np.abs(np.diff(slope)) > 1e-6) + 1
    kept = [0, *turns.tolist(), x.size - 1]
    return x[kept], depth[kept]


def drawn_down(values: np.ndarray) -> np.ndarray:
    """Fill places without concrete with the lowest value above them, so that no edge is ragged."""
    filled = np.isfinite(values)
    last = np.maximum.accumulate(np.where(filled, np.arange(len(values))[:, None], 0), axis=0)
    return np.nan_to_num(values[last, np.arange(values.shape[1])])
