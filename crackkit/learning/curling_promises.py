"""What the lesson on slabs that curl tells its readers, held against the mechanics."""

from dataclasses import replace

import numpy as np

from crackkit.learning.curling import (
    DEEP,
    LATER,
    LONG_CURE,
    MAT,
    at_corner,
    broken_panel,
    panel,
    pull,
    walk,
    wet_panel,
)
from crackkit.mechanics.drag import joint_spacing_by_thickness
from crackkit.mechanics.plate_curl import lifted_length, lifted_rise
from crackkit.structures.curled_slab import CurledSlab
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD
from crackkit.units.quantities import FOOT, INCH

EARLY = (5.0, 7.0, 10.0, 14.0, 21.0, 28.0, 35.0)  # days before the first wheel
USED = (*EARLY, 42.0, 50.0, 60.0, 90.0, LATER, 365.0, 1095.0)  # days


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _rolling(system) | _helping(system) | _days(system) | _site(system)
        found |= {f"{system}: {text}": bool(kept) for text, kept in told.items()}
    return found | _strip()


def _walked(system: str) -> list:
    return [fitted(broken_panel(system), step.changes)[0].solve() for step in walk(system)]


def _rolling(system: str) -> dict[str, bool]:
    """The wheel on the wet floor; then in the middle, at the edge, in the corner of the dry one."""
    wet, dry, edge, corner = _walked(system)[:4]
    return {
        "wet it lies flat": wet.curled.open_share == 0.0 and wet.curled.corner_rise < 0.01,
        "its bottom is stretched, below the wheel": wet.curled.bottom.peak > wet.curled.top.peak
        and _away(wet) < 100.0,
        "to three quarters of what it bears": 0.7 < wet.curled.share < 0.8,
        "dry its corners stand up": dry.curled.corner_rise > 3.5,
        "most of it has air below": dry.curled.open_share > 0.55,
        "its top is stretched": dry.curled.top.peak > 10 * max(dry.curled.bottom.peak, 0.01),
        "the edge goes down below the wheel": _lift_at_wheel(edge) < _lift_there(dry, edge),
        "its top is stretched harder": edge.curled.top.peak > 1.1 * dry.curled.top.peak,
        "away from the wheel": _away(edge) > 1000.0,
        "an edge holds yet": edge.verdict.key == UNCRACKED and edge.curled.share < 0.95,
        "the corner breaks": corner.verdict.key == UNHELD and corner.curled.share > 1.03,
        "from the top, around the corner": corner.curled.line.face == "top"
        and corner.curled.line.corner,
        "most stretched well away from the wheel": _away(corner) > 1000.0,
        "there is air below it, and below the wheel": _lift_at_wheel(corner) > 0.0
        and corner.curled.open[0, 0],
    }


def _away(outcome) -> float:
    """How far from the wheel the face that is stretched most is so [mm]."""
    state = outcome.curled
    face = max(state.top, state.bottom, key=lambda each: each.peak)
    return float(np.hypot(face.at[0] - state.patches[0].x, face.at[1] - state.patches[0].y))


def _lift_at_wheel(outcome) -> float:
    return _lift_there(outcome, outcome)


def _lift_there(outcome, rolled) -> float:
    """How high one slab stands where the wheel of another stands [mm]."""
    state, wheel = outcome.curled, rolled.curled.patches[0]
    row, column = np.abs(state.y - wheel.y).argmin(), np.abs(state.x - wheel.x).argmin()
    return float(state.lift[row, column])


def _helping(system: str) -> dict[str, bool]:
    """What helps the corner: the second half of the walk."""
    corner, thick, short, dowels, mat, cured, opened = _walked(system)[3:]
    now = corner.curled
    return {
        "thicker: a fifth to a quarter less": _less(thick, corner, 0.19, 0.26)
        and thick.verdict.key == UNCRACKED,
        "but as high": abs(thick.curled.corner_rise / now.corner_rise - 1) < 0.05,
        "half the panel: a quarter to a good third less": _less(short, corner, 0.25, 0.37),
        "and only a little lower": 0.8 < short.curled.corner_rise / now.corner_rise < 1.0,
        "dowels: a quarter less, or a little more": _less(dowels, corner, 0.24, 0.29)
        and dowels.verdict.key == UNCRACKED,
        "and it still stands up": dowels.curled.corner_rise > 0.95 * now.corner_rise,
        "a mat changes nothing about curling": abs(mat.curled.share / now.share - 1) < 1e-9,
        "but keeps the crack fine": mat.verdict.key == TIGHT,
        "curing for longer: pulled harder": cured.curled.share > 1.1 * now.share,
        "drying both ways it stays flat": opened.curled.corner_rise < 0.01
        and opened.curled.open_share == 0.0,
        "and is pulled less than half as hard": _less(opened, corner, 0.5, 1.0),
    }


