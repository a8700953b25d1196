"""Other bars under the same load: the crack width over all sizes and spacings."""

from crackkit.drawing.axes import bottom_axis, ticks
from crackkit.drawing.choice_chosen import chosen_box, chosen_mark
from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_key import ROW, key, key_entries, key_rows, kind_words
from crackkit.drawing.choice_kinds import ChoiceKinds
from crackkit.drawing.choice_lanes import lanes
from crackkit.drawing.choice_lines import limit_line, steel_lines, width_lines
from crackkit.drawing.choice_section_words import size_told
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Text, line
from crackkit.drawing.words_on import wrapped
from crackkit.units import inner, number, unit
from crackkit.words import _

HEAD, LINE = 24.0, 15.0
OVER = 20.0  # between words and lanes: bars thicker than all lanes are marked there
AXIS = 30.0
LARGEST_DOT = 7.0


def choice_map(outcome, frame: Frame, view: View) -> list:
    """Draw the chart."""
    notes = wrapped(_how_to_read(), "note", frame.width - 4)
    field, rows = _laid_out(outcome, frame, len(notes), view)
    taken = [chosen_box(field)]
    return [
        Text(frame.left, frame.top + 15, _title(outcome), "heading"),
        *(Text(frame.left, frame.top + 33 + LINE * k, n, "note") for k, n in enumerate(notes)),
        *_sizes(field),
        *lanes(field),
        *limit_line(field),
        *_lines(field, taken, view),
        *_axis(field, view),
        *chosen_mark(field, view),
        *key(rows, Frame(frame.left, field.frame.bottom + AXIS, frame.width, 0.0)),
    ]


def _lines(field: ChoiceField, taken: list, view: View) -> list:
    # no line runs through words; those on steel are placed first, a word on each kind last
    steel, weights = steel_lines(field, taken, view)
    widths, told = width_lines(field, taken, view)
    return [*widths, *steel, *told, *weights, *kind_words(field, taken)]


def _title(outcome) -> str:
    if not outcome.cracks:
        return _("Other bars, were it cracked")
    return _("Other bars, same load")


def _how_to_read() -> str:
    return _(
        "Left is finer, with more steel. Along a dashed line the steel is the same: "
        "thin and close is finer."
    )


def _laid_out(outcome, frame: Frame, notes: int, view: View):
    """The field, in the room that words and key leave, and the rows of the key."""
    top = frame.top + HEAD + LINE * notes + OVER
    kinds = ChoiceKinds(outcome)
    rows = key_rows(key_entries(kinds, view), frame.width)
    low = frame.bottom - ROW * len(rows) - AXIS
    return ChoiceField(kinds, Frame(frame.left, top, frame.width, low - top)), rows


def _sizes(field: ChoiceField) -> list:
    """Name the lanes, each with a dot as thick as the bar is beside the others."""
    per_mm = LARGEST_DOT / field.chart.diameters[-1]
    shapes = []
    for k, (name, phi) in enumerate(zip(field.chart.sizes, field.chart.diameters, strict=True)):
        y, role = field.middle(k), "label_bold" if k == field.chosen else "tick"
        shapes.append(Circle(field.left - 12, y, max(float(phi) * per_mm, 1.5), "bar_dot"))
        shapes.append(Text(field.left - 23, y + 4.2, size_told(name), role, "end"))
    return shapes


def _axis(field: ChoiceField, view: View) -> list:
    first, last = (number(float(s), "size", view.system) for s in field.chart.spacings[[0, -1]])
    values = ticks(first, last, 6)
    places = [float(field.x(inner(float(v), "size", view.system))) for v in values]
    y = field.frame.bottom + 2
    return [
        line(field.left, y, field.right, y, "axis"),
        *bottom_axis(values, places, y, unit("size", view.system), field.right),
        Text(field.left - 14, y + 18, _("one every"), "tick", "end"),
    ]
