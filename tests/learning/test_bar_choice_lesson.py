"""The lesson on choosing bars says nothing that the mechanics does not."""

import re
from random import Random

import pytest

from crackkit.learning import choice_calls
from crackkit.learning.bar_choice import (
    NEEDS,
    fine_slab,
    promises,
    slab,
    stress,
    thinner,
    walk,
    width,
)
from crackkit.learning.questions import OF_LESSON, question
from crackkit.learning.walk import change_told
from crackkit.structures.fields import fitted, inputs
from crackkit.units import shown

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
CALLS = (choice_calls.thinner, choice_calls.cover, choice_calls.rust, choice_calls.fibres)


@pytest.mark.parametrize("promise", promises().items(), ids=lambda pair: pair[0])
def test_the_lesson_keeps_its_promise(promise):
    assert promise[1]


@SYSTEMS
def test_each_step_can_be_built_and_is_what_the_step_says(system):
    for step in walk(system):
        strip, moved = fitted(slab(system), step.changes)
        assert not moved, "a step sets all that it needs"
        now = {item.path: item for item in inputs(strip)}
        assert all(now[path].value == value for path, value in step.changes.items())


@SYSTEMS
def test_the_steps_can_be_taken_one_after_the_other(system):
    strip = slab(system)
    for step in walk(system):
        strip, _moved = fitted(strip, step.changes)
        alone, _moved = fitted(slab(system), step.changes)
        assert width(strip.solve()) == pytest.approx(width(alone.solve()))


@SYSTEMS
def test_the_first_steps_are_what_the_button_does(system):
    first, second = walk(system)[:2]
    assert first.changes == slab(system).counts[0].changes
    assert second.changes == thinner(slab(system)).counts[0].changes
    with pytest.raises(ValueError, match="no thinner"):
        thinner(slab(system), 9)


@SYSTEMS
def test_what_a_step_changed_is_told_in_numbers(system):
    steps = walk(system)
    before = slab(system).solve()
    for k, words in ((0, "crack width"), (3, "air at the bars after"), (5, "pull in the bars")):
        after = fitted(slab(system), steps[k].changes)[0].solve()
        assert words in change_told(before, after, system)


@SYSTEMS
def test_the_numbers_in_the_words_of_the_walk_are_those_of_the_panel(system):
    for step in walk(system)[1:5]:
        outcome = fitted(slab(system), step.changes)[0].solve()
        assert shown(width(outcome), "width", system) in step.answer
    mixed = fitted(slab(system), walk(system)[5].changes)[0].solve()
    assert shown(stress(mixed), "stress", system) in walk(system)[5].answer


@SYSTEMS
@pytest.mark.parametrize("call", CALLS, ids=lambda call: call.__name__)
def test_each_call_has_one_right_answer_and_names_each_mistake(call, system):
    asked = call(system)
    assert sum(choice.right for choice in asked.choices) == 1
    named = [choice.misconception for choice in asked.choices if not choice.right]
    assert all(named) and len(set(named)) == len(named) >= 2
    assert len({choice.text for choice in asked.choices}) == len(asked.choices)
    assert asked.structure != asked.after and asked.after.solve().verdict
    assert asked.key in NEEDS.calls


def test_the_calls_are_those_that_the_lesson_needs():
    assert tuple(call("SI").key for call in CALLS) == NEEDS.calls


def test_which_answer_is_right_follows_from_what_was_found():
    """Whatever mechanics might find, one answer fits it and no other."""
    offered = {
        "thinner": choice_calls._thinner_answers(""),
        "cover": choice_calls._cover_answers("", ""),
        "rust": choice_calls._rust_answers(1.0),
        "fibres": choice_calls._fibre_answers(""),
    }
    for answers in offered.values():
        for value in (0.0, 0.01, 0.1, 0.34, 0.5, 0.6, 0.9, 1.0, 1.03, 1.1, 1.5, 3.0, 20.0):
            asked = choice_calls.called("any", "", value, answers, None, None)
            assert sum(choice.right for choice in asked.choices) == 1


