"""Slabs in their own plane against a general finite element library (scikit-fem), same mesh."""

import numpy as np
import pytest
import skfem
from skfem.models.elasticity import lame_parameters, linear_elasticity

from crackkit.mechanics.plane_bodies import l_slab, slab_with_opening
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_mesh import MeshSize, mesh
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold, edge_forces

SHEET = Sheet(15e3, 0.2, 150.0)
SHRINKAGE, PULL = 2e-4, 60.0
BODIES = {
    "L": l_slab(6000.0, 5000.0, 3000.0, 2000.0),
    "opening": slab_with_opening(5000.0, 4000.0, (2000.0, 2200.0), (1200.0, 800.0), turned=0.3),
}


def reference(body, refined=0):
    """Movement and stress by scikit-fem, as functions of places inside."""
    corners = np.unique(body.triangles[:, :3])
    number = np.full(len(body.points), -1)
    number[corners] = np.arange(len(corners))
    triangles = skfem.MeshTri(
        *map(np.ascontiguousarray, (body.points[corners].T, number[body.triangles[:, :3]].T))
    )
    triangles = triangles.refined(refined) if refined else triangles
    basis = skfem.Basis(triangles, skfem.ElementVector(skfem.ElementTriP2()), intorder=4)
    E, v, t = SHEET.modulus, SHEET.poisson, SHEET.thickness
    # Plane stress in the terms of plane strain.
    lam, mu = lame_parameters(E * (1 + 2 * v) / (1 + v) ** 2, v / (1 + v))

    @skfem.LinearForm
    def shrinks(test, _w):
        return -E / (1 - v) * SHRINKAGE * t * (test.grad[0, 0] + test.grad[1, 1])

    @skfem.LinearForm
    def pulls(test, _w):
        return PULL * test[0]

    K = t * linear_elasticity(lam, mu).assemble(basis)
    far = body.points[:, 0].max()
    right = triangles.facets_satisfying(lambda x: abs(x[0] - far) < 1e-6, boundaries_only=True)
    f = shrinks.assemble(basis) + pulls.assemble(
        skfem.FacetBasis(triangles, basis.elem, facets=right)
    )
    fixed = [
        basis.get_dofs(lambda x: abs(x[0]) < 1e-6).all(["u^1"]),
        basis.get_dofs(lambda x: abs(x[1]) < 1e-6).all(["u^2"]),
    ]
    u = skfem.solve(*skfem.condense(K, f, D=np.concatenate(fixed)))
    return basis, u


def at_places(basis, u, places):
    """Movement and stress at places."""
    cells = basis.mesh.element_finder()(*places.T)
    local = basis.mapping.invF(places.T[:, :, None], tind=cells)
    E, v = SHEET.modulus, SHEET.poisson
    moved, grad = np.zeros((len(places), 2)), np.zeros((len(places), 2, 2))
    for j in range(basis.Nbfun):
        part = basis.elem.gbasis(basis.mapping, local, j, tind=cells)[0]
        share = u[basis.element_dofs[j, cells]]
        moved += (share * part[:, :, 0]).T
        grad += np.moveaxis(share * part.grad[..., 0], -1, 0)
    x, y = grad[:, 0, 0] + SHRINKAGE, grad[:, 1, 1] + SHRINKAGE
    shear = 0.5 * E / (1 + v) * (grad[:, 0, 1] + grad[:, 1, 0])
    c = E / (1 - v * v)
    return moved, np.stack([c * (x + v * y), c * (y + v * x), shear], axis=1)


@pytest.fixture(scope="module", params=BODIES)
def ours(request):
    body = mesh(BODIES[request.param], MeshSize(smallest=20.0, largest=200.0, ratio=1.4))
    slab = plane_body(body, SHEET, [Hold("left", "normal"), Hold("near", "normal")])
    return slab.state(edge_forces(body, "right", (PULL, 0.0)), shortening=SHRINKAGE)


def test_movement_and_stress_in_all_triangles_are_the_same(ours):
    """The same triangles must give the same numbers, far within the half per cent asked for."""
    inner = ours.body.elements.inner_places.reshape(-1, 2)
    moved, stress = at_places(*reference(ours.body.mesh), inner)
    assert ours.movement_at(inner) == pytest.approx(moved, abs=1e-6 * abs(moved).max())
    assert ours.inner_stress.reshape(-1, 3) == pytest.approx(stress, abs=1e-6 * abs(stress).max())


def test_on_triangles_half_as_large_the_stress_is_the_same_within_half_a_hundredth(ours):
    """Farther than 500 mm from inside corners, where finer triangles always tell more."""
    inner = ours.body.elements.inner_places.mean(axis=1)
    corners = np.concatenate([body.inside_corners for body in BODIES.values()])
    gaps = np.hypot(*np.moveaxis(inner[:, None] - corners, -1, 0))
    far = inner[gaps.min(axis=1) > 500.0]
    moved, stress = at_places(*reference(ours.body.mesh, refined=1), far)
    scale = abs(stress).max()
    assert ours.movement_at(far) == pytest.approx(moved, abs=0.005 * abs(moved).max())
    assert ours.stress_at(far) == pytest.approx(stress, abs=0.005 * scale)
