"""What must hold for the walk of every lesson."""

from crackkit.learning.walk import change_told
from crackkit.structures.fields import fitted
from tests.learning.outcomes import outcome


def assert_each_step_tells_numbers(start, steps, system) -> None:
    """Each step changes numbers, beside the step before it or beside the start of the walk."""
    slab = start
    for step in steps:
        before, slab = slab, fitted(slab, step.changes)[0]
        beside = start if step.from_start else before
        assert "→" in change_told(outcome(beside), outcome(slab), system), step.text
        assert step.answer and step.text


def assert_each_step_undoes_the_others(slab, fresh, steps) -> None:
    """Walked twice from a slab, each step ends as if it were the first that a fresh slab took."""
    for step in (*steps, *steps):
        slab = fitted(slab, step.changes)[0]
        alone = fitted(fresh, step.changes)[0]
        assert outcome(slab).numbers == outcome(alone).numbers
