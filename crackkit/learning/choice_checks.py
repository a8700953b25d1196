"""Checks of a mat that was chosen: it holds, keeps cracks fine both ways, and can be built."""

from crackkit.learning.check import HAIR, Check
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.mechanics.fibres import INDICATIVE
from crackkit.structures.placing import least_gap
from crackkit.words import _

MOST_FIBRES = 30.0  # kg/m3, what the plant of the task can mix
WITH_FIBRES = 0.6  # share of the budget of steel that is left for bars where there are fibres [-]


def hold(task, structure, outcome, _system: str) -> Check:
    """Check that the bars alone have strength to spare; fibres are not counted on."""
    name, alone = _("The bars hold"), float(outcome.control.worse.held.alone)
    times = structure.yield_strength / alone
    measured, wanted = (_("{n} times the pull").format(n=f"{n:.2f}") for n in (times, task.reserve))
    ok, text = times >= task.reserve, _("Strength to spare, with the bars alone.")
    if not ok:
        text = _(
            "Too little to spare should the fibres fail. Add steel: closer, or a size thicker."
        )
    return Check("hold", name, ok, measured, wanted, text)


def fine(_task, structure, outcome, system: str) -> Check:
    """Check the width of the cracks of both directions."""
    name, limit = _("Crack width"), outcome.verdict.limit.width
    wanted = _("{w} or less").format(w=shown(limit, "width", system))
    width = outcome.control.worse.band.governing
    ok, off = width <= limit, shown(abs(width - limit), "width", system)
    text = _("{off} to spare.") if ok else f"{_('{off} too wide {where}.')} {_finer(structure)}"
    said = text.format(off=off, where=_where(outcome.control))
    return Check("width", name, ok, shown(width, "width", system), wanted, said)


def _where(control) -> str:
    if control.across is None or control.worse is control.main:
        return _("across the main bars")
    return _("across the other bars of the mat")


def _finer(structure) -> str:
    if structure.fibres == "none":
        return _("Thinner bars closer by help, more steel helps, and so would fibres.")
    return _("Thinner bars closer by help, and so does more steel.")


def steel(task, structure, outcome, system: str) -> Check:
    """Check the mass of the bars; fibres cost as well, so with them less is left for bars."""
    name, mass, most = _("Steel"), outcome.steel_mass, task.most_bars(structure)
    ok, off = mass <= most * (1 + 1e-9), shown(abs(mass - most), "mass", system)
    wanted = _("{m} or less").format(m=shown(most, "mass", system))
    text = _("{off} to spare.") if ok else f"{_('{off} too heavy.')} {_lighter(structure)}"
    return Check("steel", name, ok, shown(mass, "mass", system), wanted, text.format(off=off))


def bars_share(structure) -> float:
    """Share of the budget that is left for bars [-]: fibres cost as well."""
    return 1.0 if structure.fibres == "none" else WITH_FIBRES


def _lighter(structure) -> str:
    if structure.fibres == "none":
        return _("Thinner bars keep cracks as fine with less steel; or let fibres help.")
    return _("Fibres have taken their share of the budget: thinner bars, or fewer.")


def dose(_task, structure, _outcome, _system: str) -> Check:
    """Check that no more fibres are ordered than the plant can mix."""
    name, most = _("Fibres"), _("at most {a}").format(a=dosage_text(MOST_FIBRES))
    chosen = next((each for each in INDICATIVE if each.key == structure.fibres), None)
    if chosen is None:
        text = _("Nobody has tested this mix yet: take one of the doses.")
        return Check("dose", name, False, _("as tested"), most, text)
    if not chosen.dosage:
        return Check("dose", name, True, _("none"), most, _("The bars do it alone."))
    ok, text = chosen.dosage <= MOST_FIBRES, _("Before the pour the very mix has to be tested.")
    if not ok:
        text = _("The plant cannot mix so many evenly: they would ball up. Order fewer.")
    return Check("dose", name, ok, dosage_text(chosen.dosage), most, text)


def dosage_text(dosage: float) -> str:
    """Write a dosage [kg/m3] as people in both systems read it."""
    return _("{kg} kg/m³ ({lb} lb/yd³)").format(kg=f"{dosage:.0f}", lb=f"{1.6856 * dosage:.0f}")


def enough(_task, _structure, outcome, system: str) -> Check:
    """Check that both directions have bars, and as many as the first crack asks for."""
    name, control = _("Enough both ways"), outcome.control
    least, clause = control.least_steel
    wanted = _("{a} or more").format(a=shown(least, "area", system))
    if control.across is None:
        text = _("It is pulled both ways, and nothing holds it the other way. Add bars across.")
        return Check("enough", name, False, _("bars one way only"), wanted, text)
    have = min(float(way.bars.total) for way in (control.main, control.across))
    ok, text = have >= 0.999 * least, _("When it cracks, the bars can take what it held.")
    if not ok:
        text = _("As it cracks the bars would give way ({clause}). Add steel.").format(
            clause=clause
        )
    return Check("enough", name, ok, shown(have, "area", system), wanted, text)


def room(_task, structure, outcome, system: str) -> Check:
    """Check that the stones pass between the bars of either direction."""
    name = _("Room between the bars")
    pairs = [(float(bars.gap), least) for bars, least in _ways(structure, outcome.control)]
    gap, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok, wanted = gap >= least - HAIR, _("{g} or more").format(g=shown(least, "size", system))
    text = _("The stones pass.")
    if not ok:
        text = _("{off} short: the stones jam above the bars. Take fewer bars, a size thicker.")
        text = text.format(off=shown(least - gap, "size", system))
    return Check("room", name, ok, shown(gap, "size", system), wanted, text)


def _ways(structure, control) -> list:
    """Bars of either direction, each with the least clear distance that its size asks for [mm]."""
    found = [(control.main.bars, control.least_gap)]
    if control.spread is not None:
        across = bar(structure.cross_size)
        found.append((control.spread, least_gap(structure.code, across.diameter, structure.stones)))
    return found


def close(_task, structure, outcome, system: str) -> Check:
    """Check that the bars of the mat do not lie too far apart."""
    name, most = _("Bars close enough"), outcome.control.widest
    far = max(float(bars.spacing) for bars, _least in _ways(structure, outcome.control))
    ok, wanted = far <= most + HAIR, _("{s} or less").format(s=shown(most, "size", system))
    text = _("No crack finds a wide way between them.")
    if not ok:
        text = _("Between bars so far apart a crack opens wide. Take thinner bars, closer by.")
    return Check("mat", name, ok, shown(far, "size", system), wanted, text)


def cover(_task, _structure, outcome, system: str) -> Check:
    """Check the concrete over the outermost bars."""
    name, have, least = _("Cover"), outcome.control.cover, outcome.control.asked.cover
    ok, wanted = have >= least - HAIR, _("{c} or more").format(c=shown(least, "size", system))
    text = _("Enough to keep the steel from rusting. More would only widen the cracks.")
    if not ok:
        text = _("{off} short: rust comes early. Give it more cover.")
        text = text.format(off=shown(least - have, "size", system))
    return Check("cover", name, ok, shown(have, "size", system), wanted, text)
