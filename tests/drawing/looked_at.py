"""What a reader would complain about in a picture, for the tests of every picture."""

import numpy as np

from crackkit.drawing.frames import View
from crackkit.drawing.labels import covered_grips, faults, text_boxes
from crackkit.drawing.shapes import every_shape
from tests.drawing.test_no_label_overlaps import leaving_cards

SYSTEMS = ("SI", "US")
BLANKS = [View(system, width=width) for system in SYSTEMS for width in (460.0, 840.0, 1200.0)]


def views(*widths: float) -> list[View]:
    """Every width in both systems of units."""
    return [View(system, width=width) for system in SYSTEMS for width in widths]


def complaints(drawn) -> list[str]:
    """Words that overlap, cover grips, leave the paper or their card."""
    return faults(drawn) + covered_grips(drawn) + leaving_cards(drawn)


def at_every_width(draw, outcome, wanted) -> dict:
    """Views in which there is something to complain about, with the complaints."""
    found = {(view.system, view.width): complaints(draw(outcome, view)) for view in wanted}
    return {key: faulty for key, faulty in found.items() if faulty}


def words(drawn) -> list[str]:
    return [box.text for box in text_boxes(drawn)]


def roles(drawn) -> list[str]:
    return [getattr(shape, "role", "") for shape in every_shape(drawn.shapes)]


def off_the_paper(drawn) -> list:
    """Shapes with points that are no numbers, or not on the paper."""
    return [shape for shape in every_shape(drawn.shapes) if not _inside(shape, drawn)]


def blemishes(drawn) -> list:
    """All that is wrong with a picture: its words, and shapes that leave the paper."""
    return complaints(drawn) + off_the_paper(drawn)


def left_out(text: str, drawn) -> list[str]:
    """Words of a text that stand nowhere in a picture."""
    written = " ".join(words(drawn)).split()
    return [word for word in text.split() if word not in written]


def _inside(shape, drawn) -> bool:
    found = [
        np.asarray(getattr(shape, name)).reshape(-1, 2)
        for name in ("points", "outlines", "segments")
        if hasattr(shape, name)
    ]
    points = np.concatenate([np.zeros((0, 2)), *found])
    return bool(
        np.isfinite(points).all()
        and (points >= 0.0).all()
        and (points <= (drawn.width, drawn.height)).all()
    )
