"""What is written beside and below the cross-section of a strip."""

from crackkit.drawing.choice_cut import Cut
from crackkit.drawing.frames import View
from crackkit.drawing.labels import spread
from crackkit.drawing.shapes import Text, line
from crackkit.drawing.words_on import wrapped
from crackkit.structures import control_ranges as ranges
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

BELOW = 92.0  # first line of words under the face
LINE = 15.0


def side_words(cut: Cut, control, view: View) -> list:
    """Name at the right side what the rules ask for, and how deep the air has worked in."""
    if control is None:
        return []
    rows = []
    asked = max(cut.y(control.asked.cover), cut.top)
    told = shown(control.asked.cover, "size", view.system)
    short = control.cover < control.asked.cover - 0.5
    role = "bad_word" if short else "label"
    rows.append((asked, [_("cover asked"), told], role))
    deep = max(cut.y(control.carbonated / 2), cut.top)
    told = _("reaches {depth}").format(depth=shown(control.carbonated, "size", view.system))
    reached = control.carbonated > control.cover - cut.structure.slack
    rows.append((deep, [_("in 50 years air"), told], "bad_word" if reached else "note"))
    heights = spread(
        [row[0] for row in rows], [2 * LINE] * 2, cut.frame.top + 34.0, cut.face + 13.0, 5.0
    )
    shapes = []
    for (wish, lines, role), y in zip(rows, heights, strict=True):
        x = cut.right + 20
        shapes.append(line(cut.right + 8, wish, x - 3, y, "leader"))
        shapes += [Text(x, y - 3 + LINE * k, words, role) for k, words in enumerate(lines)]
    return shapes


def told_below(cut: Cut, view: View) -> list:
    """Say under the sizes which bars they are."""
    y, x = cut.frame.bottom - 6.0, cut.frame.left + 4
    rows = [row for text in section_texts(cut, view) for row in _rows(text, cut)]
    first = y - LINE * (len(rows) - 1)
    return [Text(x, first + LINE * k, text, "note") for k, text in enumerate(rows)]


def _rows(text: str, cut: Cut) -> list[str]:
    return wrapped(text, "note", cut.frame.width - 8)


def section_texts(cut: Cut, view: View) -> list[str]:
    """Main bars, bars across, what is not drawn."""
    structure = cut.structure
    texts = [_key_told(structure, view)]
    more = []
    if structure.fibres != "none":
        more.append(_("Strokes: fibres."))
    if not cut.whole and structure.action != BENT:
        more.append(_("The upper face is alike."))
    elif not cut.whole:
        more.append(_("Only the stretched face is drawn."))
    return [*texts, " ".join(more)] if more else texts


def size_told(size: str) -> str:
    """Name a bar size."""
    return size if size.startswith("#") else f"{size} mm"


def main_told(structure, view: View) -> str:
    """Say which main bars there are, and how many or how far apart."""
    size = size_told(structure.size)
    if ranges.is_beam(structure):
        return f"{structure.number} × {size}"
    return _mat_told(size, structure.spacing, view)


def across_told(structure, view: View) -> str:
    """Say which bars run the other way; empty where there are none."""
    if not ranges.has_across(structure):
        return ""
    return _mat_told(size_told(structure.cross_size), structure.cross_spacing, view)


def _mat_told(size: str, spacing: float, view: View) -> str:
    every = shown(spacing, "size", view.system)
    return _("{size} every {distance}").format(size=size, distance=every)


def bars_told(structure, view: View) -> str:
    """Say in a sentence or two which bars there are."""
    sentences = [_("Main bars: {bars}.").format(bars=main_told(structure, view))]
    across = across_told(structure, view)
    if across:
        sentences.append(_("Bars across: {bars}.").format(bars=across))
    return " ".join(sentences)


def _key_told(structure, view: View) -> str:
    """Say what dots and line on the section are."""
    dots = _("Dots: main bars, {bars}.").format(bars=main_told(structure, view))
    across = across_told(structure, view)
    if across:
        return dots + " " + _("Line: bars across, {bars}.").format(bars=across)
    return dots if ranges.is_beam(structure) else dots + " " + _("No bars across.")
