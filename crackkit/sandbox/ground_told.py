"""What is told of a slab on the ground: the four answers, and its numbers."""

from dataclasses import replace

from crackkit.drawing.age_words import age_words
from crackkit.sandbox.holding import from_to, limit, nothing_to_hold
from crackkit.structures.outcome import Told
from crackkit.units import shown
from crackkit.words import _

SLIGHT = 0.005  # share of its strength that nobody would call a stretch
SWEPT = ("widest", "cracks", "day", "joint", "pulled")


def moves(outcome, system: str) -> str:
    """Say how much shorter it wants to get, how far its ends come in, and what gaps take up."""
    wanted = outcome.ground.free * outcome.structure.length
    text = _("After {age} it wants to be {d} shorter, {n} of its length.")
    said = text.format(
        age=age_words(outcome.structure.age),
        d=shown(wanted, "movement", system),
        n=shown(outcome.ground.free, "strain", system),
    )
    return " ".join((said, _ends(outcome, system), *_gaps(outcome, system)))


def _ends(outcome, system: str) -> str:
    text = _("Its ends have come {d} nearer to each other.")
    return text.format(d=shown(_shorter(outcome), "movement", system))


def _shorter(outcome) -> float:
    """How far the ends have come in [mm]."""
    return max(-outcome.movement.largest, 0.0)


def _gaps(outcome, system: str) -> list[str]:
    state = outcome.ground
    total = sum(crack.width for crack in state.wild) + sum(j.opening for j in state.joints)
    if total <= 0:
        return []
    text = _("What has opened in cracks and joints makes {d}, all together.")
    return [text.format(d=shown(total, "movement", system))]


def stretched(outcome, system: str) -> str:
    """Say where it is pulled hardest, how hard, and what share of that curling has used up."""
    if not outcome.tension or outcome.tension[0].peak < SLIGHT:
        return _("Nowhere to speak of.")
    zone, it = outcome.tension[0], outcome.structure
    text = _("All through, most {x} from the left end: {n:.2f} times what it can bear there now.")
    said = text.format(x=shown(zone.at, "length", system), n=zone.peak)
    if not it.spent:
        return said
    curled = _("Curling is taken to have used up {n:.0f} % of its strength.")
    return f"{said} {curled.format(n=100 * it.spent)}"


def cracked(outcome, system: str) -> str:
    """Say how many cracks came beside the joints, since when, and when the next one comes."""
    said = (_cracks(outcome, system), *_along(outcome), *_at_joints(outcome), _next(outcome))
    return " ".join(said)


def _cracks(outcome, system: str) -> str:
    wild = outcome.ground.wild
    if not wild:
        return _("Nowhere so far.") if not outcome.ground.cracks else _("Nowhere but at joints.")
    first = age_words(min(crack.birth for crack in wild))
    places = [crack.at for crack in wild]
    if len(wild) == 1:
        text = _("One crack right through, {x} from the left end; it came at an age of {first}.")
        return text.format(x=shown(places[0], "length", system), first=first)
    text = _(
        "{n} cracks right through, {reach} from the left end; the first came at an age of {first}."
    )
    reach = from_to(min(places), max(places), "length", system)
    return text.format(n=len(wild), reach=reach, first=first)


def _along(outcome) -> list[str]:
    """Cracks that run along the slab, from end to end."""
    wild = outcome.across.wild
    if not wild:
        return []
    first = age_words(min(crack.birth for crack in wild))
    if len(wild) == 1:
        return [_("One crack along it; it came at an age of {first}.").format(first=first)]
    text = _("{n} cracks along it; the first came at an age of {first}.")
    return [text.format(n=len(wild), first=first)]


def _at_joints(outcome) -> list[str]:
    joints = outcome.ground.joints
    if not joints:
        return []
    opened = sum(joint.opening > 0 for joint in joints)
    text = _("Joints that are open: {m} of {n}.")
    return [text.format(m=opened, n=len(joints))]


def _next(outcome) -> str:
    births = outcome.ground.births + outcome.across.births
    later = [birth for birth in births if birth > outcome.structure.age]
    if later:
        return _("The next crack comes at an age of {age}.").format(age=age_words(min(later)))
    if not (outcome.ground.complete and outcome.across.complete):
        return _("More come than are counted here.")
    return _("No other crack comes in ten years.") if births else _("None comes in ten years.")


def held(outcome, system: str) -> str:
    """Say what holds it back, how wide cracks and joints are, and what the bars weigh."""
    said = (_back(outcome), _width(outcome, system), *_joint(outcome, system))
    return " ".join((*said, *_by_rules(outcome, system), *_weight(outcome, system)))


def _back(outcome) -> str:
    """What keeps it from growing shorter."""
    it = outcome.structure
    under = it.under
    text = _("The base holds it back with up to {n:g} times its weight.")
    ends = {
        _("left end"): it.left,
        _("middle"): it.middle,
        _("right end"): it.right,
        _("sides"): it.sides,
    }
    grips = [f"{name} {100 * degree:.0f} %" for name, degree in ends.items() if degree]
    said = text.format(n=under.coefficient)
    return f"{said} {_('Held besides: {grips}.').format(grips=', '.join(grips))}" if grips else said


def _width(outcome, system: str) -> str:
    band = widths(outcome)
    if band is None:
        return nothing_to_hold(outcome, system)
    text = _("{why} Widest crack {w} by the {rule}. Limit: {limit}.")
    width = shown(band.governing, "width", system)
    why = outcome.verdict.why
    return text.format(why=why, w=width, rule=band.name, limit=limit(outcome, system))


def _joint(outcome, system: str) -> list[str]:
    opened = [joint.opening for joint in outcome.ground.joints]
    if not opened:
        return []
    text = _("The widest joint is {w} open.")
    return [text.format(w=shown(max(opened), "width", system))] if max(opened) > 0 else []


def _by_rules(outcome, system: str) -> list[str]:
    """What published rules say of the same bars in a slab whose ends cannot move."""
    told = [
        f"{rule.name} {shown(rule.width, 'width', system)}"
        for rule in outcome.ground.rules
        if rule.width is not None
    ]
    text = _("Between ends that cannot move the rules reckon with: {told}.")
    return [text.format(told=", ".join(told))] if told else []


def _weight(outcome, system: str) -> list[str]:
    mass = outcome.structure.mass
    text = _("The bars weigh {m}.")
    return [text.format(m=shown(mass, "mass_per_area", system))] if mass else []


def widths(outcome):
    """Give the width of the widest crack that came beside the joints; None without any.

    The band is that one width: no published rule speaks of a slab that the ground holds back.
    """
    return outcome.widest.width if outcome.verdict.width is not None else None


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    told = {one.key: one for one in outcome.numbers}
    widest, first = told.pop("widest"), told.pop("first")
    peak = outcome.tension[0].peak if outcome.tension else 0.0
    return (
        # 0 without a crack, so that others can be compared with it
        widest if widths(outcome) else replace(widest, value=0.0),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        Told("pulled", _("pulled to this share of its strength"), peak, "ratio"),
        Told("shorter", _("gets shorter by"), _shorter(outcome), "movement"),
        # a day, where a pulled member has a force
        replace(first, key="day", label=_("first crack after")),
        *told.values(),
    )
