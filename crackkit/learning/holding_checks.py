"""Checks of what the bars do: they hold, cracks stay fine, the steel is within the budget."""

import numpy as np

from crackkit.learning.check import Check
from crackkit.learning.laying_checks import covers_of_layers
from crackkit.learning.telling import shown, told_in
from crackkit.structures.outcome import UNHELD, YIELDS
from crackkit.units.places import place_named, stretch_told
from crackkit.words import _

FULL = 0.995  # share of the strength [-] from which bars count as fully anchored


def hold(task, _structure, outcome, system: str) -> Check:
    """Check that bars cross every crack, do not give way, and have strength to spare."""
    name = _("The bars hold")
    wanted = _("{n} times the load").format(n=f"{task.reserve:.2f}")
    worst = outcome.worst
    if outcome.verdict.key == UNHELD or (worst.moment and not worst.ultimate_moment):
        text = _("No bar crosses the crack where it opens. Put bars where it is stretched.")
        return Check("hold", name, False, _("nothing holds it"), wanted, text)
    times = worst.ultimate_moment / worst.moment if worst.moment else 0.0
    measured = _("{n} times the load").format(n=f"{times:.2f}") if times else _("no load")
    ok = not worst.moment or (times >= task.reserve and outcome.verdict.key != YIELDS)
    return Check("hold", name, ok, measured, wanted, _hold_text(ok, outcome, system))


def hold_always(task, structure, outcome, system: str) -> Check:
    """Check the same for every crack that some arrangement of the loads opens.

    Counted by the pull in the bars at each crack, against what they can build up there.
    """
    name, found = _("The bars hold"), outcome.range.cracks
    wanted = _("{n} times the load").format(n=f"{task.reserve:.2f}")
    if not found:
        return Check("hold", name, True, _("no crack"), wanted, _("It does not crack at all."))
    if any(crack.width is None for crack in found):
        text = _("No bar crosses a crack that opens when there is {loads}.")
        widest = outcome.range.widest
        words = outcome.range.arrangement(widest.face, widest.at).words
        said = text.format(loads=words)
        return Check("hold", name, False, _("nothing holds it"), wanted, said)
    worst = min(found, key=lambda c: c.developed / max(c.steel_stress, 1e-9))
    times = structure.yield_strength * worst.developed / max(worst.steel_stress, 1e-9)
    ok, measured = times >= task.reserve, _("{n} times the load").format(n=f"{times:.2f}")
    text = _("Strength to spare.") if ok else _weak_place(structure, worst, system)
    return Check("hold", name, ok, measured, wanted, text)


def _weak_place(structure, crack, system: str) -> str:
    face = _("on top") if crack.face == "top" else _("at the bottom")
    text = _("Too little to spare {face}, {place}. Add steel there, or let the bars reach farther.")
    return text.format(face=face, place=place_named(structure, crack.at, told_in(system)))


def _hold_text(ok: bool, outcome, system: str) -> str:
    if ok:
        return _("Strength to spare.")
    if share_developed(outcome) < FULL:
        return _(
            "They cannot build up their strength before they end. Give them more length there, "
            "or a hook; or take thinner bars, which need less."
        )
    if outcome.verdict.key != YIELDS:
        return _(
            "They hold this load, but with too little to spare. Add steel: one more bar, or "
            "the next size."
        )
    pull = shown(outcome.worst.steel_stress, "stress", system)
    text = _("They would be pulled to {pull}, more than the steel can bear. Add much more steel.")
    return text.format(pull=pull)


def share_developed(outcome) -> float:
    """Share of their strength [-] that the bars can build up at the worst section.

    Of several layers on its stretched side the one that can build up most; 0 without bars.
    """
    worst, shares = outcome.worst, [0.0]
    for line in outcome.steel:
        below = line.depth_at(worst.at) - worst.axis
        if line.number and line.start < worst.at < line.end and _pulled(worst, below):
            strength = outcome.structure.yield_strength
            shares.append(float(np.interp(worst.at, line.x, line.capacity)) / strength)
    return max(shares)


