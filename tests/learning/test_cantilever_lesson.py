"""The lesson on the cantilever says nothing that the mechanics does not."""

import math

import pytest

from crackkit.learning.cantilever import balcony, balcony_on_floor, promises, spare, walk
from crackkit.learning.marking import mark_bar, mark_cracks, mark_stretch
from crackkit.learning.walk import change_told
from crackkit.structures.fields import fitted, inputs

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])


@pytest.mark.parametrize("promise", promises().items(), ids=lambda pair: pair[0])
def test_the_lesson_keeps_its_promise(promise):
    assert promise[1]


@SYSTEMS
def test_the_balcony_of_each_step_can_be_built_and_is_what_the_step_says(system):
    for step in walk(system):
        arm, moved = fitted(balcony(system), step.changes)
        assert not moved, "a step sets all that it needs"
        assert "spacing" not in [caution.key for caution in arm.solve().cautions]
        now = {item.path: item for item in inputs(arm)}
        assert all(now[path].value == value for path, value in step.changes.items())


@SYSTEMS
def test_the_steps_can_be_taken_one_after_the_other(system):
    """Each step but the first sets all it needs, whatever the steps before it have left."""
    arm = balcony(system)
    for step in walk(system):
        arm, _moved = fitted(arm, step.changes)
        alone, _moved = fitted(balcony(system), step.changes)
        assert arm.solve().verdict.key == alone.solve().verdict.key
        assert spare(arm.solve()) == pytest.approx(spare(alone.solve()))


@SYSTEMS
def test_what_a_step_changed_is_told_with_the_strength_left(system):
    arm = balcony(system)
    trodden = fitted(arm, walk(system)[0].changes)[0].solve()
    told = change_told(arm.solve(), trodden, system)
    assert "gives way at" in told and "widest crack" in told
    low = fitted(arm, walk(system)[1].changes)[0].solve()
    assert "falls" in change_told(arm.solve(), low, system)


def whole(face):
    return {face: range(24)}


@SYSTEMS
def test_the_top_of_an_arm_is_the_right_call_and_the_wall_counts_neither_way(system):
    outcome = balcony(system).solve()
    everywhere = mark_stretch(whole("top"), outcome)
    assert everywhere.right and everywhere.score == 1.0
    root = outcome.structure.root / outcome.structure.length * 24
    outside = {"top": range(math.ceil(root - 0.5), 24)}
    assert mark_stretch(outside, outcome).score == pytest.approx(1.0)
    assert "wall holds the root" in everywhere.remarks[0].text
    assert not mark_stretch(whole("bottom"), outcome).right


@SYSTEMS
def test_stopping_at_the_support_misses_the_floor_behind(system):
    outcome = balcony_on_floor(system).solve()
    assert mark_stretch(whole("top"), outcome).right
    root = outcome.structure.root / outcome.structure.length * 24
    marking = mark_stretch({"top": range(round(root), 24)}, outcome)
    assert not marking.right
    assert any(remark.kind == "missed" for remark in marking.remarks)


@SYSTEMS
def test_the_crack_is_expected_on_top_at_the_root_and_places_are_told_from_there(system):
    outcome = balcony(system).solve()
    root, tip = outcome.structure.root, outcome.structure.length
    assert mark_cracks([("top", root + 40.0)], outcome, system).right
    marking = mark_cracks([("top", tip - 60.0)], outcome, system)
    assert not marking.right
    said = " ".join(remark.text for remark in marking.remarks)
    assert "the root to" in said and "Hardly anything" in said and "far side" not in said


@SYSTEMS
def test_the_bars_belong_on_top(system):
    outcome = balcony(system).solve()
    assert mark_bar("top", outcome).right
    assert not any(mark_bar(face, outcome).right for face in ("bottom", "both", "middle"))
