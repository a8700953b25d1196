"""A drawing of bars is chosen before it is shown what the loads do to it."""

import pytest

from crackkit.learning.floor import LESSON, paper_store
from crackkit.learning.floor_layouts import layouts
from crackkit.learning.progress import progress
from crackkit.panels.layout_call import LayoutCall
from crackkit.panels.predict import Predict
from crackkit.panels.preferences import Preferences
from tests.panels.test_exercises import say


@pytest.fixture
def call() -> LayoutCall:
    return LayoutCall(layouts(paper_store(), "SI"), LESSON, choices=Preferences())


def test_four_drawings_are_offered_and_none_is_shown(call):
    assert [key for key, _label in call.view.places] == ["below", "short", "across", "through"]
    assert not call.view.strips and "image" not in call.view.svg


@pytest.mark.parametrize(("chosen", "right"), [("across", True), ("short", False)])
def test_the_chosen_drawing_is_marked_recorded_and_shown(call, chosen, right):
    before = call.view.svg
    say(call, "call", chosen=chosen)
    assert call.view.good is right and call.view.svg != before
    (attempt,) = progress().attempts(LESSON, "layout")
    assert (attempt.answer, attempt.right) == (chosen, right)


def test_what_fails_is_shown_under_the_loads_that_make_it_fail(call):
    say(call, "call", chosen="short")
    assert not call._answer().structure.spans[1].live
    assert "live load on spans 1 and 3" in call.view.remarks[0][3]
    assert "Not guarded by bars" in call.view.alt


def test_a_drawing_that_is_not_offered_is_no_call(call):
    say(call, "call", chosen="bottom")
    assert not call.view.called


def test_a_floor_has_more_cells_than_a_beam():
    floor = Predict(paper_store(), "stretch", LESSON, choices=Preferences())
    assert floor.view.cells == 36 == len(floor.view.cell_names)
    say(floor, "call", painted={"top": [35, 36]})
    assert floor.view.painted["top"] == [35]
