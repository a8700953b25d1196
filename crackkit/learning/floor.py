"""The lesson on floors over several spans: its scene, the calls, and what it promises."""

from dataclasses import replace

import numpy as np

from crackkit.learning.finish import Needs
from crackkit.learning.floor_walk import walk
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.fields import fitted
from crackkit.structures.floor_bars import FloorBars
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.structures.moment_range import NO_BAR, TOO_FEW
from crackkit.structures.outcome import TIGHT, UNHELD, YIELDS
from crackkit.units.quantities import FOOT, INCH, KIP

LESSON = "04_continuous_spans"
NEEDS = Needs(
    LESSON, calls=("stretch", "one_span", "cracks", "layout"), passed=("parts_store",), answers=4
)
# A strip of 1 m of the floor: 5.5, 5 and 5.5 m, 170 mm thick, paper rolls and a roll truck on it.
_IN_METRES = {
    "spans": (5500.0, 5000.0, 5500.0),
    "past": 100.0,  # how far bottom bars reach past an inner support
    "end": 600.0,  # top bars over an end support
    "side": 1300.0,  # top bars over an inner support, into the end span
    "middle": 2800.0,  # and into the middle span, where both rows lap
    "truck": Traveller(15e3, 8000.0),
    "bars": FloorBars(size="14", spacing=100.0, cover=25.0),
    "floor": {
        "width": 1000.0,
        "depth": 170.0,
        "dead_load": 1.0,
        "live_load": 12.0,
        "strength": 30.0,
        "yield_strength": 500.0,
        "code": "EN",
    },
}
# The same for those who build in feet: a strip of 1 ft, 18, 16 and 18 ft, 7 in thick, 200 psf.
_IN_FEET = {
    "spans": (18 * FOOT, 16 * FOOT, 18 * FOOT),
    "past": 4 * INCH,
    "end": 2 * FOOT,
    "side": 4.5 * FOOT,
    "middle": 9 * FOOT,
    "truck": Traveller(1 * KIP, 26 * FOOT),
    "bars": FloorBars(size="#5", spacing=5 * INCH, cover=0.75 * INCH),
    "floor": {
        "width": 12 * INCH,
        "depth": 7 * INCH,
        "dead_load": 0.02 * KIP / FOOT,
        "live_load": 0.2 * KIP / FOOT,
        "strength": 27.579029,
        "yield_strength": 413.685438,
        "code": "ACI",
    },
}


def paper_store(system: str = "SI") -> ContinuousBeam:
    """Give a strip of the floor of a paper store, in round numbers; all of it is loaded."""
    given = _IN_FEET if system == "US" else _IN_METRES
    past, end, side, middle = (given[key] for key in ("past", "end", "side", "middle"))
    gaps = ((0.0, -past), (-past, -past), (-past, 0.0))
    reaches = ((0.0, end), (side, middle), (middle, side), (end, 0.0))
    return ContinuousBeam(
        spans=tuple(
            Span(length, left_gap=left, right_gap=right)
            for length, (left, right) in zip(given["spans"], gaps, strict=True)
        ),
        supports=tuple(Support(left_reach=left, right_reach=right) for left, right in reaches),
        loads=(given["truck"],),
        bottom=given["bars"],
        top=replace(given["bars"], face="top"),
        **given["floor"],
    )


def one_span_loaded(system: str = "SI") -> ContinuousBeam:
    """Give the same floor with rolls and truck on its first span only."""
    floor = paper_store(system)
    changes = {"spans.1.live": False, "spans.2.live": False}
    return fitted(floor, changes | {"loads.0.at": floor.spans[0].length / 2})[0]


def middle_span_empty(system: str = "SI") -> ContinuousBeam:
    """Give the same floor with its middle span empty and the truck on the first one."""
    floor = paper_store(system)
    return fitted(floor, walk(floor, system)[0].changes)[0]


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _calls(system) | _first_steps(system) | _last_steps(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found


def _calls(system: str) -> dict[str, bool]:
    whole, one = paper_store(system).solve(), one_span_loaded(system).solve()
    spans = whole.structure.places
    middles = [(a + b) / 2 for a, b in zip(spans, spans[1:], strict=False)]
    return {
        "over both inner supports the top is stretched": all(
            stretched(whole, "top", at) for at in spans[1:3]
        ),
        "in all spans the bottom is": all(stretched(whole, "bottom", at) for at in middles),
        "it is tight whatever the loads do": whole.verdict.key == TIGHT and not whole.range.gaps,
        "the empty span beside a loaded one is stretched on top": stretched(one, "top", middles[1])
        and not stretched(one, "bottom", middles[1]),
        "the last span bends like a smile again": stretched(one, "bottom", middles[2]),
    }


def _first_steps(system: str) -> dict[str, bool]:
    start, steps = paper_store(system).solve(), walk(paper_store(system), system)
    empty, sketch, through = (_after(system, step) for step in steps[:3])
    middle = start.structure.length / 2
    return {
        "the empty span cracks on top in its middle": _cracked(empty, "top", middle),
        "the full one is stretched at the bottom": stretched(start, "bottom", middle),
        "the top mat of the drawing laps there": not empty.range.gaps,
        "the sketch of the full floor holds all its cracks": all(
            crack.width is not None for crack in sketch.cracks
        ),
        "yet some load uncovers it": sketch.verdict.key == UNHELD
        and any(_no_bar(gap, middle) for gap in sketch.range.gaps),
        "bars run through leave nothing uncovered": not through.range.gaps,
        "and cost about a quarter more": 1.15 < through.steel_mass / start.steel_mass < 1.3,
    }


def _last_steps(system: str) -> dict[str, bool]:
    start, steps = paper_store(system).solve(), walk(paper_store(system), system)
    sunk, light = (_after(system, step) for step in steps[3:5])
    other = start.structure.places[2]
    shift = _over(light, "shifted") / _over(light, "elastic")
    return {
        "a sunk support gives moment to the other": _over(sunk, "elastic", 2)
        < 1.2 * _over(start, "elastic", 2),
        "and takes it off itself": _over(sunk, "elastic") > 0.8 * _over(start, "elastic"),
        "its neighbour's top bars are too short then": sunk.verdict.key == UNHELD
        and any(gap.face == "top" and gap.start > other for gap in sunk.range.gaps),
        "cracks take about a tenth from the support": 0.86 < shift < 0.94,
        "and the bars over it still give way": light.verdict.key == YIELDS
        and all(gap.face == "top" and gap.fault == TOO_FEW for gap in light.range.gaps),
    }


def _after(system: str, step):
    return fitted(paper_store(system), step.changes)[0].solve()


def stretched(outcome, face: str, at: float) -> bool:
    """Tell whether a face is stretched at a place [mm] under the present loads."""
    return any(z.face == face and z.start < at < z.end for z in outcome.tension)


def _cracked(outcome, face: str, at: float) -> bool:
    """Tell whether a face cracks near a place under the present loads."""
    near = 0.05 * outcome.structure.length
    parts = [part for z in outcome.tension if z.face == face for part in z.cracked]
    return any(a - near < at < b + near for a, b in parts)


def _no_bar(gap, middle: float) -> bool:
    return gap.face == "top" and gap.fault == NO_BAR and gap.start < middle < gap.end


def _over(outcome, which: str, support: int = 1) -> float:
    """Moment over a support [N mm], of those named ``"elastic"`` or ``"shifted"``."""
    at = outcome.structure.places[support]
    return float(np.interp(at, outcome.range.x, getattr(outcome.range, which)))
