"""Where the parts of the picture of a choice of bars lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import LEAST_WIDE, Frame, View, picture_width, tile_frames

RIGHT_SHARE = 0.42  # of the width, for verdict, widths and chart
FEW_TILES = 990.0  # below this width six tiles are too narrow for their words


@dataclass(frozen=True)
class ChoiceLayout:
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    section: Frame
    verdict: Frame
    scale: Frame
    chart: Frame
    tiles: tuple[Frame, ...]


def choice_layout(view: View) -> ChoiceLayout:
    """Lay out a picture for a view; words keep their size at every width."""
    width = picture_width(view)
    return _wide(width) if width >= LEAST_WIDE else _narrow(width)


def _wide(width: float) -> ChoiceLayout:
    """The strip and its section on the left; verdict, widths and chart on the right."""
    broad = RIGHT_SHARE * width
    x = width - broad - 14
    left = x - 14 - 22
    columns = 6 if width >= FEW_TILES else 3
    return ChoiceLayout(
        width=width,
        height=728.0 + (0.0 if columns == 6 else 60.0),
        movement=Frame(14, 8, left, 112),
        stretch=Frame(14, 128, left, 196),
        section=Frame(14, 334, left, 324),
        verdict=Frame(x, 12, broad, 90),
        scale=Frame(x, 114, broad, 174),
        chart=Frame(x, 300, broad, 358),
        tiles=tile_frames(14, 668, width - 18, columns, 6),
    )


def _narrow(width: float) -> ChoiceLayout:
    """Everything below each other."""
    full = width - 28
    return ChoiceLayout(
        width=width,
        height=1398.0,
        verdict=Frame(14, 10, full, 88),
        movement=Frame(14, 108, full, 112),
        stretch=Frame(14, 228, full, 196),
        section=Frame(14, 434, full, 318),
        scale=Frame(14, 762, full, 160),
        chart=Frame(14, 932, full, 334),
        tiles=tile_frames(14, 1276, full + 10, 3, 6),
    )
