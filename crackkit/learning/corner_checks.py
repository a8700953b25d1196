"""Checks of a floor with inside corners: every corner is looked at, one after the other."""

from dataclasses import replace
from functools import lru_cache

from crackkit.learning.check import HAIR, Check
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import limit
from crackkit.structures.corner_bars import APART
from crackkit.structures.cornered import Cornered
from crackkit.structures.placing import least_gap
from crackkit.units.quantities import INCH
from crackkit.words import _

YEAR = 365.0  # days: the age at which it is judged
STONES = {"EN": 32.0, "ACI": INCH}  # mm, largest stones of the concrete that is ordered
# mm. A joint sawn out to 12 mm or 1/2 in and filled: filler that is good for a quarter of its
# width stays on both edges, and rubber tyres roll over it; common practice, rounded.
JOINT = {"SI": 3.0, "US": 0.12 * INCH}
CURED = 3.0, 14.0  # days: less and wheels grind it to dust, more and buses wait; common practice
# mm off the corner, where the first bar should lie and beyond which it does less; common practice
NEAR, HAND = {"SI": 50.0, "US": 2 * INCH}, {"SI": 100.0, "US": 4 * INCH}
OUTSIDE = 2  # corners of the outline; those that follow are of the box-out


@lru_cache(maxsize=64)
def _looked(slab) -> tuple[Cornered, ...]:
    first = slab.cornered
    others = (replace(slab, look=k).cornered for k in range(2, len(first.corners) + 1))
    return (first, *others)


def at_every_corner(slab) -> tuple[Cornered, ...]:
    """Give the states of a floor at one year, each with the crack of another corner.

    All of them are worked out, though the floor is alike left and right: its triangles are not,
    and where a crack can rest at more than one width they decide.

    Parameters
    ----------
    slab : CornerSlab
        Its age and the corner that is looked at do not matter.
    """
    return _looked(replace(slab, age=YEAR, look=1))


def corner_named(which: int) -> str:
    """Say where a corner is."""
    return _("where the floor narrows") if which < OUTSIDE else _("at the box-out")


def _crossing(state: Cornered) -> list:
    return [each for each in state.bars if each.crosses]


def width(_task, structure, _outcome, system: str) -> Check:
    """Check the cracks of all corners against the limit; a joint is no crack."""
    name, most = _("Crack width"), limit(structure.code, structure.exposure).width
    wanted = _("{w} or less").format(w=shown(most, "width", system))
    if structure.joint == "joint":
        text = _("No crack runs: the joints open instead.")
        return Check("width", name, True, _("no crack"), wanted, text)
    states = at_every_corner(structure)
    worst = max(range(len(states)), key=lambda k: states[k].crack.widest)
    widest = states[worst].crack.widest
    measured = _("{w}, {where}").format(w=shown(widest, "width", system), where=corner_named(worst))
    ok, off = widest <= most, shown(abs(widest - most), "width", system)
    text = _("{off} to spare.").format(off=off)
    if not ok:
        advice = " ".join(filter(None, _finer(structure, states[worst], worst, system)))
        text = f"{_('{off} too wide.').format(off=off)} {advice}"
    return Check("width", name, ok, measured, wanted, text)


def _finer(it, state: Cornered, which: int, system: str):
    """Say what is wrong at the worst corner, and what to try there."""
    if it.joint == "saw":
        yield _("A saw cut says where it opens, not how far.")
    crossing, boxed = _crossing(state), which >= OUTSIDE
    if not boxed and not crossing and it.turn != "square":
        yield _("Another box-out changes nothing there.")
    if not crossing:
        yield _unheld(it)
    elif any(each.fault == "slips" for each in crossing) and it.mat == "none":
        yield _("Bars slip: they end too soon beyond the crack. Make them longer.")
    else:
        yield _held(it, system)
    if boxed:
        yield {
            "square": _("Or make the box-out round: it gathers far less pull."),
            "turned": _("Turned, the box-out has corners as sharp as before: make it round."),
        }.get(it.turn, "")


def _unheld(it) -> str:
    if it.diagonals == it.edges == it.mat == "none":
        return _("Nothing holds it: diagonal bars close by, a mat, or a joint with dowels.")
    return _("No bar crosses it: lay them nearer to the corner.")


def _held(it, system: str) -> str:
    if it.diagonals != "none" and it.diagonal_off > HAND[system] + HAIR:
        text = _("It grows up before it meets bars so far off: lay the first {near} from it.")
        return text.format(near=shown(NEAR[system], "size", system))
    if it.diagonals != "none":
        return _("The diagonal bars are few or thin: one more, or the next size.")
    if it.mat != "none":
        return _("Few bars of a mat pass near a corner: closer, or diagonal bars beside them.")
    return _("Bars along the sides cross it at a slant. Diagonal bars lie straight across.")


def elastic(_task, structure, _outcome, system: str) -> Check:
    """Check that no bar yields where it crosses the crack of a corner."""
    name, strength = _("Bars do not yield"), structure.yield_strength
    wanted = _("below {s}").format(s=shown(strength, "stress", system))
    states = at_every_corner(structure)
    pulls = [state.steel_stress for state in states]
    if not any(_crossing(state) for state in states):
        text = _("No bar crosses a crack.")
        return Check("yield", name, True, _("no pull"), wanted, text)
    worst = max(range(len(states)), key=pulls.__getitem__)
    measured = shown(pulls[worst], "stress", system)
    torn = [each.fault == "yields" for each in _crossing(states[worst])]
    text = _("{off} to spare.").format(off=shown(strength - pulls[worst], "stress", system))
    if any(torn):
        text = _(
            "{n} of {all} give way {where}, and the crack opens on: more bars across it, "
            "or thicker ones."
        )
        if structure.joint == "joint":
            text = _("{n} of {all} give way {where}, for the joint opens: none across a joint.")
        text = text.format(n=sum(torn), all=len(torn), where=corner_named(worst))
    return Check("yield", name, not any(torn), measured, wanted, text)


