"""The live painter: a Picture becomes one SVG string (about half a millisecond, some 20 kB)."""

import math
from functools import cache, lru_cache
from html import escape as escaped

import numpy as np

from crackkit.drawing import raster
from crackkit.drawing.palette import FONT, THEMES, Style
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Handle,
    Hint,
    Lines,
    Picture,
    Polygon,
    Polygons,
    Polyline,
    Raster,
    Text,
)
from crackkit.drawing.tenths import tenths

# most words of a picture are those of the one before it
escape = lru_cache(maxsize=2000)(escaped)


def svg(picture: Picture, theme: str = "light") -> str:
    """Paint a picture.

    Parameters
    ----------
    picture : Picture
    theme : str
        ``"light"``, ``"dark"``, ``"projector"`` or ``"print"``.

    Returns
    -------
    str
        An SVG element with title and description, no ids, that fills the width it is given.
    """
    parts = [_opening(picture, theme)]
    _paint_all(picture.shapes, theme, parts)
    parts.append("</svg>")
    return "".join(parts)


def _opening(picture: Picture, theme: str) -> str:
    w, h = f"{picture.width:g}", f"{picture.height:g}"
    paper = THEMES[theme].style("paper").fill
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {w} {h}" role="group" '
        f'style="width:100%;height:auto;display:block" font-family="{FONT}" '
        f'stroke-linejoin="round" stroke-linecap="round"><title>{escape(picture.title)}</title>'
        f'<desc>{escape(picture.description)}</desc><rect width="{w}" height="{h}" rx="6" '
        f'fill="{paper}"/>'
    )


def _paint_all(shapes, theme: str, parts: list[str]) -> None:
    for shape in shapes:
        if isinstance(shape, Group):
            parts.append(_group_opening(shape.handle))
            _paint_all(shape.shapes, theme, parts)
            parts.append("</g>")
        else:
            parts.append(_PAINTERS[type(shape)](shape, theme))


def _group_opening(handle: Handle | None) -> str:
    if handle is None:
        return "<g>"
    if handle.axis == "toggle":
        return _switch_opening(handle)
    h = handle
    return (
        f'<g class="ck-handle" tabindex="0" role="slider" focusable="true" '
        f'aria-label="{escape(h.label)}" aria-valuetext="{escape(h.text)}" '
        f'aria-valuenow="{h.value:.10g}" '
        f'aria-valuemin="{h.low:.10g}" aria-valuemax="{h.high:.10g}" '
        f'aria-orientation="{"horizontal" if h.axis == "x" else "vertical"}" '
        f'data-path="{escape(h.path)}" data-axis="{h.axis}" data-per-unit="{h.per_unit:.9g}" '
        f'data-step="{h.step:.9g}"{_upright(h.upright)}>'
    )


def _upright(handle: Handle | None) -> str:
    """What the grip does up and down, where it can be dragged all over a plan."""
    if handle is None:
        return ""
    h = handle
    return (
        f' data-up-path="{escape(h.path)}" data-up-per-unit="{h.per_unit:.9g}" '
        f'data-up-step="{h.step:.9g}" data-up-value="{h.value:.10g}" '
        f'data-up-low="{h.low:.10g}" data-up-high="{h.high:.10g}"'
    )


def _switch_opening(handle: Handle) -> str:
    on = "true" if handle.value else "false"
    return (
        f'<g class="ck-handle" tabindex="0" role="switch" focusable="true" aria-checked="{on}" '
        f'aria-label="{escape(handle.label)}" data-path="{escape(handle.path)}" '
        f'data-axis="toggle">'
    )


@cache
def _attributes(theme: str, role: str) -> str:
    return _written(THEMES[theme].style(role))


def _written(style: Style) -> str:
    words = [f'fill="{style.fill or "none"}"']
    if style.stroke:
        words.append(f'stroke="{style.stroke}" stroke-width="{style.width:g}"')
    if style.dash:
        words.append(f'stroke-dasharray="{style.dash}" stroke-linecap="butt"')
    if style.opacity != 1.0:
        # quicker to paint than the opacity of a whole element
        words.append(f'fill-opacity="{style.opacity:g}" stroke-opacity="{style.opacity:g}"')
    return " ".join(words)


