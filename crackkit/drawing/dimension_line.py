"""A dimension line: arrows to both ends, with words between them."""

from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Arrow, Text, line


def dimension_line(left, right, y, foot, words: str, role: str = "label", middle=None) -> list:
    """Draw the line.

    Parameters
    ----------
    left, right : float
        What is measured [drawing units].
    y, foot : float
        Height of the line, and where the lines at its ends begin [drawing units].
    words, role : str
    middle : float, optional
        Where the words stand; halfway without.
    """
    middle = (left + right) / 2 if middle is None else middle
    half = width_of(words, role) / 2 + 8.0
    return [
        Arrow(middle - half, y, left, y, "spread_load", 7.0),
        Arrow(middle + half, y, right, y, "spread_load", 7.0),
        line(left, foot, left, y + 6, "leader"),
        line(right, foot, right, y + 6, "leader"),
        Text(middle, y + 4.5, words, role, "middle"),
    ]