def steel(task, structure, outcome, system: str) -> Check:
    """Check the mass of bars and dowels against the budget."""
    name, budget = _("Steel"), task.budget
    spent, most = budget.spent(structure, outcome), budget.most(structure)
    ok, off = spent <= most, shown(abs(spent - most), "mass", system)
    wanted = _("{m} or less").format(m=shown(most, "mass", system))
    text = _("{off} to spare.") if ok else f"{_('{off} too heavy.')} {_lighter(structure)}"
    return Check("steel", name, ok, shown(spent, "mass", system), wanted, text.format(off=off))


def _lighter(it) -> str:
    if it.mat != "none":
        return _("A mat lies everywhere, the crack comes at the corners: a lighter one, or none.")
    return _("Fewer bars, or thinner.")


def cover(_task, structure, _outcome, system: str) -> Check:
    """Check the concrete over the bars, and beside those along the sides of a corner."""
    it, name = structure, _("Cover")
    laid = [size for size in (it.diagonals, it.edges, it.mat) if size != "none"]
    if not laid:
        return Check("cover", name, True, _("no bars"), _("any"), _("No bars, nothing to cover."))
    least = max(
        least_cover(it.code, it.exposure, bar(size).diameter, "slab").cover for size in laid
    )
    have = min(it.cover, it.edge_off) if it.edges != "none" else it.cover
    ok, off = have >= least - HAIR, shown(max(least - have, 0.0), "size", system)
    wanted = _("{c} or more").format(c=shown(least, "size", system))
    text = _("Enough to keep the steel from rusting.")
    if not ok:
        text = _("{off} short: buses bring in water, and bars rust. Lay them deeper.")
        if have < it.cover:
            text = _("{off} short beside the side of the corner: move the bars off it.")
    return Check("cover", name, ok, shown(have, "size", system), wanted, text.format(off=off))


def room(_task, structure, _outcome, system: str) -> Check:
    """Check that the stones pass between bars that lie side by side."""
    name, pairs = _("Room between the bars"), list(_gaps(structure))
    if not pairs:
        text = _("No bars side by side, nothing in the way.")
        return Check("room", name, True, _("no bars side by side"), _("any"), text)
    gap, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok, off = gap >= least - HAIR, shown(max(least - gap, 0.0), "size", system)
    wanted = _("{g} or more").format(g=shown(least, "size", system))
    text = _("The stones pass.")
    if not ok:
        text = _("{off} short: the stones jam above the bars. Lay them farther apart.")
    return Check("room", name, ok, shown(gap, "size", system), wanted, text.format(off=off))


def _gaps(it):
    """Clear distances of bars side by side, each with the least that the stones ask for [mm]."""
    apart = (
        (it.diagonals, it.diagonal_apart if it.diagonal_count > 1 else None),
        (it.edges, APART if it.edge_count > 1 else None),
        (it.mat, it.spacing),
    )
    for size, every in apart:
        if size != "none" and every is not None:
            thick = bar(size).diameter
            yield every - thick, least_gap(it.code, thick, STONES[it.code])


def joints(task, structure, _outcome, system: str) -> Check:
    """Check that full joints, if any, are free of bars and do not open too far."""
    name, most = _("Joints"), JOINT[system]
    wanted = _("open by {w} or less, no bars through").format(w=shown(most, "width", system))
    if structure.joint != "joint":
        return Check("joint", name, True, _("no joints"), wanted, _("No joint to fill."))
    states = at_every_corner(structure)
    through = max(len(_crossing(state)) for state in states)
    opens = max(state.crack.widest for state in states)
    measured = _("open by {w}").format(w=shown(opens, "width", system))
    if through:
        measured = _("{n} bars through").format(n=through)
        text = _("Bars hold a joint shut, and it cracks beside it. Leave them out.")
        return Check("joint", name, False, measured, wanted, text)
    ok, off = opens <= most, shown(abs(opens - most), "width", system)
    text = _("{off} too wide for filler and tyres. {advice}").format(
        off=off, advice=_shut(structure)
    )
    if ok:
        text = _("{off} to spare. It takes {n} dowels: {m}.").format(
            off=off,
            n=task.budget.dowels(structure),
            m=shown(task.budget.dowels_mass(structure), "mass", system),
        )
    return Check("joint", name, ok, measured, wanted, text)


def _shut(it) -> str:
    if it.turn == "turned":
        return _("From a turned box-out long joints run: turn it back, or take bars instead.")
    return _("Take bars instead: they hold it at the corner.")


def curing(_task, structure, _outcome, system: str) -> Check:
    """Check that it is kept moist long enough, and not longer than the buses can wait."""
    name, days = _("Kept moist"), structure.curing
    least, most = (shown(each, "time", system) for each in CURED)
    wanted, ok = _("{a} to {b}").format(a=least, b=most), CURED[0] <= days <= CURED[1]
    text = _("Hard enough for wheels. It puts drying off; it does not take it away.")
    off = max(CURED[0] - days, days - CURED[1])
    if days < CURED[0]:
        text = _("{off} too short: wheels grind its surface to dust. Keep it moist for longer.")
    elif not ok:
        text = _("{off} too long: the buses wait outside, and at one year it cracks as well.")
    told = text.format(off=shown(off, "time", system))
    return Check("cure", name, ok, shown(days, "time", system), wanted, told)
