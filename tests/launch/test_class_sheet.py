import csv
import io

import pytest

from crackkit.class_sheet import main, table, write_csv
from crackkit.learning.classroom import ClassRow

ROWS = (
    ClassRow("anna", "03_boat_ramp", 5, 4, True, "2026-03-02T09:10:00+00:00"),
    ClassRow("omar", trouble="cannot be read"),
    ClassRow("zoe"),
)


def test_each_learner_has_a_line_with_what_was_done():
    lines = table(ROWS).splitlines()
    assert len(lines) == 4
    assert lines[1].split() == ["anna", "03_boat_ramp", "4", "of", "5", "yes", "2026-03-02"]
    assert lines[2].endswith("cannot be read")
    assert lines[3].endswith("nothing yet")


def test_the_sheet_can_be_read_back():
    file = io.StringIO()
    write_csv(ROWS, file)
    rows = list(csv.DictReader(io.StringIO(file.getvalue())))
    assert (rows[0]["learner"], rows[0]["right"], rows[1]["trouble"]) == (
        "anna",
        "4",
        "cannot be read",
    )


def test_a_broken_file_is_named_and_the_others_still_count(tmp_path, capsys):
    (tmp_path / "omar.json").write_text("{")
    assert main([str(tmp_path)]) == 0
    assert "cannot be read" in capsys.readouterr().out


def test_a_folder_that_is_not_there_is_named(tmp_path, capsys):
    with pytest.raises(SystemExit):
        main([str(tmp_path / "nowhere")])
    assert "nowhere" in capsys.readouterr().err
