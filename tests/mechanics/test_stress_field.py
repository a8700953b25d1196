"""The stresses of an uncracked beam against equilibrium, finite elements and hand values."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from skfem import (
    Basis,
    BilinearForm,
    ElementQuad2,
    ElementVector,
    FacetBasis,
    LinearForm,
    MeshQuad,
    condense,
    solve,
)
from skfem.helpers import ddot, eye, sym_grad, trace

from crackkit.mechanics.elastic_profile import rectangle_profile, tee_profile
from crackkit.mechanics.stress_field import (
    principal_angle_at,
    principal_stresses,
    stress_components,
    stress_field,
)

SPAN, WIDTH, DEPTH, LOAD = 5000.0, 300.0, 500.0, 40.0


def simple_beam(x):
    """Moment and shear of a simple beam under the uniform load."""
    return LOAD * x * (SPAN - x) / 2, LOAD * (SPAN / 2 - x)


@pytest.fixture(scope="module")
def field():
    x, z = np.linspace(0.0, SPAN, 101), np.linspace(0.0, DEPTH, 41)
    M, V = simple_beam(x)
    return stress_field(x, rectangle_profile(z, WIDTH, DEPTH), M, V, LOAD)


# Finite elements: plane stress, biquadratic quadrilaterals, load on the top face, the two end
# faces held vertically, one point held along the beam.


@pytest.fixture(scope="module")
def finite_elements():
    E, nu = 30e3, 0.2
    mesh = MeshQuad.init_tensor(np.linspace(0, SPAN, 81), np.linspace(0, DEPTH, 13))
    mesh = mesh.with_boundaries(
        {
            "top": lambda p: np.isclose(p[1], 0.0),
            "ends": lambda p: np.isclose(p[0], 0.0) | np.isclose(p[0], SPAN),
        }
    )
    basis = Basis(mesh, ElementVector(ElementQuad2()))

    def stress(strain):
        return E / (1 + nu) * strain + E * nu / (1 - nu**2) * eye(trace(strain), 2)

    stiffness = BilinearForm(lambda u, v, _: ddot(stress(sym_grad(u)), sym_grad(v)))
    pressure = LinearForm(lambda v, _: LOAD / WIDTH * v[1])
    held = basis.get_dofs("ends").all("u^2")
    midpoint = basis.get_dofs(lambda p: np.isclose(p[0], 0) & np.isclose(p[1], DEPTH / 2))
    u = solve(
        *condense(
            stiffness.assemble(basis),
            pressure.assemble(FacetBasis(mesh, basis.elem, facets="top")),
            D=np.union1d(held, midpoint.all("u^1")),
        )
    )
    places = basis.global_coordinates()
    return np.asarray(places), np.asarray(stress(sym_grad(basis.interpolate(u))))


def both(finite_elements, clear):
    """Stresses at the integration points further than `clear` from the supports."""
    (x, z), stress = finite_elements
    inner = (x > clear) & (x < SPAN - clear)
    x, z = x[inner], z[inner]
    ours = stress_components(rectangle_profile(z, WIDTH, DEPTH), *simple_beam(x), LOAD)
    return ours, (stress[0, 0][inner], stress[1, 1][inner], stress[0, 1][inner])


# The vertical stress is 75 times smaller than the bending stress, so what the supports leave of
# their local stresses at one depth is 1.2 % of it; it is compared half a depth further in.
CLEAR = {"sigma_x": DEPTH, "sigma_z": 1.5 * DEPTH, "tau": DEPTH}


@pytest.mark.parametrize("number", [0, 1, 2], ids=list(CLEAR))
def test_stresses_agree_with_finite_elements_within_one_per_cent(finite_elements, number):
    ours, theirs = both(finite_elements, list(CLEAR.values())[number])
    assert np.abs(ours[number] - theirs[number]).max() < 0.01 * np.abs(theirs[number]).max()


def test_principal_stresses_and_directions_agree_with_finite_elements(finite_elements):
    ours, theirs = (principal_stresses(*parts) for parts in both(finite_elements, DEPTH))
    largest = np.abs(theirs[0]).max()
    assert np.abs(ours[0] - theirs[0]).max() < 0.01 * largest
    # A direction means something only where the two principal stresses differ.
    clear = theirs[0] - theirs[1] > 0.05 * largest
    turned = np.angle(np.exp(2j * (ours[2] - theirs[2]))) / 2
    assert np.degrees(np.abs(turned[clear])).max() < 1.0
    assert clear.mean() > 0.5


# Equilibrium and hand values


def test_field_is_in_equilibrium_everywhere():
    """Central differences are exact for the quadratic moment and nearly so for the cubic depth."""
    x, z = np.linspace(1000.0, 4000.0, 31), np.linspace(0.0, DEPTH, 501)
    f = stress_field(x, rectangle_profile(z, WIDTH, DEPTH), *simple_beam(x), LOAD)
    along = np.gradient(f.sigma_x, x, axis=1) + np.gradient(f.tau, z, axis=0)
    across = np.gradient(f.tau, x, axis=1) + np.gradient(f.sigma_z, z, axis=0)
    typical = np.abs(f.tau).max() / DEPTH
    assert np.abs(along[1:-1, 1:-1]).max() < 1e-4 * typical
    assert np.abs(across[1:-1, 1:-1]).max() < 1e-4 * typical


def test_faces_carry_the_load_and_nothing_else(field):
    assert field.sigma_z[0] == pytest.approx(np.full(101, -LOAD / WIDTH), rel=1e-12)
    assert field.sigma_z[-1] == pytest.approx(np.zeros(101), abs=1e-12)
    assert field.tau[[0, -1]] == pytest.approx(np.zeros((2, 101)), abs=1e-12)


profiles = st.one_of(
    st.builds(
        lambda b, h: (b, rectangle_profile, (b, h)), st.floats(100, 1000), st.floats(100, 1500)
    ),
    st.builds(
        lambda b, h, flange, part: (flange, tee_profile, (b, h, flange, part * h)),
        st.floats(100, 400),
        st.floats(300, 1500),
        st.floats(400, 2000),
        st.floats(0.05, 0.6),
    ),
)


@given(profiles)
def test_stresses_add_up_to_the_forces_of_the_section(section):
    """Gauss's rule over each layer: no axial force, unit moment, unit shear."""
    top_width, profile, measures = section
    depth, edge = measures[1], measures[3] if len(measures) == 4 else measures[1] / 2
    nodes, weights = np.polynomial.legendre.leggauss(5)
    layers = [(top_width, 0.0, edge), (measures[0], edge, depth)]
    force = moment = shear = load_force = load_moment = 0.0
    for b, upper, lower in layers:
        z = upper + (lower - upper) * (nodes + 1) / 2
        dA = weights * b * (lower - upper) / 2
        p = profile(z, *measures)
        force += (p.bending * dA).sum()
        moment += (p.bending * z * dA).sum()
        shear += (p.shear * dA).sum()
        load_force += (p.bearing_bending * dA).sum()
        load_moment += (p.bearing_bending * z * dA).sum()
    assert [moment, shear] == pytest.approx([1.0, 1.0], rel=1e-9)
    assert abs(force) * depth < 1e-9
    assert abs(load_force) < 1e-9
    assert abs(load_moment) < 1e-9 * depth


