"""A strip seen from the side: where it lies in its bands, and how its height is drawn."""

from crackkit.drawing.frames import Along, Frame
from crackkit.words import _

MARGIN = 56.0  # beside the strip at both ends: numbers of the axes, what holds or pulls the ends
SAME = 0.05  # share by which two scales may differ and be called one


def along_strip(frame: Frame, length: float) -> Along:
    """Lay a strip along a frame: the same in all bands."""
    return Along(frame.left + MARGIN, frame.right - MARGIN, length)


def height_notes(body) -> tuple[str, ...]:
    """State how many times larger its height is drawn than its length, longest way first.

    Parameters
    ----------
    body : GroundBody or PulledBody
        The way from the strip to the paper, with its `depth` there.
    """
    factor = body.depth / body.own_depth / body.along.scale
    if abs(factor - 1.0) < SAME:
        return ()
    long, short = _("height drawn {n} times larger"), _("height ×{n}")
    notes = tuple(words.format(n=f"{factor:.2g}") for words in (long, short))
    return notes if factor > 1.0 else notes[1:]
