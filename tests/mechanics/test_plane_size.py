"""Sizes asked for: least where they were asked, and growing with the distance from there."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_bodies import l_slab, slab_with_opening
from crackkit.mechanics.plane_size import (
    MeshSize,
    distance_to_arcs,
    distance_to_lines,
    grown,
    size_field,
)

NONE = np.empty((0, 2))
BODY = slab_with_opening(6e3, 4e3, (3e3, 2e3), (1e3, 600.0), 200.0)
SIZE = MeshSize(20.0, 500.0, 1.5, 50.0, 24)
places = st.tuples(st.floats(0.0, 6e3), st.floats(0.0, 4e3))


def test_each_source_has_its_own_size():
    body = l_slab(6e3, 6e3, 3e3, 3e3)
    field = size_field(body, SIZE, body.inside_corners, np.array([(3e3, 3e3), (0.0, 0.0)]))
    at = field.at(np.array([(3e3, 3e3), (1e3, 1e3), (6e3, 0.0)]))
    assert at == pytest.approx((20.0, 50.0, 500.0))


def test_an_arc_has_so_many_pieces_for_a_turn():
    arc = next(side for side in BODY.sides if side.turn)
    field = size_field(BODY, SIZE, NONE, NONE)
    assert field.at(arc.points([0.0, 0.3, 1.0])) == pytest.approx(2 * np.pi * 200.0 / 24)


def test_a_size_grows_by_the_ratio_from_one_triangle_to_the_next():
    # Ends of triangles in a row, each as long as the size in its middle.
    ends, size = [0.0], [10.0]
    for _row in range(8):
        length = size[-1]
        for _again in range(60):
            length = grown(10.0, ends[-1] + 0.5 * length, 0.4)
        ends.append(ends[-1] + length)
        size.append(length)
    steps = np.diff(ends)
    assert steps[0] == 10.0
    assert steps[2:] / steps[1:-1] == pytest.approx(1.5, abs=0.1)


@given(places, places)
def test_sizes_change_no_faster_than_the_ratio_allows(one, two):
    field = size_field(BODY, SIZE, NONE, np.array([(3e3, 1.7e3), (3e3, 1e3), (2e3, 900.0)]))
    a, b = field.at(np.array([one, two]))
    assert abs(a - b) <= 0.5 * np.hypot(one[0] - two[0], one[1] - two[1]) * (1 + 1e-9) + 1e-9


@given(places)
def test_distances_are_those_to_the_nearest_of_many_points(place):
    x, y = np.array([place[0]]), np.array([place[1]])
    shares = np.linspace(0.0, 1.0, 4001)
    line, arc = BODY.sides[0], next(side for side in BODY.sides if side.turn)
    straight = distance_to_lines(x, y, np.array([[*line.start, *line.end]]))[0, 0]
    half = 0.5 * line.length / 4000  # of the way between two of the points
    assert _nearest(line.points(shares), place) - straight == pytest.approx(0.5 * half, abs=half)
    bent, brute = distance_to_arcs(x, y, np.array([arc.circle]))[0, 0], arc.points(shares)
    far = np.hypot(*(brute - place).T)
    if 0 < far.argmin() < 4000:
        assert bent == pytest.approx(far.min(), abs=0.4)
    elif np.isfinite(bent):
        assert bent == pytest.approx(far.min(), rel=1e-3)


@pytest.mark.parametrize(
    "wrong",
    [{"smallest": 0.0}, {"largest": 10.0}, {"ratio": 1.0}, {"ratio": 2.1}, {"crack": 0.0},
     {"per_turn": 8}],
)  # fmt: skip
def test_sizes_out_of_range_are_refused(wrong):
    with pytest.raises(ValueError):
        MeshSize(**wrong)


def _nearest(points, place):
    return np.hypot(*(points - place).T).min()
