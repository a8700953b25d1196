"""What is compared at an inside corner: bars, their place, other means, thickness."""

from crackkit.learning import corner
from crackkit.learning.comparison import Comparison, Variant
from crackkit.learning.telling import shown
from crackkit.units.quantities import FOOT, INCH
from crackkit.words import _

PLACES = {
    "SI": (25.0, 50.0, 100.0, 200.0, 400.0),
    "US": (1 * INCH, 2 * INCH, 4 * INCH, 8 * INCH, 18 * INCH),
}
THICKNESSES = {"SI": (150.0, 200.0, 250.0), "US": (6 * INCH, 8 * INCH, 10 * INCH)}
CUT = {"SI": 2000.0, "US": 7 * FOOT}  # length of a saw cut
FIBRES = "steel_30"
COUNTS = (1, 2, 3, 4)


def comparisons(system: str = "SI") -> tuple[Comparison, ...]:
    """Give the comparisons in round numbers of a system of units."""
    return (
        Comparison("bars", _("Bars"), _bars(system)),
        Comparison("place", _("Their place"), _places(system)),
        Comparison("count", _("How many"), _counts(system)),
        Comparison("means", _("Other means"), _means(system)),
        Comparison("thick", _("Thickness"), _thick(system)),
    )


def _bars(system: str) -> tuple[Variant, ...]:
    walls, close = corner.WALL_BARS[system], corner.close_bars(system)
    two = _("two diagonal bars, {off} off").format
    one = _("one bar along each wall, {off} off").format

    def told(off: float) -> str:
        return shown(off, "size", system)

    near, far = corner.CLOSE[system], corner.FAR[system]
    return (
        Variant(one(off=told(walls["edge_off"])), corner.NO_BARS | walls),
        Variant(two(off=told(near)), close),
        Variant(two(off=told(far)), close | {"diagonal_off": far}),
        Variant(one(off=told(near)), corner.NO_BARS | walls | {"edge_off": near}),
        Variant(_("a mat everywhere"), corner.NO_BARS | corner.MAT[system]),
    )


def _places(system: str) -> tuple[Variant, ...]:
    text = _("two diagonal bars, {off} off")
    close = corner.close_bars(system)
    return tuple(
        Variant(text.format(off=shown(off, "size", system)), close | {"diagonal_off": off})
        for off in PLACES[system]
    )


def _counts(system: str) -> tuple[Variant, ...]:
    text, close = _("diagonal bars: {n}"), corner.close_bars(system)
    return tuple(Variant(text.format(n=n), close | {"diagonal_count": n}) for n in COUNTS)


def _means(system: str) -> tuple[Variant, ...]:
    """What can be done without bars; those that lie there stay."""
    return (
        Variant(_("nothing else"), corner.PLAIN),
        Variant(_("steel fibres"), corner.PLAIN | {"fibres": FIBRES}),
        Variant(
            _("a saw cut from the corner"),
            corner.PLAIN | {"joint": "saw", "saw_length": CUT[system], "cut_depth": 0.25},
        ),
        Variant(_("a joint from the corner to the edge"), corner.PLAIN | {"joint": "joint"}),
        Variant(_("a round corner"), corner.PLAIN | {"rounding": corner.ROUND[system]}),
        Variant(_("not tied: its base alone holds it"), corner.PLAIN | {"held": "base"}),
    )


def _thick(system: str) -> tuple[Variant, ...]:
    return tuple(Variant(shown(h, "size", system), {"thickness": h}) for h in THICKNESSES[system])
