"""Shrinkage: what makes a slab shorten more or less, whichever code one asks."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import shrinkage_aci, shrinkage_en, shrinkage_mc2010
from crackkit.mechanics.cement_class import CEMENT_CLASSES, of_class
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.shrinkage import free_shrinkage
from crackkit.mechanics.shrinkage_strain import Shrinkage, days_dried
from crackkit.mechanics.us_customary import INCH

CODES = ("ACI", "EN", "MC2010")
TEN_YEARS = 3650.0
AGES = np.concatenate([[0.0], np.geomspace(0.5, 20000.0, 80)])
codes = st.sampled_from(CODES)
slabs = st.builds(
    DryingSlab,
    strength=st.floats(15.0, 60.0),
    humidity=st.floats(40.0, 85.0),
    thickness=st.floats(75.0, 400.0),
    sides=st.sampled_from((1, 2)),
    curing_days=st.floats(1.0, 60.0),
    slump=st.floats(0.0, 250.0),
    cement_class=st.sampled_from(CEMENT_CLASSES),
)


def changed(slab, **values):
    return DryingSlab(**{**vars(slab), **values})


def ends(code, *slabs):
    return [free_shrinkage(TEN_YEARS, slab, code) for slab in slabs]


@given(slab=slabs, code=codes)
def test_nothing_dries_under_the_curing_sheet_and_it_grows_ever_after(slab, code):
    it = free_shrinkage(AGES, slab, code)
    assert np.all(it.drying[slab.curing_days >= AGES] == 0.0)
    assert np.all(np.diff(it.drying[slab.curing_days < AGES]) > 0.0)
    assert np.all(np.diff(it.basic) >= 0.0)
    assert np.all(np.diff(it.total) >= 0.0)


@given(slab=slabs, code=codes)
def test_it_is_of_the_size_that_is_measured(slab, code):
    """Most concrete lies between 0.0001 and 0.0012; never is it a per cent."""
    assert 0.0 < free_shrinkage(1e6, slab, code).total < 1.6e-3


@given(slab=slabs, code=codes, damper=st.floats(1.0, 9.0))
def test_damp_air_makes_less_of_it(slab, code, damper):
    dry, damp = ends(code, slab, changed(slab, humidity=slab.humidity + damper))
    assert damp.drying < dry.drying
    assert damp.basic == dry.basic


@given(slab=slabs, code=codes, thicker=st.floats(1.02, 3.0))
def test_a_thick_slab_shortens_less(slab, code, thicker):
    thin, thick = ends(code, slab, changed(slab, thickness=thicker * slab.thickness))
    assert thick.total < thin.total


@given(slab=slabs, code=codes)
def test_drying_from_one_face_is_as_good_as_twice_the_thickness(slab, code):
    one, two = changed(slab, sides=1), changed(slab, sides=2)
    double = changed(two, thickness=2.0 * slab.thickness)
    one, two, double = ends(code, one, two, double)
    assert one.total == pytest.approx(double.total, rel=1e-12)
    assert one.total < two.total


@given(slab=slabs, code=codes, longer=st.floats(1.0, 300.0))
def test_longer_curing_never_raises_it_at_ten_years(slab, code, longer):
    short, long = ends(code, slab, changed(slab, curing_days=slab.curing_days + longer))
    assert long.drying <= short.drying


@given(slab=slabs, wetter=st.floats(1.0, 100.0))
def test_a_wetter_mix_shortens_more_in_the_american_report(slab, wetter):
    stiff, wet = ends("ACI", slab, changed(slab, slump=slab.slump + wetter))
    assert wet.total > stiff.total


@given(slab=slabs, code=st.sampled_from(("EN", "MC2010")))
def test_rapid_cement_dries_more_and_strong_concrete_less(slab, code):
    slow, normal, rapid = ends(code, *(changed(slab, cement_class=c) for c in CEMENT_CLASSES))
    assert slow.drying < normal.drying < rapid.drying
    weak, strong = ends(code, slab, changed(slab, strength=1.2 * slab.strength))
    assert strong.drying < weak.drying
    assert strong.basic > weak.basic


def test_the_american_report_knows_no_shrinkage_without_drying():
    assert np.all(free_shrinkage(AGES, DryingSlab(30.0, 50.0, 150.0), "ACI").basic == 0.0)


def test_the_three_codes_agree_on_the_order_of_size_only():
    total = [free_shrinkage(TEN_YEARS, DryingSlab(30.0, 50.0, 150.0), c).total for c in CODES]
    assert max(total) < 2.0 * min(total)
    assert max(total) > 1.05 * min(total)


def test_concrete_under_water_does_not_dry():
    wet = DryingSlab(30.0, 100.0, 150.0)
    assert free_shrinkage(TEN_YEARS, wet, "ACI").drying == pytest.approx(0.0, abs=1e-15)
    assert free_shrinkage(TEN_YEARS, wet, "EN").drying == 0.0
    assert free_shrinkage(TEN_YEARS, wet, "MC2010").drying < 0.0


def test_strong_concrete_swells_in_drier_air_than_weak_concrete():
    """fcm 90: 99 (35/90)^0.1 = 90.08 %."""
    assert shrinkage_mc2010.humidity_factor(90.0, 90.0) > 0.0
    assert shrinkage_mc2010.humidity_factor(90.2, 90.0) == -0.25
    assert shrinkage_mc2010.humidity_factor(90.2, 35.0) > 0.0


def test_factors_of_the_american_report_are_nearly_one_under_standard_conditions():
    assert shrinkage_aci.humidity_factor(40.0) == pytest.approx(1.0, abs=1e-12)
    assert shrinkage_aci.size_factor(1.5 * INCH) == pytest.approx(1.0, abs=0.003)
    assert shrinkage_aci.curing_factor(7.0) == 1.0
    assert shrinkage_aci.mix_factor(2.7 * INCH) == pytest.approx(1.0, abs=0.003)


def test_american_lines_meet_where_one_takes_over_from_the_other():
    eighty, fifty = np.array([80 - 1e-9, 80 + 1e-9]), np.array([50 - 1e-9, 50 + 1e-9])
    assert shrinkage_aci.humidity_factor(eighty) == pytest.approx([0.6, 0.6])
    assert shrinkage_aci.fines_factor(fifty) == pytest.approx([1.0, 1.0])
    for factor in (shrinkage_aci.thickness_factor_first_year, shrinkage_aci.thickness_factor_end):
        assert factor(6 * INCH * (1 + 1e-9)) == pytest.approx(factor(6 * INCH), abs=0.005)


def test_between_entries_of_a_table_it_runs_straight():
    assert shrinkage_aci.curing_factor(5.0) == pytest.approx(1.05)
    assert shrinkage_aci.curing_factor(200.0) == 0.75
    assert shrinkage_en.size_factor([50.0, 250.0, 400.0, 900.0]) == pytest.approx(
        [1.0, 0.80, 0.725, 0.70]
    )


def test_a_mix_as_it_is_written_in_america():
    """Slump 4 in. 1.054; fines 60 % 1.02; 600 lb/yd3 0.966; air 5 % 0.99."""
    mix = shrinkage_aci.mix_factor(101.6, fines=60.0, cement=600 * 0.5932764, air=5.0)
    assert mix == pytest.approx(1.054 * 1.02 * 0.966 * 0.99, abs=2e-4)


@given(age=st.floats(0.0, 1e4), end=st.floats(0.0, 1e-3))
def test_steam_slows_it_and_changes_no_end(age, end):
    moist, steam = shrinkage_aci.drying_moist(age, end), shrinkage_aci.drying_steam(age, end)
    assert steam <= moist
    assert shrinkage_aci.drying_steam(1e9, end) == pytest.approx(end, rel=1e-6)


def test_half_of_it_has_come_after_35_days_of_drying_or_55_after_steam():
    assert shrinkage_aci.drying_share_moist(35.0) == 0.5
    assert shrinkage_aci.drying_share_steam(55.0) == 0.5


def test_half_of_it_has_come_later_in_thick_members():
    """0.04 sqrt(300^3) = 207.8 days by EN; 0.035 300^2/3 = 1050 days by the Model Code."""
    assert shrinkage_en.drying_share(207.846, 300.0) == pytest.approx(0.5, rel=1e-5)
    assert shrinkage_mc2010.drying_share(1050.0, 300.0) == pytest.approx(0.5, rel=1e-12)


def test_weak_concrete_has_no_autogenous_shrinkage_rather_than_a_negative_one():
    assert shrinkage_en.autogenous(TEN_YEARS, 8.0) == 0.0


def test_parts_make_up_the_whole():
    it = Shrinkage(drying=3e-4, basic=5e-5)
    assert it.total == 3e-4 + 5e-5
    assert days_dried([3.0, 10.0], 7.0) == pytest.approx([0.0, 3.0])


def test_a_slab_knows_its_sizes():
    one, two = DryingSlab(30.0, 50.0, 150.0), DryingSlab(30.0, 50.0, 150.0, sides=2)
    assert (one.volume_surface, one.notional_size, one.mean_strength) == (150.0, 300.0, 38.0)
    assert (two.volume_surface, two.notional_size) == (75.0, 150.0)


@given(slab=slabs, code=codes)
def test_many_ages_are_what_each_is_alone(slab, code):
    all_ages = free_shrinkage(AGES, slab, code).total
    assert free_shrinkage(AGES[70], slab, code).total == pytest.approx(all_ages[70], rel=1e-12)


@pytest.mark.parametrize(
    "wrong",
    [
        {"strength": 0.0},
        {"thickness": -1.0},
        {"humidity": 101.0},
        {"humidity": -1.0},
        {"humidity": float("nan")},
        {"sides": 3},
        {"curing_days": 0.5},
        {"slump": -1.0},
        {"cement_class": "I"},
    ],
)
def test_a_slab_out_of_range_is_refused(wrong):
    values = {"strength": 30.0, "humidity": 50.0, "thickness": 150.0} | wrong
    with pytest.raises(ValueError, match=r"zero|runs from|face|a day|S, N or R"):
        DryingSlab(**values)


@pytest.mark.parametrize(
    ("wrong", "told"),
    [
        (lambda: free_shrinkage(1.0, DryingSlab(30.0, 50.0, 150.0), "BS"), "ACI, EN or MC2010"),
        (lambda: shrinkage_en.nominal_drying(30.0, 50.0, "X"), "S, N or R, not X"),
        (lambda: shrinkage_mc2010.basic(7.0, 38.0, "X"), "S, N or R, not X"),
        (lambda: of_class({"S": 1}, "N"), "S, N or R, not N"),
        (lambda: shrinkage_aci.curing_factor(0.0), "a day or more"),
    ],
)
def test_what_is_not_known_is_refused(wrong, told):
    with pytest.raises(ValueError, match=told):
        wrong()