def _pulled(worst, below: float) -> bool:
    return (below > 0) == (worst.face == "bottom")


def anchored(_task, _structure, outcome, _system: str) -> Check:
    """Check that the bars can build up all their strength at the worst section."""
    name, share = _("Anchorage"), share_developed(outcome)
    ok = share >= FULL
    measured = _("{n} % of their strength").format(n=f"{100 * share:.0f}")
    if not share:
        measured = _("no bars there")
    text = _("They can be pulled to their yield strength.")
    if not ok:
        text = _(
            "Before the crack pulls them hard they slip. Reach farther back, hook the ends, or "
            "take thinner bars: they need less length."
        )
    return Check("anchored", name, ok, measured, _("all of it"), text)


def width(structure, outcome, cracks, widest, system: str) -> Check:
    """Check that every one of some cracks stays within the limit.

    Parameters
    ----------
    structure : object
    outcome : Outcome
        Gives the limit.
    cracks : sequence of Crack
    widest : Crack or None
        The one that decides.
    system : str
        Units of the answers.
    """
    name, limit = _("Crack width"), outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    if not cracks:
        return Check("width", name, True, _("no crack"), wanted, _("It does not crack at all."))
    if widest.width is None:
        text = _("A crack that nothing holds opens as wide as it likes.")
        return Check("width", name, False, _("no limit to it"), wanted, text)
    largest = max(c.width.governing for c in cracks)
    measured, ok = shown(largest, "width", system), largest <= limit
    off = shown(abs(largest - limit), "width", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too wide.')} {_narrower(structure, widest)}"
    return Check("width", name, ok, measured, wanted, text.format(off=off))


def fine(_task, structure, outcome, system: str) -> Check:
    """Check that every crack stays within the limit under the loads as they stand."""
    return width(structure, outcome, outcome.cracks, outcome.widest, system)


def fine_always(_task, structure, outcome, system: str) -> Check:
    """Check that every crack stays within the limit wherever the loads come and go."""
    found = outcome.range
    return width(structure, outcome, found.cracks, found.widest, system)


def covered(_task, _structure, outcome, system: str) -> Check:
    """Check that bars cross every stretch that some arrangement of the loads cracks."""
    name, gaps = _("No uncovered stretch"), outcome.range.gaps
    wanted = _("none")
    if not gaps:
        return Check("covered", name, True, wanted, wanted, _("Bars cross wherever it can crack."))
    worst = gaps[0]
    face = _("On top") if worst.face == "top" else _("At the bottom")
    stretch = stretch_told(outcome.structure, worst.start, worst.end, told_in(system))
    text = _("{face}, from {stretch}, {what} when there is {loads}.")
    said = text.format(
        face=face, stretch=stretch, what=worst.fault_words, loads=worst.arrangement.words
    )
    return Check("covered", name, False, str(len(gaps)), wanted, said)


def _narrower(structure, crack) -> str:
    advice = _(
        "Let more bars share the pull: each is pulled less, and the cracks come closer "
        "together and stay finer. Thin bars do it with the least steel."
    )
    pairs = [pair for key, pair in covers_of_layers(structure) if key in crack.bars]
    if any(have > least + 10.0 for have, least in pairs):
        return f"{advice} {_('You also have more cover than this place asks for.')}"
    return advice


def steel(task, _structure, outcome, system: str) -> Check:
    """Check the mass of the bars against the budget."""
    mass, most = outcome.steel_mass, task.most_steel
    ok, off = mass <= most, shown(abs(mass - most), "mass", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too heavy.')} {_lighter()}"
    wanted = _("{m} or less").format(m=shown(most, "mass", system))
    measured = shown(mass, "mass", system)
    return Check("steel", _("Steel"), ok, measured, wanted, text.format(off=off))


def _lighter() -> str:
    return _("Thinner bars keep cracks as fine with less steel. Bars on the squeezed side do not.")
