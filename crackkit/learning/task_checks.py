"""The checks of a beam task: what was reached, what was wanted, and what to try."""

from dataclasses import dataclass

from crackkit.mechanics.cover import least_cover
from crackkit.structures.fields import inputs
from crackkit.structures.judging import clear_gap, least_gap
from crackkit.structures.laid_bars import stirrup_diameter
from crackkit.structures.outcome import UNHELD, YIELDS
from crackkit.structures.simple_beam import member
from crackkit.units import shown
from crackkit.words import _

HAIR = 0.5  # mm: what nobody can lay by


@dataclass(frozen=True)
class Check:
    """One thing that must be reached.

    Attributes
    ----------
    key, name : str
        Short name inside, and for the reader.
    ok : bool
        Whether it is reached.
    measured, wanted : str
        What the solution has and what it should have, in the reader's units.
    text : str
        How far off, and what to try; or how much is to spare.
    """

    key: str
    name: str
    ok: bool
    measured: str
    wanted: str
    text: str


def givens(task, structure) -> tuple[Check, ...]:
    """Say so if something was changed that the task fixes; otherwise nothing."""
    first = {item.path: item.value for item in inputs(task.beam)}
    now = {item.path: item for item in inputs(structure)}
    gone = first.keys() - now.keys()
    changed = [i for p, i in now.items() if p not in task.free and first.get(p) != i.value]
    if not changed and not gone:
        return ()
    names = ", ".join(dict.fromkeys(item.declared.label for item in changed)) or _("the loads")
    text = _("The job fixes this. Start over to have it back: {names}.").format(names=names)
    return (Check("givens", _("As ordered"), False, _("changed"), _("as given"), text),)


def hold(task, outcome, system: str) -> Check:
    """Check that bars cross every crack, do not give way, and have strength to spare."""
    name = _("The bars hold")
    wanted = _("{n} times the load").format(n=f"{task.reserve:.2f}")
    if outcome.verdict.key == UNHELD:
        text = _("No bar crosses the crack where it opens. Put bars where it is stretched.")
        return Check("hold", name, False, _("nothing holds it"), wanted, text)
    worst = outcome.worst
    times = worst.ultimate_moment / worst.moment if worst.moment else 0.0
    measured = _("{n} times the load").format(n=f"{times:.2f}") if times else _("no load")
    ok = not worst.moment or (times >= task.reserve and outcome.verdict.key != YIELDS)
    return Check("hold", name, ok, measured, wanted, _hold_text(ok, outcome, system))


def _hold_text(ok: bool, outcome, system: str) -> str:
    if ok:
        return _("Strength to spare.")
    if outcome.verdict.key != YIELDS:
        return _(
            "They hold this load, but with too little to spare. Add steel: one more bar, or "
            "the next size."
        )
    pull = shown(outcome.worst.steel_stress, "stress", system)
    text = _("They would be pulled to {pull}, more than the steel can bear. Add much more steel.")
    return text.format(pull=pull)


def width(structure, outcome, system: str) -> Check:
    """Check that every crack stays within the limit."""
    name, limit = _("Crack width"), outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    if not outcome.cracks:
        return Check("width", name, True, _("no crack"), wanted, _("It does not crack at all."))
    if outcome.widest.width is None:
        text = _("A crack that nothing holds opens as wide as it likes.")
        return Check("width", name, False, _("no limit to it"), wanted, text)
    widest = max(c.width.governing for c in outcome.cracks)
    measured, ok = shown(widest, "width", system), widest <= limit
    off = shown(abs(widest - limit), "width", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too wide.')} {_narrower(structure)}"
    return Check("width", name, ok, measured, wanted, text.format(off=off))


def _narrower(structure) -> str:
    advice = _(
        "Let more bars share the pull: each is pulled less, and the cracks come closer "
        "together and stay finer. Thin bars do it with the least steel."
    )
    have, least = _covers(structure)[0]
    if have > least + 10.0:
        return f"{advice} {_('You also have more cover than this place asks for.')}"
    return advice


def steel(task, outcome, system: str) -> Check:
    """Check the mass of the bars against the budget."""
    mass, most = outcome.steel_mass, task.most_steel
    ok, off = mass <= most, shown(abs(mass - most), "mass", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too heavy.')} {_lighter()}"
    wanted = _("{m} or less").format(m=shown(most, "mass", system))
    measured = shown(mass, "mass", system)
    return Check("steel", _("Steel"), ok, measured, wanted, text.format(off=off))


def _lighter() -> str:
    return _("Thinner bars keep cracks as fine with less steel. Bars on the squeezed side do not.")


def room(structure, system: str) -> Check:
    """Check that the bars lie far enough apart for the concrete to get between them."""
    name, whole = _("Room between the bars"), member(structure)
    pairs = [(clear_gap(whole, item), least_gap(whole, item)) for item in whole.layers]
    if not pairs:
        return Check("room", name, True, _("no bars"), _("any"), _("No bars, nothing in the way."))
    gap, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok = gap >= least - HAIR
    wanted = _("{g} or more").format(g=shown(least, "size", system))
    measured = _("they do not fit") if gap < 0 else shown(gap, "size", system)
    if gap == float("inf"):
        measured = _("one bar")
    return Check("room", name, ok, measured, wanted, _room_text(ok, gap, least, system))


def _room_text(ok: bool, gap: float, least: float, system: str) -> str:
    if ok:
        return _("The stones pass.")
    off = shown(least - gap, "size", system)
    text = _("{off} short: the stones jam above the bars. Take fewer bars, a size thicker.")
    return text.format(off=off)


def cover(structure, system: str) -> Check:
    """Check the concrete over bars and stirrups against what keeps them from rusting."""
    pairs = _covers(structure)
    name = _("Cover")
    if not pairs:
        return Check("cover", name, True, _("no bars"), _("any"), _("No bars, nothing to cover."))
    have, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok = have >= least - HAIR
    wanted = _("{c} or more").format(c=shown(least, "size", system))
    off = shown(max(least - have, 0.0), "size", system)
    bad = _("{off} short: water reaches the steel, and it rusts. Give it more cover.")
    text = _("Enough to keep the steel from rusting.") if ok else bad.format(off=off)
    return Check("cover", name, ok, shown(have, "size", system), wanted, text)


def _covers(structure) -> list[tuple[float, float]]:
    """Pairs of cover as laid and least cover [mm]: layers of bars from the bottom, stirrups."""
    code, exposure = structure.code, structure.exposure
    pairs = []
    for item in member(structure).layers:
        have = min(item.depth, structure.depth - item.depth) - item.bar.diameter / 2
        pairs.append((have, least_cover(code, exposure, item.bar.diameter).cover))
    if structure.stirrup != "none":
        thin = stirrup_diameter(structure.stirrup)
        pairs.append((min(structure.cage), least_cover(code, exposure, thin).cover))
    return pairs
