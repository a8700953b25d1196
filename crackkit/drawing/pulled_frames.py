"""Where the parts of the picture of a pulled member lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import LEAST_WIDE, RIGHT, Frame, View, picture_width, tile_frames

BESIDE = 248.0  # height of the band of ten members


@dataclass(frozen=True)
class PulledLayout:
    """The frames of one picture; `beside` is there where ten members lie side by side."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    steel: Frame
    scale: Frame
    diagram: Frame
    section: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]
    beside: Frame | None = None


def pulled_layout(view: View, beside: bool = False) -> PulledLayout:
    """Lay out a picture for a view; words keep their size at every width.

    Parameters
    ----------
    view : View
    beside : bool
        Whether ten members lie side by side, which takes one band more.
    """
    width = picture_width(view)
    return (_wide if width >= LEAST_WIDE else _narrow)(width, BESIDE if beside else 0.0)


def _wide(width: float, more: float) -> PulledLayout:
    """The bands on the left; verdict, section, scale and diagram on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    return PulledLayout(
        width=width,
        height=744 + more,
        movement=Frame(14, 8, left, 150),
        stretch=Frame(14, 168, left, 290),
        steel=Frame(14, 470, left, 202),
        verdict=Frame(right, 12, RIGHT, 104),
        section=Frame(right, 130, RIGHT, 112),
        scale=Frame(right, 256, RIGHT, 194),
        diagram=Frame(right, 462, RIGHT, 210),
        tiles=tile_frames(14, 684 + more, width - 18, 6, 6),
        beside=Frame(14, 682, width - 28, more - 8) if more else None,
    )


def _narrow(width: float, more: float) -> PulledLayout:
    """Everything below each other, section and scale side by side."""
    full = width - 28
    half = (full - 16) / 2
    return PulledLayout(
        width=width,
        height=1296 + more,
        verdict=Frame(14, 10, full, 84),
        movement=Frame(14, 104, full, 148),
        stretch=Frame(14, 258, full, 288),
        steel=Frame(14, 554, full, 192),
        section=Frame(14, 758, half - 40, 194),
        scale=Frame(14 + half - 24, 758, half + 40, 194),
        diagram=Frame(14, 964, full, 200),
        beside=Frame(14, 1176, full, more - 8) if more else None,
        tiles=tile_frames(14, 1176 + more, full + 10, 3, 6),
    )
