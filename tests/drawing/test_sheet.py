"""Sheets of paper made of shapes."""

import numpy as np
import pytest

from crackkit.drawing import sheet
from crackkit.drawing.blank_beam import blank_beam
from crackkit.drawing.frames import View
from crackkit.drawing.labels import faults, text_boxes
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Hint,
    Lines,
    Polygon,
    Polyline,
    Raster,
    Text,
    every_shape,
)
from crackkit.structures.simple_beam import PointLoad, SimpleBeam

TRIANGLE = np.array([(0.0, 0.0), (2.0, 0.0), (0.0, 4.0)])


@pytest.mark.parametrize(
    ("shape", "place"),
    [
        (Polygon(TRIANGLE, "card"), lambda s: s.points[1].tolist()),
        (Polyline(TRIANGLE, "axis"), lambda s: s.points[1].tolist()),
        (Lines(TRIANGLE[None, :2], "axis"), lambda s: s.segments[0, 1].tolist()),
        (Circle(2.0, 0.0, 1.0, "badge"), lambda s: [s.x, s.y]),
        (Text(2.0, 0.0, "a", "label"), lambda s: [s.x, s.y]),
        (Arrow(0.0, 0.0, 2.0, 0.0, "load"), lambda s: [s.x2, s.y2]),
        (Raster(2.0, 0.0, 1.0, 1.0, np.zeros((2, 2))), lambda s: [s.x, s.y]),
        (Hint(2.0, 0.0, 1.0, 1.0, "a"), lambda s: [s.x, s.y]),
        (Group((Circle(2.0, 0.0, 1.0, "badge"),)), lambda s: [s.shapes[0].x, s.shapes[0].y]),
    ],
    ids=lambda value: type(value).__name__,
)
def test_every_shape_can_be_moved_and_scaled(shape, place):
    assert place(sheet.moved(shape, 10.0, 20.0, 3.0)) == pytest.approx([16.0, 20.0])


def test_a_long_text_takes_more_sheets_and_loses_nothing():
    blocks = [sheet.words(f"Sentence number {k}.") for k in range(200)]
    pages = sheet.sheets(blocks, "Title", "Foot")
    said = " ".join(
        s.text for page in pages for s in every_shape(page.shapes) if hasattr(s, "text")
    )
    assert len(pages) > 3
    assert all(f"Sentence number {k}." in said for k in range(200))
    assert [faults(page) for page in pages] == [[] for _page in pages]


def test_words_too_long_for_a_column_are_cut_not_lost():
    row = ("x" * 300, "short")
    (block,) = sheet.table_rows([row], (200.0, 100.0))
    texts = [s.text for s in block.shapes if isinstance(s, Text)]
    assert "".join(t for t in texts if t.startswith("x")) == row[0]
    assert block.height > 60


@pytest.mark.parametrize("paper", sheet.PAPERS)
def test_a_sheet_has_the_shape_of_its_paper(paper):
    (page,) = sheet.sheets([sheet.gap(10.0)], "Title", "Foot", paper)
    wide, tall = sheet.PAPERS[paper]
    assert page.width / page.height == pytest.approx(wide / tall)


LOADS = (PointLoad(40e3, 0.0), PointLoad(40e3, 300.0), PointLoad(40e3, 600.0))


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize(
    "beam",
    [
        SimpleBeam(),
        SimpleBeam(span=1000.0, loads=(PointLoad(300e3, 1000.0),)),
        SimpleBeam(span=12000.0, overhang_left=3000.0, overhang_right=3000.0, loads=LOADS),
        SimpleBeam(loads=LOADS, self_weight=False, uniform_load=0.0),
    ],
    ids=["usual", "short", "long", "crowded"],
)
def test_no_words_touch_on_a_blank_beam(beam, system):
    assert faults(blank_beam(beam, View(system))) == []


def test_a_blank_beam_gives_nothing_away():
    picture = blank_beam(SimpleBeam(), View("SI"))
    roles = {shape.role for shape in every_shape(picture.shapes)}
    assert not roles & {"crack_gap", "hatch", "hatch_dense", "bar", "stretched_word", "bar_dot"}
    assert "40.0" in picture.description
    assert len(text_boxes(picture)) >= 7
