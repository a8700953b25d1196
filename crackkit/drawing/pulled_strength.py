"""The strip under a pulled member: stress of the concrete against its strength, place by place."""

import numpy as np

from crackkit.drawing.along_chart import AlongChart, line_key, low_end
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Polyline, Text
from crackkit.drawing.strip_frames import along_strip
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
        *([] if torn else [*_areas(chart, felt), Polyline(felt, "stretched_line")]),
        Polyline(borne, "now_line", 1.4),
        *_key(outcome, chart, frame),
        *_next(outcome, chart, view),
    ]


def _chart(strengths, stress, frame: Frame, length: float) -> AlongChart:
    high = HEADROOM * float(strengths.max())
    along = along_strip(frame, length)
    bottom = frame.bottom - FOOT
    return AlongChart(along, frame.top + TOP, bottom, low_end(stress, high), high)


def _areas(chart: AlongChart, felt: np.ndarray) -> list:
    pulled, pressed = felt.copy(), felt.copy()
    pulled[:, 1] = np.minimum(felt[:, 1], chart.zero)
    shapes = [chart.over_zero(pulled, "stretched_area")]
    if felt[:, 1].max() > chart.zero + 0.5:
        pressed[:, 1] = np.maximum(felt[:, 1], chart.zero)
        shapes.append(chart.over_zero(pressed, "squeezed_area"))
    return shapes


def _key(outcome, chart: AlongChart, frame: Frame) -> list:
    """Names of the lines below the strip, and what the numbers on the cracks mean."""
    torn = outcome.pulled.ended == PARTED
    y, end = frame.bottom - 5.0, chart.along.right
    entries = [(_("concrete strength"), "now_line"), (_("its stress"), "stretched_line")]
    shapes, x = line_key(entries[: 1 if torn else 2], chart.along.left, y)
    if outcome.cracks and not torn:
        told = _("numbers: which crack came first"), _("numbered as they came")
        fitting = [words for words in told if width_of(words, "note") <= end - x]
        shapes += [Text(end, y, words, "note", "end") for words in fitting[:1]]
    return shapes


def _next(outcome, chart: AlongChart, view: View) -> list:
    """Mark where stress and strength will meet next, and at which pull."""
    state = outcome.pulled
    if state.ended == PARTED:
        return _marked(0, _("it tore here, where it is weakest"), state, chart)
    if state.next_pull is None:
        return []
    words = _("next crack here, at {force}")
    words = words.format(force=shown(state.next_pull, "force", view.system))
    following = int(np.flatnonzero(state.history.sequence.pull > state.greatest)[0])
    return _marked(following, words, state, chart)


def _marked(crack: int, words: str, state, chart: AlongChart) -> list:
    """Mark the strength where a crack is born, by its number of birth counted from 0."""
    station = int(state.history.sequence.station[crack])
    x = float(chart.along(state.history.tie.stations[station]))
    y = float(chart(state.history.tie.strengths[station]))
    row = label_row(
        [Label(x, words, "label", y - 6.0)], chart.top - 7.0, chart.along.left, chart.along.right
    )
    return [*row, Circle(x, y, 4.5, "rule_dot")]
