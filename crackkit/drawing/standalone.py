"""An SVG that stands by itself: a file, or an image inside a page, with its words beside it."""

import base64
from dataclasses import replace
from html import escape

from crackkit.drawing.shapes import Group, Hint, Picture
from crackkit.drawing.svg import svg


def standalone(picture: Picture, theme: str = "light") -> str:
    """Paint a picture as an SVG file with a size of its own and nothing to drag.

    Parameters
    ----------
    picture : Picture
    theme : str
        Name of a theme, see `palette`.
    """
    still = replace(picture, shapes=unhandled(picture.shapes))
    size = f'width="{picture.width:g}" height="{picture.height:g}"'
    opening, rest = svg(still, theme).split(">", 1)
    opening = opening.replace("<svg ", f"<svg {size} ", 1).replace('role="group"', 'role="img"')
    # scripts and captions that read the file find its words even where titles are ignored
    return f'{opening} aria-label="{escape(alt_text(picture))}">{rest}\n'


def unhandled(shapes) -> tuple:
    """Give the shapes without their handles, and without hints for a pointer."""
    return tuple(
        Group(unhandled(shape.shapes)) if isinstance(shape, Group) else shape
        for shape in shapes
        if not isinstance(shape, Hint)
    )


def alt_text(picture: Picture) -> str:
    """Say in words what the picture shows."""
    title = picture.title.rstrip(".")
    return f"{title}. {picture.description}".strip()


def image(picture: Picture, theme: str = "light") -> str:
    """Give an HTML image element that carries the picture and its words inside itself.

    Parameters
    ----------
    picture : Picture
    theme : str
        Name of a theme, see `palette`.
    """
    packed = base64.b64encode(standalone(picture, theme).encode("utf-8")).decode("ascii")
    return (
        f'<img alt="{escape(alt_text(picture))}" style="width:100%;max-width:{picture.width:g}px;'
        f'height:auto" src="data:image/svg+xml;base64,{packed}">'
    )
