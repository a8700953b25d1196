"""The verdict on a pulled member, its cautions, and the numbers that sum it up."""

from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import limit
from crackkit.structures import tie_bars
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    UNHELD,
    YIELDS,
    Caution,
    Crack,
    Told,
    Verdict,
)
from crackkit.structures.pulled import PARTED, YIELDED, Pulled
from crackkit.words import _

NEAR = 0.6  # share of the cracking pull from which concrete without bars is warned of


def verdict(tie, state: Pulled, cracks: tuple[Crack, ...]) -> Verdict:
    """Judge the widest crack, and what the published rule says of it, against the limit.

    Parameters
    ----------
    tie : TensionMember
    state : Pulled
    cracks : tuple of Crack
        The cracks there are.
    """
    bound = limit(tie.code, tie.exposure)
    if state.ended == PARTED:
        return Verdict(UNHELD, None, bound, _parted_reason(tie))
    if state.ended == YIELDED:
        text = _("The bars yield where the cracks leave them alone: the cracks keep opening.")
        return Verdict(YIELDS, None, bound, text)
    if not cracks:
        text = _("The concrete is stretched, but nowhere beyond what it can bear.")
        return Verdict(UNCRACKED, None, bound, text if tie.pull else _("Nothing pulls at it."))
    return _width_verdict(state, max(c.width.governing for c in cracks), bound)


def _parted_reason(tie) -> str:
    if not tie.number:
        return _("There are no bars. The first crack goes right through, and it is over.")
    return _("The bars are too few to bear what the concrete lets go: the first crack is the last.")


def _width_verdict(state: Pulled, widest: float, bound) -> Verdict:
    if widest > bound.width:
        text = _("Bars hold the cracks, but not small enough.")
        return Verdict(TOO_WIDE, widest, bound, text)
    if state.rules is None:
        return Verdict(TIGHT, widest, bound, _("The bars keep every crack small."))
    if state.rules.governing > bound.width:
        text = _("These cracks are small, but the rule reckons with a wider one in other concrete.")
        if state.pull < state.greatest:
            text = _(
                "It was pulled harder before: for that pull the rule reckons with a wider one."
            )
        return Verdict(TOO_WIDE, state.rules.governing, bound, text)
    return Verdict(TIGHT, widest, bound, _("Bars cross every crack and keep it small."))


def cautions(tie, state: Pulled) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first."""
    found = [*_grave(tie, state), *_about_bars(tie)]
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. Bond is "
        "taken along the bars alone; concrete that splits along a bar with little cover holds "
        "less. Real cracks scatter by half again around any rule."
    )
    return (*found, Caution("estimate", text))


def _grave(tie, state: Pulled):
    if state.ended == PARTED:
        yield Caution("unheld", _("Nothing holds it: it has parted in two."), grave=True)
    elif not state.history.sequence.held and state.pull > NEAR * (state.first_pull or 0.0):
        text = _("Its first crack will be its last, and comes without warning.")
        yield Caution("unguarded", text, grave=True)
    if state.ended == YIELDED:
        yield Caution("yields", _("The bars give way: nothing more can be hung on it."), grave=True)


def _about_bars(tie):
    if not tie.number:
        return
    across = tie_bars.places(tie.number, tie.bar, tie.width, tie.depth, tie.cover)
    edge = tie.bar.diameter / 2
    cover = min(min(y, z) for y, z in across) - edge
    asked = least_cover(tie.code, tie.exposure, tie.bar.diameter)
    if cover < asked.cover - 0.5:
        text = _("Less cover than {clause} asks for in this place: rust comes early.")
        yield Caution("cover", text.format(clause=asked.clause))
    if tie.surface == "plain":
        text = _("Smooth bars hold cracks badly, and need hooks at their ends.")
        yield Caution("plain", text)


def numbers(tie, state: Pulled, cracks: tuple[Crack, ...]) -> tuple[Told, ...]:
    """Give the numbers that sum up the member."""
    parted = state.ended == PARTED
    total = state.now.mean_strain * tie.length
    way = _("gets longer by") if total >= 0 else _("gets shorter by")
    first = _("yields before") if state.first_pull is None else state.first_pull
    return (
        Told("longer", way, "—" if parted else abs(total), "movement"),
        Told("first", _("first crack at"), first, "force"),
        Told("next", _("next crack at"), _next(state), "force"),
        Told("stress", _("pull in the bars"), _stress(state), "stress"),
        Told("widest", _("widest crack"), _widest(cracks), "width"),
        Told("cracks", _("cracks"), float(len(cracks)), "count"),
    )


def _next(state: Pulled) -> float | str:
    if state.ended == PARTED:
        return _("it is over")
    return _("no more") if state.next_pull is None else state.next_pull


def _stress(state: Pulled) -> float | str:
    """Greatest stress in the bars: at a crack while it is pulled, else wherever it is."""
    most = float(state.now.steel_stress.max(initial=0.0))
    return most if state.ended != PARTED and most > 0 else "—"


def _widest(cracks: tuple[Crack, ...]) -> float | str:
    if not cracks:
        return _("none")
    if any(crack.width is None for crack in cracks):
        return _("not held")
    return max(crack.width.governing for crack in cracks)
