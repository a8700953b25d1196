"""What the lesson on slabs that curl tells, asks and compares."""

import ast
import json
from dataclasses import replace

import pytest

from crackkit.launch.places import LESSONS
from crackkit.learning import curling, curling_calls, curling_promises
from crackkit.learning.comparison import compared, helped, measures
from crackkit.learning.curling_comparisons import comparisons
from crackkit.learning.walk import change_told
from crackkit.structures.curled_slab import CurledSlab
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import UNHELD

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
CALLS = {
    "place": curling_calls.place,
    "thicker": curling_calls.thicker,
    "longer": curling_calls.longer,
    "damp": curling_calls.damp,
}


def cornered(system: str = "SI", **changes) -> CurledSlab:
    return replace(curling.broken_panel(system), **changes)


@pytest.mark.parametrize(("text", "kept"), curling_promises.promises().items())
def test_the_lesson_keeps_what_it_tells(text, kept):
    assert kept, text


def test_it_promises_the_same_in_both_systems():
    told = curling_promises.promises()
    by_system = {
        system: {text[4:] for text in told if text.startswith(f"{system}: ")}
        for system in ("SI", "US")
    }
    assert by_system["SI"] == by_system["US"] and len(by_system["SI"]) > 40


@SYSTEMS
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    start = before = curling.broken_panel(system).solve()
    for step in curling.walk(system):
        after = fitted(before.structure, step.changes)[0].solve()
        beside = start if step.from_start else before
        assert change_told(beside, after, system) != "No number changed."
        assert step.answer and step.text
        before = after


@SYSTEMS
def test_what_helps_is_told_beside_the_broken_corner(system):
    *rolling, corner = curling.walk(system)[:4]
    start = curling.broken_panel(system)
    assert fitted(start, corner.changes)[0] == start
    assert not any(step.from_start for step in rolling)
    assert all(step.from_start for step in curling.walk(system)[4:])


@SYSTEMS
def test_a_step_undoes_what_the_steps_before_it_did(system):
    slab = curling.panel(system)
    for step in (*curling.walk(system), *curling.walk(system)):
        slab = fitted(slab, step.changes)[0]
        fresh = fitted(curling.broken_panel(system), step.changes)[0]
        assert slab.solve().numbers == fresh.solve().numbers


@SYSTEMS
@pytest.mark.parametrize("key", CALLS)
def test_each_call_has_one_right_answer_and_named_beliefs(key, system):
    question = CALLS[key](system)
    assert question.key == key and len(question.choices) == 4
    assert [choice.right for choice in question.choices].count(True) == 1
    assert all(choice.why for choice in question.choices)
    assert all(choice.misconception for choice in question.choices if not choice.right)
    assert question.structure.solve() and question.after.solve()


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
    now = cornered(system).solve()
    for comparison in comparisons(system):
        found = compared(now, comparison)
        assert all(one.error is None and not one.moved for one in found)
        assert [one.present for one in found].count(True) == 1
        assert len({one.label for one in found}) == len(found)


@SYSTEMS
def test_what_helps_is_what_the_lesson_says(system):
    told = {key: _helps(key, system) for key in ("joints", "thick", "under", "dowels", "curing")}
    assert told["under"]["open: it dries from below as well"] == "lot"
    assert "lot" not in [how for key in told for how in told[key].values() if key != "under"]
    assert {"little"} == {list(told[key].values())[-1] for key in ("joints", "thick", "dowels")}
    assert list(told["curing"].values())[-2:] == ["worse", "worse"]


@SYSTEMS
def test_mats_are_compared_by_the_crack(system):
    comparison = next(each for each in comparisons(system) if each.key == "mat")
    found = compared(cornered(system).solve(), comparison)
    bare, near, middle = measures(comparison, tuple(one.outcome for one in found))
    assert found[0].outcome.verdict.key == UNHELD and bare.quantity == "width"
    assert near.value < near.bound < middle.value < bare.value


def _helps(key: str, system: str) -> dict[str, str]:
    comparison = next(each for each in comparisons(system) if each.key == key)
    found = compared(cornered(system).solve(), comparison)
    told = measures(comparison, tuple(one.outcome for one in found))
    now = next(each for each, one in zip(told, found, strict=True) if one.present)
    return {one.label: helped(now, each) for one, each in zip(found, told, strict=True)}


def test_the_notebook_asks_all_calls_that_it_needs():
    asked = {
        node.args[2].value
        for node in ast.walk(ast.parse(_code()))
        if isinstance(node, ast.Call) and getattr(node.func, "attr", "") == "Call"
    }
    assert asked == set(curling.NEEDS.calls) == set(CALLS)


def _code() -> str:
    cells = json.loads((LESSONS / f"{curling.LESSON}.ipynb").read_text("utf-8"))["cells"]
    return "\n".join("".join(cell["source"]) for cell in cells if cell["cell_type"] == "code")
