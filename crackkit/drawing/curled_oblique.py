"""A curled slab seen from the near left: its top as a mesh, its near and right sides, the gap."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.curled_grid import at_grid, at_points
from crackkit.drawing.frames import Frame
from crackkit.drawing.movement_band import FACTORS
from crackkit.drawing.shapes import Lines, Polygon, Polygons, Polyline

DEEP, ASIDE = 0.24, 0.50  # drawn way up and to the right for one to the far side
ROOM = 32.0  # largest drawn movement
FOOT = 12.0  # drawn depth of the ground
PAST = 12.0  # how far the ground is drawn past the slab
SUNK = 2.5  # drawn way into the ground that is marked
STRIPS, FIELDS = 10, 18  # of the mesh
LEAST, MOST = 6.0, 18.0  # drawn thickness


@dataclass(frozen=True)
class Oblique:
    """The way from (x, y, height) [mm] to the paper, the height drawn `factor` times larger."""

    left: float
    bottom: float
    scale: float
    factor: float
    thick: float

    def __call__(self, x, y, height=0.0) -> np.ndarray:
        """Points of the underside on the paper."""
        across = self.left + self.scale * (x + ASIDE * y)
        up = self.bottom - self.scale * (DEEP * y + self.factor * height)
        points = np.empty((*np.broadcast(across, up).shape, 2))
        points[..., 0], points[..., 1] = across, up
        return points

    def top(self, x, y, height=0.0) -> np.ndarray:
        """Points of the top face."""
        return self(x, y, height) - (0.0, self.thick)


def oblique_in(outcome, frame: Frame) -> Oblique:
    """Lay the slab into a frame, as large as it fits.

    Parameters
    ----------
    outcome : Outcome
    frame : Frame
        For the flat slab with the ground under it; above there is room for it to rise.
    """
    s = outcome.structure
    wide, deep = s.length + ASIDE * s.width, DEEP * s.width
    tall = frame.height - FOOT
    scale = min((frame.width - 2 * PAST - 8.0) / wide, tall / deep)
    left = frame.left + (frame.width - scale * wide) / 2
    bottom = frame.bottom - FOOT - (tall - scale * deep) / 2
    thick = min(max(s.thickness * scale, LEAST), MOST)
    return Oblique(left, bottom, scale, enlarged(outcome.curled, scale), thick)


def enlarged(state, scale: float) -> float:
    """Pick how many times larger the movement is drawn: few, far apart steps."""
    drawn = float(np.abs(state.lift).max()) * scale
    fitting = [f for f in FACTORS if drawn * f <= ROOM]
    return float(fitting[-1]) if fitting else ROOM / drawn


def ground(structure, view: Oblique) -> list:
    """Draw the ground, a little larger than the slab, with strokes in its near side."""
    more = PAST / view.scale
    x, y = structure.length + more, structure.width + more
    corners = view(np.array([-more, x, x, -more]), np.array([-more, -more, y, y]))
    low = corners[0]
    starts = np.arange(low[0] + 3.0, corners[1, 0] - 6.0, 11.0)
    strokes = np.empty((starts.size, 2, 2))
    strokes[:, 0, 0], strokes[:, 1, 0] = starts, starts + 6.0
    strokes[:, 0, 1], strokes[:, 1, 1] = low[1] + 2.0, low[1] + 8.0
    return [Polygon(corners, "wall"), Lines(strokes, "ground")]


def slab(outcome, view: Oblique) -> list:
    """Draw the slab from the far side to the near one, then the gap and the sides before it."""
    state = outcome.curled
    x = np.linspace(0.0, outcome.structure.length, FIELDS + 1)
    y = np.linspace(0.0, outcome.structure.width, STRIPS + 1)
    lift = at_grid(state.lift, state.x, state.y, x, y)
    face = view.top(x[None, :], y[:, None], lift)
    near = x, 0.0 * x, lift[0]
    right = np.full_like(y, x[-1]), y, lift[:, -1]
    return [
        Polyline(np.concatenate([face[:, 0], face[-1]]), "outline"),
        *_mesh(face),
        *_side(view, *right),
        *_side(view, *near),
        *_level(outcome, view, lift),
    ]


def _level(outcome, view: Oblique, lift: np.ndarray) -> list[Polyline]:
    """Mark where the near and the right side lay, if they have sunk from there."""
    s = outcome.structure
    sunk = -min(float(lift[0].min()), float(lift[:, -1].min()))
    if sunk * view.scale * view.factor < SUNK:
        return []
    x, y = np.array([0.0, s.length, s.length]), np.array([0.0, 0.0, s.width])
    return [Polyline(view(x, y), "ghost")]


def _mesh(face: np.ndarray) -> list[Polygons]:
    """The top face in strips, the near ones over the far ones."""
    fields = np.empty((face.shape[0] - 1, face.shape[1] - 1, 4, 2))
    fields[:, :, 0], fields[:, :, 1] = face[:-1, :-1], face[:-1, 1:]
    fields[:, :, 2], fields[:, :, 3] = face[1:, 1:], face[1:, :-1]
    return [Polygons(strip, "mesh") for strip in fields[::-1]]


def _side(view: Oblique, x, y, lift) -> list:
    """One side of the slab, and the dark gap between it and the ground."""
    under, over = view(x, y, lift), view.top(x, y, lift)
    floor = view(x, y, np.minimum(lift, 0.0))
    gap = np.concatenate([under, floor[::-1]])
    side = np.concatenate([over, under[::-1]])
    return [Polygon(gap, "air"), Polygon(side, "concrete")]


def on_top(outcome, view: Oblique, points) -> np.ndarray:
    """Bring points (x, y) [mm] of the top face onto the paper."""
    state, points = outcome.curled, np.atleast_2d(np.asarray(points, dtype=float))
    lift = at_points(state.lift, state.x, state.y, points)
    return view.top(points[:, 0], points[:, 1], lift)
