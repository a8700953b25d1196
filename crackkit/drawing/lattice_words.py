"""What is said beside a lattice that cracks: what happens, what strokes mean, what it cannot do."""

from crackkit.drawing.age_words import age_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.lattice_torn import ROLES, key_lines
from crackkit.drawing.shapes import Text
from crackkit.drawing.words_on import wrapped
from crackkit.mechanics.lattice import LIMITS
from crackkit.units import shown
from crackkit.words import _

LINE, PAD = 16.0, 9.0  # from line to line, and between two parts
KEY = 36.0  # from a sample of a stroke to its words
STATES = {
    "sound": _("Nothing has given way yet."),
    "begins": _("Where it is pulled hardest, bonds begin to give way; nothing is torn yet."),
    "waits": _("The crack goes on as the concrete goes on shrinking."),
    "runs": _("The crack runs on by itself: no more shrinkage is needed for it."),
    "slack": _("The crack has gone through: hardly anything is pulled any more."),
    "steps": _("Here the run is broken off; the crack would go on."),
    "shrinkage": _("No more shrinkage comes: here the crack stops."),
    "whole": _("No more shrinkage comes, and nothing is torn."),
}
MEANINGS = (_("begins to give way"), _("has nearly given way"), _("is torn"))


def state_key(run, number: int) -> str:
    """Give the key of what happens in a frame.

    Parameters
    ----------
    run : LatticeRun
    number : int
        Of the frame.
    """
    steps, last = int(run.frames[number]), int(run.frames[-1])
    torn = bool((run.left[:steps] == 0.0).any())
    if steps == last:
        return run.ended if torn or run.ended != "shrinkage" else "whole"
    if not torn:
        return "begins" if steps else "sound"
    strain, before = run.strain[steps - 1], int(run.frames[number - 1])
    return "runs" if strain == run.strain[max(before - 1, 0)] else "waits"


def words_height(width: float) -> float:
    """Room that the words need for a width, whatever happens [drawing units]."""
    return sum(
        (_state_height(width), LINE * len(MEANINGS) + PAD, LINE, *map(len_of(width), LIMITS))
    )


def _state_height(width: float) -> float:
    """Height of the longest sentence on what happens, so that nothing below it moves."""
    return PAD + LINE * max(len(wrapped(text, "label_bold", width)) for text in STATES.values())


def len_of(width: float):
    """Give what tells the height of a sentence of the limits."""
    return lambda text: LINE * len(wrapped(text, "note", width - 14.0)) + 2.0


def words_beside(run, number: int, room: Frame) -> list:
    """Write what happens, the key and the limits, each where it is in all frames."""
    said = wrapped(STATES[state_key(run, number)], "label_bold", room.width)
    y = room.top + 12.0
    shapes = [Text(room.left, y + LINE * k, row, "label_bold") for k, row in enumerate(said)]
    y += _state_height(room.width)
    for role, meaning in zip(ROLES, MEANINGS, strict=True):
        shapes += [key_lines(room.left, y - 4.0, role), Text(room.left + KEY, y, meaning, "note")]
        y += LINE
    y += PAD
    shapes.append(Text(room.left, y, _("What it cannot do"), "label"))
    return shapes + _limits(room, y + LINE)


def _limits(room: Frame, y: float) -> list[Text]:
    shapes = []
    for text in LIMITS[1:]:
        rows = wrapped(text, "note", room.width - 14.0)
        shapes.append(Text(room.left, y, "–", "note"))
        shapes += [Text(room.left + 14.0, y + LINE * k, row, "note") for k, row in enumerate(rows)]
        y += len_of(room.width)(text)
    return shapes


def tile_words(structure, run, frame, day, view: View) -> list[tuple[str, str]]:
    """Words and numbers of the tiles: what came, and what it did."""
    way = shown(frame.strain * structure.length, "movement", view.system)
    came = [
        (_("shrunk so far"), shown(frame.strain, "strain", view.system)),
        (_("over its length"), way),
    ]
    if day is not None:
        came = [(_("at an age of"), age_words(day)), (_("shrunk over its length"), way)]
    torn = int((frame.softness == 0.0).sum())
    count = _("{n} of {all}").format(n=frame.steps, all=int(run.frames[-1]))
    return [*came, (_("bonds torn"), str(torn)), (_("steps"), count)]
