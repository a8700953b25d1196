"""The lesson on slabs on the ground: the floor of a boat store, and its walk."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.telling import shown
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.ground_slab import GroundSlab
from crackkit.units.quantities import FOOT, INCH, PSI
from crackkit.words import _

LESSON = "06_ground_slab"
NEEDS = Needs(
    LESSON,
    calls=("free", "sheets", "late", "bars"),
    passed=("store_floor",),
    answers=4,
)
# The floor of a boat store by a lake, not heated, kept moist for three days. Shrinkage by ACI
# 209R in both systems: the one of the three that counts days of curing.
_COMMON = {
    "age": 365.0,
    "base": "gravel",
    "humidity": 0.6,
    "curing": 3.0,
    "exposure": "dry",
    "model": "ACI",
}
# 24 m long, 6 m wide and 150 mm thick.
_IN_METRES = {
    "length": 24000.0,
    "width": 6000.0,
    "thickness": 150.0,
    "joint_every": 4500.0,
    "steel": "none",
    "spacing": 100.0,
    "cover": 40.0,
    "strength": 30.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 80 ft, 20 ft and 6 in.
_IN_FEET = {
    "length": 80 * FOOT,
    "width": 20 * FOOT,
    "thickness": 6 * INCH,
    "joint_every": 15 * FOOT,
    "steel": "none",
    "spacing": 8 * INCH,
    "cover": 1.5 * INCH,
    "strength": 4000 * PSI,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
HELD = {"left": 1.0, "right": 1.0}
BARS = {"SI": {"steel": "12", "spacing": 100.0}, "US": {"steel": "#4", "spacing": 8 * INCH}}
LIGHT = {"SI": {"steel": "10", "spacing": 200.0}, "US": {"steel": "#3", "spacing": 12 * INCH}}
EARLY, LATE = 1.0, 14.0  # days after which joints are cut
SHORT_CURE, LONG_CURE = 1.0, 28.0  # days


def slab(system: str = "SI") -> GroundSlab:
    """Give the floor of a boat store, in round numbers: no joints, no bars, free ends."""
    return GroundSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def young_slab(system: str = "SI") -> GroundSlab:
    """Give the same floor on the day after it was cast."""
    return replace(slab(system), age=1.0)


def walled_slab(system: str = "SI") -> GroundSlab:
    """Give the same floor, held by walls at both ends."""
    return replace(slab(system), **HELD)


def barred_slab(system: str = "SI") -> GroundSlab:
    """Give the floor between its walls with bars that keep its cracks fine."""
    return replace(walled_slab(system), **BARS[system])


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    start = _start(system)
    held = start | HELD
    return (
        _free_step(start),
        _walls_step(system, held),
        _sheets_step(held),
        *_joint_steps(system, held),
        *_bar_steps(system, held),
        *_sides_steps(system, held),
        _curing_step(system, held),
    )


def _start(system: str) -> dict:
    """What brings the panel back to the floor as it is at first."""
    floor = slab(system)
    return {
        "age": floor.age,
        "left": 0.0,
        "right": 0.0,
        "sides": 0.0,
        "base": floor.base,
        "jointed": False,
        "cut_age": EARLY,
        "steel": "none",
        "place": "top",
        "both_ways": False,
        "curing": floor.curing,
    }


def _free_step(start: dict) -> WalkStep:
    return WalkStep(
        _(
            "The floor lies on gravel, nothing touches its ends. Move the age from 1 day to ten "
            "years, or let it play. Does it crack? 'Set it for me' gives one year."
        ),
        start,
        _(
            "It gets shorter, and its ends creep inwards, but it does not crack. The gravel holds "
            "it back only a little: look how low the pull stays under the strength. Shrinking "
            "does not crack it. Being held does."
        ),
    )


def _walls_step(system: str, held: dict) -> WalkStep:
    past = walled_slab(system).ground
    return WalkStep(
        _(
            "Now walls hold both ends: under Held by set left and right to 1. Then go back to one "
            "day and press To the next crack."
        ),
        held,
        _(
            "After {days} it cracks through, from top to bottom. There is no second crack: the "
            "first one sets both halves free, so all that the floor wants to shrink gathers in "
            "this one, {width} after a year."
        ).format(
            days=shown(past.first, "time", system), width=shown(past.wild[0].width, "width", system)
        ),
        from_start=True,
    )


def _sheets_step(held: dict) -> WalkStep:
    return WalkStep(
        _("Somebody says: it slides better on plastic. Under Held by put two sheets below it."),
        held | {"base": "two_sheets"},
        _(
            "The crack comes on the same day, and it is no finer. The walls hold the floor, not "
            "the gravel. Sheets help where nothing but the ground holds: there they are worth it."
        ),
    )


def _joint_steps(system: str, held: dict) -> tuple[WalkStep, ...]:
    every = shown(slab(system).joint_every, "length", system)
    jointed = held | {"jointed": True, "cut_age": EARLY}
    return (
        WalkStep(
            _(
                "Back on gravel. Cut joints at most {every} apart, a quarter deep, after a day."
            ).format(every=every),
            jointed,
            _(
                "The floor still cracks, but where you told it to: straight, at a joint, where it "
                "can be filled. But only one joint opens, and wide. A joint leads a crack, it "
                "does not take the walls away."
            ),
        ),
        WalkStep(
            _("The saw was on another site: cut the same joints after two weeks."),
            jointed | {"cut_age": LATE},
            _(
                "Too late. The floor has cracked already, where it liked, and the joints stay "
                "shut beside it. The saw must be there before the pull is."
            ),
        ),
    )


def _bar_steps(system: str, held: dict) -> tuple[WalkStep, ...]:
    barred = held | BARS[system]
    return (
        WalkStep(
            _(
                "No joints, but bars from end to end, near the top: under Bars choose size {size}, "
                "one every {spacing}."
            ).format(**_bars_told(system)),
            barred,
            _(
                "Many cracks, and all of them fine: each crack that opens is held by its bars, the "
                "pull comes back, and the next one opens. Bars do not keep a floor from cracking; "
                "they share its movement out."
            ),
            from_start=True,
        ),
        WalkStep(
            _("The same bars, but they lie on the ground: nobody pulled them up."),
            barred | {"place": "ground"},
            _(
                "As if there were none. They lie below the concrete and not in it, and hold "
                "nothing. All that steel was paid for one wide crack."
            ),
        ),
    )


def _bars_told(system: str) -> dict:
    size = BARS[system]["steel"]
    name = size if size.startswith("#") else _("{n} mm").format(n=size)
    return {"size": name, "spacing": shown(BARS[system]["spacing"], "size", system)}


def _sides_steps(system: str, held: dict) -> tuple[WalkStep, ...]:
    tied = held | BARS[system] | {"sides": 1.0}
    return (
        WalkStep(
            _(
                "The bars are up again. Now the long sides are tied to walls too: under Held by "
                "set the sides to 1, and look at the plan."
            ),
            tied,
            _(
                "Now it cracks along as well, from gate to back wall. All bars run the same way "
                "as this crack: none crosses it, and it opens wide. A slab cracks across each way "
                "in which it is held."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Lay the same bars across too: under Bars switch it on."),
            tied | {"both_ways": True},
            _(
                "Fine cracks both ways, for twice the steel. Bars hold the cracks that they "
                "cross, and no others. Had the sides been left free, half of it would do."
            ),
        ),
    )


def _curing_step(system: str, held: dict) -> WalkStep:
    short, long = (first_day(system, days) for days in (SHORT_CURE, LONG_CURE))
    return WalkStep(
        _(
            "No bars, no joints, only water: under Concrete keep it moist for one day, then for "
            "28. When does it crack?"
        ),
        held | {"curing": LONG_CURE},
        _(
            "Kept moist for one day it cracks after {short}, for 28 days after {long}, and the "
            "crack is narrower. Water buys time, in which concrete gets stronger, and in the end "
            "it shrinks less. It does not take the walls away."
        ).format(short=shown(short, "time", system), long=shown(long, "time", system)),
        from_start=True,
    )


def first_day(system: str, curing: float) -> float:
    """Age at which the floor between its walls cracks after so many days of curing [days]."""
    return replace(walled_slab(system), curing=curing).ground.first


def widest(outcome) -> float:
    """Width of the widest crack that is at no joint [mm]; 0 without one."""
    return max((crack.width for crack in outcome.ground.wild), default=0.0)


def widest_joint(outcome) -> float:
    """How far the widest joint is open [mm]; 0 without one."""
    return max((joint.opening for joint in outcome.ground.joints), default=0.0)
