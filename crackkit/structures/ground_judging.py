"""The verdict on a slab on the ground, its cautions, and the numbers that sum it up."""

from crackkit.mechanics.crack_limits import limit
from crackkit.mechanics.drag import joint_spacing_by_thickness
from crackkit.structures.ground import Ground
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    Caution,
    Told,
    Verdict,
)
from crackkit.words import _

LATE = 2.0  # days after which a saw cut comes too late; common practice
LONG_PANEL = 1.5  # times the rule of thumb


def verdict(it, state: Ground) -> Verdict:
    """Judge the widest crack that came where no joint was cut for it.

    Parameters
    ----------
    it : GroundSlab
    state : Ground
    """
    bound = limit(it.code, it.exposure)
    if not state.wild:
        text = _("It has not cracked anywhere but at its joints.")
        return Verdict(UNCRACKED, None, bound, text if state.cracks else _("It has not cracked."))
    widest = max(crack.width for crack in state.wild)
    if not state.complete and widest <= bound.width:
        text = _("More cracks come than can be counted here: do not rely on their widths.")
        return Verdict(TOO_WIDE, widest, bound, text)
    if widest > bound.width:
        return Verdict(TOO_WIDE, widest, bound, _wide(it))
    return Verdict(TIGHT, widest, bound, _("Bars share the movement among many fine cracks."))


def _wide(it) -> str:
    if it.bar is None:
        return _("No bars: all the movement gathers in a few wide cracks.")
    if not it.area:
        return _("Bars on the ground cross no crack: all the movement gathers in a few.")
    return _("Bars cross the cracks, but too few to keep them small.")


def cautions(it, state: Ground) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first."""
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. Shrinkage "
        "of two mixes alike on paper differs by a third, friction by half; curling, wheels and "
        "plastic shrinkage are not in these numbers."
    )
    return (*_own(it, state), Caution("estimate", text))


def _own(it, state: Ground):
    if it.jointed and it.cut_age > LATE:
        yield Caution("late", _("Saw cuts as late as this come after the first cracks."))
    thumb = joint_spacing_by_thickness(it.thickness)
    if it.jointed and it.length / it.panels > LONG_PANEL * thumb:
        yield Caution("long_panels", _("Panels so long are asking for a crack in between."))
    if it.place == "ground" and it.bar is not None:
        text = _("Bars on the ground hold nothing: they belong near the top, on chairs.")
        yield Caution("on_ground", text)
    if not state.complete:
        text = _("More cracks come than are counted here.")
        yield Caution("many", text)


def numbers(it, state: Ground) -> tuple[Told, ...]:
    """Give the numbers that sum up the slab."""
    first = state.first
    widest = max((crack.width for crack in state.wild), default=None)
    opened = max((joint.opening for joint in state.joints), default=None)
    return (
        Told("free", _("wants to shrink by"), state.free, "strain"),
        Told("cracks", _("cracks so far"), float(len(state.wild)), "count"),
        Told("first", _("first crack"), _("none in 10 years") if first is None else first, "time"),
        Told("widest", _("widest crack"), _("none") if widest is None else widest, "width"),
        Told("joint", _("widest joint"), _("no joints") if opened is None else opened, "width"),
        Told("mass", _("bars weigh"), it.mass, "mass_per_area"),
    )
