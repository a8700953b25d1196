"""Checks of a floor that curls: its corners stay on it, it stays dry, and its mat lies right."""

from crackkit.learning import money_checks
from crackkit.learning.check import HAIR, Check
from crackkit.learning.curled_worst import CORNER, FIRST_WHEEL, WorstDay, worst_day
from crackkit.learning.telling import shown
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import limit
from crackkit.mechanics.mat_spacing import widest_mat_spacing
from crackkit.structures.curled_mat import mat_cracks
from crackkit.words import _

# Strength scatters, two mixes alike on paper dry differently by a third, and wheels pass for
# years: without bars a part of the strength is kept back. Our choice.
MOST_PULL = 0.8
MOST_TRANSFER = 0.9  # share that dowels hand on at best; common practice
CURED = 3.0, 14.0  # days: less and the surface dusts, more and the fitters wait; common practice


def corners(_task, structure, _outcome, system: str) -> Check:
    """Check the worst day of three years: the pull is low enough, or the mat holds the crack."""
    worst, name = worst_day(structure), _("Corners")
    wanted = _("pull up to {share} of the strength, or a mat that holds {width}").format(
        share=f"{MOST_PULL:.2f}", width=shown(_limit(structure), "width", system)
    )
    measured = _("{share} of the strength, {when}").format(
        share=f"{worst.share:.2f}", when=_when(worst, system)
    )
    if worst.share <= MOST_PULL:
        text = _("{off} to spare.").format(off=f"{MOST_PULL - worst.share:.2f}")
        return Check("corner", name, True, measured, wanted, text)
    if not structure.area:
        text = _("It may break there: {off} too much.").format(off=f"{worst.share - MOST_PULL:.2f}")
        return Check("corner", name, False, measured, wanted, f"{text} {_ease(worst)}")
    return _held(worst, name, measured, wanted, system)


def _limit(structure) -> float:
    return limit(structure.code, structure.exposure).width


def _when(worst: WorstDay, system: str) -> str:
    age = shown(worst.age, "age", system)
    text = {
        "": _("after {age}, by its own weight alone"),
        CORNER: _("after {age}, the wheel on its corner"),
        "middle": _("after {age}, the wheel in its middle"),
    }.get(worst.place, _("after {age}, the wheel on its edge"))
    return text.format(age=age)


def _ease(worst: WorstDay) -> str:
    if worst.place == "":
        return _("Its own weight breaks what stands in the air: shorter panels, or a thicker slab.")
    if worst.place != CORNER and worst.slab.transfer:
        return _(
            "Dowels have done what they can; drying and weight are left: shorter panels, or a "
            "thicker slab."
        )
    return _("Shorter panels, a thicker slab, dowels beside either, or a mat near the top.")


def _held(worst: WorstDay, name: str, measured: str, wanted: str, system: str) -> Check:
    """Check the crack that comes there, if it comes at this pull or at full strength."""
    state, it = worst.state, worst.slab
    if state.bottom.peak > MOST_PULL * state.strength:
        text = _("It is pulled too hard from below, where the mat does not lie. Make it thicker.")
        return Check("corner", name, False, measured, wanted, text)
    found = mat_cracks(it, max(state.top.peak, state.strength))
    if found is None:
        text = _("The mat lies too deep: it does not hold a crack that opens from above.")
        return Check("corner", name, False, measured, wanted, text)
    width, stress = found.band.governing, float(found.held.stress)
    told = shown(width, "width", system)
    measured = _("{measured}; the mat holds the crack at {width}").format(
        measured=measured, width=told
    )
    if stress > it.yield_strength:
        measured = _("the bars yield")
        text = _("So few bars yield when it cracks: more of them, or nearer to the top.")
    elif width > _limit(it):
        text = _("{off} too wide. Bars nearer to the top, closer together, or more steel.")
        text = text.format(off=shown(width - _limit(it), "width", system))
    else:
        text = _("If a corner cracks, the mat keeps it fine, and the corner stays on.")
        return Check("corner", name, True, measured, wanted, text)
    return Check("corner", name, False, measured, wanted, text)


