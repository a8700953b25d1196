"""Band 3 of a curled slab, what holds the crack? A section with its mat, and what drying does."""

from crackkit.drawing.age_words import age_words
from crackkit.drawing.curled_profiles import profiles
from crackkit.drawing.curled_section import CurledSection, curled_section
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Text
from crackkit.drawing.words_on import heading
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.units import shown
from crackkit.words import _

HEAD, FOOT = 74.0, 70.0  # over and under the section
SECTION = (118.0, 250.0)  # least and largest drawn width of the section
APART = 24.0  # between two charts


def curled_held(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    top, bottom = frame.top + HEAD, frame.bottom - FOOT
    left, wide = frame.left + 14.0, frame.width - 28.0
    section = min(max(0.28 * wide, SECTION[0]), SECTION[1])
    place = CurledSection(outcome.structure, left, left + section, top, bottom)
    each = (wide - section) / 3 - APART
    starts = [left + section + APART + k * (each + APART) for k in range(3)]
    age = age_words(outcome.structure.age)
    notes = _("through its depth, at an age of {age}"), _("at {age}"), ""
    return [
        *heading(frame, 3, _("What holds the crack?"), [one.format(age=age) for one in notes]),
        *curled_section(outcome, place, view),
        *profiles(outcome, [(x, x + each) for x in starts], top, bottom, view),
        *_below(outcome, frame, starts[0], view),
    ]


def _below(outcome, frame: Frame, indent: float, view: View) -> list:
    """What the dashed line is, right of the section; and below all what holds a crack."""
    y, shapes = frame.bottom - 32.0, []
    rows = (
        (gradient_words(outcome, view), "note", indent),
        (bar_words(outcome, view), "label_bold", frame.left + 14.0),
    )
    for k, (ways, role, x) in enumerate(rows):
        room = frame.right - 4.0 - x
        fitting = [words for words in ways if width_of(words, role) <= room] or [ways[-1]]
        shapes.append(Text(x, y + 26.0 * k, fitting[0], role))
    return shapes


def gradient_words(outcome, view: View) -> tuple[str, ...]:
    """Ways to say what the straight line of the shrinkage means, longest first."""
    gradient = outcome.curled.dryness.gradient
    more = shown(abs(gradient), "strain", view.system)
    if gradient >= 0:
        ways = (
            _("dashed: as a straight line the top wants to shrink {more} more than the bottom"),
            _("dashed: the top wants to shrink {more} more"),
            _("top shrinks {more} more"),
        )
    else:
        ways = (
            _("dashed: as a straight line the bottom wants to shrink {more} more than the top"),
            _("dashed: the bottom wants to shrink {more} more"),
            _("bottom shrinks {more} more"),
        )
    return tuple(words.format(more=more) for words in ways)


def mat_told(structure, view: View) -> str:
    """Say which bars there are, how far apart and how deep."""
    if structure.bar is None:
        return _("no bars")
    return _("{size} every {spacing} both ways, {cover} below the top").format(
        size=dict(BAR_SIZES)[structure.steel],
        spacing=shown(structure.spacing, "size", view.system),
        cover=shown(structure.cover, "size", view.system),
    )


def bar_words(outcome, view: View) -> tuple[str, ...]:
    """Ways to say what holds a crack, longest first."""
    s, line = outcome.structure, outcome.curled.line
    if s.bar is None:
        return (
            _("no bars: nothing holds a crack, the piece breaks off and rocks"),
            _("no bars: nothing holds a crack"),
        )
    told = mat_told(s, view)
    if line is not None and line.face == "bottom":
        end = _("far from this crack"), _("a mat near the top")
    else:
        end = _("across a crack in the top"), _("a mat near the top")
    return f"{told}: {end[0]}", told, end[1]
