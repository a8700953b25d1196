"""The strip under a pulled member: stress of the concrete against its strength, place by place."""

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.pulled_chart import AlongChart
from crackkit.drawing.pulled_frames import along_pulled
from crackkit.drawing.shapes import Circle, Polyline, Text, line
from crackkit.drawing.words_on import Label, label_row
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _

TOP, FOOT = 186.0, 26.0  # of the chart below the top of the band, and over its bottom
HEADROOM = 1.06  # over the greatest strength


def strength_strip(outcome, frame: Frame, view: View) -> list:
    """Draw the strip; of a torn member only the strength, for nothing is stretched any more."""
    state, tie = outcome.pulled, outcome.pulled.history.tie
    now, torn = state.now, outcome.pulled.ended == PARTED
    strengths = np.interp(now.x, tie.stations, tie.strengths)
    stress = np.zeros_like(now.x) if torn else now.concrete_stress
    chart = _chart(strengths, stress, frame, outcome.structure.length)
    felt, borne = chart.lines(now.x, [stress, strengths])
    return [
        *chart.grid("strength", view, 3),
        *_areas(chart, felt),
        *([] if torn else [Polyline(felt, "stretched_line")]),
        Polyline(borne, "now_line", 1.4),
        *_key(chart, frame, torn),
        *_next(outcome, chart, view),
    ]


def _chart(strengths, stress, frame: Frame, length: float) -> AlongChart:
    high = HEADROOM * float(strengths.max())
    low = min(float(stress.min()), 0.0)
    low = 0.0 if low > -0.02 * high else 1.1 * low
    along = along_pulled(frame, length)
    return AlongChart(along, frame.top + TOP, frame.bottom - FOOT, low, high)


def _areas(chart: AlongChart, felt: np.ndarray) -> list:
    pulled, pressed = felt.copy(), felt.copy()
    pulled[:, 1] = np.minimum(felt[:, 1], chart.zero)
    shapes = [chart.over_zero(pulled, "stretched_area")]
    if felt[:, 1].max() > chart.zero + 0.5:
        pressed[:, 1] = np.maximum(felt[:, 1], chart.zero)
        shapes.append(chart.over_zero(pressed, "squeezed_area"))
    return shapes


def _key(chart: AlongChart, frame: Frame, torn: bool) -> list:
    """Names of the two lines below the strip."""
    y, x = frame.bottom - 5.0, chart.along.left
    shapes = []
    entries = [(_("strength of this concrete"), "now_line")]
    if not torn:
        entries.append((_("stress in it"), "stretched_line"))
    for words, role in entries:
        shapes += [line(x, y - 4, x + 22, y - 4, role), Text(x + 28, y, words, "note")]
        x += 28 + width_of(words, "note") + 20
    return shapes


def _next(outcome, chart: AlongChart, view: View) -> list:
    """Mark where stress and strength will meet next, and at which pull."""
    state = outcome.pulled
    pull = state.next_pull
    if pull is None or state.ended == PARTED:
        return []
    sequence, tie = state.history.sequence, state.history.tie
    station = int(sequence.station[np.flatnonzero(sequence.pull > state.greatest)[0]])
    x = float(chart.along(tie.stations[station]))
    y = float(chart(tie.strengths[station]))
    words = _("next crack here, at {force}").format(force=shown(pull, "force", view.system))
    row = label_row(
        [Label(x, words, "label", y - 6.0)], chart.top - 7.0, chart.along.left, chart.along.right
    )
    return [*row, Circle(x, y, 4.5, "rule_dot")]
