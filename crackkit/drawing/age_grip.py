"""The age that is looked at, as a grip on the axis of the ages.

The axis is logarithmic, so the grip moves a count of decades and not one of days.
"""

import math

from crackkit.drawing.age_words import age_words
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Circle, Group, Handle, rectangle
from crackkit.structures import fields
from crackkit.words import _

GRIP = 6.0
REACH = 11.0  # half the width of what a finger may touch
STEP = 0.05  # decades for one press of a key: some eighth more days


def age_grip(structure, x: float, top: float, bottom: float, room: float, view: View) -> list:
    """Draw the grip at the age.

    Parameters
    ----------
    structure : GroundSlab or CurledSlab
    x, top, bottom : float
        Line of the age on the drawing.
    room : float
        Length of the axis on the drawing, from the least age to the greatest.
    view : View
    """
    if not view.live:
        return []
    found = fields.input_at(structure, "age")
    now, low, high = (math.log10(days) for days in (found.value, found.low, found.high))
    touched = rectangle(x - REACH, top, 2 * REACH, bottom - top, "hit")
    handle = Handle(
        "decades",
        _("age"),
        age_words(found.value),
        "x",
        (high - low) / room,
        now,
        low,
        high,
        STEP,
    )
    return [Group((touched, Circle(x, bottom, GRIP, "grip")), handle)]
