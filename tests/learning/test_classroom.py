"""The instructor's view over the files a class handed in."""

import pytest

from crackkit.learning.classroom import class_report
from crackkit.learning.progress import Progress


@pytest.fixture
def folder(tmp_path):
    anna = Progress(tmp_path / "anna.json")
    anna.record("03", "a", 1, right=True)
    anna.record("02", "a", 1, right=False)
    anna.mark_done("03")
    Progress(tmp_path / "Omar" / "progress.json").record("03", "a", 2, right=False)
    Progress(tmp_path / "zoe.json").set_setting("units", "SI")
    (tmp_path / "broken.json").write_text("{")
    (tmp_path / "later.json").write_text('{"version": 99}')
    return tmp_path


def test_rows_come_learner_by_learner_and_lesson_by_lesson(folder):
    rows = [(r.learner, r.lesson, r.attempts, r.right, r.done) for r in class_report(folder)]
    assert rows == [
        ("anna", "02", 1, 0, False),
        ("anna", "03", 1, 1, True),
        ("broken", "", 0, 0, False),
        ("later", "", 0, 0, False),
        ("Omar", "03", 1, 0, False),
        ("zoe", "", 0, 0, False),
    ]


def test_files_that_cannot_be_read_are_named_and_left_alone(folder):
    trouble = {row.learner: row.trouble for row in class_report(folder) if row.trouble}
    assert trouble == {"broken": "cannot be read", "later": "written by a newer crackkit"}
    assert (folder / "broken.json").read_text() == "{"


def test_a_folder_that_is_not_there_is_an_error(tmp_path):
    with pytest.raises(NotADirectoryError, match="nowhere"):
        class_report(tmp_path / "nowhere")
