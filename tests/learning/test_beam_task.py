"""The wash bay has several good answers, and each obvious wrong one fails for its own reason."""

from functools import cache
from itertools import product

import pytest

from crackkit.learning.beam_task import wash_bay
from crackkit.structures.fields import fitted

CASES = list(product(("ACI", "EN"), ("SI", "US")))
SIZES = {
    "SI": ("12", "14", "16", "20", "25", "28", "32"),
    "US": tuple(f"#{k}" for k in range(4, 11)),
}


@cache
def task(code="ACI", system="SI"):
    return wash_bay(system, code)


def assessed(code="ACI", system="SI", **changes):
    job = task(code, system)
    beam, _moved = fitted(
        job.structure, {path.replace("__", "."): v for path, v in changes.items()}
    )
    outcome = beam.solve()
    return {check.key: check for check in job.assess(beam, outcome, system)}, outcome


def failing(checks) -> set[str]:
    return {key for key, check in checks.items() if not check.ok}


def cover(system) -> float:
    return 1.75 * 25.4 if system == "US" else 45.0


@cache
def solutions(code, system) -> tuple:
    found = []
    for size, number in product(SIZES[system], range(2, 9)):
        checks, outcome = assessed(
            code, system, bottom__size=size, bottom__number=number, bottom__cover=cover(system)
        )
        if not failing(checks):
            found.append((size, number, round(outcome.steel_mass, 1)))
    return tuple(found)


@pytest.mark.parametrize(("code", "system"), CASES)
def test_there_are_good_answers_with_at_least_three_sizes_of_bar(code, system):
    assert len({size for size, _n, _m in solutions(code, system)}) >= 3
    every = len(SIZES[system]) * 7
    assert len(solutions(code, system)) < every / 4, "too easy: a blind guess would often do"


@pytest.mark.parametrize(("code", "system"), CASES)
def test_the_beam_as_found_is_not_a_solution(code, system):
    checks, _outcome = assessed(code, system)
    assert "width" in failing(checks)


@pytest.mark.parametrize(("code", "system"), CASES)
def test_two_thick_bars_within_the_budget_leave_the_cracks_too_wide(code, system):
    size = "28" if system == "SI" else "#9"
    checks, _outcome = assessed(
        code, system, bottom__size=size, bottom__number=2, bottom__cover=45.0
    )
    assert failing(checks) == {"width"}
    assert "more bars share the pull" in checks["width"].text


def test_bars_on_top_hold_nothing():
    checks, _outcome = assessed(bottom__number=0, top__size="20", top__number=4)
    assert {"hold", "width"} <= failing(checks)
    assert "where it is stretched" in checks["hold"].text


def test_no_bars_at_all_hold_nothing_and_raise_nothing():
    checks, _outcome = assessed(bottom__number=0, top__number=0)
    assert failing(checks) >= {"hold", "width"}


def test_many_thin_bars_do_not_let_the_stones_pass():
    checks, _outcome = assessed(bottom__size="14", bottom__number=8)
    assert "room" in failing(checks) and "stones" in checks["room"].text


def test_bars_wider_than_the_beam_are_said_not_to_fit():
    checks, _outcome = assessed(bottom__size="32", bottom__number=12)
    assert checks["room"].measured == "they do not fit"


def test_plenty_of_thick_bars_are_too_heavy():
    checks, _outcome = assessed(bottom__size="32", bottom__number=3, bottom__cover=45.0)
    assert failing(checks) == {"steel"} and "too heavy" in checks["steel"].text


def test_thin_cover_keeps_cracks_fine_but_lets_the_steel_rust():
    thin, _o = assessed(bottom__size="16", bottom__number=6, bottom__cover=20.0)
    assert failing(thin) == {"cover"} and "rusts" in thin["cover"].text


def test_strength_to_spare_is_asked_for_even_where_cracks_are_fine():
    checks, outcome = assessed("EN", bottom__size="14", bottom__number=6, bottom__cover=25.0)
    assert outcome.verdict.key != "yields"
    assert "hold" in failing(checks) and "one more bar" in checks["hold"].text


def test_what_the_job_fixes_may_not_be_changed():
    checks, _outcome = assessed(span=5000.0, bottom__size="16", bottom__number=6)
    assert "givens" in failing(checks) and "Span" in checks["givens"].text
    assert "givens" not in assessed()[0]


def test_how_far_off_is_told_in_the_readers_units():
    checks, _outcome = assessed("ACI", "US")
    assert checks["steel"].wanted == "205.0\u202flb or less"
    assert "in too wide" in checks["width"].text and "in or less" in checks["width"].wanted


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_goals_name_limit_and_budget(system):
    goals = " ".join(task("ACI", system).goals(system))
    assert ("0.30\u202fmm" in goals and "93.0\u202fkg" in goals) == (system == "SI")


def test_a_lighter_solution_scores_higher_and_any_solution_beats_any_failure():
    job = task()
    checks, light = assessed(bottom__size="16", bottom__number=6)
    assert not failing(checks)
    heavier, heavy = assessed(bottom__size="25", bottom__number=3, bottom__cover=45.0)
    assert not failing(heavier)
    wrong, poor = assessed()
    scores = [
        job.score(wrong.values(), poor),
        job.score(heavier.values(), heavy),
        job.score(checks.values(), light),
    ]
    assert scores == sorted(scores) and scores[0] < 1.0 <= scores[1] < scores[2]


def test_everything_not_free_is_locked():
    job = task()
    assert "span" in job.locked and not set(job.free) & set(job.locked)
