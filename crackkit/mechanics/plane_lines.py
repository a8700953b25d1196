"""Nodes on the lines of a plane mesh: on the sides of the outline and along a crack.

Each line is cut into pieces of the length that the field of sizes asks for there.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_outline import PlaneSide
from crackkit.words import _

CRACK = -1
"""Number that stands for the line of the crack where others are the numbers of sides."""
_SAME = 1e-7  # distance that counts as none, in sizes of the outline


@dataclass(frozen=True)
class PlaneLines:
    """Edges that a mesh must have.

    Parameters
    ----------
    points : numpy.ndarray
        Nodes: x and y [mm], one row for each.
    edges : numpy.ndarray of int
        First and second node of each edge [-], the body on the left, in order along each side.
    middles : numpy.ndarray
        Middle of each edge, on the arc where there is one: x and y [mm].
    owner : numpy.ndarray of int
        Number of the side of the outline that each edge belongs to [-]; CRACK on the crack.
    """

    points: np.ndarray
    edges: np.ndarray
    middles: np.ndarray
    owner: np.ndarray

    @property
    def crack_nodes(self):
        """Numbers of the nodes along the crack [-], from its mouth on."""
        edges = self.edges[self.owner == CRACK]
        return np.append(edges[:, 0], edges[-1:, 1])


def plane_lines(outline, field, crack, per_turn):
    """Place nodes on the sides of an outline and along a crack.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    field : SizeField
        Sizes [mm].
    crack : numpy.ndarray
        Corners of the line of the crack from its mouth on [mm]; no rows without one.
    per_turn : int
        Pieces of a full circle [-] at least.

    Returns
    -------
    PlaneLines
        Places in [mm].

    Raises
    ------
    ValueError
        If the crack does not begin on a side.
    """
    pieces, owner = _pieces(outline, crack)
    least = [int(np.ceil(abs(p.turn) * per_turn / (2.0 * np.pi) - 1e-6)) for p in pieces]
    piece, share = _cut_by_size(pieces, field, np.maximum(least, 1))
    vertex = {}
    ends = np.array([[vertex.setdefault(e, len(vertex)) for e in (p.start, p.end)] for p in pieces])
    # Nodes: first the ends of pieces, then the places inside of pieces.
    inside = share > 0
    nodes = np.empty(piece.size + 1, dtype=int)
    nodes[:-1][~inside] = ends[:, 0]
    nodes[:-1][inside] = len(vertex) + np.arange(inside.sum())
    last = np.append(piece[1:] != piece[:-1], True)
    second = np.where(last, ends[piece, 1], nodes[1:])
    end_share = np.where(last, 1.0, np.append(share[1:], 1.0))
    walk = _Walk(pieces)
    points = np.concatenate([np.array(list(vertex)), walk.at(piece[inside], share[inside])])
    middles = walk.at(piece, 0.5 * (share + end_share))
    return PlaneLines(points, np.stack([nodes[:-1], second], axis=1), middles, owner[piece])


class _Walk:
    """Many lines at once: where one is after a share of one of them."""

    def __init__(self, pieces):
        self.start = np.array([complex(*p.start) for p in pieces])
        self.chord = np.array([p.chord for p in pieces])
        self.half = np.array([0.5 * p.turn for p in pieces])
        self.length = np.array([p.length for p in pieces])

    def at(self, piece, share):
        half, part = self.half[piece], share.astype(complex)
        bent = half != 0
        h, t = half[bent], share[bent]
        part[bent] = np.exp(1j * h * (t - 1.0)) * np.sin(h * t) / np.sin(h)
        z = self.start[piece] + part * self.chord[piece]
        return np.stack([z.real, z.imag], axis=1)


def _cut_by_size(pieces, field, least):
    """Beginning of each edge: the number of its piece and the share of its length."""
    walk = _Walk(pieces)
    piece, share, width = _sampled(walk, field)
    asked = walk.length[piece] * width / field.at(walk.at(piece, share + 0.5 * width))
    total = np.bincount(piece, asked)
    counts = np.maximum(np.round(total).astype(int), least)
    before = np.concatenate([[0.0], np.cumsum(total)])
    number = np.repeat(np.arange(counts.size), counts)
    step = np.arange(number.size) - np.repeat(np.cumsum(counts) - counts, counts)
    target = before[number] + step * (total / counts)[number]
    along = np.interp(
        target, np.concatenate([[0.0], np.cumsum(asked)]), np.append(piece + share, len(pieces))
    )
    return number, np.where(step == 0, 0.0, along - number)


def _sampled(walk, field):
    """Cut the lines by halves until each part is a quarter of the size there or shorter."""
    piece = np.arange(walk.length.size)
    share, width = np.zeros(piece.size), np.ones(piece.size)
    done = []
    while piece.size:
        size = field.at(walk.at(piece, share + 0.5 * width))
        fine = walk.length[piece] * width <= 0.25 * size
        done.append((piece[fine], share[fine], width[fine]))
        piece, share, width = piece[~fine], share[~fine], 0.5 * width[~fine]
        piece, share = np.tile(piece, 2), np.concatenate([share, share + width])
        width = np.tile(width, 2)
    piece, share, width = (np.concatenate(each) for each in zip(*done, strict=True))
    order = np.lexsort((share, piece))
    return piece[order], share[order], width[order]


def _pieces(outline, crack):
    """Sides, cut where the crack begins or ends on them, and the pieces of the crack."""
    sides = [(side, k) for k, side in enumerate(outline.sides)]
    if not len(crack):
        return [side for side, _k in sides], np.arange(len(sides))
    far = float(np.ptp(outline.box, axis=0).max())
    line = [tuple(map(float, point)) for point in crack]
    sides, mouth = _joined(sides, line[0], _SAME * far)
    if mouth is None:
        raise ValueError(_("A crack begins on a side."))
    sides, tip = _joined(sides, line[-1], _SAME * far)
    line[0], line[-1] = mouth, tip or line[-1]
    parts = [PlaneSide("crack", a, b) for a, b in zip(line, line[1:], strict=False)]
    pieces = [side for side, _k in sides] + parts
    return pieces, np.array([k for _side, k in sides] + [CRACK] * len(parts))


def _joined(sides, point, near):
    """Sides with one of them cut at a point, and the point exactly; None where none is near."""
    for side, _k in sides:
        if abs(complex(*side.start) - complex(*point)) <= near:
            return sides, side.start
    for place, (side, k) in enumerate(sides):
        share, distance = side.share_of(point)
        if distance <= near and 0.0 < share < 1.0:
            both = side.cut_at([share])
            return sides[:place] + [(b, k) for b in both] + sides[place + 1 :], both[0].end
    return sides, None
