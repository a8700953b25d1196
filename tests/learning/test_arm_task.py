"""The rain roof has several good answers, and each obvious wrong one fails for its own reason."""

from functools import cache
from itertools import product

import pytest

from crackkit.learning.arm_task import rain_roof
from crackkit.structures.fields import fitted, input_at

CASES = list(product(("ACI", "EN"), ("SI", "US")))
SIZES = {"SI": ("8", "10", "12", "14", "16", "20"), "US": ("#3", "#4", "#5", "#6", "#7")}
SPACINGS = {
    "SI": (75.0, 90.0, 100.0, 110.0, 120.0, 125.0, 140.0, 150.0, 175.0, 200.0, 250.0, 300.0),
    "US": tuple(k * 12.7 for k in (6, 7, 8, 9, 10, 11, 12, 14, 15, 16, 18, 20, 24)),
}
COVER = {"ACI": 38.1, "EN": 35.0}


@cache
def task(code="EN", system="SI"):
    return rain_roof(system, code)


def assessed(code="EN", system="SI", **changes):
    job = task(code, system)
    wanted = {path.replace("__", "."): value for path, value in changes.items()}
    arm, _moved = fitted(job.structure, wanted)
    outcome = arm.solve()
    return {check.key: check for check in job.assess(arm, outcome, system)}, outcome


def failing(checks) -> set[str]:
    return {key for key, check in checks.items() if not check.ok}


def laid(size, spacing, hooked=True, behind=380.0, **more):
    named = {"top__size": size, "top__spacing": spacing, "top__hooked": hooked}
    return named | {"top__behind": behind} | more


@cache
def solutions(code, system) -> tuple:
    found = []
    for size, spacing, hooked in product(SIZES[system], SPACINGS[system], (False, True)):
        bars = laid(size, spacing, hooked, top__cover=COVER[code])
        if not failing(assessed(code, system, **bars)[0]):
            found.append((size, spacing, hooked))
    return tuple(found)


@pytest.mark.parametrize(("code", "system"), CASES)
def test_there_are_several_good_answers_hooked_and_straight(code, system):
    found = solutions(code, system)
    assert len({size for size, _s, _h in found}) >= 2
    assert {hooked for _size, _s, hooked in found} == {False, True}
    every = 2 * len(SIZES[system]) * len(SPACINGS[system])
    assert 4 <= len(found) < every / 4, "too easy: a blind guess would often do"


@pytest.mark.parametrize(("code", "system"), [("EN", "SI"), ("ACI", "US")])
def test_in_the_usual_pairs_three_sizes_do(code, system):
    assert len({size for size, _s, _h in solutions(code, system)}) >= 3


@pytest.mark.parametrize(("code", "system"), CASES)
def test_the_roof_as_found_is_not_a_solution(code, system):
    checks, outcome = assessed(code, system)
    assert {"hold", "anchored", "mat"} <= failing(checks)
    assert outcome.verdict.key == "yields"


def test_each_single_failure_names_itself():
    good = laid("12", 140.0)
    assert failing(assessed(**good)[0]) == set()
    assert failing(assessed(**laid("12", 100.0))[0]) == {"steel"}
    assert failing(assessed(**laid("12", 140.0, top__cover=20.0))[0]) == {"cover"}
    assert failing(assessed(**laid("10", 90.0, behind=330.0, hooked=False))[0]) == {"anchored"}
    assert failing(assessed(**laid("12", 172.0))[0]) == {"hold"}
    assert failing(assessed("ACI", **laid("16", 225.0, top__cover=38.1))[0]) == {"width"}


def test_bars_far_apart_are_told_to_lie_closer():
    checks, _outcome = assessed(**laid("16", 280.0))
    assert "mat" in failing(checks) and "closer" in checks["mat"].text


def test_bars_side_by_side_do_not_let_the_stones_pass():
    checks, _outcome = assessed("ACI", **laid("32", 60.0))
    assert "room" in failing(checks)


def test_straight_thick_bars_slip_whatever_their_weight():
    checks, _outcome = assessed(**laid("16", 250.0, hooked=False))
    assert "anchored" in failing(checks)
    assert "hook" in checks["anchored"].text and "slip" in checks["anchored"].text
    assert "length" in checks["hold"].text


def test_bars_at_the_bottom_hold_nothing():
    below = {"top__laid": False, "bottom__laid": True, "bottom__size": "12"}
    checks, outcome = assessed(**below, bottom__spacing=140.0)
    assert {"hold", "anchored"} <= failing(checks)
    assert checks["hold"].measured == "nothing holds it"
    assert outcome.movement.falls_at is not None or not outcome.cracks


def test_no_bars_at_all_hold_nothing_even_before_it_cracks():
    checks, outcome = assessed(top__laid=False)
    assert {"hold", "anchored"} <= failing(checks)
    assert "unheld" in {c.key for c in outcome.cautions} | {outcome.verdict.key}


def test_bars_below_as_well_are_steel_for_nothing():
    one, alone = assessed(**laid("12", 150.0))
    two, both = assessed(**laid("12", 150.0, bottom__laid=True, bottom__size="10"))
    assert not failing(one) and failing(two) == {"steel"}
    assert both.steel_mass > alone.steel_mass


def test_what_the_job_fixes_may_not_be_changed():
    checks, _outcome = assessed(**laid("12", 140.0), overhang=2000.0)
    assert "givens" in failing(checks) and "Overhang" in checks["givens"].text


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_goals_speak_of_anchorage_limit_and_budget(system):
    goals = " ".join(task("EN", system).goals(system))
    assert "anchored" in goals and "mat" in goals
    assert ("20.5\u202fkg" in goals and "0.30\u202fmm" in goals) == (system == "SI")


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path).applies for path in job.free)
    assert not set(job.free) & set(job.locked) and "overhang" in job.locked
