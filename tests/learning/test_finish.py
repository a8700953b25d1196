"""A lesson is done when its calls are made, its task is passed and enough answers are right."""

import pytest

from crackkit.learning.finish import Needs, finished, needs_told
from crackkit.learning.progress import Progress

NEEDS = Needs("a_lesson", ("stretch", "cracks"), ("a_task",), 2)


@pytest.fixture
def store(tmp_path):
    return Progress(tmp_path / "progress.json")


def record(store, *items, right=True):
    for item in items:
        store.record("a_lesson", item, "answer", right)


def test_nothing_is_done_at_first(store):
    assert not any(need.done for need in needs_told(NEEDS, store))
    assert not finished(NEEDS, store)


def test_a_wrong_call_is_a_call(store):
    record(store, "stretch", "cracks", right=False)
    assert [need.done for need in needs_told(NEEDS, store)] == [True, False, False]


def test_wrong_answers_and_failed_tasks_do_not_count(store):
    record(store, "stretch", "cracks")
    record(store, "a_task", "quiz", "quiz", right=False)
    assert not finished(NEEDS, store)


def test_a_lesson_with_everything_done_is_marked_as_done(store):
    record(store, "stretch", "cracks", "a_task", "quiz", "quiz")
    assert finished(NEEDS, store)
    assert store.done("a_lesson")


def test_what_was_done_in_another_lesson_does_not_count(store):
    for item in ("stretch", "cracks", "a_task", "quiz", "quiz"):
        store.record("another", item, "answer", True)
    assert not finished(NEEDS, store)
