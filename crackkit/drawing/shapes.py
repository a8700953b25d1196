"""The display list: shapes in drawing units, each with a role, never with a raw colour.

x runs to the right and y down, as on a screen. Painters turn roles into style (`palette`). Of the
small shapes a picture has hundreds, made anew at each step: they are named tuples, which are made
in a third of the time of frozen dataclasses.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import NamedTuple

import numpy as np


class Polygon(NamedTuple):
    """A closed, filled outline; `points` has shape (n, 2)."""

    points: np.ndarray
    role: str


class Polygons(NamedTuple):
    """Many outlines drawn as one, shape (count, n, 2): the cracks of a member."""

    outlines: np.ndarray
    role: str


class Polyline(NamedTuple):
    """An open line; `width` overrides the width of the role [drawing units]."""

    points: np.ndarray
    role: str
    width: float | None = None


class Lines(NamedTuple):
    """Many separate straight lines, shape (n, 2, 2), drawn as one: hatches, ticks, grids."""

    segments: np.ndarray
    role: str


class Circle(NamedTuple):
    """A filled circle."""

    x: float
    y: float
    radius: float
    role: str


class Arrow(NamedTuple):
    """A straight arrow; its point is at (x2, y2)."""

    x1: float
    y1: float
    x2: float
    y2: float
    role: str
    head: float = 9.0


class Text(NamedTuple):
    """A line of words; (x, y) is on the baseline at its `anchor` (start, middle, end)."""

    x: float
    y: float
    text: str
    role: str
    anchor: str = "start"


class Raster(NamedTuple):
    """A map of values from -1 (squeezed) to +1 (stretched), row 0 on top."""

    x: float
    y: float
    width: float
    height: float
    values: np.ndarray


class Hint(NamedTuple):
    """An area that cannot be seen, with words for whoever points at it on a live page."""

    x: float
    y: float
    width: float
    height: float
    text: str


@dataclass(frozen=True)
class Handle:
    """What a reader can drag, and how a way on the drawing becomes a value.

    Attributes
    ----------
    path : str
        Which input it changes, a path in the structure.
    label, text : str
        Name of the handle and its present value in words, for readers that listen.
    axis : str
        ``"x"`` or ``"y"``: the direction in which it can be dragged. ``"toggle"``: it is pressed,
        not dragged; `path` is that of a switch, and `value` is 1 while it is on, else 0.
    per_unit : float
        Change of the value (inner units) for one drawing unit along the axis.
    value, low, high, step : float
        Present value, range and key step (inner units).
    upright : Handle or None
        What the same grip changes when it is dragged up and down, where it can be dragged all
        over a plan; its own axis is then ``"y"``.
    """

    path: str
    label: str
    text: str
    axis: str
    per_unit: float
    value: float
    low: float
    high: float
    step: float
    upright: "Handle | None" = None


@dataclass(frozen=True)
class Group:
    """Shapes that belong together; with a `handle` they can be dragged as one."""

    shapes: tuple
    handle: Handle | None = None


@dataclass(frozen=True)
class Picture:
    """A finished drawing, ready for any painter."""

    width: float
    height: float
    shapes: tuple
    title: str
    description: str = ""
    paper: str = field(default="paper")


def every_shape(shapes) -> Iterator:
    """Walk through all shapes, those inside groups too."""
    for shape in shapes:
        if isinstance(shape, Group):
            yield from every_shape(shape.shapes)
        else:
            yield shape


def handles(shapes) -> Iterator[Handle]:
    """Walk through the handles of a drawing."""
    for shape in shapes:
        if isinstance(shape, Group):
            if shape.handle:
                yield shape.handle
            if shape.handle and shape.handle.upright:
                yield shape.handle.upright
            yield from handles(shape.shapes)


def without_handles(picture: Picture, paths) -> Picture:
    """Give the picture with the handles of these paths taken off: they are not to be dragged."""
    return replace(picture, shapes=tuple(_loosened(shape, paths) for shape in picture.shapes))


def _loosened(shape, paths):
    if not isinstance(shape, Group):
        return shape
    inside = tuple(_loosened(one, paths) for one in shape.shapes)
    if shape.handle is None or shape.handle.path not in paths:
        return Group(inside, shape.handle)
    return Group(tuple(one for one in inside if getattr(one, "role", "") != "grip"))


def rectangle(x: float, y: float, width: float, height: float, role: str) -> Polygon:
    """Make an upright rectangle from its upper left corner."""
    right, bottom = x + width, y + height
    return Polygon(np.array((x, y, right, y, right, bottom, x, bottom)).reshape(4, 2), role)


def line(x1: float, y1: float, x2: float, y2: float, role: str) -> Polyline:
    """Make a straight line."""
    return Polyline(np.array((x1, y1, x2, y2)).reshape(2, 2), role)
