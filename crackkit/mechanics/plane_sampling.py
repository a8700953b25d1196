"""Values at any place of a slab, from those at the nodes of its triangles."""

import numpy as np

from crackkit.mechanics.plane_elements import shape_slopes, shapes
from crackkit.mechanics.plane_meeting import cross

_NEAREST, _ROUNDS, _TOLERANCE = 4, 12, 1e-9
_CHUNK = 200_000


def located(mesh, places):
    """Find the triangle of each place, and where in it the place lies.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles; sides may be curved.
    places : array_like
        Points [mm], shape (p, 2).

    Returns
    -------
    triangles : numpy.ndarray of int
        Number of the triangle [-], shape (p,), -1 outside of the slab. Of several that share
        the place any may be given.
    shares : numpy.ndarray
        Shares of its three corners [-], shape (p, 3).
    """
    at = np.atleast_2d(np.asarray(places, dtype=float))
    corners = _within_reach(mesh.points[mesh.triangles], at)
    found, shares = np.full(len(at), -1), np.full((len(at), 3), np.nan)
    for candidates in (_near, _around):
        missing = np.flatnonzero(found < 0)
        if missing.size and len(corners[0]):
            rows, which = candidates(corners[0], at[missing])
            _keep(corners, at, (missing[rows], which), found, shares)
    return found, shares


def _within_reach(corners, at):
    """Nodes of the triangles whose boxes meet the box of all places, and their numbers."""
    low, high = _boxes(corners)
    near = ((low <= at.max(axis=0)) & (high >= at.min(axis=0))).all(axis=1)
    return corners[near], np.flatnonzero(near)


def _boxes(corners):
    low, high = corners.min(axis=1), corners.max(axis=1)
    room = 0.05 * (high - low)  # for sides that bulge between their nodes
    return low - room, high + room


def _near(corners, at):
    """Pair each place with the best of the triangles whose middles are nearest."""
    from scipy.spatial import cKDTree

    k = min(_NEAREST, len(corners))
    tree = cKDTree(corners[:, :3].mean(axis=1), balanced_tree=False, compact_nodes=False)
    which = tree.query(at, k=[*range(1, k + 1)])[1]
    second, third = _straight(corners[which], at[:, None])
    depth = np.minimum(np.minimum(second, third), 1 - second - third)
    rows = np.arange(len(at))
    return rows, which[rows, np.argmax(depth, axis=1)]


def _straight(corners, at):
    """Shares of the second and the third corner, as if all sides were straight."""
    a, b, c = (corners[..., j, :] for j in range(3))
    first, second, gap = b - a, c - a, at - a
    det = cross(first, second)
    return cross(gap, second) / det, cross(first, gap) / det


def _around(corners, at):
    """Pair places with all triangles in whose boxes they lie."""
    low, high = _boxes(corners)
    pairs, step = [], max(1, _CHUNK // len(corners))
    for k in range(0, len(at), step):
        x, y = at[k : k + step, :1], at[k : k + step, 1:]
        beside = (x >= low[:, 0]) & (x <= high[:, 0])
        rows, which = np.nonzero(beside & (y >= low[:, 1]) & (y <= high[:, 1]))
        pairs.append((rows + k, which))
    return tuple(np.concatenate(each) for each in zip(*pairs, strict=True))


def _keep(corners, at, pairs, found, shares):
    """Note the pairs that fit; of several triangles the one in which the place lies deepest."""
    rows, which = pairs
    share = _shares(corners[0][which], at[rows])
    depth = share.min(axis=1)
    order = np.argsort(depth, kind="stable")
    order = order[depth[order] >= -_TOLERANCE]
    found[rows[order]], shares[rows[order]] = corners[1][which[order]], share[order]


def _shares(corners, at):
    """Shares of the corners, by Newton's method from those as if all sides were straight."""
    second, third = _straight(corners, at)
    share = np.stack([1 - second - third, second, third], axis=1)
    for _round in range(_ROUNDS):
        gap = at - (shapes(share)[:, None] @ corners)[:, 0]
        J = shape_slopes(share) @ corners
        det = cross(J[:, 0], J[:, 1])
        det = np.where(det == 0, np.inf, det)
        b, c = cross(gap, J[:, 1]) / det, cross(J[:, 0], gap) / det
        share += np.stack([-b - c, b, c], axis=1)
        np.clip(share, -2.0, 3.0, out=share)  # far triangles must not run away
        if max(abs(b).max(initial=0.0), abs(c).max(initial=0.0)) < 1e-12:
            break
    return share


def sampled(mesh, values, places):
    """Values at some places.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and triangles.
    values : numpy.ndarray
        Values at the nodes [any unit], shape (n,) or (n, c).
    places : array_like
        Points [mm], shape (p, 2).

    Returns
    -------
    numpy.ndarray
        Values there [same unit], shape (p,) or (p, c); not a number outside of the slab.
    """
    which, shares = located(mesh, places)
    whole = np.full((len(which), *np.shape(values)[1:]), np.nan)
    inside = which >= 0
    shape = shapes(shares[inside])
    here = values[mesh.triangles[which[inside]]]
    whole[inside] = np.einsum("pk,pk...->p...", shape, here)
    return whole