@cache
def _line_only(theme: str, role: str, width: float | None) -> str:
    style = THEMES[theme].style(role)
    words = f'fill="none" stroke="{style.stroke}" stroke-width="{width or style.width:.4g}"'
    if style.dash:
        words += f' stroke-dasharray="{style.dash}" stroke-linecap="butt"'
    if style.opacity != 1.0:
        words += f' stroke-opacity="{style.opacity:g}"'
    return words


def _points(points: np.ndarray) -> str:
    return tenths(np.asarray(points), (" ", ","))[1:]


def _polygon(shape: Polygon, theme: str) -> str:
    return f'<polygon points="{_points(shape.points)}" {_attributes(theme, shape.role)}/>'


def _polygons(shape: Polygons, theme: str) -> str:
    outlines = np.asarray(shape.outlines)
    path = tenths(outlines, _outline_signs(outlines.shape[1]))[1:]
    return f'<path d="{path}Z" {_attributes(theme, shape.role)}/>'


@cache
def _outline_signs(points: int) -> tuple[str, ...]:
    return ("ZM", " ", *["L", " "] * (points - 1))


def _polyline(shape: Polyline, theme: str) -> str:
    look = _line_only(theme, shape.role, shape.width)
    return f'<polyline points="{_points(shape.points)}" {look}/>'


def _lines(shape: Lines, theme: str) -> str:
    path = tenths(np.asarray(shape.segments), ("M", " ", "L", " "))
    return f'<path d="{path}" {_line_only(theme, shape.role, None)}/>'


def _circle(shape: Circle, theme: str) -> str:
    place = f'cx="{shape.x:.1f}" cy="{shape.y:.1f}" r="{shape.radius:.1f}"'
    return f"<circle {place} {_attributes(theme, shape.role)}/>"


def arrow_head(shape: Arrow) -> np.ndarray:
    """Corners of the head of an arrow, shape (3, 2)."""
    return np.array(_head_corners(shape))


def _head_corners(shape: Arrow) -> list[tuple[float, float]]:
    along_x, along_y = shape.x2 - shape.x1, shape.y2 - shape.y1
    length = math.hypot(along_x, along_y) or 1.0
    ux, uy = shape.head * along_x / length, shape.head * along_y / length
    x, y = shape.x2 - ux, shape.y2 - uy
    return [
        (shape.x2, shape.y2),
        (x - 0.45 * uy, y + 0.45 * ux),
        (x + 0.45 * uy, y - 0.45 * ux),
    ]


def _arrow(shape: Arrow, theme: str) -> str:
    tip, (ax, ay), (bx, by) = _head_corners(shape)
    numbers = (shape.x1, shape.y1, (ax + bx) / 2, (ay + by) / 2, *tip, ax, ay, bx, by)
    return _arrow_template(theme, shape.role) % numbers


@cache
def _arrow_template(theme: str, role: str) -> str:
    style = THEMES[theme].style(role)
    return (
        f'<path d="M%.1f %.1fL%.1f %.1f" fill="none" stroke="{style.stroke}" '
        f'stroke-width="{style.width:g}" stroke-linecap="butt"/>'
        f'<polygon points="%.1f,%.1f %.1f,%.1f %.1f,%.1f" fill="{style.fill}"/>'
    )


@cache
def _letters(theme: str, role: str) -> str:
    style = THEMES[theme].style(role)
    bold = ' font-weight="700"' if style.bold else ""
    return f'fill="{style.fill}" font-size="{style.size:g}"{bold}'


def _text(shape: Text, theme: str) -> str:
    anchor = "" if shape.anchor == "start" else f' text-anchor="{shape.anchor}"'
    look = _letters(theme, shape.role)
    return f'<text x="{shape.x:.1f}" y="{shape.y:.1f}" {look}{anchor}>{escape(shape.text)}</text>'


def _raster(shape: Raster, theme: str) -> str:
    return (
        f'<image x="{shape.x:.1f}" y="{shape.y:.1f}" width="{shape.width:.1f}" '
        f'height="{shape.height:.1f}" preserveAspectRatio="none" '
        f'href="{raster.data_address(shape.values, theme)}"/>'
    )


def _hint(shape: Hint, _theme: str) -> str:
    # the page reads the words aloud and shows them; an area of its own needs no paint
    return (
        f'<rect class="ck-hint" x="{shape.x:.1f}" y="{shape.y:.1f}" width="{shape.width:.1f}" '
        f'height="{shape.height:.1f}" fill="none" pointer-events="all" '
        f'data-hint="{escape(shape.text)}"/>'
    )


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