@given(profiles)
def test_bearing_falls_from_the_load_to_nothing(section):
    top_width, profile, measures = section
    p = profile(np.linspace(0.0, measures[1], 11), *measures)
    assert p.bearing[0] * top_width == pytest.approx(-1.0, rel=1e-9)
    assert p.bearing[-1] * measures[0] == pytest.approx(0.0, abs=1e-9)


def test_rectangle_written_as_a_tee_is_the_rectangle():
    z = np.linspace(0.0, DEPTH, 21)
    plain, tee = rectangle_profile(z, 300.0, 500.0), tee_profile(z, 300.0, 500.0, 300.0, 120.0)
    for name in ("bending", "shear", "bearing"):
        expected = getattr(plain, name)
        assert getattr(tee, name) == pytest.approx(expected, abs=1e-12 * np.abs(expected).max())


def test_tee_bends_as_computed_by_hand():
    """Flange 800 x 100 on a web 200 x 400, by parallel axes; shear from the part below."""
    axis = (800 * 100 * 50 + 200 * 400 * 300) / (800 * 100 + 200 * 400)
    inertia = (
        800 * 100**3 / 12 + 80000 * (axis - 50) ** 2 + 200 * 400**3 / 12 + 80000 * (300 - axis) ** 2
    )
    p = tee_profile([0.0, axis, 500.0], 200.0, 500.0, 800.0, 100.0)
    assert p.bending == pytest.approx([-axis / inertia, 0.0, (500 - axis) / inertia], abs=1e-18)
    first_moment = 200 * (500 - axis) ** 2 / 2
    assert p.shear[1] == pytest.approx(first_moment / (inertia * 200), rel=1e-12)


