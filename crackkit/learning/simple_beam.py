"""The lesson on the simple beam: its scene, its walk, and what it promises."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.fields import fitted
from crackkit.structures.laid_bars import LaidBars
from crackkit.structures.outcome import TIGHT, UNHELD
from crackkit.structures.simple_beam import PointLoad, SimpleBeam
from crackkit.units.quantities import FOOT, INCH, KIP
from crackkit.words import _

LESSON = "02_simple_beam"
NEEDS = Needs(LESSON, calls=("stretch", "cracks", "ends"), passed=("wash_bay",), answers=4)
_IN_METRES = {
    "span": 6000.0,
    "width": 300.0,
    "depth": 500.0,
    "uniform_load": 12.0,
    "loads": (PointLoad(30e3, 1800.0),),
    "bottom": LaidBars(size="20", number=3, cover=30.0),
    "top": LaidBars(size="10", number=2, cover=30.0, face="top"),
    "stirrup": "8",
    "yield_strength": 500.0,
    "code": "EN",
}
# The same beam for those who build in feet: 20 ft, 12 x 20 in, 0.8 kip/ft, 7 kip.
_IN_FEET = {
    "span": 20 * FOOT,
    "width": 12 * INCH,
    "depth": 20 * INCH,
    "uniform_load": 0.8 * KIP / FOOT,
    "loads": (PointLoad(7 * KIP, 6 * FOOT),),
    "bottom": LaidBars(size="#6", number=3, cover=1.5 * INCH),
    "top": LaidBars(size="#3", number=2, cover=1.5 * INCH, face="top"),
    "stirrup": "#3",
    "yield_strength": 413.685438,
    "code": "ACI",
}
THIN = {"20": ("16", 5), "#6": ("#5", 4)}  # about the same steel in thinner bars


def canteen_beam(system: str = "SI") -> SimpleBeam:
    """Give the beam over the serving hatch of a school canteen, in round numbers."""
    return SimpleBeam(**(_IN_FEET if system == "US" else _IN_METRES))


def canteen_beam_with_ends(system: str = "SI") -> SimpleBeam:
    """Give the same beam with ends that reach past their supports and carry most of the load."""
    beam = canteen_beam(system)
    end = 6 * FOOT if system == "US" else 1800.0
    far = replace(beam.loads[0], at=0.0)
    return replace(beam, overhang_left=end, overhang_right=end, loads=(far,))


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    beam = canteen_beam(system)
    thin, number = THIN[beam.bottom.size]
    start = {
        "loads.0.at": beam.loads[0].at,
        "bottom.size": beam.bottom.size,
        "bottom.number": 3,
        "top.size": beam.top.size,
        "top.number": 2,
    }
    return (
        WalkStep(
            _("Drag the point load to the middle of the beam. Watch the crack that is widest."),
            {"loads.0.at": beam.span / 2},
            _(
                "The bend is sharpest under the load, and sharper in the middle than near a "
                "support. The bars are pulled harder there, so the crack opens wider."
            ),
        ),
        WalkStep(
            _("Somebody forgot the bottom bars: set their number to 0."),
            start | {"bottom.number": 0},
            _(
                "Concrete alone bears a little pull, then the first crack runs right through. "
                "The top bars do not help: they lie where the concrete is squeezed."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Now lay the strong bars on top: none at the bottom, three thick ones above."),
            start | {"bottom.number": 0, "top.size": beam.bottom.size, "top.number": 3},
            _("As much steel as before, in the wrong face: no stretched bar crosses the crack."),
            from_start=True,
        ),
        WalkStep(
            _("Back to the bottom. The same steel, but thin bars close together."),
            start | {"bottom.size": thin, "bottom.number": number},
            _(
                "Nearly the same weight, narrower cracks: thin bars have more surface to grip the "
                "concrete, so the cracks come closer together and share the stretch."
            ),
            from_start=True,
        ),
        WalkStep(
            _("Let the load stay for years: choose 'lasting' under Loads."),
            start | {"duration": "lasting"},
            _(
                "Under a lasting load the concrete creeps and lets go of the bars a little. The "
                "beam sinks further and the cracks open wider."
            ),
            from_start=True,
        ),
    )


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        steps = [_after(system, step) for step in walk(system)]
        start = canteen_beam(system).solve()
        found |= {
            f"{system}: the beam at the start is tight": start.verdict.key == TIGHT,
            f"{system}: a load in the middle opens the crack": _width(steps[0]) > _width(start),
            f"{system}: without bottom bars nothing holds": steps[1].verdict.key == UNHELD,
            f"{system}: bars on top hold nothing": steps[2].verdict.key == UNHELD,
            f"{system}: thin bars narrow the crack": _width(steps[3]) < _width(start),
            f"{system}: they weigh about the same": _alike(steps[3].steel_mass, start.steel_mass),
            f"{system}: a lasting load opens the crack": _width(steps[4]) > _width(start),
            f"{system}: long ends stretch the top": _top_stretched(system),
        }
    return found


def _after(system: str, step: WalkStep):
    return fitted(canteen_beam(system), step.changes)[0].solve()


def _width(outcome) -> float:
    return outcome.widest.width.governing


def _alike(mass: float, other: float) -> bool:
    return abs(mass / other - 1.0) < 0.08


def _top_stretched(system: str) -> bool:
    outcome = canteen_beam_with_ends(system).solve()
    return any(zone.face == "top" and zone.cracked for zone in outcome.tension)
