"""The list of lessons: what is offered is there, and what is there is offered."""

import pytest

from crackkit.launch.places import LESSONS
from crackkit.learning import course
from crackkit.learning.logbook import LessonSummary


def test_every_notebook_but_the_start_page_is_in_the_course():
    there = {file.name for file in LESSONS.glob("*.ipynb")} - {"00_start_here.ipynb"}
    assert there <= {one.file for one in course.COURSE}


def test_only_lessons_that_are_there_are_ready(tmp_path):
    (tmp_path / "02_simple_beam.ipynb").write_text("{}")
    ready = [one.key for one in course.lessons(tmp_path) if one.ready]
    assert ready == ["02_simple_beam"]


def test_keys_are_unique_and_in_order():
    keys = [one.key for one in course.COURSE]
    assert keys == sorted(set(keys))


@pytest.mark.parametrize(
    ("summary", "state"),
    [
        (None, course.NOT_BEGUN),
        (LessonSummary(0, 0, False, None), course.NOT_BEGUN),
        (LessonSummary(3, 1, False, "2026-01-01"), course.BEGUN),
        (LessonSummary(0, 0, True, "2026-01-01"), course.DONE),
    ],
)
def test_the_state_follows_the_record(summary, state):
    assert course.state(summary) == state
