"""What of lines and outlines lies within a frame."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.corner_clip import clipped_lines, clipped_outline
from crackkit.drawing.frames import Frame

FRAME = Frame(10.0, 20.0, 60.0, 40.0)
PLACES = st.floats(-50.0, 120.0)


def held(points) -> np.ndarray:
    """Which points lie in the frame."""
    low, high = (FRAME.left, FRAME.top), (FRAME.right, FRAME.bottom)
    return np.all((points >= np.array(low) - 1e-9) & (points <= np.array(high) + 1e-9), axis=-1)


@settings(max_examples=200, deadline=None)
@given(PLACES, PLACES, PLACES, PLACES)
def test_of_a_line_just_what_lies_in_the_frame_is_left(a, b, c, d):
    whole = np.array([(a, b), (c, d)])
    found, kept = clipped_lines(whole[None], FRAME)
    share = np.linspace(0.0, 1.0, 2001)[:, None]
    inside = held(whole[0] + share * (whole[1] - whole[0])).mean()
    left = np.hypot(*(found[0, 1] - found[0, 0])) if len(found) else 0.0
    assert held(found).all() and kept.tolist() == [0] * len(found)
    assert left == pytest.approx(inside * np.hypot(*(whole[1] - whole[0])), abs=0.3)


def area(points) -> float:
    x, y = np.asarray(points, dtype=float).reshape(-1, 2).T
    return abs(float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))) / 2


@settings(max_examples=100, deadline=None)
@given(PLACES, PLACES, st.floats(1.0, 150.0), st.floats(1.0, 150.0))
def test_of_an_upright_outline_just_what_lies_in_the_frame_is_left(x, y, wide, tall):
    outline = np.array([(x, y), (x + wide, y), (x + wide, y + tall), (x, y + tall)])
    found = clipped_outline(outline, FRAME)
    across = max(min(x + wide, FRAME.right) - max(x, FRAME.left), 0.0)
    down = max(min(y + tall, FRAME.bottom) - max(y, FRAME.top), 0.0)
    assert held(found).all()
    assert area(found) == pytest.approx(across * down, abs=1e-6)


def test_a_corner_that_looks_into_the_frame_is_kept():
    outline = np.array(
        [(0.0, 0.0), (100.0, 0.0), (100.0, 40.0), (40.0, 40.0), (40.0, 100.0), (0.0, 100.0)]
    )
    assert area(clipped_outline(outline, FRAME)) == pytest.approx(60 * 40 - 30 * 20)
