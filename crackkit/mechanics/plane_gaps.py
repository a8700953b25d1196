"""Narrow places of a plane body: triangles there are no longer than the place is wide.

Between an opening and an edge that it almost touches, or between the tip of a crack and a side,
triangles of the size asked for elsewhere would be flat.
"""

from dataclasses import replace

import numpy as np

from crackkit.mechanics.plane_lines import points_on
from crackkit.mechanics.plane_size import distance_to_arcs, distance_to_lines

_SHARES = np.linspace(0.0, 1.0, 17)
_LONGEST = 1.5  # side of a triangle, in widths of the place
_LEAST = 5e-4  # side of a triangle, in sizes of the outline: lines that cross have no width


def with_narrow_places(field, pieces, reach):
    """Add to a field of sizes the places where two lines come close to each other.

    Parameters
    ----------
    field : SizeField
        Sizes [mm].
    pieces : list of PlaneSide
        The lines [mm].
    reach : float
        Size of the outline [mm].

    Returns
    -------
    SizeField
        Sizes [mm] that are about 1.5 times the distance between the lines at most, but not below
        1/2000 of the outline's.
    """
    number = np.repeat(np.arange(len(pieces)), _SHARES.size)
    points = points_on(pieces, number, np.tile(_SHARES, len(pieces)))
    far = _distances(points, pieces)
    far[_meeting(pieces)[:, number]] = np.inf
    asked = np.maximum(_LONGEST * far.min(axis=0), _LEAST * reach)
    narrow = asked < field.at(points)
    found = np.column_stack([points[narrow], asked[narrow]])
    return replace(field, points=np.concatenate([field.points, found])) if narrow.any() else field


def _distances(points, pieces):
    """Distance of points from each piece, one row for each piece."""
    x, y = points.T
    bent = np.array([piece.turn != 0 for piece in pieces])
    far = np.empty((len(pieces), len(points)))
    lines = [(*p.start, *p.end) for p in pieces if not p.turn]
    arcs = [p.circle for p in pieces if p.turn]
    far[~bent] = distance_to_lines(x, y, np.reshape(lines, (-1, 4)))
    far[bent] = distance_to_arcs(x, y, np.reshape(arcs, (-1, 5)))
    return far


def _meeting(pieces):
    """Whether two pieces are the same or share an end."""
    ends = {}
    for piece in pieces:
        for end in (piece.start, piece.end):
            ends.setdefault(end, len(ends))
    at = np.zeros((len(pieces), len(ends)), dtype=bool)
    for k, piece in enumerate(pieces):
        at[k, [ends[piece.start], ends[piece.end]]] = True
    return at @ at.T
