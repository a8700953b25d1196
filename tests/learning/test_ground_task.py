"""The floor of the boat store has several good answers, and the obvious wrong ones fail."""

from functools import cache
from itertools import product

import pytest

from crackkit.learning.ground_task import store_floor
from crackkit.structures.fields import fitted, input_at
from crackkit.units.quantities import INCH

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
SIZES = {"SI": ("none", "8", "10", "12", "16"), "US": ("none", "#3", "#4", "#5", "#6")}
SPACINGS = {
    "SI": (75.0, 100.0, 125.0, 150.0, 200.0, 300.0),
    "US": tuple(k * INCH for k in (4, 5, 6, 8, 9, 10, 12, 16)),
}
GOOD = {"SI": ("10", 100.0), "US": ("#4", 8 * INCH)}
HEAVY = {"SI": ("16", 100.0), "US": ("#5", 6 * INCH)}
EVERY = 5000.0


@cache
def task(system="SI"):
    return store_floor(system)


@cache
def _assessed(system, changes):
    job = task(system)
    floor, _moved = fitted(job.structure, dict(changes))
    outcome = floor.solve()
    return {check.key: check for check in job.assess(floor, outcome, system)}, outcome


def assessed(system, steel=None, **changes):
    name, spacing = steel or GOOD[system]
    usual = {"steel": name, "place": "top"}
    usual |= {} if name == "none" else {"spacing": spacing}
    return _assessed(system, tuple((usual | changes).items()))


def failing(system="SI", steel=None, **changes) -> set[str]:
    checks, _outcome = assessed(system, steel, **changes)
    return {key for key, check in checks.items() if not check.ok}


@cache
def solutions(system) -> tuple[list, int]:
    """Good answers, and how many were tried in all."""
    found, tried = [], 0
    for size, spacing in product(SIZES[system], SPACINGS[system]):
        for jointed, curing, place in product((False, True), (3.0, 7.0), ("top", "ground")):
            tried += 1
            more = {"jointed": jointed, "curing": curing, "place": place, "cut_age": 1.0}
            more |= {"joint_every": EVERY} if jointed else {}
            if not failing(system, (size, spacing), **more):
                found.append((size, spacing, jointed, curing, place))
    return found, tried


@SYSTEMS
def test_there_are_several_good_answers_but_a_blind_guess_fails(system):
    found, tried = solutions(system)
    assert len({(size, spacing) for size, spacing, *_more in found}) >= 3
    assert len({size for size, *_more in found}) >= 3
    assert {jointed for _size, _spacing, jointed, *_more in found} == {False, True}
    assert len(found) < 0.15 * tried


@SYSTEMS
def test_all_good_answers_have_bars_that_lie_in_the_floor(system):
    for size, _spacing, _jointed, _curing, place in solutions(system)[0]:
        assert size != "none" and place != "ground"


@SYSTEMS
def test_the_floor_as_found_cracks_too_wide_and_its_mat_lies_on_the_ground(system):
    job = task(system)
    checks = job.assess(job.structure, job.structure.solve(), system)
    assert {check.key for check in checks if not check.ok} == {"width", "place"}
    assert "givens" not in {check.key for check in checks}


@SYSTEMS
def test_each_single_failure_names_itself(system):
    assert failing(system) == set()
    assert failing(system, place="middle") == set()
    assert failing(system, place="ground") == {"width", "place"}
    assert failing(system, curing=14.0) == {"cure"}
    assert failing(system, steel=HEAVY[system]) == {"steel"}
    late = {"jointed": True, "joint_every": EVERY, "cut_age": 14.0}
    assert failing(system, **late) == {"saw"}


@SYSTEMS
def test_joints_alone_gather_the_movement_in_one_of_them(system):
    sawn = {"jointed": True, "joint_every": EVERY, "cut_age": 1.0}
    checks, outcome = assessed(system, ("none", 0.0), **sawn)
    assert {key for key, check in checks.items() if not check.ok} == {"joint"}
    assert "gathers in one joint" in checks["joint"].text
    assert [joint.opening > 0.1 for joint in outcome.ground.joints].count(True) == 1


@SYSTEMS
def test_a_slick_base_saves_nothing_between_walls(system):
    for base in ("two_sheets", "gravel", "stabilised"):
        assert failing(system, ("none", 0.0), base=base) == {"width"}


@SYSTEMS
def test_the_job_never_changes_whatever_is_chosen(system):
    for size, jointed in product(SIZES[system], (False, True)):
        assert "givens" not in assessed(system, (size, SPACINGS[system][2]), jointed=jointed)[0]


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    for size, jointed in product(SIZES[system], (False, True)):
        checks, _outcome = assessed(system, (size, SPACINGS[system][2]), jointed=jointed)
        assert all(c.measured and c.wanted and c.text for c in checks.values())
        words = " ".join(c.measured + c.wanted + c.text for c in checks.values())
        assert ("mm" in words) == (system == "SI")


@SYSTEMS
def test_the_goals_speak_of_limits_and_budget(system):
    goals = " ".join(task(system).goals(system))
    told = {
        "SI": ("175.0\u202fkg", "0.40\u202fmm", "1.00\u202fmm"),
        "US": ("275.0\u202flb", "0.0161\u202fin", "0.0400\u202fin"),
    }
    assert all(text in goals for text in (*told[system], "7\u202fd"))


def test_widths_that_cannot_be_counted_are_not_taken_for_fine():
    checks, outcome = assessed("US", ("#6", 4 * INCH))
    assert not outcome.ground.complete and outcome.verdict.key == "too_wide"
    assert not checks["width"].ok and checks["width"].measured == "not known"


def test_a_lighter_good_answer_scores_better():
    job = task()
    light, heavy = (assessed("SI", steel) for steel in (("8", 75.0), ("12", 125.0)))
    scores = [job.score(checks.values(), outcome) for checks, outcome in (light, heavy)]
    assert scores[0] > scores[1] > 1.0


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path) for path in job.free)
    assert not set(job.free) & set(job.locked)
    assert {"age", "left", "right", "through", "humidity"} <= set(job.locked)


def test_what_the_job_fixes_may_not_be_changed():
    assert "givens" in failing("SI", left=0.0, right=0.0)
