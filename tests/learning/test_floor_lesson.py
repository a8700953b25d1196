"""The lesson on floors over several spans says nothing that the mechanics does not."""

import pytest

from crackkit.learning.floor import one_span_loaded, paper_store, promises
from crackkit.learning.floor_layouts import layouts
from crackkit.learning.floor_walk import walk
from crackkit.learning.layouts import mark_layout
from crackkit.learning.marking import mark_cracks, mark_stretch
from crackkit.learning.walk import change_told
from crackkit.panels.predict_view import cells_along
from crackkit.structures.fields import fitted, inputs

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
STEPS = pytest.mark.parametrize("number", range(5))


@pytest.mark.parametrize("promise", promises().items(), ids=lambda pair: pair[0])
def test_the_lesson_keeps_its_promise(promise):
    assert promise[1]


@SYSTEMS
@STEPS
def test_the_floor_of_each_step_can_be_built_and_is_what_the_step_says(system, number):
    step = walk(paper_store(system), system)[number]
    floor, moved = fitted(paper_store(system), step.changes)
    assert not moved, "a step sets all that it needs"
    now = {item.path: item for item in inputs(floor)}
    assert all(now[path].value == value for path, value in step.changes.items())


@SYSTEMS
def test_the_steps_can_be_taken_one_after_the_other(system):
    """Each step but the first sets all it needs, whatever the steps before it have left."""
    floor = paper_store(system)
    for step in walk(paper_store(system), system):
        floor, _moved = fitted(floor, step.changes)
        alone, _moved = fitted(paper_store(system), step.changes)
        assert floor == alone


@SYSTEMS
def test_what_a_step_changed_is_told_with_moments_places_and_steel(system):
    floor = paper_store(system)
    empty, sketch, through = (
        change_told(floor.solve(), fitted(floor, step.changes)[0].solve(), system)
        for step in walk(floor, system)[:3]
    )
    assert "moment over B" in empty and "moment over C" in empty
    assert "places without bars: 0 → 1" in sketch
    assert "bars weigh" in through and "places" not in through


def painted(outcome, face, cells):
    """Cells of a face that lie in a stretched zone."""
    length = outcome.structure.length
    middles = [(k + 0.5) * length / cells for k in range(cells)]
    zones = [zone for zone in outcome.tension if zone.face == face]
    return {k for k, x in enumerate(middles) if any(z.start < x < z.end for z in zones)}


@SYSTEMS
@pytest.mark.parametrize("floor", [paper_store, one_span_loaded])
def test_cells_are_fine_enough_for_three_spans(floor, system):
    outcome = floor(system).solve()
    cells = cells_along(outcome.structure)
    right = {face: painted(outcome, face, cells) for face in ("top", "bottom")}
    marking = mark_stretch(right, outcome, cells)
    assert cells == 36 and marking.right and marking.score == pytest.approx(1.0)


@SYSTEMS
def test_the_bottom_alone_is_not_the_right_call(system):
    outcome = paper_store(system).solve()
    assert not mark_stretch({"bottom": range(36)}, outcome, 36).right


@SYSTEMS
def test_the_call_for_the_full_floor_is_wrong_for_one_loaded_span(system):
    full, one = paper_store(system).solve(), one_span_loaded(system).solve()
    sketch = {face: painted(full, face, 36) for face in ("top", "bottom")}
    assert not mark_stretch(sketch, one, 36).right


@SYSTEMS
def test_cracks_are_expected_over_the_supports_and_in_the_end_spans(system):
    outcome = paper_store(system).solve()
    a, b, c, d = outcome.structure.places
    marks = [("top", b), ("top", c), ("bottom", 0.42 * b), ("bottom", d - 0.42 * (d - c))]
    assert mark_cracks(marks, outcome, system).right
    assert not mark_cracks([("bottom", (a + b) / 2)], outcome, system).right


@SYSTEMS
def test_one_drawing_guards_every_place_with_the_least_steel(system):
    offered = layouts(paper_store(system), system)
    marked = {each.key: mark_layout(each.key, offered, system) for each in offered}
    assert {key: marking.right for key, marking in marked.items()} == {
        "below": False,
        "short": False,
        "across": True,
        "through": False,
    }
    assert marked["through"].score == 0.5 and "less steel" in marked["through"].remarks[0].text
    assert "no bar crosses" in marked["short"].remarks[0].text


@SYSTEMS
def test_a_cell_too_much_or_too_little_at_each_end_is_forgiven(system):
    outcome = paper_store(system).solve()
    top = painted(outcome, "top", 36)
    wider = {"bottom": painted(outcome, "bottom", 36), "top": top | {k + 1 for k in top}}
    assert mark_stretch(wider, outcome, 36).right
