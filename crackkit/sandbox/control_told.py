"""What is told of a strip whose bars are to be chosen: the four answers, and its numbers."""

from crackkit.sandbox.holding import (
    NO_RULE,
    from_to,
    limit,
    nothing_to_hold,
    pull_words,
    width_words,
)
from crackkit.structures.outcome import Told
from crackkit.structures.strip_stress import BENT
from crackkit.units import shown
from crackkit.words import _

NONE = "—"
SALTY = ("salt", "sea")
SWEPT = ("widest", "rules", "stress", "apart")


def moves(outcome, system: str) -> str:
    """Say that it bends or gets longer; how far hangs on a length that nobody was asked for."""
    if not outcome.tension:
        return _("It does not move: it carries no load.")
    if _bent(outcome):
        return _(
            "It bends: its bottom gets longer, its top shorter. How far it moves depends on its "
            "span, which is not asked for here."
        )
    return _(
        "It gets longer, both faces alike. By how much depends on its length, which is not asked "
        "for here."
    )


def _bent(outcome) -> bool:
    return outcome.structure.action == BENT


def stretched(outcome, system: str) -> str:
    """Say which face is stretched, how hard before it cracks, and how deep once it has."""
    if not outcome.tension:
        return _("Nowhere.")
    text = _("All of it, {n:.1f} times what the concrete can bear before it cracks.")
    if not _bent(outcome):
        return text.format(n=outcome.tension[0].peak)
    text = _("The bottom all along, {n:.1f} times what the concrete can bear before it cracks.")
    said = text.format(n=outcome.tension[0].peak)
    return f"{said} {_depth(outcome, system)}" if outcome.cracks else said


def _depth(outcome, system: str) -> str:
    depth = outcome.structure.depth
    lower = shown(depth - float(outcome.control.main.held.axis), "size", system)
    text = _("In a crack the lower {lower} of its {depth} are stretched.")
    return text.format(lower=lower, depth=shown(depth, "size", system))


def cracked(outcome, system: str) -> str:
    """Say how far apart the cracks are, both ways where both are loaded."""
    if not outcome.cracks:
        return _("Nowhere: this load stays below what the concrete can bear.")
    control = outcome.control
    text = _("Along the bottom, a crack about every {apart}.")
    if not _bent(outcome):
        text = _("Right through, a crack about every {apart}.")
    said = [text.format(apart=_apart(control.main, system))]
    if control.across:
        text = _("The other way too, about every {apart}.")
        said.append(text.format(apart=_apart(control.across, system)))
    if not control.cracks:
        said.append(
            _("This load alone does not crack it: so it is once shrinking or cooling have done so.")
        )
    return " ".join(said)


def _apart(way, system: str) -> str:
    return shown(way.spacing, "size", system)


def held(outcome, system: str) -> str:
    """Say how hard the bars are pulled, how wide the crack is, what cover there is, and years."""
    if not outcome.cracks:
        return " ".join((nothing_to_hold(outcome, system), *_laid(outcome, system)))
    said = (outcome.verdict.why, *_pulled(outcome, system), _width(outcome, system))
    return " ".join((*said, *_laid(outcome, system)))


def _pulled(outcome, system: str) -> list[str]:
    """How hard the bars are pulled that have the wider cracks."""
    control = outcome.control
    stress = float(control.worse.held.stress)
    said = [_("The bars across decide.")] if control.worse is not control.main else []
    return [*said, pull_words(stress, outcome, system)] if stress else said


def _width(outcome, system: str) -> str:
    band = widths(outcome)
    if band is None:
        return NO_RULE
    if len(band.by_rule) > 1:
        return width_words(band, outcome, system)
    text = _("Widest crack {w} by {rule}; no other rule knows fibres. Limit: {limit}.")
    width = shown(band.governing, "width", system)
    return text.format(w=width, rule=band.name, limit=limit(outcome, system))


def _laid(outcome, system: str) -> tuple[str, ...]:
    """What is true of the bars whether it cracks or not: cover, years until rust, weight."""
    control, told = outcome.control, _own(outcome)
    text = _("Cover {cover}; {clause} asks for {asked}.")
    cover = text.format(
        cover=shown(control.cover, "size", system),
        clause=control.asked.clause,
        asked=shown(control.asked.cover, "size", system),
    )
    return (cover, _rust(outcome), _weight(told["mass"], control, system))


def _rust(outcome) -> str:
    text = _("Air works in as far as the bars after {years}: rust may then begin.")
    said = text.format(years=_own(outcome)["years"].value)
    salty = outcome.structure.exposure in SALTY
    return f"{said} {_('Salt may start it far sooner.')}" if salty else said


def _weight(mass: Told, control, system: str) -> str:
    weighs = shown(mass.value, mass.quantity, system)
    if mass.quantity == "mass":
        return _("The bars of one metre (3.3 ft) of it weigh {m}.").format(m=weighs)
    both = control.spread is not None
    text = _("The bars, both ways, weigh {m}.") if both else _("The bars weigh {m}.")
    return text.format(m=weighs)


def widths(outcome):
    """Give the width in the worse direction, and what the rules say of it.

    None without a crack, and where bars yield.
    """
    return outcome.control.worse.band if outcome.verdict.width is not None else None


def _own(outcome) -> dict[str, Told]:
    return {told.key: told for told in outcome.numbers}


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    band, own = widths(outcome), _own(outcome)
    return (
        Told("widest", _("widest crack"), _widest(outcome, band), "width"),
        Told("rule", _("by the rule"), band.name if band else NONE),
        Told("rules", _("all rules"), _rules(band, system)),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        _load(outcome),
        own.pop("stress"),
        Told("apart", _("a crack about every"), _spacing(outcome), "size"),
        *(told for key, told in own.items() if key != "widest"),
    )


def _widest(outcome, band) -> float | str:
    """Governing width [mm]; 0 without a crack, a dash where no rule gives one."""
    if band:
        return band.governing
    return NONE if outcome.cracks else 0.0


def _rules(band, system: str) -> str:
    """From the lowest to the highest; with fibres there is but one."""
    if band is None or len(band.by_rule) < 2:
        return NONE
    return from_to(band.low, band.high, "width", system)


def _load(outcome) -> Told:
    """What acts on the strip: beside a stress that was typed it follows from the bars."""
    load = outcome.control.load
    if _bent(outcome):
        return Told("moment", _("moment on it"), load, "moment")
    return Told("pull", _("pull on it"), load, "force")


def _spacing(outcome) -> float | str:
    return float(outcome.control.worse.spacing) if outcome.cracks else NONE
