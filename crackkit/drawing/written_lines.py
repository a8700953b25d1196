"""Questions of a page that is answered by hand, each with its number and two lines to write on."""

from crackkit.drawing.shapes import Circle, Text, line


def written_lines(questions, first: float, apart: float, second: float = 50.0) -> list:
    """Draw the questions below each other.

    Parameters
    ----------
    questions : sequence of str
    first, apart : float
        Baseline of the first one, and from one to the next [drawing units].
    second : float
        From a question down to its second line [drawing units].
    """
    shapes = []
    for k, question in enumerate(questions):
        y = first + apart * k
        shapes += [
            Circle(70.0, y - 5, 10.0, "badge"),
            Text(70.0, y - 0.8, str(k + 1), "badge_word", "middle"),
            Text(90.0, y, question, "label"),
            line(90.0, y + 26, 940.0, y + 26, "grid"),
            line(90.0, y + second, 940.0, y + second, "grid"),
        ]
    return shapes
