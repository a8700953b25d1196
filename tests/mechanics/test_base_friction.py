"""What slabs lie on: the table, and how the shear grows with the slip."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.checks import sources
from crackkit.mechanics.base_friction import BASES, base, base_shear, slab_weight


def test_two_sheets_hold_least_and_the_table_rises():
    coefficients = [each.coefficient for each in BASES]
    assert BASES[0].key == "two_sheets"
    assert coefficients == sorted(coefficients)


@pytest.mark.parametrize("each", BASES, ids=lambda each: each.key)
def test_every_base_can_be_asked_for_and_names_its_source(each):
    assert base(each.key) is each
    assert each.source in sources()
    assert each.label and each.where and each.note
    assert each.slip > 0


def test_an_unknown_base_is_refused():
    with pytest.raises(ValueError, match="jelly"):
        base("jelly")


def test_a_slab_of_six_inches_weighs_what_the_trade_says():
    """150 pcf, 75 psf: 3.59 kPa, worked by hand."""
    assert slab_weight(152.4, 2402.77) == pytest.approx(75 * 47.88e-6, rel=1e-4)


@given(st.floats(-5.0, 5.0), st.floats(0.0, 0.02), st.floats(0.0, 2.5), st.floats(0.05, 3.0))
def test_the_shear_never_passes_friction_and_meets_the_slip(slip, weight, mu, full):
    tau = base_shear(slip, weight, mu, full)
    assert abs(tau) <= mu * weight
    assert tau * slip >= 0
    if abs(slip) >= full:
        assert abs(tau) == pytest.approx(mu * weight)
    assert base_shear(-slip, weight, mu, full) == -tau


def test_half_the_slip_meets_half_the_shear():
    assert base_shear([0.25, 0.5, 9.0], 0.004, 1.5, 0.5) == pytest.approx([0.003, 0.006, 0.006])
