"""The lesson on slabs on the ground keeps what it tells, and mechanics decides what is right."""

import re
from dataclasses import replace
from random import Random

import pytest

from crackkit.learning import ground, ground_calls, ground_promises
from crackkit.learning.questions import OF_LESSON, question
from tests.learning.calls import assert_one_right_answer_and_named_beliefs
from tests.learning.walks import assert_each_step_tells_numbers

CALLS = (ground_calls.free, ground_calls.sheets, ground_calls.late, ground_calls.bars)
SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])


@pytest.mark.parametrize(("text", "kept"), ground_promises.promises().items())
def test_the_lesson_keeps_what_it_tells(text, kept):
    assert kept, text


@SYSTEMS
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    assert_each_step_tells_numbers(ground.young_slab(system), ground.walk(system), system)


@SYSTEMS
def test_the_walk_names_the_days_that_mechanics_finds(system):
    walls, cured = ground.walk(system)[1], ground.walk(system)[-1]
    first = ground.walled_slab(system).ground.first
    assert f"After {first:.0f}\u202fd" in walls.answer
    later = replace(ground.walled_slab(system), curing=ground.LONG_CURE).ground.first
    assert f"{later:.0f}\u202fd" in cured.answer


@SYSTEMS
@pytest.mark.parametrize("make", CALLS)
def test_each_call_has_one_right_answer_and_a_picture_that_shows_it(make, system):
    call = make(system)
    assert_one_right_answer_and_named_beliefs(call)
    assert not call.structure.ground.cracks, "nothing is given away"
    assert call.after.age == 365.0


def test_the_calls_are_those_that_the_lesson_needs():
    assert tuple(make("SI").key for make in CALLS) == ground.NEEDS.calls


@SYSTEMS
@pytest.mark.parametrize("seed", range(2, 6))
def test_another_truck_changes_no_right_answer(system, seed):
    """The calls, asked with other concrete."""
    floor = replace(ground.walled_slab(system), seed=seed)
    bare, sheets = floor.solve(), replace(floor, base="two_sheets").solve()
    assert ground_calls._many(replace(floor, left=0.0, right=0.0).solve()) == "none"
    assert ground_calls._slicker(bare, sheets) == "same"
    assert ground_calls._place(replace(floor, jointed=True, cut_age=14.0).solve()) == "wild"
    barred = replace(floor, **ground.BARS[system]).solve()
    assert ground_calls._shared(bare, barred) == "many"


@SYSTEMS
def test_a_call_would_find_another_answer_if_mechanics_did(system):
    floor = ground.walled_slab(system)
    assert ground_calls._many(floor.solve()) == "one"
    assert ground_calls._place(replace(floor, jointed=True, cut_age=1.0).solve()) == "one"
    assert ground_calls._place(replace(ground.slab(system), jointed=True).solve()) == "nowhere"
    bare = floor.solve()
    assert ground_calls._slicker(bare, ground.slab(system).solve()) == "none"
    lost = replace(ground.barred_slab(system), place="ground").solve()
    assert ground_calls._shared(bare, lost) == "same"


def _numbers(text: str) -> list[float]:
    return [float(n) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def test_a_free_floor_gets_shorter_by_strain_times_length():
    for seed in range(20):
        asked = question("how_much_shorter", Random(seed))
        length, strain = _numbers(asked.text)
        assert _numbers(asked.right.text)[0] == pytest.approx(strain * length, abs=0.06)


def test_the_drag_formula_is_half_the_length_times_weight_times_drag_over_stress():
    for seed in range(20):
        asked = question("drag_bars", Random(seed))
        length, weight, mu, stress = _numbers(asked.text)
        expected = mu * 1000 * length * weight / (2 * stress)
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, rel=0.03)


def test_drag_at_the_allowed_stress_gives_the_longest_floor():
    for seed in range(20):
        asked = question("longest_by_drag", Random(seed))
        thick, weight, mu, stress = _numbers(asked.text)
        expected = 2 * stress * thick / (mu * weight)
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, rel=0.03)


def test_a_joint_opens_by_four_fifths_of_strain_times_panel():
    for seed in range(20):
        asked = question("opening_of_a_joint", Random(seed))
        _length, panel, strain = _numbers(asked.text)
        expected = 0.8 * strain * panel
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, rel=0.02)


def test_a_cut_is_a_quarter_deep():
    for seed in range(20):
        asked = question("depth_of_a_cut", Random(seed))
        assert _numbers(asked.right.text)[0] == pytest.approx(_numbers(asked.text)[0] / 4, abs=0.51)


def test_water_for_longer_never_brings_the_crack_forward():
    for seed in range(8):
        asked = question("water_for_longer", Random(seed))
        *_more, first, _long = _numbers(asked.text)
        assert _numbers(asked.right.text)[0] > first


def test_there_are_questions_enough():
    assert len(OF_LESSON[ground.LESSON]) >= 7
    assert len(OF_LESSON[ground.LESSON]) >= ground.NEEDS.answers
