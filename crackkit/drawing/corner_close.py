"""The worst corner from near by: concrete, bars as laid, the crack across them."""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.drawing.corner_break import at_way, crack_shapes, saw_shapes
from crackkit.drawing.corner_clip import clipped_lines, clipped_outline
from crackkit.drawing.frames import Frame
from crackkit.drawing.shapes import Lines, Polygon, Polyline, rectangle

INTO, OUT = 860.0, 300.0  # mm of concrete and of air round the corner that are shown
AIM = 300.0  # mm along the crack that tell which way the concrete lies
SIDEWAYS = 0.38  # of a unit way: less counts as neither left nor right
THIN, THICK = 1.8, 7.0  # drawn width of bars, least and largest


@dataclass(frozen=True)
class CloseUp:
    """The way from the slab to a frame on the paper."""

    frame: Frame
    start: tuple[float, float]  # lower left corner of the frame [mm]
    scale: float

    def __call__(self, points) -> np.ndarray:
        """Bring points (x, y) [mm] onto the paper; any shape that ends with 2."""
        x, y = self.start
        away = np.asarray(points, dtype=float) - (x, y)
        return (self.frame.left, self.frame.bottom) + away * (self.scale, -self.scale)

    @property
    def bounds(self) -> tuple:
        """Upper left and lower right corner."""
        f = self.frame
        return (f.left, f.top), (f.right, f.bottom)


def close_up(state, frame: Frame) -> CloseUp:
    """Lay the surroundings of the worst corner into a frame: mostly the concrete behind it."""
    scale = frame.height / (INTO + OUT)
    wide = frame.width / scale
    at, way = np.array(state.corner.at), into(state)
    start = [
        _start(at[axis], way[axis], room) for axis, room in ((0, wide), (1, INTO + OUT))
    ]  # fmt: skip
    return CloseUp(frame, tuple(start), scale)


def into(state) -> np.ndarray:
    """Unit way from the worst corner into the concrete, as the crack goes."""
    crack = state.crack
    way = at_way(crack, np.array([min(AIM, float(crack.along[-1]))]))[0] - state.corner.at
    return way / max(float(np.hypot(*way)), 1e-9)


def _start(at: float, way: float, room: float) -> float:
    """Where the frame begins, so that most of what it shows lies ahead."""
    if abs(way) < SIDEWAYS:
        return at - room / 2
    behind = room * OUT / (INTO + OUT)
    return at - behind if way > 0 else at - (room - behind)


def close_shapes(state, near: CloseUp) -> list:
    """Draw the corner: concrete, bars, cut and crack."""
    frame = near.frame
    ground = rectangle(frame.left, frame.top, frame.width, frame.height, "paper")
    bodies = [clipped_outline(near(loop), frame) for loop in state.loops]
    roles = ["mesh", *["paper"] * (len(bodies) - 1)]
    return [
        ground,
        *(Polygon(b, role) for b, role in zip(bodies, roles, strict=True) if len(b) > 2),
        *_edges(state, near),
        *saw_shapes_near(state, near),
        *_bars(state, near),
        *crack_near(state, near),
        Polyline(np.concatenate([ground.points, ground.points[:1]]), "axis"),
    ]


def _edges(state, near: CloseUp) -> list[Lines]:
    sides = [
        np.stack([near(loop), near(np.roll(loop, -1, axis=0))], axis=1) for loop in state.loops
    ]
    seen, _kept = clipped_lines(np.concatenate(sides), near.frame)
    return [Lines(seen, "outline")] if len(seen) else []


def _bars(state, near: CloseUp) -> list[Polyline]:
    """Bars as thick as they are where that can be seen; those that slip are dashed."""
    bars = sorted(state.bars, key=lambda one: one.kind != "mat")
    lines = near(np.array([(one.start, one.end) for one in bars]).reshape(-1, 2, 2))
    seen, kept = clipped_lines(lines, near.frame)
    return [_bar(bars[k], points, near) for points, k in zip(seen, kept.tolist(), strict=True)]


def _bar(one, points: np.ndarray, near: CloseUp) -> Polyline:
    role = "stirrup" if one.kind == "mat" else "bar"
    role = "bar_slack" if one.fault == "slips" else role
    return Polyline(points, role, min(max(one.diameter * near.scale, THIN), THICK))


def crack_near(state, near: CloseUp) -> list:
    """Draw the part of the crack that is seen."""
    return crack_shapes(within_frame(state.crack, near), near, near.bounds)


def saw_shapes_near(state, near: CloseUp) -> list:
    """Draw the part of a cut that is seen."""
    return saw_shapes(within_frame(state.crack, near), near, near.bounds)


def within_frame(crack, near: CloseUp):
    """Cut a crack off where it leaves the frame."""
    points = near(crack.points)
    outside = np.any((points < near.bounds[0]) | (points > near.bounds[1]), axis=1)
    count = int(outside.argmax()) if outside.any() else len(points)
    count = max(count, 2)
    along = crack.along[:count]
    return replace(
        crack,
        points=crack.points[:count],
        along=along,
        opening=crack.opening[:count],
        saw=min(crack.saw, float(along[-1])),
    )


def crossing(one, points: np.ndarray) -> np.ndarray | None:
    """Where a bar meets a line of points [mm]; None where it does not.

    Parameters
    ----------
    one : LaidBar
    points : ndarray, shape (n, 2)
    """
    start, way = np.array(one.start), np.array(one.end) - np.array(one.start)
    off = points - start
    side = way[0] * off[:, 1] - way[1] * off[:, 0]
    found = np.flatnonzero(side[:-1] * side[1:] <= 0)
    for k in found.tolist():
        gap = float(side[k] - side[k + 1])
        place = points[k] + (side[k] / gap if gap else 0.0) * (points[k + 1] - points[k])
        share = float((place - start) @ way / (way @ way))
        if 0.0 <= share <= 1.0:
            return place
    return None
