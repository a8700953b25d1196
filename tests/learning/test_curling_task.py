"""The floor of the canteen has several good answers, and the obvious wrong ones fail."""

from dataclasses import replace
from functools import cache
from itertools import product

import numpy as np
import pytest

from crackkit.learning.curled_checks import CURED, MOST_PULL
from crackkit.learning.curled_worst import ALONE, PLACES, USED, worst_day
from crackkit.learning.curling_task import as_found, canteen_floor
from crackkit.structures.fields import input_at
from crackkit.units.quantities import FOOT, INCH
from tests.learning.sites import Site

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
THICK = {"SI": {"thickness": 150.0}, "US": {"thickness": 6 * INCH}}
THICKER = {"SI": {"thickness": 125.0}, "US": {"thickness": 5 * INCH}}
VERY_THICK = {"SI": {"thickness": 200.0}, "US": {"thickness": 9 * INCH}}
DOWELS = {"transfer": 0.8}


def _square(side):
    return {"length": side, "width": side}


SHORTER = {"SI": _square(3000.0), "US": _square(9 * FOOT)}
SHORT = {"SI": _square(2400.0), "US": _square(36 / 5 * FOOT)}
LONG = {"SI": _square(6000.0), "US": _square(18 * FOOT)}
MAT = {"SI": {"steel": "8", "spacing": 200.0}, "US": {"steel": "#3", "spacing": 7 * INCH}}
TOKEN = {"SI": {"steel": "6", "spacing": 200.0}, "US": {"steel": "#3", "spacing": 12 * INCH}}
HEAVY = {"SI": {"steel": "12", "spacing": 150.0}, "US": {"steel": "#4", "spacing": 6 * INCH}}
DEEP = {"SI": {"cover": 42.0}, "US": {"cover": 1.625 * INCH}}
SITE = Site(canteen_floor)
task, assessed, failing = SITE.task, SITE.assessed, SITE.failing


def ways(system) -> dict[str, dict]:
    """Five ways to do it that a site knows."""
    return {
        "thicker": THICK[system],
        "shorter panels": SHORT[system],
        "a mat near the top": MAT[system],
        "dowels and a little thicker": DOWELS | THICKER[system],
        "dowels and a little shorter": DOWELS | SHORTER[system],
    }


@SYSTEMS
def test_there_are_five_ways_and_they_differ(system):
    for name, way in ways(system).items():
        assert failing(system, way) == set(), name


@cache
def solutions(system) -> tuple[list, int]:
    """Good answers, and how many were tried in all."""
    panels = ({}, LONG[system], SHORTER[system])
    depths = ({}, THICKER[system], THICK[system])
    mats = ({}, MAT[system], TOKEN[system])
    tried = [a | b | c | d for a, b, c, d in product(panels, depths, mats, ({}, DOWELS))]
    return [each for each in tried if not failing(system, each)], len(tried)


@SYSTEMS
def test_a_search_finds_answers_of_each_kind_but_a_blind_guess_fails(system):
    found, tried = solutions(system)
    kinds = {frozenset(each) - {"width", "spacing"} for each in found}
    assert {"thickness"} in kinds and {"steel"} in kinds
    assert {"length", "thickness"} in kinds and {"length", "transfer"} in kinds
    assert {"thickness", "transfer"} in kinds
    assert len(found) < 0.4 * tried


@SYSTEMS
def test_the_floor_as_found_breaks_and_is_not_too_dear(system):
    checks, _outcome = assessed(system, {})
    assert failing(system, {}) == {"corner"}
    assert "wheel on its corner" in checks["corner"].measured
    assert "Shorter panels, a thicker slab" in checks["corner"].text


@SYSTEMS
def test_each_single_failure_names_itself(system):
    good = SHORT[system]
    assert failing(system, good | {"curing": 28.0}) == {"cure"}
    assert failing(system, good | {"curing": 1.0}) == {"cure"}
    assert failing(system, good | {"under": "open"}) == {"dry"}
    assert "dry" in failing(system, good | {"under": "damp"})
    assert failing(system, SHORTER[system] | {"transfer": 1.0}) == {"dowel"}
    assert failing(system, HEAVY[system]) == {"money"}
    assert "money" in failing(system, VERY_THICK[system])


@SYSTEMS
def test_what_helps_a_little_is_not_enough(system):
    for alone in (DOWELS, THICKER[system], SHORTER[system], {"under": "blotter"}):
        assert "corner" in failing(system, alone)


@SYSTEMS
def test_keeping_it_moist_for_long_does_not_save_a_corner(system):
    short, long = (assessed(system, {"curing": days})[0]["corner"] for days in CURED)
    assert not short.ok and not long.ok
    assert float(long.measured.split()[0]) >= float(short.measured.split()[0])


@SYSTEMS
def test_a_mat_that_is_too_light_or_too_deep_or_too_open_does_not_count(system):
    token = assessed(system, TOKEN[system])[0]["corner"]
    assert not token.ok
    assert {"SI": "few bars yield", "US": "too wide"}[system] in token.text
    assert "corner" in failing(system, MAT[system] | DEEP[system])
    wide = MAT[system] | {"spacing": 400.0}
    assert {"corner", "mat"} <= failing(system, wide)


