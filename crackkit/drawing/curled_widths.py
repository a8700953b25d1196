"""Band 4 of a curled slab, is it tight enough? The crack along the line against the limit."""

from dataclasses import replace

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.width_scale import width_scale
from crackkit.drawing.words_on import paragraph
from crackkit.words import _

SCALE = 178.0  # height of the scale


def curled_widths(outcome, frame: Frame, view: View) -> list:
    """Draw the band, and say below it what bars can do here."""
    upper = replace(frame, height=SCALE)
    words, y = _told(outcome), frame.top + SCALE + 22.0
    return [
        *width_scale(outcome, upper, view),
        *paragraph(frame.left + 14, y, words, "note", frame.width - 22, 3),
    ]


def _told(outcome) -> str:
    line = outcome.curled.line
    if line is None:
        text = _("No crack yet: {n} % of its strength is used up at the worst place.")
        return text.format(n=round(100 * max(outcome.curled.share, 0.0)))
    if line.width is None:
        return _("A piece that has broken off sinks under each wheel: edges spall, joints step.")
    return _("Bars do not stop the curling: they keep the broken piece level and the crack fine.")
