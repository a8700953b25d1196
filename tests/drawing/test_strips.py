"""What drawings of strips share: maps, hatches, charts, cracks, ticks, dimension lines."""

from types import SimpleNamespace

import numpy as np
import pytest

from crackkit.drawing.along_chart import line_key, low_end
from crackkit.drawing.blank_page import WIDTHS, paper_width
from crackkit.drawing.dimension_line import dimension_line
from crackkit.drawing.frames import LIMITS, NAMED, Along, Frame, View, picture_width
from crackkit.drawing.labels import box, width_of
from crackkit.drawing.shapes import Arrow, Lines, Text
from crackkit.drawing.strip_frames import along_strip, height_notes
from crackkit.drawing.strip_map import hatch_places, hatches, map_places, stress_map
from crackkit.drawing.through_cracks import openings, through_cracks
from crackkit.drawing.width_scale import Scale
from crackkit.drawing.width_ticks import LOWER, UPPER, width_names, width_ticks

ALONG = Along(100.0, 500.0, 4000.0)
SCALE = Scale(0.3, 0.6, Frame(0.0, 0.0, 256.0, 180.0))


def test_a_strip_lies_at_the_same_place_in_every_band():
    upper, lower = (along_strip(Frame(14.0, top, 600.0, 90.0), 4000.0) for top in (8.0, 400.0))
    assert upper == lower and upper.left - 14.0 == 614.0 - upper.right


@pytest.mark.parametrize(
    ("depth", "told"),
    [(10.0, ()), (30.0, ("height drawn 3 times larger", "height ×3")), (5.0, ("height ×0.5",))],
)
def test_a_height_that_is_not_to_scale_is_said_to_be(depth, told):
    body = SimpleNamespace(depth=depth, own_depth=100.0, along=ALONG)
    assert height_notes(body) == told


def test_the_map_shows_the_stress_where_it_is():
    places = map_places(ALONG)
    (raster,) = stress_map(ALONG, 10.0, 40.0, places / 4000.0)
    assert (raster.x, raster.x + raster.width) == (ALONG.left, ALONG.right)
    assert (np.diff(raster.values[0]) > 0).all() and 0.0 < places[0] < places[-1] < 4000.0


def test_hatches_are_dense_where_it_is_about_to_tear_and_absent_where_nothing_pulls():
    x, at = hatch_places(ALONG)
    thin, dense = hatches(x, at > 1000.0, at > 3000.0, (50.0, 90.0))
    assert (thin.role, dense.role) == ("hatch", "hatch_dense")
    for lines, first, last in ((thin, 1000.0, 3000.0), (dense, 3000.0, 4000.0)):
        start = (lines.segments[:, 0, 0] + 2.0 - ALONG.left) / ALONG.scale
        assert start.min() >= first and start.max() <= last
        assert set(lines.segments[:, 0, 1]) == {50.0, 90.0}
    apart = [np.diff(np.unique(lines.segments[:, 0, 0])) for lines in (thin, dense)]
    assert apart[0] == pytest.approx(2.0 * apart[1][0]) and np.ptp(apart[1]) < 1e-9
    assert hatches(x, at < 0.0, at < 0.0, (50.0,)) == []


def test_a_chart_goes_below_nothing_only_where_pressure_can_be_seen():
    assert low_end(np.array([0.0, 2.0]), 3.0) == 0.0
    assert low_end(np.array([-0.01, 2.0]), 3.0) == 0.0
    assert low_end(np.array([-1.0, 2.0]), 3.0) < -1.0


def test_names_of_lines_stand_apart():
    shapes, end = line_key([("strength", "now_line"), ("stress", "stretched_line")], 20.0, 90.0)
    first, second = (box(one) for one in shapes if isinstance(one, Text))
    assert first.right + 20.0 <= second.left and second.right < end


def test_cracks_keep_apart_and_grow_with_their_width():
    wide = openings(np.array([0.1, 0.2, 0.4]), np.array([10.0, 100.0, 200.0]))
    assert (np.diff(wide) > 0).all()
    close = openings(np.array([0.5, 0.5]), np.array([10.0, 14.0]))
    assert (close < 2.0).all()


def test_a_crack_keeps_its_shape_when_another_comes():
    (one,) = through_cracks(np.array([0.2]), np.array([50.0]), [1], 0.0, 40.0)
    (two,) = through_cracks(np.array([0.3, 0.2]), np.array([10.0, 50.0]), [2, 1], 0.0, 40.0)
    assert two.outlines[1] == pytest.approx(one.outlines[0])


@pytest.mark.parametrize("half", [LOWER, UPPER])
def test_each_width_has_a_tick_at_its_place_in_its_half(half):
    (ticks,) = width_ticks(SCALE, [0.1, 0.25], half)
    assert ticks.segments[:, 0, 0].tolist() == [SCALE(0.1), SCALE(0.25)]
    below = ticks.segments[..., 1] > SCALE.line
    assert below.all() if half == LOWER else not below.any()
    assert width_ticks(SCALE, []) == []


def test_names_of_close_widths_move_apart():
    shapes = width_names(SCALE, [(0.20, "crack 0.20", "label_bold"), (0.21, "EN 0.21", "note")])
    first, second = (box(one) for one in shapes if isinstance(one, Text))
    assert not first.meets(second)


def test_a_dimension_line_points_at_both_ends_and_spares_its_words():
    shapes = dimension_line(100.0, 500.0, 90.0, 70.0, "4.00 m")
    arrows = [one for one in shapes if isinstance(one, Arrow)]
    assert [one.x2 for one in arrows] == [100.0, 500.0]
    assert arrows[1].x1 - arrows[0].x1 > width_of("4.00 m", "label")
    assert not [one for one in shapes if isinstance(one, Lines)]


def test_paper_keeps_within_what_can_be_read():
    assert [paper_width(View(width=w)) for w in (100.0, 700.0, 5000.0)] == [
        *(WIDTHS[0], 700.0, WIDTHS[1])
    ]
    assert [picture_width(View(width=w)) for w in (100.0, 700.0, 5000.0)] == [
        *(LIMITS[0], 700.0, LIMITS[1])
    ]
    assert picture_width(View(layout="narrow")) == NAMED["narrow"]
