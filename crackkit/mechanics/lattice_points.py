"""Points strewn over a slab, and the bonds between neighbours.

Bonds are the sides of triangles as equal as chance allows: points of a turned lattice of equal
triangles are moved at random, then drawn towards the middles of their triangles. A plain lattice
would lead every crack along its own rows.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.mechanics.plane_lines import plane_lines
from crackkit.mechanics.plane_points import inside
from crackkit.mechanics.plane_size import MeshSize, size_field
from crackkit.mechanics.plane_triangles import plane_triangles
from crackkit.words import _

_ROW = 0.5 * np.sqrt(3.0)  # distance of rows of equal triangles, in sides
_STRAY = 0.45  # how far a point is moved at most, in sides
_CLEAR = 0.55  # least distance of a moved point from the rim, in sides
_FEWEST = 100
_NARROWEST = 0.05  # least width of what a bond stands for, in its length


@dataclass(frozen=True, eq=False)
class LatticePoints:
    """Points and what connects them.

    Parameters
    ----------
    points : numpy.ndarray
        x and y [mm], shape (n, 2).
    triangles : numpy.ndarray of int
        Three neighbours each [-], shape (m, 3).
    sides : dict
        For each side of the outline, by its name, the numbers of its points in order [-].
    loops : tuple of numpy.ndarray
        Numbers of the points round the body, and round each hole [-].
    """

    points: np.ndarray
    triangles: np.ndarray
    sides: dict
    loops: tuple

    @cached_property
    def _pairs(self):
        """Bonds (b, 2), and which bond each side of each triangle is (3 m,)."""
        t, n = self.triangles, len(self.points)
        pairs = np.sort(np.concatenate([t[:, [1, 2]], t[:, [2, 0]], t[:, [0, 1]]]), axis=1)
        keys, which = np.unique(pairs @ np.array([n, 1]), return_inverse=True)
        return np.stack(np.divmod(keys, n), axis=1), which.ravel()

    @property
    def bonds(self):
        """Two neighbours each [-], shape (b, 2), the lower number first."""
        return self._pairs[0]

    @cached_property
    def lengths(self):
        """Length of each bond [mm], shape (b,)."""
        return np.hypot(*self._chords.T)

    @cached_property
    def directions(self):
        """Unit vector along each bond, from its first point on [-], shape (b, 2)."""
        return self._chords / self.lengths[:, None]

    @property
    def _chords(self):
        return self.points[self.bonds[:, 1]] - self.points[self.bonds[:, 0]]

    @cached_property
    def widths(self):
        """Width of the concrete that each bond stands for [mm], shape (b,).

        The distance of the middles of the circles round the triangles beside it: half the length
        times the cotangents of the angles opposite. A twentieth of the length at least.
        """
        a, b, c = (self.points[self.triangles[:, k]] @ np.array([1.0, 1j]) for k in (0, 1, 2))
        corners = [(b - a).conjugate() * (c - a), (c - b).conjugate() * (a - b)]
        corners.append((a - c).conjugate() * (b - c))
        cotangents = np.concatenate([z.real / abs(z.imag) for z in corners])
        both = np.bincount(self._pairs[1], cotangents)
        return self.lengths * np.maximum(0.5 * both, _NARROWEST)

    @cached_property
    def facets(self):
        """Where a crack passes that breaks the bond: ends of a line [mm], shape (b, 2, 2).

        The middles of the triangles beside the bond; on the rim one of them and the middle of the
        bond. So the facets of bonds that meet in a triangle join.
        """
        which = self._pairs[1]
        middle = np.tile(self.points[self.triangles].mean(axis=1), (3, 1))
        order = np.argsort(which, kind="stable")
        first = np.searchsorted(which[order], np.arange(len(self.bonds)))
        last = np.searchsorted(which[order], np.arange(len(self.bonds)), side="right") - 1
        ends = np.stack([middle[order[first]], middle[order[last]]], axis=1)
        on_rim = first == last
        ends[on_rim, 1] = self.points[self.bonds[on_rim]].mean(axis=1)
        return ends


def lattice_points(outline, count=1500, seed=0):
    """Strew points over a body.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    count : int
        About how many points [-], at least 100.
    seed : int
        Which chance [-], 0 or more: the same seed strews the same points.

    Returns
    -------
    LatticePoints
        Points [mm] and their neighbours.

    Raises
    ------
    ValueError
        If too few points are asked for.
    """
    if count < _FEWEST:
        raise ValueError(_("A lattice needs a hundred points or more."))
    spacing = np.sqrt(outline.area / (_ROW * count))
    size = MeshSize(spacing, spacing, 1.3, spacing, 12)
    field = size_field(outline, size, np.empty((0, 2)), np.empty((0, 2)))
    pieces = list(outline.sides)
    lines = plane_lines(pieces, list(range(len(pieces))), field, size.per_turn)
    inner = _strewn(outline, spacing, np.random.default_rng(seed))
    inner = inner[_away(inner, lines, _CLEAR * spacing)]
    lines, points, triangles = plane_triangles(lines, inner[inside(inner, lines)], field)
    sides = {side.name: _walk(lines, [k]) for k, side in enumerate(pieces)}
    return LatticePoints(points, triangles, sides, _loops(outline, lines))


def _strewn(outline, spacing, chance):
    """Lattice of equal triangles over a box, turned and shifted, each point moved by chance."""
    low, high = outline.box
    reach = 0.5 * np.hypot(*(high - low)) + 2.0 * spacing
    n = int(reach / (_ROW * spacing)) + 1
    i, j = np.meshgrid(np.arange(-n, n + 1), np.arange(-n, n + 1))
    z = spacing * (i + 0.5 * (j % 2) + 1j * _ROW * j).ravel()
    z = (z + spacing * chance.uniform()) * np.exp(1j * chance.uniform(0.0, np.pi / 3.0))
    far, way = chance.uniform(size=(2, z.size))
    z = z + _STRAY * spacing * np.sqrt(far) * np.exp(2j * np.pi * way) + complex(*(low + high)) / 2
    points = np.stack([z.real, z.imag], axis=1)
    return points[((points > low) & (points < high)).all(axis=1)]


def _away(points, lines, distance):
    """Whether points are that far from the rim, looked at in its quarters."""
    from scipy.spatial import cKDTree

    ends = lines.points[lines.edges]
    middles = lines.middles[:, None]
    rim = np.concatenate([lines.points, lines.middles, (0.5 * (ends + middles)).reshape(-1, 2)])
    return cKDTree(rim).query(points)[0] > distance


def _walk(lines, owners):
    """Points along sides that follow each other, their ends counted in."""
    edges = lines.edges[np.isin(lines.owner, owners)]
    return np.append(edges[:, 0], edges[-1, 1])


def _loops(outline, lines):
    """Points round the body and round each hole, none of them twice."""
    ends = np.cumsum([len(loop) for loop in outline.loops])
    return tuple(
        _walk(lines, np.arange(end - len(loop), end))[:-1]
        for end, loop in zip(ends, outline.loops, strict=True)
    )
