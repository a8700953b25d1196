"""The lesson on the inside corner: the L-shaped floor of a village bakery, and its walk."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.telling import shown
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.wandering_crack import WanderingCrack
from crackkit.units.quantities import FOOT, INCH, PSI
from crackkit.words import _

LESSON = "08_reentrant_corner"
NEEDS = Needs(
    LESSON,
    calls=("where", "way", "bars", "round"),
    passed=("bus_depot",),
    answers=4,
)
# A heated shop, kept moist for a week, a year old. Its edges are tied to the footings of the
# walls, but those sit on soil that gives: they hold a ninth of what rigid ones would.
_COMMON = {
    "shape": "corner",
    "age": 365.0,
    "held": "edges",
    "holds": 0.11,
    "humidity": 0.5,
    "curing": 7.0,
    "exposure": "dry",
}
# An L of 6 m by 6 m, the oven house in the missing quarter, 150 mm thick.
_IN_METRES = {
    "length": 6000.0,
    "width": 6000.0,
    "cut_length": 3000.0,
    "cut_width": 3000.0,
    "thickness": 150.0,
    "strength": 30.0,
    "cover": 40.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 20 ft, 10 ft and 6 in.
_IN_FEET = {
    "length": 20 * FOOT,
    "width": 20 * FOOT,
    "cut_length": 10 * FOOT,
    "cut_width": 10 * FOOT,
    "thickness": 6 * INCH,
    "strength": 4000 * PSI,
    "cover": 1.5 * INCH,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
NO_BARS = {"diagonals": "none", "edges": "none", "mat": "none"}
PLAIN = {"rounding": 0.0, "joint": "none", "fibres": "none", "held": "edges"}
# The bars that the baker bought: along the walls, a metre (3 ft) from the corner.
WALL_BARS = {
    "SI": {"edges": "16", "edge_count": 1, "edge_off": 1000.0, "edge_past": 600.0},
    "US": {"edges": "#5", "edge_count": 1, "edge_off": 3 * FOOT, "edge_past": 2 * FOOT},
}
CLOSE = {"SI": 50.0, "US": 2 * INCH}  # off the corner, clear
FAR = {"SI": 400.0, "US": 18 * INCH}
DIAGONALS = {
    "SI": {
        "diagonals": "16",
        "diagonal_count": 2,
        "diagonal_apart": 100.0,
        "diagonal_length": 1200.0,
    },
    "US": {
        "diagonals": "#5",
        "diagonal_count": 2,
        "diagonal_apart": 4 * INCH,
        "diagonal_length": 4 * FOOT,
    },
}
MAT = {"SI": {"mat": "12", "spacing": 150.0}, "US": {"mat": "#4", "spacing": 6 * INCH}}
ROUND = {"SI": 300.0, "US": 24 * INCH}  # radius
YOUNG, SECOND, LAST = 28.0, 730.0, 3650.0  # days: a month, two years, ten years


def floor(system: str = "SI") -> CornerSlab:
    """Give the floor of the bakery at one year without any bars."""
    return CornerSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def found_floor(system: str = "SI") -> CornerSlab:
    """Give it as it was found: cracked, its bars along the walls, a metre from the corner."""
    return replace(floor(system), **WALL_BARS[system])


def film(system: str = "SI") -> WanderingCrack:
    """Give the same floor, bare, as a film in which the crack finds its own way."""
    return WanderingCrack(slab=floor(system))


def close_bars(system: str) -> dict:
    """Two diagonal bars close to the corner, nothing else."""
    return NO_BARS | DIAGONALS[system] | {"diagonal_off": CLOSE[system]}


def held_floor(system: str = "SI") -> CornerSlab:
    """Give the floor with two diagonal bars close to the corner."""
    return replace(floor(system), **close_bars(system))


def far_floor(system: str = "SI") -> CornerSlab:
    """Give it with the same bars too far away."""
    return replace(held_floor(system), diagonal_off=FAR[system])


def wall_floor(system: str = "SI") -> CornerSlab:
    """Give it with one bar along each side, as close to the corner as the diagonal ones."""
    return replace(found_floor(system), edge_off=CLOSE[system])


def mat_floor(system: str = "SI") -> CornerSlab:
    """Give it with a mat everywhere."""
    return replace(floor(system), **MAT[system])


def round_floor(system: str = "SI") -> CornerSlab:
    """Give it with a round corner, and no bars."""
    return replace(floor(system), rounding=ROUND[system])


def widest(slab: CornerSlab) -> float:
    """Width of its crack that has run [mm]; 0 where none has."""
    return slab.solve().verdict.width or 0.0


def opening(slab: CornerSlab) -> float:
    """How far it is open at its corner, whether it has run or only begun to tear [mm]."""
    return slab.cornered.crack.widest


def size_told(size: str) -> str:
    """Give a bar size as people say it: ``"16 mm"``, ``"#5"``."""
    return size if size.startswith("#") else _("{n} mm").format(n=size)


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    start = PLAIN | NO_BARS | WALL_BARS[system] | {"age": floor(system).age}
    bare = start | {"edges": "none"}
    return (
        *_found_steps(system, start),
        *_diagonal_steps(system, bare),
        *_other_bars(system, start, bare),
        *_other_ways(system, bare),
        _later_step(system, bare),
    )


def _found_steps(system: str, start: dict) -> tuple[WalkStep, ...]:
    width = shown(widest(found_floor(system)), "width", system)
    return (
        WalkStep(
            _(
                "This floor has cracked. Go back to the first month: 28 days. Look at the colours "
                "around the inside corner."
            ),
            start | {"age": YOUNG},
            _(
                "No crack yet. But the pull gathers at the inside corner, as a river gathers "
                "around the end of a pier: there it is several times what it is elsewhere. The "
                "short strokes show which way it pulls: across the corner."
            ),
        ),
        WalkStep(
            _("Now to one year. The bars of the baker lie along the walls, where he put them."),
            start,
            _(
                "One crack, {width} wide at the corner, runs out halfway between the two walls, "
                "across the strokes, right through the floor. No bar crosses it: they end before "
                "it, and lie too far from the corner."
            ).format(width=width),
        ),
    )


def _diagonal_steps(system: str, bare: dict) -> tuple[WalkStep, ...]:
    size = size_told(DIAGONALS[system]["diagonals"])
    close, far = shown(CLOSE[system], "size", system), shown(FAR[system], "size", system)
    width = shown(opening(held_floor(system)), "width", system)
    return (
        WalkStep(
            _(
                "Take these bars out. Lay two diagonal ones, size {size}, across the coming crack, "
                "the first {close} off the corner."
            ).format(size=size, close=close),
            bare | close_bars(system),
            _(
                "The crack is {width} wide at most, and ends after less than a stride. The bars "
                "did not keep it from starting. They took hold of it while it was young, so it "
                "could not run."
            ).format(width=width),
            from_start=True,
        ),
        WalkStep(
            _("Drag them away from the corner, to {far}.").format(far=far),
            bare | close_bars(system) | {"diagonal_off": FAR[system]},
            _(
                "Too wide. The same two bars, but the crack grew up before it met them. A hand "
                "from the corner is about as far as they should lie."
            ),
        ),
    )


def _other_bars(system: str, start: dict, bare: dict) -> tuple[WalkStep, ...]:
    size, off = size_told(WALL_BARS[system]["edges"]), shown(CLOSE[system], "size", system)
    mat, every = size_told(MAT[system]["mat"]), shown(MAT[system]["spacing"], "size", system)
    return (
        WalkStep(
            _(
                "Instead of them one bar along each wall, size {size}, but close: {off} off, and "
                "on past the corner."
            ).format(size=size, off=off),
            start | {"edge_off": CLOSE[system]},
            _(
                "Both cross the crack, but at a slant. It runs all the same. A bar that lies "
                "straight across its crack does more, and these two weigh some three times what "
                "the two diagonal bars weigh."
            ),
            from_start=True,
        ),
        WalkStep(
            _("A mat everywhere, size {size}, one bar every {every}.").format(
                size=mat, every=every
            ),
            bare | MAT[system],
            _(
                "That holds as well, but not as fine as the two diagonal bars: few of its bars "
                "pass near the corner, and at a slant. It weighs eighty times as much or more. "
                "A mat has other work to do; at the corner the diagonal bars come on top."
            ),
            from_start=True,
        ),
    )


def _other_ways(system: str, bare: dict) -> tuple[WalkStep, ...]:
    return (
        WalkStep(
            _(
                "No bars, but a round corner: radius {radius}. Look at one year first, then at "
                "ten. 'Set it for me' gives ten years."
            ).format(radius=shown(ROUND[system], "size", system)),
            bare | {"rounding": ROUND[system], "age": LAST},
            _(
                "At one year it has not run. Later it does, and then just as wide: a round corner "
                "is pulled less hard, so it starts later. Once the crack is there, the corner is "
                "sharp."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Sharp again, one year: a joint from the corner out to the edge of the floor."),
            bare | {"joint": "joint"},
            _(
                "It opens just as wide, but as a straight line that you chose, that can be filled, "
                "and that keeps its edges. No crack runs."
            ),
            from_start=True,
        ),
        WalkStep(
            _("No joint. Under Held by choose its base alone: nothing ties it to the footings."),
            bare | {"held": "base"},
            _(
                "Hardly any pull is left, and so it stays for ten years. The corner says where it "
                "cracks; that it cracks comes from being held."
            ),
            from_start=True,
        ),
    )


def _later_step(system: str, bare: dict) -> WalkStep:
    wide, plain = (
        shown(widest(replace(slab, age=SECOND)), "width", system)
        for slab in (held_floor(system), floor(system))
    )
    return WalkStep(
        _("Tied again, with the two diagonal bars close by. What do they look like at two years?"),
        bare | close_bars(system) | {"age": SECOND},
        _(
            "It has run in spite of them, {wide} at its widest, out beyond the bars; without them "
            "{plain}. Bars delay the crack and trim it. As long as the floor is held and goes on "
            "shrinking, two bars do not win: lay more of them, hold it less, or give it a joint."
        ).format(wide=wide, plain=plain),
        from_start=True,
    )
