"""Where the parts of the picture of a slab on the ground lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import (
    LEAST_WIDE,
    LIMITS,
    NAMED,
    RIGHT,
    Along,
    Frame,
    View,
    tile_frames,
)

MARGIN = 56.0  # beside the slab at both ends: numbers of the axes, what holds the ends


@dataclass(frozen=True)
class GroundLayout:
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    held: Frame
    scale: Frame
    timeline: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]


def ground_layout(view: View) -> GroundLayout:
    """Lay out a picture for a view; words keep their size at every width."""
    width = NAMED[view.layout] if view.width is None else view.width
    width = float(min(max(width, LIMITS[0]), LIMITS[1]))
    return (_wide if width >= LEAST_WIDE else _narrow)(width)


def _wide(width: float) -> GroundLayout:
    """The bands on the left; verdict, timeline and scale on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    return GroundLayout(
        width=width,
        height=770,
        movement=Frame(14, 8, left, 176),
        stretch=Frame(14, 194, left, 286),
        held=Frame(14, 490, left, 208),
        verdict=Frame(right, 12, RIGHT, 104),
        timeline=Frame(right, 130, RIGHT, 350),
        scale=Frame(right, 490, RIGHT, 208),
        tiles=tile_frames(14, 710, width - 18, 6, 6),
    )


def _narrow(width: float) -> GroundLayout:
    """Everything below each other."""
    full = width - 28
    return GroundLayout(
        width=width,
        height=1424,
        verdict=Frame(14, 10, full, 84),
        movement=Frame(14, 104, full, 176),
        stretch=Frame(14, 290, full, 286),
        held=Frame(14, 586, full, 208),
        scale=Frame(14, 804, full, 178),
        timeline=Frame(14, 994, full, 296),
        tiles=tile_frames(14, 1300, full + 10, 3, 6),
    )


def along_ground(frame: Frame, length: float) -> Along:
    """Lay a slab along a frame: the same in all bands."""
    return Along(frame.left + MARGIN, frame.right - MARGIN, length)
