"""The parts store has several good answers, and each obvious wrong one fails for its own reason."""

from functools import cache

import pytest

from crackkit.learning.floor_task import BUDGET, parts_store
from crackkit.learning.progress import progress
from crackkit.panels.preferences import Preferences
from crackkit.panels.task import Task
from crackkit.structures.fields import fitted, input_at

INCH = 25.4
SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
# two answers each: size and spacing below, size and spacing above [mm]
GOOD = {
    "SI": (("14", 110.0, "12", 90.0), ("12", 80.0, "14", 120.0)),
    "US": (("#5", 4.5 * INCH, "#4", 3.5 * INCH), ("#4", 3.0 * INCH, "#5", 5.5 * INCH)),
}


@cache
def task(system="SI"):
    return parts_store(system)


def laid(system, below, far_below, above, far_above, side=1300.0, middle=2600.0, **more):
    """Bars that end at `side` in the end spans and at `middle` in the middle span [mm]."""
    mats = {
        "bottom.size": below,
        "bottom.spacing": far_below,
        "top.size": above,
        "top.spacing": far_above,
    }
    reaches = {
        "supports.0.right_reach": 0.0,
        "supports.1.left_reach": side,
        "supports.1.right_reach": middle,
        "supports.2.left_reach": middle,
        "supports.2.right_reach": side,
        "supports.3.left_reach": 0.0,
    }
    gaps = {"spans.0.right_gap": -100.0, "spans.1.left_gap": -100.0}
    gaps |= {"spans.1.right_gap": -100.0, "spans.2.left_gap": -100.0}
    wanted = {path.replace("__", "."): value for path, value in more.items()}
    return mats | reaches | gaps | wanted


def assessed(system, changes):
    floor, _moved = fitted(task(system).structure, changes)
    outcome = floor.solve()
    return {c.key: c for c in task(system).assess(floor, outcome, system)}, outcome


def failing(system, changes) -> set[str]:
    return {key for key, check in assessed(system, changes)[0].items() if not check.ok}


@SYSTEMS
@pytest.mark.parametrize("number", [0, 1])
def test_there_are_several_good_answers(system, number):
    assert failing(system, laid(system, *GOOD[system][number])) == set()


@SYSTEMS
def test_bars_that_end_in_the_middle_span_may_do_if_they_reach_far_enough(system):
    reach = {"SI": 1600.0, "US": 2000.0}[system]
    assert failing(system, laid(system, *GOOD[system][0], middle=reach)) == set()
    assert "covered" in failing(system, laid(system, *GOOD[system][0], middle=1200.0))


@SYSTEMS
def test_the_floor_as_found_follows_a_sketch_and_is_caught_out(system):
    checks, outcome = assessed(system, {})
    assert {"hold", "width", "covered"} <= {key for key, check in checks.items() if not check.ok}
    assert any(gap.fault == "no_bar" and gap.face == "top" for gap in outcome.range.gaps)
    assert "live load on span" in checks["covered"].text


@SYSTEMS
@pytest.mark.parametrize("number", [0, 1])
def test_the_same_bars_run_through_hold_and_weigh_too_much(system, number):
    through = laid(system, *GOOD[system][number], through=True)
    assert failing(system, through) == {"steel"}


def lightest(system, face, other):
    """Least mass [kg] of a mat of one face, run through, that holds beside a heavy other mat."""
    sizes = {"SI": ("10", "12", "14", "16"), "US": ("#3", "#4", "#5")}[system]
    steps = [10.0 * k for k in range(7, 19)] if system == "SI" else [12.7 * k for k in range(5, 13)]
    heavy = {"through": True, f"{other}.size": sizes[-1], f"{other}.spacing": 80.0}
    both = heavy | {f"{face}.size": sizes[-1], f"{face}.spacing": 80.0}
    beside = assessed(system, both)[1].steel_mass / 2
    masses = []
    for size in sizes:
        for far in steps:
            mat = {f"{face}.size": size, f"{face}.spacing": far}
            checks, outcome = assessed(system, heavy | mat)
            if checks["hold"].ok:
                masses.append(outcome.steel_mass - beside)
    return min(masses)


@SYSTEMS
def test_no_bars_run_through_are_light_enough(system):
    least = lightest(system, "bottom", "top") + lightest(system, "top", "bottom")
    assert least > 1.05 * BUDGET[system]


@pytest.mark.parametrize(
    ("changes", "fails"),
    [
        ({"top__spacing": 110.0}, "hold"),
        ({"bottom__spacing": 80.0, "top__spacing": 80.0}, "steel"),
        ({"top__cover": 15.0}, "cover"),
        ({"middle": 1300.0}, "covered"),
    ],
)
def test_each_single_failure_names_itself(changes, fails):
    assert failing("SI", laid("SI", *GOOD["SI"][0], **changes)) == {fails}


def test_thick_bars_far_apart_are_told_to_lie_closer():
    assert failing("SI", laid("SI", "20", 260.0, "20", 260.0)) >= {"mat"}


def test_loads_may_be_moved_to_look_and_count_alike_wherever_they_stand():
    good = laid("SI", *GOOD["SI"][0])
    away = good | {"spans.1.live": False, "loads.0.at": 7000.0}
    assert failing("SI", away) == set()
    here, there = assessed("SI", good)[0], assessed("SI", away)[0]
    assert [c.measured for c in here.values()] == [c.measured for c in there.values()]


def test_what_the_job_fixes_may_not_be_changed():
    checks, _outcome = assessed("SI", laid("SI", *GOOD["SI"][0]) | {"depth": 250.0})
    assert not checks["givens"].ok and "Depth" in checks["givens"].text


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    assert all(input_at(job.structure, path) for path in job.free)
    assert not set(job.free) & set(job.locked)
    assert {"depth", "live_load", "spans.0.length", "supports.1.sunk"} <= set(job.locked)


@SYSTEMS
def test_the_lightest_answer_so_far_is_kept(system, tmp_path, monkeypatch):
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    choices = Preferences()
    choices.system = system
    page = Task(parts_store, "04_continuous_spans", choices)
    masses = []
    for middle in (2600.0, 2100.0, 2400.0):
        page.panel.apply(laid(system, *GOOD[system][0], middle=middle))
        assert page.check()
        masses.append(page.panel.outcome.steel_mass)
    best = progress().best("04_continuous_spans", "parts_store")
    assert best.answer["steel_mass"] == pytest.approx(min(masses))
    assert "Best so far" in page.view.tally
