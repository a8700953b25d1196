"""The first lesson keeps what it tells, and its right answers are those of mechanics."""

import re
from dataclasses import replace
from random import Random

import pytest

from crackkit.learning import pulled, pulled_calls
from crackkit.learning.questions import OF_LESSON, question
from crackkit.learning.walk import change_told
from crackkit.structures.fields import fitted

CALLS = (pulled_calls.first, pulled_calls.bare, pulled_calls.following, pulled_calls.thin)


@pytest.mark.parametrize(("text", "kept"), pulled.promises().items())
def test_the_lesson_keeps_what_it_tells(text, kept):
    assert kept, text


@pytest.mark.parametrize("system", ["SI", "US"])
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    before = pulled.hanger(system)
    for step in pulled.walk(system):
        after = fitted(before, step.changes)[0]
        told = change_told(before.solve(), after.solve(), system)
        if step.changes["beside"]:
            continue  # the others are laid beside it, itself it stays as it was
        assert "→" in told, step.text
        before = after


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("make", CALLS)
def test_each_call_has_one_right_answer_and_a_picture_that_shows_it(make, system):
    call = make(system)
    assert sum(choice.right for choice in call.choices) == 1
    assert len({choice.text for choice in call.choices}) == len(call.choices) >= 3
    assert all(choice.misconception for choice in call.choices if not choice.right)
    assert call.after.solve().cracks
    assert len(call.after.solve().cracks) >= len(call.structure.solve().cracks)


def test_the_calls_are_those_that_the_lesson_needs():
    assert tuple(make("SI").key for make in CALLS) == pulled.NEEDS.calls


@pytest.mark.parametrize("seed", range(4))
def test_another_truck_changes_no_right_answer(seed):
    """The call on thick and thin bars, asked with other concrete."""
    tie = replace(pulled.hanger("SI"), seed=20 + seed, pull=pulled.FULL["SI"])
    a, b = tie.solve(), replace(tie, number=4, size="10").solve()
    assert pulled_calls._compared(a, b) == "finer"


def _numbers(text: str) -> list[float]:
    return [float(n) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def test_the_pull_in_a_crack_is_pull_over_steel():
    for seed in range(20):
        asked = question("steel_at_the_crack", Random(seed))
        force, area = _numbers(asked.text)[-2:]
        assert _numbers(asked.right.text)[0] == pytest.approx(1000 * force / area, rel=0.01)


def test_plain_concrete_cracks_at_strength_times_area():
    for seed in range(20):
        asked = question("pull_that_cracks", Random(seed))
        side, _side, strength = _numbers(asked.text)
        expected = strength * side**2 / 1000
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, rel=0.01, abs=0.1)


def test_the_thinnest_bar_that_holds_is_the_one_whose_member_goes_on():
    """What the formula of the question says, the crack sequence says too."""
    for seed in range(8):
        right = question("least_bars", Random(seed)).structure
        assert right.solve().pulled.history.sequence.held


def test_concrete_carries_what_the_bars_do_not():
    for seed in range(20):
        asked = question("share_of_the_concrete", Random(seed))
        pull, alone, between = _numbers(asked.text)
        expected = pull * (1 - between / alone)
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, abs=0.005 * pull)


def test_there_are_questions_enough():
    assert len(OF_LESSON["01_pull"]) >= 7
