"""Carbonation: values worked by hand, and what must slow it or speed it up."""

from math import inf

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.carbonation import carbonation_depth, water_cement_of, years_to_reach

mixes = st.floats(0.40, 0.60)
airs = st.floats(40.0, 95.0)
curing = st.floats(1.0, 28.0)
ages = st.floats(0.5, 200.0)
covers = st.floats(5.0, 80.0)
shares = st.floats(0.0, 1.0)
days = st.floats(0.0, 250.0)


def test_a_sheltered_face_like_the_test_itself():
    """Worked by hand: 6.8 x 315.576 = 2145.92; 1.25 x 2145.92 + 315.5 = 2997.90 (mm2/a)/(kg/m3);
    2 x 2997.90 x 0.00082 = 4.91655 mm2/a; its root 2.21733 mm; after 50 years 15.679 mm."""
    assert carbonation_depth(1.0, 0.50, 65.0, 7.0) == pytest.approx(2.21733, rel=2e-6)
    assert carbonation_depth(50.0, 0.50, 65.0, 7.0) == pytest.approx(15.679, rel=3e-5)


def test_a_poorly_cured_face_in_damp_air_and_some_rain():
    """Worked by hand: k_e 0.50448, k_c 1.61675, 2.36495 mm in the first year if sheltered;
    w = (0.1 x 100/365)^0.446/2 = 0.100505, W = (0.0767/30)^w = 0.54887."""
    dry = carbonation_depth(30.0, 0.55, 80.0, 3.0)
    wet = carbonation_depth(30.0, 0.55, 80.0, 3.0, rain_share=0.1, wet_days=100.0)
    assert dry == pytest.approx(2.36495 * 30**0.5, rel=1e-5)
    assert wet == pytest.approx(7.1097, rel=2e-5)


def test_between_two_mixes_the_resistance_runs_straight():
    squares = [carbonation_depth(20.0, mix, 65.0, 7.0) ** 2 for mix in (0.50, 0.525, 0.55)]
    assert squares[1] == pytest.approx(0.5 * (squares[0] + squares[2]), rel=1e-12)


@given(cover=covers, mix=mixes, air=airs, cured=curing, share=shares, wet=days)
def test_the_years_to_a_depth_give_that_depth_back(cover, mix, air, cured, share, wet):
    rain = {"rain_share": 0.5 * share, "wet_days": wet}
    years = years_to_reach(cover, mix, air, cured, **rain)
    if years < 1e300:
        assert carbonation_depth(years, mix, air, cured, **rain) == pytest.approx(cover, rel=1e-9)


@given(cover=covers, mix=mixes, air=airs, cured=curing)
def test_twice_the_cover_lasts_four_times_as_long_under_a_roof(cover, mix, air, cured):
    once, twice = (years_to_reach(c, mix, air, cured) for c in (cover, 2 * cover))
    assert twice == pytest.approx(4 * once, rel=1e-9)


@given(cover=covers, mix=mixes, air=airs, cured=curing, share=shares, wet=days)
def test_twice_the_cover_lasts_longer_still_in_the_rain(cover, mix, air, cured, share, wet):
    rain = {"rain_share": share, "wet_days": wet}
    once, twice = (years_to_reach(c, mix, air, cured, **rain) for c in (cover, 2 * cover))
    assert twice >= 4 * once * (1 - 1e-9)


@given(years=ages, mix=mixes, air=airs, cured=curing, more=st.floats(0.0, 5.0))
def test_damper_air_and_longer_curing_slow_it_and_more_water_in_the_mix_does_not(
    years, mix, air, cured, more
):
    depth = carbonation_depth(years, mix, air, cured)
    assert carbonation_depth(years, mix, air + more, cured) <= depth
    assert carbonation_depth(years, mix, air, cured + more) <= depth
    assert carbonation_depth(years, min(mix + more / 25, 0.6), air, cured) >= depth


