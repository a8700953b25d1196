"""Where the parts of a picture lie: frames on the paper, and the way from mm to drawing units."""

from dataclasses import dataclass

import numpy as np


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
    """The frames of one picture."""

    width: float
    height: float
    movement: Frame
    stretch: Frame
    steel: Frame
    scale: Frame
    section: Frame
    verdict: Frame
    tiles: tuple[Frame, ...]


def _tiles(left, top, width, columns, count) -> tuple[Frame, ...]:
    step = width / columns
    return tuple(
        Frame(left + step * (k % columns), top + 60 * (k // columns), step - 10, 52)
        for k in range(count)
    )


WIDE = Layout(
    width=1000,
    height=652,
    movement=Frame(14, 8, 690, 176),
    stretch=Frame(14, 192, 690, 208),
    steel=Frame(14, 410, 690, 172),
    verdict=Frame(730, 12, 256, 104),
    section=Frame(730, 128, 256, 268),
    scale=Frame(730, 410, 256, 172),
    tiles=_tiles(14, 592, 982, 6, 6),
)
NARROW = Layout(
    width=620,
    height=1014,
    verdict=Frame(14, 10, 592, 84),
    movement=Frame(14, 104, 592, 176),
    stretch=Frame(14, 286, 592, 208),
    steel=Frame(14, 502, 592, 172),
    section=Frame(14, 684, 292, 196),
    scale=Frame(322, 684, 284, 196),
    tiles=_tiles(14, 890, 602, 3, 6),
)
LAYOUTS = {"wide": WIDE, "narrow": NARROW}


@dataclass(frozen=True)
class View:
    """How a picture is wanted: units, layout, and whether it can be dragged."""

    system: str = "SI"
    layout: str = "wide"
    live: bool = True


PLAIN = View(live=False)  # a still picture in SI units


@dataclass(frozen=True)
class Along:
    """The way from a place along the member [mm] to the drawing: the same in all bands."""

    left: float
    right: float
    length: float

    @property
    def scale(self) -> float:
        """Drawing units for one mm."""
        return (self.right - self.left) / self.length

    def __call__(self, x):
        """Drawing coordinate of place x [mm]."""
        return self.left + np.asarray(x) * self.scale


def along(frame: Frame, length: float) -> Along:
    """Lay a member along a frame, with room for the numbers of an axis on the left."""
    return Along(frame.left + 46, frame.right - 18, length)
