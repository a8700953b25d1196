"""Checks of a pulled member: it stays whole, its bars hold and keep cracks fine, and fit in."""

import math

from crackkit.learning.check import HAIR, Check
from crackkit.learning.telling import shown
from crackkit.mechanics.cover import least_cover
from crackkit.structures import tie_bars
from crackkit.structures.judging import AGGREGATE
from crackkit.structures.placing import least_gap
from crackkit.structures.pulled import PARTED, YIELDED
from crackkit.words import _


def whole(_task, structure, outcome, _system: str) -> Check:
    """Check that the first crack is not the last."""
    name, wanted = _("One piece"), _("stays whole")
    if outcome.pulled.history.sequence.held:
        text = _("Bars cross every crack, and bear what the concrete lets go.")
        return Check("whole", name, True, wanted, wanted, text)
    measured = _("has parted") if outcome.pulled.ended == PARTED else _("parts as it cracks")
    text = _("Too little steel: it yields in the first crack, which is the last. Add bars.")
    if not structure.number:
        text = _("Nothing crosses the first crack. Put bars in.")
    return Check("whole", name, False, measured, wanted, text)


def hold(task, structure, _outcome, system: str) -> Check:
    """Check that the bars bear the pull of the job with strength to spare."""
    name = _("The bars hold")
    wanted = _("{n} times the pull").format(n=f"{task.reserve:.2f}")
    yields = structure.bars_area * structure.yield_strength
    times = yields / task.structure.pull
    measured = _("{n} times the pull").format(n=f"{times:.2f}")
    ok, text = times >= task.reserve, _("Strength to spare.")
    if not ok:
        text = _("In a crack the bars are alone, and yield at {pull}. Add steel.")
        text = text.format(pull=shown(yields, "force", system))
    return Check("hold", name, ok, measured, wanted, text)


def fine(task, structure, outcome, system: str) -> Check:
    """Check the cracks of this very member, as bond along its bars makes them."""
    name, limit = _("Its own cracks"), outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    if outcome.pulled.ended in (PARTED, YIELDED):
        text = _("Nothing stops them from opening. Add steel first.")
        return Check("width", name, False, _("no limit to it"), wanted, text)
    if not outcome.cracks:
        text = _("Under this pull it does not crack at all.")
        return Check("width", name, True, _("no crack"), wanted, text)
    width = max(crack.width.governing for crack in outcome.cracks)
    return _judged("width", name, width, limit, system, _finer(task, structure))


def by_rule(task, structure, outcome, system: str) -> Check:
    """Check the width that the rule of its code family reckons with."""
    rules, limit = outcome.pulled.rules, outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    if rules is None:
        return _no_rule(outcome, wanted)
    name = _("By the rule ({rule})").format(rule=rules.name)
    return _judged("rule", name, rules.governing, limit, system, _finer_by_rule(task, structure))


def _no_rule(outcome, wanted: str) -> Check:
    ok = outcome.pulled.history.sequence.held and not outcome.cracks
    text = _("Under this pull there is no crack to reckon with.")
    if not ok:
        text = _("The rules speak of ribbed bars that hold. Add steel first.")
    measured = _("no crack") if ok else _("no rule")
    return Check("rule", _("By the rule"), ok, measured, wanted, text)


def _judged(key: str, name: str, width: float, limit: float, system: str, advice: str) -> Check:
    ok, off = width <= limit, shown(abs(width - limit), "width", system)
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    text = _("{off} to spare.") if ok else f"{_('{off} too wide.')} {advice}"
    return Check(key, name, ok, shown(width, "width", system), wanted, text.format(off=off))


def _finer(_task, structure) -> str:
    if structure.number < 4:
        return _("Share the steel among more bars: the concrete grips them better.")
    return _("Thinner bars, and more of them; or more steel, which is pulled less hard.")


def _finer_by_rule(task, structure) -> str:
    if structure.number < 4:
        return _("So few bars leave much concrete far from any bar. Take four or more.")
    if _cover(structure) > _least_cover(structure) + HAIR:
        return _("Less cover, as long as it is enough; thinner bars; or more steel.")
    return _finer(task, structure)


def steel(task, _structure, outcome, system: str) -> Check:
    """Check the mass of the bars against the budget."""
    mass, most = outcome.steel_mass, task.most_steel
    ok, off = mass <= most, shown(abs(mass - most), "mass", system)
    wanted = _("{m} or less").format(m=shown(most, "mass", system))
    text = _("{off} to spare.")
    if not ok:
        text = _("{off} too heavy. Thinner bars keep cracks as fine with less steel.")
    measured = shown(mass, "mass", system)
    return Check("steel", _("Steel"), ok, measured, wanted, text.format(off=off))


def room(_task, structure, _outcome, system: str) -> Check:
    """Check that the stones pass between the bars, side by side and one above the other."""
    name, gap = _("Room between the bars"), _gap(structure)
    least = least_gap(structure.code, structure.bar.diameter, AGGREGATE)
    ok, wanted = gap >= least - HAIR, _("{g} or more").format(g=shown(least, "size", system))
    measured = shown(gap, "size", system) if math.isfinite(gap) else _("nothing beside it")
    text = _("The stones pass.")
    if not ok:
        text = _("{off} short: the stones jam. Take fewer bars, a size thicker.")
        text = text.format(off=shown(least - gap, "size", system))
    return Check("room", name, ok, measured, wanted, text)


def cover(_task, structure, _outcome, system: str) -> Check:
    """Check the concrete over the bars against what keeps them from rusting."""
    name, have, least = _("Cover"), _cover(structure), _least_cover(structure)
    wanted = _("{c} or more").format(c=shown(least, "size", system))
    if not structure.number:
        return Check("cover", name, True, _("no bars"), wanted, _("No bars, nothing to cover."))
    ok, text = have >= least - HAIR, _("Enough to keep the steel from rusting.")
    if not ok:
        text = _("{off} short: salt reaches the steel, and it rusts. Give it more cover.")
        text = text.format(off=shown(least - have, "size", system))
    return Check("cover", name, ok, shown(have, "size", system), wanted, text)


def _places(tie) -> tuple[tuple[float, float], ...]:
    return tie_bars.places(tie.number, tie.bar, tie.width, tie.depth, tie.cover)


def _gap(tie) -> float:
    """Least clear distance of two bars side by side or one above the other [mm]."""
    lines = (sorted({round(place[k], 3) for place in _places(tie)}) for k in range(2))
    steps = [b - a for line in lines for a, b in zip(line, line[1:], strict=False)]
    return min(steps, default=math.inf) - tie.bar.diameter


def _cover(tie) -> float:
    """Least concrete over a bar, to whichever face is nearest [mm]."""
    nearest = [min(y, z, tie.width - y, tie.depth - z) for y, z in _places(tie)]
    return min(nearest, default=0.0) - tie.bar.diameter / 2


def _least_cover(tie) -> float:
    return least_cover(tie.code, tie.exposure, tie.bar.diameter).cover
