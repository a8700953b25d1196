"""Triangles with six nodes: shares, areas, strains and forces that fit each other."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_elements import PlaneElements, Sheet, shape_slopes, shapes
from tests.mechanics.plane_grids import grid_mesh

numbers = st.floats(-3.0, 3.0)


def ring(s, t):
    """A quarter of a ring between the radii 1 and 3."""
    r = 1 + 2 * s
    return np.stack([r * np.cos(0.5 * np.pi * t), r * np.sin(0.5 * np.pi * t)], axis=1)


@pytest.fixture(scope="module")
def elements():
    mesh = grid_mesh(np.linspace(0, 1, 5), np.linspace(0, 1, 7), ring)
    return PlaneElements(mesh.points, mesh.triangles)


@given(st.floats(0, 1), st.floats(0, 1))
def test_shares_add_up_and_follow_any_parabola(a, b):
    a, b = (a, b) if a + b <= 1 else (1 - a, 1 - b)
    place = [[a, b, 1 - a - b]]
    nodes = np.array([[1, 0], [0, 1], [0, 0], [0.5, 0.5], [0, 0.5], [0.5, 0]])
    (x, y), share = nodes.T, shapes(place)[0]
    of_nodes = np.stack([x**0, x, y, x * x, x * y, y * y])
    assert of_nodes @ share == pytest.approx([1, a, b, a * a, a * b, b * b], abs=1e-14)


@given(st.floats(0.1, 0.8), st.floats(0.05, 0.1))
def test_slopes_are_those_of_the_shares(b, c):
    d = 1e-6
    slopes = shape_slopes([[1 - b - c, b, c]])[0]
    by_b = shapes([[1 - b - c - d, b + d, c], [1 - b - c + d, b - d, c]])
    by_c = shapes([[1 - b - c - d, b, c + d], [1 - b - c + d, b, c - d]])
    assert slopes[0] == pytest.approx((by_b[0] - by_b[1]) / (2 * d), abs=1e-8)
    assert slopes[1] == pytest.approx((by_c[0] - by_c[1]) / (2 * d), abs=1e-8)


def test_areas_add_up_to_that_of_the_ring(elements):
    assert elements.weights.sum() == pytest.approx(np.pi * (9 - 1) / 4, rel=1e-4)


@given(st.lists(numbers, min_size=4, max_size=4))
def test_a_linear_movement_is_strained_evenly_even_where_sides_curve(elements, slope):
    slope = np.reshape(slope, (2, 2))
    strain = elements.strains(elements.points @ slope.T + [3.0, -7.0])
    expected = [slope[0, 0], slope[1, 1], slope[0, 1] + slope[1, 0]]
    assert strain == pytest.approx(np.broadcast_to(expected, strain.shape), abs=1e-11)
    assert elements.at_nodes(strain) == pytest.approx(
        np.broadcast_to(expected, (len(elements.points), 3)), abs=1e-11
    )


@given(st.integers(0, 99))
def test_forces_do_as_much_work_as_the_stress_inside(elements, seed):
    rng = np.random.default_rng(seed)
    movement, stress = rng.normal(size=elements.points.shape), rng.normal(size=(48, 3, 3))
    inside = 20.0 * elements.weights[..., None] * stress * elements.strains(movement)
    outside = elements.forces(stress, 20.0) @ movement.ravel()
    assert outside == pytest.approx(inside.sum(), rel=1e-10, abs=1e-10)
    shear = stress[..., :2]
    under = elements.weights[..., None] * shear * elements.inside(movement)
    assert elements.base_forces(shear) @ movement.ravel() == pytest.approx(under.sum(), abs=1e-10)


@given(st.integers(0, 99))
def test_stiffness_is_the_forces_of_the_stress_that_a_movement_makes(elements, seed):
    movement = np.random.default_rng(seed).normal(size=elements.points.shape)
    sheet = Sheet(7.0, 0.3, 2.0)
    K = elements.stiffness(sheet)
    stress = elements.strains(movement) @ sheet.matrix
    assert K @ movement.ravel() == pytest.approx(elements.forces(stress, 2.0), abs=1e-10)
    assert abs(K - K.T).max() < 1e-12


def test_a_bed_pulls_on_every_place_alike(elements):
    """A bed that is moved evenly by 2 mm pulls with its stiffness times the area."""
    moved = np.tile([2.0, -1.0], len(elements.points))
    force = (elements.grip(5.0) @ moved).reshape(-1, 2)
    assert force.sum(axis=0) == pytest.approx(elements.weights.sum() * np.array([10.0, -5.0]))


def test_stress_of_a_bar_and_of_a_sheet_held_sideways():
    """Hooke's law in plane stress."""
    matrix = Sheet(30e3, 0.2, 1.0).matrix
    assert matrix @ [1e-4, -2e-5, 0.0] == pytest.approx([3.0, 0.0, 0.0], abs=1e-12)
    assert matrix @ [1e-4, 0.0, 1e-4] == pytest.approx([3.125, 0.625, 1.25])
