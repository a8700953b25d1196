"""A rolling force against one solve per position."""

import numpy as np
import pytest

from crackkit.mechanics.beam import PointLoad, Support, solve
from crackkit.mechanics.moving_load import moments_for_positions, shears_for_positions

LENGTH, FORCE = 25000.0, 3e4
BEAMS = {
    "simple": ([0.0, 25000.0], "pp"),
    "simple with free ends": ([4000.0, 19000.0], "pp"),
    "four pins": ([0.0, 6000.0, 15000.0, 25000.0], "pppp"),
    "four pins and free ends": ([1000.0, 6000.0, 15000.0, 22000.0], "pppp"),
    "some fixed": ([1000.0, 6000.0, 15000.0, 22000.0], "fpfp"),
    "one fixed in the middle": ([9000.0], "f"),
}


@pytest.fixture(params=BEAMS.values(), ids=BEAMS.keys())
def beam(request):
    places, letters = request.param
    kinds = {"p": "pin", "f": "fixed"}
    supports = [Support(at, kinds[c]) for at, c in zip(places, letters, strict=True)]
    stiffness = 1e13 * np.linspace(1.0, 2.0, max(len(places) - 1, 1))
    return supports, stiffness


@pytest.fixture
def places(beam):
    """Stations and positions that meet each other, the supports and the ends."""
    at = [support.at for support in beam[0]]
    x = np.unique(np.concatenate([at, np.linspace(0.0, LENGTH, 101)]))
    return x, np.concatenate([at, x[7:9], np.linspace(0.0, LENGTH, 23)])


@pytest.mark.parametrize("side", ["left", "right"])
def test_all_positions_at_once_equal_one_solve_each(beam, places, side):
    supports, stiffness = beam
    x, positions = places
    singly = [solve(LENGTH, supports, [PointLoad(FORCE, a)], stiffness) for a in positions]
    M = moments_for_positions(LENGTH, supports, FORCE, positions, x, stiffness, side)
    V = shears_for_positions(LENGTH, supports, FORCE, positions, x, stiffness, side)
    one_by_one = np.array([state.moment(x, side) for state in singly])
    assert np.abs(M - one_by_one).max() < 1e-12 * FORCE * LENGTH
    one_by_one = np.array([state.shear(x, side) for state in singly])
    assert np.abs(V - one_by_one).max() < 1e-12 * FORCE


def test_moment_here_from_a_force_there_has_the_two_span_peak():
    """Two equal spans, largest span moment 13/64 P L under a middle force; table value."""
    L = 5000.0
    supports = [Support(0.0), Support(L), Support(2 * L)]
    x = np.array([L / 2, L])
    M = moments_for_positions(2 * L, supports, FORCE, [L / 2], x)
    assert M[0] / (FORCE * L) == pytest.approx([13 / 64, -3 / 32], rel=1e-12)


def test_largest_support_moment_of_two_spans_stands_at_its_known_place():
    """M = -P a (L2 - a2) / (4 L2) is largest at a = L / sqrt 3."""
    L = 6000.0
    supports = [Support(0.0), Support(L), Support(2 * L)]
    positions = np.linspace(0.0, L, 6001)
    M = moments_for_positions(2 * L, supports, 1.0, positions, [L])[:, 0]
    assert positions[np.argmin(M)] == pytest.approx(L / np.sqrt(3), abs=1.0)
    assert pytest.approx(-L / (6 * np.sqrt(3)), rel=1e-6) == M.min()


def test_position_off_the_beam_is_refused():
    with pytest.raises(ValueError, match="outside the beam"):
        moments_for_positions(1000.0, [Support(0.0), Support(1000.0)], 1.0, [1001.0], [0.0])
