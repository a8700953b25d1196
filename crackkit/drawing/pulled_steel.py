"""Band 3 of a pulled member, what holds the cracks? Who carries the pull: bars or concrete."""

import numpy as np

from crackkit.drawing.along_chart import AlongChart
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Polyline, Text, line, rectangle
from crackkit.drawing.strip_frames import along_strip
from crackkit.drawing.words_on import Label, heading, label_row, paragraph
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _

HEADROOM = 1.15  # over the yield strength
SAME = 1 - 1e-6  # share of the greatest stress that counts as the greatest
SEEN = 0.02  # share of a strength that can be seen

KEY_STEP = 40.0  # room for a sample of the key, and between its entries
# from the right
LONG_KEY = (
    (_("the whole pull"), "neutral"),
    (_("concrete carries"), "concrete_area"),
    (_("bars carry"), "stretched_line"),
)
SHORT_KEY = (
    (_("whole pull"), "neutral"),
    (_("concrete"), "concrete_area"),
    (_("bars"), "stretched_line"),
)
SQUEEZED_KEY = (
    LONG_KEY[0],
    (_("concrete, squeezed, pushes back"), "squeezed_area"),
    LONG_KEY[2],
)
SHORT_SQUEEZED_KEY = (SHORT_KEY[0], (_("concrete, squeezed"), "squeezed_area"), SHORT_KEY[2])


def pulled_steel(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    chart = _chart(outcome, frame)
    title = heading(frame, 3, _("What holds the cracks?"))
    lost = _nothing_holds(outcome)
    if lost:
        return [*title, *_empty(chart, lost), *chart.foot(view)]
    return [
        *title,
        *chart.grid("stress", view, 4),
        *chart.foot(view),
        *_shares(outcome, chart),
        *_words(outcome, chart, view),
        *_key(outcome, frame),
    ]


def _nothing_holds(outcome) -> tuple[str, ...]:
    """Sentences on a member without bars that hold; none where they do."""
    if outcome.pulled.ended == PARTED and outcome.steel:
        return (_("The bars could not take over what the concrete let go."),)
    if outcome.steel:
        return ()
    words = _("No bars: nothing takes over when the concrete cracks.")
    if outcome.pulled.ended == PARTED:
        return (words,)
    return (words, _("Until then the concrete carries the whole pull alone."))


def _empty(chart: AlongChart, sentences) -> list:
    left, right = chart.along.left, chart.along.right
    y, shapes = (chart.top + chart.bottom) / 2 - 12.0, []
    for words, role in zip(sentences, ("bad_word", "note"), strict=False):
        rows = paragraph(left + 14, y, words, role, right - left - 28)
        shapes += rows
        y += 15.0 * len(rows) + 6.0
    return [*shapes, line(left, chart.bottom, right, chart.bottom, "axis")]


def _chart(outcome, frame: Frame) -> AlongChart:
    strength = outcome.structure.yield_strength
    least = min((float(item.stress.min()) for item in outcome.steel), default=0.0)
    held = not _nothing_holds(outcome)
    low = 1.1 * least if held and least < -SEEN * strength else 0.0
    along = along_strip(frame, outcome.structure.length)
    return AlongChart(along, frame.top + 54.0, frame.bottom - 26.0, low, HEADROOM * strength)


def _shares(outcome, chart: AlongChart) -> list:
    """Steel stress; between it and what the bars would have alone lies what the concrete takes."""
    steel = outcome.steel[0]
    alone = outcome.pulled.pull / outcome.pulled.sample.bars_area
    points = chart.lines(steel.x, [steel.stress])[0]
    level = np.array([(points[0, 0], chart(alone)), (points[-1, 0], chart(alone))])
    strength = float(chart(outcome.structure.yield_strength))
    left, right = chart.along.left, chart.along.right
    return [
        chart.between(np.minimum(points, (np.inf, level[0, 1])), level, "squeezed_area"),
        chart.between(level, np.maximum(points, (-np.inf, level[0, 1])), "concrete_area"),
        chart.over_zero(points, "stretched_area"),
        Polyline(level, "neutral"),
        Polyline(points, "stretched_line"),
        line(left, strength, right, strength, "capacity"),
    ]


def _words(outcome, chart: AlongChart, view: View) -> list:
    """The greatest stress and where, and the strength of the bars, in a row above the chart."""
    steel, now = outcome.steel[0], outcome.pulled.now
    strength = outcome.structure.yield_strength
    words = _("yields at {stress}").format(stress=shown(strength, "stress", view.system))
    end = chart.along.right - width_of(words, "note") / 2
    labels = [Label(end, words, "note")]
    peak = float(steel.stress.max())
    if peak > SEEN * strength:
        at, told = _peak(outcome, now, peak, view)
        labels.insert(0, Label(float(chart.along(at)), told, "label_bold", float(chart(peak)) - 2))
    return label_row(labels, chart.top - 8.0, chart.along.left, chart.along.right)


def _peak(outcome, now, peak: float, view: View) -> tuple[float, str]:
    """Where the bars are pulled hardest, and the words for it."""
    stress = shown(peak, "stress", view.system)
    hard = now.x[now.steel_stress >= SAME * peak]
    at = float(hard[(len(hard) - 1) // 2])  # one that leaves room for the strength at the right
    if not outcome.cracks:
        ends = outcome.structure.ends == "bars"
        words = _("{stress} at the ends") if ends else _("{stress} everywhere")
    elif now.cracks[np.abs(now.cracks - at).argmin()] == at:
        words = _("{stress} in the cracks")
    else:
        words = _("{stress} between the cracks")
    return at, words.format(stress=stress)


def _key(outcome, frame: Frame) -> list:
    """Names of what is drawn, at the right end of the heading: in full where there is room."""
    pulled = outcome.pulled.now.concrete_stress.mean() >= -SEEN * outcome.pulled.sample.tensile
    entries = LONG_KEY if pulled else SQUEEZED_KEY
    room = frame.width - width_of(_("What holds the cracks?"), "heading") - 50.0
    if sum(width_of(words, "note") + KEY_STEP for words, _role in entries) > room:
        entries = SHORT_KEY if pulled else SHORT_SQUEEZED_KEY
    right, y = frame.right - 8.0, frame.top + 17.0
    shapes = []
    for words, role in entries:
        shapes.append(Text(right, y, words, "note", "end"))
        right -= width_of(words, "note") + 6
        if role.endswith("_area"):
            shapes.append(rectangle(right - 18, y - 10, 18, 11, role))
        else:
            shapes.append(line(right - 20, y - 4, right, y - 4, role))
        right -= KEY_STEP - 6
    return shapes