@given(years=ages, mix=mixes, share=shares, less=shares, wet=days)
def test_a_face_that_rain_strikes_more_often_carbonates_less(years, mix, share, less, wet):
    def depth(rain_share):
        return carbonation_depth(years, mix, 75.0, 7.0, rain_share=rain_share, wet_days=wet)

    assert depth(share) <= depth(less * share) * (1 + 1e-12)


@given(years=ages, later=st.floats(1.0, 10.0), share=shares, wet=days)
def test_it_never_goes_back(years, later, share, wet):
    rain = {"rain_share": share, "wet_days": wet}
    before, after = carbonation_depth([years, later * years], 0.5, 75.0, 7.0, **rain)
    assert after >= before * (1 - 1e-12)


def test_it_never_gets_into_soaked_concrete():
    assert years_to_reach(20.0, 0.5, 100.0, 7.0) == inf
    assert carbonation_depth(100.0, 0.5, 100.0, 7.0) == 0.0


def test_a_face_that_is_rained_on_every_day_stays_as_it_was_at_four_weeks():
    always = {"rain_share": 1.0, "wet_days": 365.0}
    first = carbonation_depth(28 / 365, 0.5, 65.0, 7.0)
    assert carbonation_depth(80.0, 0.5, 65.0, 7.0, **always) == pytest.approx(first, rel=1e-12)
    assert years_to_reach(20.0, 0.5, 65.0, 7.0, **always) == inf
    assert years_to_reach(0.5 * first, 0.5, 65.0, 7.0, **always) == 0.0


def test_a_young_face_has_no_depth():
    assert carbonation_depth(0.0, 0.5, 65.0, 7.0) == 0.0
    assert years_to_reach(0.0, 0.5, 65.0, 7.0) == 0.0


def test_many_faces_are_what_each_is_alone():
    covers, mixes = np.array([15.0, 25.0, 40.0]), np.array([[0.40], [0.60]])
    years = years_to_reach(covers, mixes, 70.0, 3.0, rain_share=0.2, wet_days=[50.0, 90.0, 120.0])
    assert years.shape == (2, 3)
    alone = years_to_reach(25.0, 0.60, 70.0, 3.0, rain_share=0.2, wet_days=90.0)
    assert years[1, 1] == pytest.approx(alone, rel=1e-12)


@pytest.mark.parametrize(
    "wrong",
    [
        {"years": -1.0},
        {"water_cement": 0.39},
        {"water_cement": 0.61},
        {"humidity": 101.0},
        {"humidity": -1.0},
        {"curing_days": 0.5},
        {"rain_share": 1.1},
        {"wet_days": 366.0},
        {"years": float("nan")},
    ],
)
def test_what_is_out_of_range_is_refused(wrong):
    given = {"years": 10.0, "water_cement": 0.5, "humidity": 65.0, "curing_days": 7.0} | wrong
    with pytest.raises(ValueError, match=r"cannot|known for|runs from|a day|365"):
        carbonation_depth(**given)


def test_a_negative_cover_is_refused():
    with pytest.raises(ValueError, match="cannot be negative"):
        years_to_reach(-1.0, 0.5, 65.0, 7.0)


def test_a_strength_of_the_table_gives_the_mix_beside_it_as_far_as_carbonation_is_known():
    """The metric strengths are those of 6000 to 2000 psi, rounded; beyond 0.60 it is held."""
    assert water_cement_of(34.5) == pytest.approx(0.48, abs=1e-3)
    assert water_cement_of(27.6) == pytest.approx(0.57, abs=1e-3)
    assert water_cement_of(41.4) == pytest.approx(0.41, abs=1e-3)
    assert water_cement_of([13.8, 20.7, 60.0]) == pytest.approx([0.60, 0.60, 0.41], abs=1e-3)


@given(weak=st.floats(1.0, 100.0), more=st.floats(0.0, 50.0))
def test_stronger_concrete_never_hints_at_more_water(weak, more):
    assert 0.40 <= water_cement_of(weak + more) <= water_cement_of(weak) <= 0.60


def test_concrete_without_strength_is_refused():
    with pytest.raises(ValueError, match="above 0"):
        water_cement_of(0.0)
