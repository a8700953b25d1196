"""Meshes of quadratic triangles made by mapping a square grid, for tests of the plane mechanics."""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, eq=False)
class GridMesh:
    """What the mechanics asks of a mesh."""

    points: np.ndarray
    triangles: np.ndarray
    sides: dict
    crack: object = None


def grid_mesh(s, t, mapping=None, keep=None, sides=None):
    """Give triangles on the grid of `s` and `t`, two in each cell, put in place by `mapping`.

    `mapping` takes (s, t) and gives points (n, 2); middles are mapped too, so that sides follow
    curves. `keep` takes the middles (s, t) of cells and says which stay. `sides` names sides by
    what takes the middles (s, t) of the edges of the boundary and says which belong to it.
    """
    s, t = np.asarray(s, float), np.asarray(t, float)
    corners = np.stack(np.meshgrid(s, t, indexing="ij"), axis=-1).reshape(-1, 2)
    number = np.arange(len(corners)).reshape(len(s), len(t))
    a, b, c, d = (
        n.ravel() for n in (number[:-1, :-1], number[1:, :-1], number[1:, 1:], number[:-1, 1:])
    )
    middle = 0.5 * (corners[a] + corners[c])
    stays = np.ones(len(a), bool) if keep is None else keep(*middle.T)
    a, b, c, d, middle = (each[stays] for each in (a, b, c, d, middle))
    # Diagonals turn with the quarter of the grid, so that a square keeps its symmetry.
    turned = ((middle - 0.5 * (corners[0] + corners[-1])).prod(axis=1) < 0)[:, None]
    first = np.where(turned, np.c_[a, b, d], np.c_[a, b, c])
    second = np.where(turned, np.c_[b, c, d], np.c_[a, c, d])
    triangles = np.concatenate([first, second])
    return _with_middles(corners, triangles, mapping, sides or box_sides(s, t))


def box_sides(s, t):
    """Sides of a plain grid."""
    return {
        "left": lambda x, y: np.isclose(x, s[0]),
        "right": lambda x, y: np.isclose(x, s[-1]),
        "bottom": lambda x, y: np.isclose(y, t[0]),
        "top": lambda x, y: np.isclose(y, t[-1]),
    }


def _with_middles(corners, triangles, mapping, sides):
    ends = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
    pairs, first, which, counts = np.unique(
        np.sort(ends, axis=1), axis=0, return_index=True, return_inverse=True, return_counts=True
    )
    middles = corners[pairs].mean(axis=1)
    whole = np.c_[triangles, len(corners) + which.reshape(3, -1).T]
    flat = np.concatenate([corners, middles])
    rim = np.flatnonzero(counts == 1)
    edges = np.c_[ends[first[rim]], len(corners) + rim]
    used, new = np.unique(whole, return_inverse=True)
    back = np.full(len(flat), -1)
    back[used] = np.arange(len(used))
    points = flat[used] if mapping is None else np.asarray(mapping(*flat[used].T))
    named = {
        name: _in_order(back[edges[belongs(*flat[edges[:, 2]].T)]])
        for name, belongs in sides.items()
    }
    return GridMesh(points, new.reshape(whole.shape), named)


def _in_order(edges):
    """Edges one after the other, as one walks with the body on the left."""
    after = {int(edge[0]): edge for edge in edges}
    starts = set(after) - {int(edge[1]) for edge in edges}
    at = min(starts) if starts else min(after)
    walk = []
    while at in after:
        walk.append(after.pop(at))
        at = int(walk[-1][1])
    return np.array(walk)


def graded(size, first, ratio):
    """Places from 0 to `size`, the first gap `first`, each gap `ratio` times the last."""
    count = max(2, int(np.ceil(np.log1p(size * (ratio - 1) / first) / np.log(ratio))))
    gaps = ratio ** np.arange(count)
    return np.r_[0.0, np.cumsum(gaps)] * size / gaps.sum()


def l_slab(leg, notch, first, ratio):
    """L-shaped slab whose inside corner is the origin; the cut-away part lies at x, y > 0."""
    out, into = graded(notch, first, ratio), graded(leg - notch, first, ratio)
    s = np.r_[-into[:0:-1], out]
    low, high = s[0], s[-1]
    sides = {
        "left": lambda x, y: np.isclose(x, low),
        "bottom": lambda x, y: np.isclose(y, low),
        "right": lambda x, y: np.isclose(x, high),
        "top": lambda x, y: np.isclose(y, high),
        "notch": lambda x, y: (x >= 0) & (y >= 0) & (x < 0.999 * high) & (y < 0.999 * high),
    }
    return grid_mesh(s, s, keep=lambda x, y: ~((x > 0) & (y > 0)), sides=sides)
