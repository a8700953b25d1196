"""The line along which a mesh is split: which way it faces, how much of it a node stands for.

The sides of the triangles along it are curves through three nodes, straight ones here. A stress on
such a side counts at its nodes as 1/6, 4/6 and 1/6 of its length (Simpson's rule), so that each
node has a law of its own and no stress leaps from node to node.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _


@dataclass(frozen=True, eq=False)
class CrackLine:
    """Nodes along a line, from its mouth to its tip.

    Parameters
    ----------
    first, second : numpy.ndarray
        Nodes on the left face and on the right face of one who walks from mouth to tip [-], shape
        (p,); a tip that is one node for both is left out.
    along : numpy.ndarray
        Distance from the mouth [mm], shape (p,).
    places : numpy.ndarray
        Where the nodes are [mm], shape (p, 2).
    length : numpy.ndarray
        Length of line that each node stands for [mm], shape (p,).
    way : numpy.ndarray
        Unit vector of one who walks along the line [-], shape (p, 2).
    ends : numpy.ndarray
        All places of the line, the tip with them [mm], shape (p or p + 1, 2).
    """

    first: np.ndarray
    second: np.ndarray
    along: np.ndarray
    places: np.ndarray
    length: np.ndarray
    way: np.ndarray
    ends: np.ndarray

    @property
    def across(self):
        """Unit vector from the second face to the first [-], shape (p, 2)."""
        return self.way[:, ::-1] * np.array([-1.0, 1.0])


def crack_line(points, faces):
    """Line from the faces along which a mesh is split.

    Parameters
    ----------
    points : numpy.ndarray
        Nodes of the mesh [mm], shape (n, 2).
    faces : CrackFaces
        Nodes of both faces, corners and middles by turns, and their distance from the mouth.

    Returns
    -------
    CrackLine
        Lengths in [mm].

    Raises
    ------
    ValueError
        If the nodes are not corner, middle, corner and so on.
    """
    first, second = np.asarray(faces.first), np.asarray(faces.second)
    along = np.asarray(faces.along, dtype=float)
    if len(first) < 3 or len(first) % 2 == 0:
        raise ValueError(_("A crack line goes from corner to corner, with a middle between them."))
    places = points[first]
    side = places[2::2] - places[:-2:2]
    length, way = np.zeros(len(first)), np.zeros((len(first), 2))
    size = np.hypot(*side.T)
    for k, share in enumerate((1 / 6, 4 / 6, 1 / 6)):
        at = slice(k, len(first) - 2 + k, 2)
        length[at] += share * size
        way[at] += share * side
    way /= np.hypot(*way.T)[:, None]
    torn = slice(0, len(first) - int(first[-1] == second[-1]))
    parts = (each[torn] for each in (first, second, along, places, length, way))
    return CrackLine(*parts, places)


def longest_side(law, modulus):
    """Side of a triangle along the line that is still fine enough for the concrete.

    A fifth of the characteristic length E G_F/f_t^2. On longer ones the crack leaps from node to
    node, and the load with it.

    Parameters
    ----------
    law : CohesiveLaw
        What holds the faces together.
    modulus : float
        Modulus E of the concrete, creep counted in [MPa].

    Returns
    -------
    float
        Length [mm].
    """
    return 0.2 * modulus * law.energy / law.tensile**2
