"""The strip under a slab on the ground: its mean stress against its strength, place by place."""

import numpy as np

from crackkit.drawing.along_chart import AlongChart, line_key, low_end
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Polyline, Text
from crackkit.drawing.strip_frames import along_strip
from crackkit.drawing.words_on import wrapped
from crackkit.words import _

FOOT = 26.0  # below the chart
HEADROOM = 1.06  # over the greatest strength


def strength_strip(outcome, frame: Frame, top: float, view: View) -> list:
    """Draw the strip at the foot of a band.

    Parameters
    ----------
    outcome : Outcome
    frame : Frame
        The band.
    top : float
        Of the chart [drawing units].
    view : View
    """
    state = outcome.ground
    chart = _chart(state, frame, top, outcome.structure.length)
    felt, borne = chart.lines(state.x, [state.felt, state.strength])
    pulled = felt.copy()
    pulled[:, 1] = np.minimum(felt[:, 1], chart.zero)
    return [
        *chart.grid("strength", view, 3),
        chart.over_zero(pulled, "stretched_area"),
        Polyline(felt, "stretched_line"),
        Polyline(borne, "now_line", 1.4),
        *_key(outcome, chart, frame),
    ]


def _chart(state, frame: Frame, top: float, length: float) -> AlongChart:
    high = HEADROOM * max(float(state.strength.max()), float(state.stress.max()))
    along = along_strip(frame, length)
    return AlongChart(along, top, frame.bottom - FOOT, low_end(state.stress, high), high)


def _key(outcome, chart: AlongChart, frame: Frame) -> list:
    """Names of the lines below the strip."""
    y = frame.bottom - 5.0
    strength = _("strength left") if outcome.structure.spent > 0 else _("strength")
    entries = (strength, "now_line"), (_("mean stress"), "stretched_line")
    shapes, x = line_key(entries, chart.along.left, y)
    return [*shapes, *_spent(outcome, x, frame.right, y)]


def _spent(outcome, x: float, end: float, y: float) -> list:
    """Say what the curling has taken from the strength, where there is room for it."""
    if outcome.structure.spent <= 0:
        return []
    n = round(100 * outcome.structure.spent)
    told = _("curling uses up {n} % of it").format(n=n), _("curling: {n} % less").format(n=n)
    fitting = [words for words in told if len(wrapped(words, "note", end - x)) == 1]
    return [Text(end, y, words, "note", "end") for words in fitting[:1]]
