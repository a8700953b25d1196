"""The painter for paper: a Picture becomes a matplotlib figure, a PDF, a PNG or an SVG file.

matplotlib is loaded when the first figure is asked for; its state machine (pyplot) never is.
"""

from functools import cache
from pathlib import Path

import numpy as np

from crackkit.drawing import raster
from crackkit.drawing.fonts import printed_size, typeface
from crackkit.drawing.palette import THEMES
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
)
from crackkit.drawing.standalone import standalone
from crackkit.drawing.svg import arrow_head

MM_PER_INCH = 25.4
POINTS_PER_INCH = 72.0
DPI = 200
FORMATS = ("pdf", "png", "svg")
# Words stay words in a PDF (they can be searched and read aloud); letters are not moved onto
# whole pixels, which would make some labels wider than their boxes.
_SETTINGS = {"pdf.fonttype": 42, "text.hinting": "none", "text.usetex": False}


def figure(picture: Picture, theme: str = "print", width_mm: float = 180.0):
    """Paint a picture as a matplotlib figure.

    Parameters
    ----------
    picture : Picture
    theme : str
        Name of a theme, see `palette`.
    width_mm : float
        Width of the figure on paper, above 0 [mm].

    Returns
    -------
    matplotlib.figure.Figure
        It shows itself in a notebook; nothing of pyplot is touched.
    """
    canvas = _canvas(picture, theme, width_mm)
    brush = _Brush(canvas.axes[0], theme, _points_per_unit(picture, width_mm))
    brush.rectangle(picture.width, picture.height)
    brush.paint(picture.shapes)
    return canvas


def save(picture: Picture, target, format: str | None = None, theme: str = "print") -> None:
    """Write a picture to a file or a buffer.

    Parameters
    ----------
    picture : Picture
    target : str, Path or binary buffer
        Where it goes.
    format : str
        ``"pdf"``, ``"png"`` (200 dots per inch) or ``"svg"``; by default what the file's name
        ends with.
    theme : str
        Name of a theme, see `palette`.

    Raises
    ------
    ValueError
        If the format is not one of these.
    """
    chosen = file_format(target, format)
    if chosen == "svg":
        _write(target, standalone(picture, theme).encode("utf-8"))
        return
    about = _about(picture, chosen)
    figure(picture, theme).savefig(target, format=chosen, dpi=DPI, metadata=about)


def save_pages(pictures, target, theme: str = "print", width_mm: float = 210.0) -> None:
    """Write pictures to one PDF, each on a page of its own.

    Parameters
    ----------
    pictures : sequence of Picture
    target : str, Path or binary buffer
        Where it goes.
    theme : str
        Name of a theme, see `palette`.
    width_mm : float
        Width of each page, above 0 [mm].
    """
    from matplotlib import rc_context
    from matplotlib.backends.backend_pdf import PdfPages

    about = _about(pictures[0], "pdf")
    with rc_context(_SETTINGS), PdfPages(target, metadata=about) as pages:
        for picture in pictures:
            pages.savefig(figure(picture, theme, width_mm))


def file_format(target, format: str | None = None) -> str:
    """Give the format that is asked for, or that the name of the file ends with."""
    name = getattr(target, "name", target)
    chosen = (format or Path(str(name)).suffix.lstrip(".")).lower()
    if chosen not in FORMATS:
        raise ValueError(f"{chosen!r} is not one of {', '.join(FORMATS)}")
    return chosen


def _write(target, content: bytes) -> None:
    if hasattr(target, "write"):
        target.write(content)
    else:
        Path(target).write_bytes(content)


def _about(picture: Picture, format: str) -> dict:
    """Title and description inside the file, without the hour it was made."""
    if format == "pdf":
        return {"Title": picture.title, "Subject": picture.description, "CreationDate": None}
    return {"Title": picture.title, "Description": picture.description, "Software": "crackkit"}


def _points_per_unit(picture: Picture, width_mm: float) -> float:
    return width_mm / MM_PER_INCH * POINTS_PER_INCH / picture.width


def _canvas(picture: Picture, theme: str, width_mm: float):
    wide = width_mm / MM_PER_INCH
    sheet = _figure_class()(
        figsize=(wide, wide * picture.height / picture.width),
        dpi=DPI,
        facecolor=THEMES[theme].style("paper").fill,
    )
    axes = sheet.add_axes((0.0, 0.0, 1.0, 1.0))
    axes.set_axis_off()
    axes.set_xlim(0.0, picture.width)
    axes.set_ylim(picture.height, 0.0)
    return sheet


@cache
def _figure_class():
    from io import BytesIO

    from matplotlib import rc_context
    from matplotlib.figure import Figure

    class PaperFigure(Figure):
        """A figure that shows itself in a notebook, and whose letters keep their widths."""

        def draw(self, renderer) -> None:
            with rc_context(_SETTINGS):
                super().draw(renderer)

        def savefig(self, *target, **options) -> None:
            with rc_context(_SETTINGS):
                super().savefig(*target, **options)

        def _repr_png_(self) -> bytes:
            buffer = BytesIO()
            self.savefig(buffer, format="png", dpi=110)
            return buffer.getvalue()

    return PaperFigure


