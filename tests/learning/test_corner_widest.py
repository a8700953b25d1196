"""The walk of the lesson on inside corners says where a crack is widest, and it is there."""

from dataclasses import replace

import numpy as np
import pytest

from crackkit.learning import corner
from crackkit.units import shown


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_crack_that_ran_past_two_bars_is_widest_beyond_them(system):
    slab = replace(corner.held_floor(system), age=corner.SECOND)
    crack = slab.cornered.crack
    beyond = slab.diagonal_off + slab.diagonal_apart + 100.0
    assert crack.along[np.argmax(crack.opening)] > beyond
    text = corner.walk(system)[-1].answer
    assert shown(crack.widest, "width", system) in text and "at its widest" in text


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_bare_crack_is_as_wide_at_the_corner_as_anywhere(system):
    crack = corner.found_floor(system).cornered.crack
    assert crack.opening[0] == pytest.approx(crack.widest, rel=0.01)
