"""The strip under a slab on the ground: its mean stress against its strength, place by place."""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_frames import along_ground
from crackkit.drawing.labels import width_of
from crackkit.drawing.pulled_chart import AlongChart
from crackkit.drawing.shapes import Polyline, Text, line
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
    low = min(float(state.stress.min()), 0.0)
    low = 0.0 if low > -0.02 * high else 1.1 * low
    along = along_ground(frame, length)
    return AlongChart(along, top, frame.bottom - FOOT, low, high)


def _key(outcome, chart: AlongChart, frame: Frame) -> list:
    """Names of the lines below the strip."""
    y, x, end = frame.bottom - 5.0, chart.along.left, frame.right
    strength = _("strength left") if outcome.structure.spent > 0 else _("strength")
    shapes = []
    for words, role in ((strength, "now_line"), (_("mean stress"), "stretched_line")):
        shapes += [line(x, y - 4, x + 22, y - 4, role), Text(x + 28, y, words, "note")]
        x += 28 + width_of(words, "note") + 20
    return [*shapes, *_spent(outcome, x, end, y)]


def _spent(outcome, x: float, end: float, y: float) -> list:
    """Say what the curling has taken from the strength, where there is room for it."""
    if outcome.structure.spent <= 0:
        return []
    n = round(100 * outcome.structure.spent)
    told = _("curling uses up {n} % of it").format(n=n), _("curling: {n} % less").format(n=n)
    fitting = [words for words in told if len(wrapped(words, "note", end - x)) == 1]
    return [Text(end, y, words, "note", "end") for words in fitting[:1]]
