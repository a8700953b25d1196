"""The verdict on bars that were chosen, the cautions, and the numbers that sum it up."""

import math

from crackkit.mechanics.crack_limits import limit
from crackkit.mechanics.fibres import INDICATIVE_ONLY
from crackkit.mechanics.minimum_steel import least_slab_steel_aci
from crackkit.structures.control import Control
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    YIELDS,
    Caution,
    Told,
    Verdict,
)
from crackkit.structures.placing import least_gap
from crackkit.words import _

ACROSS_EN = 0.2  # share of the main bars; EN 1992-1-1 9.3.1.1(2), from memory
SALTY = ("salt", "sea")
LONG = 100.0  # years beyond which no number is told: the model is not made for it


def is_cracked(it, found: Control) -> bool:
    """Tell whether it is cracked: by its load, or because the pull in its bars says so.

    Parameters
    ----------
    it : CrackControl
    found : Control
    """
    return it.given == "stress" or found.cracks


def verdict(it, found: Control) -> Verdict:
    """Judge the wider cracks of the two directions against the limit."""
    bound, worse = limit(it.code, it.exposure), found.worse
    if not is_cracked(it, found):
        text = _(
            "This load does not crack it. Shrinkage or heat may: bars are needed all the same."
        )
        return Verdict(UNCRACKED, None, bound, text)
    if yields(it, found):
        text = _("The bars are pulled past their yield strength: the crack keeps opening.")
        return Verdict(YIELDS, None, bound, text)
    width = worse.band.governing
    if _by_fibres_alone(it, found):
        text = _("Fibres alone would carry it: no bar holds the crack, no rule is made for that.")
        return Verdict(TOO_WIDE, width, bound, text)
    if width > bound.width:
        return Verdict(TOO_WIDE, width, bound, _too_wide(found))
    if worse.band.high > bound.width:
        text = _("Tight by the chosen rule; another rule would not agree.")
        return Verdict(TIGHT, width, bound, text)
    return Verdict(TIGHT, width, bound, _("The bars keep the cracks small."))


def yields(it, found: Control) -> bool:
    """Tell whether the bars of either direction are pulled past their yield strength."""
    return bool(found.hardest.held.stress > it.yield_strength * (1 + 1e-9))


def _by_fibres_alone(it, found: Control) -> bool:
    ways = [found.main] if found.across is None else [found.main, found.across]
    return it.residual > 0 and any(way.held.stress <= 0 for way in ways)


def _too_wide(found: Control) -> str:
    if found.worse is not found.main:
        return _("Too wide across the other bars: they must hold cracks as well.")
    return _("Bars hold the cracks, but not small enough.")


def cautions(it, found: Control) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first."""
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. Strength, "
        "shear, fire and fatigue are not checked here. Real cracks scatter by half again around "
        "any rule."
    )
    every = [*_placing(it, found), *_of_fibres(it, found), Caution("estimate", text)]
    return tuple(sorted(every, key=lambda caution: not caution.grave))


def _placing(it, found: Control):
    ways = [found.main.bars] if found.across is None else [found.main.bars, found.across.bars]
    mats = [found.main.bars] if found.spread is None else [found.main.bars, found.spread]
    if min(way.gap for way in mats) < 0:
        text = _("The bars do not fit side by side into the width.")
        yield Caution("no_room", text, grave=True)
    elif any(way.gap < least_gap(it.code, way.diameter, it.stones) - 0.5 for way in mats):
        text = _("The bars lie too close side by side: the stones do not pass between them.")
        yield Caution("spacing", text)
    if max(way.spacing for way in ways) > found.widest + 0.5:
        text = _("The bars lie farther apart than a slab allows: cracks open between them.")
        yield Caution("far_apart", text)
    if found.cover < found.asked.cover - 0.5:
        text = _("Less cover than {clause} asks for in this place: rust comes early.")
        yield Caution("cover", text.format(clause=found.asked.clause))
    if it.exposure in SALTY:
        text = _("Salt reaches the bars long before the air does: the years told are without it.")
        yield Caution("salt", text)
    least, clause = found.least_steel
    if any(way.total < 0.999 * least for way in ways):
        text = _("Less steel than {clause} asks for: as it cracks, the bars may give way.")
        yield Caution("little_steel", text.format(clause=clause))
    yield from _few_across(it, found)


def _few_across(it, found: Control):
    """Warn of a slab whose bars run one way only: it cracks the other way as it dries."""
    if it.shape != "slab" or found.across is not None:
        return
    least = ACROSS_EN * found.main.bars.total
    clause = "EN 1992-1-1 9.3.1.1(2)"
    if it.code == "ACI":
        least, clause = least_slab_steel_aci(it.width, it.depth), "ACI 318-19 24.4.3.2"
    if found.spread is None or found.spread.total < 0.999 * least:
        text = _("Fewer bars across than {clause} asks for: it cracks that way as it dries.")
        yield Caution("few_across", text.format(clause=clause))


def _of_fibres(it, found: Control):
    if not it.residual:
        return
    if it.fibres != "tested":
        yield Caution("dose", INDICATIVE_ONLY)
    if _by_fibres_alone(it, found):
        text = _(
            "The fibres alone would carry this load, and no bar holds the crack: there is no rule "
            "for that."
        )
        yield Caution("fibres_alone", text, grave=True)


def numbers(it, found: Control) -> tuple[Told, ...]:
    """Give the numbers that sum up the choice."""
    cracked, worse = is_cracked(it, found), found.worse
    width = "—" if yields(it, found) else worse.band.governing
    stress = float(found.hardest.held.stress) if cracked else "—"
    weigh = "mass_per_area" if it.shape == "slab" else "mass"
    label = _("bars weigh") if it.shape == "slab" else _("bars of a metre weigh")
    return (
        Told("widest", _("crack width"), width if cracked else _("none"), "width"),
        Told("stress", _("pull in the bars"), stress, "stress"),
        Told("mass", label, found.mass, weigh),
        Told("gap", _("clear between bars"), _gap(found), "size"),
        Told("asked", _("least cover"), found.asked.cover, "size"),
        Told("years", _("air at the bars after"), _years(it, found)),
    )


def _gap(found: Control) -> float | str:
    gap = float(found.main.bars.gap)
    return gap if gap >= 0 else _("no room")


def _years(it, found: Control) -> str:
    return _("salt is sooner") if it.exposure in SALTY else years_told(found.fewest_years)


def years_told(years: float) -> str:
    """Say how many years [years]; beyond a hundred the model is not good for a number."""
    if not math.isfinite(years) or years > LONG:
        return _("100 years or more")
    return _("about {n} years").format(n=f"{years:.0f}")
