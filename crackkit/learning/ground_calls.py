"""Calls of the lesson on slabs on the ground. Which answer is right is worked out."""

from dataclasses import replace

from crackkit.learning.called import Answer, called
from crackkit.learning.choices import Question
from crackkit.learning.ground import BARS, LATE, slab, walled_slab, widest
from crackkit.learning.telling import shown
from crackkit.structures.outcome import Outcome
from crackkit.words import _

OPEN = 0.05  # mm, from which a joint counts as cracked


def free(system: str) -> Question:
    """What becomes of a slab that nothing holds but the gravel?"""
    floor = slab(system)
    text = _(
        "This floor is {length} long, lies on gravel, and nothing touches its ends. It has no "
        "bars and no joints. It dries, and wants to get shorter. What is it like after a year?"
    ).format(length=shown(floor.length, "length", system))
    return called("free", text, _many(floor.solve()), _FREE, replace(floor, age=1.0), floor)


def _many(outcome: Outcome) -> str:
    found = len(outcome.ground.wild)
    return ("none", "one")[found] if found < 2 else "many"


_FREE = (
    Answer(
        "many",
        _("Cracked every few steps, for want of joints"),
        _("without joints a floor always cracks"),
        _("Joints say where it cracks, if it must. Here nothing holds it hard enough."),
    ),
    Answer(
        "one",
        _("Cracked once, in its middle"),
        _("friction on the ground cracks a slab"),
        _(
            "In its middle it is pulled most, but far too little: the gravel alone would need a "
            "floor several times as long."
        ),
    ),
    Answer(
        "none",
        _("Shorter, but whole"),
        _("what may move does not crack"),
        _(
            "Its ends creep inwards, the gravel drags a little, and that is all. Shrinking does "
            "not crack concrete, being held does."
        ),
    ),
)


def sheets(system: str) -> Question:
    """Between walls: do two sheets of plastic help?"""
    floor = walled_slab(system)
    slick = replace(floor, base="two_sheets")
    a, b = floor.solve(), slick.solve()
    text = _(
        "The same floor between two walls that hold its ends. On gravel it cracks once, {width} "
        "wide after a year. What if two sheets of plastic lay below it?"
    ).format(width=shown(widest(a), "width", system))
    return called("sheets", text, _slicker(a, b), _SHEETS, replace(slick, age=1.0), slick)


def _slicker(a: Outcome, b: Outcome) -> str:
    """What the second has for its sheets."""
    if not b.ground.wild:
        return "none"
    if len(b.ground.wild) > len(a.ground.wild):
        return "more"
    return "half" if widest(b) < 0.75 * widest(a) else "same"


_SHEETS = (
    Answer(
        "none",
        _("No crack: it slides now"),
        _("friction is what holds a floor back"),
        _("It could slide, if the walls let it. They do not."),
    ),
    Answer(
        "half",
        _("The crack is only half as wide"),
        _("less friction, less movement"),
        _("How far it wants to move does not depend on what lies below it."),
    ),
    Answer(
        "same",
        _("The same crack, a hair wider if anything"),
        _("the base does not matter"),
        _(
            "The walls hold it, so it cracks as before. Now its halves slide off even more "
            "easily. Where only the ground holds, sheets do help."
        ),
    ),
    Answer(
        "more",
        _("Several finer cracks"),
        _("what slides easily shares its cracks out"),
        _("The other way round: after the first crack nothing pulls hard enough for a second."),
    ),
)


def late(system: str) -> Question:
    """Between walls: where does it crack if joints are cut after two weeks?"""
    floor = walled_slab(system)
    sawn = replace(floor, jointed=True, cut_age=LATE)
    text = _(
        "Between its walls the floor shall have joints, at most {every} apart, a quarter deep. The "
        "saw comes two weeks after the pour. Where does the floor crack in its first year?"
    ).format(every=shown(floor.joint_every, "length", system))
    return called("late", text, _place(sawn.solve()), _LATE, replace(sawn, age=1.0), sawn)


def _place(outcome: Outcome) -> str:
    state = outcome.ground
    if state.wild:
        return "wild"
    opened = [joint.opening > OPEN for joint in state.joints]
    return "nowhere" if not any(opened) else "all" if all(opened) else "one"


_LATE = (
    Answer(
        "all",
        _("At every joint, a little"),
        _("each joint takes its share"),
        _(
            "Even cut in time only one would open here: the first one that cracks lets the rest of "
            "the floor go."
        ),
    ),
    Answer(
        "one",
        _("At one joint"),
        _("a joint works whenever it is cut"),
        _("It would, had it been cut on the first day. By now the floor has cracked."),
    ),
    Answer(
        "wild",
        _("Somewhere else: it has cracked before the saw comes"),
        _("joints are of no use"),
        _(
            "After little more than a week it is pulled harder than it can bear. Saw cuts belong "
            "into the first day."
        ),
    ),
    Answer(
        "nowhere",
        _("Nowhere: now it is strong enough"),
        _("two weeks old concrete has done its shrinking"),
        _("Most of its shrinking is still to come, and the pull comes with it."),
    ),
)


def bars(system: str) -> Question:
    """Between walls: what do bars change?"""
    floor = walled_slab(system)
    barred = replace(floor, **BARS[system])
    text = _(
        "No joints now, but bars from wall to wall, close together, near the top. Without them the "
        "floor has {n} crack, {width} wide after a year. And with them?"
    ).format(n=len(floor.ground.wild), width=shown(widest(floor.solve()), "width", system))
    found = _shared(floor.solve(), barred.solve())
    return called("bars", text, found, _BARS, replace(barred, age=1.0), barred)


def _shared(a: Outcome, b: Outcome) -> str:
    """What the second has for its bars."""
    if not b.ground.wild:
        return "none"
    if len(b.ground.wild) == len(a.ground.wild):
        return "finer" if widest(b) < 0.75 * widest(a) else "same"
    return "many" if widest(b) < 0.75 * widest(a) else "worse"


_BARS = (
    Answer(
        "none",
        _("No crack: the bars keep it together"),
        _("bars keep concrete from cracking"),
        _("Bars hardly delay a crack. They take over once it is there."),
    ),
    Answer(
        "finer",
        _("One crack, but a fine one"),
        _("bars make a crack narrower, and that is all"),
        _("The floor wants to shrink as before. If this crack is fine, there must be others."),
    ),
    Answer(
        "many",
        _("Many cracks, all of them fine"),
        _("bars make a floor crack"),
        _(
            "Each crack is held, so the pull comes back, and the next one opens. They share the "
            "same movement, and a wheel or a broom does not feel them."
        ),
    ),
    Answer(
        "same",
        _("The same crack: bars are for loads"),
        _("bars only work where something is carried"),
        _("A bar works wherever a crack wants to open across it, whatever opens it."),
    ),
)
