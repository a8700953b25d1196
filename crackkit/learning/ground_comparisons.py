"""What is compared on a slab on the ground: what lies below it, joints, bars, curing."""

from crackkit.learning import ground
from crackkit.learning.comparison import Comparison, Variant
from crackkit.learning.telling import shown
from crackkit.structures.ground_slab import GroundSlab
from crackkit.words import _

CURINGS = (1.0, 7.0, 28.0)  # days


def comparisons(system: str = "SI") -> tuple[Comparison, ...]:
    """Give the comparisons in round numbers of a system of units."""
    return (
        Comparison("base", _("Base"), _bases()),
        Comparison("joints", _("Joints"), _joints(system)),
        Comparison("bars", _("Bars"), _bars(system)),
        Comparison("curing", _("Curing"), _curings(system)),
    )


def _bases() -> tuple[Variant, ...]:
    return (
        Variant(_("bare ground"), {"base": "subgrade"}),
        Variant(_("one plastic sheet"), {"base": "one_sheet"}),
        Variant(_("two plastic sheets"), {"base": "two_sheets"}),
    )


def _joints(system: str) -> tuple[Variant, ...]:
    every = ground.slab(system).joint_every
    cuts = (_cut(every, days, system) for days in (ground.EARLY, ground.LATE))
    return (Variant(_("no joints"), {"jointed": False}), *cuts)


def _cut(every: float, days: float, system: str) -> Variant:
    text = _("joints at {every}, cut after {days}").format(
        every=shown(every, "length", system), days=shown(days, "time", system)
    )
    return Variant(text, {"jointed": True, "joint_every": every, "cut_age": days})


def _bars(system: str) -> tuple[Variant, ...]:
    laid = ground.BARS[system] | {"place": "top"}
    size, spacing = laid["steel"], shown(laid["spacing"], "size", system)
    name = size if size.startswith("#") else _("{n} mm").format(n=size)
    bars = _("bars {size} every {spacing}").format(size=name, spacing=spacing)
    through, cut = (_("{bars}, {way}").format(bars=bars, way=way) for way in _ways())
    return (
        Variant(_("no bars"), {"steel": "none"}),
        Variant(through, laid | {"through": "through"}),
        Variant(cut, laid | {"through": "cut"}, _is_jointed),
        Variant(_("the same bars on the ground"), laid | {"place": "ground"}),
    )


def _ways() -> tuple[str, str]:
    return _("from end to end"), _("cut at the joints")


def _is_jointed(it: GroundSlab) -> bool:
    return it.jointed


def _curings(system: str) -> tuple[Variant, ...]:
    text = _("kept moist for {days}")
    return tuple(
        Variant(text.format(days=shown(days, "time", system)), {"curing": days}) for days in CURINGS
    )
