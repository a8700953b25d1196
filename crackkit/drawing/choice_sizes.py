"""Sizes on the cross-section: cover and spacing, which can be dragged, and the clear gap."""

from crackkit.drawing.choice_cut import Cut
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Arrow, Circle, Group, Handle, Text, line, rectangle
from crackkit.structures import fields
from crackkit.structures.control_ranges import is_slab
from crackkit.units import shown
from crackkit.units.quantities import scale
from crackkit.words import _

GRIP = 6.0
COVER_OUT = 18.0  # how far left of the concrete the cover is measured
FIRST, SECOND = 22.0, 48.0  # rows of sizes under the face
NEAR = 26.0  # least length of a size between two arrows


def cover_size(cut: Cut, control, view: View) -> list:
    """Measure the cover at the left side; on a live page it can be dragged."""
    structure = cut.structure
    x, y, face = cut.left - COVER_OUT, cut.y(structure.cover), cut.face
    short = control is not None and control.cover < control.asked.cover - 0.5
    words = [(shown(structure.cover, "size", view.system), "bad_word" if short else "label_bold")]
    words.insert(0, (_("cover"), "note"))
    if structure.slack:
        words.append((f"± {shown(structure.slack, 'size', view.system)}", "note"))
    high = (y + face) / 2 - 7.5 * len(words) + 11
    return [
        line(x - 5, y, cut.left, y, "leader"),
        line(x - 5, face, cut.left, face, "leader"),
        *_between(x, y, face),
        *(Text(x - 12, high + 15.0 * k, text, role, "end") for k, (text, role) in enumerate(words)),
        *([_cover_handle(cut, x, y, view)] if view.live else []),
    ]


def _between(x: float, y: float, face: float) -> list:
    """Arrows from the middle of an upright size to its ends."""
    if face - y < 14.0:
        return [line(x, y, x, face, "leader")]
    return [Arrow(x, (y + face) / 2, x, end, "spread_load", 6.0) for end in (y, face)]


def _cover_handle(cut: Cut, x: float, y: float, view: View) -> Group:
    words = shown(cut.structure.cover, "size", view.system)
    handle = size_handle(cut.structure, "cover", _("cover"), words, "y", -1.0 / cut.scale, view)
    return Group((rectangle(x - 12, y - 12, 24, 24, "hit"), Circle(x, y, GRIP, "grip")), handle)


def spacing_size(cut: Cut, view: View) -> list:
    """Measure the spacing under the face; in a slab it can be dragged."""
    if cut.bay is None:
        return []
    a, b = cut.bay
    y, words = cut.face + FIRST, shown(cut.main.spacing, "size", view.system)
    low = max(cut.heights(cut.main)) + cut.main.diameter / 2 * cut.scale
    shapes = [line(x, low, x, y + 5, "leader") for x in (a, b)]
    half = width_of(words, "label_bold") / 2
    if b - a > NEAR:
        shapes += [Arrow((a + b) / 2, y, x, y, "spread_load", 6.0) for x in (a, b)]
    side = _("{distance} centre to centre").format(distance=words)
    if b - a > 2 * half + 44.0:
        shapes.append(rectangle((a + b) / 2 - half - 4, y - 8, 2 * half + 8, 16, "paper"))
        shapes.append(Text((a + b) / 2, y + 4.5, words, "label_bold", "middle"))
    else:
        shapes.append(Text(b + 14, y + 4.5, _fitting(side, words, b + 14, cut), "label_bold"))
    if view.live and is_slab(cut.structure):
        way = 2.0 / cut.scale  # the bars on both sides of the middle move alike
        handle = size_handle(
            cut.structure, "spacing", _("spacing of the bars"), words, "x", way, view
        )
        hit = rectangle(b - 12, y - 12, 24, 24, "hit")
        shapes.append(Group((hit, Circle(b, y, GRIP, "grip")), handle))
    return shapes


def _fitting(long: str, short: str, x: float, cut: Cut) -> str:
    return long if x + width_of(long, "label_bold") <= cut.frame.right else short


def gap_size(cut: Cut, control, view: View) -> list:
    """Measure what is clear between two bars, a row further down."""
    if cut.bay is None:
        return []
    half = cut.main.diameter / 2 * cut.scale
    a, b = cut.bay[0] + half, cut.bay[1] - half
    y, gap = cut.face + SECOND, cut.main.gap
    tight = control is not None and gap < control.least_gap - 0.5
    words, role = _gap_words(gap, view), "bad_word" if tight or gap < 0 else "label"
    centre = (cut.bay[0] + cut.bay[1]) / 2
    shapes = [Text(centre, y + 18, words, role, "middle")]
    if b - a > 4.0:
        shapes.insert(0, line(a, y, b, y, "leader"))
        shapes += [line(x, y - 5, x, y + 5, "leader") for x in (a, b)]
    return shapes


def _gap_words(gap: float, view: View) -> str:
    if gap < 0:
        return _("no room side by side")
    return _("clear between them {gap}").format(gap=shown(gap, "size", view.system))


def size_handle(structure, path: str, label: str, words: str, axis: str, way: float, view: View):
    """Make the handle of an input that is a size."""
    found, keys = fields.input_at(structure, path), scale("size", view.system)
    step = keys.step * keys.factor
    return Handle(path, label, words, axis, way, found.value, found.low, found.high, step)
