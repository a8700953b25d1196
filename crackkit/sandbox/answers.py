"""The four questions of a beam, answered in sentences."""

from crackkit.drawing.verdict_card import VERDICTS
from crackkit.units import shown
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
    at = shown(movement.at, "length", system)
    if movement.falls_at is not None:
        place = shown(movement.falls_at, "length", system)
        return _("It does not come to rest: it breaks {x} from the left end.").format(x=place)
    size = abs(movement.largest)
    if size < 1e-6:
        return _("It does not move.")
    way = _("down") if movement.largest > 0 else _("up")
    return _("{d} {way} at most, {x} from the left end: 1/{n:.0f} of the span.").format(
        d=shown(size, "movement", system), way=way, x=at, n=outcome.structure.span / size
    )


def stretched(outcome, system: str) -> str:
    """Say which faces are stretched, from where to where, and how much."""
    if not outcome.tension:
        return _("Nowhere.")
    return " ".join(_zone(zone, system) for zone in outcome.tension)


def _zone(zone, system: str) -> str:
    text = (
        _("The top from {a} to {b}, most at {c}: {n:.2g} times what the concrete can bear.")
        if zone.face == "top"
        else _("The bottom from {a} to {b}, most at {c}: {n:.2g} times what the concrete can bear.")
    )
    return text.format(
        a=shown(zone.start, "length", system),
        b=shown(zone.end, "length", system),
        c=shown(zone.at, "length", system),
        n=zone.peak,
    )


def cracked(outcome, system: str) -> str:
    """Say where cracks open and how many."""
    if not outcome.cracks:
        return _("Nowhere: the stretch stays below what the concrete can bear.")
    faces = [face for face in ("bottom", "top") if any(c.face == face for c in outcome.cracks)]
    return " ".join(_face(outcome, face, system) for face in faces)


def _face(outcome, face: str, system: str) -> str:
    places = [crack.at for crack in outcome.cracks if crack.face == face]
    where = _("in the top") if face == "top" else _("in the bottom")
    if len(places) == 1:
        return _("One crack {where}, {a} from the left end.").format(
            where=where, a=shown(places[0], "length", system)
        )
    return _("{n} cracks {where}, {a} to {b} from the left end.").format(
        n=len(places),
        where=where,
        a=shown(min(places), "length", system),
        b=shown(max(places), "length", system),
    )


def held(outcome, system: str) -> str:
    """Say what crosses the worst crack, how hard it is pulled, and how wide the crack is."""
    widest = outcome.widest
    if widest is None:
        return _("There is no crack to hold. Limit: {limit}.").format(limit=limit(outcome, system))
    if widest.width is None:
        return outcome.verdict.why
    width = judged_width(outcome)
    said = _width(width, outcome, system) if width else _("No rule gives a width beyond yield.")
    return " ".join((outcome.verdict.why, _pull(widest, outcome, system), said))


def judged_width(outcome):
    """Give the widths of the crack that decides, by all rules.

    None without a crack, and where the bars do not hold it: the rules end where bars yield.
    """
    return outcome.widest.width if outcome.verdict.width is not None else None


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
