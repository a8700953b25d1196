"""Residual strengths of fibre concrete, and when fibres may stand in for bars."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.fibres import (
    INDICATIVE,
    residual_at,
    rigid_residual,
    service_residual,
    structural,
)

residuals = st.floats(0.0, 12.0)


@given(residuals, residuals)
def test_a_crack_that_has_not_opened_carries_the_service_stress(first, third):
    assert residual_at(first, third, 0.0) == service_residual(first)


@given(residuals, residuals)
def test_fully_open_it_carries_half_of_the_third_strength_less_a_fifth_of_the_first(first, third):
    expected = max(0.5 * third - 0.2 * first, 0.0)
    assert residual_at(first, third, 2.5) == pytest.approx(expected, abs=1e-12)


@given(residuals, residuals, st.floats(0.0, 2.5))
def test_fibres_never_push_a_crack_open(first, third, opening):
    assert residual_at(first, third, opening) >= 0.0


def test_the_rigid_model_lies_between_the_two_ends_of_the_linear_one():
    assert residual_at(4.0, 3.2, 2.5) < rigid_residual(3.2) < residual_at(4.0, 3.2, 0.0)


def test_an_array_of_openings_gives_what_each_gives():
    openings = np.linspace(0.0, 2.5, 6)
    apart = [residual_at(3.0, 1.0, float(w)) for w in openings]
    assert residual_at(3.0, 1.0, openings) == pytest.approx(apart)


@pytest.mark.parametrize("opening", [-0.1, 2.6, float("nan")])
def test_an_opening_that_was_not_tested_is_refused(opening):
    with pytest.raises(ValueError, match=r"0 to 2\.5 mm"):
        residual_at(3.0, 3.0, opening)


@pytest.mark.parametrize(
    ("first", "third", "limit", "expected"),
    [
        (2.0, 1.5, 4.0, True),
        (1.6, 1.5, 4.0, False),  # no more than 0.4 of the limit of proportionality
        (2.0, 1.0, 4.0, False),  # no more than half of the first is left
        (0.0, 0.0, 4.0, False),
    ],
)
def test_fibres_stand_in_for_bars_only_above_both_limits(first, third, limit, expected):
    assert structural(first, third, limit) is expected


def test_the_table_of_dosages_starts_without_fibres_and_says_that_the_rest_is_indicative():
    none, *others = INDICATIVE
    assert (none.dosage, none.residual_1, none.residual_3) == (0.0, 0.0, 0.0)
    assert all("indicative" in dose.label for dose in others)
    assert len({dose.key for dose in INDICATIVE}) == len(INDICATIVE)


def test_more_steel_fibres_carry_more_and_the_least_dose_does_not_replace_bars():
    steel = [dose for dose in INDICATIVE if dose.key.startswith("steel")]
    strengths = [dose.residual_1 for dose in sorted(steel, key=lambda dose: dose.dosage)]
    assert strengths == sorted(set(strengths))
    # f_L of ordinary concrete is about 4 MPa.
    assert not structural(steel[0].residual_1, steel[0].residual_3, 4.0)
