"""What is told of a pulled member: the four answers, and its numbers."""

from dataclasses import replace

import numpy as np

from crackkit.drawing.pulled_movement import STILL
from crackkit.sandbox.holding import from_to, held_so, limit, nothing_to_hold
from crackkit.structures.outcome import Told
from crackkit.structures.pulled import PARTED, YIELDED
from crackkit.units import shown
from crackkit.words import _

NONE = "—"
SLIGHT = 0.005  # share of its strength that nobody would call a stretch
SWEPT = ("widest", "rules", "stress", "cracks")


def moves(outcome, system: str) -> str:
    """Say how much longer it gets, and how much longer its bars alone would get."""
    if outcome.pulled.ended == PARTED:
        at = _from_left(outcome.movement.falls_at, system)
        return _("It does not come to rest: it parts in two, {at}.").format(at=at)
    if abs(outcome.movement.largest) < STILL:
        return _("It does not move.")
    return f"{_longer(outcome, system)} {_alone(outcome, system)}".strip()


def _longer(outcome, system: str) -> str:
    total = outcome.movement.largest
    text = _("It gets {d} longer, {n} of its length.")
    if total < 0:
        text = _("It gets {d} shorter, {n} of its length.")
    elif outcome.pulled.ended == YIELDED:
        text = _("It gets longer by more than {d}, {n} of its length: the bars yield.")
    share = abs(total) / outcome.structure.length
    return text.format(d=shown(abs(total), "movement", system), n=shown(share, "strain", system))


def _alone(outcome, system: str) -> str:
    bare = outcome.pulled.bare_strain
    if not bare:
        return ""
    alone = shown(bare * outcome.structure.length, "movement", system)
    return _("Under this pull the bars alone would get {d} longer.").format(d=alone)


def _from_left(place: float, system: str) -> str:
    return _("{x} from the left end").format(x=shown(place, "length", system))


def stretched(outcome, system: str) -> str:
    """Say from where to where the concrete is pulled, and where most."""
    if not outcome.tension or outcome.tension[0].peak < SLIGHT:
        return _("Nowhere to speak of.")
    zone = outcome.tension[0]
    text = _("All through, {reach} from the left end, most {at}: {n:.2f} times what it can bear.")
    if outcome.pulled.ended == PARTED:
        text = _(
            "Until it parted {reach} from the left end, most {at}: {n:.2f} times its strength."
        )
    reach = _reach(zone.start, zone.end, system)
    return text.format(reach=reach, at=_at(zone.at, system), n=zone.peak)


def _reach(start: float, end: float, system: str) -> str:
    a, b = shown(start, "length", system), shown(end, "length", system)
    return _("from {a} to {b}").format(a=a, b=b)


def _at(place: float, system: str) -> str:
    return _("at {x}").format(x=shown(place, "length", system))


def cracked(outcome, system: str) -> str:
    """Say how many cracks go through, how far apart, and at which pull the next one comes."""
    return " ".join(part for part in (_cracks(outcome, system), _next(outcome, system)) if part)


def _cracks(outcome, system: str) -> str:
    places = [crack.at for crack in outcome.cracks]
    if not places:
        return _("Nowhere so far.")
    if len(places) == 1:
        return _("One crack right through, {at}.").format(at=_from_left(places[0], system))
    gaps = np.diff(places)
    text = _("{n} cracks right through, {reach} from the left end, {apart} apart.")
    return text.format(
        n=len(places),
        reach=_reach(places[0], places[-1], system),
        apart=from_to(gaps.min(), gaps.max(), "size", system),
    )


def _next(outcome, system: str) -> str:
    state = outcome.pulled
    if state.ended == PARTED:
        return ""
    if state.next_pull is not None:
        comes = shown(state.next_pull, "force", system)
        text = _("The next one comes at {n}.") if outcome.cracks else _("The first comes at {n}.")
        return text.format(n=comes)
    return (
        _("No other comes before the bars yield.") if outcome.cracks else _("The bars yield first.")
    )


def held(outcome, system: str) -> str:
    """Say what crosses the cracks, how hard it is pulled, and how wide they are."""
    if not outcome.cracks:
        return nothing_to_hold(outcome, system)
    if outcome.pulled.ended == PARTED:
        return outcome.verdict.why
    band = widths(outcome)
    said = _width(band, outcome, system) if band else ""
    return held_so(outcome, float(outcome.pulled.now.steel_stress.max()), said, system)


def _width(band, outcome, system: str) -> str:
    text = _("Widest crack {w} by {rule}; {rules}. Limit: {limit}.")
    return text.format(
        w=shown(band.governing, "width", system),
        rule=band.name,
        rules=_rules(outcome.pulled, system),
        limit=limit(outcome, system),
    )


def _rules(state, system: str) -> str:
    rules, text = state.rules, _("{n} rules say {reach}, {name} {w}")
    if rules is None:
        return _("no published rule speaks of it")
    if state.pull < state.greatest:
        text = _("at the greatest pull {n} rules say {reach}, {name} {w}")
    return text.format(
        n=len(rules.by_rule),
        reach=from_to(rules.low, rules.high, "width", system),
        name=rules.name,
        w=shown(rules.governing, "width", system),
    )


def widths(outcome):
    """Give the width of the widest crack as bond gives it, and around it what the rules say.

    None without a crack, and where the bars do not hold it. Where no published rule speaks of the
    present pull, the band is that one width.
    """
    if outcome.verdict.width is None or not outcome.cracks:
        return None
    own, rules = outcome.widest.width, outcome.pulled.rules
    if rules is None or outcome.pulled.pull < outcome.pulled.greatest:
        return own
    return own._replace(low=rules.low, high=rules.high, by_rule=rules.by_rule)


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    rules, told = outcome.pulled.rules, {one.key: one for one in outcome.numbers}
    spread = from_to(rules.low, rules.high, "width", system) if rules else NONE
    return (
        _widest(outcome, told.pop("widest")),
        Told("rule", _("by the rule"), outcome.widest.width.name if widths(outcome) else NONE),
        Told("code", _("the code's rule"), rules.governing if rules else NONE, "width"),
        Told("rules", _("all rules"), spread),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        told.pop("stress"),
        *(_signed(one, outcome) for one in told.values()),
        Told("mass", _("bars weigh"), outcome.steel_mass, "mass"),
    )


def _widest(outcome, told: Told) -> Told:
    """0 without a crack, so that others can be compared with it; a dash where none is told."""
    if not outcome.cracks:
        return replace(told, value=0.0)
    return told if widths(outcome) else replace(told, value=NONE)


def _signed(told: Told, outcome) -> Told:
    """Getting shorter as getting longer by less than nothing: one row holds both."""
    if told.key != "longer" or isinstance(told.value, str):
        return told
    return replace(told, label=_("gets longer by"), value=outcome.movement.largest)