class _Brush:
    """Paints shapes one above the other on axes that span the paper; all are clipped to it."""

    def __init__(self, axes, theme: str, scale: float):
        self.axes, self.theme, self.scale = axes, theme, scale
        self.layer = 0

    def paint(self, shapes) -> None:
        """Paint shapes in their order, the last on top."""
        for shape in shapes:
            if isinstance(shape, Group):
                self.paint(shape.shapes)
            else:
                _PAINTERS[type(shape)](self, shape)

    def rectangle(self, width: float, height: float) -> None:
        """Paint the paper."""
        corners = np.array([(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)])
        self.outline(corners, self.style("paper"))

    def style(self, role: str):
        """Look up a role in the theme."""
        return THEMES[self.theme].style(role)

    def outline(self, points, style) -> None:
        """Fill a closed outline and draw its edge."""
        from matplotlib.path import Path as Outline

        self.shape(Outline(_closed(points), closed=True), style, style.fill)

    def strokes(self, vertices, codes, style, width: float | None = None, cap="round") -> None:
        """Draw open lines."""
        from matplotlib.path import Path as Outline

        self.shape(Outline(vertices, codes), style, None, width, cap)

    def shape(self, path, style, fill, width=None, cap="round") -> None:
        """Fill and stroke a path in the look of a role."""
        from matplotlib.patches import PathPatch

        thick = width or style.width
        patch = PathPatch(
            path,
            facecolor=fill or "none",
            edgecolor=style.stroke or "none",
            linewidth=thick * self.scale if style.stroke else 0.0,
            linestyle=_dashes(style.dash, thick),
            capstyle="butt" if style.dash else cap,
            joinstyle="round",
            alpha=style.opacity,
        )
        self.add(patch)

    def add(self, patch) -> None:
        """Put a patch on top of what is there."""
        patch.set_zorder(self.next_layer())
        self.axes.add_patch(patch)

    def next_layer(self) -> int:
        """Count the layers; matplotlib would else sort shapes by their kind."""
        self.layer += 1
        return self.layer


def _closed(points) -> np.ndarray:
    points = np.asarray(points, dtype=float)
    return np.concatenate([points, points[:1]])


def _dashes(dash: str | None, width: float):
    """Dashes in the widths of the line, as matplotlib counts them."""
    if not dash:
        return "solid"
    return (0.0, [float(part) / width for part in dash.split()])


def _polygon(brush: _Brush, shape: Polygon) -> None:
    brush.outline(shape.points, brush.style(shape.role))


def _polygons(brush: _Brush, shape: Polygons) -> None:
    for outline in shape.outlines:
        _polygon(brush, Polygon(outline, shape.role))


def _polyline(brush: _Brush, shape: Polyline) -> None:
    brush.strokes(np.asarray(shape.points, float), None, brush.style(shape.role), shape.width)


def _lines(brush: _Brush, shape: Lines) -> None:
    from matplotlib.path import Path as Outline

    vertices = np.asarray(shape.segments, dtype=float).reshape(-1, 2)
    codes = [Outline.MOVETO, Outline.LINETO] * (len(vertices) // 2)
    brush.strokes(vertices, codes, brush.style(shape.role))


def _circle(brush: _Brush, shape: Circle) -> None:
    from matplotlib.path import Path as Outline

    round_path = Outline.circle((shape.x, shape.y), shape.radius)
    style = brush.style(shape.role)
    brush.shape(round_path, style, style.fill)


def _arrow(brush: _Brush, shape: Arrow) -> None:
    style, head = brush.style(shape.role), arrow_head(shape)
    shaft = np.array([(shape.x1, shape.y1), head[1:].mean(axis=0)])
    brush.strokes(shaft, None, style, cap="butt")
    brush.outline(head, _plain(style))


def _plain(style):
    from dataclasses import replace

    return replace(style, stroke=None)


def _text(brush: _Brush, shape: Text) -> None:
    style = brush.style(shape.role)
    brush.axes.text(
        shape.x,
        shape.y,
        shape.text,
        color=style.fill,
        alpha=style.opacity,
        fontproperties=typeface(style.bold),
        fontsize=printed_size(shape.text, style.size, style.bold) * brush.scale,
        horizontalalignment={"start": "left", "middle": "center", "end": "right"}[shape.anchor],
        verticalalignment="baseline",
        parse_math=False,
        clip_on=True,
        zorder=brush.next_layer(),
    )


def _raster(brush: _Brush, shape: Raster) -> None:
    colours = raster.colours(shape.values, brush.theme)
    brush.axes.imshow(
        colours,
        extent=(shape.x, shape.x + shape.width, shape.y + shape.height, shape.y),
        aspect="auto",
        interpolation="bilinear",
        zorder=brush.next_layer(),
    )


def _hint(_brush: _Brush, _shape: Hint) -> None:
    """Paper has no pointer."""


_PAINTERS = {
    Polygon: _polygon,
    Polygons: _polygons,
    Polyline: _polyline,
    Lines: _lines,
    Circle: _circle,
    Arrow: _arrow,
    Text: _text,
    Raster: _raster,
    Hint: _hint,
}
