"""The task of the lesson on slabs on the ground: a boat-store floor between two walls."""

from dataclasses import replace

from crackkit.learning import goals
from crackkit.learning.ground import LIGHT, walled_slab
from crackkit.learning.task import HoldTask
from crackkit.words import _

FREE = (
    "base",
    "jointed",
    "joint_every",
    "cut_age",
    "steel",
    "spacing",
    "place",
    "curing",
)
BUDGET = {"SI": 175.0, "US": 124.737902}  # kg on a strip 1 m wide; 275 lb
AGE = 730.0  # days


def store_floor(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    found = LIGHT[system] | {"place": "ground", "through": "through", "age": AGE}
    return HoldTask(
        key="store_floor",
        title=_("The floor of the boat store"),
        story=_(
            "The floor is cast from wall to wall, and both walls hold it: they carry the roof, and "
            "nothing can be put between. Boats roll in on small hard wheels, so cracks must stay "
            "fine, and joints nearly shut, for two years and longer. A light mat lies on the "
            "ground now. Choose base, bars, joints and curing; whatever bars you take run through "
            "the joints."
        ),
        structure=replace(walled_slab(system), **found),
        free=FREE,
        most_steel=BUDGET[system],
        asks=goals.GROUND,
    )
