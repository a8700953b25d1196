"""Triangles over points, with given edges among their sides.

Delaunay's triangulation has an edge for certain where no node lies in the circle over it. So the
points inside keep their distance from the lines, and where an edge is missing all the same, nodes
in its circle are dropped or the edge is halved.
"""

import numpy as np

from crackkit.mechanics.plane_lines import PlaneLines
from crackkit.mechanics.plane_points import thinned
from crackkit.words import _

_ROUNDS = 2  # of smoothing, with a new triangulation after each
_STEPS = 3  # of smoothing in a round
_WIDEST = 0.85  # radius of the circle through the corners of a triangle, in sizes; equal sides 0.58
_TRIES = 12  # to mend missing edges
_MANY = 3  # times more edges than at first: lines that cross would be halved for ever


def plane_triangles(lines, inner, field):
    """Triangulate a body.

    Parameters
    ----------
    lines : PlaneLines
        Edges that the mesh must have [mm].
    inner : numpy.ndarray
        Points inside: x and y [mm].
    field : SizeField
        Sizes [mm].

    Returns
    -------
    lines : PlaneLines
        The edges, halved where need be [mm].
    points : numpy.ndarray
        Nodes: those of the lines, then others; x and y [mm].
    triangles : numpy.ndarray of int
        Corners of the triangles, counter-clockwise [-].
    """
    points = np.concatenate([lines.points, inner])
    triangles = _delaunay_inside(lines, points)[0]
    more = _fillings(points, triangles, field)
    points = np.concatenate([points, more])
    for _round in range(_ROUNDS):
        if len(more) or _round:
            triangles = _delaunay_inside(lines, points)[0]
        points = _smoothed(points, triangles, len(lines.points), field)
    edges = len(lines.edges)
    for _try in range(_TRIES):
        triangles, missing = _delaunay_inside(lines, points)
        if not missing.any():
            return lines, *_used(points, triangles, len(lines.points))
        lines, points = _mended(lines, points, missing)
        if len(lines.edges) > _MANY * edges:
            break
    raise ArithmeticError(_("No mesh follows all of these lines: do they cross each other?"))


def _delaunay_inside(lines, points):
    """Triangles inside of the body, and which edges are missing."""
    from scipy.sparse import coo_array
    from scipy.sparse.csgraph import connected_components
    from scipy.spatial import Delaunay

    low, high = lines.points.min(axis=0), lines.points.max(axis=0)
    middle, size = 0.5 * (low + high), (high - low).max()
    # Nodes in a row on the rim of all points could be lost to rounding: the rim is moved far out.
    frame = size * np.array([[-1.5, -1.4], [1.4, -1.5], [1.5, 1.4], [-1.4, 1.5]])
    found = Delaunay(np.concatenate([points - middle, frame]))
    triangles, beside = found.simplices, found.neighbors
    left, row, side = _beside_edges(lines, triangles)
    barred = beside < 0
    barred[row, side] = True
    row, side = np.nonzero(~barred)
    graph = coo_array((np.ones(row.size, bool), (row, beside[row, side])), shape=(len(beside),) * 2)
    part = connected_components(graph, directed=False)[1]
    inside = np.isin(part, np.unique(part[left[left >= 0]]))
    # Where an edge is still missing the outside leaks in, as far as to the rim.
    inside &= (triangles < len(points)).all(axis=1)
    return triangles[inside].astype(int), left < 0


def _beside_edges(lines, triangles):
    """Triangle on the left of each edge, -1 if it is missing; all sides that are edges."""
    # Side k of a triangle is opposite to its corner k.
    first, second = triangles[:, [1, 2, 0]], triangles[:, [2, 0, 1]]
    fixed = len(lines.points)
    row, side = np.nonzero((first < fixed) & (second < fixed))
    number = np.full((fixed, fixed), -1)
    number[lines.edges[:, 0], lines.edges[:, 1]] = np.arange(len(lines.edges))
    forward = number[first[row, side], second[row, side]]
    backward = number[second[row, side], first[row, side]]
    left = np.full(len(lines.edges), -1)
    left[forward[forward >= 0]] = row[forward >= 0]
    is_edge = (forward >= 0) | (backward >= 0)
    return left, row[is_edge], side[is_edge]


