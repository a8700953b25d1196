"""Main bars of a slab lie no farther apart than the codes allow."""

import pytest

from crackkit.mechanics.crack_width import aci_bar_spacing_limit
from crackkit.mechanics.mat_spacing import widest_mat_spacing

INCH, KSI = 25.4, 6.894757


def test_a_thin_slab_is_ruled_by_its_depth():
    assert widest_mat_spacing("EN", 100.0, 500.0, 30.0) == 200.0
    assert widest_mat_spacing("ACI", 3 * INCH, 60 * KSI, 0.75 * INCH) == pytest.approx(9 * INCH)


def test_a_thick_slab_by_a_fixed_distance():
    assert widest_mat_spacing("EN", 300.0, 500.0, 30.0) == 250.0
    assert widest_mat_spacing("ACI", 24 * INCH, 20 * KSI, 0.0) == pytest.approx(18 * INCH)


def test_grade_60_bars_under_two_inches_of_cover_lie_ten_inches_apart_at_most():
    """ACI 318-19 Table 24.3.2: 15 in less 2.5 times 2 in, at 40 ksi in the bars."""
    found = widest_mat_spacing("ACI", 8 * INCH, 60 * KSI, 2 * INCH)
    assert found == pytest.approx(10 * INCH, rel=1e-4)
    assert found == pytest.approx(aci_bar_spacing_limit(40 * KSI, 2 * INCH), rel=1e-4)


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_more_depth_never_asks_for_closer_bars(code):
    found = [widest_mat_spacing(code, depth, 420.0, 38.0) for depth in (60, 100, 150, 200, 400)]
    assert found == sorted(found)
