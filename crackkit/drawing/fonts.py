"""Fonts for paper: the one whose letters are as wide as the pictures count on, or a near one.

The labels of a picture were placed with the widths in `lettering`. Where no font with these
widths is installed, each label is set a little smaller, so that it never outgrows its box.
"""

from functools import cache

from crackkit.drawing.lettering import text_width

WISHED = ("Arial", "Liberation Sans", "Helvetica")
FALLBACK = "DejaVu Sans"  # comes with matplotlib
_TRIAL = 100.0  # size at which widths are compared


@cache
def families() -> tuple[str, ...]:
    """Names of the fonts in use: the first installed one of those wished for, then the fallback.

    The fallback lends single signs that the first one lacks.
    """
    from matplotlib.font_manager import fontManager

    installed = {font.name for font in fontManager.ttflist}
    return (*[name for name in WISHED if name in installed][:1], FALLBACK)


@cache
def typeface(bold: bool):
    """Give the font for words, plain or bold."""
    from matplotlib.font_manager import FontProperties

    return FontProperties(family=list(families()), weight="bold" if bold else "normal")


@cache
def printed_size(text: str, size: float, bold: bool) -> float:
    """Size at which a line of words is no wider than the pictures count on [drawing units]."""
    allowed, needed = text_width(text, _TRIAL, bold), printed_width(text, _TRIAL, bold)
    return size if needed <= allowed * 1.001 else size * allowed / needed


def printed_width(text: str, size: float, bold: bool) -> float:
    """Width of a line of words in the font in use [same unit as `size`]."""
    from matplotlib.textpath import text_to_path

    font = typeface(bold).copy()
    font.set_size(size)
    width, _height, _descent = text_to_path.get_text_width_height_descent(text, font, False)
    return float(width)
