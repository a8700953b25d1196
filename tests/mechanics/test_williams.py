"""Exponents of sharp corners: printed values, and a fine mesh of an L that knows none of them."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold, edge_forces
from crackkit.mechanics.williams import opening_exponent, opening_stress, shearing_exponent
from tests.mechanics.plane_grids import graded, grid_mesh, l_slab

angles = st.floats(1.01 * np.pi, 2 * np.pi)


@pytest.mark.parametrize(
    ("degrees", "opening", "shearing"),
    [(270, 0.54448, 0.90853), (300, 0.51222, 0.73090), (360, 0.5, 0.5)],
)
def test_exponents_are_those_of_williams(degrees, opening, shearing):
    """Roots of Williams' (1952) equations; those for 270 degrees are widely printed."""
    angle = np.deg2rad(degrees)
    assert opening_exponent(angle) == pytest.approx(opening, abs=6e-6)
    assert shearing_exponent(angle) == pytest.approx(shearing, abs=6e-6)


def test_on_a_straight_edge_the_stress_is_bounded():
    assert opening_exponent(np.pi) == pytest.approx(1.0, abs=1e-12)
    assert shearing_exponent(np.pi) == pytest.approx(2.0, abs=1e-12)


def test_shear_is_bounded_up_to_257_degrees():
    """Where tan w = w (Williams 1952; 257.45 degrees)."""
    limit = np.deg2rad(257.4534)
    assert np.tan(limit) == pytest.approx(limit, abs=1e-4)
    assert shearing_exponent(limit - 1e-4) > 1 > shearing_exponent(limit + 1e-4)


@given(angles)
def test_exponents_solve_their_equations(angle):
    one, two = opening_exponent(angle), shearing_exponent(angle)
    assert np.sin(one * angle) + one * np.sin(angle) == pytest.approx(0.0, abs=1e-12)
    assert np.sin(two * angle) - two * np.sin(angle) == pytest.approx(0.0, abs=2e-6)


@given(angles, st.floats(0.01, 0.5))
def test_the_sharper_the_corner_the_steeper_the_stress(angle, less):
    blunter = max(np.pi, angle - less)
    assert opening_exponent(blunter) >= opening_exponent(angle) - 1e-12
    assert shearing_exponent(blunter) >= shearing_exponent(angle) - 1e-6


@given(angles)
def test_the_edges_of_the_corner_are_free(angle):
    _along, across, shear = opening_stress(angle, 1.0, np.array([-0.5, 0.5]) * angle).T
    assert across == pytest.approx(0.0, abs=1e-9)
    assert shear == pytest.approx(0.0, abs=1e-9)


@given(angles, st.floats(-0.45, 0.45), st.floats(1.0, 100.0))
def test_the_stress_near_a_corner_is_in_balance(angle, share, r):
    """Both equations of equilibrium in polar form, by differences."""
    t, d = share * angle, 1e-4

    def s(r, t):
        return opening_stress(angle, r, t)

    by_r = (s(r * (1 + d), t) - s(r * (1 - d), t)) / (2 * d)
    by_t = (s(r, t + d) - s(r, t - d)) / (2 * d)
    along, across, shear = s(r, t)
    assert by_r[0] + by_t[2] + along - across == pytest.approx(0.0, abs=1e-5)
    assert by_r[2] + by_t[1] + 2 * shear == pytest.approx(0.0, abs=1e-5)


def test_a_fine_mesh_of_an_l_finds_the_power_by_itself():
    """Slope of the tension on the middle line from 0.5 to 12 mm in a slab of 6 m: within 1 %."""
    mesh = l_slab(6000.0, 3000.0, 0.05, 1.35)
    holds = [Hold(name, "normal") for name in ("left", "bottom", "right", "top")]
    state = plane_body(mesh, Sheet(15e3, 0.2, 150.0), holds).state(shortening=2e-4)
    r = np.geomspace(0.5, 12.0, 30)
    stress = state.stress_at(np.c_[-r, -r] / np.sqrt(2))
    slope = np.polyfit(np.log(r), np.log(stress.sum(axis=1)), 1)[0]
    assert slope == pytest.approx(opening_exponent(1.5 * np.pi) - 1, rel=0.01)


@pytest.mark.parametrize("degrees", [240.0, 270.0, 315.0])
def test_a_sector_pulled_as_the_field_says_is_stretched_as_it_says(degrees):
    """Triangles against the field itself, away from the tip; both arcs are pulled as it says."""
    angle = np.deg2rad(degrees)

    def place(s, t):
        return np.stack([s * np.cos(t), s * np.sin(t)], axis=1)

    mesh = grid_mesh(graded(100.0, 0.2, 1.25)[1:], np.linspace(-0.5, 0.5, 41) * angle, place)

    def pull(points, normals):
        r, t = np.hypot(*np.moveaxis(points, -1, 0)), np.arctan2(points[..., 1], points[..., 0])
        along, _across, shear = np.moveaxis(opening_stress(angle, r, t), -1, 0)
        out = np.stack([np.cos(t), np.sin(t)], axis=-1)
        side = np.stack([-np.sin(t), np.cos(t)], axis=-1)
        sign = np.sign((out * normals).sum(axis=-1))
        return 10.0 * sign[..., None] * (along[..., None] * out + shear[..., None] * side)

    middle = np.flatnonzero(np.isclose(mesh.points[:, 1], 0.0) & (mesh.points[:, 0] > 99.0))
    holds = [Hold(middle, "x"), Hold(middle, "y"), Hold(_on_axis(mesh), "y")]
    force = edge_forces(mesh, "right", pull) + edge_forces(mesh, "left", pull)
    state = plane_body(mesh, Sheet(30e3, 0.2, 10.0), holds).state(force)
    r = np.linspace(5.0, 80.0, 9)
    stress = state.stress_at(np.c_[r, 0 * r])
    expected = opening_stress(angle, r, 0.0)
    assert stress[:, 1] == pytest.approx(expected[:, 1], rel=0.01)
    assert stress[:, 0] == pytest.approx(expected[:, 0], rel=0.01)


def _on_axis(mesh):
    x, y = mesh.points.T
    return np.flatnonzero(np.isclose(y, 0.0, atol=1e-9) & (x > 0))


@pytest.mark.parametrize("angle", [3.0, 6.5])
def test_only_an_inside_corner_has_such_an_exponent(angle):
    for exponent in (opening_exponent, shearing_exponent):
        with pytest.raises(ValueError, match="180 to 360"):
            exponent(angle)
