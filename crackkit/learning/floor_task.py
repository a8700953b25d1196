"""The task of the lesson on floors over several spans: the parts store over the workshop."""

from dataclasses import replace

from crackkit.learning import goals
from crackkit.learning.beam_task import CODES, YIELD_STRENGTH
from crackkit.learning.task import HoldTask
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_bars import FloorBars
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.units.quantities import FOOT, INCH, KIP
from crackkit.words import _

SPANS, SUPPORTS = range(3), range(4)
# what the learner chooses: the bars; and where the loads stand, to look at
BARS = (
    *(f"{face}.{what}" for face in ("bottom", "top") for what in ("size", "spacing", "cover")),
    *(f"spans.{k}.{what}" for k in SPANS for what in ("laid", "left_gap", "right_gap")),
    *(f"supports.{k}.{what}" for k in SUPPORTS for what in ("laid", "left_reach", "right_reach")),
    "through",
)
LOOKED_AT = (*(f"spans.{k}.live" for k in SPANS), "loads.0.at", "shifted")
FREE = BARS + LOOKED_AT
BUDGET = {"SI": 265.0, "US": 95.25}  # kg on a strip of 1 m, and of 1 ft (210 lb)
_IN_METRES = {
    "spans": (5000.0, 4500.0, 5000.0),
    "reach": 1000.0,
    "end": 500.0,
    "bars": FloorBars(size="14", spacing=200.0, cover=25.0),
    "floor": {
        "width": 1000.0,
        "depth": 180.0,
        "dead_load": 1.5,
        "live_load": 10.0,
        "loads": (Traveller(20e3, 2500.0),),
        "strength": 30.0,
    },
}
# The same for those who build in feet: a strip of 1 ft, 16, 15 and 16 ft, 7 in thick, 200 psf.
_IN_FEET = {
    "spans": (16 * FOOT, 15 * FOOT, 16 * FOOT),
    "reach": 3 * FOOT,
    "end": 1.5 * FOOT,
    "bars": FloorBars(size="#5", spacing=8 * INCH, cover=0.75 * INCH),
    "floor": {
        "width": 12 * INCH,
        "depth": 7 * INCH,
        "dead_load": 0.03 * KIP / FOOT,
        "live_load": 0.2 * KIP / FOOT,
        "loads": (Traveller(1.5 * KIP, 8 * FOOT),),
        "strength": 27.579029,
    },
}
ASKS = (*goals.FLOOR, goals.MAT)


def parts_store(system: str = "SI", code: str | None = None) -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it.
    code : str, optional
        Family of rules, ``"ACI"`` or ``"EN"``; what goes with the units if left out.
    """
    code = code or CODES[system]
    return HoldTask(
        key="parts_store",
        title=_("The parts store over the workshop"),
        story=_(
            "Over the workshop of a bus depot lies the store for parts and tyres. Shelves are "
            "filled and emptied bay by bay, and a shelf truck drives from end to end. A few bars "
            "lie in the floor now, where the sketch of the first bay shows a stretched face. "
            "Choose bars that hold whatever the loads do: sizes, spacing, where they start and "
            "stop, or run through. Thickness and spans are given. Move the loads as you like, to "
            "look: all their places count anyway. The numbers are those of one strip."
        ),
        structure=_floor(_IN_FEET if system == "US" else _IN_METRES, code),
        free=FREE,
        most_steel=BUDGET[system],
        asks=ASKS,
    )


def _floor(given: dict, code: str) -> ContinuousBeam:
    reach, end = given["reach"], given["end"]
    reaches = ((0.0, end), (reach, reach), (reach, reach), (end, 0.0))
    return ContinuousBeam(
        spans=tuple(Span(length) for length in given["spans"]),
        supports=tuple(Support(left_reach=left, right_reach=right) for left, right in reaches),
        bottom=given["bars"],
        top=replace(given["bars"], face="top"),
        yield_strength=YIELD_STRENGTH[code],
        code=code,
        **given["floor"],
    )
