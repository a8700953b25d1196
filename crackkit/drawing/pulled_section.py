"""The cross-section of a pulled member: its bars, their cover, its sizes."""

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Text, rectangle
from crackkit.drawing.words_on import paragraph
from crackkit.structures import tie_bars
from crackkit.units import shown
from crackkit.words import _

WORDS = 128.0  # room for the words at its side
HEAD = 24.0  # for the heading


def pulled_section(structure, frame: Frame, view: View) -> list:
    """Draw the section, with its words at the right side."""
    room = frame.height - HEAD, frame.width - WORDS
    per_mm = min(room[0] / structure.depth, room[1] / structure.width)
    wide, tall = structure.width * per_mm, structure.depth * per_mm
    left = frame.left + 2.0
    top = frame.top + HEAD
    s = structure
    across = tie_bars.places(s.number, s.bar, s.width, s.depth, s.cover)
    radius = max(s.bar.diameter / 2 * per_mm, 2.6)
    return [
        Text(frame.left, frame.top + 14, _("Cross-section"), "label_bold"),
        rectangle(left, top, wide, tall, "concrete"),
        *(Circle(left + y * per_mm, top + z * per_mm, radius, "bar_dot") for y, z in across),
        *_words(structure, left + wide + 14.0, top + 12.0, frame, view),
    ]


def _words(structure, x: float, y: float, frame: Frame, view: View) -> list:
    shapes, room = [], frame.right - x
    for text, role in section_texts(structure, view):
        rows = paragraph(x, y, text, role, room, 2)
        shapes += rows
        y += 15.0 * len(rows) + 3.0
    return shapes


def section_texts(structure, view: View) -> list[tuple[str, str]]:
    """Bars, cover and sizes, each with a role."""
    sizes = _("{width} by {depth}").format(
        width=shown(structure.width, "size", view.system),
        depth=shown(structure.depth, "size", view.system),
    )
    if not structure.number:
        return [(_("no bars"), "label"), (sizes, "note")]
    texts = [(bars_told(structure), "label")]
    if structure.number > 1:
        cover = shown(structure.cover, "size", view.system)
        texts.append((_("cover {cover}").format(cover=cover), "note"))
    texts.append((sizes, "note"))
    if structure.surface == "plain":
        texts.append((_("smooth bars"), "note"))
    return texts


def bars_told(structure) -> str:
    """Name the bars: how many, and their size."""
    size = structure.bar.name
    size = size if size.startswith("#") else f"{size} mm"
    return f"{structure.number} × {size}"
