"""What is told of a slab with an inside corner: the four answers, its days, and its numbers."""

from dataclasses import replace

import numpy as np

from crackkit.drawing.age_words import age_words
from crackkit.drawing.corner_words import corner_names, held_words
from crackkit.sandbox.holding import from_to, limit, nothing_to_hold, pull_words
from crackkit.sandbox.told import Told as Table
from crackkit.structures.outcome import Told
from crackkit.units import shown
from crackkit.words import _

HAIR = 0.01  # mm, below which nobody sees a crack
SLIGHT = 0.005  # share of its strength that nobody would call a stretch
SWEPT = ("widest", "bare", "pulled", "stress", "long")


def moves(outcome, system: str) -> str:
    """Say by how much it wants to shrink, what holds it back, how far its outline moves."""
    it, state = outcome.structure, outcome.cornered
    text = _("After {age} it wants to shrink by {strain}: {d} of its length.")
    said = text.format(
        age=age_words(it.age),
        strain=shown(state.free, "strain", system),
        d=shown(state.free * it.length, "movement", system),
    )
    return " ".join((said, _sentence(held_words(it)), _farthest(state, system)))


def _sentence(words: str) -> str:
    return f"{words[0].upper()}{words[1:]}."


def _farthest(state, system: str) -> str:
    text = _("No point of its outline moves by more than {d}.")
    return text.format(d=shown(_moved(state), "movement", system))


def _moved(state) -> float:
    """How far the point of the outline that moves most comes [mm]."""
    return float(np.hypot(*np.concatenate(state.moved).T).max())


def stretched(outcome, system: str) -> str:
    """Say which corner is pulled hardest, over which length, and how the others fare."""
    state = outcome.cornered
    if state.share < SLIGHT:
        return _("Nowhere to speak of.")
    text = _(
        "{which} at {place}: over the first {length} the pull across the coming crack is {n:.2f} "
        "times what it can bear there now, on average."
    )
    length = float(np.hypot(*np.subtract(state.corner.end, state.corner.at)))
    told = {"length": shown(length, "size", system), "n": state.share}
    place = _place(state.corner.at, outcome, system)
    said = text.format(which=_which(state), place=place, **told)
    return " ".join((said, *_others(outcome)))


def _place(point, outcome, system: str) -> str:
    x, y = (shown(float(each), "length", system) for each in point)
    text = _("{x} along, {y} up") if _is_wall(outcome) else _("{x} along, {y} across")
    return text.format(x=x, y=y)


def _is_wall(outcome) -> bool:
    return outcome.structure.shape == "door"


def _which(state) -> str:
    hardest = state.share >= max(corner.share for corner in state.corners) - SLIGHT
    return _("Most at the corner") if hardest else _("At the corner that is looked at,")


def _others(outcome) -> list[str]:
    """The other corners with their numbers, by which any can be looked at."""
    state = outcome.cornered
    named = zip(corner_names(state.corners, _is_wall(outcome)), state.corners, strict=True)
    told = [f"{name} {corner.share:.2f}" for name, corner in named]
    told.pop(state.worst)
    text = _("The others: {told}; look=, with its number, shows one.")
    return [text.format(told=", ".join(told))] if told else []


def cracked(outcome, system: str) -> str:
    """Say whether a crack runs, from where to where, and over which length it gapes."""
    crack = outcome.cornered.crack
    if not crack.runs:
        return _still(outcome, system)
    text = _("From the corner at {start}, to {end}: it gapes over {length}.")
    ends = (_place(point, outcome, system) for point in (crack.points[0], _end(crack)))
    start, end = ends
    return text.format(start=start, end=end, length=shown(crack.length, "length", system))


def _end(crack) -> list[float]:
    """Where it no longer gapes [mm]."""
    return [float(np.interp(crack.length, crack.along, places)) for places in crack.points.T]


