"""What the lesson on slabs that curl tells, asks and compares."""

from dataclasses import replace
from functools import cache

import pytest

from crackkit.learning import curling, curling_calls, curling_promises
from crackkit.learning.comparison import measures
from crackkit.learning.curling_comparisons import comparisons
from crackkit.structures.curled_slab import CurledSlab
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import UNHELD
from tests.learning.calls import asked_in_notebook, assert_one_right_answer_and_named_beliefs
from tests.learning.promises import assert_alike_in_both_systems
from tests.learning.variants import assert_each_can_be_built_and_one_is_present, helps, tried
from tests.learning.walks import assert_each_step_tells_numbers, assert_each_step_undoes_the_others

PROMISES = curling_promises.promises()
SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
CALLS = {
    "place": curling_calls.place,
    "thicker": curling_calls.thicker,
    "longer": curling_calls.longer,
    "damp": curling_calls.damp,
}


def cornered(system: str = "SI", **changes) -> CurledSlab:
    return replace(curling.broken_panel(system), **changes)


@cache
def compared(system: str) -> dict[str, tuple]:
    return tried(cornered(system).solve(), comparisons(system))


@pytest.mark.parametrize(("text", "kept"), PROMISES.items())
def test_the_lesson_keeps_what_it_tells(text, kept):
    assert kept, text


def test_it_promises_the_same_in_both_systems():
    assert_alike_in_both_systems(PROMISES, more_than=40)


@SYSTEMS
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    assert_each_step_tells_numbers(curling.broken_panel(system), curling.walk(system), system)


@SYSTEMS
def test_what_helps_is_told_beside_the_broken_corner(system):
    *rolling, corner = curling.walk(system)[:4]
    start = curling.broken_panel(system)
    assert fitted(start, corner.changes)[0] == start
    assert not any(step.from_start for step in rolling)
    assert all(step.from_start for step in curling.walk(system)[4:])


@SYSTEMS
def test_a_step_undoes_what_the_steps_before_it_did(system):
    slab, fresh = curling.panel(system), curling.broken_panel(system)
    assert_each_step_undoes_the_others(slab, fresh, curling.walk(system))


@SYSTEMS
@pytest.mark.parametrize("key", CALLS)
def test_each_call_has_one_right_answer_and_named_beliefs(key, system):
    question = CALLS[key](system)
    assert question.key == key and len(question.choices) == 4
    assert_one_right_answer_and_named_beliefs(question)


@pytest.mark.parametrize(
    ("slab", "found"),
    [
        (cornered(), "inside"),
        (cornered(age=curling.WET), "bottom"),
        (cornered(under="open"), "bottom"),
        (cornered(length=2000.0, width=2000.0), "inside"),
        (replace(cornered(), loads=(replace(cornered().loads[0], side=300.0),)), "inside"),
    ],
)
def test_where_it_is_stretched_follows_the_slab(slab, found):
    assert curling_calls._stretched(slab) == found


@pytest.mark.parametrize(
    ("changes", "found"),
    [
        ({"thickness": 150.0}, "high_less"),
        ({"shrinks": 4e-4}, "lower"),
        ({"shrinks": 6e-4}, "high_same"),
    ],
)
def test_how_its_corner_stands_follows_the_slab(changes, found):
    assert curling_calls._stands(cornered(), cornered(**changes)) == found


@pytest.mark.parametrize(
    ("changes", "found"),
    [
        ({"curing": curling.LONG_CURE}, "harder"),
        ({"curing": 4.0}, "alike"),
        ({"age": 60.0}, "little"),
        ({"under": "open"}, "lot"),
    ],
)
def test_what_a_change_saves_follows_the_slab(changes, found):
    assert curling_calls._saved(cornered(), cornered(**changes)) == found


@pytest.mark.parametrize(
    ("under", "found"),
    [("damp", "higher"), ("sheet", "alike"), ("blotter", "lower"), ("open", "flat")],
)
def test_how_high_it_stands_follows_what_lies_below(under, found):
    sealed = cornered(age=curling.LATER)
    assert curling_calls._risen(sealed, replace(sealed, under=under)) == found


@SYSTEMS
def test_every_variant_can_be_built_and_one_is_the_floor_as_it_stands(system):
    for _comparison, found in compared(system).values():
        assert_each_can_be_built_and_one_is_present(found)


@SYSTEMS
def test_what_helps_is_what_the_lesson_says(system):
    wanted = ("joints", "thick", "under", "dowels", "curing")
    told = {key: helps(*compared(system)[key]) for key in wanted}
    assert told["under"]["open: it dries from below as well"] == "lot"
    assert "lot" not in [how for key in told for how in told[key].values() if key != "under"]
    assert {"little"} == {list(told[key].values())[-1] for key in ("joints", "thick", "dowels")}
    assert list(told["curing"].values())[-2:] == ["worse", "worse"]


@SYSTEMS
def test_mats_are_compared_by_the_crack(system):
    comparison, found = compared(system)["mat"]
    bare, near, middle = measures(comparison, tuple(one.outcome for one in found))
    assert found[0].outcome.verdict.key == UNHELD and bare.quantity == "width"
    assert near.value < near.bound < middle.value < bare.value


def test_the_notebook_asks_all_calls_that_it_needs():
    asked = asked_in_notebook(curling.LESSON)
    assert asked == set(curling.NEEDS.calls) == set(CALLS)
