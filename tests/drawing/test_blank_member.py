"""The drawing a learner predicts on: readable at every width, silent before the call."""

from dataclasses import replace

import pytest

from crackkit.drawing.blank_member import blank_member, strips
from crackkit.drawing.frames import View
from crackkit.drawing.labels import faults, text_boxes
from crackkit.drawing.shapes import Raster, every_shape
from crackkit.learning.simple_beam import canteen_beam, canteen_beam_with_ends
from crackkit.structures.simple_beam import PointLoad

BEAMS = {
    "plain": canteen_beam(),
    "ends": canteen_beam_with_ends(),
    "three loads": replace(
        canteen_beam(), loads=tuple(PointLoad(250e3, at) for at in (5700.0, 5800.0, 5900.0))
    ),
    "short end": replace(canteen_beam(), overhang_left=60.0),
    "no load": replace(
        canteen_beam(), uniform_load=0.0, self_weight=False, loads=(PointLoad(0.0, 0.0),)
    ),
}


@pytest.mark.parametrize("width", [300, 560, 840, 1280])
@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("kind", BEAMS)
def test_no_words_overlap_or_leave_the_paper(kind, system, width):
    picture = blank_member(BEAMS[kind], View(system, live=False, width=width))
    assert not faults(picture)


@pytest.mark.parametrize("kind", ["plain", "ends"])
def test_the_blank_drawing_depends_on_nothing_that_is_solved(kind):
    beam = BEAMS[kind]
    other = replace(beam, bottom=replace(beam.bottom, number=0), strength=20.0)
    view = View("SI", live=False, width=840)
    blank = [box.text for box in text_boxes(blank_member(beam, view))]
    assert blank == [box.text for box in text_boxes(blank_member(other, view))]
    assert not any(isinstance(s, Raster) for s in every_shape(blank_member(beam, view).shapes))


def test_the_cells_lie_on_the_concrete_of_the_drawing():
    place = strips(BEAMS["plain"], View("SI", live=False, width=840))
    assert place.left < place.right < 840 and place.top + place.height < place.bottom


def test_the_answer_shows_stress_and_cracks():
    beam, view = BEAMS["plain"], View("SI", live=False, width=840)
    shown = list(every_shape(blank_member(beam, view, beam.solve(), "both").shapes))
    assert any(isinstance(shape, Raster) for shape in shown)
    assert sum(getattr(shape, "role", "") == "bar" for shape in shown) == 2
    assert any(getattr(shape, "role", "") == "crack_gap" for shape in shown)
