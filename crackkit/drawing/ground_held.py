"""Band 3 of a slab on the ground, what holds it back, and what holds the crack?"""

import numpy as np

from crackkit.drawing.along_chart import AlongChart
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Polyline, Text, rectangle
from crackkit.drawing.strip_frames import along_strip
from crackkit.drawing.words_on import heading
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.units import shown
from crackkit.words import _

TOP, FOOT = 46.0, 62.0  # of the chart below the top of the band, and over its bottom
HEADROOM = 1.2


def ground_held(outcome, frame: Frame, view: View) -> list:
    """Draw the band: the slip along the slab, and in words what holds a crack."""
    state, s = outcome.ground, outcome.structure
    under = s.under
    most = HEADROOM * max(float(np.abs(state.slip).max()), under.slip)
    along = along_strip(frame, s.length)
    chart = AlongChart(along, frame.top + TOP, frame.bottom - FOOT, -most, most)
    x, way = slip_line(state)
    (slip,) = chart.lines(x, [way])
    return [
        *heading(frame, 3, _("What holds it back? What holds the crack?")),
        *_sliding(chart, under.slip),
        *chart.grid("movement", view, 5),
        Polyline(slip, "squeezed_line"),
        *chart.foot(view),
        *_below(outcome, frame, view),
    ]


def slip_line(state) -> tuple[np.ndarray, np.ndarray]:
    """Stations [mm] and slip to the right [mm]; a crack's station comes twice, it jumps there."""
    at = np.array([crack.at for crack in state.cracks])
    after = np.interp(at, state.x, state.slip) + [crack.width for crack in state.cracks]
    where = np.searchsorted(state.x, at, side="right")
    return np.insert(state.x, where, at), np.insert(state.slip, where, after)


def _sliding(chart: AlongChart, slip: float) -> list:
    """Shade the slip at which the base pulls with all it has."""
    left, wide = chart.along.left, chart.along.right - chart.along.left
    upper, lower = float(chart(slip)), float(chart(-slip))
    words = _("slides")
    shapes = []
    for top, tall in ((chart.top, upper - chart.top), (lower, chart.bottom - lower)):
        shapes.append(rectangle(left, top, wide, tall, "squeezed_area"))
    if upper - chart.top >= 16.0:
        x = left + wide - width_of(words, "note") - 6.0
        shapes.append(Text(x, chart.top + 13.0, words, "note"))
    return shapes


def _below(outcome, frame: Frame, view: View) -> list:
    """Two lines: what the curve is and how the base holds, what holds a crack."""
    y, x, room = frame.bottom - 19.0, frame.left + 20.0, frame.width - 20.0
    shapes = []
    for k, ways in enumerate((_base_words(outcome, view), _bar_words(outcome, view))):
        role = "note" if k == 0 else "label_bold"
        fitting = [words for words in ways if width_of(words, role) <= room] or [ways[-1]]
        shapes.append(Text(x, y + 17.0 * k, fitting[0], role))
    return shapes


def _base_words(outcome, view: View) -> tuple[str, ...]:
    under = outcome.structure.under
    slip = shown(under.slip, "movement", view.system)
    share = f"{under.coefficient:g}"
    return (
        _(
            "curve: how far it has slipped to the right; from {slip} it slides, held back by "
            "{share} × its weight"
        ).format(slip=slip, share=share),
        _("curve: slip to the right; from {slip} it slides against {share} × weight").format(
            slip=slip, share=share
        ),
        _("curve: slip to the right"),
    )


def bars_told(structure, view: View) -> str:
    """Say which bars there are, and how far apart."""
    if structure.bar is None:
        return _("no bars")
    return _("{size} every {spacing}").format(
        size=dict(BAR_SIZES)[structure.steel],
        spacing=shown(structure.spacing, "size", view.system),
    )


def _bar_words(outcome, view: View) -> tuple[str, ...]:
    s = outcome.structure
    told = bars_told(s, view)
    if s.bar is None:
        return (
            _("no bars: nothing holds a crack, all the movement gathers in it"),
            _("no bars: nothing holds a crack"),
        )
    if s.place == "ground":
        return (
            _("{bars}, on the ground: they hold nothing").format(bars=told),
            _("bars on the ground hold nothing"),
        )
    where = _("near the top") if s.place == "top" else _("in the middle")
    if outcome.across.wild and not outcome.across.steel:
        long = _("{bars}, {where}, along only: nothing holds the crack that runs along")
        short = _("{bars}, along only: nothing holds the crack along")
        return tuple(words.format(bars=told, where=where) for words in (long, short))
    long = _("{bars}, {where}: they hold both sides of a crack together")
    short = _("{bars}, {where}: they hold the crack")
    return tuple(words.format(bars=told, where=where) for words in (long, short))
