"""Lattices for tests: one of equal triangles, those of slabs, and a lattice seen in a mirror."""

from dataclasses import replace

import numpy as np

from crackkit.mechanics.lattice import LatticeConcrete
from crackkit.mechanics.lattice_points import LatticePoints
from crackkit.mechanics.plane_bodies import l_slab
from crackkit.mechanics.plane_supports import Hold

CONCRETE = LatticeConcrete(modulus=15e3, strength=2.9, energy=0.12, thickness=150.0)
L_SLAB = l_slab(6000.0, 6000.0, 3000.0, 3000.0)
ROLLERS = [Hold(side, "normal") for side in ("near", "right", "far", "left")]


def equal_triangles(spacing: float, along: int, across: int) -> LatticePoints:
    """Give a parallelogram of equal triangles, its short sides at 60 degrees."""
    i, j = np.meshgrid(np.arange(along + 1), np.arange(across + 1))
    points = spacing * np.stack([(i + 0.5 * j).ravel(), (0.75**0.5 * j).ravel()], axis=1)
    number = np.arange(points.shape[0]).reshape(i.shape)
    a, b, c, d = (
        n.ravel() for n in (number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1])
    )
    triangles = np.concatenate([np.stack([a, b, d], 1), np.stack([b, c, d], 1)])
    sides = {
        "near": number[0],
        "right": number[:, -1],
        "far": number[-1, ::-1],
        "left": number[::-1, 0],
    }
    loop = np.concatenate([side[:-1] for side in sides.values()])
    return LatticePoints(points, triangles, sides, (loop,))


def mirrored(lattice: LatticePoints, sides: dict) -> LatticePoints:
    """See a lattice in a mirror at 45 degrees: x and y change places, and so do `sides`."""
    seen = {sides[name]: nodes[::-1] for name, nodes in lattice.sides.items()}
    loops = tuple(loop[::-1] for loop in lattice.loops)
    return replace(lattice, points=lattice.points[:, ::-1], sides=seen, loops=loops)