@SYSTEMS
def test_advice_follows_what_breaks_it(system):
    dowels = assessed(system, DOWELS)[0]["corner"]
    assert "edge" in dowels.measured and "Dowels have done what they can" in dowels.text
    long = assessed(system, LONG[system] | {"transfer": 0.9})[0]["corner"]
    assert "own weight alone" in long.measured and "Its own weight breaks" in long.text


@SYSTEMS
def test_too_dear_a_floor_is_told_by_how_much_and_what_makes_it_so(system):
    job = task(system)
    for changes, culprit in ((HEAVY[system], "Bars"), (VERY_THICK[system], "Concrete")):
        checks, outcome = assessed(system, changes)
        off = job.budget.spent(outcome.structure) - job.budget.most()
        assert f"{off:.0f} too dear" in checks["money"].text
        assert culprit in checks["money"].text


def test_the_worst_day_is_the_worst_of_all_days_and_places_tried_one_by_one():
    for changes in ({}, DOWELS, THICK["SI"]):
        slab = replace(as_found("SI"), **changes)
        worst, wheel = worst_day(slab), slab.loads[0]
        for age, (along, across) in product(USED, PLACES.values()):
            load = replace(wheel, x=along * slab.length, y=across * slab.width)
            state = replace(slab, age=age, loads=(load,)).curled
            assert state.share <= worst.share * 1.02
        bare = replace(slab, loads=(replace(wheel, force=0.0),))
        young = (min(slab.curing + days, USED[0]) for days in ALONE)
        assert all(replace(bare, age=age).curled.share <= worst.share + 1e-9 for age in young)


def test_the_days_before_the_first_wheel_are_looked_at_closely_enough():
    for curing in (3.0, 7.0, 14.0):
        slab = replace(as_found("SI"), curing=curing, transfer=0.9)
        bare = replace(slab, loads=(replace(slab.loads[0], force=0.0),))
        ages = np.arange(curing + 2.0, USED[0], 2.0).tolist()
        found = max(replace(bare, age=age).curled.share for age in ages)
        assert found <= 1.01 * worst_day(slab).share


def test_the_days_lie_close_enough_to_find_the_peak():
    """Twice as many ages find no more than a hundredth on top."""
    slab = replace(as_found("SI"), **THICK["SI"])
    ages = np.geomspace(USED[0], USED[-1], 14)
    corner = (replace(slab.loads[0], x=0.0, y=0.0),)
    found = max(replace(slab, age=float(age), loads=corner).curled.share for age in ages)
    assert found <= 1.02 * worst_day(slab).share


def test_the_age_and_the_wheel_that_are_looked_at_do_not_matter():
    slab = as_found("SI")
    moved = replace(slab, age=900.0, loads=(replace(slab.loads[0], x=2000.0, y=1500.0),))
    assert worst_day(moved).share == worst_day(slab).share
    free = {"age": 900.0, "loads.0.x": 2000.0, "loads.0.y": 1500.0}
    assert failing("SI", THICK["SI"] | free) == set()


@SYSTEMS
def test_the_job_never_changes_whatever_is_chosen(system):
    for way in ways(system).values():
        assert "givens" not in assessed(system, way)[0]
    assert "givens" in failing(system, {"humidity": 0.9})
    assert "givens" in failing(system, {"loads.0.force": 0.0})


@SYSTEMS
def test_thick_bars_below_the_middle_hold_no_corner(system):
    thick = {"SI": "25", "US": "#8"}[system]
    half = canteen_floor(system).structure.thickness / 2
    checks, _outcome = assessed(system, HEAVY[system] | {"steel": thick, "cover": half})
    assert not checks["corner"].ok
    assert "too deep" in checks["corner"].text


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    for way in (*ways(system).values(), {}, HEAVY[system], {"under": "open", "curing": 1.0}):
        checks, _outcome = assessed(system, way)
        assert all(c.measured and c.wanted and c.text for c in checks.values())
        words = " ".join(c.measured + c.wanted + c.text for c in checks.values())
        assert ("\u202fmm" in words) == (system == "SI")
        assert ("\u202fin" in words) == (system == "US")


@SYSTEMS
def test_the_goals_speak_of_limits_and_budget(system):
    goals = " ".join(task(system).goals(system))
    told = {"SI": ("0.40\u202fmm", "5000"), "US": ("0.0161\u202fin", "4700")}[system]
    assert all(text in goals for text in (*told, f"{MOST_PULL}", "28\u202fd", "3\u202fd"))


@SYSTEMS
def test_the_cheaper_good_answer_scores_better(system):
    job, found = task(system), ways(system)
    scores = {}
    for name in ("shorter panels", "a mat near the top"):
        checks, outcome = assessed(system, found[name])
        scores[name] = job.score(checks.values(), outcome)
    assert scores["shorter panels"] > scores["a mat near the top"] > 1.0


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path) for path in job.free)
    assert not set(job.free) & set(job.locked)
    assert {"humidity", "shrinks", "loads.0.force", "strength", "ground"} <= set(job.locked)
