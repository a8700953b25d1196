"""The stiffness as a few nodes feel it, against full matrices; and meshes split by a crack."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.plane_bodies import l_slab
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_factor import plane_factor
from crackkit.mechanics.plane_mesh import MeshSize, mesh
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold, edge_forces, side_nodes

SHEET = Sheet(20e3, 0.2, 100.0)
HOLDS = [Hold("left", "normal"), Hold("near", "normal"), Hold("right", "x", 40.0)]
SIZE = MeshSize(smallest=100.0, largest=600.0, crack=150.0)


@pytest.fixture(scope="module")
def split():
    outline = l_slab(4000.0, 4000.0, 2000.0, 2000.0)
    return mesh(outline, SIZE, crack=[(2000.0, 2000.0), (1000.0, 1100.0)])


@pytest.fixture(scope="module")
def open_crack():
    """A slab whose crack is a saw cut in the middle of its near side."""
    outline = l_slab(4000.0, 4000.0, 2000.0, 2000.0)
    return mesh(outline, SIZE, corners=(), crack=[(1500.0, 0.0), (1500.0, 800.0)])


def sound_state():
    whole = mesh(l_slab(4000.0, 4000.0, 2000.0, 2000.0), SIZE, corners=())
    holds = [Hold("left", "normal"), Hold("far", "y")]
    return plane_body(whole, SHEET, holds).state(edge_forces(whole, "right", (100.0, 0.0)))


def end_moves(state):
    return state.movement[side_nodes(state.body.mesh, "right"), 0].mean()


def equations(nodes):
    return (2 * np.asarray(nodes)[:, None] + np.arange(2)).ravel()


@settings(max_examples=12)
@given(st.lists(st.integers(0, 150), min_size=1, max_size=30, unique=True))
def test_a_few_nodes_feel_what_is_left_when_all_others_are_eliminated(split, nodes):
    """Schur's complement of the full matrix, by numpy."""
    body = plane_body(split, SHEET, HOLDS, last=nodes)
    K = body.stiffness.toarray()
    free = body.is_free
    K[~free], K[:, ~free] = 0.0, 0.0
    K[~free, ~free] = body.stiffness.diagonal()[~free]
    kept = equations(nodes)
    rest = np.setdiff1d(np.arange(len(K)), kept)
    schur = K[np.ix_(kept, kept)] - K[np.ix_(kept, rest)] @ np.linalg.solve(
        K[np.ix_(rest, rest)], K[np.ix_(rest, kept)]
    )
    assert body.factor.condensed == pytest.approx(schur, rel=1e-7, abs=1e-9 * abs(K).max())


def test_the_order_of_elimination_changes_no_movement(split):
    crack = split.crack
    nodes = np.union1d(crack.first, crack.second)
    plain, kept = (plane_body(split, SHEET, HOLDS, last=last) for last in (None, nodes))
    loads = np.stack([edge_forces(split, "far", (3.0, 9.0)), plain.shrinkage_forces(2e-4)], axis=1)
    moved = plain.solve(loads)
    assert kept.solve(loads) == pytest.approx(moved, abs=1e-10 * abs(moved).max())
    assert kept.solve(loads[:, 0]) == pytest.approx(moved[:, 0], abs=1e-10 * abs(moved).max())


def test_an_order_that_was_changed_on_the_way_is_seen():
    """Kept equations that the factors did not keep for last are found by solutions instead."""
    from scipy.sparse import csr_array
    from scipy.sparse.linalg import splu

    from crackkit.mechanics.plane_factor import PlaneFactor

    rng = np.random.default_rng(5)
    full = rng.normal(size=(12, 12))
    full = full @ full.T + 12 * np.eye(12)
    straight = plane_factor(csr_array(full), np.ones(12, bool), [4, 5])
    exact = np.linalg.inv(np.linalg.inv(full)[8:, 8:])
    assert straight.condensed == pytest.approx(exact, rel=1e-10)
    turned = splu(csr_array(full[::-1][:, ::-1]).tocsc(), permc_spec="COLAMD")
    other = PlaneFactor(turned, np.arange(12)[::-1], 4)
    exact = np.linalg.inv(np.linalg.inv(full)[:4, :4])[::-1, ::-1]
    assert other.condensed == pytest.approx(exact, rel=1e-10)


def test_a_cut_lets_a_slab_stretch_more_and_its_lips_part(open_crack):
    holds = [Hold("left", "normal"), Hold("far", "y")]
    pull = edge_forces(open_crack, "right", (100.0, 0.0))
    state = plane_body(open_crack, SHEET, holds).state(pull)
    crack = open_crack.crack
    gap = state.movement[crack.second, 0] - state.movement[crack.first, 0]
    gap = gap if gap[0] > 0 else -gap
    assert (gap[:-1] > 0).all() and gap[-1] == 0
    assert (np.diff(gap) <= 1e-12).all()
    assert end_moves(state) > 1.02 * end_moves(sound_state())


def test_a_side_with_a_cut_has_all_its_nodes_once(open_crack):
    nodes = side_nodes(open_crack, "near")
    assert len(set(nodes)) == len(nodes)
    on_side = np.flatnonzero(abs(open_crack.points[:, 1]) < 1e-9)
    assert set(nodes) == set(on_side)
    assert {int(open_crack.crack.first[0]), int(open_crack.crack.second[0])} <= set(nodes)


def test_springs_across_a_cut_make_the_slab_whole_again(open_crack):
    """Stiff springs between the lips give the slab without a cut back."""
    from scipy.sparse import coo_array

    crack = open_crack.crack
    apart = crack.first != crack.second
    first, second = equations(crack.first[apart]), equations(crack.second[apart])
    row, one = np.arange(len(first)), np.ones(len(first))
    B = coo_array(
        (np.r_[one, -one], (np.r_[row, row], np.r_[first, second])),
        shape=(len(first), 2 * len(open_crack.points)),
    )
    holds = [Hold("left", "normal"), Hold("far", "y")]
    body = plane_body(open_crack, SHEET, holds, extra=1e9 * (B.T @ B).tocsr())
    state = body.state(edge_forces(open_crack, "right", (100.0, 0.0)))
    assert abs(B @ state.movement.ravel()).max() < 1e-4 * abs(state.movement).max()
    assert end_moves(state) == pytest.approx(end_moves(sound_state()), rel=0.002)
