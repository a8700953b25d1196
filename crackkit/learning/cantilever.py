"""The lesson on the cantilever: its scene, its walk, and what it promises."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.telling import briefly, shown
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.anchored_bars import AnchoredBars
from crackkit.structures.cantilever import ArmLoad, Cantilever
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNHELD, YIELDS
from crackkit.units.quantities import FOOT, INCH, KIP
from crackkit.words import _

LESSON = "03_cantilever"
NEEDS = Needs(
    LESSON, calls=("stretch", "behind", "cracks", "bar"), passed=("rain_roof",), answers=4
)
# A strip of 1 m of the balcony: 2.2 m out of a wall of 300 mm, people on it, railing and a rack
# for oars near the tip.
_IN_METRES = {
    "overhang": 2200.0,
    "wall": 300.0,
    "width": 1000.0,
    "depth": 200.0,
    "tip_depth": 200.0,
    "uniform_load": 5.0,
    "loads": (ArmLoad(6e3, 2100.0),),
    "top": AnchoredBars(
        size="12", spacing=120.0, cover=35.0, behind=270.0, hooked=True, tip_gap=50.0
    ),
    "bottom": AnchoredBars(
        size="10",
        laid=False,
        spacing=200.0,
        cover=35.0,
        behind=150.0,
        tip_gap=50.0,
        face="bottom",
    ),
    "strength": 30.0,
    "yield_strength": 500.0,
    "code": "EN",
}
# The same for those who build in feet: a strip of 1 ft, 7 ft out of a wall of 12 in.
_IN_FEET = {
    "overhang": 7 * FOOT,
    "wall": 12 * INCH,
    "width": 12 * INCH,
    "depth": 8 * INCH,
    "tip_depth": 8 * INCH,
    "uniform_load": 0.09 * KIP / FOOT,
    "loads": (ArmLoad(0.5 * KIP, 6.5 * FOOT),),
    "top": AnchoredBars(
        size="#4",
        spacing=5 * INCH,
        cover=1.5 * INCH,
        behind=10.5 * INCH,
        hooked=True,
        tip_gap=2 * INCH,
    ),
    "bottom": AnchoredBars(
        size="#3",
        laid=False,
        spacing=8 * INCH,
        cover=1.5 * INCH,
        behind=6 * INCH,
        tip_gap=2 * INCH,
        face="bottom",
    ),
    "strength": 27.579029,
    "yield_strength": 413.685438,
    "code": "ACI",
}
TRODDEN = {"SI": 50.0, "US": 2 * INCH}
SHORT = {"SI": 150.0, "US": 6 * INCH}  # how far bars that were cut too short reach back
BACK_SPAN = {"SI": 4000.0, "US": 13 * FOOT}
SHORT_BACK = {"SI": 2000.0, "US": 7 * FOOT}
ALL_BACK = {"SI": 1950.0, "US": 6.75 * FOOT}
INTO_FLOOR = {"SI": 2500.0, "US": 8 * FOOT}


def balcony(system: str = "SI") -> Cantilever:
    """Give a strip of the balcony of a rowing club, in round numbers; it grows out of a wall."""
    return Cantilever(**(_IN_FEET if system == "US" else _IN_METRES))


def balcony_on_floor(system: str = "SI") -> Cantilever:
    """Give the same balcony as the end of a floor; nobody stands on the floor behind it."""
    return fitted(balcony(system), on_floor(system) | {"back_load": 0.0})[0]


def on_floor(system: str) -> dict:
    """What makes the balcony grow out of a floor with people on it: path to value."""
    return {
        "back": "floor",
        "back_span": BACK_SPAN[system],
        "back_load": balcony(system).uniform_load,
        "top.hooked": False,
        "top.behind": INTO_FLOOR[system],
    }


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    start = _start(system)
    return (
        _trodden_step(system),
        _bottom_step(system, start),
        _short_step(system, start),
        WalkStep(
            _(
                "Let the balcony be the end of a floor: under Arm and root choose 'the floor "
                "behind it'. The top bars now run straight, far into the floor. Look how far the "
                "red goes back."
            ),
            start | on_floor(system),
            _(
                "The arm bends the floor behind it too: the top stays stretched well past the "
                "support, and the crack zone reaches back with it. Top bars that end at the "
                "support would hold nothing; these run far into the floor."
            ),
            from_start=True,
        ),
        WalkStep(
            _(
                "Nobody stands on the floor now, and the span behind is short. What happens to "
                "the far support?"
            ),
            start | on_floor(system) | _short_floor(system),
            _(
                "Now the top is stretched all the way back. The cracks are fine, yet read the "
                "caution under the picture: the far support has to hold the slab down, and "
                "without a tie it tips. So no load on an edge before the span behind it is cast, "
                "hard, and held down."
            ),
            from_start=True,
        ),
    )


def _short_floor(system: str) -> dict:
    """What makes the floor behind short and empty."""
    return {
        "back_load": 0.0,
        "back_span": SHORT_BACK[system],
        "top.behind": ALL_BACK[system],
    }


def _start(system: str) -> dict:
    """What brings the panel back to the balcony as it is at first."""
    arm = balcony(system)
    return {
        "back": "wall",
        "top.laid": True,
        "top.drop": 0.0,
        "top.hooked": True,
        "top.behind": arm.top.behind,
        "bottom.laid": False,
    }


def _trodden_step(system: str) -> WalkStep:
    return WalkStep(
        _(
            "The crew walked on the top bars while the concrete came: tread them down by {far} "
            "(Trodden down by, under Top bars)."
        ).format(far=briefly(TRODDEN[system], "size", system)),
        {"top.drop": TRODDEN[system]},
        _(
            "The bars work on a shorter arm now, so the same load pulls them harder: the crack "
            "opens beyond the limit, and about a third of the strength is gone. From above "
            "nobody sees it."
        ),
    )


def _bottom_step(system: str, start: dict) -> WalkStep:
    bars, worst = balcony(system).top, balcony(system).solve().worst
    return WalkStep(
        _("Somebody read the drawing upside down: the same bars, but along the bottom only."),
        start
        | {
            "top.laid": False,
            "bottom.laid": True,
            "bottom.size": bars.size,
            "bottom.spacing": bars.spacing,
        },
        _(
            "The first crack opens at the root, from the top down, and no bar crosses it: at a "
            "bending moment of {m} the piece cracks and falls, without any warning. All that "
            "steel lies where the concrete is squeezed."
        ).format(m=shown(worst.cracking_moment, "moment", system)),
        from_start=True,
    )


def _short_step(system: str, start: dict) -> WalkStep:
    short = {"top.hooked": False, "top.behind": SHORT[system]}
    whole = _after(system, {"top.hooked": False})
    return WalkStep(
        _(
            "Top bars again, but straight, and only {far} into the wall. Watch how much they can "
            "build up at the root."
        ).format(far=briefly(SHORT[system], "size", system)),
        start | short,
        _(
            "A bar is only as strong as its grip behind the crack. In so short a length it slips "
            "out before it is pulled hard. Straight to the back of the wall it builds up "
            "{share} % of its strength: still not enough. The hook makes up for it."
        ).format(share=round(100 * whole.widest.developed)),
        from_start=True,
    )


def _after(system: str, changes: dict):
    return fitted(balcony(system), changes)[0].solve()


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _walk_promises(system) | _other_promises(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found


def _walk_promises(system: str) -> dict[str, bool]:
    start = balcony(system).solve()
    trodden, low, short, floor, light = (_after(system, s.changes) for s in walk(system))
    wide = trodden.widest.width.governing
    return {
        "at the start it is tight": start.verdict.key == TIGHT,
        "at the start it has strength to spare": spare(start) >= 1.6,
        "the crack opens at the root from above": _at_root(start),
        "trodden bars leave too wide a crack": trodden.verdict.key == TOO_WIDE,
        "trodden bars open it by more than half": wide > 1.5 * start.widest.width.governing,
        "a third of the strength is gone": 0.28 < 1 - spare(trodden) / spare(start) < 0.38,
        "bars at the bottom hold nothing": low.verdict.key == UNHELD,
        "it falls at the root": low.movement.falls_at is not None and _at_root(low),
        "short bars slip": short.verdict.key == YIELDS and short.widest.developed < 0.5,
        "the floor behind is stretched on top": _behind(floor) > 0.25 * floor.structure.back_span,
        "it cracks behind the root too": _cracked_behind(floor) > 0.0,
        "without load behind it all is": _behind(light) >= 0.999 * light.structure.back_span,
        "the far support must hold it down": "uplift" in [c.key for c in light.cautions],
    }


def _other_promises(system: str) -> dict[str, bool]:
    straight, hooked = _after(system, {"top.hooked": False}), balcony(system).solve()
    bare = replace(balcony(system), uniform_load=0.0, loads=(ArmLoad(0.0, 300.0),))
    bare = replace(bare, top=replace(bare.top, laid=False)).solve()
    return {
        "straight in the wall they have little more than half": 0.5
        < straight.widest.developed
        < 0.65,
        "and leaves too little to spare": spare(straight) < 1.3,
        "a hook helps": hooked.widest.developed > 1.4 * straight.widest.developed,
        "bare concrete is warned of": not bare.cracks and _warned(bare, "unguarded"),
        "less load behind stretches more": _behind(balcony_on_floor(system).solve())
        > _behind(_after(system, on_floor(system))),
    }


def spare(outcome) -> float:
    """How many times its load the worst section bears [-]."""
    return outcome.worst.ultimate_moment / outcome.worst.moment


def _at_root(outcome) -> bool:
    return outcome.widest.face == "top" and abs(outcome.widest.at - outcome.structure.root) < 1.0


def _behind(outcome) -> float:
    """How far back from the root the top is stretched [mm]."""
    starts = [zone.start for zone in outcome.tension if zone.face == "top"]
    return outcome.structure.root - min(starts)


def _cracked_behind(outcome) -> float:
    """How far back from the root the top cracks [mm]."""
    starts = [a for z in outcome.tension if z.face == "top" for a, _b in z.cracked]
    return outcome.structure.root - min(starts)


def _warned(outcome, key: str) -> bool:
    return key in [caution.key for caution in outcome.cautions]
