"""Deflection over any supports, against the exact beam."""

import numpy as np
import pytest

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.deflection import (
    cantilever_deflection_from_curvature,
    deflection_from_curvature,
    deflection_over_supports,
)

EI, LENGTH = 2e13, 15000.0
BEAMS = {
    "three pins": ([0.0, 7000.0, 15000.0], "ppp"),
    "free ends and settlements": ([1500.0, 6000.0, 13000.0], "ppp"),
    "fixed ends": ([0.0, 15000.0], "ff"),
    "fixed, pin, fixed": ([0.0, 9000.0, 15000.0], "fpf"),
    "fixed in the middle": ([1000.0, 6000.0, 14000.0], "pfp"),
    "cantilever": ([2500.0], "f"),
}
KINDS = {"p": "pin", "f": "fixed"}


@pytest.fixture(params=BEAMS.values(), ids=BEAMS.keys())
def supports(request):
    places, letters = request.param
    sunk = [2.0, 5.0, -3.0]
    return [Support(at, KINDS[c], s) for at, c, s in zip(places, letters, sunk, strict=False)]


def test_point_loads_are_followed_exactly(supports):
    """Moments run straight between the nodes; jumps are two stations."""
    loads = [PointLoad(4e4, 0.0), PointLoad(7e4, 3000.0), PointLoad(9e4, 11000.0)]
    beam = solve(LENGTH, supports, loads, EI)
    x, M, _V, _q = beam.diagrams()
    w = deflection_over_supports(x, M / EI, supports)
    assert w == pytest.approx(beam.deflection(x), abs=1e-10)


def test_fine_stations_come_close_under_even_load(supports):
    """Chords under the parabola lose q h2 / 12 EI of curvature, so at most half of it times L2."""
    q = 20.0
    beam = solve(LENGTH, supports, [LineLoad(0.0, LENGTH, q)], EI)
    errors = []
    for count in (101, 201):
        x, M, _V, _q = beam.diagrams(count)
        w = deflection_over_supports(x, M / EI, supports)
        errors.append(np.abs(w - beam.deflection(x)).max())
        assert errors[-1] < q * (LENGTH / (count - 1)) ** 2 / (12 * EI) * LENGTH**2 / 2
    assert errors[1] < 0.3 * errors[0]


def test_no_curvature_ever_shows_a_beam_off_its_supports():
    x = np.linspace(0.0, LENGTH, 31)
    supports = [Support(500.0, settlement=2.0), Support(5000.0), Support(14000.0, "fixed", 1.0)]
    w = deflection_over_supports(x, 1e-6 * np.cos(x / 700.0), supports)
    assert w[np.isin(x, [500.0, 5000.0, 14000.0])] == pytest.approx([2.0, 0.0, 1.0], abs=1e-9)


def test_two_pins_and_one_fixed_are_the_simple_functions():
    x = np.linspace(0.0, LENGTH, 31)
    cases = np.sin(np.outer([1.0, 2.0], x / 900.0)) * 1e-6
    two = deflection_over_supports(x, cases, [Support(9000.0), Support(1000.0, settlement=4.0)])
    simple = deflection_from_curvature(x, cases, (1000.0, 9000.0), (4.0, 0.0))
    assert two == pytest.approx(simple, abs=1e-9)
    one = deflection_over_supports(x, cases, [Support(300.0, "fixed")])
    assert one == pytest.approx(cantilever_deflection_from_curvature(x, cases, 300.0), abs=1e-9)


def test_free_end_goes_on_with_the_slope_of_its_neighbour():
    x = np.linspace(0.0, 12000.0, 121)
    kappa = np.where((x > 2000.0) & (x < 10000.0), 1e-6, 0.0)
    w = deflection_over_supports(x, kappa, [Support(2000.0), Support(6000.0), Support(10000.0)])
    left = w[x < 1950.0]
    assert np.diff(left, 2) == pytest.approx(np.zeros(left.size - 2), abs=1e-12)
    assert w[19] + w[21] == pytest.approx(0.0, abs=2e-2)


def test_a_kink_alone_is_two_straight_pieces():
    """A simple beam with an opening of 0.01 at the bottom in the middle sags by 0.01 L / 4."""
    x = np.linspace(0.0, 4000.0, 5)
    w = deflection_over_supports(x, np.zeros(5), [Support(0.0), Support(4000.0)], [2000.0], [0.01])
    assert w == pytest.approx([0.0, 5.0, 10.0, 5.0, 0.0], abs=1e-12)


def test_a_kink_of_a_cantilever_drops_the_end_beyond_it():
    """It opens at the top: the angle is negative."""
    x = np.linspace(0.0, 4000.0, 5)
    for fixed_at, tip in (
        (0.0, [0.0, 0.0, 0.0, 10.0, 20.0]),
        (4000.0, [20.0, 10.0, 0.0, 0.0, 0.0]),
    ):
        held = [Support(fixed_at, "fixed")]
        w = deflection_over_supports(x, np.zeros(5), held, [2000.0], [-0.01])
        assert w == pytest.approx(tip, abs=1e-12)


@pytest.mark.parametrize(
    ("supports", "hinges", "complaint"),
    [
        ([Support(0.0)], [], "not held"),
        ([Support(0.0), Support(3.0)], [], "outside"),
        ([Support(0.0), Support(2.0)], [1.0], "one kink"),
    ],
)
def test_senseless_input_is_refused(supports, hinges, complaint):
    with pytest.raises(ValueError, match=complaint):
        deflection_over_supports([0.0, 1.0, 2.0], [0.0, 0.0, 0.0], supports, hinges)
