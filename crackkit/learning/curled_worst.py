"""The worst day of a slab that curls: looked for among its ages, and where its wheel can stand."""

from dataclasses import dataclass, replace
from functools import lru_cache

from crackkit.structures.curled import Curled
from crackkit.structures.curled_slab import CurledSlab

FIRST_WHEEL = 28.0  # days from which it is used
ALONE = 4.0, 9.0, 14.0  # days after curing, when nothing but its own weight bends it
USED = FIRST_WHEEL, 45.0, 70.0, 120.0, 240.0, 1095.0  # days
CORNER = "corner"
PLACES = {CORNER: (0.0, 0.0), "long edge": (0.5, 0.0), "end": (0.0, 0.5), "middle": (0.5, 0.5)}
"""Where the wheel stands: shares of length and width."""


@dataclass(frozen=True)
class WorstDay:
    """When and where it is pulled hardest, measured by what it can bear then.

    Attributes
    ----------
    slab : CurledSlab
        As it is on that day, its wheel in that place.
    state : Curled
        What mechanics says of it.
    place : str
        A key of `PLACES`; empty on a day without wheels.
    """

    slab: CurledSlab
    state: Curled
    place: str

    @property
    def share(self) -> float:
        """Largest tension over strength [-]."""
        return self.state.share

    @property
    def age(self) -> float:
        """Its age [days]."""
        return self.slab.age


def worst_day(slab: CurledSlab) -> WorstDay:
    """Give the worst of three years; the age and the place of the wheel of `slab` do not matter.

    The wheel is led to the corner at each age, and to the other places on the age found worst.

    Parameters
    ----------
    slab : CurledSlab
        With one wheel.
    """
    # bars do not change the pull before it cracks: what is found serves for any mat
    found = _worst(replace(_day_of(slab, USED[0], CORNER), steel="none"))
    mat = {name: getattr(slab, name) for name in ("steel", "spacing", "cover")}
    return replace(found, slab=replace(found.slab, **mat))


@lru_cache(maxsize=128)
def _worst(slab: CurledSlab) -> WorstDay:
    bare = replace(slab, loads=(replace(slab.loads[0], force=0.0),))
    days = [_day(bare, min(slab.curing + days, FIRST_WHEEL), "") for days in ALONE]
    days += [_day(slab, age, CORNER) for age in USED]
    last = max(days[len(ALONE) :], key=_share)
    days += [_day(slab, last.age, place) for place in PLACES if place != CORNER]
    return max(days, key=_share)


def _share(day: WorstDay) -> float:
    return day.share


def _day(slab: CurledSlab, age: float, place: str) -> WorstDay:
    then = _day_of(slab, age, place)
    return WorstDay(then, then.curled, place)


def _day_of(slab: CurledSlab, age: float, place: str) -> CurledSlab:
    """The slab at an age, its wheel in a place."""
    along, across = PLACES.get(place, PLACES[CORNER])
    wheel = replace(slab.loads[0], x=along * slab.length, y=across * slab.width)
    return replace(slab, age=age, loads=(wheel, *slab.loads[1:]))
