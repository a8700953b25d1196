"""What the lesson on slabs on the ground tells its readers, held against the mechanics."""

from dataclasses import replace

from crackkit.learning.ground import (
    EARLY,
    LATE,
    LIGHT,
    LONG_CURE,
    SHORT_CURE,
    barred_slab,
    first_day,
    slab,
    walk,
    walled_slab,
    widest,
    widest_joint,
)
from crackkit.mechanics.drag import joint_spacing_by_thickness
from crackkit.mechanics.evaporation import evaporation_rate, plastic_cracks_threaten
from crackkit.structures.fields import fitted
from crackkit.structures.ground_slab import GroundSlab
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _walk_promises(system) | _other_promises(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found | _weather_promises()


def _after(system: str, changes: dict):
    return fitted(slab(system), changes)[0].solve()


def _walk_promises(system: str) -> dict[str, bool]:
    free, walls, sheets, early, late, bars, lost, tied, mat, cured = (
        _after(system, step.changes) for step in walk(system)
    )
    once = walls.ground.wild[0]
    return {
        "a free floor gets shorter": free.movement.largest < -5.0,
        "and does not crack": free.verdict.key == UNCRACKED and free.ground.first is None,
        "its pull stays low": (free.ground.stress / free.ground.strength).max() < 0.4,
        "between walls it cracks": walls.verdict.key == TOO_WIDE and len(walls.ground.wild) == 1,
        "all movement gathers in the crack": abs(once.width + free.movement.largest) < 0.05,
        "sheets change no day": abs(sheets.ground.first / walls.ground.first - 1) < 0.02,
        "and make nothing finer": widest(walls) <= widest(sheets) < 1.1 * widest(walls),
        "cut early it cracks at a joint": not early.ground.wild and early.ground.first is None,
        "only one joint opens": [j.opening > 0.1 for j in early.ground.joints].count(True) == 1,
        "and wide": widest_joint(early) > 0.95 * widest(walls),
        "cut late it has cracked already": EARLY < late.ground.first < LATE,
        "and the joints stay shut": widest_joint(late) == 0.0 and len(late.ground.wild) == 1,
        "many cracks": len(bars.ground.wild) >= 15 and bars.ground.complete,
        "all fine": bars.verdict.key == TIGHT and widest(bars) < 0.05 * widest(walls),
        "bars do not delay the first crack": abs(bars.ground.first - walls.ground.first) < 0.5,
        "bars on the ground hold nothing": abs(widest(lost) / widest(walls) - 1) < 1e-9,
        "though they were paid for": lost.steel_mass == bars.steel_mass > 0.0,
        "held at its sides it cracks along": len(tied.across.wild) == 1
        and tied.verdict.key == TOO_WIDE
        and not tied.across.steel,
        "bars across hold that too": mat.verdict.key == TIGHT and len(mat.across.wild) > 1,
        "for twice the steel": mat.steel_mass == 2 * tied.steel_mass,
        "with free sides none comes along": not bars.across.cracks,
        "cured longer it cracks weeks later": cured.ground.first
        > 3 * first_day(system, SHORT_CURE),
        "and the crack is narrower": widest(cured) < 0.85 * widest(walls),
    }


def _other_promises(system: str) -> dict[str, bool]:
    walled, free = walled_slab(system), slab(system)
    jointed, told = replace(free, jointed=True), {"SI": 110e3, "US": 70e3}[system]
    return (
        _days_told(system)
        | _bars_promises(system)
        | {
            "with free ends and joints nothing cracks at all": not jointed.solve().cracks,
            "the ground alone would need 70 to 110 m": abs(_longest(free) / told - 1) < 0.05,
            "joints follow the rule of thumb": 24.0 * free.thickness
            < free.length / jointed.panels
            < joint_spacing_by_thickness(free.thickness, "low_slump"),
            "a crack as wide as a finger": 8.0 < widest(walled.solve()) < 20.0,
        }
    )


def _longest(floor: GroundSlab) -> float:
    """Length that the base alone could crack [mm], from the working."""
    return next(step.value for step in floor.solve().working if step.symbol == "L_max")


def _days_told(system: str) -> dict[str, bool]:
    """What the lesson says of the day of the first crack, which nobody knows for sure."""
    walled = walled_slab(system)
    by_model = {model: replace(walled, model=model).solve() for model in ("ACI", "EN", "MC2010")}
    days = [outcome.ground.first for outcome in by_model.values()]
    ratio = widest(by_model["EN"]) / widest(by_model["ACI"])
    places = {round(replace(walled, seed=k).ground.wild[0].at, -3) for k in range(1, 7)}
    return {
        "from about one week to seven": 7.0 < min(days) < 10.0 and 28.0 < max(days) < 49.0,
        "all models find one crack": all(len(o.ground.wild) == 1 for o in by_model.values()),
        "by EN 1992 it opens a third less": 0.6 < ratio < 0.72,
        "other concrete cracks elsewhere": len(places) >= 4,
        "cured for a day it lasts less than a week": first_day(system, SHORT_CURE) < 7.0,
        "cured for 28 days about five": 33.0 < first_day(system, LONG_CURE) < 38.0,
    }


def _bars_promises(system: str) -> dict[str, bool]:
    """What the lesson says of light mats, and of bars in the middle."""
    bare = walled_slab(system)
    light = replace(bare, **LIGHT[system])
    barred = barred_slab(system)
    middle = replace(barred, place="middle")
    return {
        "a light mat leaves one crack": len(light.ground.wild) == 1,
        "up to a third narrower": 0.67 < widest(light.solve()) / widest(bare.solve()) < 0.9,
        "enough bars are nearly three times as many": 2.6 < barred.area / light.area < 3.0,
        "in the middle bars hold a straight pull as well": widest(middle.solve())
        == widest(barred.solve()),
    }


def _weather_promises() -> dict[str, bool]:
    """What the lesson says of the hour in which the floor is cast."""
    hot = float(evaporation_rate(30.0, 30.0, 0.4, 20.0))
    mild = float(evaporation_rate(20.0, 20.0, 0.6, 5.0))
    return {
        "a hot, dry, windy day is past the threshold": bool(plastic_cracks_threaten(hot)),
        "it loses about 1.1 kg an hour": 1.05 < hot < 1.25,
        "a mild, calm day is far below": mild < 0.25,
    }
