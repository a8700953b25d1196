"""The page to print."""

import pytest

from crackkit.drawing.labels import faults
from crackkit.sandbox import SimpleBeam, report


@pytest.fixture(scope="module")
def made():
    beam = SimpleBeam(span="20 ft", bars="4 #6", dead="0.8 kip/ft", point_load="6 kip at 8 ft")
    return report(beam, "Gate beam")


def test_both_files_are_written(made, tmp_path):
    files = made.save(tmp_path / "pages" / "gate.v2")
    assert [file.name for file in files] == ["gate.v2.html", "gate.v2.pdf"]
    assert files[1].read_bytes().startswith(b"%PDF")
    assert "Gate beam" in files[0].read_text("utf-8")


def test_an_ending_picks_one(made, tmp_path):
    assert [file.name for file in made.save(tmp_path / "gate.html")] == ["gate.html"]


def test_the_page_holds_inputs_picture_answers_cautions_and_working(made):
    html = made.html()
    case = made.answered
    assert html.startswith("<!DOCTYPE html>")
    for text in ("4 #6", "data:image/svg+xml", "Cautions", "Crack width: Frosch"):
        assert text in html
    assert all(label in html for _name, label, _value in case.inputs)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_words_touch_on_any_sheet(made, paper):
    sheets = made.sheets(paper)
    assert len(sheets) > 3
    assert [faults(page) for page in sheets] == [[] for _page in sheets]


def test_every_sheet_carries_the_caution_and_its_number(made):
    for number, page in enumerate(made.sheets(), 1):
        texts = " ".join(getattr(shape, "text", "") for shape in page.shapes)
        assert "not a design" in texts
        assert f"page {number} of" in texts