def _fillings(points, triangles, field):
    """Points in the middles of triangles that are too large."""
    a, b, c = (points[triangles[:, k]] @ np.array([1.0, 1j]) for k in (0, 1, 2))
    area = 0.5 * ((b - a).conjugate() * (c - a)).imag
    middle = (a + b + c) / 3.0
    middle = np.stack([middle.real, middle.imag], axis=1)
    size = field.at(middle)
    large = abs((b - a) * (c - b) * (a - c)) > 4.0 * area * _WIDEST * size
    return middle[large][thinned(middle[large], size[large])]


def _smoothed(points, triangles, fixed, field):
    """Move free points towards the middles of their triangles, weighed by area over size."""
    points = points.copy()
    size = field.at(points)[triangles].mean(axis=1)
    flat, count = triangles.ravel(), len(points)
    for _step in range(_STEPS):
        corner = points[triangles]
        middle = corner.mean(axis=1)
        u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
        weight = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / size**1.5
        total = np.bincount(flat, np.repeat(weight, 3), count)
        total[total == 0] = 1.0
        for k in (0, 1):
            moved = np.bincount(flat, np.repeat(weight * middle[:, k], 3), count) / total
            points[fixed:, k] = moved[fixed:]
    return points


def _mended(lines, points, missing):
    """Without free nodes in the circles of missing edges; these edges halved if there are none."""
    fixed = len(lines.points)
    ends = lines.points[lines.edges[missing]]
    centre, radius = ends.mean(axis=1), 0.5 * np.hypot(*(ends[:, 1] - ends[:, 0]).T)
    far = np.hypot(*(points[fixed:, None] - centre).transpose(2, 0, 1))
    close = (far < radius * 1.001).any(axis=1)
    if close.any():
        return lines, np.concatenate([points[:fixed], points[fixed:][~close]])
    return _halved(lines, missing, points[fixed:])


def _halved(lines, missing, inner):
    """Lines with some edges halved, and all points."""
    count, fixed = missing.sum(), len(lines.points)
    new = np.zeros(missing.size, dtype=int)
    new[missing] = fixed + np.arange(count)
    twice = np.repeat(np.arange(missing.size), 1 + missing)
    again = np.append(False, twice[1:] == twice[:-1])
    cut = missing[twice]
    edges = lines.edges[twice]
    edges[cut & ~again, 1] = new[twice[cut & ~again]]
    edges[again, 0] = new[twice[again]]
    points = np.concatenate([lines.points, lines.middles[missing]])
    middles = lines.middles[twice]
    ends = points[edges]
    middles[cut] = _arc_middles(ends[cut], lines.points[lines.edges][twice[cut]], middles[cut])
    lines = PlaneLines(points, edges, middles, lines.owner[twice], lines.half)
    return lines, np.concatenate([points, inner])


def _arc_middles(ends, whole, middle):
    """Middles of halves of arcs, each whole arc given by its ends and its middle."""
    chord = (whole[:, 1] - whole[:, 0]) @ np.array([1.0, 1j])
    sag = (middle - whole.mean(axis=1)) @ np.array([1.0, 1j]) / chord
    # An arc of angle 4a has the sag tan(a)/2 of its chord; its half tan(a/2)/2.
    part = (ends[:, 1] - ends[:, 0]) @ np.array([1.0, 1j])
    found = ends.mean(axis=1) @ np.array([1.0, 1j])
    found = found + 0.5j * np.tan(0.5 * np.arctan(2.0 * sag.imag)) * part
    return np.stack([found.real, found.imag], axis=1)


def _used(points, triangles, fixed):
    """Points and triangles without the free points that no triangle uses."""
    used = np.zeros(len(points), dtype=bool)
    used[triangles] = True
    used[:fixed] = True
    number = np.cumsum(used) - 1
    return points[used], number[triangles]
