"""The four questions, answered in sentences."""

from crackkit.drawing.deciding import deciding_crack
from crackkit.drawing.verdict_card import VERDICTS
from crackkit.sandbox.places import piece_at, reach_words
from crackkit.units import shown
from crackkit.units.places import at_place
from crackkit.words import _

SIGNS = {"good": "✓", "warn": "!", "bad": "✗"}


def verdict_words(outcome) -> str:
    """Say the verdict with its sign."""
    word, colour = VERDICTS[outcome.verdict.key]
    return f"{SIGNS[colour]} {word}"


def answers(outcome, system: str) -> tuple[tuple[str, str], ...]:
    """Give the four questions with their answers.

    Parameters
    ----------
    outcome : Outcome
    system : str
        ``"SI"`` or ``"US"``.
    """
    return (
        (_("How does it move?"), moves(outcome, system)),
        (_("Where is it stretched?"), stretched(outcome, system)),
        (_("Where will it crack?"), cracked(outcome, system)),
        (_("What holds the cracks, and is it tight enough?"), held(outcome, system)),
    )


def moves(outcome, system: str) -> str:
    """Say how far it moves, and as a share of the span."""
    movement = outcome.movement
    structure = outcome.structure
    if movement.falls_at is not None:
        place = at_place(structure, movement.falls_at, system)
        return _("It does not come to rest: it breaks {x}.").format(x=place)
    size = abs(movement.largest)
    if size < 1e-6:
        return _("It does not move.")
    way = _("down") if movement.largest > 0 else _("up")
    length, piece = piece_at(structure, movement.at)
    return _("{d} {way} at most, {x}: 1/{n:.0f} {piece}.").format(
        d=shown(size, "movement", system),
        way=way,
        x=at_place(structure, movement.at, system),
        n=length / size,
        piece=piece,
    )


def stretched(outcome, system: str) -> str:
    """Say which faces are stretched, from where to where, and how much."""
    if not outcome.tension:
        return _("Nowhere.")
    return " ".join(_zone(zone, outcome.structure, system) for zone in outcome.tension)


def _zone(zone, structure, system: str) -> str:
    text = (
        _("The top {reach}, most {c}: {n:.2g} times what the concrete can bear.")
        if zone.face == "top"
        else _("The bottom {reach}, most {c}: {n:.2g} times what the concrete can bear.")
    )
    most = shown(zone.at, "length", system)
    return text.format(
        reach=reach_words(structure, zone.start, zone.end, system),
        c=at_place(structure, zone.at, system) if structure.origin else _("at ") + most,
        n=zone.peak,
    )


def cracked(outcome, system: str) -> str:
    """Say where cracks open and how many."""
    if not outcome.cracks:
        return _("Nowhere: the stretch stays below what the concrete can bear.")
    return " ".join(_together(zone, outcome, system) for zone in outcome.tension if zone.cracked)


def _together(zone, outcome, system: str) -> str:
    """Say how many cracks open in one stretched zone, and where."""
    own = (c for c in outcome.cracks if c.face == zone.face and zone.start <= c.at <= zone.end)
    places = [crack.at for crack in own]
    where = _("in the top") if zone.face == "top" else _("in the bottom")
    structure = outcome.structure
    if len(places) == 1:
        at = at_place(structure, places[0], system)
        return _("One crack {where}, {at}.").format(where=where, at=at)
    reach = reach_words(structure, min(places), max(places), system)
    return _("{n} cracks {where}, {reach}.").format(n=len(places), where=where, reach=reach)


def held(outcome, system: str) -> str:
    """Say what crosses the worst crack, how hard it is pulled, and how wide the crack is."""
    widest = deciding_crack(outcome)
    if widest is None:
        return _("There is no crack to hold. Limit: {limit}.").format(limit=limit(outcome, system))
    if widest.width is None:
        return outcome.verdict.why
    width = judged_width(outcome)
    said = (
        _width(width, outcome, system)
        if width
        else _("No rule gives a width where bars yield or slip.")
    )
    weight = _("The bars weigh {m}.").format(m=shown(outcome.steel_mass, "mass", system))
    return " ".join((outcome.verdict.why, _pull(widest, outcome, system), said, weight))


def pull(outcome) -> float | None:
    """Stress [MPa] in the bars that cross the crack that decides, or the most stretched place."""
    crack = deciding_crack(outcome)
    stress = crack.steel_stress if crack else outcome.worst.steel_stress
    return stress or None


def judged_width(outcome):
    """Give the widths of the crack that decides, by all rules.

    None without a crack, and where the bars do not hold it: the rules end where bars yield.
    """
    return deciding_crack(outcome).width if outcome.verdict.width is not None else None


def _pull(crack, outcome, system: str) -> str:
    yields = outcome.structure.yield_strength
    return _("The bars are pulled with {s}, {n:.0f} % of their yield strength.").format(
        s=shown(crack.steel_stress, "stress", system), n=100 * crack.steel_stress / yields
    )


def _width(band, outcome, system: str) -> str:
    return _("Widest crack {w} by {rule}; {n} rules say {low} to {high}. Limit: {limit}.").format(
        w=shown(band.governing, "width", system),
        rule=band.name,
        n=len(band.by_rule),
        low=shown(band.low, "width", system),
        high=shown(band.high, "width", system),
        limit=limit(outcome, system),
    )


def limit(outcome, system: str) -> str:
    """Say the limit, its use and its source."""
    bound = outcome.verdict.limit
    return _("{w} ({use}; {source}, {clause})").format(
        w=shown(bound.width, "width", system),
        use=bound.label,
        source=bound.source,
        clause=bound.clause,
    )
