"""Ten members side by side: the same in everything but their concrete."""

from dataclasses import dataclass

import numpy as np

from crackkit.drawing.frames import Along, Frame, View
from crackkit.drawing.shapes import Text, rectangle
from crackkit.drawing.through_cracks import through_cracks
from crackkit.drawing.words_on import heading
from crackkit.units import shown
from crackkit.words import _

FIRST, ROW, STRIP = 34.0, 20.0, 13.0  # first row, distance of rows, height of a strip
NAMES, NUMBERS = 88.0, 92.0  # room for words at both ends
APART = 4.0


@dataclass(frozen=True)
class Strip:
    """One member: its cracks and widths [mm], and where it has parted, if so."""

    name: str
    cracks: np.ndarray
    widths: np.ndarray
    parted: float | None


def pulled_beside(outcome, frame: Frame, view: View) -> list:
    """Draw the band: one strip for each, with its widest crack at the right end."""
    strips = _strips(outcome)
    right = frame.right - NUMBERS
    along = Along(frame.left + NAMES, right, outcome.structure.length)
    widest = [_widest(one) for one in strips]
    shapes = _title(outcome, strips, frame, view)
    for k, (one, width) in enumerate(zip(strips, widest, strict=True)):
        top = frame.top + FIRST + ROW * k
        role = "label_bold" if k == 0 else "note"
        shapes.append(Text(along.left - 10, top + 11, one.name, role, "end"))
        shapes += _strip(one, along, top)
        shapes.append(Text(right + 12, top + 11, _told(one, width, view), _role(one, role)))
    return shapes


def _title(outcome, strips, frame: Frame, view: View) -> list:
    held = [_widest(one) for one in strips if one.parted is None and one.widths.size]
    notes = [_("the same drawing, each of other concrete")]
    if held:
        text = _("widest of all {width}, limit {limit}")
        values = shown(max(held), "width", view.system), outcome.verdict.limit.width
        told = text.format(width=values[0], limit=shown(values[1], "width", view.system))
        notes.insert(0, told)
    title = heading(frame, 0, _("Ten of them, side by side"), tuple(notes))
    return [Text(frame.left, frame.top + 17, title[2].text, "heading"), *title[3:]]


def _strips(outcome) -> list[Strip]:
    state = outcome.pulled
    parted = outcome.movement.falls_at
    none = np.zeros(0)
    own = (none, none) if parted is not None else (state.now.cracks, state.now.widths)
    found = [Strip(_("this one"), *own, parted)]
    for k, one in enumerate(state.siblings):
        name = _("number {n}").format(n=k + 2)
        found.append(Strip(name, one.cracks, one.widths, one.parted_at))
    return found


def _strip(one: Strip, along: Along, top: float) -> list:
    if one.parted is not None:
        x = float(along(one.parted))
        return [
            rectangle(along.left - APART, top, x - along.left, STRIP, "concrete"),
            rectangle(x + APART, top, along.right - x, STRIP, "concrete"),
        ]
    order = np.arange(1, one.cracks.size + 1)
    return [
        rectangle(along.left, top, along.right - along.left, STRIP, "concrete"),
        *through_cracks(one.widths, along(one.cracks), order, top, STRIP),
    ]


def _widest(one: Strip) -> float:
    return float(one.widths.max(initial=0.0))


def _told(one: Strip, width: float, view: View) -> str:
    if one.parted is not None:
        return _("parted")
    return shown(width, "width", view.system) if one.widths.size else _("no crack")


def _role(one: Strip, role: str) -> str:
    return "bad_word" if one.parted is not None else role
