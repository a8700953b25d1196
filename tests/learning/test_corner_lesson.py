"""What the lesson on the inside corner tells, asks and compares."""

from dataclasses import replace
from functools import cache

import pytest

from crackkit.drawing import corner_picture
from crackkit.drawing.frames import View
from crackkit.learning import corner, corner_calls, corner_promises
from crackkit.learning.corner_comparisons import comparisons
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, UNCRACKED, UNHELD
from tests.drawing.looked_at import at_every_width, roles
from tests.learning.calls import asked_in_notebook, assert_one_right_answer_and_named_beliefs
from tests.learning.outcomes import outcome
from tests.learning.promises import assert_alike_in_both_systems
from tests.learning.variants import assert_each_can_be_built_and_one_is_present, helps, tried
from tests.learning.walks import assert_each_step_tells_numbers, assert_each_step_undoes_the_others

# One system after the other: what is worked out for a floor is kept only for a while.
SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"], scope="module")
CALLS = {
    "where": corner_calls.where,
    "way": corner_calls.way,
    "bars": corner_calls.bars,
    "round": corner_calls.rounded,
}


def bakery(system: str = "SI", **changes) -> CornerSlab:
    return replace(corner.floor(system), **changes)


@cache
def compared(system: str) -> dict[str, tuple]:
    return tried(outcome(corner.found_floor(system)), comparisons(system))


@pytest.fixture(scope="module")
def promises() -> dict[str, bool]:
    return corner_promises.promises()


def test_the_lesson_keeps_what_it_tells(promises):
    assert [text for text, kept in promises.items() if not kept] == []


def test_it_promises_the_same_in_both_systems(promises):
    assert_alike_in_both_systems(promises, more_than=40)


@SYSTEMS
def test_each_step_of_the_walk_changes_numbers_that_are_told(system):
    assert_each_step_tells_numbers(corner.found_floor(system), corner.walk(system), system)


@SYSTEMS
def test_no_words_touch_in_any_picture_of_the_walk_at_any_width(system):
    start = corner.found_floor(system)
    wanted = [View(system, width=width) for width in (460.0, 700.0, 1000.0, 1280.0)]
    for step in corner.walk(system):
        drawn = outcome(fitted(start, step.changes)[0])
        assert at_every_width(corner_picture.picture, drawn, wanted) == {}


@SYSTEMS
def test_the_second_step_is_the_floor_as_it_was_found(system):
    start = corner.found_floor(system)
    assert fitted(start, corner.walk(system)[1].changes)[0] == start
    assert outcome(start).verdict.key == UNHELD


@SYSTEMS
def test_a_step_undoes_what_the_steps_before_it_did(system):
    fresh = corner.found_floor(system)
    assert_each_step_undoes_the_others(fresh, fresh, corner.walk(system))


@SYSTEMS
@pytest.mark.parametrize("key", CALLS)
def test_each_call_has_one_right_answer_and_named_beliefs(key, system):
    question = CALLS[key](system)
    assert question.key == key and len(question.choices) in (3, 4)
    assert_one_right_answer_and_named_beliefs(question)


@SYSTEMS
@pytest.mark.parametrize("key", CALLS)
def test_the_first_drawing_does_not_give_the_answer_away(key, system):
    question, view = CALLS[key](system), View(system)
    asked = set(roles(corner_picture.before(question.structure, view)))
    told = set(roles(corner_picture.picture(outcome(question.after), view)))
    assert "crack_gap" in told and not asked & {"crack_gap", "bar", "stretched_area"}


@pytest.mark.parametrize(
    ("slab", "found"),
    [
        (bakery(), "inside"),
        (bakery(held="ends", holds=0.3), "inside"),
        (bakery(shape="opening", cut_length=500.0, cut_width=500.0, cut_x=1500.0), "inside"),
    ],
)
def test_where_it_starts_follows_the_pull(slab, found):
    assert corner_calls._starts(outcome(slab)) == found


def test_a_pull_elsewhere_is_called_by_its_place():
    now = outcome(bakery())
    field = now.cornered.field
    found = {}
    for at in ((0.0, 3000.0), (0.0, 0.0), (1500.0, 1500.0), (3000.0, 3000.0)):
        near = (abs(field.x - at[0]).argmin(), abs(field.y - at[1]).argmin())
        share = field.share.copy()
        share[near[1], near[0]] = 99.0
        moved = replace(now.cornered, field=replace(field, share=share))
        found[at] = corner_calls._starts(replace(now, cornered=moved))
    assert list(found.values()) == ["side", "outside", "middle", "inside"]


@pytest.mark.parametrize(
    ("slab", "found"),
    [
        (bakery(), "halfway"),
        (bakery("US"), "halfway"),
        (bakery(held="ends", holds=0.3), "along"),
    ],
)
def test_which_way_it_runs_follows_the_hold(slab, found):
    assert corner_calls._runs(outcome(slab)) == found


@SYSTEMS
def test_the_lightest_bars_that_hold_are_right(system):
    found, _floors = corner_calls._bars_tried(system)
    held = {key for key, one in found.items() if one.verdict.key in (TIGHT, UNCRACKED)}
    assert held == {"close", "mat"}
    assert corner_calls._lightest(found) == "close"
    assert corner_calls._lightest({key: found[key] for key in ("wall", "mat")}) == "mat"
    unheld = {key: found[key] for key in ("wall", "far")}
    finest = min(unheld, key=lambda key: unheld[key].verdict.width)
    assert corner_calls._lightest(unheld) == finest


@pytest.mark.parametrize(
    ("system", "changes", "found"),
    [
        ("SI", {}, "as_wide"),
        ("US", {}, "as_wide"),
        ("SI", {"holds": 0.3}, "soon"),
        ("SI", {"holds": 0.05}, "never"),
        ("SI", {"rounding": 800.0}, "never"),
    ],
)
def test_what_a_round_corner_does_follows_the_floor(system, changes, found):
    slab = replace(corner.round_floor(system), **changes)
    sharp = replace(slab, rounding=0.0)
    assert corner_calls._in_the_end(sharp, slab) == found


@SYSTEMS
def test_every_variant_can_be_built_and_the_floor_as_it_stands_is_among_them(system):
    for _comparison, found in compared(system).values():
        assert_each_can_be_built_and_one_is_present(found)


@SYSTEMS
def test_what_helps_is_what_the_lesson_says(system):
    told = {key: [*helps(*found).values()] for key, found in compared(system).items()}
    assert told["bars"] == ["none", "lot", *told["bars"][2:3], "little", "lot"]
    assert told["count"] == ["none", "little", "lot", "lot", "lot"]
    assert told["means"] == ["none", "lot", "none", "lot", "lot", "lot"]
    assert told["thick"] == ["none", "little", "lot"]


@SYSTEMS
def test_bars_farther_off_hold_less(system):
    found = compared(system)["place"][1][1:]
    widths = [one.outcome.cornered.crack.widest for one in found]
    # the two nearest places differ by less than the mesh tells apart
    assert max(widths[:2]) < widths[2] < widths[3] < widths[4]
    assert widths[3] < found[3].outcome.verdict.limit.width < widths[4]


def test_the_notebook_asks_all_calls_that_it_needs():
    asked = asked_in_notebook(corner.LESSON)
    assert asked == set(corner.NEEDS.calls) == set(CALLS)
