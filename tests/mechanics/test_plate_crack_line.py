"""The line along which a plate breaks."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.plate_crack_line import crack_line

X, Y = np.linspace(0.0, 4500.0, 61), np.linspace(0.0, 3000.0, 41)
THICK = 150.0


def even(angle):
    return np.full((Y.size, X.size), angle)


@given(st.floats(600.0, 3900.0), st.floats(600.0, 2400.0), st.sampled_from([0.0, np.pi / 2]))
def test_an_even_pull_breaks_it_straight_across(x, y, angle):
    line = crack_line(X, Y, even(angle), (x, y), THICK)
    fixed, free = (0, 1) if angle == 0.0 else (1, 0)
    assert line[:, fixed] == pytest.approx((x, y)[fixed], abs=1e-6)
    ends = (Y[0], Y[-1]) if free == 1 else (X[0], X[-1])
    assert sorted(line[[0, -1], free]) == pytest.approx(ends)


@given(st.floats(0.0, np.pi))
def test_the_line_ends_on_edges_and_goes_in_small_steps(angle):
    line = crack_line(X, Y, even(angle), (2200.0, 1400.0), THICK)
    for x, y in line[[0, -1]]:
        assert min(x, 4500.0 - x, y, 3000.0 - y) == pytest.approx(0.0, abs=1e-9)
    assert np.hypot(*np.diff(line, axis=0).T).max() <= THICK


def test_a_pull_out_of_the_corner_cuts_the_corner_off():
    """Where the tension points to the corner, circles around the corner are its cracks."""
    gx, gy = np.meshgrid(X, Y)
    direction = np.arctan2(gy, gx + 1e-9)
    line = crack_line(X, Y, direction, (700.0, 700.0), THICK)
    radius = np.hypot(*line.T)
    assert radius == pytest.approx(np.full(len(line), 700.0 * np.sqrt(2)), rel=0.01)
    assert sorted((line[0].min(), line[-1].min())) == pytest.approx([0.0, 0.0])


def test_a_mirrored_field_breaks_along_the_mirrored_line():
    gx, gy = np.meshgrid(X, Y)
    direction = 0.3 + 0.2 * np.sin(gx / 900.0) + 0.1 * gy / 3000.0
    line = crack_line(X, Y, direction, (2000.0, 1100.0), THICK)
    mirrored = crack_line(X, Y, np.pi - direction[:, ::-1], (2500.0, 1100.0), THICK)
    if np.hypot(*(mirrored[0] - [4500.0 - line[0, 0], line[0, 1]])) > 1.0:
        mirrored = mirrored[::-1]
    assert mirrored[:, 0] == pytest.approx(4500.0 - line[:, 0], abs=1e-6)
    assert mirrored[:, 1] == pytest.approx(line[:, 1], abs=1e-6)


def test_a_ring_round_a_wheel_closes():
    """Where the tension points away from a place inside, its cracks go round that place."""
    gx, gy = np.meshgrid(X, Y)
    direction = np.arctan2(gy - 1500.0, gx - 2200.0)
    line = crack_line(X, Y, direction, (2800.0, 1500.0), THICK)
    assert line[0] == pytest.approx(line[-1]) and len(line) > 40
    assert np.hypot(*(line - [2200.0, 1500.0]).T) == pytest.approx(
        np.full(len(line), 600.0), rel=0.02
    )


@pytest.mark.parametrize("turn", [-1.2, 1.2])
def test_a_line_that_winds_round_a_place_ends_on_itself(turn):
    """A pull at the same angle to all rays from a place would draw a crack out into a spiral."""
    gx, gy = np.meshgrid(X, Y)
    away = np.hypot(gx - 2200.0, gy - 1500.0)
    direction = np.arctan2(gy - 1500.0, gx - 2200.0) + turn * np.tanh((away - 700.0) / 900.0)
    line = crack_line(X, Y, direction, (3600.0, 1500.0), THICK)
    ends = [end for end in line[[0, -1]] if not on_an_edge(end)]
    assert len(ends) == 1  # the other half runs out to an edge
    (end,) = ends
    line = line if np.array_equal(line[-1], end) else line[::-1]
    assert (np.hypot(*(line[:-7] - end).T) == 0.0).any()
    gaps = np.hypot(*(line[:, None] - line).transpose(2, 0, 1))
    assert gaps[np.tril_indices(len(line) - 1, -7)].min() >= 60.0


def on_an_edge(place):
    (x, y) = place
    return min(x, 4500.0 - x, y, 3000.0 - y) < 1e-6


def test_an_angle_and_its_opposite_are_the_same_pull():
    line = crack_line(X, Y, even(0.4), (2000.0, 1500.0), THICK)
    turned = crack_line(X, Y, even(0.4 - np.pi), (2000.0, 1500.0), THICK)
    assert turned == pytest.approx(line, abs=1e-6)
