"""The lesson on slabs that curl: the floor of a school canteen, and its walk to the corner."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.telling import shown
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.units.quantities import FOOT, INCH, KIP, PSI
from crackkit.words import _

LESSON = "07_curling"
NEEDS = Needs(
    LESSON,
    calls=("place", "thicker", "longer", "damp"),
    passed=("canteen_floor",),
    answers=4,
)
# A heated canteen, three days moist, six weeks old. Its mix shrinks little enough that it does not
# break by its own weight on the days before the first wheel.
_COMMON = {
    "age": 42.0,
    "under": "sheet",
    "humidity": 0.5,
    "curing": 3.0,
    "shrinks": 5e-4,
    "exposure": "dry",
}
# A panel of 4.5 m by 4.5 m, 100 mm thick; a wheel of a serving trolley full of kettles: 9 kN
# where it bumps over a joint.
_IN_METRES = {
    "length": 4500.0,
    "width": 4500.0,
    "thickness": 100.0,
    "loads": (WheelLoad(9000.0, 2250.0, 2250.0, 100.0),),
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
    "cover": 1 * INCH,
    "spacing": 6 * INCH,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
# Where its bars cross, a mat near the top lies about 40 mm (1 1/2 in) below it.
MAT = {
    "SI": {"steel": "8", "spacing": 150.0, "cover": 30.0},
    "US": {"steel": "#3", "spacing": 6 * INCH, "cover": 1 * INCH},
}
DEEP = {"SI": 45.0, "US": 1.75 * INCH}  # cover with which the same mat lies in the middle
SHORT = {"SI": 2250.0, "US": 7.5 * FOOT}  # half of the panel
THICK = {"SI": 150.0, "US": 6 * INCH}  # half as thick again
EDGE = {"SI": 150.0, "US": 6 * INCH}  # a wheel so far from an edge
WET = 3.0  # days: still moist
LONG_CURE = 28.0  # days
DOWELS = 0.8  # share that they hand on; common practice
LATER = 180.0  # days


def panel(system: str = "SI") -> CurledSlab:
    """Give a panel of the canteen floor, six weeks old, the wheel in its middle."""
    return CurledSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def wet_panel(system: str = "SI") -> CurledSlab:
    """Give the same panel while it is still moist: it lies flat."""
    return replace(panel(system), age=WET)


def broken_panel(system: str = "SI") -> CurledSlab:
    """Give the panel as school begins, the wheel in its corner: what the walk starts from."""
    return at_corner(panel(system), system)


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


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    start = _start(system)
    corner = start | _corner(system)
    return (
        *_drying_steps(system, start),
        _edge_step(system, start),
        _corner_step(corner),
        _thick_step(system, corner),
        *_joint_steps(system, corner),
        _mat_step(system, corner),
        *_dry_steps(corner),
    )


def _start(system: str) -> dict:
    """What brings the panel back to the floor as it is at first."""
    slab = panel(system)
    places = {"loads.0.x": slab.loads[0].x, "loads.0.y": slab.loads[0].y}
    kept = ("age", "length", "width", "thickness", "transfer", "under", "curing", "steel", "cover")
    return {key: getattr(slab, key) for key in kept} | places


def _corner(system: str) -> dict:
    return {"loads.0.x": EDGE[system], "loads.0.y": EDGE[system]}


def _drying_steps(system: str, start: dict) -> tuple[WalkStep, ...]:
    rise = shown(panel(system).curled.corner_rise, "movement", system)
    return (
        WalkStep(
            _(
                "This corner has broken. Go back to the third day, when the floor is still moist, "
                "and roll the wheel to its middle."
            ),
            start | {"age": WET},
            _(
                "It lies flat on the ground, all of it. The wheel bends it like a plank on a "
                "cushion: the BOTTOM is stretched, right below the wheel, to some three quarters "
                "of what it bears."
            ),
        ),
        WalkStep(
            _("Let it dry: move the age to 42 days, six weeks. The wheel stays."),
            start,
            _(
                "The top has dried and wants to be shorter; the bottom is wetter. The corners "
                "stand {rise} up, and most of the floor has air below it. It hangs out from its "
                "middle by its own weight, and now the TOP is stretched."
            ).format(rise=rise),
        ),
    )


def _edge_step(system: str, start: dict) -> WalkStep:
    return WalkStep(
        _("Roll the wheel to the middle of an edge: drag it on the plan."),
        start | {"loads.0.x": panel(system).length / 2, "loads.0.y": EDGE[system]},
        _(
            "The edge goes down below the wheel, and the TOP is stretched harder than before, well "
            "away from the wheel. It holds yet."
        ),
    )


def _corner_step(corner: dict) -> WalkStep:
    return WalkStep(
        _("Now into the corner."),
        corner,
        _(
            "Too much. The corner is a plank that nothing holds up, with a wheel near its end. It "
            "breaks from the TOP, along a line around the corner, and no bar crosses it."
        ),
    )


def _thick_step(system: str, corner: dict) -> WalkStep:
    return WalkStep(
        _("The wheel stays there. Make the floor half as thick again: {thick}.").format(
            thick=shown(THICK[system], "size", system)
        ),
        corner | {"thickness": THICK[system]},
        _(
            "It holds: the pull is a fifth to a quarter less. But the corner stands just as high, "
            "for a thick floor stays wet below for longer, and is stiffer."
        ),
        from_start=True,
    )


def _joint_steps(system: str, corner: dict) -> tuple[WalkStep, ...]:
    short = {"length": SHORT[system], "width": SHORT[system]}
    return (
        WalkStep(
            _("As thin as it was, but halve length and width of the panel."),
            corner | short,
            _(
                "A quarter to a good third less pull: a short panel has less weight out in the "
                "air. Its corners stand only a little lower, though, and there are twice as many "
                "joints, each with two edges to be kept."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Back to the long panel: let its joints pass on 0.8 of their load, as dowels do."),
            corner | {"transfer": DOWELS},
            _(
                "A quarter less pull, or a little more, without one joint more: the neighbour "
                "carries with it, and the corner holds. It still stands up."
            ),
            from_start=True,
        ),
    )


def _mat_step(system: str, corner: dict) -> WalkStep:
    size, spacing = MAT[system]["steel"], shown(MAT[system]["spacing"], "size", system)
    name = size if size.startswith("#") else _("{n} mm").format(n=size)
    return WalkStep(
        _("No dowels, but a mat near the top: size {size}, one bar every {spacing}.").format(
            size=name, spacing=spacing
        ),
        corner | MAT[system],
        _(
            "The mat changes nothing about the curling, nor about the load that cracks it. But "
            "bars cross the crack close to where it opens: it stays fine, and the corner stays on."
        ),
        from_start=True,
    )


def _dry_steps(corner: dict) -> tuple[WalkStep, ...]:
    return (
        WalkStep(
            _("No mat. Somebody says: cure it longer, 28 days."),
            corner | {"curing": LONG_CURE},
            _(
                "That helps not at all: at six weeks it is pulled harder. It begins to dry later, "
                "as strong concrete that creeps less. Curing makes it hard and dense; once it "
                "dries, it curls."
            ),
            from_start=True,
        ),
        WalkStep(
            _("And if it could dry from below as well? Under Ground choose open."),
            corner | {"under": "open"},
            _(
                "Flat. Not drying lifts corners, but drying on one side only. Few floors can dry "
                "like this, for the ground is seldom as dry as the room; the less water there is "
                "in the mix and below it, the nearer you come."
            ),
            from_start=True,
        ),
    )
