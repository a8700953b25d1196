"""Where the parts of the picture of a slab on the ground lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import LEAST_WIDE, RIGHT, Frame, View, picture_width, tile_frames
from crackkit.drawing.strip_frames import MARGIN

SECTION = 166.0  # height of heading and section over the plan
PLAN, LOW = 4.0, 92.0  # length over height of the plan, and its least height
STRIP = 146.0  # height of caption and strip of stresses under the plan


@dataclass(frozen=True)
class GroundLayout:
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    plan: Frame
    held: Frame
    scale: Frame
    timeline: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]


def ground_layout(view: View) -> GroundLayout:
    """Lay out a picture for a view; words keep their size at every width."""
    width = picture_width(view)
    return (_wide if width >= LEAST_WIDE else _narrow)(width)


def _wide(width: float) -> GroundLayout:
    """The bands on the left; verdict, timeline and scale on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    stretch, plan = _stretch(14, 174, left)
    held = stretch.bottom + 10
    return GroundLayout(
        width=width,
        height=held + 256,
        movement=Frame(14, 8, left, 160),
        stretch=stretch,
        plan=plan,
        held=Frame(14, held, left, 186),
        verdict=Frame(right, 12, RIGHT, 104),
        timeline=Frame(right, 130, RIGHT, held - 144),
        scale=Frame(right, held, RIGHT, 186),
        tiles=tile_frames(14, held + 196, width - 18, 6, 6),
    )


def _narrow(width: float) -> GroundLayout:
    """Everything below each other."""
    full = width - 28
    stretch, plan = _stretch(14, 270, full)
    held = stretch.bottom + 10
    return GroundLayout(
        width=width,
        height=held + 832,
        verdict=Frame(14, 10, full, 84),
        movement=Frame(14, 104, full, 160),
        stretch=stretch,
        plan=plan,
        held=Frame(14, held, full, 186),
        scale=Frame(14, held + 196, full, 178),
        timeline=Frame(14, held + 386, full, 312),
        tiles=tile_frames(14, held + 708, full + 10, 3, 6),
    )


def _stretch(left: float, top: float, width: float) -> tuple[Frame, Frame]:
    """Give the second band, and in it the plan, as high as a slab four times longer than wide."""
    plan = Frame(left, top + SECTION, width, max((width - 2 * MARGIN) / PLAN, LOW))
    return Frame(left, top, width, SECTION + plan.height + STRIP), plan
