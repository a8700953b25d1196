"""Bodies that are their own mirror image: one half is meshed, the other is its reflection.

So the mesh is as even as the body, and takes half of the time.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.plane_lines import PlaneLines
from crackkit.mechanics.plane_outline import PlaneSide
from crackkit.mechanics.plane_pieces import CRACK, joined
from crackkit.words import _

AXIS = -2
"""Number that stands for the axis where others are the numbers of sides."""
_SAME = 1e-7  # distance that counts as none, in sizes of the outline


@dataclass(frozen=True)
class MirrorAxis:
    """A straight line, and which side of a body is the mirror image of which.

    Parameters
    ----------
    through : complex
        A point of the line, x + iy [mm].
    along : complex
        Its direction [-], of length 1.
    partner : tuple of int
        For each side of the outline the number of its mirror image [-].
    """

    through: complex
    along: complex
    partner: tuple[int, ...]

    def reflected(self, points):
        """Mirror images.

        Parameters
        ----------
        points : numpy.ndarray
            x and y [mm], one row for each.

        Returns
        -------
        numpy.ndarray
            Theirs [mm].
        """
        z = self.through + self.along**2 * (_complex(points) - self.through).conjugate()
        return np.stack([z.real, z.imag], axis=-1)

    def height(self, points):
        """Distance from the axis, to the left positive.

        Parameters
        ----------
        points : array_like
            x and y [mm], one row for each.

        Returns
        -------
        numpy.ndarray
            Distances [mm].
        """
        return ((_complex(points) - self.through) / self.along).imag

    def station(self, points):
        """Distance along the axis.

        Parameters
        ----------
        points : array_like
            x and y [mm], one row for each.

        Returns
        -------
        numpy.ndarray
            Distances [mm].
        """
        return ((_complex(points) - self.through) / self.along).real


def mirror_axis(outline, corners, crack):
    """Find an axis about which body, corners and crack are even.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    corners : numpy.ndarray
        Places with the smallest triangles: x and y [mm], one row for each.
    crack : numpy.ndarray
        Corners of the line of the crack from its mouth on [mm]; no rows without one. It counts as
        even only if it lies on the axis.

    Returns
    -------
    MirrorAxis or None
        An axis through the middle of the body's box [mm], upright, level or at 45 degrees; along
        a crack it runs from mouth to tip.
    """
    near = _SAME * outline.reach
    through = complex(*outline.box.mean(axis=0))
    directions = (1.0 + 0j, 1j, (1.0 + 1j) / np.sqrt(2.0), (1.0 - 1j) / np.sqrt(2.0))
    if len(crack):
        z = _complex(crack)
        along = (z[-1] - z[0]) / abs(z[-1] - z[0])
        directions = [d * s for d in directions for s in (1, -1) if abs(d * s - along) < _SAME]
    for along in directions:
        axis = MirrorAxis(through, along, ())
        even = _pairs(_complex(corners), _complex(axis.reflected(corners)), near)
        on_axis = not len(crack) or abs(axis.height(crack)).max() < near
        partner = _partners(outline, axis, near)
        if partner is not None and even is not None and on_axis:
            return MirrorAxis(through, along, tuple(partner.tolist()))
    return None


def half_pieces(outline, crack, axis):
    """Lines of the half on the left of an axis.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    crack : numpy.ndarray
        Corners of the line of the crack, which lies on the axis [mm]; no rows without one.
    axis : MirrorAxis
        The axis [mm], along the crack.

    Returns
    -------
    pieces : list of PlaneSide
        Pieces of sides on the left of the axis, then those of the axis inside of the body [mm].
    owners : list of int
        Number of the side that each piece belongs to [-]; CRACK or AXIS.

    Raises
    ------
    ValueError
        If the crack does not run from a side through the body.
    """
    near = _SAME * outline.reach
    pieces, owners = [], []
    for k, side in enumerate(outline.sides):
        # A side that is its own mirror image crosses the axis in its middle.
        for piece in side.cut_at([0.5]) if axis.partner[k] == k else [side]:
            if axis.height(piece.points([0.5]))[0] > 0:
                pieces.append(piece)
                owners.append(k)
    starts, ends = ({p.start for p in pieces}, {p.end for p in pieces})
    starts, ends = (
        sorted((p for p in each if abs(axis.height(p)[0]) < near), key=lambda p: axis.station(p)[0])
        for each in (starts, ends)
    )
    # With the body on its left the rim comes to the axis, follows it and leaves it again.
    middle = [PlaneSide("axis", a, b) for a, b in zip(ends, starts, strict=True)]
    on_axis = [AXIS] * len(middle)
    if len(crack):
        on_axis = _with_crack(middle, on_axis, axis.station(crack[[0, -1]]), crack, axis, near)
    return pieces + middle, owners + on_axis


def whole(outline, lines, points, triangles, axis):
    """Add to the mesh of one half its mirror image.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    lines : PlaneLines
        Lines of the half on the left of the axis [mm].
    points : numpy.ndarray
        Nodes of that half: x and y [mm].
    triangles : numpy.ndarray of int
        Corners of its triangles [-].
    axis : MirrorAxis
        The axis [mm].

    Returns
    -------
    lines : PlaneLines
        Lines of the body, those of each side in order [mm].
    points : numpy.ndarray
        All nodes [mm].
    triangles : numpy.ndarray of int
        All triangles [-].
    """
    off = np.ones(len(points), dtype=bool)
    off[lines.edges[lines.owner < 0]] = False
    image = np.where(off, len(points) + np.cumsum(off) - 1, np.arange(len(points)))
    points = np.concatenate([points, axis.reflected(points[off])])
    triangles = np.concatenate([triangles, image[triangles[:, ::-1]]])
    side, crack = lines.owner >= 0, lines.owner == CRACK
    back = np.flatnonzero(side)[::-1]
    edges = [lines.edges[side], image[lines.edges[back, ::-1]], lines.edges[crack]]
    middles = [lines.middles[side], axis.reflected(lines.middles[back]), lines.middles[crack]]
    partner = np.array(axis.partner)
    owner = np.concatenate([lines.owner[side], partner[lines.owner[back]], lines.owner[crack]])
    # A side that crosses the axis begins on its left or on its right.
    begins_right = np.array([axis.height(s.start)[0] < 0 for s in outline.sides])
    turn = np.repeat([0, 1, 0], [len(each) for each in edges])
    turn = np.where((owner >= 0) & begins_right[owner], 1 - turn, turn)
    order = np.lexsort((turn, owner))
    edges, middles = np.concatenate(edges)[order], np.concatenate(middles)[order]
    return PlaneLines(points, edges, middles, owner[order]), points, triangles


def _with_crack(middle, owners, stations, crack, axis, near):
    """Cut the axis where the crack begins and ends, in place, and say what is crack."""
    rim = {piece.start for piece in middle}
    mouth, tip = (joined(middle, owners, tuple(map(float, p)), near) for p in crack[[0, -1]])
    between = axis.station([piece.points([0.5])[0] for piece in middle])
    cracked = (between > stations[0]) & (between < stations[1])
    length = sum(piece.length for piece, c in zip(middle, cracked, strict=True) if c)
    inside = abs(length - (stations[1] - stations[0])) < 3 * near
    if mouth not in rim or tip is None or not inside:
        raise ValueError(_("A crack begins on a side and runs inside of the body."))
    return [CRACK if c else AXIS for c in cracked]


def _partners(outline, axis, near):
    """For each side the number of its mirror image; None if one has none."""
    start = np.array([side.start for side in outline.sides])
    end = np.array([side.end for side in outline.sides])
    turn = np.array([side.turn for side in outline.sides]) * outline.reach
    # Walked backwards, a mirrored side turns to the same hand as before.
    here = np.stack([_complex(start), _complex(end), turn])
    there = np.stack([_complex(axis.reflected(end)), _complex(axis.reflected(start)), turn])
    return _pairs(here, there, near)


def _pairs(here, there, near):
    """For each place of one list its number in the other; None if one of them is missing."""
    here, there = np.atleast_2d(here), np.atleast_2d(there)
    far = abs(here[:, :, None] - there[:, None]).max(axis=0)
    if not (far < near).any(axis=1).all():
        return None
    return far.argmin(axis=1) if far.size else np.empty(0, dtype=int)


def _complex(points):
    return np.asarray(points, dtype=float).reshape(-1, 2) @ np.array([1.0, 1j])
