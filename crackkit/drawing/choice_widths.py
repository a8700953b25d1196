"""Band 4, is it tight enough? The widths by all rules, of both directions where both are loaded."""

from crackkit.drawing.choice_chips import chip
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import spread, width_of
from crackkit.drawing.shapes import Circle, Text, line, rectangle
from crackkit.drawing.width_scale import Scale, limit_mark, scale_axis, source_words
from crackkit.drawing.words_on import heading
from crackkit.units import shown
from crackkit.words import _

HALF = 10.0  # half the height of the scale
LIFT = 22.0  # of the words over the scale


def choice_widths(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    limit, ways = outcome.verdict.limit, _ways(outcome)
    high = max((way.band.high for _name, way in ways), default=0.0)
    scale = Scale(limit.width, high, frame)
    return [
        *heading(frame, 4, _("Is it tight enough?")),
        *source_words(limit, frame),
        *scale_axis(scale, view),
        *_bands(scale, ways),
        *limit_mark(scale, limit, view),
        *_names(scale, ways, view),
        Text(scale.left, frame.bottom - 2, _spanned(ways, view), "note"),
    ]


def _ways(outcome) -> list:
    """Name and cracks of each direction that is loaded; empty where nothing has cracked."""
    if not outcome.cracks:
        return []
    control = outcome.control
    if control.across is None:
        return [("", control.main)]
    return [(_("main bars"), control.main), (_("across"), control.across)]


def _bands(scale: Scale, ways) -> list:
    shapes, tall = [], 2 * HALF / max(len(ways), 1)
    for k, (_name, way) in enumerate(ways):
        top = scale.line - HALF + tall * k
        low, high = scale(way.band.low), scale(way.band.high)
        shapes.append(rectangle(low, top, max(high - low, 2.0), tall, "band"))
        for name, width in way.band.by_rule:
            chosen = name == way.band.rule
            role, radius = ("rule_dot_chosen", 5.5) if chosen else ("rule_dot", 3.6)
            shapes.append(Circle(scale(width), top + tall / 2, radius * tall**0.5 / 4.5, role))
    return shapes


def _names(scale: Scale, ways, view: View) -> list:
    """Write the width by the chosen rule over its dot, and what it is."""
    rows = [(scale(way.band.governing), _name(name, way, view)) for name, way in ways]
    widths = [width_of(words, "label") for _x, words in rows]
    low, high = scale.left, scale.frame.right
    placed = spread([x for x, _words in rows], widths, low, high)
    y, shapes = scale.line - LIFT, []
    for k, ((x, words), centre, wide) in enumerate(zip(rows, placed, widths, strict=True)):
        foot = min(max(x, centre - wide / 2), centre + wide / 2)
        dot = scale.line - (0.0 if len(rows) == 1 else HALF / 2 - HALF * k)
        shapes += [*chip(centre, y, words, "label"), line(foot, y + 4, x, dot - 5, "leader")]
    return shapes


def _name(name: str, way, view: View) -> str:
    width = shown(way.band.governing, "width", view.system)
    return f"{name or way.band.name} {width}"


def _spanned(ways, view: View) -> str:
    if not ways:
        return _("nothing has cracked")
    bands = [way.band for _name, way in ways]
    count = len(bands[0].by_rule)
    if count == 1:
        return _("only this rule knows fibres")
    return _("{n} rules: {low} to {high}").format(
        n=count,
        low=shown(min(band.low for band in bands), "width", view.system),
        high=shown(max(band.high for band in bands), "width", view.system),
    )
