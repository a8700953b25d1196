"""The key under the field: what each look means, in words."""

from functools import lru_cache

import numpy as np

from crackkit.drawing.choice_chips import chip, chip_box
from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_kinds import CLOSE, FAR, GAPING, TIGHT, WIDE, YIELDS, ChoiceKinds
from crackkit.drawing.choice_lanes import patches
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Circle, Text, line
from crackkit.units import shown
from crackkit.words import _

ROW, SWATCH, GAP = 17.0, 20.0, 16.0
STEEL, CHOSEN = 6, 7  # what is said beside the kinds of the field


def kind_words(field: ChoiceField, taken: list) -> list:
    """Write on each kind what it is, where its widest lane has room."""
    shapes = []
    for kind, words in _plain_words().items():
        half = width_of(words, "label") / 2 + 8.0
        wide = [run for run in field.runs if run[0] == kind and run[3] - run[2] > 2 * half]
        for _kind, k, left, right in sorted(wide, key=lambda run: run[2] - run[3]):
            place = (left + right) / 2, field.middle(k) + 4.5, words, "label"
            room = chip_box(*place)
            if not any(room.meets(other) for other in taken):
                taken.append(room)
                shapes += chip(*place)
                break
    return shapes


def _plain_words() -> dict:
    return {
        TIGHT: _("tight"),
        WIDE: _("too wide"),
        GAPING: _("half again too wide"),
        YIELDS: _("bars give way"),
        CLOSE: _("stones do not pass"),
        FAR: _("too far apart"),
    }


def key_entries(kinds: ChoiceKinds, view: View) -> list[tuple[int, str]]:
    """Kinds that are on the field, with their words."""
    limit = shown(kinds.outcome.verdict.limit.width, "width", view.system)
    words = _plain_words() | {TIGHT: _("tight: up to {limit}").format(limit=limit)}
    there = set(np.unique(kinds.said).tolist())
    entries = [(kind, words[kind]) for kind in words if kind in there]
    return [*entries, (STEEL, _("same steel")), (CHOSEN, _("your bars"))]


def key_rows(entries, width: float) -> list[list[tuple[float, int, str]]]:
    """Lay entries in rows: (place from the left, kind, words)."""
    rows, x = [[]], 0.0
    for kind, words in entries:
        wide = SWATCH + 6.0 + width_of(words, "note")
        if rows[-1] and x + wide > width:
            rows.append([])
            x = 0.0
        rows[-1].append((x, kind, words))
        x += wide + GAP
    return rows


def key(rows, frame: Frame) -> list:
    """Draw the rows."""
    shapes = []
    for k, row in enumerate(rows):
        y = frame.top + ROW * k + 12.0
        for x, kind, words in row:
            shapes += _swatch(kind, frame.left + x, y)
            shapes.append(Text(frame.left + x + SWATCH + 6.0, y, words, "note"))
    return shapes


@lru_cache(maxsize=200)  # the key changes seldom
def _swatch(kind: int, x: float, y: float) -> tuple:
    if kind == STEEL:
        return (line(x, y - 4, x + SWATCH, y - 4, "steel_now"),)
    if kind == CHOSEN:
        middle = x + SWATCH / 2
        return (Circle(middle, y - 4, 6.0, "grip"), Circle(middle, y - 4, 3.2, "badge"))
    return tuple(patches(kind, [(x, y - 10.0, x + SWATCH, y + 2.0)]))
