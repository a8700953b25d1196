"""What is compared on a slab that curls: joints, thickness, what lies below, a mat, curing."""

from crackkit.learning import curling
from crackkit.learning.comparison import Comparison, Variant, largest_pull
from crackkit.structures.curled_slab import UNDER
from crackkit.units import shown
from crackkit.words import _

THICKER = {"SI": (100.0, 150.0, 200.0), "US": (101.6, 152.4, 203.2)}  # mm
PANELS = {"SI": (4500.0, 3000.0, 2250.0), "US": (4572.0, 3048.0, 2286.0)}  # mm
CURINGS = (1.0, 7.0, 28.0)  # days
DOWELS = 0.8


def comparisons(system: str = "SI") -> tuple[Comparison, ...]:
    """Give the comparisons in round numbers of a system of units."""
    return (
        Comparison("joints", _("Panels"), _panels(system), largest_pull),
        Comparison("thick", _("Thickness"), _thick(system), largest_pull),
        Comparison("under", _("Below it"), _under(), largest_pull),
        Comparison("held", _("Mat and dowels"), _held(system)),
        Comparison("curing", _("Curing"), _curings(system), largest_pull),
    )


def _panels(system: str) -> tuple[Variant, ...]:
    text = _("panels of {side}")
    return tuple(
        Variant(text.format(side=shown(side, "length", system)), {"length": side, "width": side})
        for side in PANELS[system]
    )


def _thick(system: str) -> tuple[Variant, ...]:
    return tuple(Variant(shown(h, "size", system), {"thickness": h}) for h in THICKER[system])


def _under() -> tuple[Variant, ...]:
    return tuple(Variant(label, {"under": key}) for key, label in UNDER)


def _held(system: str) -> tuple[Variant, ...]:
    mat = curling.MAT[system]
    return (
        Variant(_("neither"), {"steel": "none", "transfer": 0.0}),
        Variant(_("a mat near the top"), mat | {"transfer": 0.0}),
        Variant(_("dowels at the joints"), {"steel": "none", "transfer": DOWELS}),
    )


def _curings(system: str) -> tuple[Variant, ...]:
    return tuple(
        Variant(_("moist for {days}").format(days=shown(d, "time", system)), {"curing": d})
        for d in CURINGS
    )
