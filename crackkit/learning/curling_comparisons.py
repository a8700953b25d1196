"""What is compared on a slab that curls: joints, thickness, what lies below, a mat, curing."""

from crackkit.learning import curling
from crackkit.learning.comparison import Comparison, Variant, largest_pull
from crackkit.learning.telling import shown
from crackkit.structures.curled_slab import UNDER
from crackkit.units.quantities import FOOT, INCH
from crackkit.words import _

THICKNESSES = {"SI": (100.0, 150.0, 200.0), "US": (4 * INCH, 6 * INCH, 8 * INCH)}
PANELS = {"SI": (4500.0, 3000.0, 2250.0), "US": (15 * FOOT, 10 * FOOT, 7.5 * FOOT)}
CURINGS = (1.0, 7.0, 28.0)  # days


def comparisons(system: str = "SI") -> tuple[Comparison, ...]:
    """Give the comparisons in round numbers of a system of units."""
    return (
        Comparison("joints", _("Panels"), _panels(system), largest_pull),
        Comparison("thick", _("Thickness"), _thick(system), largest_pull),
        Comparison("under", _("Below it"), _under(), largest_pull),
        Comparison("dowels", _("Dowels"), _dowels(), largest_pull),
        Comparison("mat", _("Mat"), _mats(system)),
        Comparison("curing", _("Curing"), _curings(system), largest_pull),
    )


def _panels(system: str) -> tuple[Variant, ...]:
    text = _("panels of {side}")
    return tuple(
        Variant(text.format(side=shown(side, "length", system)), {"length": side, "width": side})
        for side in PANELS[system]
    )


def _thick(system: str) -> tuple[Variant, ...]:
    return tuple(Variant(shown(h, "size", system), {"thickness": h}) for h in THICKNESSES[system])


def _under() -> tuple[Variant, ...]:
    return tuple(Variant(label, {"under": key}) for key, label in UNDER)


def _dowels() -> tuple[Variant, ...]:
    return (
        Variant(_("nothing across the joints"), {"transfer": 0.0}),
        Variant(_("dowels at the joints"), {"transfer": curling.DOWELS}),
    )


def _mats(system: str) -> tuple[Variant, ...]:
    """Bars show in the crack, not in the pull: here widths are compared."""
    mat = curling.MAT[system]
    depth = _("a mat, {cover} below the top")
    return (
        Variant(_("no mat"), {"steel": "none"}),
        *(
            Variant(depth.format(cover=shown(cover, "size", system)), mat | {"cover": cover})
            for cover in (mat["cover"], curling.DEEP[system])
        ),
    )


def _curings(system: str) -> tuple[Variant, ...]:
    text = _("kept moist for {days}")
    return tuple(
        Variant(text.format(days=shown(days, "time", system)), {"curing": days}) for days in CURINGS
    )
