"""Hints along the range: at each place the load that bends it most, either way, in words."""

import numpy as np

from crackkit.drawing.frames import View
from crackkit.drawing.gap_words import arrangement_words
from crackkit.drawing.shapes import Hint
from crackkit.units import shown
from crackkit.units.places import place_told
from crackkit.words import _

MOST = 40  # hints along the member
LEAST_WIDE = 15.0  # of a hint: nobody points more finely
LITTLE = 0.005  # share of the largest moment that is not worth a word


def range_hints(outcome, chart, view: View) -> list[Hint]:
    """Lay hints side by side over the band, each with words for its middle."""
    found, along = outcome.range, chart.along
    count = min(int((along.right - along.left) / LEAST_WIDE), MOST)
    wide = along.length / count
    places = wide * (np.arange(count) + 0.5)
    sagging = np.interp(places, found.x, found.sagging).tolist()
    hogging = np.interp(places, found.x, found.hogging).tolist()
    least = LITTLE * max(max(sagging), -min(hogging), 1.0)
    top, tall = chart.frame.top + 44.0, chart.frame.height - 44.0
    step = wide * along.scale
    hints = []
    for k, (at, down, up) in enumerate(zip(places.tolist(), sagging, hogging, strict=True)):
        words = _said(outcome, at, down, up, least, view)
        hints.append(Hint(along.left + k * step, top, step, tall, words))
    return hints


def _said(outcome, at: float, sagging: float, hogging: float, least: float, view: View) -> str:
    found, parts = outcome.range, []
    if sagging > least:
        loads = arrangement_words(found.arrangement("bottom", at))
        text = _("sags most, {moment}, with {loads}")
        parts.append(text.format(moment=shown(sagging, "moment", view.system), loads=loads))
    if hogging < -least:
        loads = arrangement_words(found.arrangement("top", at))
        text = _("hogs most, {moment}, with {loads}")
        parts.append(text.format(moment=shown(-hogging, "moment", view.system), loads=loads))
    where = place_told(outcome.structure, at, view.system)
    bent = "; ".join(parts) if parts else _("hardly bent by any load")
    return _("{place}: {bent}").format(place=where, bent=bent)
