"""Numbers are on paper to a tenth, whether written as places or as steps from place to place."""

import re

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.drawing.tenths import FEW, steps, tenths

PAIRS = (" ", ",")
PLACES = st.floats(-500.0, 1500.0)


def numbers(text: str) -> list[float]:
    return [float(part) for part in re.findall(r"-?\d*\.?\d+", text)]


def walked(path: str) -> list[list[tuple[float, float]]]:
    """Go along a path of steps as a browser does: the places of each of its pieces."""
    pieces, here, start = [], (0.0, 0.0), (0.0, 0.0)
    assert path.startswith("M0 0m")
    for piece in path.removeprefix("M0 0m").split("m"):
        values, places = numbers(piece), []
        for k in range(0, len(values), 2):
            here = here[0] + values[k], here[1] + values[k + 1]
            places.append(here)
        start = places[0]
        pieces.append(places)
        if piece.endswith("z"):
            here = start
    return pieces


@given(st.lists(PLACES, min_size=1, max_size=2 * FEW))
def test_every_number_is_there_in_its_order_and_to_a_tenth(values):
    written = tenths(np.repeat(values, 2), PAIRS)
    assert numbers(written) == pytest.approx(np.repeat(values, 2), abs=0.05 + 1e-9)


@pytest.mark.parametrize("count", [2, FEW, FEW + 2, 8 * FEW])
def test_each_number_has_its_sign_before_it(count):
    written = tenths(np.arange(count) + 0.25, PAIRS)
    assert re.fullmatch(r"( \d+\.2,\d+\.2)+", written)
    assert numbers(written) == [k + 0.2 for k in range(count)]


def test_a_sign_that_comes_again_is_written_again():
    path = tenths(np.arange(40.0).reshape(10, 2, 2), ("M", " ", "L", " "))
    assert path.startswith("M0.0 1.0L2.0 3.0M4.0 5.0L6.0 7.0M") and path.count("L") == 10


@given(st.lists(st.tuples(*[PLACES] * 6), min_size=1, max_size=30), st.booleans())
def test_steps_lead_to_every_place_and_no_error_adds_up(rows, closed):
    pieces = np.array(rows).reshape(-1, 3, 2)
    path = steps(pieces, closed)
    assert np.array(walked(path)) == pytest.approx(pieces, abs=0.05 + 1e-6)
    assert path.count("z") == (len(rows) if closed else 0)


def test_steps_are_written_as_short_as_can_be():
    assert steps(np.array([[(1.0, 2.0), (4.0, 1.5), (4.0, 1.54)]])) == "M0 0m1 2 3-.5 0 0"
    square = np.array([[(0.0, 0.0), (1.0, 0.0), (1.0, 1.0)], [(5.0, -1.0), (6.0, 0.0), (5.0, 0.0)]])
    assert steps(square, closed=True) == "M0 0m0 0 1 0 0 1zm5-1 1 1-1 0z"


def test_no_pieces_are_no_steps():
    assert steps(np.empty((0, 2, 2))) == "M0 0"
