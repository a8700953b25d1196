"""What is told of a beam, an arm or a floor: the four answers, and its numbers."""

from crackkit.drawing.deciding import deciding_crack
from crackkit.sandbox.holding import from_to, held_so, nothing_to_hold, width_words
from crackkit.sandbox.places import piece_at, reach_words
from crackkit.structures.outcome import Told
from crackkit.units import shown
from crackkit.units.places import at_place
from crackkit.words import _

NONE = "—"
SWEPT = ("widest", "rules", "stress")


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
        return nothing_to_hold(outcome, system)
    if widest.width is None:
        return outcome.verdict.why
    band = widths(outcome)
    said = width_words(band, outcome, system) if band else ""
    return held_so(outcome, widest.steel_stress, said, system)


def widths(outcome):
    """Give the widths of the crack that decides, by all rules.

    None without a crack, and where the bars do not hold it: the rules end where bars yield.
    """
    return deciding_crack(outcome).width if outcome.verdict.width is not None else None


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    band = widths(outcome)
    spread = from_to(band.low, band.high, "width", system) if band else NONE
    return (
        Told("widest", _("widest crack"), _widest(outcome, band), "width"),
        Told("where", _("where"), _place(outcome, system)),
        Told("rule", _("by the rule"), band.name if band else NONE),
        Told("rules", _("all rules"), spread),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        Told("stress", _("pull in the bars"), _stress(outcome) or NONE, "stress"),
        Told("moves", _("moves at most"), _movement(outcome), "movement"),
        Told("mass", _("bars weigh"), outcome.steel_mass, "mass"),
    )


def _widest(outcome, band) -> float | str:
    """Governing width [mm]; 0 without a crack, a dash where no rule gives one."""
    if band:
        return band.governing
    return NONE if deciding_crack(outcome) else 0.0


def _place(outcome, system: str) -> str:
    """The face and the place of the crack that decides: two cases may differ in it."""
    crack = deciding_crack(outcome)
    if crack is None:
        return NONE
    face = _("top") if crack.face == "top" else _("bottom")
    if outcome.structure.origin:
        return f"{face}, {at_place(outcome.structure, crack.at, system)}"
    return _("{face}, at {x}").format(face=face, x=shown(crack.at, "length", system))


def _stress(outcome) -> float:
    """Stress [MPa] in the bars that cross the crack that decides, or the most stretched place."""
    crack = deciding_crack(outcome)
    return crack.steel_stress if crack else outcome.worst.steel_stress


def _movement(outcome) -> float | str:
    movement = outcome.movement
    return NONE if movement.falls_at is not None else abs(movement.largest)
