"""The live painter: a Picture becomes one SVG string (about half a millisecond, some 20 kB)."""

import math
from functools import cache, lru_cache
from html import escape as escaped
from itertools import groupby
from operator import attrgetter

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
from crackkit.drawing.tenths import FEW, steps, tenths

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
    for (kind, look), run in groupby(_opened(shapes), _look):
        alike = list(run)
        if kind is Group:
            for group in alike:
                parts.append(_group_opening(group.handle))
                _paint_all(group.shapes, theme, parts)
                parts.append("</g>")
        elif len(alike) > 2 and kind in _TOGETHER:
            parts.append(_TOGETHER[kind](alike, theme, look))
        else:
            paint = _PAINTERS[kind]
            parts += [paint(shape, theme) for shape in alike]


def _opened(shapes) -> list:
    """List shapes; what is in a group without a handle stands for itself."""
    found = []
    for shape in shapes:
        if type(shape) is Group and shape.handle is None:
            found += _opened(shape.shapes)
        else:
            found.append(shape)
    return found


def _look(shape) -> tuple:
    """What neighbours must have in common to be painted together."""
    kind = type(shape)
    read = _LOOKS.get(kind)
    return kind, read(shape) if read else None


def _group_opening(handle: Handle) -> str:
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
    points = np.asarray(shape.points)
    if points.size > FEW:
        return f'<path d="{steps(points[None], closed=True)}" {_attributes(theme, shape.role)}/>'
    return f'<polygon points="{_points(shape.points)}" {_attributes(theme, shape.role)}/>'


def _polygons(shape: Polygons, theme: str) -> str:
    path = steps(np.asarray(shape.outlines), closed=True)
    return f'<path d="{path}" {_attributes(theme, shape.role)}/>'


def _polyline(shape: Polyline, theme: str) -> str:
    look, points = _line_only(theme, shape.role, shape.width), np.asarray(shape.points)
    if points.size > FEW:
        return f'<path d="{steps(points[None])}" {look}/>'
    return f'<polyline points="{_points(points)}" {look}/>'


def _polylines(shapes, theme: str, look: tuple[str, float | None]) -> str:
    path = "".join([_absolute(np.asarray(shape.points)) for shape in shapes])
    return f'<path d="{path}" {_line_only(theme, *look)}/>'


def _absolute(points: np.ndarray) -> str:
    if points.size > FEW:
        return steps(points[None])
    return tenths(points, ("M", " ", *[" ", " "] * (len(points) - 1)))


def _lines(shape: Lines, theme: str) -> str:
    segments = np.asarray(shape.segments)
    if segments.size > FEW:
        path = steps(segments)
    else:
        path = tenths(segments, ("M", " ", "L", " "))
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


_SHAFT, _HEAD = "M%.1f %.1fL%.1f %.1f", "M%.1f %.1f %.1f %.1f %.1f %.1fz"


def _arrows(shapes, theme: str, role: str) -> str:
    """All the shafts in one path and all the heads in another."""
    shafts, heads = [], []
    for shape in shapes:
        tip, (ax, ay), (bx, by) = _head_corners(shape)
        shafts.append(_SHAFT % (shape.x1, shape.y1, (ax + bx) / 2, (ay + by) / 2))
        heads.append(_HEAD % (*tip, ax, ay, bx, by))
    shaft, head = _arrow_looks(theme, role)
    return f'<path d="{"".join(shafts)}" {shaft}/><path d="{"".join(heads)}" {head}/>'


@cache
def _arrow_looks(theme: str, role: str) -> tuple[str, str]:
    style = THEMES[theme].style(role)
    shaft = f'fill="none" stroke="{style.stroke}" stroke-width="{style.width:g}"'
    return f'{shaft} stroke-linecap="butt"', f'fill="{style.fill}"'


@cache
def _arrow_template(theme: str, role: str) -> str:
    shaft, head = _arrow_looks(theme, role)
    return f'<path d="{_SHAFT}" {shaft}/><polygon points="%.1f,%.1f %.1f,%.1f %.1f,%.1f" {head}/>'


@cache
def _letters(theme: str, role: str, anchor: str) -> str:
    style = THEMES[theme].style(role)
    bold = ' font-weight="700"' if style.bold else ""
    placed = "" if anchor == "start" else f' text-anchor="{anchor}"'
    return f'fill="{style.fill}" font-size="{style.size:g}"{bold}{placed}'


def _text(shape: Text, theme: str) -> str:
    look = _letters(theme, shape.role, shape.anchor)
    return f'<text x="{shape.x:.1f}" y="{shape.y:.1f}" {look}>{escape(shape.text)}</text>'


def _texts(shapes, theme: str, look: tuple[str, str]) -> str:
    lines = [f'<text x="{s.x:.1f}" y="{s.y:.1f}">{escape(s.text)}</text>' for s in shapes]
    return f"<g {_letters(theme, *look)}>{''.join(lines)}</g>"


def _raster(shape: Raster, theme: str) -> str:
    return (
        f'<image x="{shape.x:.1f}" y="{shape.y:.1f}" width="{shape.width:.1f}" '
        f'height="{shape.height:.1f}" preserveAspectRatio="none" '
        f'href="{raster.data_address(shape.values, theme)}"/>'
    )


# the page reads the words aloud and shows them; an area of its own needs no paint
_UNPAINTED = 'fill="none" pointer-events="all"'


def _hint(shape: Hint, _theme: str) -> str:
    return _hint_area(shape, f" {_UNPAINTED}")


def _hints(shapes, _theme: str, _look) -> str:
    return f"<g {_UNPAINTED}>{''.join([_hint_area(shape) for shape in shapes])}</g>"


def _hint_area(shape: Hint, look: str = "") -> str:
    return (
        f'<rect class="ck-hint" x="{shape.x:.1f}" y="{shape.y:.1f}" width="{shape.width:.1f}" '
        f'height="{shape.height:.1f}"{look} data-hint="{escape(shape.text)}"/>'
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
# Neighbours that look alike become one element, or one group that says once how they look: the
# page is quicker with few elements. Only lines of one full colour, whose order cannot be seen.
_LOOKS = {
    Polyline: attrgetter("role", "width"),
    Arrow: attrgetter("role"),
    Text: attrgetter("role", "anchor"),
}
_TOGETHER = {Polyline: _polylines, Arrow: _arrows, Text: _texts, Hint: _hints}
