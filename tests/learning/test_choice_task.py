"""The floor of the wash bay has good answers with and without fibres; the obvious ones fail."""

from functools import cache
from itertools import product

import pytest

from crackkit.learning.choice_task import wash_floor
from crackkit.structures.fields import fitted, input_at
from crackkit.units.quantities import INCH

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
SIZES = {"SI": ("8", "10", "12", "14", "16", "20"), "US": ("#3", "#4", "#5", "#6", "#7")}
SPACINGS = {
    "SI": (50, 60, 70, 75, 80, 90, 100, 110, 120, 125, 140, 150, 175, 200, 250, 300),
    "US": tuple(k * INCH for k in (2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12)),
}
COVERS = {"SI": (20.0, 30.0, 35.0, 40.0), "US": tuple(k * INCH for k in (0.75, 1.25, 1.5, 1.75))}
DOSES = ("none", "plastic_5", "steel_20", "steel_30", "steel_40")


@cache
def task(system="SI"):
    return wash_floor(system)


def assessed(system="SI", **changes):
    job = task(system)
    floor, _moved = fitted(job.structure, changes)
    outcome = floor.solve()
    return {check.key: check for check in job.assess(floor, outcome, system)}, outcome


def failing(checks) -> set[str]:
    return {key for key, check in checks.items() if not check.ok}


def mat(size, spacing, cover, fibres="none", **more):
    both = {"size": size, "spacing": float(spacing)}
    across = {"cross_size": size, "cross_spacing": float(spacing)}
    return both | across | {"cover": cover, "fibres": fibres} | more


def _fits(system, bars) -> bool:
    """Whether thick bars both ways leave room for that cover in this floor."""
    strip = fitted(task(system).structure, bars | {"cover": 10.0})[0]
    cover = input_at(strip, "cover")
    return bars["cover"] <= cover.high


@cache
def solutions(system) -> tuple[dict[str, list], int]:
    """Good answers by dose, and how many were tried in all."""
    found, tried = {dose: [] for dose in DOSES}, 0
    cases = product(DOSES, COVERS[system], SIZES[system], SPACINGS[system])
    for dose, cover, size, spacing in cases:
        tried += 1
        bars = mat(size, spacing, cover, dose)
        if _fits(system, bars) and not failing(assessed(system, **bars)[0]):
            found[dose].append((size, spacing, cover))
    return found, tried


@SYSTEMS
def test_there_are_several_good_answers_with_and_without_fibres(system):
    found, tried = solutions(system)
    plain = {(size, spacing) for size, spacing, _cover in found["none"]}
    mixed = {(d, size, s) for d in DOSES[1:] for size, s, _cover in found[d]}
    assert len(plain) >= 3 and len({size for size, _s in plain}) >= 2
    assert len(mixed) >= 5 and len({size for _d, size, _s in mixed}) >= 3
    assert len({dose for dose, _size, _s in mixed}) >= 2
    good = sum(len(rows) for rows in found.values())
    assert good < 0.1 * tried, "too easy: a blind guess would often do"


@SYSTEMS
def test_no_answer_passes_with_more_fibres_than_the_plant_can_mix(system):
    assert solutions(system)[0]["steel_40"] == []


@SYSTEMS
def test_without_fibres_only_the_lightest_that_hold_are_within_the_budget(system):
    """Tight: a mat that is a fifth heavier than the lightest good one is over it already."""
    job, found = task(system), solutions(system)[0]["none"]
    masses = [assessed(system, **mat(*row))[1].steel_mass for row in found]
    assert job.most_steel < 1.5 * min(masses)
    assert max(masses) > 0.95 * job.most_steel


@SYSTEMS
def test_the_floor_as_found_is_not_a_solution_though_it_does_crack(system):
    checks, outcome = assessed(system)
    assert {"width", "cover"} <= failing(checks)
    assert outcome.control.cracks and outcome.verdict.key == "too_wide"


def test_each_single_failure_names_itself():
    good = mat("14", 70, 40.0)
    assert failing(assessed(**good)[0]) == set()
    assert failing(assessed(**mat("14", 90, 40.0))[0]) == {"width"}
    assert failing(assessed(**mat("16", 75, 40.0))[0]) == {"steel"}
    assert failing(assessed(**mat("14", 70, 30.0))[0]) == {"cover"}
    assert failing(assessed(**mat("10", 75, 40.0, "steel_40"))[0]) == {"dose"}
    assert failing(assessed(**mat("12", 80, 40.0, "steel_20"))[0]) == {"steel"}
    assert failing(assessed(**mat("8", 250, 40.0, "steel_30"))[0]) >= {"hold", "enough", "mat"}
    assert "room" in failing(assessed(**mat("28", 50, 15.0))[0])


def test_bars_one_way_hold_nothing_the_other_way():
    checks, _outcome = assessed(size="14", spacing=70.0, cross_size="none", cover=40.0)
    assert failing(checks) == {"enough"}
    assert "across" in checks["enough"].text


def test_the_weaker_direction_decides_and_is_named():
    checks, _outcome = assessed(**(mat("14", 70, 40.0) | {"cross_spacing": 120.0}))
    assert failing(checks) == {"width"} and "the other bars" in checks["width"].text
    checks, _outcome = assessed(**(mat("14", 70, 40.0) | {"spacing": 120.0}))
    assert failing(checks) == {"width"} and "the main bars" in checks["width"].text


def test_a_mix_of_ones_own_numbers_is_not_accepted():
    checks, _outcome = assessed(**mat("8", 70, 40.0, "tested"), residual_1=9.0)
    assert "dose" in failing(checks)


def test_strength_is_counted_without_fibres():
    plain, _outcome = assessed(**mat("10", 100, 40.0))
    mixed, _outcome = assessed(**mat("10", 100, 40.0, "steel_30"))
    assert plain["hold"].measured == mixed["hold"].measured


def test_what_the_job_fixes_may_not_be_changed():
    checks, _outcome = assessed(**mat("14", 70, 40.0), depth=200.0)
    assert "givens" in failing(checks) and "Depth" in checks["givens"].text


@SYSTEMS
def test_the_goals_speak_of_both_budgets_the_limit_and_the_dose(system):
    goals = " ".join(task(system).goals(system))
    told = {
        "SI": ("72.0\u202fkg", "43.2\u202fkg", "0.10\u202fmm", "30 kg/m³"),
        "US": ("13.0\u202flb", "7.8\u202flb", "0.0039\u202fin", "51 lb/yd³"),
    }
    assert all(text in goals for text in told[system])


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    for fibres in ("none", "steel_20"):
        for spacing in (60.0, 300.0):
            checks, _outcome = assessed(system, spacing=spacing, fibres=fibres)
            assert all(c.measured and c.wanted and c.text for c in checks.values())
            words = " ".join(c.measured + c.wanted for k, c in checks.items() if k != "dose")
            assert ("mm" in words) == (system == "SI")


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path).applies for path in job.free)
    assert not set(job.free) & set(job.locked) and {"pull", "both_ways"} <= set(job.locked)
