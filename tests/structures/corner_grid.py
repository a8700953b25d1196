"""How much of a plan the points of its grid cover."""

import numpy as np

from crackkit.structures.corner_shapes import form, outline


def covered(slab, field):
    """Area for which the points of the grid in concrete stand, and how far it may be wrong.

    Along what is cut out of the rectangle a point is right or wrong by half of a step.
    """
    steps = [np.gradient(lines) for lines in (field.x, field.y)]
    for each in steps:
        each[[0, -1]] /= 2.0
    found = steps[1] @ (~np.isnan(field.share)) @ steps[0]
    ends = ((0.0, slab.length), (0.0, slab.width))
    cut = sum(
        side.length
        for side in outline(form(slab)).sides
        if not any(side.start[k] == side.end[k] and side.end[k] in ends[k] for k in (0, 1))
    )
    return found, 0.5 * max(field.x[1], field.y[1]) * cut
