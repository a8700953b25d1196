"""Where the parts of the picture of a fresh slab lie."""

from dataclasses import dataclass

from crackkit.drawing.frames import LEAST_WIDE, Frame, View, picture_width, tile_frames

LEFT_SHARE = 0.48  # of the width, for verdict and section
FEW_TILES = 990.0  # below this width six tiles are too narrow for their words


@dataclass(frozen=True)
class FreshLayout:
    """The frames of one picture."""

    width: float
    height: float
    verdict: Frame
    section: Frame
    chart: Frame
    tiles: tuple[Frame, ...]


def fresh_layout(view: View) -> FreshLayout:
    """Lay out a picture for a view; words keep their size at every width."""
    width = picture_width(view)
    return _wide(width) if width >= LEAST_WIDE else _narrow(width)


def _wide(width: float) -> FreshLayout:
    """Verdict and section on the left, the chart on the right."""
    left = LEFT_SHARE * width - 14
    right = width - left - 14 - 24 - 14
    columns = 6 if width >= FEW_TILES else 3
    return FreshLayout(
        width=width,
        height=472.0 + (0.0 if columns == 6 else 60.0),
        verdict=Frame(14, 12, left, 92),
        section=Frame(14, 116, left, 284),
        chart=Frame(14 + left + 24, 12, right, 388),
        tiles=tile_frames(14, 412, width - 18, columns, 6),
    )


def _narrow(width: float) -> FreshLayout:
    """Everything below each other."""
    full = width - 28
    return FreshLayout(
        width=width,
        height=874.0,
        verdict=Frame(14, 10, full, 92),
        section=Frame(14, 114, full, 284),
        chart=Frame(14, 414, full, 326),
        tiles=tile_frames(14, 752, full + 10, 3, 6),
    )
