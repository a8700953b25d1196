"""Meshes split along a line: two faces that coincide, each holding to its own part of the body."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components

from crackkit.mechanics.plane_bodies import l_slab, rectangle, slab_with_opening, wall_with_door
from crackkit.mechanics.plane_mesh import mesh
from crackkit.mechanics.plane_size import MeshSize
from tests.mechanics.plane_meshes import SIZES, edges_of, joined, least_angles, stretch

EVEN = l_slab(6e3, 6e3, 3e3, 3e3)
UNEVEN = l_slab(6e3, 5e3, 3.2e3, 2e3)
WALL = wall_with_door(6e3, 3e3, 2e3, 1e3, 2.1e3)
ROUND = slab_with_opening(6e3, 4e3, (3e3, 2e3), (800.0, 800.0), 400.0)

CRACKS = {
    "a diagonal through": (EVEN, [(3e3, 3e3), (0, 0)], True),
    "a diagonal in part": (EVEN, [(3e3, 3e3), (1.4e3, 1.4e3)], False),
    "aslant from the inside corner": (UNEVEN, [(2.8e3, 3e3), (2.1e3, 1.9e3)], False),
    "aslant and through": (UNEVEN, [(2.8e3, 3e3), (0, 1.1e3)], True),
    "with bends": (UNEVEN, [(2.8e3, 3e3), (2.5e3, 2.6e3), (2e3, 2.5e3), (1.4e3, 2e3)], False),
    "with bends and through": (UNEVEN, [(2.8e3, 3e3), (2.4e3, 2.2e3), (0, 2e3)], True),
    "straight on along a side": (UNEVEN, [(2.8e3, 3e3), (2.8e3, 1e3)], False),
    "from the middle of a side": (UNEVEN, [(4e3, 0), (4.2e3, 1.4e3)], False),
    "over a door": (WALL, [(2e3, 2.1e3), (1.4e3, 3e3)], True),
    "up the middle of a door": (wall_with_door(6e3, 3e3, 2.5e3, 1e3, 2e3),
                                [(3e3, 2e3), (3e3, 2.5e3)], False),
    "from an arc": (ROUND, [ROUND.sides[-1].points([0.5])[0], (4e3, 1e3)], False),
    "across the end": (rectangle(4e3, 1e3), [(0, 500.0), (600.0, 500.0)], False),
}  # fmt: skip


@pytest.fixture(scope="module", params=CRACKS)
def split(request):
    body, crack, through = CRACKS[request.param]
    return body, np.array(crack), through, mesh(body, MeshSize(), corners=(), crack=crack)


@st.composite
def cracks(draw):
    """A crack from an inside corner, up to two bends, its tip inside."""
    body = draw(st.sampled_from([EVEN, UNEVEN, WALL]))
    corner = body.inside_corners[0]
    ahead = -0.75 * np.pi if body is not WALL else 0.75 * np.pi
    place, line = corner, [corner]
    for _bend in range(draw(st.integers(1, 3))):
        angle = ahead + draw(st.floats(-0.6, 0.6))
        place = place + draw(st.floats(100.0, 220.0)) * np.array([np.cos(angle), np.sin(angle)])
        line.append(place)
    return body, np.array(line)


def parts(made):
    """Give the number of pieces of the body that share no node."""
    count = len(made.points)
    row = np.repeat(made.triangles[:, 0], 5)
    graph = coo_array((np.ones(row.size), (row, made.triangles[:, 1:].ravel())), (count, count))
    return connected_components(graph, directed=False)[0]


def beside(made, nodes):
    """Give the middles of the triangles that have an edge between some nodes."""
    corners = made.triangles[:, :3]
    has = np.isin(corners, nodes).sum(axis=1) >= 2
    return made.points[corners[has]].mean(axis=1)


def test_both_faces_lie_on_the_line(split):
    body, line, _through, made = split
    first, second = made.points[made.crack.first], made.points[made.crack.second]
    assert np.array_equal(first, second)
    pieces = line[1:] - line[:-1]
    length = np.hypot(*pieces.T)
    share = ((first[:, None] - line[:-1]) * pieces).sum(axis=2) / length**2
    off = np.hypot(*(first[:, None] - line[:-1] - share.clip(0, 1)[..., None] * pieces)
                   .transpose(2, 0, 1))  # fmt: skip
    assert off.min(axis=1).max() < 1e-6
    before = np.concatenate([[0.0], np.cumsum(length)])[off.argmin(axis=1)]
    walked = before + (share.clip(0, 1) * length)[np.arange(len(off)), off.argmin(axis=1)]
    assert made.crack.along == pytest.approx(walked, abs=1e-6)
    assert (np.diff(made.crack.along) > 0).all()
    assert (made.crack.along[0], made.crack.along[-1]) == pytest.approx((0.0, length.sum()))


def test_only_a_tip_inside_of_the_body_is_shared(split):
    _body, _line, through, made = split
    same = made.crack.first == made.crack.second
    assert same.sum() == (not through)
    assert same[-1] == (not through)


def test_a_crack_parts_the_body_when_it_reaches_another_side(split):
    _body, _line, through, made = split
    assert parts(made) == 1 + through


def test_each_face_is_the_rim_of_the_triangles_on_its_side(split):
    _body, line, _through, made = split
    walked = set(map(tuple, edges_of(made).tolist()))
    first, second = made.crack.first[::2].tolist(), made.crack.second[::2].tolist()
    # Walked towards the tip, the left face has its triangles on the left; the right face backwards.
    assert set(zip(first, first[1:], strict=False)) <= walked
    assert set(zip(second[1:], second, strict=False)) <= walked
    ahead = (line[1] - line[0]) @ np.array([1.0, 1j])
    # Before its first bend, the left is where one turns to from the first piece.
    for nodes, sign in ((first, 1), (second, -1)):
        away = (beside(made, nodes[:3]) - line[0]) @ np.array([1.0, 1j])
        near = abs(away) < abs(ahead)
        assert (sign * (away[near] / ahead).imag > 0).any()


def test_middles_and_corners_come_in_turn(split):
    made = split[-1]
    middles = np.unique(made.triangles[:, 3:])
    for face in (made.crack.first, made.crack.second):
        is_middle = np.isin(face, middles)
        assert not is_middle[::2].any()
        assert is_middle[1::2].all()


def test_nothing_but_the_faces_is_doubled(split):
    made = split[-1]
    places = np.unique(made.points.round(6), axis=0)
    doubled = (made.crack.first != made.crack.second).sum()
    assert len(made.points) - len(places) == doubled
    assert np.unique(made.triangles).size == len(made.points)


def test_triangles_along_the_crack_have_the_size_asked_for(split):
    steps = np.diff(split[-1].crack.along[::2])
    assert steps.max() < 1.1 * MeshSize().crack
    assert np.median(steps) > 0.8 * MeshSize().crack


@settings(max_examples=25)
@given(cracks(), SIZES)
def test_splitting_changes_no_triangle(cracked, size):
    body, line = cracked
    made = mesh(body, size, crack=line)
    grown, weights = stretch(made)
    assert grown.min() > 0
    assert (grown @ weights).sum() == pytest.approx(body.area, rel=1e-12)
    edges = {frozenset(edge) for edge in edges_of(made, whole=True).tolist()}
    corners = np.unique(joined(made)[made.triangles[:, :3]]).size
    assert corners - len(edges) + len(made.triangles) == 1
    assert parts(made) == 1


@settings(max_examples=25)
@given(cracks(), SIZES)
def test_beside_a_crack_no_triangle_is_flat(cracked, size):
    body, line = cracked
    made = mesh(body, size, crack=line)
    angles = np.degrees(least_angles(made))
    assert angles.min() > (18.0 if size.ratio <= 1.5 else 15.0)


@pytest.mark.parametrize(
    "crack",
    [
        [(2e3, 2e3), (1e3, 1e3)],  # begins inside
        [(3e3, 3e3), (4e3, 4e3)],  # runs out of the body
        [(2.8e3, 3e3), (4e3, 4e3)],
        [(3e3, 3e3), (-500.0, -500.0)],
        [(3e3, 3e3)],
        [(3e3, 3e3), (3e3, 3e3)],
    ],
)
@pytest.mark.parametrize("body", [EVEN, UNEVEN])
def test_a_crack_that_leaves_the_body_is_refused(body, crack):
    with pytest.raises(ValueError, match="crack"):
        mesh(body, MeshSize(), crack=crack)


def test_a_crack_that_crosses_itself_or_an_opening_is_refused():
    knot = [(2.8e3, 3e3), (2e3, 2e3), (2e3, 2.6e3), (2.7e3, 2.2e3)]
    with pytest.raises(ArithmeticError, match="cross"):
        mesh(UNEVEN, MeshSize(), crack=knot)
    slit = slab_with_opening(6e3, 4e3, (3e3, 2e3), (800.0, 40.0))
    with pytest.raises(ValueError, match="inside"):
        mesh(slit, MeshSize(), crack=[(3.1e3, 0.0), (3e3, 3e3)])