def _less(then, now, least: float, most: float) -> bool:
    return least < 1.0 - then.curled.share / now.curled.share < most


def _days(system: str) -> dict[str, bool]:
    """What the lesson says of days: when it is worst, and when the wheel may come."""
    bare, corner = _unloaded(panel(system)), at_corner(panel(system), system)
    state = bare.curled
    worst = float(state.days[state.rises.argmax()])
    by_age = {age: pull(replace(corner, age=age)) for age in USED}
    cured = {
        age: pull(replace(corner, age=age, curing=LONG_CURE)) for age in USED if age > LONG_CURE
    }
    first, last = max(by_age, key=by_age.get), max(cured, key=cured.get)
    damp = [replace(corner, under="damp", age=age).curled.corner_rise for age in (42.0, 1095.0)]
    sealed = replace(corner, age=LATER).curled.corner_rise
    return {
        "its corners are highest after about a month": 20.0 < worst < 40.0,
        "half a year later they lie down again": np.interp(LATER, state.days, state.rises)
        < state.rises.max() / 3,
        "no day before the first wheel breaks it": all(
            pull(replace(bare, age=age)) < 0.95 for age in EARLY
        ),
        "it breaks from the second week to the seventh": by_age[5.0] < 1.0 < by_age[14.0]
        and by_age[50.0] > 1.0 > by_age[60.0],
        "after three months the corner holds": by_age[90.0] < 0.85,
        "and always after": max(by_age[age] for age in (LATER, 365.0, 1095.0)) < 0.85,
        "cured longer its worst comes a month later": 20.0 < last - first < 40.0,
        "and is no smaller": cured[last] > by_age[first],
        "cured for a day it is pulled a little less by then": 0.8
        < pull(replace(corner, curing=1.0)) / by_age[42.0]
        < 0.95,
        "on damp ground it stays up, three quarters or more": damp[1] > 0.74 * damp[0],
        "several times as high as on a sheet": replace(
            corner, under="damp", age=LATER
        ).curled.corner_rise
        > 3 * sealed,
    }


def _unloaded(slab: CurledSlab) -> CurledSlab:
    return replace(slab, loads=(replace(slab.loads[0], force=0.0),))


def _site(system: str) -> dict[str, bool]:
    """What the lesson says of work on site."""
    slab, corner = panel(system), at_corner(panel(system), system)
    wetter = replace(_unloaded(slab), shrinks=8e-4)
    near = replace(corner, **MAT[system]).solve()
    middle = replace(corner, **(MAT[system] | {"cover": DEEP[system]})).solve()
    colder = pull(replace(corner, warmer=-10.0)) / pull(corner)
    crossing = MAT[system]["cover"] + near.structure.bar.diameter
    return {
        "a wet mix breaks it in its first month, without a wheel": max(
            pull(replace(wetter, age=age)) for age in EARLY
        )
        > 1.1,
        "its joints are 45 thicknesses apart": abs(slab.length / slab.thickness - 45.0) < 0.1,
        "by any rule of thumb that is too far": slab.length
        > 1.2 * joint_spacing_by_thickness(slab.thickness, "low_slump"),
        "a dry layer: a fifth less": 0.18
        < 1 - pull(replace(corner, under="blotter")) / pull(corner)
        < 0.23,
        "damp ground is no better than a sheet": pull(replace(corner, under="damp")) > pull(corner),
        "near the top is about 40 mm to where bars cross": 0.85 < crossing / 40.0 < 1.05,
        "in the middle the crack is nearly twice to over three times as wide": 1.8
        < middle.verdict.width / near.verdict.width
        < 3.6
        and middle.verdict.key == TOO_WIDE,
        "a colder top adds a third or more": 1.33 < colder < 1.45,
        "wet, the corner is stretched from below": _wet_from_below(system),
    }


def _wet_from_below(system: str) -> bool:
    state = at_corner(wet_panel(system), system).curled
    return state.bottom.peak > state.top.peak


def _strip() -> dict[str, bool]:
    """The lesson's example of a strip on a rigid base: 150 mm, 25 GPa, 0.3 ‰ more on top."""
    found = {}
    for name, thick, far, high in (
        ("150 mm", 150.0, 2800.0, 3.9),
        ("6 in", 6 * INCH, 9 * FOOT, 0.15 * INCH),
    ):
        rigidity, curvature, weight = 25e3 * thick**3 / 12, 3e-4 / thick, 24e-6 * thick
        length = float(lifted_length(rigidity, curvature, weight))
        rise = float(lifted_rise(rigidity, curvature, weight))
        found[f"a strip of {name} lifts so far"] = abs(length / far - 1) < 0.04
        found[f"a strip of {name} lifts so high"] = abs(rise / high - 1) < 0.04
    return found
