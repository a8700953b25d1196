"""Outlines: sides, arcs, loops."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_outline import PlaneOutline, PlaneSide, left_turn, rounded_loop

SQUARE = [(0, 0), (10, 0), (10, 10), (0, 10)]
NAMES = ("a", "b", "c", "d")

place = st.tuples(st.floats(-1e3, 1e3), st.floats(-1e3, 1e3))
turns = st.floats(-np.pi, np.pi).filter(lambda t: t == 0 or abs(t) > 1e-3)


@st.composite
def sides(draw):
    start = draw(place)
    length, angle = draw(st.floats(1.0, 1e3)), draw(st.floats(-3.0, 3.0))
    end = start[0] + length * np.cos(angle), start[1] + length * np.sin(angle)
    return PlaneSide("side", start, (float(end[0]), float(end[1])), draw(turns))


def test_a_quarter_circle():
    arc = PlaneSide("arc", (2.0, 0.0), (0.0, 2.0), np.pi / 2)
    assert arc.centre == pytest.approx((0.0, 0.0))
    assert arc.radius == pytest.approx(2.0)
    assert arc.length == pytest.approx(np.pi)
    assert arc.points([0.5])[0] == pytest.approx((2**0.5, 2**0.5))
    assert (arc.direction(0.0), arc.direction(1.0)) == pytest.approx((np.pi / 2, np.pi))
    assert arc.share_of((3 * np.cos(0.3), 3 * np.sin(0.3))) == pytest.approx((0.6 / np.pi, 1.0))


def test_half_a_circle_round_a_hole():
    arc = PlaneSide("arc", (-1.0, 0.0), (1.0, 0.0), -np.pi)
    assert arc.points([0.5])[0] == pytest.approx((0.0, 1.0))
    assert arc.share_of((0.0, 1.5)) == pytest.approx((0.5, 0.5))


@given(sides(), st.floats(0.01, 0.99))
def test_a_point_knows_where_it_lies(side, share):
    assert side.share_of(side.points([share])[0]) == pytest.approx((share, 0.0), abs=1e-6)


@given(sides(), st.floats(0.01, 0.99))
def test_pieces_follow_the_side(side, share):
    one, two = side.cut_at([share])
    assert (one.start, one.end, two.end) == (side.start, two.start, side.end)
    assert one.length + two.length == pytest.approx(side.length)
    assert one.points([0.5]) == pytest.approx(side.points([0.5 * share]), abs=1e-6)
    assert left_turn(two.direction(0.0), side.direction(share)) == pytest.approx(0.0, abs=1e-6)


@given(sides())
def test_length_is_that_of_many_short_chords(side):
    points = side.points(np.linspace(0.0, 1.0, 2001))
    assert np.hypot(*np.diff(points, axis=0).T).sum() == pytest.approx(side.length, rel=1e-6)
    assert (tuple(points[0]), tuple(points[-1])) == (side.start, side.end)


@pytest.mark.parametrize("radius", [0.0, 1.0, 4.0, 5.0])
def test_rounding_corners_takes_away_what_lies_outside_of_the_arcs(radius):
    body = PlaneOutline((rounded_loop(SQUARE, NAMES, radius),))
    assert body.area == pytest.approx(100.0 - (4.0 - np.pi) * radius**2)
    assert len(body.sides) == {0.0: 4, 5.0: 4}.get(radius, 8)
    assert body.box == pytest.approx(np.array([[0.0, 0.0], [10.0, 10.0]]))


def test_rounding_an_inside_corner_adds_concrete():
    corners = [(0, 0), (6, 0), (6, 3), (3, 3), (3, 6), (0, 6)]
    sharp = PlaneOutline((rounded_loop(corners, "abcdef"),))
    round_ = PlaneOutline((rounded_loop(corners, "abcdef", [0, 0, 0, 1, 0, 0]),))
    assert sharp.area == pytest.approx(27.0)
    assert round_.area == pytest.approx(27.0 + 1.0 - np.pi / 4)
    assert sharp.inside_corners.tolist() == [[3.0, 3.0]]
    assert round_.inside_corners.size == 0


def test_corners_of_a_hole_are_inside_corners():
    hole = rounded_loop([(4, 4), (4, 6), (6, 6), (6, 4)], ("e", "f", "g", "h"))
    body = PlaneOutline((rounded_loop(SQUARE, NAMES), hole))
    assert body.area == pytest.approx(96.0)
    assert sorted(body.inside_corners.tolist()) == [[4, 4], [4, 6], [6, 4], [6, 6]]


@pytest.mark.parametrize(
    ("before", "after", "turn"),
    [(0.0, 1.0, 1.0), (3.0, -3.0, 2 * np.pi - 6), (1.0, 0.0, -1.0), (0.2, 0.2, 0.0)],
)
def test_turns_are_counted_to_the_left(before, after, turn):
    assert left_turn(before, after) == pytest.approx(turn)


def test_what_is_no_outline_is_refused():
    loop = rounded_loop(SQUARE, NAMES)
    with pytest.raises(ValueError, match="left"):
        PlaneOutline((rounded_loop(SQUARE[::-1], NAMES),))
    with pytest.raises(ValueError, match="close"):
        PlaneOutline((loop[:-1],))
    with pytest.raises(ValueError, match="name"):
        PlaneOutline((rounded_loop(SQUARE, "aabc"),))
    with pytest.raises(ValueError, match="larger"):
        rounded_loop(SQUARE, NAMES, 5.1)
    with pytest.raises(ValueError, match="length"):
        PlaneSide("side", (1.0, 1.0), (1.0, 1.0))
