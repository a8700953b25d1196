"""The verdict on a slab on the ground, and the numbers that sum it up."""

from crackkit.mechanics.crack_limits import limit
from crackkit.structures.ground import Ground
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD, YIELDS, Told, Verdict
from crackkit.words import _


def verdict(it, states: tuple[Ground, ...]) -> Verdict:
    """Judge the widest crack that came where no joint was cut for it.

    Parameters
    ----------
    it : GroundSlab
    states : tuple of Ground
        How it fares along, and across if that is asked for.
    """
    bound = limit(it.code, it.exposure)
    wild = [crack for state in states for crack in state.wild]
    if not wild:
        at_joints = any(state.cracks for state in states)
        text = _("It has not cracked anywhere but at its joints.")
        return Verdict(UNCRACKED, None, bound, text if at_joints else _("It has not cracked."))
    widest = max(crack.width for crack in wild)
    if widest > bound.width and any(state.yields for state in states):
        return Verdict(YIELDS, widest, bound, _yield_reason())
    if widest > bound.width:
        return Verdict(TOO_WIDE, widest, bound, _wide(it, states))
    if not all(state.complete for state in states):
        text = _("More cracks come than can be counted here: do not rely on their widths.")
        return Verdict(TOO_WIDE, widest, bound, text)
    if any(state.wild and not state.steel for state in states):
        text = _("Nothing holds this crack: it is narrow now and opens as the slab dries on.")
        return Verdict(UNHELD, widest, bound, text)
    if len(wild) == 1:
        return Verdict(TIGHT, widest, bound, _("Bars cross the crack and keep it fine."))
    return Verdict(TIGHT, widest, bound, _("Bars share the movement among many fine cracks."))


def _yield_reason() -> str:
    return _("The bars yield in the widest crack: it opens on and keeps others from coming.")


def _wide(it, states: tuple[Ground, ...]) -> str:
    if it.bar is None:
        return _("No bars: all the movement gathers in a few wide cracks.")
    if not it.area:
        return _("Bars on the ground cross no crack: all the movement gathers in a few.")
    torn = [state for state in states if state.wild]
    worst = max(torn, key=lambda state: max(crack.width for crack in state.wild))
    if not worst.steel:
        return _("All bars run the same way as the widest crack: none crosses it.")
    return _("Bars cross the cracks, but too few to keep them small.")


def _joint_word(it, opened: float | None) -> float | str:
    if opened is None:
        return _("no joints")
    return _("all shut") if it.dowels == "bound" else opened


def numbers(it, states: tuple[Ground, ...]) -> tuple[Told, ...]:
    """Give the numbers that sum up the slab."""
    wild = [crack for state in states for crack in state.wild]
    first = min((s.first for s in states if s.first is not None), default=None)
    widest = max((crack.width for crack in wild), default=None)
    opened = max((joint.opening for state in states for joint in state.joints), default=None)
    return (
        Told("free", _("wants to shrink by"), states[0].free, "strain"),
        Told("cracks", _("cracks so far"), float(len(wild)), "count"),
        Told("first", _("first crack"), _("none in 10 years") if first is None else first, "time"),
        Told("widest", _("widest crack"), _("none") if widest is None else widest, "width"),
        Told("joint", _("widest joint"), _joint_word(it, opened), "width"),
        Told("mass", _("bars weigh"), it.mass, "mass_per_area"),
    )
