"""Where the parts of a picture lie: frames on the paper, and the way from mm to drawing units."""

from dataclasses import dataclass
from functools import cached_property


@dataclass(frozen=True)
class Frame:
    """An upright part of the paper [drawing units]."""

    left: float
    top: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Right edge."""
        return self.left + self.width

    @property
    def bottom(self) -> float:
        """Lower edge."""
        return self.top + self.height


@dataclass(frozen=True)
class Layout:
    """The frames of one picture; `range` and `gaps` are there where loads come and go."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    steel: Frame
    scale: Frame
    section: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]
    range: Frame | None = None
    gaps: Frame | None = None


def tile_frames(left, top, width, columns, count) -> tuple[Frame, ...]:
    """Frames of `count` tiles in so many columns, from the upper left corner."""
    step = width / columns
    return tuple(
        Frame(left + step * (k % columns), top + 60 * (k // columns), step - 10, 52)
        for k in range(count)
    )


RIGHT = 256.0  # width of the right column: verdict, section, scale of widths
LEAST_WIDE = 780.0  # below this width the right column goes under the bands
LIMITS = (560.0, 1200.0)  # least and largest width of a picture


def wide(width: float) -> Layout:
    """Lay out the bands on the left, verdict, section and scale on the right."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    return Layout(
        width=width,
        height=652,
        movement=Frame(14, 8, left, 176),
        stretch=Frame(14, 192, left, 208),
        steel=Frame(14, 410, left, 172),
        verdict=Frame(right, 12, RIGHT, 104),
        section=Frame(right, 128, RIGHT, 268),
        scale=Frame(right, 410, RIGHT, 172),
        tiles=tile_frames(14, 592, width - 18, 6, 6),
    )


def narrow(width: float) -> Layout:
    """Lay out everything below each other, section and scale side by side."""
    full = width - 28
    half = (full - 16) / 2
    return Layout(
        width=width,
        height=1014,
        verdict=Frame(14, 10, full, 84),
        movement=Frame(14, 104, full, 176),
        stretch=Frame(14, 286, full, 208),
        steel=Frame(14, 502, full, 172),
        section=Frame(14, 684, half + 4, 196),
        scale=Frame(14 + half + 12, 684, half, 196),
        tiles=tile_frames(14, 890, full + 10, 3, 6),
    )


def wide_ranged(width: float) -> Layout:
    """Lay out one band more on the left, and the list of gaps beside it."""
    left, right = width - RIGHT - 54, width - RIGHT - 14
    return Layout(
        width=width,
        height=868,
        movement=Frame(14, 8, left, 216),
        stretch=Frame(14, 232, left, 208),
        range=Frame(14, 450, left, 166),
        steel=Frame(14, 626, left, 172),
        verdict=Frame(right, 12, RIGHT, 134),
        section=Frame(right, 158, RIGHT, 278),
        gaps=Frame(right, 450, RIGHT, 166),
        scale=Frame(right, 626, RIGHT, 172),
        tiles=tile_frames(14, 808, width - 18, 6, 6),
    )


def narrow_ranged(width: float) -> Layout:
    """Lay out one band more below each other, with the list of gaps under it."""
    full = width - 28
    half = (full - 16) / 2
    return Layout(
        width=width,
        height=1354,
        verdict=Frame(14, 10, full, 102),
        movement=Frame(14, 122, full, 216),
        stretch=Frame(14, 344, full, 208),
        range=Frame(14, 560, full, 166),
        gaps=Frame(14, 732, full, 102),
        steel=Frame(14, 842, full, 172),
        section=Frame(14, 1024, half + 4, 196),
        scale=Frame(14 + half + 12, 1024, half, 196),
        tiles=tile_frames(14, 1230, full + 10, 3, 6),
    )


NAMED = {"wide": 1000.0, "narrow": 620.0}


@dataclass(frozen=True)
class View:
    """How a picture is wanted.

    Attributes
    ----------
    system : str
        Units, ``"SI"`` or ``"US"``.
    layout : str
        ``"wide"`` or ``"narrow"``: a width by name.
    live : bool
        Whether it can be dragged.
    width : float or None
        Width of the paper [drawing units], where it is to fit a page; overrides the name.
    before : Outcome or None
        An earlier Outcome. What takes long to work out is drawn faintly as it was then, and says
        so; for a picture that is soon followed by the whole one.
    """

    system: str = "SI"
    layout: str = "wide"
    live: bool = True
    width: float | None = None
    before: object = None


def picture_width(view: View) -> float:
    """Width of the paper that a view asks for, within what a picture bears [drawing units]."""
    width = NAMED[view.layout] if view.width is None else view.width
    return float(min(max(width, LIMITS[0]), LIMITS[1]))


def layout_of(view: View, ranged: bool = False) -> Layout:
    """Lay out a picture for a view; words keep their size at every width.

    Parameters
    ----------
    view : View
    ranged : bool
        Whether loads come and go, which takes one band more.
    """
    width = picture_width(view)
    if ranged:
        return wide_ranged(width) if width >= LEAST_WIDE else narrow_ranged(width)
    return wide(width) if width >= LEAST_WIDE else narrow(width)


PLAIN = View(live=False)  # a still picture in SI units


@dataclass(frozen=True)
class Along:
    """The way from a place along the member [mm] to the drawing: the same in all bands."""

    left: float
    right: float
    length: float

    @cached_property
    def scale(self) -> float:
        """Drawing units for one mm."""
        return (self.right - self.left) / self.length

    def __call__(self, x):
        """Drawing coordinate of place x [mm], a float for one and an array for many."""
        return self.left + x * self.scale


def along(frame: Frame, length: float) -> Along:
    """Lay a member along a frame, with room for the numbers of an axis on the left."""
    return Along(frame.left + 46, frame.right - 18, length)
