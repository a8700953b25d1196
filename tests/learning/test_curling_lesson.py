"""What the lesson on slabs that curl tells, asks and compares."""

import pytest

from crackkit.learning import curling, curling_calls, curling_promises
from crackkit.learning.comparison import compared
from crackkit.learning.curling_comparisons import comparisons
from crackkit.learning.walk import change_told
from crackkit.structures.fields import fitted

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])


@pytest.mark.parametrize(("text", "kept"), curling_promises.promises().items())
def test_the_lesson_keeps_what_it_tells(text, kept):
    assert kept, text


@SYSTEMS
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    before = curling.wet_panel(system).solve()
    for step in curling.walk(system):
        after = fitted(curling.panel(system), step.changes)[0].solve()
        if step.changes["age"] != curling.WET:
            assert change_told(before, after, system) != "No number changed."
        assert step.answer and step.text


@SYSTEMS
@pytest.mark.parametrize("call", [curling_calls.place, curling_calls.longer])
def test_each_call_has_one_right_answer_and_named_beliefs(call, system):
    question = call(system)
    assert [choice.right for choice in question.choices].count(True) == 1
    assert all(choice.why for choice in question.choices)
    assert all(choice.misconception for choice in question.choices if not choice.right)
    assert question.structure.solve() and question.after.solve()


@SYSTEMS
def test_every_variant_can_be_built(system):
    now = curling.at_corner(curling.panel(system), system).solve()
    for comparison in comparisons(system):
        found = compared(now, comparison)
        assert all(one.error is None for one in found)
        assert any(one.outcome.curled.share != now.curled.share for one in found) or (
            comparison.key == "held"
        )
