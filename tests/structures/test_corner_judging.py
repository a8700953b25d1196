"""What sums up a slab with inside corners is called what it is."""

import numpy as np
import pytest

from crackkit.structures.corner_slab import CornerSlab


def told(slab, key):
    return next(one for one in slab.solve().numbers if one.key == key)


def test_a_crack_that_ran_past_its_bars_is_told_where_it_is_widest():
    """Bars pin it at the corner; out at the edge it gapes more than twice as wide."""
    slab = CornerSlab(age=730.0, diagonals="16", diagonal_count=2, diagonal_off=25.0)
    crack, widest = slab.cornered.crack, told(slab, "widest")
    assert crack.runs and crack.along[np.argmax(crack.opening)] > 1000.0
    assert widest.value == pytest.approx(crack.opening.max())
    assert widest.value > 2.0 * crack.opening[0]
    assert "widest" in widest.label and "corner" not in widest.label
