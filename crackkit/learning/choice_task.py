"""The task of the lesson on choosing bars: the floor of a wash bay, held fast as it shrinks."""

from crackkit.learning import goals
from crackkit.learning.choice_checks import bars_share
from crackkit.learning.task import HoldTask
from crackkit.structures.crack_control import CrackControl
from crackkit.units.quantities import INCH, KIP, PSI
from crackkit.words import _

FREE = ("size", "spacing", "cross_size", "cross_spacing", "outer", "cover", "fibres")
BUDGET = {"SI": 72.0, "US": 5.896701}  # kg on a square metre, and on a square foot (13 lb)
_COMMON = {
    "action": "pulled",
    "given": "load",
    "both_ways": True,
    "exposure": "leak_tight",
    "air": "roofed",
    "curing": 3.0,
    "duration": "lasting",
}
# A strip of 1 m of a floor of 160 mm. It cracks young, while its strength is still 20 MPa.
_IN_METRES = {
    "size": "16",
    "spacing": 200.0,
    "cross_size": "16",
    "cross_spacing": 200.0,
    "cover": 30.0,
    "pull": 360e3,
    "width": 1000.0,
    "depth": 160.0,
    "stones": 16.0,
    "strength": 20.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: a strip of 1 ft of a floor of 7 in, 3000 psi.
_IN_FEET = {
    "size": "#5",
    "spacing": 8 * INCH,
    "cross_size": "#5",
    "cross_spacing": 8 * INCH,
    "cover": 1.25 * INCH,
    "pull": 20 * KIP,
    "width": 12 * INCH,
    "depth": 7 * INCH,
    "stones": 0.75 * INCH,
    "strength": 3000 * PSI,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}


def wash_floor(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    floor = CrackControl(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)
    return HoldTask(
        key="wash_floor",
        title=_("The floor of the wash bay"),
        story=_(
            "Buses are washed on this floor, and nothing of the dirty water may reach the ground. "
            "The floor wants to shrink, its walls hold it fast: it is pulled straight, the same "
            "both ways, and it cracks through while it is young. A mat of thick bars lies in both "
            "faces now. Choose bars, and fibres if you like, so that the cracks hold water. "
            "What fibres give here is indicative: on a real job their mix is tested before the "
            "pour, and strength is counted on the bars alone. The numbers are those of one strip."
        ),
        structure=floor,
        free=FREE,
        most_steel=BUDGET[system],
        asks=goals.CHOICE,
        share=bars_share,
    )
