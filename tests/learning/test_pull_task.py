"""The tie of the salt shed has several good answers, and the obvious wrong ones fail."""

from functools import cache
from itertools import product

import pytest

from crackkit.learning.pull_task import shed_tie
from crackkit.structures.fields import InputError, fitted, input_at
from crackkit.units.quantities import INCH

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
SIZES = {
    "SI": ("6", "8", "10", "12", "14", "16", "20", "25", "28", "32"),
    "US": ("#3", "#4", "#5", "#6", "#7", "#8", "#9", "#10"),
}
NUMBERS = (0, 1, 2, 4, 6, 8)
COVERS = {
    "SI": tuple(float(c) for c in range(20, 75, 5)),
    "US": tuple(k * INCH for k in (0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3)),
}
COVER = {"SI": 55.0, "US": 1.5 * INCH}


@cache
def task(system="SI"):
    return shed_tie(system)


@cache
def assessed(system, number, size, cover):
    job = task(system)
    tie, _moved = fitted(job.structure, {"number": number, "size": size, "cover": cover})
    outcome = tie.solve()
    return {check.key: check for check in job.assess(tie, outcome, system)}, outcome


def failing(number, size, cover, system="SI") -> set[str]:
    checks, _outcome = assessed(system, number, size, cover)
    return {key for key, check in checks.items() if not check.ok}


@cache
def solutions(system) -> tuple[list, int]:
    """Good answers, and how many were tried in all."""
    found, tried = [], 0
    for number, size, cover in product(NUMBERS, SIZES[system], COVERS[system]):
        tried += 1
        try:
            good = not failing(number, size, cover, system)
        except InputError:
            continue  # the bars do not fit in at all
        if good:
            found.append((number, size, cover))
    return found, tried


@SYSTEMS
def test_there_are_several_good_answers_but_a_blind_guess_fails(system):
    found, tried = solutions(system)
    assert len({(number, size) for number, size, _cover in found}) >= 4
    assert len({number for number, _size, _cover in found}) >= 3
    assert len({size for _number, size, _cover in found}) >= 3
    assert len(found) < 0.04 * tried


@SYSTEMS
def test_good_answers_crack_and_are_called_tight(system):
    for number, size, cover in solutions(system)[0]:
        _checks, outcome = assessed(system, number, size, cover)
        assert outcome.cracks and outcome.verdict.key == "tight"


@SYSTEMS
def test_the_job_never_changes_whichever_bars_are_chosen(system):
    """Few thin bars do not draw the pull back: the learner is not told to start over."""
    for number, size in product(NUMBERS, SIZES[system][:4]):
        checks, outcome = assessed(system, number, size, COVER[system])
        assert "givens" not in checks
        assert outcome.structure.pull == task(system).structure.pull


@SYSTEMS
def test_the_tie_as_found_holds_but_cracks_too_wide_and_rusts(system):
    tie = task(system).structure
    assert failing(tie.number, tie.size, tie.cover, system) == {"rule", "cover"}
    assert tie.solve().verdict.key == "too_wide"


def test_each_single_failure_names_itself():
    assert failing(6, "16", 55.0) == set()
    assert failing(6, "16", 40.0) == {"cover"}
    assert failing(4, "25", 55.0) == {"steel"}
    assert failing(8, "12", 55.0) == {"room"}
    assert failing(2, "25", 55.0) == {"rule"}
    assert {"width", "rule"} <= failing(1, "25", 55.0)
    assert failing(8, "8", 55.0) == {"hold", "rule"}
    assert failing(4, "16", 55.0) == {"rule"}


@SYSTEMS
def test_without_bars_it_parts(system):
    checks, outcome = assessed(system, 0, SIZES[system][1], COVER[system])
    assert {"whole", "hold", "width", "rule"} <= failing(0, SIZES[system][1], COVER[system], system)
    assert checks["whole"].measured == "has parted" and "Put bars in" in checks["whole"].text
    assert outcome.verdict.key == "unheld"


@SYSTEMS
def test_bars_too_few_for_the_first_crack_part_with_it(system):
    checks, _outcome = assessed(system, 1, SIZES[system][0], COVER[system])
    assert not checks["whole"].ok and "yields in the first crack" in checks["whole"].text


@SYSTEMS
def test_the_reserve_is_yield_pull_over_pull(system):
    tie = task(system).structure
    checks, _outcome = assessed(system, tie.number, tie.size, tie.cover)
    told = float(checks["hold"].measured.split()[0])
    expected = tie.number * tie.bar.area * tie.yield_strength / tie.pull
    assert told == pytest.approx(expected, abs=0.005)


@SYSTEMS
def test_the_room_is_that_between_the_nearest_two_bars(system):
    tie, size = task(system).structure, SIZES[system][2]
    diameter, unit = {"SI": (10.0, 1.0), "US": (0.625 * INCH, INCH)}[system]
    for number, across in ((2, 1), (4, 1), (6, 2), (8, 3)):
        inside = tie.width - 2 * COVER[system] - diameter
        told = assessed(system, number, size, COVER[system])[0]["room"].measured
        gap = float(told.split("\u202f")[0]) * unit
        assert gap == pytest.approx(inside / across - diameter, abs=0.51)


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    for number, size in product(NUMBERS, SIZES[system][:3]):
        checks, _outcome = assessed(system, number, size, COVER[system])
        assert all(c.measured and c.wanted and c.text for c in checks.values())
        words = " ".join(c.measured + c.wanted + c.text for c in checks.values())
        assert ("mm" in words) == (system == "SI")


@SYSTEMS
def test_the_goals_speak_of_the_limit_the_budget_and_the_reserve(system):
    goals = " ".join(task(system).goals(system))
    told = {"SI": ("36.0\u202fkg", "0.30\u202fmm"), "US": ("65.0\u202flb", "0.0071\u202fin")}
    assert all(text in goals for text in (*told[system], "1.6 times"))


@SYSTEMS
def test_the_tie_is_in_round_numbers_of_the_readers_units(system):
    tie, unit = task(system).structure, {"SI": 10.0, "US": INCH}[system]
    assert all(side / unit == pytest.approx(round(side / unit)) for side in (tie.width, tie.length))


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path).applies for path in job.free)
    assert not set(job.free) & set(job.locked) and {"pull", "surface", "ends"} <= set(job.locked)


def test_what_the_job_fixes_may_not_be_changed():
    job = task()
    tie, _moved = fitted(job.structure, {"surface": "plain", "number": 6, "size": "16"})
    checks = {check.key: check for check in job.assess(tie, tie.solve())}
    assert not checks["givens"].ok and not checks["rule"].ok
    assert checks["rule"].measured == "no rule"
