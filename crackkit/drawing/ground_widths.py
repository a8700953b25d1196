"""Band 4 of a slab on the ground, is it tight enough? Cracks and joints against the limit."""

from dataclasses import replace

from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_cracks import open_joints
from crackkit.drawing.shapes import Circle
from crackkit.drawing.width_scale import Scale, limit_mark, scale_axis, source_words
from crackkit.drawing.width_ticks import UPPER, width_names, width_ticks
from crackkit.drawing.words_on import heading, paragraph
from crackkit.units import shown
from crackkit.words import _

FAR = 12.0  # times the limit: where the scale ends at the latest


def ground_widths(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    limit, states = outcome.verdict.limit, (outcome.ground, outcome.across)
    cracks = [crack.width for state in states for crack in state.wild]
    joints = [joint.opening for state in states for joint in open_joints(state)]
    rules = [rule for rule in outcome.ground.rules if rule.width is not None]
    told_of = [*cracks, *joints, *(rule.width for rule in rules), 0.0]
    high = min(max(told_of), FAR * limit.width)
    upper = replace(frame, height=frame.height - 15.0)  # a second line of words below
    scale = Scale(limit.width, high, upper)
    told = paragraph(
        scale.left,
        frame.bottom - 16,
        _told(cracks, joints, max([*cracks, *joints, 0.0]) > scale.top_value, rules, view),
        "note",
        frame.width - 16,
        2,
    )
    return [
        *heading(frame, 4, _("Is it tight enough?")),
        *source_words(limit, frame),
        *scale_axis(scale, view),
        *width_ticks(scale, joints, UPPER),
        *width_ticks(scale, cracks),
        *_rule_dots(scale, rules),
        *limit_mark(scale, limit, view),
        *_names(scale, cracks, joints, view),
        *told,
    ]


def _names(scale: Scale, cracks, joints, view: View) -> list:
    """Name the widest crack and the widest joint over the scale."""
    rows = []
    for words, widths, role in (
        (_("crack {width}"), cracks, "label_bold"),
        (_("joint {width}"), joints, "note"),
    ):
        if widths:
            text = words.format(width=shown(max(widths), "width", view.system))
            rows.append((max(widths), text, role))
    return width_names(scale, rows)


def _rule_dots(scale: Scale, rules) -> list[Circle]:
    """What published rules say of a slab between walls, within the scale."""
    inside = [rule.width for rule in rules if rule.width <= scale.top_value]
    return [Circle(scale(width), scale.line, 3.6, "rule_dot") for width in inside]


def _told(cracks, joints, beyond: bool, rules, view: View) -> str:
    if rules and cracks:
        words = [f"{rule.name} {shown(rule.width, 'width', view.system)}" for rule in rules]
        ticks = _("Ticks: cracks below, joints above.") if joints else _("Ticks: the cracks here.")
        dots = _("Dots, ends fixed: {rules}.").format(rules=", ".join(words))
        return f"{ticks} {dots}"
    if not cracks and not joints:
        return _("Nothing has cracked.")
    if not joints:
        told = _("Ticks: the cracks here.")
        return told + " " + _("The widest is beyond the scale.") if beyond else told
    if beyond:
        return _("Ticks: cracks below, joints above. The widest is beyond the scale.")
    return _("Ticks: cracks below, joints above. Joints may open: they are filled.")
