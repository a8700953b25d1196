"""Points strewn over slabs, their neighbours, and the lines along which bonds tear."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.lattice_points import lattice_points
from crackkit.mechanics.plane_bodies import (
    l_slab,
    slab_round_column,
    slab_with_opening,
    wall_with_door,
)
from tests.mechanics.lattices import equal_triangles

BODIES = {
    "L": l_slab(6000.0, 5000.0, 3000.0, 2000.0),
    "rounded L": l_slab(6000.0, 5000.0, 3000.0, 2000.0, 400.0),
    "opening": slab_with_opening(6000.0, 6000.0, (2500.0, 3000.0), (1200.0, 900.0), 200.0),
    "round column": slab_round_column(6000.0, 6000.0, (3000.0, 3000.0), 600.0, "round"),
    "column at the edge": slab_round_column(6000.0, 4000.0, (3000.0, 0.0), 600.0, "diamond"),
    "door": wall_with_door(5000.0, 3000.0, 2000.0, 1000.0, 2100.0),
}


@pytest.fixture(params=BODIES)
def body(request):
    return BODIES[request.param]


def areas(lattice):
    a, b, c = (lattice.points[lattice.triangles[:, k]] @ np.array([1.0, 1j]) for k in (0, 1, 2))
    return 0.5 * abs(((b - a).conjugate() * (c - a)).imag)


def test_triangles_fill_the_body(body):
    lattice = lattice_points(body, 1500, 4)
    turns = sum(abs(s.turn) * s.radius**2 * s.turn**2 for s in body.sides if s.turn)
    assert areas(lattice).sum() == pytest.approx(body.area, abs=1e-6 * body.area + turns)
    assert 1400 < len(lattice.points) < 2500


def test_bonds_are_about_as_long_as_each_other(body):
    lengths = lattice_points(body, 1500, 1).lengths
    assert np.quantile(lengths, 0.98) < 2.0 * np.median(lengths)
    assert np.quantile(lengths, 0.02) > 0.5 * np.median(lengths)


def test_what_bonds_stand_for_fills_the_body(body):
    """Each bond and what it is wide make a kite of half length times width."""
    lattice = lattice_points(body, 1500, 2)
    assert 0.5 * lattice.lengths @ lattice.widths == pytest.approx(body.area, rel=0.01)


def test_sides_run_from_corner_to_corner_along_the_outline(body):
    lattice = lattice_points(body, 1500, 3)
    for side in body.sides:
        nodes = lattice.sides[side.name]
        ends = lattice.points[nodes[[0, -1]]]
        np.testing.assert_allclose(ends, [side.start, side.end], atol=1e-6)
        far = max(side.share_of(point)[1] for point in lattice.points[nodes])
        assert far < 1e-6


def test_loops_walk_round_the_body_with_the_body_on_the_left(body):
    lattice = lattice_points(body, 1500, 3)
    total = 0.0
    for loop in lattice.loops:
        x, y = lattice.points[loop].T
        total += 0.5 * float(x @ np.roll(y, -1) - y @ np.roll(x, -1))
    assert total == pytest.approx(areas(lattice).sum(), rel=1e-9)


def test_facets_of_equal_triangles_are_square_to_their_bonds():
    lattice = equal_triangles(100.0, 6, 6)
    along = np.einsum("bk,bk->b", lattice.facets[:, 1] - lattice.facets[:, 0], lattice.directions)
    np.testing.assert_allclose(along, 0.0, atol=1e-9)
    reach = np.hypot(*(lattice.facets[:, 1] - lattice.facets[:, 0]).T)
    np.testing.assert_allclose(reach, lattice.widths, rtol=1e-9)


def test_facets_join_to_lines():
    """Each triangle is the end of three facets, one for each of its bonds."""
    lattice = lattice_points(BODIES["L"], 600, 0)
    middles = lattice.points[lattice.triangles].mean(axis=1)
    ends = lattice.facets.reshape(-1, 2)
    far = np.hypot(*(ends[None] - middles[:, None]).transpose(2, 0, 1))
    assert ((far < 1e-6).sum(axis=1) == 3).all()


@settings(max_examples=10, deadline=None)
@given(st.integers(0, 10_000))
def test_the_same_seed_strews_the_same_points_and_another_other_ones(seed):
    first, again, other = (lattice_points(BODIES["L"], 300, s) for s in (seed, seed, seed + 1))
    np.testing.assert_array_equal(first.points, again.points)
    np.testing.assert_array_equal(first.bonds, again.bonds)
    assert first.points.shape != other.points.shape or (first.points != other.points).any()


def test_too_few_points_are_refused():
    with pytest.raises(ValueError, match="hundred"):
        lattice_points(BODIES["L"], 99)
