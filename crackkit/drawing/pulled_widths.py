"""Band 4 of a pulled member, is it tight enough? Cracks, rules and limit on one scale."""

from dataclasses import replace

import numpy as np

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, rectangle
from crackkit.drawing.width_scale import Scale, limit_mark, scale_axis, source_words
from crackkit.drawing.width_ticks import width_names, width_ticks
from crackkit.drawing.words_on import heading, paragraph
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _

NAMES = {"en_2004": _("EN"), "model_code_2010": _("Model Code"), "gergely_lutz": _("ACI")}


def pulled_widths(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    state, limit = outcome.pulled, outcome.verdict.limit
    widths = np.zeros(0) if state.ended == PARTED else state.now.widths
    rules = state.rules
    high = max(widths.max(initial=0.0), rules.high if rules else 0.0)
    upper = replace(frame, height=frame.height - 15.0)  # a second line of words below
    scale = Scale(limit.width, float(high), upper)
    return [
        *heading(frame, 4, _("Is it tight enough?")),
        *source_words(limit, frame),
        *scale_axis(scale, view),
        *(_band(scale, rules) if rules else []),
        *width_ticks(scale, widths.tolist()),
        *limit_mark(scale, limit, view),
        *(_names(scale, rules, view) if rules else []),
        *paragraph(scale.left, frame.bottom - 16, _told(outcome, view), "note", frame.width - 16),
    ]


def _band(scale: Scale, rules) -> list:
    low, high = scale(rules.low), scale(rules.high)
    y = scale.line - 5.0
    shapes = [rectangle(low, scale.line - 10, max(high - low, 2.0), 10, "band")]
    for name, width in rules.by_rule:
        chosen = name == rules.rule
        role = "rule_dot_chosen" if chosen else "rule_dot"
        shapes.append(Circle(scale(width), y, 4.6 if chosen else 3.2, role))
    return shapes


def _names(scale: Scale, rules, view: View) -> list:
    """Name the rules that people know, the chosen one with its width, over the band."""
    rows = []
    for name, width in rules.by_rule:
        if name == rules.rule:
            told = f"{NAMES[name]} {shown(width, 'width', view.system)}"
            rows.append((width, told, "label_bold"))
        elif name in NAMES:
            rows.append((width, NAMES[name], "note"))
    return width_names(scale, rows)


def _told(outcome, view: View) -> str:
    state = outcome.pulled
    if state.ended == PARTED:
        return _("No rule gives a width: nothing holds it.")
    if not outcome.cracks:
        return _("Nothing has cracked.")
    if state.rules is None:
        return _("Ticks: the cracks here. The rules are for ribbed bars.")
    text = _("Ticks: the cracks here. Band: {n} published rules, {low} to {high}.")
    if state.pull < state.greatest:
        text = _("Ticks: the cracks here. Band: {n} rules at the greatest pull, {low} to {high}.")
    return text.format(
        n=len(state.rules.by_rule),
        low=shown(state.rules.low, "width", view.system),
        high=shown(state.rules.high, "width", view.system),
    )
