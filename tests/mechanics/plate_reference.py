"""The same plate by other means: Morley's triangles of scikit-fem on springs that never pull.

Morley's element is a thin-plate element with constant moments, nonconforming, and shares nothing
with our splines but the equation. Where it touches is found by a damped search of its own.
"""

from dataclasses import dataclass

import numpy as np
import skfem
from scipy.sparse.linalg import splu
from skfem.helpers import dd, ddot, trace


@dataclass(frozen=True, eq=False)
class MorleyState:
    """Deflection of the corners, and largest principal stress of both faces in each triangle."""

    x: np.ndarray
    y: np.ndarray
    top: np.ndarray
    bottom: np.ndarray
    corners: np.ndarray
    lifted_share: float
    unknowns: int


def graded(length, patch, size):
    """Lines of a mesh, `size` apart at most, five of them at least over the load."""
    start, end = patch
    pieces = [
        np.linspace(a, b, max(n, int(np.ceil((b - a) / size))) + 1)
        for a, b, n in ((0.0, start, 0), (start, end, 4), (end, length, 0))
        if b > a
    ]
    return np.unique(np.concatenate(pieces))


def morley_state(slab, patch, curvature, size):
    """Solve one slab with one load (or a patch without force) on a mesh of a given size."""
    mesh = skfem.MeshTri.init_tensor(
        graded(slab.length, patch.along, size), graded(slab.width, patch.across, size)
    )
    basis = skfem.Basis(mesh, skfem.ElementTriMorley(), intorder=4)
    nu, D, k = slab.poisson, slab.rigidity, slab.ground

    @skfem.BilinearForm
    def bending(u, v, w):
        return D * ((1 - nu) * ddot(dd(u), dd(v)) + nu * trace(dd(u)) * trace(dd(v)))

    @skfem.BilinearForm
    def ground(u, v, w):
        return k * w["touch"] * u * v

    @skfem.LinearForm
    def load(v, w):
        x, y = w.x
        (a, b), (c, d) = patch.along, patch.across
        inside = (x > a) & (x < b) & (y > c) & (y < d)
        pressure = slab.weight + patch.force / (patch.length * patch.width) * inside
        kx, ky = curvature.x + nu * curvature.y, curvature.y + nu * curvature.x
        return pressure * v - D * (kx * dd(v)[0, 0] + ky * dd(v)[1, 1])

    A, f = bending.assemble(basis), load.assemble(basis)
    touch = np.ones(basis.dx.shape)
    for _step in range(40):
        u = splu((A + ground.assemble(basis, touch=touch)).tocsc()).solve(f)
        now = (np.asarray(basis.interpolate(u)) > 0).astype(float)
        if (now == touch).all():
            break
        touch = now
    return _told(slab, curvature, basis, u, touch)


def _told(slab, curvature, basis, u, touch):
    mesh, nu, D, t = basis.mesh, slab.poisson, slab.rigidity, slab.thickness
    second = np.asarray(basis.interpolate(u).hess)[..., 0]  # the same all over a triangle
    bx, by = -second[0, 0] - curvature.x, -second[1, 1] - curvature.y
    mx, my, mxy = D * (bx + nu * by), D * (by + nu * bx), -D * (1 - nu) * second[0, 1]
    centre, radius = 0.5 * (mx + my), np.hypot(0.5 * (mx - my), mxy)
    x, y = mesh.p[:, mesh.t].mean(axis=1)
    ends = [(a, b) for a in (0.0, slab.length) for b in (0.0, slab.width)]
    nodes = [np.argmin(np.hypot(*(mesh.p - np.array([end]).T))) for end in ends]
    corners = u[basis.nodal_dofs[0, nodes]].reshape(2, 2)
    share = 1.0 - float((touch * basis.dx).sum() / basis.dx.sum())
    s = 6.0 / t**2
    return MorleyState(x, y, s * (radius - centre), s * (radius + centre), corners, share, u.size)
