"""Strength and stiffness in time: what they are at 28 days, and that they grow."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.cement_class import CEMENT_CLASSES
from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.strength_in_time import (
    concrete_in_time,
    strength_share_en,
    strength_share_moist,
    strength_share_steam,
    tension_share_en,
)

AGES = np.geomspace(0.5, 20000.0, 80)
PROPERTIES = ("compressive", "tensile", "flexural", "modulus")
strengths = st.floats(15.0, 80.0)
classes = st.sampled_from(CEMENT_CLASSES)
codes = st.sampled_from(("ACI", "EN"))


@given(strength=strengths, cement_class=classes)
def test_at_28_days_it_is_the_given_concrete(strength, cement_class):
    given = concrete(strength, 200.0, "EN")
    aged = concrete_in_time(28.0, given, "EN", cement_class)
    told = [aged.compressive, aged.tensile, aged.flexural, aged.modulus]
    expected = [given.mean_strength, given.tensile, given.flexural, given.modulus]
    assert told == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize(
    ("share", "printed_to"), [(strength_share_moist, 0.01), (strength_share_steam, 0.02)]
)
@pytest.mark.parametrize("cement_type", ["I", "III"])
def test_the_american_constants_are_rounded_yet_give_28_days_back(share, printed_to, cement_type):
    assert share(28.0, cement_type) == pytest.approx(1.0, abs=printed_to)


@given(strength=strengths, code=codes, cement_class=classes)
def test_all_of_it_grows(strength, code, cement_class):
    aged = concrete_in_time(AGES, concrete(strength, 200.0, code), code, cement_class)
    for name in PROPERTIES:
        assert np.all(np.diff(getattr(aged, name)) > 0.0)


@given(code=codes, cement_class=classes, strength=strengths)
def test_stiffness_comes_before_strength(code, cement_class, strength):
    given = concrete(strength, 200.0, code)
    aged = concrete_in_time(AGES[AGES < 27.0], given, code, cement_class)
    assert np.all(aged.modulus / given.modulus > aged.compressive / given.mean_strength)


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_rapid_cement_is_stronger_in_the_first_weeks(code):
    given = concrete(30.0, 200.0, code)
    week = [concrete_in_time(7.0, given, code, each).compressive for each in CEMENT_CLASSES]
    assert week[0] <= week[1] < week[2]


def test_by_hand():
    """Type I at 7 days: 7/(4 + 5.95) = 0.7035. Class N at 7 days: exp(0.25 (1 - 2)) = 0.7788."""
    assert strength_share_moist(7.0) == pytest.approx(0.7035, rel=1e-4)
    assert strength_share_en(7.0) == pytest.approx(0.7788, rel=1e-4)
    assert tension_share_en(7.0) == strength_share_en(7.0)
    assert tension_share_en(112.0) == pytest.approx(np.exp(0.25 * 0.5 * 2 / 3), rel=1e-12)


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_fresh_concrete_can_do_nothing(code):
    aged = concrete_in_time(0.0, concrete(30.0, 200.0, code), code)
    assert [getattr(aged, name) for name in PROPERTIES] == [0.0] * 4


@pytest.mark.parametrize(
    ("wrong", "told"),
    [
        (lambda given: concrete_in_time(7.0, given, "BS"), "ACI or EN"),
        (lambda given: concrete_in_time(7.0, given, "EN", "I"), "S, N or R"),
        (lambda given: concrete_in_time(7.0, given, "ACI", "III"), "S, N or R"),
        (lambda given: strength_share_moist(7.0, "N"), "I or III"),
    ],
)
def test_what_is_not_known_is_refused(wrong, told):
    with pytest.raises(ValueError, match=told):
        wrong(concrete(30.0, 200.0, "EN"))
