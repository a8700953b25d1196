"""Even bodies have even meshes."""

import numpy as np
import pytest

from crackkit.mechanics.plane_bodies import (
    l_slab,
    rectangle,
    slab_round_column,
    slab_with_opening,
    wall_with_door,
)
from crackkit.mechanics.plane_mesh import mesh
from crackkit.mechanics.plane_mirror import mirror_axis
from crackkit.mechanics.plane_size import MeshSize

NONE = np.empty((0, 2))
L = l_slab(6e3, 6e3, 3e3, 3e3)


def swap(points):
    return points[:, ::-1]


def left_right(points):
    return np.array([6e3, 0.0]) + points * np.array([-1.0, 1.0])


def near_far(points):
    return np.array([0.0, 4e3]) + points * np.array([1.0, -1.0])


EVEN = {
    "L": (L, None, swap),
    "L, rounded": (l_slab(6e3, 6e3, 2e3, 2e3, 300.0), None, swap),
    "L, cracked through": (L, [(3e3, 3e3), (0, 0)], swap),
    "L, cracked in part": (L, [(3e3, 3e3), (2e3, 2e3)], swap),
    "opening aside": (slab_with_opening(6e3, 4e3, (2e3, 2e3), (900, 500), 50), None, near_far),
    "round hole": (slab_with_opening(6e3, 4e3, (3e3, 1.5e3), (900, 900), 450), None, left_right),
    "diamond": (slab_round_column(6e3, 4e3, (3e3, 1e3), 600.0, "diamond"), None, left_right),
    "half round": (slab_round_column(6e3, 4e3, (3e3, 100.0), 600.0, "round"), None, left_right),
    "door": (wall_with_door(6e3, 3e3, 2.5e3, 1e3, 2e3), None, left_right),
    "cracked over a door": (
        wall_with_door(6e3, 3e3, 2.5e3, 1e3, 2e3), [(3e3, 2e3), (3e3, 2.5e3)], left_right,
    ),
}  # fmt: skip


def triangles_as_places(points, triangles):
    return {frozenset(map(tuple, points[t].round(5).tolist())) for t in triangles}


@pytest.mark.parametrize("case", EVEN)
def test_the_mesh_is_its_own_mirror_image(case):
    body, crack, mirrored = EVEN[case]
    made = mesh(body, MeshSize(), crack=crack)
    here = triangles_as_places(made.points, made.triangles)
    there = triangles_as_places(mirrored(made.points) + 0.0, made.triangles)
    assert len(here) == len(made.triangles)
    assert here == there


@pytest.mark.parametrize(
    ("body", "corners", "crack"),
    [
        (l_slab(6e3, 6e3, 3e3, 2.9e3), NONE, NONE),
        (L, NONE, np.array([(3e3, 3e3), (1e3, 1.1e3)])),
        (L, NONE, np.array([(3e3, 0.0), (3e3, 1e3)])),
        (L, np.array([(6e3, 0.0)]), NONE),
        (slab_with_opening(6e3, 4e3, (3e3, 2e3), (900.0, 500.0), 50.0, 0.3), NONE, NONE),
    ],
)
def test_what_is_not_even_is_not_taken_for_even(body, corners, crack):
    assert mirror_axis(body, corners, crack) is None


def test_along_a_crack_the_axis_runs_to_its_tip():
    axis = mirror_axis(L, NONE, np.array([(3e3, 3e3), (0.0, 0.0)]))
    assert axis.along == pytest.approx(-(1 + 1j) / 2**0.5)
    assert axis.height([(3e3, 1e3)])[0] == pytest.approx(2e3 / 2**0.5)
    assert axis.station([(0.0, 0.0)])[0] > axis.station([(3e3, 3e3)])[0]


def test_sides_know_their_mirror_images():
    axis = mirror_axis(rectangle(6e3, 4e3), NONE, NONE)
    assert axis.partner == (2, 1, 0, 3)
