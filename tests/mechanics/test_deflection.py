"""Deflection summed up from curvature."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.deflection import (
    cantilever_deflection_from_curvature,
    deflection_from_curvature,
)

EI, LENGTH = 2e13, 9000.0
POINTS = [PointLoad(4e4, 0.0), PointLoad(7e4, 3000.0), PointLoad(-2e4, 8500.0)]


def test_straight_curvature_pieces_are_summed_exactly():
    """Point loads make the curvature straight between few stations: no fine mesh is needed."""
    supports = [Support(1000.0, settlement=3.0), Support(7000.0, settlement=-1.0)]
    beam = solve(LENGTH, supports, POINTS, EI)
    x = beam.nodes
    w = deflection_from_curvature(x, beam.moment(x) / EI, (1000.0, 7000.0), (3.0, -1.0))
    assert w == pytest.approx(beam.deflection(x), abs=1e-12)


def test_supports_may_stand_between_stations():
    x = np.array([0.0, 2500.0, LENGTH])
    kappa = np.array([1e-6, -2e-6, 3e-6])
    fine = np.unique(np.concatenate([x, [1200.0, 8000.0], np.linspace(0.0, LENGTH, 50)]))
    coarse = deflection_from_curvature(x, kappa, (1200.0, 8000.0))
    finer = deflection_from_curvature(fine, np.interp(fine, x, kappa), (1200.0, 8000.0))
    assert coarse == pytest.approx(finer[np.isin(fine, x)], abs=1e-11)
    assert finer[np.isin(fine, [1200.0, 8000.0])] == pytest.approx([0.0, 0.0], abs=1e-11)


def test_two_stations_at_one_place_hold_a_jump():
    """Half a simple beam four times softer, under constant moment; area moments by hand."""
    L, k = 4000.0, 1e-6
    x = [0.0, L / 2, L / 2, L]
    w = deflection_from_curvature(x, [k, k, 4 * k, 4 * k], (0.0, L))
    left_slope = (k * (L / 2) * (3 * L / 4) + 4 * k * (L / 2) * (L / 4)) / L
    assert w[1] == pytest.approx(left_slope * L / 2 - k * L * L / 8, rel=1e-12)
    assert w[2] == w[1]


@pytest.mark.parametrize("fixed_at", [0.0, 9000.0, 2500.0])
def test_cantilever_follows_the_exact_beam(fixed_at):
    beam = solve(LENGTH, [Support(fixed_at, "fixed")], [LineLoad(0.0, LENGTH, 10.0), *POINTS], EI)
    x = np.unique(np.concatenate([beam.nodes, np.linspace(0.0, LENGTH, 2001)]))
    x = np.sort(np.concatenate([x, [fixed_at]]))
    kappa = beam.moment(x, "right") / EI
    kappa[np.flatnonzero(x == fixed_at)[0]] = beam.moment(fixed_at, "left") / EI
    w = cantilever_deflection_from_curvature(x, kappa, fixed_at)
    assert w == pytest.approx(beam.deflection(x), rel=1e-6, abs=1e-6)


def test_many_cases_are_summed_at_once():
    x = np.linspace(0.0, LENGTH, 31)
    cases = np.sin(np.outer([1.0, 2.0, 3.0], x / LENGTH)) * 1e-6
    together = deflection_from_curvature(x, cases, (500.0, 8000.0))
    singly = [deflection_from_curvature(x, case, (500.0, 8000.0)) for case in cases]
    assert together == pytest.approx(np.array(singly), abs=1e-12)


@given(
    st.lists(st.floats(-5e-6, 5e-6), min_size=4, max_size=9),
    st.floats(0.0, 0.3),
    st.floats(0.6, 1.0),
    st.floats(0.0, 1.0),
)
def test_agrees_with_adaptive_integration(kappa, first, second, part):
    """The dummy-load integral w = int m kappa of a simple span with free ends."""
    x = np.linspace(0.0, LENGTH, len(kappa))
    a, b = first * LENGTH, second * LENGTH
    number = int(part * (len(kappa) - 1))
    place = x[number]

    def weighted(s):
        at_b = (place - a) / (b - a)
        ramp = np.maximum
        unit = (1 - at_b) * ramp(s - a, 0) + at_b * ramp(s - b, 0) - ramp(s - place, 0)
        return unit * np.interp(s, x, kappa)

    cuts = sorted({*x, a, b})
    exact = sum(quad(weighted, p, q)[0] for p, q in zip(cuts, cuts[1:], strict=False))
    w = deflection_from_curvature(x, kappa, (a, b))
    assert w[number] == pytest.approx(exact, rel=1e-9, abs=1e-8)


@pytest.mark.parametrize(
    ("x", "kappa", "supports", "complaint"),
    [
        ([0.0, 1.0], [0.0], (0.0, 1.0), "one curvature"),
        ([1.0, 0.0], [0.0, 0.0], (0.0, 1.0), "left to right"),
        ([0.0, 1.0], [0.0, 0.0], (0.0, 0.0), "two places"),
        ([0.0, 1.0], [0.0, 0.0], (0.0, 1.5), "outside"),
    ],
)
def test_senseless_input_is_refused(x, kappa, supports, complaint):
    with pytest.raises(ValueError, match=complaint):
        deflection_from_curvature(x, kappa, supports)
