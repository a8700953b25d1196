"""Slabs on springs that several tests share."""

from dataclasses import replace

import numpy as np

from crackkit.mechanics.plate_slab import Curvature, LoadPatch, PlateEdge, PlateSlab, even_curvature

HEAVY = 0.05
"""Weight that keeps a slab on all its springs [N/mm2]."""


def slab(**changes):
    """Give a slab of 4.5 m, 150 mm thick, on ground of medium stiffness."""
    usual = PlateSlab(4500.0, 4500.0, 150.0, 15e3, 0.05, 150 * 2.4e-5, 0.15)
    return replace(usual, **changes)


def square(x, y, force=40e3, side=200.0):
    """Give a square load."""
    return LoadPatch(x, y, side, side, force)


def random_case(rng):
    """Give any slab within the ranges of the lesson, its loads and its free curvature."""
    length, width = rng.uniform(2e3, 8e3, 2)
    t = rng.uniform(75.0, 300.0)
    edges = [PlateEdge(transfer=share) for share in rng.choice([0.0, 0.0, 0.5, 1.0], 4)]
    plate = PlateSlab(
        length, width, t, rng.uniform(8e3, 40e3), 10 ** rng.uniform(-2.0, np.log10(0.2)),
        2.4e-5 * t, rng.uniform(0.0, 0.25), *edges,
    )  # fmt: skip
    patches = tuple(_random_patch(rng, plate) for _load in range(rng.integers(0, 3)))
    difference = rng.uniform(-200e-6, 700e-6)
    free = even_curvature(difference, t)
    return plate, patches, replace(free, y=free.y * rng.uniform(0.5, 1.0))


def _random_patch(rng, plate):
    a, b = rng.uniform(40.0, 400.0, 2)
    x, y = rng.uniform(a / 2, plate.length - a / 2), rng.uniform(b / 2, plate.width - b / 2)
    return LoadPatch(x, y, a, b, rng.uniform(0.0, 60e3))


def mirrored(plate, patches):
    """Give the same slab seen in a mirror that turns x round."""
    turned = replace(plate, left=plate.right, right=plate.left)
    return turned, tuple(replace(patch, x=plate.length - patch.x) for patch in patches)


def turned(plate, patches, free):
    """Give the same slab with x and y changed for each other."""
    other = PlateSlab(
        plate.width, plate.length, plate.thickness, plate.modulus, plate.ground, plate.weight,
        plate.poisson, plate.near, plate.far, plate.left, plate.right,
    )  # fmt: skip
    loads = tuple(LoadPatch(p.y, p.x, p.width, p.length, p.force) for p in patches)
    return other, loads, Curvature(free.y, free.x)
