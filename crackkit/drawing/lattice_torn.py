"""Bonds of a lattice that give way: thin and thick strokes, and gaps where they are broken."""

import numpy as np

from crackkit.drawing.shapes import Lines, Polygons

FIRST = 0.2  # of its stiffness: above it a softened bond is drawn thin, below it thick
SOFT, SOFTER = "hatch", "stretched_line"
ROLES = (SOFT, SOFTER, "crack")


def torn_shapes(run, frame, factor: float, plan) -> list:
    """Draw the bonds of one frame.

    Parameters
    ----------
    run : LatticeRun
    frame : LatticeFrame
    factor : float
        How many times larger movement is drawn.
    plan : CornerPlan
    """
    left = frame.softness
    groups = ((left < 1.0) & (left >= FIRST), (left < FIRST) & (left > 0.0), left == 0.0)
    sides = torn_sides(run, frame, factor)
    lines = [
        Lines(plan(sides[group].mean(axis=1)), role)
        for group, role in zip(groups, ROLES, strict=True)
        if group.any()
    ]
    return [*_gaps(plan(sides[groups[-1]])), *lines]


def torn_sides(run, frame, factor: float) -> np.ndarray:
    """Both faces along which each bond tears, moved with its points [mm], shape (b, 2, 2, 2)."""
    return run.facets[:, None] + factor * frame.movement[run.bonds][:, :, None]


def _gaps(sides: np.ndarray) -> list[Polygons]:
    """The gap between both faces of each broken bond."""
    if not len(sides):
        return []
    near, far = sides[:, 0], sides[:, 1, ::-1]
    return [Polygons(np.concatenate([near, far], axis=1), "crack_gap")]


def key_lines(left: float, y: float, role: str) -> Lines:
    """Draw a short sample of a stroke, for the key."""
    return Lines(np.array([[(left, y), (left + 26.0, y)]]), role)
