"""Values at any place of a slab, from those at the nodes of its triangles."""

import numpy as np

from crackkit.mechanics.plane_elements import shape_slopes, shapes

_NEAREST, _ROUNDS, _TOLERANCE = 8, 12, 1e-9
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
    corners = mesh.points[mesh.triangles]
    found, shares = np.full(len(at), -1), np.full((len(at), 3), np.nan)
    for candidates in (_near, _around):
        missing = np.flatnonzero(found < 0)
        if missing.size:
            rows, which = candidates(corners, at[missing])
            _keep(corners, at, (missing[rows], which), found, shares)
    return found, shares


def _near(corners, at):
    """Pairs of places and of the triangles whose middles are nearest."""
    from scipy.spatial import cKDTree

    k = min(_NEAREST, len(corners))
    _distance, which = cKDTree(corners[:, :3].mean(axis=1)).query(at, k=[*range(1, k + 1)])
    return np.repeat(np.arange(len(at)), k), which.ravel()


def _around(corners, at):
    """Pairs of places and of all triangles in whose boxes they lie."""
    low, high = corners.min(axis=1), corners.max(axis=1)
    room = 0.05 * (high - low)  # for sides that bulge between their nodes
    low, high = low - room, high + room
    pairs, step = [], max(1, _CHUNK // len(corners))
    for k in range(0, len(at), step):
        p = at[k : k + step, None]
        rows, which = np.nonzero(((p >= low) & (p <= high)).all(axis=-1))
        pairs.append((rows + k, which))
    return tuple(np.concatenate(each) for each in zip(*pairs, strict=True))


def _keep(corners, at, pairs, found, shares):
    """Note the pairs that fit; of several triangles the one in which the place lies deepest."""
    rows, which = pairs
    share = _shares(corners[which], at[rows])
    depth = share.min(axis=1)
    order = np.argsort(depth, kind="stable")
    order = order[depth[order] >= -_TOLERANCE]
    found[rows[order]], shares[rows[order]] = which[order], share[order]


def _shares(corners, at):
    """Shares of the corners, by Newton's method, which needs one round where sides are straight."""
    share = np.full((len(at), 3), 1 / 3)
    for _round in range(_ROUNDS):
        gap = at - (shapes(share)[:, None] @ corners)[:, 0]
        J = shape_slopes(share) @ corners
        det = J[:, 0, 0] * J[:, 1, 1] - J[:, 0, 1] * J[:, 1, 0]
        det = np.where(det == 0, np.inf, det)
        b = (gap[:, 0] * J[:, 1, 1] - gap[:, 1] * J[:, 1, 0]) / det
        c = (gap[:, 1] * J[:, 0, 0] - gap[:, 0] * J[:, 0, 1]) / det
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
