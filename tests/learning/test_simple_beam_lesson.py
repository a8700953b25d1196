"""The lesson on the simple beam says nothing that the mechanics does not."""

import pytest

from crackkit.learning.simple_beam import canteen_beam, promises, walk
from crackkit.structures.fields import fitted


@pytest.mark.parametrize("promise", promises().items(), ids=lambda pair: pair[0])
def test_the_lesson_keeps_its_promise(promise):
    assert promise[1]


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_beam_of_each_step_can_be_built(system):
    for step in walk(system):
        outcome = fitted(canteen_beam(system), step.changes)[0].solve()
        assert "spacing" not in [caution.key for caution in outcome.cautions]
