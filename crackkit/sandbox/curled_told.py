"""What is told of a slab that curls: the four answers, and its numbers."""

from dataclasses import replace

from crackkit.drawing.age_words import age_words
from crackkit.sandbox.holding import NO_RULE, limit, nothing_to_hold, pull_words, width_words
from crackkit.structures.outcome import Told
from crackkit.units import shown
from crackkit.words import _

FLAT = 0.05  # mm, below which nobody calls it curled
SLIGHT = 0.005  # share of its strength that nobody would call a stretch
SWEPT = ("widest", "pulled", "rise", "open", "gradient")


def moves(outcome, system: str) -> str:
    """Say how unevenly it wants to shrink, how high it stands, how much of it is in the air."""
    state, it = outcome.curled, outcome.structure
    text = _("After {age} its top wants to shrink by {d} more than its bottom.")
    uneven = shown(state.dryness.gradient, "strain", system)
    said = text.format(age=age_words(it.age), d=uneven)
    return " ".join((said, _rise(state, system), _highest(state, system)))


def _rise(state, system: str) -> str:
    if state.corner_rise < FLAT:
        return _("Its corners lie on the ground.")
    text = _("Its highest corner stands up by {rise}; {n:.0f} % of the panel has air below it.")
    rise = shown(state.corner_rise, "movement", system)
    return text.format(rise=rise, n=100 * state.open_share)


def _highest(state, system: str) -> str:
    """When corners stand highest by drying alone, without any wheel."""
    most = int(state.rises.argmax())
    if state.rises[most] < FLAT:
        return _("By drying alone they never rise.")
    text = _("By drying alone they stand highest after {age}: {rise}.")
    rise = shown(float(state.rises[most]), "movement", system)
    return text.format(age=age_words(float(state.days[most])), rise=rise)


def stretched(outcome, system: str) -> str:
    """Say which face is pulled harder, where, how hard, and what the other one bears."""
    state = outcome.curled
    if state.share < SLIGHT:
        return _("Nowhere to speak of.")
    faces = sorted(_faces(state), key=lambda named: -named[1].peak)
    (name, most), (other, less) = faces
    text = _(
        "Most {face}, {x} along and {y} across: {n:.2f} times what it can bear there now; {other} "
        "{m:.2f} times."
    )
    x, y = (shown(each, "length", system) for each in most.at)
    shares = {"n": most.peak / state.strength, "m": max(less.peak, 0.0) / state.strength}
    said = text.format(face=name, other=other, x=x, y=y, **shares)
    return f"{said} {_('Its surface crazes.')}" if state.dryness.capped else said


def _faces(state):
    return (_("on top"), state.top), (_("at the bottom"), state.bottom)


def cracked(outcome, system: str) -> str:
    """Say whether it cracks, from which face, and along which line."""
    line = outcome.curled.line
    if line is None:
        return _("Nowhere.")
    begins = {"top": _("From its top"), "bottom": _("From its bottom")}[line.face]
    what = _("a corner breaks off") if line.corner else _("it cracks through")
    text = _("{begins}, {what}: from {a} to {b} (along, across).")
    ends = (_place(line.points[k], system) for k in (0, -1))
    return text.format(begins=begins, what=what, **dict(zip("ab", ends, strict=True)))


def _place(point, system: str) -> str:
    return " / ".join(shown(float(each), "length", system) for each in point)


def held(outcome, system: str) -> str:
    """Say what holds the crack, how wide it is, and what the mat weighs."""
    line, mass = outcome.curled.line, outcome.structure.mass
    weight = _("The mat weighs {m}.").format(m=shown(mass, "mass_per_area", system))
    weighs = [weight] if mass else []
    if line is None:
        return " ".join((outcome.verdict.why, nothing_to_hold(outcome, system), *weighs))
    if line.width is None:
        text = _("Limit: {limit}.").format(limit=limit(outcome, system))
        return " ".join((outcome.verdict.why, text, *weighs))
    band = widths(outcome)
    width = width_words(band, outcome, system) if band else NO_RULE
    pulled = pull_words(line.steel_stress, outcome, system)
    return " ".join((outcome.verdict.why, pulled, width, *weighs))


def widths(outcome):
    """Give the widths of the crack that the mat holds; None without any."""
    held_so = outcome.verdict.key in ("tight", "too_wide")
    return outcome.curled.line.width if held_so else None


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    told = {one.key: one for one in outcome.numbers}
    width = told.pop("width")
    # 0 without a crack, so that others can be compared with it
    value = 0.0 if outcome.curled.line is None else width.value
    return (
        replace(width, key="widest", label=_("widest crack"), value=value),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        replace(told.pop("share"), key="pulled", label=_("pulled to this share of its strength")),
        *told.values(),
    )
