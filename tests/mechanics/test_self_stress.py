"""Moments that a beam holds without load, against beams on sunk supports."""

import numpy as np
import pytest

from crackkit.mechanics.beam import Support, solve
from crackkit.mechanics.self_stress import seen_from_left, self_stress

LENGTH = 15000.0
BEAMS = {
    "two pins": ([1000.0, 15000.0], "pp", 0),
    "cantilever": ([3000.0], "f", 0),
    "propped": ([0.0, 12000.0], "fp", 1),
    "fixed ends": ([0.0, 15000.0], "ff", 2),
    "four pins, free ends": ([1000.0, 4000.0, 9000.0, 13000.0], "pppp", 2),
    "fixed in the middle": ([1000.0, 4000.0, 13000.0], "pfp", 2),
    "fixed beside a free end": ([1000.0, 4000.0, 13000.0], "fpf", 3),
}


@pytest.fixture(params=BEAMS.values(), ids=BEAMS.keys())
def beam(request):
    places, letters, open_moments = request.param
    kinds = {"p": "pin", "f": "fixed"}
    sunk = [1.0, 6.0, -2.0, 3.0]
    rows = zip(places, letters, sunk, strict=False)
    return [Support(at, kinds[c], s) for at, c, s in rows], open_moments


def test_as_many_patterns_as_statics_leaves_moments_open(beam):
    supports, open_moments = beam
    assert self_stress(supports).left_ends.shape[0] == open_moments


def test_moments_of_settlement_are_made_of_the_patterns(beam):
    """And the curvature they come with is what the settlements ask for."""
    supports, open_moments = beam
    state = solve(LENGTH, supports, [], 1e13)
    x, M, _V, _q = state.diagrams(31)
    patterns = self_stress(supports)
    m = patterns.values(x, seen_from_left(x, patterns))
    shares = np.linalg.lstsq(m.T, M, rcond=None)[0]
    assert shares @ m == pytest.approx(M, abs=1e-9 * max(np.abs(M).max(), 1.0))
    h = np.diff(x)
    products = (m[:, :-1] * (2 * M[:-1] + M[1:]) + m[:, 1:] * (M[:-1] + 2 * M[1:])) @ h / 6
    assert products / 1e13 == pytest.approx(patterns.turned_by_settlement, abs=1e-12)
    assert shares.size == open_moments


def test_patterns_end_where_the_free_ends_begin(beam):
    supports, _open = beam
    patterns = self_stress(supports)
    x = np.array([0.0, 500.0, LENGTH - 1.0])
    outside = (x < supports[0].at) | (x > supports[-1].at)
    values = patterns.values(x, np.zeros(3, dtype=bool))
    assert not values[:, outside].any()


def test_supports_must_be_stations():
    patterns = self_stress([Support(0.0), Support(2.0, "fixed"), Support(4.0)])
    with pytest.raises(ValueError, match="must be a station"):
        seen_from_left(np.array([0.0, 1.0, 4.0]), patterns)
    with pytest.raises(ValueError, match="two stations"):
        seen_from_left(np.array([0.0, 2.0, 4.0]), patterns)
