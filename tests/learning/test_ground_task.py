"""The floor of the boat store has several good answers, and the obvious wrong ones fail."""

from dataclasses import replace
from functools import cache
from itertools import product

import pytest

from crackkit.learning.ground_bare_checks import MOST_PULL
from crackkit.learning.ground_task import offer, store_floor
from crackkit.learning.prices import UNIT_PRICES, USUAL
from crackkit.structures.fields import fitted, input_at
from crackkit.units.quantities import FOOT, INCH
from tests.learning.sites import Site

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
SIZES = {"SI": ("8", "10", "12", "16"), "US": ("#3", "#4", "#5", "#6")}
SPACINGS = {
    "SI": (75.0, 100.0, 125.0, 150.0, 200.0, 300.0),
    "US": tuple(k * INCH for k in (4, 5, 6, 8, 9, 10, 12, 16)),
}
GOOD = {"SI": ("10", 100.0), "US": ("#4", 8 * INCH)}
HEAVY = {"SI": ("16", 100.0), "US": ("#5", 6 * INCH)}
CUT = {"jointed": True, "cut_age": 1.0}
EVERY = {"SI": 5000.0, "US": 16 * FOOT}
FREED, ONE_FREE = {"left": 0.0, "right": 0.0}, {"left": 0.0}
BARE = {"steel": "none"}
SITE = Site(store_floor)
task, assessed, failing = SITE.task, SITE.assessed, SITE.failing


def mat(system, steel=None) -> dict:
    name, spacing = steel or GOOD[system]
    return {"steel": name, "spacing": spacing, "place": "top"}


def cut(system) -> dict:
    return CUT | {"joint_every": EVERY[system]}


def ways(system) -> dict[str, dict]:
    """Four ways to do it that a site knows."""
    return {
        "free ends and joints": BARE | FREED | cut(system),
        "one free end, sheets, and joints": BARE | ONE_FREE | {"base": "two_sheets"} | cut(system),
        "bars from wall to wall": mat(system),
        "free ends and bars that would hold": FREED | mat(system, _plenty(system)),
    }


def _plenty(system) -> tuple:
    return {"SI": ("12", 125.0), "US": ("#4", 8 * INCH)}[system]


@cache
def solutions(system) -> tuple[list, int]:
    """Good answers, and how many were tried in all."""
    steel = [BARE] + [mat(system, each) for each in product(SIZES[system], SPACINGS[system])]
    ends, joints = ({}, ONE_FREE, FREED), ({}, cut(system))
    bases = ({}, {"base": "two_sheets"})
    tried = [a | b | c | d for a, b, c, d in product(steel, ends, joints, bases)]
    return [each for each in tried if not failing(system, each)], len(tried)


@SYSTEMS
def test_there_are_at_least_three_ways_and_they_differ(system):
    for name, way in ways(system).items():
        if name != "free ends and bars that would hold":
            assert failing(system, way) == set(), name


@SYSTEMS
def test_a_search_finds_each_of_the_ways_but_a_blind_guess_fails(system):
    found, tried = solutions(system)
    kinds = {
        (each["steel"] != "none", each.get("jointed", False), each.get("base"), len(_ends(each)))
        for each in found
    }
    assert (False, True, None, 2) in kinds  # both ends free, joints
    assert (False, True, "two_sheets", 1) in kinds  # one end free, joints, sheets
    assert (True, False, None, 0) in kinds  # bars from wall to wall
    assert len({each["steel"] for each in found}) >= 3
    assert len(found) < 0.35 * tried


def _ends(changes) -> set:
    return {name for name in ("left", "right") if name in changes}


@SYSTEMS
def test_a_good_answer_has_bars_that_hold_or_free_ends_and_joints(system):
    for each in solutions(system)[0]:
        assert each["steel"] != "none" or (_ends(each) and each["jointed"])


@SYSTEMS
def test_the_floor_as_found_fails_in_what_it_does_and_not_in_what_it_costs(system):
    assert failing(system, {}) == {"width", "bare", "place"}


@SYSTEMS
def test_each_single_failure_names_itself(system):
    bars = mat(system)
    assert failing(system, bars) == set()
    assert failing(system, bars | {"place": "ground"}) >= {"width", "place"}
    free = BARE | FREED | cut(system)
    assert failing(system, free | {"curing": 14.0}) == {"cure"}
    assert failing(system, free | {"cut_age": 14.0}) == {"saw"}
    assert failing(system, mat(system, HEAVY[system])) == {"money"}


@SYSTEMS
def test_joints_alone_gather_the_movement_in_one_of_them(system):
    checks, outcome = assessed(system, BARE | cut(system))
    assert {key for key, check in checks.items() if not check.ok} == {"joint", "bare"}
    assert "gathers in one joint" in checks["joint"].text
    assert "Set an end free" in checks["bare"].text
    assert [joint.opening > 0.1 for joint in outcome.ground.joints].count(True) == 1


@SYSTEMS
def test_free_ends_without_joints_are_too_sure_of_themselves(system):
    checks, outcome = assessed(system, BARE | FREED)
    assert not outcome.ground.cracks
    assert {key for key, check in checks.items() if not check.ok} == {"bare"}
    assert "too long: cut joints" in checks["bare"].text


@SYSTEMS
def test_one_free_end_on_gravel_is_pulled_too_hard_and_sheets_help_there(system):
    one = BARE | ONE_FREE | cut(system)
    checks, _outcome = assessed(system, one)
    assert not checks["bare"].ok and "slide more easily" in checks["bare"].text
    assert failing(system, one | {"base": "two_sheets"}) == set()