def lies(_task, structure, _outcome, system: str) -> Check:
    """Check cover and spacing of the mat, if there is one."""
    name, steel = _("Where the mat lies"), structure.bar
    if steel is None:
        return Check("mat", name, True, _("no mat"), _("any"), _("No mat, nothing to lay."))
    it = structure
    least = least_cover(it.code, it.exposure, steel.diameter, "slab").cover
    most = widest_mat_spacing(it.code, it.thickness, it.yield_strength, it.cover)
    words = {"c": (least, it.cover), "s": (most, it.spacing)}
    wanted, measured = (
        text.format(**{key: shown(pair[k], "size", system) for key, pair in words.items()})
        for k, text in enumerate((_("cover {c} or more, every {s} or less"), _("{c}, every {s}")))
    )
    covered, close = it.cover >= least - HAIR, it.spacing <= most + HAIR
    text = _("Covered, and close enough together.")
    if not close:
        text = _("A crack opens wide between bars so far apart: thinner ones, closer by.")
    if not covered:
        text = _("Too little concrete over it: it rusts, and floor saws catch it.")
    return Check("mat", name, covered and close, measured, wanted, text)


def dry(_task, structure, _outcome, _system: str) -> Check:
    """Check that no damp comes up through the floor."""
    name, wanted = _("Damp from below"), _("kept out by a sheet")
    text = {
        "damp": _("Water rises through it for good: coverings peel, and its bottom stays wet."),
        "open": _("It would dry from below if the ground were dry. It is not: damp comes up."),
    }.get(structure.under)
    if text:
        return Check("dry", name, False, _("no sheet"), wanted, text + " " + _("Lay a sheet."))
    return Check("dry", name, True, _("a sheet"), wanted, _("The sheet keeps it out."))


def dowels(_task, structure, _outcome, _system: str) -> Check:
    """Check that no more is asked of dowels than they do."""
    name, wanted = _("Joints pass on"), _("{s} at most").format(s=f"{MOST_TRANSFER:.2f}")
    ok, measured = structure.transfer <= MOST_TRANSFER + 1e-9, f"{structure.transfer:.2f}"
    text = _("Dowels can do that.") if structure.transfer else _("Nothing crosses the joints.")
    if not ok:
        text = _("No dowel sits so tight: holes wear, joints open. Count on less.")
    return Check("dowel", name, ok, measured, wanted, text)


def curing(_task, structure, _outcome, system: str) -> Check:
    """Check that it is kept moist long enough, and not longer than the job allows."""
    name, days = _("Kept moist"), structure.curing
    least, most = (shown(each, "time", system) for each in CURED)
    wanted, ok = _("{a} to {b}").format(a=least, b=most), CURED[0] <= days <= CURED[1]
    text = _("Hard enough on top. It puts drying off; it does not take it away.")
    if days < CURED[0]:
        text = _("Its surface stays soft, and dusts. Keep it moist for longer.")
    elif not ok:
        text = _("The fitters come after two weeks, and it curls no less. Keep it shorter.")
    return Check("cure", name, ok, shown(days, "time", system), wanted, text)


def money(task, structure, outcome, system: str) -> Check:
    """Check what it costs; what to save is told for floors that curl."""
    return money_checks.money(task, structure, outcome, system, _SAVE)


_SAVE = {
    "concrete": _("Shorter panels or dowels do with less of it."),
    "bars": _("A few thin bars near the top hold a corner; without any, short panels may do."),
    "saw": _("Larger panels, if they are thicker or have dowels."),
    "dowel": _("Fewer of them, or none where panels are short or thick enough."),
    "sand": _("A dry layer helps, but for that money other things help more."),
    "moist": _("Some days less: for curling it hardly matters."),
}


def first_wheel(system: str) -> str:
    """Say from which age the floor is used."""
    return shown(FIRST_WHEEL, "age", system)
