"""A sheet of paper as a picture: headings, sentences, tables and drawings below each other.

One painter then serves drawings and whole pages. Sheets lie on their long side and are 1130
drawing units wide whatever their size in mm: a picture fills one, its words some 9 points high.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Hint,
    Lines,
    Picture,
    Polygon,
    Polygons,
    Polyline,
    Raster,
    Text,
    line,
)
from crackkit.drawing.words_on import wrapped
from crackkit.words import _

WIDTH = 1130.0
MARGIN, TOP, BOTTOM = 40.0, 46.0, 30.0
INNER = WIDTH - 2 * MARGIN
LEADING = 18.0  # from line to line
PAPERS = {"a4": (297.0, 210.0), "letter": (279.4, 215.9)}  # mm, ISO 216 and ANSI/ASME Y14.1


@dataclass(frozen=True)
class Block:
    """Shapes with their height, the upper left corner at (0, 0)."""

    shapes: tuple
    height: float


def moved(shape, dx: float, dy: float, scale: float = 1.0):
    """Give a shape drawn larger or smaller about the origin, then moved.

    Words keep their size: a drawing should not be scaled far.
    """
    return _MOVED[type(shape)](shape, dx, dy, scale)


def _points_moved(shape, dx, dy, scale):
    return shape._replace(points=np.asarray(shape.points) * scale + (dx, dy))


def _lines_moved(shape, dx, dy, scale):
    return shape._replace(segments=np.asarray(shape.segments) * scale + (dx, dy))


def _place_moved(shape, dx, dy, scale):
    return shape._replace(x=shape.x * scale + dx, y=shape.y * scale + dy)


def _circle_moved(shape, dx, dy, scale):
    return _place_moved(shape, dx, dy, scale)._replace(radius=shape.radius * scale)


def _area_moved(shape, dx, dy, scale):
    wide, tall = shape.width * scale, shape.height * scale
    return _place_moved(shape, dx, dy, scale)._replace(width=wide, height=tall)


def _arrow_moved(shape, dx, dy, scale):
    tail = {"x1": shape.x1 * scale + dx, "y1": shape.y1 * scale + dy}
    return shape._replace(x2=shape.x2 * scale + dx, y2=shape.y2 * scale + dy, **tail)


def _group_moved(shape, dx, dy, scale):
    return Group(tuple(moved(inner, dx, dy, scale) for inner in shape.shapes))


def _outlines_moved(shape, dx, dy, scale):
    return shape._replace(outlines=np.asarray(shape.outlines) * scale + (dx, dy))


_MOVED = {
    Polygon: _points_moved,
    Polygons: _outlines_moved,
    Polyline: _points_moved,
    Lines: _lines_moved,
    Circle: _circle_moved,
    Arrow: _arrow_moved,
    Text: _place_moved,
    Raster: _area_moved,
    Hint: _area_moved,
    Group: _group_moved,
}


def heading(text: str) -> Block:
    """Make a heading."""
    return Block((Text(0.0, 26.0, text, "heading"),), 38.0)


def words(text: str, role: str = "label", width: float = INNER) -> Block:
    """Make a paragraph as long as it needs."""
    lines = wrapped(text, role, width)
    shapes = tuple(Text(0.0, 14.0 + LEADING * k, row, role) for k, row in enumerate(lines))
    return Block(shapes, LEADING * len(lines) + 4.0)


def drawing(picture: Picture, width: float = INNER) -> Block:
    """Set a picture, letters and all, into the given width or narrower, in the middle."""
    left = max((width - picture.width) / 2, 0.0)
    shapes = tuple(moved(shape, left, 0.0) for shape in picture.shapes)
    return Block(shapes, picture.height + 8.0)


def table_rows(rows, widths) -> list[Block]:
    """Make one block for each row of a table, so that a page can break between them.

    Parameters
    ----------
    rows : sequence of tuple of str
    widths : sequence of float
        Of the columns [drawing units].
    """
    return [_table_row(row, widths) for row in rows]


def _table_row(row, widths) -> Block:
    shapes, left, most = [], 0.0, 1
    for text, width in zip(row, widths, strict=True):
        lines = _broken(text, width - 8)
        most = max(most, len(lines))
        shapes += [Text(left, 13.0 + 15.0 * k, t, "note") for k, t in enumerate(lines)]
        left += width
    shapes.append(line(0.0, 15.0 * most + 4, left, 15.0 * most + 4, "grid"))
    return Block(tuple(shapes), 15.0 * most + 6.0)


def _broken(text: str, width: float) -> list[str]:
    """Break a text into lines; a word that is too long for one is cut."""
    lines = []
    for part in wrapped(text, "note", width):
        while width_of(part, "note") > width:
            cut = next(k for k in range(len(part), 0, -1) if width_of(part[:k], "note") <= width)
            lines.append(part[:cut])
            part = part[cut:]
        lines.append(part)
    return lines


def gap(height: float) -> Block:
    """Leave room."""
    return Block((), height)


def sheets(blocks, title: str, foot: str, paper: str = "a4", description: str = "") -> list:
    """Set blocks onto as many sheets as they need.

    Parameters
    ----------
    blocks : sequence of Block
    title, foot : str
        Title of the file, and the sentence at the foot of each sheet.
    paper : str
        ``"a4"`` or ``"letter"``.
    description : str
        What the sheets show, for readers who cannot see them.

    Returns
    -------
    list of Picture
    """
    wide, tall = PAPERS[paper]
    height = WIDTH * tall / wide
    feet = words(foot, "note")
    pages = _pages(blocks, height - TOP - BOTTOM - feet.height - 6.0)
    sheet = Picture(WIDTH, height, (), title, description or title)
    return [
        replace(sheet, shapes=(*_head(title, k, len(pages)), *_filled(page), *_foot(feet, height)))
        for k, page in enumerate(pages, 1)
    ]


def _pages(blocks, room: float) -> list[list[Block]]:
    pages, left = [[]], room
    for block in blocks:
        if block.height > left and pages[-1]:
            pages.append([])
            left = room
        pages[-1].append(block)
        left -= block.height
    return pages


def _head(title: str, number: int, count: int) -> tuple:
    said = _("page {n} of {count}").format(n=number, count=count)
    return (
        Text(MARGIN, 28.0, title, "heading"),
        Text(WIDTH - MARGIN, 28.0, said, "note", "end"),
    )


def _filled(page) -> tuple:
    shapes, y = [], TOP
    for block in page:
        shapes += [moved(shape, MARGIN, y) for shape in block.shapes]
        y += block.height
    return tuple(shapes)


def _foot(feet: Block, height: float) -> tuple:
    top = height - BOTTOM - feet.height
    rule = line(MARGIN, top - 2.0, WIDTH - MARGIN, top - 2.0, "axis")
    return (rule, *(moved(shape, MARGIN, top) for shape in feet.shapes))


def joined(upper: Block, lower: Block) -> Block:
    """Set one block below another so that no page breaks between them."""
    below = tuple(moved(shape, 0.0, upper.height) for shape in lower.shapes)
    return Block((*upper.shapes, *below), upper.height + lower.height)
