"""Slabs pulled in their own plane: even stress is exact, holds hold, and forces balance."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_solution import plane_body, principal
from crackkit.mechanics.plane_supports import Hold, edge_forces, point_forces, side_nodes
from tests.mechanics.plane_grids import graded, grid_mesh, l_slab

SHEET = Sheet(30e3, 0.2, 150.0)
gradients = st.lists(st.floats(-1e-3, 1e-3), min_size=4, max_size=4)


def wavy(s, t):
    """A square of 1 m whose inner nodes are pushed about, so that no two triangles are alike."""
    push = 40.0 * np.sin(np.pi * s) * np.sin(np.pi * t)
    x = 1000 * s + push * np.sin(7 * s + 3 * t)
    y = 1000 * t + push * np.cos(5 * s - 4 * t)
    return np.stack([x, y], axis=1)


def straight(mesh):
    """The same mesh with the middles of sides halfway between the corners."""
    for k in range(3):
        ends = mesh.triangles[:, [k, (k + 1) % 3]]
        mesh.points[mesh.triangles[:, 3 + k]] = mesh.points[ends].mean(axis=1)
    return mesh


@pytest.fixture(scope="module")
def patch():
    return straight(grid_mesh(np.linspace(0, 1, 6), np.linspace(0, 1, 5), wavy))


def rim(mesh):
    return np.unique(np.concatenate([side_nodes(mesh, name) for name in mesh.sides]))


@given(slope=gradients)
def test_an_even_stretch_given_at_the_rim_is_even_inside(patch, slope):
    """The patch test: any linear movement of the rim carries on inside, to rounding."""
    linear = patch.points @ np.reshape(slope, (2, 2)).T
    nodes = rim(patch)
    holds = [Hold(nodes, "xy"[k], movement=linear[nodes, k]) for k in (0, 1)]
    state = plane_body(patch, SHEET, holds).state()
    scale = max(abs(linear).max(), 1e-6)
    assert state.movement == pytest.approx(linear, abs=1e-9 * scale)
    (a, b), (c, d) = np.reshape(slope, (2, 2))
    E, v = 30e3, 0.2
    expected = [(a + v * d), (d + v * a), (b + c) * (1 - v) / 2]
    stress = E / (1 - v * v) * np.array(expected)
    assert state.element_stress == pytest.approx(
        np.broadcast_to(stress, (*patch.triangles.shape, 3)), abs=1e-9 * E * scale / 1e3
    )


def test_an_even_pull_at_the_edge_stretches_evenly_where_sides_curve():
    """Curved sides leave an error of the second order in the bulge, not more."""
    mesh = grid_mesh(np.linspace(0, 1, 9), np.linspace(0, 1, 9), wavy)
    holds = [Hold("left", "x"), Hold("bottom", "y")]
    state = plane_body(mesh, SHEET, holds).state(edge_forces(mesh, "right", (150.0, 0.0)))
    assert state.stress[:, 0] == pytest.approx(1.0, abs=2e-2)
    assert state.movement[side_nodes(mesh, "right"), 0] == pytest.approx(1 / 30, rel=1e-3)


def test_a_slab_that_nothing_hinders_shrinks_without_stress(patch):
    corner = np.argmin(patch.points.sum(axis=1))
    beside = np.argmin(abs(patch.points - [1000.0, 0.0]).sum(axis=1))
    holds = [Hold([corner], "x"), Hold([corner], "y"), Hold([beside], "y")]
    state = plane_body(patch, SHEET, holds).state(shortening=3e-4)
    assert abs(state.element_stress).max() < 1e-9
    assert state.movement == pytest.approx(-3e-4 * patch.points, abs=1e-10)


def test_a_slab_held_all_round_is_stretched_as_much_as_it_would_shrink(patch):
    holds = [Hold(name, way) for name in patch.sides for way in ("x", "y")]
    state = plane_body(patch, SHEET, holds).state(shortening=2e-4)
    full = 30e3 * 2e-4 / (1 - 0.2)
    assert state.stress[:, :2] == pytest.approx(full, rel=1e-9)
    assert state.stress[:, 2] == pytest.approx(0.0, abs=1e-9)
    assert principal(state.stress)[0] == pytest.approx(full, rel=1e-9)


def test_a_quarter_that_shrinks_more_is_the_same_as_told_by_triangle_or_by_point(patch):
    holds = [Hold("left", "x"), Hold("bottom", "y"), Hold("right", "x")]
    body = plane_body(patch, SHEET, holds)
    each = np.linspace(0, 4e-4, len(patch.triangles))
    by_triangle, by_point = (
        body.state(shortening=s).movement for s in (each, np.repeat(each, 3).reshape(-1, 3))
    )
    assert by_triangle == pytest.approx(by_point, abs=1e-15)
    assert abs(by_triangle).max() > 1e-3


@given(share=st.floats(0.05, 20.0))
def test_springs_at_both_ends_share_the_shrinkage_with_the_slab(patch, share):
    """A bar between two springs k and k: stress E eps k/(k + 2 E h/L)."""
    k = share * 2 * 30e3 * 150 / 1000
    holds = [Hold("left", "normal", k), Hold("right", "normal", k), Hold("bottom", "y")]
    state = plane_body(patch, SHEET, holds).state(shortening=1e-4)
    assert state.stress[:, 0] == pytest.approx(3.0 * share / (1 + share), rel=1e-8)
    assert state.stress[:, 1] == pytest.approx(0.0, abs=1e-8)


def test_a_spring_that_is_moved_pulls_the_slab_along(patch):
    k = 400.0
    holds = [Hold("left", "x"), Hold("bottom", "y"), Hold("right", "normal", k, movement=0.5)]
    state = plane_body(patch, SHEET, holds).state()
    slab = 30e3 * 150 / 1000
    moved = 0.5 * k / (k + slab)
    assert state.movement[side_nodes(patch, "right"), 0] == pytest.approx(moved, rel=1e-8)


def test_springs_at_nodes_hold_with_what_each_of_them_gives(patch):
    nodes = side_nodes(patch, "left")
    springs = [Hold(nodes, "x", 2e3), Hold([nodes[0]], "y"), Hold("right", "y")]
    body = plane_body(patch, SHEET, springs)
    state = body.state(edge_forces(patch, "right", (60.0, 0.0)))
    assert 2e3 * state.movement[nodes, 0].sum() == pytest.approx(60.0 * 1000.0, rel=1e-9)


def test_holds_give_back_all_that_pulls(patch):
    force = point_forces(patch, int(rim(patch)[7]), (3e3, -5e3))
    force += edge_forces(patch, "top", lambda at, out: 0.1 * at[..., :1] * out)
    body = plane_body(patch, SHEET, [Hold("left", "x"), Hold("left", "y")])
    state = body.state(force, shortening=1e-4)
    whole = force + body.shrinkage_forces(1e-4)
    back = body.reactions(state.movement, whole)
    total = force.reshape(-1, 2)
    assert back.sum(axis=0) == pytest.approx(-total.sum(axis=0), rel=1e-9)
    x, y = patch.points.T
    turning = x @ (back + total)[:, 1] - y @ (back + total)[:, 0]
    assert turning == pytest.approx(0.0, abs=1e-3)


def test_work_is_mutual(patch):
    """Betti: each of two loads does as much on the movement of the other."""
    body = plane_body(patch, SHEET, [Hold("left", "x"), Hold("left", "y")])
    one = edge_forces(patch, "top", (1.0, 2.0))
    other = edge_forces(patch, "right", (-3.0, 1.0))
    both = body.solve(np.stack([one, other], axis=1))
    assert one @ both[:, 1] == pytest.approx(other @ both[:, 0], rel=1e-10)


@given(slope=gradients, k=st.integers(0, 4))
def test_movement_anywhere_is_that_of_the_triangle_there(patch, slope, k):
    linear = patch.points @ np.reshape(slope, (2, 2)).T
    nodes = rim(patch)
    holds = [Hold(nodes, "xy"[c], movement=linear[nodes, c]) for c in (0, 1)]
    state = plane_body(patch, SHEET, holds).state()
    at = np.random.default_rng(k).uniform(0, 1000, (20, 2))
    assert state.movement_at(at) == pytest.approx(at @ np.reshape(slope, (2, 2)).T, abs=1e-9)


def test_an_l_slab_on_rollers_is_stretched_alike_on_both_sides_of_its_diagonal():
    mesh = l_slab(6000.0, 3000.0, 20.0, 1.6)
    holds = [Hold(name, "normal") for name in ("left", "bottom", "right", "top")]
    state = plane_body(mesh, Sheet(15e3, 0.2, 150.0), holds).state(shortening=2e-4)
    r = np.linspace(50, 2000, 12)
    low, high = state.stress_at(np.c_[-r, 0.3 * r]), state.stress_at(np.c_[0.3 * r, -r])
    assert low[:, [1, 0, 2]] == pytest.approx(high, rel=1e-9, abs=1e-9)
    s1 = state.principal[0]
    worst = np.argmax(s1)
    assert np.hypot(*mesh.points[worst]) < 1e-6
    assert abs(state.principal[2][worst]) == pytest.approx(np.pi / 4, abs=1e-6)


@pytest.mark.parametrize(
    "holds",
    [
        (),
        (Hold("left", "x"),),
        (Hold("left", "x"), Hold([0], "x")),
        (Hold("left", "normal", 5.0), Hold("right", "normal", 5.0)),
    ],
)
def test_a_slab_that_could_slide_or_turn_is_refused(patch, holds):
    with pytest.raises(ValueError, match="sliding or turning"):
        plane_body(patch, SHEET, holds)


def test_wrong_holds_and_sides_are_refused(patch):
    with pytest.raises(ValueError, match="no side"):
        plane_body(patch, SHEET, [Hold("north", "x")])
    with pytest.raises(ValueError, match="along x, along y"):
        Hold([0, 1], "normal")
    with pytest.raises(ValueError, match="stiff"):
        Hold("left", "x", -1.0)
    turned = grid_mesh([0, 1], [0, 1], lambda s, t: np.stack([s - t, s + t], axis=1))
    with pytest.raises(ValueError, match="along x or y"):
        plane_body(turned, SHEET, [Hold("left", "normal")])


def test_a_side_that_slants_is_held_square_to_itself_by_springs():
    turned = grid_mesh(graded(1000, 200, 1.1), [0, 500], lambda s, t: np.c_[s - t, s + t])
    holds = [Hold(name, "normal", 1e9) for name in ("left", "bottom")]
    state = plane_body(turned, SHEET, holds).state(shortening=1e-4)
    assert abs(state.stress).max() < 1e-3


def test_a_sheet_out_of_range_and_a_folded_triangle_are_refused(patch):
    with pytest.raises(ValueError, match="Poisson"):
        Sheet(30e3, 0.5, 100.0)
    with pytest.raises(ValueError, match="above zero"):
        Sheet(0.0, 0.2, 100.0)
    folded = grid_mesh([0, 1], [0, 1], lambda s, t: np.c_[-s, t])
    with pytest.raises(ValueError, match="folded"):
        plane_body(folded, SHEET, [Hold("left", "x"), Hold("left", "y")])
