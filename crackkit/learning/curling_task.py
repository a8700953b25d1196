"""The task of the lesson on slabs that curl: the floor of a school canteen."""

from dataclasses import replace

from crackkit.learning import goals
from crackkit.learning.budgets import MoneyBudget
from crackkit.learning.curling_costs import curled_cost
from crackkit.learning.task import HoldTask
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.units.quantities import FOOT, INCH, KIP, PSI
from crackkit.words import _

FREE = (
    "age",
    "loads.0.x",
    "loads.0.y",
    "length",
    "width",
    "thickness",
    "transfer",
    "under",
    "curing",
    "steel",
    "spacing",
    "cover",
)
# A heated room, a stiff mix, kept moist for a week, a sheet against damp.
_COMMON = {
    "age": 45.0,
    "under": "sheet",
    "humidity": 0.5,
    "curing": 7.0,
    "shrinks": 5e-4,
    "exposure": "dry",
}
# Nine panels of 4 m by 4 m, 100 mm thick; a serving trolley full of kettles weighs 700 kg, runs on
# small hard wheels and bumps over joints: 5 kN on one of them.
_IN_METRES = {
    "length": 4000.0,
    "width": 4000.0,
    "thickness": 100.0,
    "loads": (WheelLoad(5000.0, 25.0, 25.0, 50.0),),
    "strength": 25.0,
    "cover": 25.0,
    "spacing": 200.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: nine panels of 12 ft by 12 ft, 4 in thick; 1 kip.
_IN_FEET = {
    "length": 12 * FOOT,
    "width": 12 * FOOT,
    "thickness": 4 * INCH,
    "loads": (WheelLoad(KIP, INCH, INCH, 2 * INCH),),
    "strength": 3500 * PSI,
    "cover": 1 * INCH,
    "spacing": 8 * INCH,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
_MAT = {"SI": {"steel": "8", "spacing": 175.0}, "US": {"steel": "#3", "spacing": 7 * INCH}}


def canteen_floor(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    floor = as_found(system)
    return HoldTask(
        key="canteen_floor",
        title=_("The floor of the school canteen"),
        story=_(
            "The next school wants a canteen too, and has a lighter trolley. The floor is drawn "
            "thin, in nine panels like the one below, on ground as damp as anywhere. It dries from "
            "its top and curls; then the trolley rolls over its corners, and bumps onto one small "
            "wheel at each joint: that is the load on the drawing. Choose thickness, "
            "length and width of the panels, dowels, mat, curing and what lies below. Joints are "
            "paid for by what the panels ask for, dowels by what they hand on. The pull is looked "
            "up from the first weeks to the last day of three years, with the wheel in the worst "
            "place; move age and wheel to see it. Somebody else offers the floor with a light mat "
            "near its top: stay below that."
        ),
        structure=floor,
        free=FREE,
        most_steel=float("inf"),  # bars are paid for, not weighed
        asks=goals.CURLED,
        money=MoneyBudget(offer(system), floor, curled_cost),
    )


def as_found(system: str = "SI") -> CurledSlab:
    """Give a panel of the floor as it is first planned: thin, nothing across its joints, no mat."""
    return CurledSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def offer(system: str = "SI") -> CurledSlab:
    """Give the floor that somebody else offers: a light mat near its top."""
    return replace(as_found(system), **_MAT[system])