def _still(outcome, system: str) -> str:
    """What is to be seen where no crack runs: a joint that opens, a tear that goes no farther."""
    crack, joint = outcome.cornered.crack, outcome.structure.joint
    if crack.widest < HAIR:
        return _("Nowhere.")
    ways = {
        "joint": _("Nowhere but at the joint: it opens by {w}."),
        "saw": _("Nowhere but under the saw cut: it opens by {w}."),
        "none": _("No crack runs. At the corner it tears by {w} at most, and no farther."),
    }
    return ways[joint].format(w=shown(crack.widest, "width", system))


def held(outcome, system: str) -> str:
    """Say what crosses the crack, how wide it is with and without that, and what bars weigh."""
    weight = _("The bars weigh {m}.").format(m=shown(outcome.steel_mass, "mass", system))
    weighs = [weight] if outcome.steel_mass else []
    if widths(outcome) is None:
        return " ".join((outcome.verdict.why, nothing_to_hold(outcome, system), *weighs))
    stress = outcome.cornered.steel_stress
    pulled = [pull_words(stress, outcome, system)] if stress else []
    return " ".join((outcome.verdict.why, *pulled, *_width(outcome, system), *weighs))


def _width(outcome, system: str) -> list[str]:
    band = widths(outcome)
    text = _("It is {w} wide by the model of a cohesive crack; real ones scatter, {reach}.")
    reach = from_to(band.low, band.high, "width", system)
    wide = text.format(w=shown(band.governing, "width", system), reach=reach)
    bound = _("Limit: {limit}.").format(limit=limit(outcome, system))
    return [wide, *_bare(outcome, system), bound]


def _bare(outcome, system: str) -> list[str]:
    """How wide it would be with nothing at all across it, where there is something."""
    it = outcome.structure
    if it.diagonals == it.edges == it.mat == it.fibres == it.joint == "none":
        return []
    text = _("With no bars, fibres or joint it would be {w} wide.")
    return [text.format(w=shown(_bare_width(outcome), "width", system))]


def _bare_width(outcome) -> float:
    return float(outcome.cornered.crack.bare.max())


def widths(outcome):
    """Give the width of the crack with how real ones scatter; None where none runs.

    No published rule gives it: it is that of the model, with and without bars.
    """
    crack = outcome.cornered.crack
    return crack.band if crack.runs else None


def as_it_dries(outcome, system: str) -> Table:
    """List how wide the crack is at several ages, as laid and with nothing across it.

    Parameters
    ----------
    outcome : Outcome
        Of a slab with an inside corner.
    system : str
        ``"SI"`` or ``"US"``.
    """
    state = outcome.cornered
    head = (_("age"), _("as it is"), _("no bars, fibres or joint"))
    columns = (state.days, state.openings, state.bare_openings)
    rows = tuple(
        (age_words(day), *(shown(width, "width", system) for width in pair))
        for day, *pair in zip(*(column.tolist() for column in columns), strict=True)
    )
    return Table(_("The widest opening as it dries"), (), head, rows)


def numbers(outcome, system: str) -> tuple[Told, ...]:
    """Give the numbers and words that a comparison puts side by side."""
    told, crack = {one.key: one for one in outcome.numbers}, outcome.cornered.crack
    # 0 without a crack, so that others can be compared with it
    width, length = (crack.band.governing, crack.length) if crack.runs else (0.0, 0.0)
    widest, share = told.pop("widest"), told.pop("share")
    # the same names as of other structures, so that they can stand side by side
    bare, steel = told.pop("bare"), told.pop("steel")
    return (
        replace(widest, label=_("widest crack"), value=width),
        Told("limit", _("limit"), outcome.verdict.limit.width, "width"),
        replace(bare, label=_("with no bars, fibres or joint")),
        Told("long", _("the crack is long"), length, "length"),
        replace(share, key="pulled", label=_("pulled to this share of its strength")),
        replace(steel, key="stress", label=_("pull in the bars")),
        Told("moves", _("moves at most"), _moved(outcome.cornered), "movement"),
        *told.values(),
    )
