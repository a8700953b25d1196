"""Where the parts of the picture of a slab with inside corners lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import RIGHT, Frame, View, picture_width, tile_frames
from crackkit.drawing.plan_band import LEAST_WIDE, plan_band

MOVEMENT, HELD = 262.0, 328.0  # heights of the first and the third band
BESIDE, APART = 78.0, 40.0  # room to the left of the plan, and between it and the words
SHARE, ROW, LIMIT = 82.0, 22.0, 74.0  # heights: shares without rows, a row, words on the limit
TILES = 62.0  # from row to row


@dataclass(frozen=True)
class CornerLayout:
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    plan: Frame
    words: Frame
    held: Frame
    share: Frame
    tight: Frame
    along: Frame
    days: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]


def corner_layout(view: View, tiles: int, corners: int) -> CornerLayout:
    """Lay out a picture for a view; words keep their size at every width.

    Parameters
    ----------
    view : View
    tiles : int
        Numbers that sum it up.
    corners : int
        Whose shares are shown.
    """
    width = picture_width(view)
    return (_wide if width >= LEAST_WIDE else _narrow)(width, tiles, SHARE + ROW * corners)


def _wide(width: float, tiles: int, shares: float) -> CornerLayout:
    """The bands on the left; verdict, corners and openings on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    stretch, plan, words = plan_band(14, MOVEMENT + 16, left, BESIDE, APART)
    held = stretch.bottom + 8
    end, share = held + HELD, 162.0
    tight = share + shares + 16
    each = (end - tight - LIMIT - 12) / 2
    return CornerLayout(
        width=width,
        height=end + 74,
        movement=Frame(14, 8, left, MOVEMENT),
        stretch=stretch,
        plan=plan,
        words=words,
        held=Frame(14, held, left, HELD),
        verdict=Frame(right, 12, RIGHT, 134),
        share=Frame(right, share, RIGHT, shares),
        tight=Frame(right, tight, RIGHT, LIMIT),
        along=Frame(right, tight + LIMIT, RIGHT, each),
        days=Frame(right, tight + LIMIT + each + 12, RIGHT, each),
        tiles=tile_frames(14, end + 10, width - 18, tiles, tiles),
    )


def _narrow(width: float, tiles: int, shares: float) -> CornerLayout:
    """Everything below each other; the two charts of openings side by side."""
    full = width - 28
    half = (full - 20) / 2
    stretch, plan, words = plan_band(14, 126 + MOVEMENT, full, BESIDE, APART)
    held = stretch.bottom + 8
    tight = held + HELD + 10
    along = tight + LIMIT - 12
    share = along + 262
    first = share + shares + 4
    rows = -(-tiles // 3)
    return CornerLayout(
        width=width,
        height=first + TILES * rows + 6,
        verdict=Frame(14, 10, full, 104),
        movement=Frame(14, 122, full, MOVEMENT),
        stretch=stretch,
        plan=plan,
        words=words,
        held=Frame(14, held, full, HELD),
        tight=Frame(14, tight, full, LIMIT),
        along=Frame(14, along, half, 250),
        days=Frame(14 + half + 20, along, half, 250),
        share=Frame(14, share, full, shares),
        tiles=tile_frames(14, first, full + 10, 3, tiles),
    )
