"""Values anywhere in a slab: found in the right triangle, curved sides or not, or nowhere."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_bodies import slab_with_opening
from crackkit.mechanics.plane_elements import shapes
from crackkit.mechanics.plane_mesh import MeshSize, mesh
from crackkit.mechanics.plane_sampling import located, sampled
from tests.mechanics.plane_grids import grid_mesh, l_slab
from tests.mechanics.test_plane_elements import ring


@pytest.fixture(scope="module")
def curved():
    return grid_mesh(np.linspace(0, 1, 4), np.linspace(0, 1, 4), ring)


@given(st.lists(st.tuples(st.floats(0, 1), st.floats(0, 1)), min_size=1, max_size=30))
def test_a_place_is_where_its_shares_put_it(curved, where):
    at = ring(*np.array(where).T)
    which, share = located(curved, at)
    inside = which >= 0
    back = np.einsum(
        "pk,pkc->pc", shapes(share[inside]), curved.points[curved.triangles[which[inside]]]
    )
    assert back == pytest.approx(at[inside], abs=1e-9)
    assert (share[inside] >= -1e-8).all()
    # Parabolas lie within 1e-3 of the arcs: only what is closer to a rim than that may be missed.
    s = np.array(where)[:, 0]
    assert inside[(s > 0.002) & (s < 0.998)].all()


def test_what_lies_outside_is_not_a_number(curved):
    values = sampled(curved, curved.points, [[0.5, 0.5], [2.0, 2.5], [-1.0, 0.0], [1.0, 1.2]])
    assert np.isnan(values[:3]).all()
    assert values[3] == pytest.approx([1.0, 1.2])


def test_in_a_strongly_graded_mesh_every_place_is_found():
    grid = l_slab(6000.0, 3000.0, 0.5, 1.8)
    at = np.random.default_rng(1).uniform(-3000, 3000, (2000, 2))
    fine = np.random.default_rng(2).uniform(-5, 5, (2000, 2))
    for places in (at, fine, grid.points):
        is_inside = (places <= 1e-9).any(axis=1)
        found = sampled(grid, grid.points, places)
        assert found[is_inside] == pytest.approx(places[is_inside], abs=1e-7)
        assert np.isnan(found[~is_inside]).all()


def test_no_place_of_an_opening_with_round_corners_belongs_to_the_slab():
    outline = slab_with_opening(4000.0, 3000.0, (1500.0, 1500.0), (800.0, 600.0), 200.0)
    body = mesh(outline, MeshSize(smallest=20.0, largest=400.0))
    x, y = np.random.default_rng(3).uniform(0, 1, (2, 3000)) * [[4000.0], [3000.0]]
    dx, dy = abs(x - 1500.0) - 200.0, abs(y - 1500.0) - 100.0
    gap = np.hypot(np.maximum(dx, 0), np.maximum(dy, 0)) + np.minimum(np.maximum(dx, dy), 0) - 200
    found = ~np.isnan(sampled(body, body.points[:, 0], np.stack([x, y], axis=1)))
    assert found[gap > 1.0].all()
    assert not found[gap < -1.0].any()
