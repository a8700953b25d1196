"""Numbers that are looked up read as those that are formatted."""

import re

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.drawing.tenths import FEW, MOST, tenths

PAIRS = (" ", ",")


def numbers(text: str) -> list[float]:
    return [float(part) for part in re.findall(r"-?\d+\.\d", text)]


@given(st.lists(st.floats(-50.0, MOST + 50.0), min_size=1, max_size=2 * FEW))
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


@pytest.mark.parametrize("odd", [-0.1, MOST + 0.1, 1e7])
def test_numbers_off_the_paper_are_written_too(odd):
    values = np.append(np.arange(3.0 * FEW), odd)
    assert numbers(tenths(values, (" ",)))[-1] == pytest.approx(odd)