@SYSTEMS
def test_the_right_calls_agree_with_the_structures_that_are_drawn(system):
    made = {call.__name__: call(system) for call in CALLS}
    before, after = (
        {key: getattr(q, which).solve() for key, q in made.items()}
        for which in ("structure", "after")
    )
    assert "finer" in made["thinner"].right.text
    assert 0.55 < width(after["thinner"]) / width(before["thinner"]) < 0.95
    assert "wider" in made["cover"].right.text
    assert width(after["cover"]) > 1.05 * width(before["cover"])
    assert "quarter" in made["rust"].right.text
    assert after["rust"].control.years < 0.35 * before["rust"].control.years
    assert "still needed" in made["fibres"].right.text
    assert 0.02 < stress(after["fibres"]) / stress(before["fibres"]) < 0.95


def _numbers(text: str) -> list[float]:
    return [float(n) for n in re.findall(r"\d+(?:\.\d+)?", text.replace("\u202f", " "))]


def test_the_area_of_a_mat_is_that_of_its_bars():
    for seed in range(40):
        asked = question("area_of_a_mat", Random(seed))
        diameter, spacing = _numbers(asked.text)[:2]
        area = 3.14159265 * diameter**2 / 4 * 1000 / spacing
        assert _numbers(asked.right.text)[0] == pytest.approx(area, rel=0.005)


def test_bars_of_half_the_diameter_lie_four_times_as_close():
    for seed in range(40):
        asked = question("half_the_size", Random(seed))
        spacing = _numbers(asked.text)[1]
        assert _numbers(asked.right.text)[0] == pytest.approx(spacing / 4, abs=0.51)


@SYSTEMS
def test_the_thinnest_mat_of_one_weight_is_the_finest(system):
    for seed in range(40):
        asked = question("finest_mat", Random(seed), system)
        assert asked.right.text == re.search(r": (.*?);", asked.text)[1]


def test_bars_need_the_room_that_eurocode_asks_for():
    """EN 1992-1-1 8.2(2): a bar diameter, the stone and 5 mm, 20 mm; from memory."""
    for seed in range(40):
        asked = question("room_for_stones", Random(seed))
        stones, diameter = _numbers(asked.text)[:2]
        gap = max(diameter, stones + 5, 20)
        assert _numbers(asked.right.text)[0] == pytest.approx(gap + diameter, abs=0.51)


def test_more_cover_is_never_asked_with_a_finer_crack_as_the_right_answer():
    for system in ("SI", "US"):
        for seed in range(40):
            asked = question("cover_and_width", Random(seed), system)
            before = float(re.search(r"cracks of ([\d.]+)", asked.text)[1])
            assert _numbers(asked.right.text)[0] > before


def test_twice_the_cover_lasts_four_times_as_long():
    for seed in range(40):
        asked = question("years_of_cover", Random(seed))
        first = float(re.search(r"about (\d+) years", asked.text)[1])
        assert _numbers(asked.right.text)[0] == pytest.approx(4 * first, abs=2.6)


def test_fibres_leave_the_pull_that_balance_leaves():
    for seed in range(40):
        asked = question("pull_left_by_fibres", Random(seed))
        before, f, share = _numbers(asked.text)
        left = before - f * (1 - share / 100) / (share / 100)
        # f is told with one decimal
        assert _numbers(asked.right.text)[0] == pytest.approx(left, abs=0.06 / (share / 100) + 2)


def test_a_straight_pull_is_never_asked_with_closer_cracks_as_the_right_answer():
    for seed in range(40):
        asked = question("bent_or_pulled", Random(seed))
        before = float(re.search(r"about every (\d+)", asked.text)[1])
        assert _numbers(asked.right.text)[0] > 1.1 * before
        assert "right through" in asked.right.text


def test_the_lesson_asks_at_least_seven_kinds_of_questions():
    assert len(OF_LESSON["05_bar_choice"]) >= 7
    assert NEEDS.answers <= len(OF_LESSON["05_bar_choice"])


@SYSTEMS
def test_the_deck_with_thin_bars_weighs_what_the_thick_ones_did(system):
    thick, fine = slab(system), fine_slab(system)
    assert fine.mass == pytest.approx(thick.mass, rel=0.02)
