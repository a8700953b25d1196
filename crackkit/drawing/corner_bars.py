"""Bars as laid on the plan of a slab with inside corners: thin lines."""

import numpy as np

from crackkit.drawing.corner_plan import CornerPlan
from crackkit.drawing.shapes import Lines, Polyline

THIN = 1.6  # drawn width of a bar


def corner_bars(bars, plan: CornerPlan) -> list[Polyline]:
    """Draw bars at corners; those of a mat would hide what lies below.

    Parameters
    ----------
    bars : sequence of LaidBar, or of Laid before anything is known
    plan : CornerPlan
    """
    others = (plan([one.start, one.end]) for one in bars if one.kind != "mat")
    return [Polyline(points, "bar", THIN) for points in others]


def mat_lines(bars, plan: CornerPlan) -> list[Lines]:
    """Draw the bars of a mat, faint."""
    mat = [(one.start, one.end) for one in bars if one.kind == "mat"]
    return [Lines(plan(np.array(mat)), "grid")] if mat else []
