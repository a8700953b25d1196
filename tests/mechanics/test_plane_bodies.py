"""Slabs and walls with inside corners: sizes, names, and what is refused."""

import numpy as np
import pytest

from crackkit.mechanics.plane_bodies import (
    l_slab,
    slab_round_column,
    slab_with_opening,
    tee_slab,
    wall_with_door,
)

SLAB = 6e3, 4e3


def test_an_l_has_one_inside_corner():
    body = l_slab(6e3, 5e3, 2e3, 1e3)
    assert body.area == pytest.approx(28e6)
    assert body.inside_corners.tolist() == [[4e3, 4e3]]
    assert [side.name for side in body.sides] == ["near", "right", "shelf", "riser", "far", "left"]
    assert [side.name for side in l_slab(6e3, 5e3, 2e3, 1e3, 100.0).sides][3] == "inside"


def test_a_tee_has_two_inside_corners_and_room_for_a_column():
    body = tee_slab(8e3, 6e3, 2e3, 2e3)
    assert body.area == pytest.approx(40e6)
    assert sorted(map(tuple, body.inside_corners.tolist())) == [(2e3, 4e3), (6e3, 4e3)]
    boxed = tee_slab(8e3, 6e3, 2e3, 2e3, ((4e3, 2e3), 600.0, "square"))
    assert boxed.area == pytest.approx(40e6 - 0.36e6)
    assert len(boxed.inside_corners) == 6
    for place in ((1e3, 3.5e3), (2.5e3, 5e3)):
        assert tee_slab(8e3, 6e3, 2e3, 2e3, (place, 600.0, "square")).area < 40e6


@pytest.mark.parametrize("turned", [0.0, 0.4, np.pi / 2])
@pytest.mark.parametrize("radius", [0.0, 100.0, 300.0])
def test_an_opening_takes_its_area(turned, radius):
    body = slab_with_opening(*SLAB, (2.5e3, 2e3), (1e3, 600.0), radius, turned)
    assert body.area == pytest.approx(24e6 - 6e5 + (4 - np.pi) * radius**2)
    assert len(body.inside_corners) == (4 if radius == 0 else 0)


def test_a_square_opening_can_become_a_circle():
    body = slab_with_opening(*SLAB, (3e3, 2e3), (800.0, 800.0), 400.0, 0.3)
    arcs = body.loops[1]
    assert len(arcs) == 4
    assert all(arc.centre == pytest.approx((3e3, 2e3)) for arc in arcs)
    assert all(arc.radius == pytest.approx(400.0) for arc in arcs)


def test_sides_of_an_opening_are_named_by_where_they_lie():
    body = slab_with_opening(*SLAB, (3e3, 2e3), (1e3, 600.0), 50.0)
    middle = {side.name: side.points([0.5])[0] - (3e3, 2e3) for side in body.loops[1]}
    assert middle["opening near"] == pytest.approx((0.0, -300.0))
    assert middle["opening right"] == pytest.approx((500.0, 0.0))
    assert (np.sign(middle["opening far left"]) == (-1, 1)).all()
    assert (np.sign(middle["opening near right"]) == (1, -1)).all()


@pytest.mark.parametrize(
    ("form", "area"), [("square", 36e4), ("diamond", 36e4), ("round", 9e4 * np.pi)]
)
def test_a_box_out_inside_takes_its_area(form, area):
    body = slab_round_column(*SLAB, (3e3, 2e3), 600.0, form)
    assert body.area == pytest.approx(24e6 - area)
    assert len(body.loops) == 2


@pytest.mark.parametrize("y", [-200.0, -100.0, 0.0, 100.0, 250.0])
@pytest.mark.parametrize("form", ["square", "diamond", "round"])
def test_a_box_out_cut_into_the_edge_takes_the_part_that_lies_in_the_slab(form, y):
    body = slab_round_column(*SLAB, (3e3, y), 600.0, form)
    # Width of the box-out over its height, in thin strips.
    up = (np.arange(200_000) + 0.5) * 4e3 / 200_000 - y
    half = {
        "square": np.where(abs(up) < 300.0, 300.0, 0.0),
        "diamond": np.maximum(300.0 * 2**0.5 - abs(up), 0.0),
        "round": np.sqrt(np.maximum(300.0**2 - up**2, 0.0)),
    }[form]
    assert body.area == pytest.approx(24e6 - 2 * half.sum() * 4e3 / 200_000, rel=1e-6)
    assert len(body.loops) == 1
    assert [side.name for side in body.sides][0] == "near left"
    assert "near right" in [side.name for side in body.sides]


def test_a_door_has_two_inside_corners_at_its_top():
    body = wall_with_door(6e3, 3e3, 2e3, 1e3, 2.1e3)
    assert body.area == pytest.approx(18e6 - 2.1e6)
    assert body.inside_corners.tolist() == [[2e3, 2.1e3], [3e3, 2.1e3]]


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: l_slab(6e3, 6e3, 6e3, 1e3),
        lambda: l_slab(6e3, 6e3, 1e3, 2e3, 1.1e3),
        lambda: slab_with_opening(*SLAB, (300.0, 2e3), (800.0, 400.0)),
        lambda: slab_with_opening(*SLAB, (3e3, 2e3), (800.0, 0.0)),
        lambda: slab_with_opening(*SLAB, (3e3, 2e3), (800.0, 400.0), 201.0),
        lambda: slab_round_column(*SLAB, (3e3, 2e3), 600.0, "oval"),
        lambda: slab_round_column(*SLAB, (100.0, 0.0), 600.0),
        lambda: slab_round_column(*SLAB, (3e3, 290.0), 600.0, "round"),
        lambda: slab_round_column(*SLAB, (3e3, -400.0), 600.0),
        lambda: tee_slab(6e3, 6e3, 3e3, 1e3),
        lambda: tee_slab(8e3, 6e3, 2e3, 2e3, ((1e3, 3.8e3), 600.0, "square")),
        lambda: tee_slab(8e3, 6e3, 2e3, 2e3, ((4e3, 5.8e3), 600.0, "round")),
        lambda: wall_with_door(6e3, 3e3, 5.5e3, 1e3, 2e3),
        lambda: wall_with_door(6e3, 3e3, 2e3, 1e3, 3e3),
    ],
)
def test_what_does_not_fit_is_refused(wrong):
    with pytest.raises(ValueError):
        wrong()
