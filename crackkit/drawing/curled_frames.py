"""Where the parts of the picture of a curled slab lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import RIGHT, Frame, View, picture_width, tile_frames
from crackkit.drawing.plan_band import LEAST_WIDE, plan_band

MOVEMENT, HELD = 276.0, 244.0  # heights of the first and the third band
BESIDE, APART = 70.0, 34.0  # room to the left of the plan, and between it and the words


@dataclass(frozen=True)
class CurledLayout:
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    plan: Frame
    words: Frame
    held: Frame
    scale: Frame
    share: Frame
    rise: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]


def curled_layout(view: View) -> CurledLayout:
    """Lay out a picture for a view; words keep their size at every width."""
    width = picture_width(view)
    return (_wide if width >= LEAST_WIDE else _narrow)(width)


def _wide(width: float) -> CurledLayout:
    """The bands on the left; verdict, shares, rise and scale on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    stretch, plan, words = plan_band(14, MOVEMENT + 16, left, BESIDE, APART)
    held = stretch.bottom + 8
    return CurledLayout(
        width=width,
        height=held + HELD + 74,
        movement=Frame(14, 8, left, MOVEMENT),
        stretch=stretch,
        plan=plan,
        words=words,
        held=Frame(14, held, left, HELD),
        verdict=Frame(right, 12, RIGHT, 134),
        share=Frame(right, 164, RIGHT, 122),
        rise=Frame(right, 306, RIGHT, held - 330),
        scale=Frame(right, held, RIGHT, HELD),
        tiles=tile_frames(14, held + HELD + 10, width - 18, 6, 6),
    )


def _narrow(width: float) -> CurledLayout:
    """Everything below each other; scale and shares side by side."""
    full = width - 28
    half = (full - 20) / 2
    stretch, plan, words = plan_band(14, 126 + MOVEMENT, full, BESIDE, APART)
    held = stretch.bottom + 8
    scale = held + HELD + 10
    return CurledLayout(
        width=width,
        height=scale + 562,
        verdict=Frame(14, 10, full, 104),
        movement=Frame(14, 122, full, MOVEMENT),
        stretch=stretch,
        plan=plan,
        words=words,
        held=Frame(14, held, full, HELD),
        scale=Frame(14, scale, half, 226),
        share=Frame(14 + half + 20, scale, half, 226),
        rise=Frame(14, scale + 236, full, 190),
        tiles=tile_frames(14, scale + 438, full + 10, 3, 6),
    )
