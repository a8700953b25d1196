"""What a user of a slab on the ground must be told."""

from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import limit
from crackkit.mechanics.drag import WIDEST_JOINTS, joint_spacing_by_thickness
from crackkit.structures.ground import Ground
from crackkit.structures.outcome import Caution
from crackkit.words import _

LATE = 2.0  # days after which a saw cut may come too late; common practice
LONG_PANEL = 1.5  # times the rule of thumb


def cautions(it, states: tuple[Ground, ...]) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first.

    Parameters
    ----------
    it : GroundSlab
    states : tuple of Ground
        How it fares along, and across if that is asked for.
    """
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. Shrinkage "
        "of two mixes alike on paper differs by a third, friction by half; curling, wheels and "
        "plastic shrinkage are not in these numbers."
    )
    found = (*_counted(states), *_joints(it, states), *_bars(it), *_to_come(it, states))
    return (*found, Caution("estimate", text))


def _counted(states):
    if not all(state.complete for state in states):
        yield Caution("many", _("More cracks come than are counted here."))


def _joints(it, states):
    if not it.jointed:
        return
    if it.cut_age > LATE:
        yield Caution("late", _("Saw cuts as late as this may come after the first cracks."))
    thumb = min(joint_spacing_by_thickness(it.thickness), WIDEST_JOINTS)
    if it.length / it.panels > LONG_PANEL * thumb:
        yield Caution("long_panels", _("Panels so long are asking for a crack in between."))
    opened = max((joint.opening for state in states for joint in state.joints), default=0.0)
    if it.exposure == "leak_tight" and opened > limit(it.code, it.exposure).width:
        text = _("Open joints leak unless they are sealed; a sealed joint wants upkeep.")
        yield Caution("leaking_joints", text)
    if it.dowels == "bound":
        text = _("Dowels that lie askew or have no grease bind: the slab cracks beside its joints.")
        yield Caution("dowels", text)


def _bars(it):
    if it.bar is None:
        return
    if it.place == "ground":
        text = _("Bars on the ground hold nothing: they belong near the top, on chairs.")
        yield Caution("on_ground", text)
    elif it.place == "middle":
        text = _(
            "Cracks are reckoned as even through the depth. At the top, where a slab dries first, "
            "they are wider the deeper the bars lie."
        )
        yield Caution("deep", text)
    elif it.cover < (least := least_cover(it.code, it.exposure, it.bar.diameter, "slab")).cover:
        text = _("The cover is less than {least} asks for this place and use: bars rust.")
        yield Caution("cover", text.format(least=least.clause))


def _to_come(it, states):
    first = min((state.first for state in states if state.first is not None), default=None)
    if first is not None and first > it.age:
        text = _("It has not cracked yet: the first crack comes at about day {day:.0f}.")
        yield Caution("to_come", text.format(day=first))
