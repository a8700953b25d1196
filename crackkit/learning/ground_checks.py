"""Checks of a slab on the ground: its cracks and joints stay narrow, and its bars lie in it."""

from crackkit.learning.check import Check
from crackkit.learning.telling import shown
from crackkit.mechanics.drag import saw_cut_depth
from crackkit.structures.ground_cautions import LATE
from crackkit.words import _

JOINT = {"SI": 1.0, "US": 1.016}  # mm; 0.04 in
"""Opening from which the two faces of a joint no longer carry a wheel from one panel to the next:
about 0.9 mm or 0.035 in is common practice (from memory)."""
MOST_CURING = 7.0  # days until the boats come


def fine(_task, structure, outcome, system: str) -> Check:
    """Check the cracks that came where no joint was cut."""
    name, limit = _("Cracks"), outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    wild = [crack for state in _both(outcome) for crack in state.wild]
    if not wild:
        text = _("It has cracked nowhere but at its joints.")
        return Check("width", name, True, _("no crack"), wanted, text)
    width = max(crack.width for crack in wild)
    if width <= limit and not all(state.complete for state in _both(outcome)):
        text = _("More cracks come than can be counted here. Try other bars.")
        return Check("width", name, False, _("not known"), wanted, text)
    ok, off = width <= limit, shown(abs(width - limit), "width", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too wide.')} {_advice(structure)}"
    return Check("width", name, ok, shown(width, "width", system), wanted, text.format(off=off))


def _both(outcome) -> tuple:
    """How it fares along, and across."""
    return (outcome.ground, outcome.across)


def _advice(structure) -> str:
    if not structure.area:
        return _(
            "Nothing holds this crack: bars in the floor would share it out. Or take away what "
            "holds the floor."
        )
    if structure.bar.area / structure.spacing < 0.004 * structure.thickness:
        return _("So few bars yield in the first crack. Take far more of them.")
    return _("Thinner bars closer by, or more steel.")


def joints(_task, structure, outcome, system: str) -> Check:
    """Check that no joint opens too far for a small wheel."""
    name, limit = _("Joints"), JOINT[system]
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    found = (joint.opening for state in _both(outcome) for joint in state.joints)
    opened = max(found, default=None)
    if opened is None:
        return Check("joint", name, True, _("no joints"), wanted, _("No joint to trip over."))
    ok, off = opened <= limit, shown(abs(opened - limit), "width", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too wide.')} {_hold(structure)}"
    return Check("joint", name, ok, shown(opened, "width", system), wanted, text.format(off=off))


def _hold(structure) -> str:
    if not structure.area:
        return _(
            "Where the ends are held all the movement gathers in one joint, and nothing holds it. "
            "Bars do; or set an end free."
        )
    return _("Too few bars run through it: they yield. Take more of them.")


def lies(_task, structure, _outcome, _system: str) -> Check:
    """Check that the bars lie in the concrete and not below it."""
    name, wanted = _("Where they lie"), _("in the floor, on chairs")
    if structure.bar is None:
        return Check("place", name, True, _("no bars"), wanted, _("No bars, nothing to lift."))
    if structure.place == "ground":
        text = _("Below the concrete they hold nothing. Put them on chairs, near the top.")
        return Check("place", name, False, _("on the ground"), wanted, text)
    where = {"top": _("near the top"), "middle": _("in the middle")}[structure.place]
    text = _("Held up by chairs that the crew can walk beside.")
    return Check("place", name, True, where, wanted, text)


def saw(_task, structure, _outcome, system: str) -> Check:
    """Check that joints, if any, are cut in time."""
    name, wanted = _("Saw cuts"), _("within {d}").format(d=shown(LATE, "time", system))
    if not structure.jointed:
        return Check("saw", name, True, _("none"), wanted, _("No saw is needed."))
    measured = _("after {d}").format(d=shown(structure.cut_age, "time", system))
    depth = shown(float(saw_cut_depth(structure.thickness)), "size", system)
    ok = structure.cut_age <= LATE
    text = _("Early enough. A quarter of the depth is {depth}.").format(depth=depth)
    if not ok:
        text = _("Too late: by then it may have cracked beside them. Cut on the first day.")
    return Check("saw", name, ok, measured, wanted, text)


def curing(_task, structure, _outcome, system: str) -> Check:
    """Check that the floor is not kept wet longer than the job allows."""
    name, days = _("Kept moist"), shown(structure.curing, "time", system)
    wanted = _("{d} at most").format(d=shown(MOST_CURING, "time", system))
    ok = structure.curing <= MOST_CURING
    text = _("The boats can come.") if ok else _("The boats come after a week. Cure it less long.")
    return Check("cure", name, ok, days, wanted, text)
