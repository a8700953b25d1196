"""The task of the first lesson: the tie beam at the foot of a salt shed's arches."""

from crackkit.learning import goals
from crackkit.learning.task import HoldTask
from crackkit.structures.tension_member import TensionMember
from crackkit.units.quantities import FOOT, INCH, KIP, PSI
from crackkit.words import _

FREE = ("number", "size", "cover")
BUDGET = {"SI": 36.0, "US": 29.483504}  # kg; 65 lb
_COMMON = {"ends": "gripped", "exposure": "salt", "duration": "lasting"}
# 220 mm square, 3.6 m between the feet of an arch.
_IN_METRES = {
    "pull": 160e3,
    "number": 2,
    "size": "25",
    "cover": 40.0,
    "length": 3600.0,
    "width": 220.0,
    "depth": 220.0,
    "strength": 25.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 9 in square, 12 ft.
_IN_FEET = {
    "pull": 26 * KIP,
    "number": 2,
    "size": "#8",
    "cover": 1.25 * INCH,
    "length": 12 * FOOT,
    "width": 9 * INCH,
    "depth": 9 * INCH,
    "strength": 4000 * PSI,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}


def shed_tie(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the tie has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    return HoldTask(
        key="shed_tie",
        title=_("The tie of the salt shed"),
        story=_(
            "The town keeps its road salt in a shed under low arches. Each arch wants to spread "
            "its feet, and a concrete tie holds them together: it is pulled, day and night, for "
            "as long as the shed stands. Salt gets everywhere. Two thick bars lie in it now. "
            "Choose bars that hold, keep the cracks fine and do not rust."
        ),
        structure=TensionMember(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON),
        free=FREE,
        most_steel=BUDGET[system],
        asks=goals.PULLED,
    )
