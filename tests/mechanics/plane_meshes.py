"""Bodies of all kinds, and what can be measured on a mesh without knowing how it was made."""

import numpy as np
from hypothesis import strategies as st

from crackkit.mechanics.plane_bodies import (
    l_slab,
    slab_round_column,
    slab_with_opening,
    wall_with_door,
)
from crackkit.mechanics.plane_size import MeshSize

# Places and weights of Gauss's rule with six points for triangles, exact to the fourth power
# (Cowper 1973, from memory; a test tries it).
_A, _B = 0.445948490915965, 0.091576213509771
SIX = np.array(
    [[a, a] for a in (_A, _B)] + [p for a in (_A, _B) for p in ([a, 1 - 2 * a], [1 - 2 * a, a])]
)
WEIGHTS = np.array([0.223381589678011, 0.109951743655322] + [0.223381589678011] * 2
                    + [0.109951743655322] * 2) / 2  # fmt: skip

SIZES = st.builds(
    MeshSize,
    smallest=st.floats(5.0, 60.0),
    largest=st.floats(200.0, 700.0),
    ratio=st.floats(1.3, 1.8),
    crack=st.floats(40.0, 90.0),
    per_turn=st.integers(16, 40),
)
_place = st.tuples(st.floats(2e3, 4e3), st.floats(1.8e3, 2.2e3))


@st.composite
def _l_slabs(draw):
    length, width = draw(st.floats(3e3, 9e3)), draw(st.floats(3e3, 9e3))
    notch = draw(st.floats(0.1, 0.85)) * length, draw(st.floats(0.1, 0.85)) * width
    return l_slab(length, width, *notch, draw(st.sampled_from([0.0, 0.1, 1.0])) * min(notch) / 2)


@st.composite
def _slabs_with_opening(draw):
    size = draw(st.floats(200.0, 1.5e3)), draw(st.floats(200.0, 1.5e3))
    radius = draw(st.sampled_from([0.0, 0.02, 0.3, 1.0])) * min(size) / 2
    turned = draw(st.sampled_from([0.0, 0.3, np.pi / 4]))
    return slab_with_opening(6e3, 4e3, draw(_place), size, radius, turned)


@st.composite
def _slabs_round_column(draw):
    form = draw(st.sampled_from(["square", "diamond", "round"]))
    y = draw(st.sampled_from([-100.0, 0.0, 120.0, 700.0, 2e3]))
    return slab_round_column(6e3, 4e3, (draw(st.floats(1e3, 5e3)), y), 600.0, form)


_walls = st.builds(
    wall_with_door,
    length=st.just(6e3),
    height=st.just(3e3),
    door_place=st.floats(150.0, 3.5e3),
    door_width=st.floats(700.0, 2e3),
    door_height=st.floats(1e3, 2.6e3),
)
BODIES = st.one_of(_l_slabs(), _slabs_with_opening(), _slabs_round_column(), _walls)


def corner_area(made):
    """Give twice the area of each triangle by its corners, counter-clockwise positive [mm2]."""
    a, b, c = made.points[made.triangles[:, :3]].transpose(1, 0, 2)
    return _cross(b - a, c - a)


def stretch(made):
    """Give the determinant of the Jacobian at six places of each triangle [mm2], and weights."""
    r, s = SIX.T
    t, zero = 1.0 - r - s, np.zeros_like(r)
    by_r = np.stack([1 - 4 * t, 4 * r - 1, zero, 4 * (t - r), 4 * s, -4 * s])
    by_s = np.stack([1 - 4 * t, zero, 4 * s - 1, -4 * r, 4 * r, 4 * (t - s)])
    nodes = made.points[made.triangles]
    return _cross(*(np.einsum("ng,end->egd", d, nodes) for d in (by_r, by_s))), WEIGHTS


def least_angles(made):
    """Give the least angle of each triangle by its corners [rad]."""
    corner = made.points[made.triangles[:, :3]]
    one, two = np.roll(corner, -1, axis=1) - corner, np.roll(corner, 1, axis=1) - corner
    return np.arctan2(_cross(one, two), (one * two).sum(axis=2)).min(axis=1)


def edges_of(made, whole=False):
    """Give the two ends of all edges of all triangles, in walking order; shared ones twice.

    If `whole`, the second face of a crack takes the names of the first.
    """
    corners = made.triangles[:, :3]
    if whole:
        corners = joined(made)[corners]
    return np.stack([corners, np.roll(corners, -1, axis=1)], axis=2).reshape(-1, 2)


def joined(made):
    """Give for each node its number before the mesh was split."""
    number = np.arange(len(made.points))
    if made.crack:
        number[made.crack.second] = made.crack.first
    return number


def holders(made, points):
    """Give for each point how many triangles it lies in, by their corners."""
    a, b, c = made.points[made.triangles[:, :3]].transpose(1, 0, 2)
    inside = [_cross(q - p, points[:, None] - p) > 0 for p, q in ((a, b), (b, c), (c, a))]
    return np.logical_and.reduce(inside).sum(axis=1)


def _cross(u, v):
    return u[..., 0] * v[..., 1] - u[..., 1] * v[..., 0]
