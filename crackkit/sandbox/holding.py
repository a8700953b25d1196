"""Words about what holds a crack, the same for every structure: limit, pull in the bars, weight."""

from crackkit.drawing.width_scale import SOURCES
from crackkit.units import shown
from crackkit.words import _

NO_RULE = _("No rule gives a width where bars yield or slip.")


def limit(outcome, system: str) -> str:
    """Say the limit, its use and its source."""
    bound = outcome.verdict.limit
    return _("{w} ({use}; {source}, {clause})").format(
        w=shown(bound.width, "width", system),
        use=bound.label,
        source=SOURCES.get(bound.source, bound.source),
        clause=bound.clause,
    )


def nothing_to_hold(outcome, system: str) -> str:
    """Say that no crack is there, and what one would be held against."""
    return _("There is no crack to hold. Limit: {limit}.").format(limit=limit(outcome, system))


def held_so(outcome, stress: float, width: str, system: str) -> str:
    """Say why it is judged so, how hard the bars are pulled, how wide the crack is, their weight.

    Parameters
    ----------
    outcome : Outcome
        With a crack that bars cross.
    stress : float
        In the bars [MPa]; of 0 nothing is said.
    width : str
        The sentence about the width; empty where none is known.
    system : str
        ``"SI"`` or ``"US"``.
    """
    weight = _("The bars weigh {m}.").format(m=shown(outcome.steel_mass, "mass", system))
    pulled = [pull_words(stress, outcome, system)] if stress else []
    return " ".join((outcome.verdict.why, *pulled, width or NO_RULE, weight))


def pull_words(stress: float, outcome, system: str) -> str:
    """Say how hard the bars are pulled [MPa], also as a share of their strength."""
    yields = outcome.structure.yield_strength
    return _("The bars are pulled with {s}, {n:.0f} % of their yield strength.").format(
        s=shown(stress, "stress", system), n=100 * stress / yields
    )


def width_words(band, outcome, system: str) -> str:
    """Say how wide the widest crack is by the rule that governs, what all rules say, the limit."""
    text = _("Widest crack {w} by {rule}; {n} rules say {reach}. Limit: {limit}.")
    return text.format(
        w=shown(band.governing, "width", system),
        rule=band.name,
        n=len(band.by_rule),
        reach=from_to(band.low, band.high, "width", system),
        limit=limit(outcome, system),
    )


def from_to(low: float, high: float, quantity: str, system: str) -> str:
    """Write a range with its unit."""
    text = _("{low} to {high}")
    return text.format(low=shown(low, quantity, system), high=shown(high, quantity, system))
