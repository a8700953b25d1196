"""Where the parts of the picture of a curled slab lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import RIGHT, Frame, View, picture_width, tile_frames

LEAST_WIDE = 920.0  # below this width the right column goes under the bands: the plan needs room
MOVEMENT, HELD = 276.0, 244.0  # heights of the first and the third band
PLAN = (290.0, 380.0)  # least and largest height of the plan
ASPECT = 0.62  # height over width of the room for the plan
OVER, UNDER = 52.0, 48.0  # room in the second band over and under the plan
SIDE = (176.0, 250.0)  # least and largest width of the words beside the plan
SIDE_SHARE = 0.30
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
    stretch, plan, words = _stretch(14, MOVEMENT + 16, left)
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
    stretch, plan, words = _stretch(14, 126 + MOVEMENT, full)
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


def _stretch(left: float, top: float, width: float) -> tuple[Frame, Frame, Frame]:
    """Give the second band, and in it the room for the plan and the room for words beside it."""
    side = min(max(SIDE_SHARE * width, SIDE[0]), SIDE[1])
    room = width - side - BESIDE - APART
    tall = min(max(ASPECT * room, PLAN[0]), PLAN[1])
    band = Frame(left, top, width, OVER + tall + UNDER)
    plan = Frame(left + BESIDE, top + OVER, room, tall)
    words = Frame(left + width - side, top + OVER - 14, side, tall + 28)
    return band, plan, words
