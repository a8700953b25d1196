"""Creep: what must make it grow, and by how much where it was worked out separately."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import creep_aci, creep_en
from crackkit.mechanics.cement_class import CEMENT_CLASSES
from crackkit.mechanics.creep import creep_coefficient
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.us_customary import INCH

CODES = ("ACI", "EN")
codes = st.sampled_from(CODES)
loadings = st.floats(1.0, 365.0)
slabs = st.builds(
    DryingSlab,
    strength=st.floats(20.0, 60.0),
    humidity=st.floats(40.0, 90.0),
    thickness=st.floats(75.0, 300.0),
    sides=st.sampled_from((1, 2)),
    curing_days=st.floats(1.0, 28.0),
    slump=st.floats(25.0, 200.0),
    cement_class=st.sampled_from(CEMENT_CLASSES),
)
AGES = np.geomspace(1.0, 20000.0, 60)


def changed(slab, **values):
    return DryingSlab(**{**vars(slab), **values})


@given(slab=slabs, loaded=loadings, code=codes)
def test_it_is_none_before_loading_and_grows_ever_after(slab, loaded, code):
    creep = creep_coefficient(AGES, loaded, slab, code)
    assert np.all(creep[loaded >= AGES] == 0.0)
    assert np.all(np.diff(creep[loaded < AGES]) > 0.0)


@given(slab=slabs, loaded=loadings, later=st.floats(1.01, 10.0), code=codes)
def test_older_concrete_creeps_less_in_as_many_days(slab, loaded, later, code):
    young = creep_coefficient(loaded + AGES, loaded, slab, code)
    old = creep_coefficient(later * loaded + AGES, later * loaded, slab, code)
    assert np.all(old <= young * (1 + 1e-12))  # equal ages differ by rounding
    # The rule knows no age below half a day, which slow cement has at one or two days.
    assert np.all(old < young) or slab.cement_class == "S"


@given(slab=slabs, loaded=loadings, damper=st.floats(1.0, 10.0), code=codes)
def test_damp_air_makes_less_of_it(slab, loaded, damper, code):
    dry = creep_coefficient(20000.0, loaded, slab, code)
    damp = changed(slab, humidity=slab.humidity + damper)
    assert creep_coefficient(20000.0, loaded, damp, code) < dry


@given(slab=slabs, loaded=loadings, code=codes)
def test_a_thick_slab_creeps_less_and_so_does_one_that_dries_from_one_face(slab, loaded, code):
    thin, thick = changed(slab, sides=2), changed(slab, sides=2, thickness=2 * slab.thickness)
    one_face = changed(slab, sides=1)
    creep = [creep_coefficient(AGES, loaded, each, code) for each in (thin, thick, one_face)]
    assert np.all(creep[1] <= creep[0])
    assert creep[2] == pytest.approx(creep[1], rel=1e-12)


@given(slab=slabs, loaded=loadings)
def test_strong_concrete_creeps_less_in_the_european_rule(slab, loaded):
    strong = changed(slab, strength=1.2 * slab.strength)
    weak_creep, strong_creep = (creep_coefficient(1e4, loaded, s, "EN") for s in (slab, strong))
    assert strong_creep < weak_creep


@given(loaded=st.floats(1.0, 365.0))
def test_rapid_cement_is_older_than_its_days_and_slow_cement_younger(loaded):
    slow, normal, rapid = (creep_en.aged_by_cement(loaded, c) for c in CEMENT_CLASSES)
    assert slow < normal < rapid
    assert normal == loaded


def test_slow_cement_is_at_least_half_a_day_old():
    assert creep_en.aged_by_cement(0.7, "S") == 0.5


def test_ages_and_loadings_make_a_table_whose_entries_are_what_each_is_alone():
    slab = DryingSlab(strength=30.0, humidity=60.0, thickness=150.0)
    for code in CODES:
        table = creep_coefficient(AGES[:, None], np.array([[7.0, 28.0]]), slab, code)
        assert table.shape == (60, 2)
        alone = creep_coefficient(AGES[40], 28.0, slab, code)
        assert table[40, 1] == pytest.approx(alone, rel=1e-12)


def test_pieces_put_together_by_hand_give_what_a_slab_gives():
    slab = DryingSlab(strength=30.0, humidity=60.0, thickness=6 * INCH, slump=4 * INCH)
    end = 2.35 * 1.25 * 14.0**-0.118 * (1.27 - 0.402)
    end *= 2 / 3 * (1 + 1.13 * np.exp(-0.54 * 6)) * (0.82 + 0.067 * 4)
    share = 100.0**0.6 / (10.0 + 100.0**0.6)
    assert creep_coefficient(114.0, 14.0, slab, "ACI") == pytest.approx(end * share, rel=1e-12)


def test_factors_of_the_american_report_are_nearly_one_under_standard_conditions():
    assert creep_aci.loading_factor_moist(7.0) == pytest.approx(1.0, abs=0.01)
    assert creep_aci.loading_factor_steam(3.0) == pytest.approx(1.0, abs=0.025)
    assert creep_aci.humidity_factor(40.0) == pytest.approx(1.0, abs=0.003)
    assert creep_aci.size_factor(1.5 * INCH) == pytest.approx(1.0, abs=0.003)
    assert creep_aci.mix_factor(2.7 * INCH) == pytest.approx(1.0, abs=0.003)


def test_table_and_line_of_thickness_meet_at_six_inches():
    at, above = 6 * INCH, 6 * INCH * (1 + 1e-9)
    for factor in (creep_aci.thickness_factor_first_year, creep_aci.thickness_factor_end):
        assert factor(at) == 1.0
        assert factor(above) == pytest.approx(1.0, abs=0.003)


def test_air_below_six_per_cent_does_not_make_it_less():
    assert creep_aci.air_factor(2.0) == 1.0
    assert creep_aci.air_factor(8.0) == pytest.approx(1.18)


def test_the_european_coefficient_is_referred_to_the_modulus_at_loading():
    """Creep strain is the same either way: phi/(1.05 Ecm) = phi'/Ecm(t0)."""
    phi = creep_en.to_modulus_at_loading(2.0, 25000.0, 30000.0)
    assert phi / 25000.0 == pytest.approx(2.0 / (1.05 * 30000.0), rel=1e-12)


@pytest.mark.parametrize(
    ("wrong", "told"),
    [
        (lambda slab: creep_coefficient(1.0, 1.0, slab, "MC2010"), "ACI or EN"),
        (lambda slab: creep_en.creep_en(9.0, 7.0, 38.0, 50.0, 300.0, "X"), "S, N or R"),
    ],
)
def test_what_is_not_known_is_refused(wrong, told):
    with pytest.raises(ValueError, match=told):
        wrong(DryingSlab(strength=30.0, humidity=60.0, thickness=150.0))
