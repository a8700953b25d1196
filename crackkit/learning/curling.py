"""The lesson on slabs that curl: the floor of a school canteen, and its walk to the corner."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.walk import WalkStep
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.units import shown
from crackkit.units.quantities import FOOT, INCH, KIP, PSI
from crackkit.words import _

LESSON = "07_curling"
NEEDS = Needs(LESSON, calls=("place", "longer"), passed=("canteen_floor",), answers=4)
# A heated canteen, a wet mix, three days moist; three months old.
_COMMON = {
    "age": 90.0,
    "under": "sheet",
    "humidity": 0.5,
    "curing": 3.0,
    "shrinks": 8e-4,
    "exposure": "dry",
}
# A panel of 4.5 m by 4.5 m, 100 mm thick; a wheel of a serving trolley full of kettles: 8 kN where
# it bumps over a joint.
_IN_METRES = {
    "length": 4500.0,
    "width": 4500.0,
    "thickness": 100.0,
    "loads": (WheelLoad(8000.0, 2250.0, 2250.0, 100.0),),
    "strength": 30.0,
    "cover": 30.0,
    "spacing": 150.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 15 ft by 15 ft, 4 in; 1.75 kip.
_IN_FEET = {
    "length": 15 * FOOT,
    "width": 15 * FOOT,
    "thickness": 4 * INCH,
    "loads": (WheelLoad(1.75 * KIP, 7.5 * FOOT, 7.5 * FOOT, 4 * INCH),),
    "strength": 4000 * PSI,
    "cover": 1.25 * INCH,
    "spacing": 4 * INCH,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
MAT = {"SI": {"steel": "8", "spacing": 150.0}, "US": {"steel": "#4", "spacing": 4 * INCH}}
SHORT = {"SI": 2250.0, "US": 7.5 * FOOT}  # half of the panel
EDGE = {"SI": 150.0, "US": 6 * INCH}  # a wheel so far from an edge
WET = 3.0  # days: still moist
LONG_CURE = 28.0  # days


def panel(system: str = "SI") -> CurledSlab:
    """Give a panel of the canteen floor, three months old, the wheel in its middle."""
    return CurledSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def wet_panel(system: str = "SI") -> CurledSlab:
    """Give the same panel while it is still moist: it lies flat."""
    return replace(panel(system), age=WET)


def at_edge(slab: CurledSlab, system: str) -> CurledSlab:
    """Roll the wheel to the middle of an edge."""
    return _rolled(slab, slab.length / 2, EDGE[system])


def at_corner(slab: CurledSlab, system: str) -> CurledSlab:
    """Roll the wheel into a corner."""
    return _rolled(slab, EDGE[system], EDGE[system])


def _rolled(slab: CurledSlab, x: float, y: float) -> CurledSlab:
    return replace(slab, loads=(replace(slab.loads[0], x=x, y=y),))


def pull(slab: CurledSlab) -> float:
    """How hard it is pulled: over its strength [-]."""
    return slab.curled.share


def walk(system: str = "SI") -> tuple[WalkStep, ...]:
    """Give the guided walk through the panel."""
    start = _start(system)
    return (
        *_drying_steps(system, start),
        *_wheel_steps(system, start),
        *_cure_steps(system, start),
    )


def _start(system: str) -> dict:
    slab = panel(system)
    places = {"loads.0.x": slab.loads[0].x, "loads.0.y": slab.loads[0].y}
    kept = ("age", "length", "width", "thickness", "transfer", "under", "curing", "steel")
    return {key: getattr(slab, key) for key in kept} | places


def _corner(system: str) -> dict:
    return {"loads.0.x": EDGE[system], "loads.0.y": EDGE[system]}


def _drying_steps(system: str, start: dict) -> tuple[WalkStep, ...]:
    rise = shown(panel(system).curled.corner_rise, "movement", system)
    return (
        WalkStep(
            _("The floor is three days old and still moist. A wheel stands in the middle of it."),
            start | {"age": WET},
            _(
                "It lies flat on the ground, all of it. The wheel bends it like a plank on a "
                "cushion: the BOTTOM is stretched, right below it, to some 0.7 of what it bears."
            ),
        ),
        WalkStep(
            _("Let it dry for three months: move the age to 90 days. The wheel stays."),
            start,
            _(
                "The top has dried and wants to be shorter; the bottom is wet still. The corners "
                "stand {rise} up, and most of the floor has air below it. It hangs on its middle, "
                "pulled by its own weight, and now the TOP is stretched."
            ).format(rise=rise),
        ),
    )


def _wheel_steps(system: str, start: dict) -> tuple[WalkStep, ...]:
    slab = panel(system)
    edge = {"loads.0.x": slab.length / 2, "loads.0.y": EDGE[system]}
    return (
        WalkStep(
            _("Roll the wheel to the middle of an edge: drag it on the plan."),
            start | edge,
            _("The edge dips, and the top is stretched harder, away from the wheel. It holds yet."),
        ),
        WalkStep(
            _("Now into the corner."),
            start | _corner(system),
            _(
                "Too much. The corner is a plank that nothing holds up, with a wheel at its end. "
                "It breaks from the TOP, along a line around the corner, and no bar crosses it."
            ),
        ),
        WalkStep(
            _("The wheel stays in the corner. Halve length and width of the panel."),
            start | {"length": SHORT[system], "width": SHORT[system]} | _corner(system),
            _(
                "That helps a lot: a short panel has not much weight out in the air, and its "
                "corners rise less. Twice as many joints, though, and each is an edge to be kept."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Back to the long panel: let its joints hand on 0.8 of their load, as dowels do."),
            start | {"transfer": 0.8} | _corner(system),
            _("The neighbour carries with it, and the corner holds. It still stands up."),
            from_start=True,
        ),
        WalkStep(
            _("No dowels, but a mat near the top, {mat}.").format(mat=_mat_told(system)),
            start | MAT[system] | _corner(system),
            _(
                "The mat changes nothing about the curling, and the top cracks on the same day. "
                "But bars cross the crack close to where it opens: it stays fine, and the corner "
                "stays on."
            ),
            from_start=True,
        ),
    )


def _mat_told(system: str) -> str:
    size, spacing = MAT[system]["steel"], shown(MAT[system]["spacing"], "size", system)
    name = size if size.startswith("#") else _("{n} mm").format(n=size)
    return _("{size} every {spacing} both ways").format(size=name, spacing=spacing)


def _cure_steps(system: str, start: dict) -> tuple[WalkStep, ...]:
    return (
        WalkStep(
            _("No mat. Somebody says: cure it longer, 28 days."),
            start | {"curing": LONG_CURE} | _corner(system),
            _(
                "Not at all, here: it dries later, so after three months it curls more than the "
                "other does by then. Curing makes it strong and dense; the day it dries, it curls."
            ),
            from_start=True,
        ),
        WalkStep(
            _("And if it could dry from below as well? Under Ground choose open."),
            start | {"under": "open"} | _corner(system),
            _(
                "Flat. Curling comes from drying on one side only: a sheet right below a floor, "
                "and water in the mix, are what lift its corners."
            ),
            from_start=True,
        ),
    )
