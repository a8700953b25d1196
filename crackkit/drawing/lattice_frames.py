"""Where the parts of the picture of a lattice lie: the same in all frames of one run."""

from dataclasses import dataclass

from crackkit.drawing.frames import Frame, View, picture_width, tile_frames

LEAST_WIDE = 860.0  # below this width the words go under the plan
SIDE = 300.0  # width of the words beside the plan
HEAD, UNDER = 68.0, 52.0  # room over the plan for the heading, and under it for the dimension
LEFT, RIGHT = 96.0, 34.0  # room beside the plan
TILES, TILE = 66.0, 4  # height of the row of tiles, and how many there are


@dataclass(frozen=True)
class LatticeLayout:
    """The frames of one picture."""

    width: float
    height: float
    head: Frame
    plan: Frame
    words: Frame
    tiles: tuple[Frame, ...]


def lattice_layout(view: View, aspect: float, words: float) -> LatticeLayout:
    """Lay out a picture for a view.

    Parameters
    ----------
    view : View
    aspect : float
        Height of the plan over its width.
    words : callable
        Gives the height that the words need for a width.
    """
    width = picture_width(view)
    if width >= LEAST_WIDE:
        return _wide(width, aspect, words)
    return _narrow(width, aspect, words)


def _wide(width: float, aspect: float, words) -> LatticeLayout:
    """Words on the right of the plan, tiles below both."""
    room = width - 28 - LEFT - RIGHT - SIDE
    tall = max(min(aspect * room, 520.0), words(SIDE) - UNDER)
    end = HEAD + tall + UNDER
    return LatticeLayout(
        width=width,
        height=end + TILES,
        head=Frame(14, 8, width - 28, HEAD),
        plan=Frame(14 + LEFT, HEAD, room, tall),
        words=Frame(width - 14 - SIDE, HEAD, SIDE, tall + UNDER),
        tiles=tile_frames(14, end + 6, width - 18, TILE, TILE),
    )


def _narrow(width: float, aspect: float, words) -> LatticeLayout:
    """Plan, tiles and words below each other."""
    full = width - 28
    room = full - LEFT - RIGHT
    tall = min(aspect * room, 460.0)
    end = HEAD + tall + UNDER
    first = end + TILES
    below = words(full)
    return LatticeLayout(
        width=width,
        height=first + below + 10,
        head=Frame(14, 8, full, HEAD),
        plan=Frame(14 + LEFT, HEAD, room, tall),
        words=Frame(14, first + 4, full, below),
        tiles=tile_frames(14, end + 6, full + 10, TILE, TILE),
    )
