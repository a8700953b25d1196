"""Many load cases at once against one solve each."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.load_cases import moments_for_cases, moments_for_cases_and_positions
from crackkit.mechanics.moving_load import moments_for_positions

LENGTH = 20000.0
SUPPORTS = [Support(1000.0), Support(6000.0, "fixed"), Support(13000.0), Support(18000.0)]
X = np.unique(np.concatenate([[1000.0, 6000.0, 13000.0, 18000.0], np.linspace(0.0, LENGTH, 97)]))


@st.composite
def line_load(draw):
    ends = draw(st.lists(st.integers(0, 40), min_size=2, max_size=2, unique=True).map(sorted))
    intensity = st.floats(-20.0, 60.0)
    return LineLoad(500.0 * ends[0], 500.0 * ends[1], draw(intensity), draw(intensity))


point_load = st.builds(PointLoad, st.floats(-5e4, 2e5), st.floats(0.0, LENGTH))
load = st.one_of(line_load(), point_load)
cases_of_loads = st.lists(st.one_of(load, st.lists(load, max_size=3)), max_size=4)


@given(cases_of_loads, st.sampled_from(["left", "right"]))
def test_every_case_is_the_beam_under_its_loads(cases, side):
    stiffness = [2e13, 1e13, 3e13]
    M = moments_for_cases(LENGTH, SUPPORTS, cases, X, stiffness, side)
    assert M.shape == (len(cases), X.size)
    for found, case in zip(M, cases, strict=True):
        loads = case if isinstance(case, list) else [case]
        expected = solve(LENGTH, SUPPORTS, loads, stiffness).moment(X, side)
        assert found == pytest.approx(expected, abs=1e-10 * (1e9 + np.abs(expected).max()))


def test_positions_of_a_force_come_along_with_the_cases():
    cases, positions = [LineLoad(2000.0, 9000.0, 5.0, 9.0), PointLoad(3e4, 7000.0)], [500.0, 8000.0]
    M, unit = moments_for_cases_and_positions(LENGTH, SUPPORTS, cases, positions, X)
    assert (unit == moments_for_positions(LENGTH, SUPPORTS, 1.0, positions, X)).all()
    alone = moments_for_cases(LENGTH, SUPPORTS, cases, X)
    assert pytest.approx(alone, abs=1e-9 * np.abs(alone).max()) == M


def test_load_off_the_beam_is_refused():
    with pytest.raises(ValueError, match="outside"):
        moments_for_cases(LENGTH, SUPPORTS, [PointLoad(1.0, LENGTH + 1.0)], X)
