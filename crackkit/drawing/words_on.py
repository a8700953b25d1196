"""Headings, wrapped sentences and rows of labels."""

from dataclasses import dataclass

from crackkit.drawing.frames import Frame
from crackkit.drawing.labels import spread, width_of
from crackkit.drawing.shapes import Circle, Text, line


@dataclass(frozen=True)
class Label:
    """Words that wish to stand at `centre`; `mouth` is the height a leader goes to."""

    centre: float
    text: str
    role: str
    mouth: float | None = None


def heading(frame: Frame, number: int, text: str, notes=(), role: str = "note") -> list:
    """Write the question of a band with its number, and a note at the right end of the line.

    Parameters
    ----------
    frame : Frame
        The band.
    number : int
        Number of the question.
    text : str
        The question.
    notes : tuple of str
        Ways to say the note, longest first: the first that fits is written.
    role : str
        Role of the note.
    """
    y = frame.top + 17
    shapes = [
        Circle(frame.left + 10, y - 5, 10, "badge"),
        Text(frame.left + 10, y - 0.8, str(number), "badge_word", "middle"),
        Text(frame.left + 27, y, text, "heading"),
    ]
    room = frame.width - 27 - width_of(text, "heading") - 24
    fitting = [words for words in notes if width_of(words, role) <= room]
    return [*shapes, Text(frame.right - 8, y, fitting[0], role, "end")] if fitting else shapes


def wrapped(text: str, role: str, width: float) -> list[str]:
    """Break a sentence into lines that fit the width [drawing units]."""
    lines, current = [], ""
    for word in text.split(" "):  # a number and its unit stay together
        longer = f"{current} {word}".strip()
        if current and width_of(longer, role) > width:
            lines.append(current)
            current = word
        else:
            current = longer
    return [*lines, current] if current else lines


def paragraph(x: float, y: float, text: str, role: str, width: float, most: int = 4) -> list[Text]:
    """Write a sentence on as many lines as it needs, `most` of them at the most."""
    lines = wrapped(text, role, width)[:most]
    return [Text(x, y + 15 * k, words, role) for k, words in enumerate(lines)]


def label_row(labels: list[Label], y: float, low: float, high: float) -> list:
    """Write labels in a row at baseline y, moved apart, with leaders where they are far off."""
    widths = [width_of(label.text, label.role) for label in labels]
    places = spread([label.centre for label in labels], widths, low, high)
    shapes = []
    for label, x, width in zip(labels, places, widths, strict=True):
        shapes.append(Text(x, y, label.text, label.role, "middle"))
        if label.mouth is not None:
            start = min(max(label.centre, x - width / 2), x + width / 2)
            end = y + 5 if label.mouth > y else y - 12
            shapes.append(line(start, end, label.centre, label.mouth, "leader"))
    return shapes
