"""Every lesson runs, and every control in it can be moved anywhere without an error."""

import pytest

from crackkit.launch.places import LESSONS
from tests.lessons.panel_moves import STEPS
from tests.lessons.widget_driver import drive

lessons = sorted(LESSONS.glob("*.ipynb"))
# Each place of most sliders there is another body to be solved; structures have tests of their own.
FEWER = {"04_continuous_spans": 12, "07_curling": 6, "08_reentrant_corner": 4}


@pytest.mark.lesson
@pytest.mark.parametrize("lesson", lessons, ids=lambda lesson: lesson.stem)
def test_every_control_of_a_lesson_can_be_moved_anywhere(
    lesson, record_property, monkeypatch, tmp_path
):
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    result = drive(lesson, FEWER.get(lesson.stem, STEPS))
    record_property("moves", result.moves)
    print(f"{lesson.name}: {result.moves} moves in {result.seconds:.1f} s")
    assert result.errors == []
