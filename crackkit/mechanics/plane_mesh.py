"""Mesh of a slab or a wall in its plane: quadratic triangles, fine where it matters.

`mesh` is the one entry: an outline, the sizes, the corners at which the triangles are smallest
and, if the body is to crack, the line along which the mesh is split.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_faces import CrackFaces, split
from crackkit.mechanics.plane_gaps import with_narrow_places
from crackkit.mechanics.plane_lines import plane_lines
from crackkit.mechanics.plane_mirror import half_pieces, mirror_axis, whole
from crackkit.mechanics.plane_pieces import CRACK, plane_pieces
from crackkit.mechanics.plane_points import inner_points, inside
from crackkit.mechanics.plane_size import MeshSize, size_field
from crackkit.mechanics.plane_triangles import plane_triangles
from crackkit.words import _

_NO_LINE = np.empty((0, 2))


@dataclass(frozen=True)
class PlaneMesh:
    """Quadratic triangles over a plane body.

    Parameters
    ----------
    points : numpy.ndarray
        Nodes: x and y [mm], one row for each.
    triangles : numpy.ndarray of int
        Nodes of each triangle [-]: three corners counter-clockwise, then the middles of the sides
        0-1, 1-2 and 2-0; on an arc the middle lies on the arc.
    sides : dict
        For the name of each side of the outline its edges [-]: first corner, second corner and
        middle, in order along the side, the body on the left.
    crack : CrackFaces or None
        Nodes on both faces of the line along which the mesh is split, and distances [mm].
    """

    points: np.ndarray
    triangles: np.ndarray
    sides: dict
    crack: CrackFaces | None = None


def mesh(outline, size=None, corners=None, crack=None):
    """Make a mesh.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    size : MeshSize, optional
        How large the triangles are [mm].
    corners : array_like, optional
        Where triangles are smallest: x and y [mm], one row for each. If missing, the sharp inside
        corners of the outline; an empty tuple for none.
    crack : array_like, optional
        Line along which the mesh is split: x and y of its mouth, which lies on a side, of its
        bends and of its tip [mm], one row for each. The tip lies inside of the body or on a side;
        a tip inside is one node for both faces.

    Returns
    -------
    PlaneMesh
        Places in [mm]; the same for the same arguments.

    Raises
    ------
    ValueError
        If the crack does not begin on a side, or does not run inside of the body.
    ArithmeticError
        If no mesh follows all lines, because the crack crosses itself.
    """
    size = size or MeshSize()
    corners = outline.inside_corners if corners is None else np.reshape(corners, (-1, 2))
    crack = _NO_LINE if crack is None else np.asarray(crack, dtype=float).reshape(-1, 2)
    if len(crack) == 1 or (len(crack) and (np.diff(crack, axis=0) == 0).all(axis=1).any()):
        raise ValueError(_("A crack leads from one place to another."))
    lines, points, triangles = _straight(outline, size, corners, crack)
    points, triangles = _quadratic(lines, points, triangles)
    faces = None
    if len(crack):
        points, triangles, faces = split(lines, points, triangles)
    return PlaneMesh(points, triangles, _sides(outline, lines, triangles, faces), faces)


def _straight(outline, size, corners, crack):
    """Mesh of triangles without middles; of a body that is even, one half and its reflection."""
    field = size_field(outline, size, corners, crack)
    axis = mirror_axis(outline, corners, crack)
    if axis:
        field = field.left_of(axis)
        pieces, owners = half_pieces(outline, crack, axis)
    else:
        pieces, owners = plane_pieces(outline, crack)
    field = with_narrow_places(field, pieces, outline.reach)
    lines = plane_lines(pieces, owners, field, size.per_turn, half=axis is not None)
    if not axis and not inside(lines.middles[lines.owner == CRACK], lines).all():
        raise ValueError(_("A crack begins on a side and runs inside of the body."))
    found = plane_triangles(lines, inner_points(outline, field, lines), field)
    return whole(outline, *found, axis) if axis else found


def _quadratic(lines, points, triangles):
    """Add the middles of all sides."""
    count = len(points)
    ends = np.stack([triangles, np.roll(triangles, -1, axis=1)], axis=2)
    keys = ends.min(axis=2) * np.int64(count) + ends.max(axis=2)
    edges, number = np.unique(keys, return_inverse=True)
    middles = 0.5 * (points[edges // count] + points[edges % count])
    known = lines.edges.min(axis=1) * np.int64(count) + lines.edges.max(axis=1)
    middles[np.searchsorted(edges, known)] = lines.middles
    number = number.reshape(triangles.shape) + count
    return np.concatenate([points, middles]), np.concatenate([triangles, number], axis=1)


def _sides(outline, lines, triangles, faces):
    """Edges of each side as the triangles beside them name their nodes."""
    edges, owner = lines.edges[lines.owner != CRACK], lines.owner[lines.owner != CRACK]
    corner = triangles[:, :3].copy()
    whole = _before_splitting(triangles.max() + 1, faces)
    keys = whole[corner] * np.int64(whole.size) + whole[np.roll(corner, -1, axis=1)]
    order = np.argsort(keys, axis=None)
    at = order[np.searchsorted(keys.ravel()[order], edges @ np.array([whole.size, 1]))]
    row, k = at // 3, at % 3
    nodes = triangles[row[:, None], np.stack([k, (k + 1) % 3, k + 3], axis=1)]
    return {side.name: nodes[owner == number] for number, side in enumerate(outline.sides)}


def _before_splitting(count, faces):
    """For each node the number it had before the mesh was split."""
    number = np.arange(count)
    if faces is not None:
        number[faces.second] = faces.first
    return number
