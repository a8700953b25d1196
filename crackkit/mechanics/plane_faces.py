"""The two faces of a crack: a mesh split along a line."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_pieces import CRACK


@dataclass(frozen=True)
class CrackFaces:
    """Nodes on both faces of a crack.

    Parameters
    ----------
    first, second : numpy.ndarray of int
        Nodes that lie at the same place [-], corners and middles in turn, from the mouth on;
        `first` is on the left of one who walks from the mouth to the tip. A tip inside of the body
        is one node for both and comes last.
    along : numpy.ndarray
        Distance of each pair from the mouth, along the line [mm].
    """

    first: np.ndarray
    second: np.ndarray
    along: np.ndarray


def split(lines, points, triangles):
    """Split a mesh along the line of the crack.

    Parameters
    ----------
    lines : PlaneLines
        Edges of sides and crack [mm].
    points : numpy.ndarray
        Nodes: x and y [mm].
    triangles : numpy.ndarray of int
        Nodes of the quadratic triangles [-].

    Returns
    -------
    points : numpy.ndarray
        Nodes, those of the second face added at the end [mm].
    triangles : numpy.ndarray of int
        Triangles, those on the right of the line with the nodes of the second face [-].
    faces : CrackFaces
        Pairs of nodes [-] and their distance from the mouth [mm].
    """
    corners = lines.crack_nodes
    nodes = np.empty(2 * corners.size - 1, dtype=int)
    nodes[::2] = corners
    nodes[1::2] = _middles_between(triangles, corners)
    on_side = np.isin(corners[[0, -1]], lines.edges[lines.owner != CRACK])
    doubled = nodes if on_side[1] else nodes[:-1]
    copy = np.arange(len(points))
    copy[doubled] = len(points) + np.arange(doubled.size)
    right = _right_of(lines, points, triangles, nodes)
    triangles = np.where(right, copy[triangles], triangles)
    steps = np.hypot(*np.diff(points[nodes], axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(steps)])
    faces = CrackFaces(nodes, copy[nodes], along)
    return np.concatenate([points, points[doubled]]), triangles, faces


def _middles_between(triangles, corners):
    """Middle nodes of the edges between corners that follow each other."""
    count = np.int64(triangles.max() + 1)
    first, second = triangles[:, :3], triangles[:, [1, 2, 0]]
    keys = (np.minimum(first, second) * count + np.maximum(first, second)).ravel()
    order = np.argsort(keys)
    a, b = corners[:-1], corners[1:]
    wanted = np.minimum(a, b) * count + np.maximum(a, b)
    return triangles[:, 3:].ravel()[order[np.searchsorted(keys[order], wanted)]]


def _right_of(lines, points, triangles, nodes):
    """Which nodes of which triangles lie on the right face.

    Round a node of the line, a triangle is on the left when one meets it on the way, turning to
    the left, from the line ahead to the line behind. At the mouth the side that ends there stands
    for the line behind; at a tip on a side, the side that begins there for the line ahead.
    """
    place = np.full(len(points), -1)
    place[nodes] = np.arange(nodes.size)
    ahead, behind = _ahead_and_behind(lines, points, nodes)
    row, column = np.nonzero(place[triangles] >= 0)
    node = triangles[row, column]
    k = place[node]
    middle = points[triangles[row, :3]].mean(axis=1) @ np.array([1.0, 1j])
    here = points[node] @ np.array([1.0, 1j])
    turn = np.angle((middle - here) / ahead[k]) % (2.0 * np.pi)
    sector = np.angle(behind[k] / ahead[k]) % (2.0 * np.pi)
    right = np.zeros(triangles.shape, dtype=bool)
    right[row, column] = turn > sector
    return right


def _ahead_and_behind(lines, points, nodes):
    """From each node of the crack to the next one and to the last one, as complex numbers."""
    z = points @ np.array([1.0, 1j])
    sides = lines.edges[lines.owner != CRACK]
    ends_at = sides[sides[:, 1] == nodes[0], 0]
    begins_at = sides[sides[:, 0] == nodes[-1], 1]
    behind = np.concatenate([ends_at[:1], nodes[:-1]])
    # At a tip inside of the body nothing is split: any direction will do.
    ahead = np.concatenate([nodes[1:], begins_at[:1] if begins_at.size else nodes[-2:-1]])
    return z[ahead] - z[nodes], z[behind] - z[nodes]
