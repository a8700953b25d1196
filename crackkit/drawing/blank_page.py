"""Pages on which nothing of the answer stands: to make a call on a screen, or by hand on paper."""

import numpy as np

from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Text, rectangle
from crackkit.drawing.written_lines import written_lines
from crackkit.words import _

WIDTHS = (460.0, 1100.0)  # least and largest width of the paper on a screen
USUAL = 840.0
SHEET = 1000.0, 652.0  # of the page that is answered by hand
TASK = 72.0  # from one question on it to the next
SKETCHED = 366.0  # first question on a page with a box to sketch in
ENDS = 90.0, 910.0  # of a strip on that page


def paper_width(view: View) -> float:
    """Width of the paper on a screen [drawing units]."""
    return float(np.clip(view.width or USUAL, *WIDTHS))


def sketch_page(questions) -> list:
    """Draw a box to sketch in, with the questions below.

    Parameters
    ----------
    questions : sequence of str
    """
    return [
        rectangle(430.0, 226.0, 480.0, 104.0, "support"),
        Text(440.0, 244.0, _("room to sketch"), "note"),
        *written_lines(questions, SKETCHED, TASK),
    ]
