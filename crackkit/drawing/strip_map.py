"""How hard a strip is stretched: a map over its depth, and hatches beside its faces."""

import numpy as np

from crackkit.drawing.frames import Along
from crackkit.drawing.shapes import Lines, Raster

FULL_SHADE = 1.15  # multiple of the strength that has the full colour
COLUMNS = 240  # of the map
RIBBON = 7.0  # height of the hatch beside a face
PITCH = 4.5  # of the hatch where it is dense
LEAN = 5.0  # how far a stroke goes to the right
OFF = 2.0  # from the face to the hatch


def map_places(along: Along) -> np.ndarray:
    """Places at which a map shows the stress [mm]."""
    return (np.arange(COLUMNS) + 0.5) * (along.length / COLUMNS)


def stress_map(along: Along, top: float, depth: float, ratio: np.ndarray) -> list[Raster]:
    """Draw the stress over the strength at `map_places`, the same over the whole depth.

    Parameters
    ----------
    along : Along
    top, depth : float
        The strip [drawing units].
    ratio : ndarray
        Stress over strength [-].
    """
    values = np.tile(ratio / FULL_SHADE, (2, 1))
    return [Raster(along.left, top, along.right - along.left, depth, values)]


def hatch_places(along: Along) -> tuple[np.ndarray, np.ndarray]:
    """Where strokes may stand [drawing units], and the places they speak of [mm]."""
    x = np.arange(along.left, along.right - 4.0, PITCH)
    return x, (x + 2.0 - along.left) / along.scale


def hatches(x: np.ndarray, some: np.ndarray, near: np.ndarray, faces) -> list[Lines]:
    """Hatch faces where they are stretched: every other stroke, and all where it is near tearing.

    Parameters
    ----------
    x : ndarray
        Where strokes may stand [drawing units].
    some, near : ndarray of bool
        Where it is stretched, and where it is about to tear.
    faces : sequence of float
        Lower ends of the strokes [drawing units].
    """
    thin = some & ~near & (np.arange(x.size) % 2 == 0)
    return [
        Lines(_strokes(x[chosen], faces), role)
        for chosen, role in ((thin, "hatch"), (near, "hatch_dense"))
        if chosen.any()
    ]


def _strokes(x: np.ndarray, faces) -> np.ndarray:
    feet = np.asarray(faces)
    strokes = np.empty((feet.size, x.size, 2, 2))
    strokes[..., 0, 0], strokes[..., 1, 0] = x, x + LEAN
    strokes[..., 0, 1], strokes[..., 1, 1] = feet[:, None], feet[:, None] - RIBBON
    return strokes.reshape(-1, 2, 2)
