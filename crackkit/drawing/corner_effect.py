"""Words below a close-up: what lies across the crack from an inside corner, and what it does."""

import numpy as np

from crackkit.drawing.corner_break import HAIR, jointed
from crackkit.drawing.corner_words import bars_words, joint_words
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Text
from crackkit.drawing.words_on import wrapped
from crackkit.units import shown
from crackkit.words import _

LINE = 18.0  # from line to line
MOST = 2  # lines on what lies there


def effect_lines(outcome, x: float, y: float, room: float, view: View) -> list[Text]:
    """Write what lies there, and what it does to the crack.

    Parameters
    ----------
    outcome : Outcome
    x, y, room : float
        Left end and baseline of the first line, and length of a line [drawing units].
    view : View
    """
    rows = [(line, "note") for line in _laid(outcome.structure, room, view)]
    rows.append((_one_that_fits(effect_words(outcome, view), "label_bold", room), "label_bold"))
    return [Text(x, y + LINE * k, line, role) for k, (line, role) in enumerate(rows)]


def _laid(structure, room: float, view: View) -> list[str]:
    """Lines on what lies there; what there is no room for is left out as a whole."""
    joint, told = joint_words(structure, view), ""
    for words in [*bars_words(structure, view), *([joint] if joint else [])]:
        longer = f"{told}; {words}" if told else words
        if len(wrapped(longer, "note", room)) <= MOST:
            told = longer
    return wrapped(told, "note", room)


def _one_that_fits(ways, role: str, room: float) -> str:
    found = [words for words in ways if width_of(words, role) <= room]
    return found[0] if found else ways[-1]


def effect_words(outcome, view: View) -> tuple[str, ...]:
    """Ways to say what bars, fibres and joint do to the crack, longest first."""
    crack = outcome.cornered.crack
    bare, now = (float(np.max(each, initial=0.0)) for each in (crack.bare, crack.opening))
    if bare < HAIR:
        return (_("nothing to hold: it has not cracked"), _("it has not cracked"))
    wide, told = (shown(width, "width", view.system) for width in (bare, now))
    if now < HAIR:
        return (_("bare concrete would gape {bare}; as it is, it stays closed").format(bare=wide),)
    if jointed(crack):
        return (_("the joint opens by {now}, and no crack comes").format(now=told),)
    if not crack.runs and now > bare - HAIR / 2:
        return (_("it gapes {now} at the corner, no more: nothing to hold").format(now=told),)
    if now > bare - HAIR / 2:
        return _untrimmed(told, any(bar.crosses for bar in outcome.cornered.bars))
    n = round(100 * (1.0 - now / bare))
    ways = (
        _("bare concrete would gape {bare}; as it is {now}: {n}\u00a0% less"),
        _("{now} instead of {bare}: {n}\u00a0% less"),
    )
    return tuple(words.format(bare=wide, now=told, n=n) for words in ways)


def _untrimmed(told: str, crossed: bool) -> tuple[str, ...]:
    if not crossed:
        return (_("the crack is {now} wide: no bar crosses it").format(now=told),)
    ways = (
        _("the crack is {now} wide, no less than with nothing across it"),
        _("{now} wide: nothing trims it"),
    )
    return tuple(words.format(now=told) for words in ways)
