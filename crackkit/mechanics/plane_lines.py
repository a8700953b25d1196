"""Nodes on the lines of a plane mesh: on the sides of the outline and along a crack.

Each line is cut into pieces of the length that the field of sizes asks for there.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_pieces import CRACK


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
        Number of the side of the outline that each edge belongs to [-]; CRACK on the crack, AXIS
        on an axis.
    half : bool
        Whether the lines go round one half of the body, along an axis.
    """

    points: np.ndarray
    edges: np.ndarray
    middles: np.ndarray
    owner: np.ndarray
    half: bool = False

    @property
    def rim(self):
        """Edges that go round what is to be meshed: first and second node of each [-]."""
        return self.edges if self.half else self.edges[self.owner != CRACK]

    @property
    def crack_nodes(self):
        """Numbers of the nodes along the crack [-], from its mouth on."""
        edges = self.edges[self.owner == CRACK]
        return np.append(edges[:, 0], edges[-1:, 1])


def plane_lines(pieces, owners, field, per_turn, half=False):
    """Place nodes on lines.

    Parameters
    ----------
    pieces : list of PlaneSide
        The lines; where they meet, their ends are the same exactly [mm].
    owners : list of int
        What each piece belongs to [-]: the number of a side, CRACK or AXIS.
    field : SizeField
        Sizes [mm].
    per_turn : int
        Pieces of a full circle [-] at least.
    half : bool
        Whether the lines go round one half of the body.

    Returns
    -------
    PlaneLines
        Places in [mm].
    """
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
    return PlaneLines(
        points, np.stack([nodes[:-1], second], axis=1), middles, np.array(owners)[piece], half
    )


def points_on(pieces, piece, share):
    """Points on lines.

    Parameters
    ----------
    pieces : list of PlaneSide
        The lines [mm].
    piece : numpy.ndarray of int
        Number of the line of each point [-].
    share : numpy.ndarray
        How far along it the point lies, as a share of its length [-].

    Returns
    -------
    numpy.ndarray
        x and y [mm], one row for each.
    """
    return _Walk(pieces).at(piece, share)


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
