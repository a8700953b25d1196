"""The task of the lesson on slabs on the ground: a boat-store floor between two walls."""

from dataclasses import replace

from crackkit.learning import goals
from crackkit.learning.budgets import MoneyBudget
from crackkit.learning.ground import LIGHT, walled_slab
from crackkit.learning.ground_costs import ground_cost
from crackkit.learning.task import HoldTask
from crackkit.structures.ground_slab import GroundSlab
from crackkit.units.quantities import FOOT, INCH
from crackkit.words import _

FREE = (
    "left",
    "right",
    "base",
    "jointed",
    "joint_every",
    "cut_age",
    "steel",
    "spacing",
    "place",
    "curing",
)
WIDTH = {"SI": 6000.0, "US": 20 * FOOT}  # mm
AGE = 730.0  # days
_MAT = {"SI": {"steel": "12", "spacing": 125.0}, "US": {"steel": "#4", "spacing": 8 * INCH}}


def store_floor(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    floor = as_found(system)
    return HoldTask(
        key="store_floor",
        title=_("The floor of the boat store"),
        story=_(
            "The floor is to be cast against both walls and tied to them; the walls stand without "
            "it. Boats roll in on small hard wheels, so cracks must stay fine, and joints nearly "
            "shut, for two years and longer. A light mat lies on the ground now. Choose base, "
            "bars, joints and curing. A strip of soft board along a wall, and no ties, sets that "
            "end free (held 0), and is paid for; whatever bars you take run through the joints. "
            "Somebody else offers the floor with a mat of bars that holds: stay below that."
        ),
        structure=floor,
        free=FREE,
        most_steel=float("inf"),  # bars are paid for, not weighed
        asks=goals.GROUND,
        money=MoneyBudget(offer(system), floor, ground_cost),
    )


def as_found(system: str) -> GroundSlab:
    """Give the floor as it is first planned: held at both ends, a light mat on the ground."""
    found = LIGHT[system] | {"place": "ground", "through": "through", "age": AGE}
    return replace(walled_slab(system), width=WIDTH[system], **found)


def offer(system: str) -> GroundSlab:
    """Give the floor that somebody else offers: its bars hold, and it is kept moist for a week."""
    return replace(as_found(system), place="top", curing=7.0, **_MAT[system])