def test_middle_of_the_depth_carries_one_and_a_half_times_the_mean_shear():
    p = rectangle_profile([DEPTH / 2], WIDTH, DEPTH)
    assert p.shear == pytest.approx([1.5 / (WIDTH * DEPTH)], rel=1e-12)


# Directions


@given(st.floats(-9, 9), st.floats(-9, 9), st.floats(-9, 9))
def test_principal_stresses_are_the_eigenvalues(sigma_x, sigma_z, tau):
    s1, s2, angle = principal_stresses(sigma_x, sigma_z, tau)
    tensor = np.array([[sigma_x, tau], [tau, sigma_z]])
    assert np.linalg.eigvalsh(tensor) == pytest.approx([s2, s1], abs=1e-9)
    along = np.array([np.cos(angle), np.sin(angle)])
    assert tensor @ along == pytest.approx(s1 * along, abs=1e-9)


def test_shear_turns_the_stretching_to_45_degrees_on_the_axis():
    f = stress_field([0.0, 1.0], rectangle_profile([250.0], WIDTH, DEPTH), [0.0, 0.0], [1e5, -1e5])
    assert np.degrees(f.angle[0]) == pytest.approx([45.0, -45.0], rel=1e-12)
    assert f.s1[0] == pytest.approx(-f.s2[0], rel=1e-12)


def test_directions_between_points_turn_the_short_way():
    """Near the top of the beam the direction passes +-90 degrees; the angle itself must jump."""
    x, z = np.linspace(2400.0, 2600.0, 5), np.linspace(10.0, 30.0, 3)
    f = stress_field(x, rectangle_profile(z, WIDTH, DEPTH), *simple_beam(x), LOAD)
    left, right = principal_angle_at(f, [2470.0, 2530.0], [20.0, 20.0])
    assert np.degrees(left) > 88.0
    assert np.degrees(right) < -88.0
    assert abs(np.degrees(principal_angle_at(f, 2505.0, 20.0))) > 88.0


def test_directions_at_grid_points_are_those_of_the_grid(field):
    x, z = np.meshgrid(field.x, field.z)
    turned = principal_angle_at(field, x, z) - field.angle
    assert np.angle(np.exp(2j * turned)) == pytest.approx(np.zeros_like(turned), abs=1e-9)


def test_field_mirrors_about_midspan(field):
    assert field.s1 == pytest.approx(field.s1[:, ::-1], abs=1e-9)
    assert field.tau == pytest.approx(-field.tau[:, ::-1], abs=1e-9)


@pytest.mark.parametrize("measures", [(0.0, 500.0), (300.0, -1.0), (300.0, np.nan)])
def test_senseless_section_is_refused(measures):
    with pytest.raises(ValueError, match="positive"):
        rectangle_profile([0.0], *measures)


def test_flange_as_deep_as_the_section_is_refused():
    with pytest.raises(ValueError, match="flange"):
        tee_profile([0.0], 200.0, 500.0, 800.0, 500.0)
