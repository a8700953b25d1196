"""Quarters of large slabs with a hole in the middle, meshed by mapping, for tests."""

import numpy as np

from crackkit.mechanics.hole_stress import round_hole_stress
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold, edge_forces
from tests.mechanics.plane_grids import grid_mesh

FAR = 40.0
SHEET = Sheet(30e3, 0.2, 100.0)


def elliptic_quarter(half_x, half_y, rings=24, turns=24):
    """Quarter of an elliptic hole, by Joukowski's map; ends far out in nearly a circle."""
    c, m = 0.5 * (half_x + half_y), (half_x - half_y) / (half_x + half_y)

    def place(s, t):
        z = np.exp(s + 1j * t)
        z = c * (z + m / z)
        return np.stack([z.real, z.imag], axis=1)

    return grid_mesh(
        np.linspace(0, np.log(FAR), rings + 1), np.linspace(0, np.pi / 2, turns + 1), place
    )


def rounded_quarter(half_x, half_y, radius, rings=40, turns=20):
    """Quarter of a rectangular hole with rounded corners; `turns` pieces on the arc."""
    flat = _graded_to_zero(half_y - radius, radius / turns)
    top = _graded_to_zero(half_x - radius, radius / turns)
    arc = np.linspace(0, np.pi / 2, turns + 1)
    along = np.r_[-flat[::-1][:-1], arc * radius, 0.5 * np.pi * radius + top[1:]]

    def rim(t):
        phi = np.clip(t / radius, 0, np.pi / 2)
        x = half_x - radius + radius * np.cos(phi) - np.maximum(t - 0.5 * np.pi * radius, 0)
        y = half_y - radius + radius * np.sin(phi) + np.minimum(t, 0)
        return np.stack([x, y], axis=1)

    def place(s, t):
        near = rim(t)
        way = np.arctan2(near[:, 1], near[:, 0])
        far = FAR * max(half_x, half_y) * np.stack([np.cos(way), np.sin(way)], axis=1)
        first = radius / turns / (FAR * max(half_x, half_y))
        share = (np.exp(s * np.log1p(1 / first)) - 1) * first
        return near + share[:, None] * (far - near)

    return grid_mesh(np.linspace(0, 1, rings + 1), along, place)


def _graded_to_zero(size, first):
    if size <= 1e-12:
        return np.zeros(1)
    count = max(2, int(np.ceil(np.log1p(size * 0.25 / first) / np.log(1.25))))
    gaps = 1.25 ** np.arange(count)
    return np.r_[0.0, np.cumsum(gaps)] * size / gaps.sum()


def pulled(mesh, along, across):
    """Slab pulled far away along x and along y [MPa]; the quarter is held by its symmetry."""

    def traction(_points, normals):
        return SHEET.thickness * normals * [along, across]

    force = edge_forces(mesh, "right", traction)
    body = plane_body(mesh, SHEET, [Hold("bottom", "y"), Hold("top", "x")])
    return body.state(force)


def kirsch_outside(mesh, radius, along, across):
    """The same for a circular hole, pulled at the outside as by Kirsch's own field."""

    def traction(points, normals):
        r, t = np.hypot(*np.moveaxis(points, -1, 0)), np.arctan2(points[..., 1], points[..., 0])
        radial, _rim, shear = np.moveaxis(round_hole_stress(r, t, radius, along, across), -1, 0)
        side = np.stack([-normals[..., 1], normals[..., 0]], axis=-1)
        return SHEET.thickness * (radial[..., None] * normals + shear[..., None] * side)

    body = plane_body(mesh, SHEET, [Hold("bottom", "y"), Hold("top", "x")])
    return body.state(edge_forces(mesh, "right", traction))
