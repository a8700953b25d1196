"""Meshes: whole, without overlap, and split where a crack is to open."""

import numpy as np
import pytest
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components

from crackkit.mechanics.plane_bodies import l_slab
from crackkit.mechanics.plane_mesh import mesh
from crackkit.mechanics.plane_size import MeshSize

L = l_slab(6e3, 6e3, 3e3, 3e3)


def parts(made):
    """Give the number of pieces of the body that share no node."""
    count = len(made.points)
    row, column = made.triangles[:, [0, 0, 0, 0, 0]].ravel(), made.triangles[:, 1:].ravel()
    used = np.unique(made.triangles)
    graph = coo_array((np.ones(row.size), (row, column)), shape=(count, count))
    label = connected_components(graph, directed=False)[1]
    return np.unique(label[used]).size


@pytest.mark.parametrize(("tip", "pieces"), [((0.0, 0.0), 2), ((2e3, 1.5e3), 1)])
def test_a_crack_parts_the_body_when_it_reaches_the_other_side(tip, pieces):
    made = mesh(L, MeshSize(), corners=(), crack=[(3e3, 3e3), tip])
    assert parts(made) == pieces


def test_the_first_face_is_on_the_left():
    made = mesh(L, MeshSize(), corners=(), crack=[(3e3, 3e3), (0.0, 0.0)])
    beside = {
        face: made.points[made.triangles[np.isin(made.triangles, nodes).any(axis=1)]].mean(axis=1)
        for face, nodes in (("first", made.crack.first), ("second", made.crack.second))
    }
    # From the inside corner towards the near left one, the right face is on the side of x < y.
    assert (beside["second"][:, 0] < beside["second"][:, 1]).all()
    assert (beside["first"][:, 0] > beside["first"][:, 1]).all()