@SYSTEMS
def test_a_few_bars_count_as_none(system):
    token = mat(system, (SIZES[system][0], 300.0 if system == "SI" else 12 * INCH)) | FREED
    checks, _outcome = assessed(system, token)
    assert {key for key, check in checks.items() if not check.ok} == {"bare"}
    assert assessed(system, mat(system))[0]["bare"].ok


@SYSTEMS
def test_a_slick_base_saves_nothing_between_walls(system):
    for base in ("two_sheets", "gravel", "stabilised"):
        assert failing(system, BARE | {"base": base}) == {"width", "bare"}


@SYSTEMS
def test_too_dear_a_floor_is_told_by_how_much_and_what_makes_it_so(system):
    job = task(system)
    for changes, culprit in ((mat(system, HEAVY[system]), "Bars"), (_stabilised(system), "Stab")):
        checks, outcome = assessed(system, changes)
        off = job.budget.spent(outcome.structure) - job.budget.most()
        assert f"{off:.0f} too dear" in checks["money"].text
        assert culprit in checks["money"].text
    assert "Thinner bars" in assessed(system, mat(system, HEAVY[system]))[0]["money"].text


def _stabilised(system) -> dict:
    return mat(system) | {"base": "stabilised"}


@SYSTEMS
def test_the_job_never_changes_whatever_is_chosen(system):
    for way in ways(system).values():
        assert "givens" not in assessed(system, way)[0]


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    for way in (*ways(system).values(), {}, BARE, BARE | cut(system)):
        checks, _outcome = assessed(system, way)
        assert all(c.measured and c.wanted and c.text for c in checks.values())
        words = " ".join(c.measured + c.wanted + c.text for c in checks.values())
        assert ("\u202fm" in words) == (system == "SI")


@SYSTEMS
def test_the_goals_speak_of_limits_and_budget(system):
    goals = " ".join(task(system).goals(system))
    told = {
        "SI": ("0.40\u202fmm", "1.00\u202fmm", "5.40\u202fm", "6300"),
        "US": ("0.0161\u202fin", "0.0400\u202fin", "18.0\u202fft", "5800"),
    }
    assert all(text in goals for text in (*told[system], "7\u202fd", f"{MOST_PULL}"))


def test_in_other_money_the_same_answers_are_right():
    dear = USUAL
    for each in UNIT_PRICES:
        dear = dear.changed(each.key, 100.0 * each.usual)
    job = task().at_prices(dear)
    for way in (*ways("SI").values(), mat("SI", HEAVY["SI"])):
        checks, outcome = assessed("SI", way)
        again = job.assess(outcome.structure, outcome, "SI")
        assert [check.ok for check in again] == [check.ok for check in checks.values()]
        assert job.score(again, outcome) == pytest.approx(task().score(checks.values(), outcome))


def test_a_price_that_rises_may_make_another_way_the_cheapest():
    def cheapest(prices):
        budget, found = task().at_prices(prices).budget, ways("SI")
        costs = {
            name: budget.spent(fitted(task().structure, way)[0]) for name, way in found.items()
        }
        return min(costs, key=costs.get)

    assert cheapest(USUAL) == "free ends and joints"
    assert cheapest(USUAL.changed("strip", 100.0)) == "one free end, sheets, and joints"
    cheap_bars = USUAL.changed("bars", 0.05).changed("saw", 40.0)
    assert cheapest(cheap_bars) == "bars from wall to wall"


@SYSTEMS
def test_the_cheaper_good_answer_scores_better(system):
    job, found = task(system), ways(system)
    scores = {}
    for name in ("free ends and joints", "bars from wall to wall"):
        checks, outcome = assessed(system, found[name])
        scores[name] = job.score(checks.values(), outcome)
    assert scores["free ends and joints"] > scores["bars from wall to wall"] > 1.0


def test_where_everything_is_for_nothing_nothing_breaks():
    free = USUAL
    for each in UNIT_PRICES:
        free = free.changed(each.key, 0.0)
    job = task().at_prices(free)
    floor = offer("SI")
    checks = job.assess(floor, floor.solve(), "SI")
    assert all(check.ok for check in checks) and job.score(checks, floor.solve()) == 2.0
    sawn = task().at_prices(free.changed("saw", 5.0))
    cut_floor = fitted(floor, cut("SI"))[0]
    assert sawn.spent_share(cut_floor, cut_floor.solve()) == float("inf")


def test_widths_that_cannot_be_counted_are_not_taken_for_fine():
    checks, outcome = assessed("US", mat("US", ("#6", 4 * INCH)))
    assert not outcome.ground.complete and outcome.verdict.key == "too_wide"
    assert not checks["width"].ok and checks["width"].measured == "not known"


def test_a_crack_along_the_floor_counts_as_well():
    job = task()
    held = replace(offer("SI"), sides=1.0)
    checks = {check.key: check for check in job.assess(held, held.solve(), "SI")}
    assert not checks["width"].ok and not checks["givens"].ok


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path) for path in job.free)
    assert not set(job.free) & set(job.locked)
    assert {"age", "length", "width", "sides", "through", "humidity"} <= set(job.locked)


def test_what_the_job_fixes_may_not_be_changed():
    thin = replace(task().structure, thickness=100.0)
    checks = task().assess(thin, thin.solve(), "SI")
    assert "givens" in {check.key for check in checks if not check.ok}
