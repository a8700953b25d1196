"""Wind, concrete and air that keep evaporation at a given rate: back through the formula itself."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.evaporation import LIMIT, evaporation_rate
from crackkit.mechanics.evaporation_limits import (
    LITTLE_BLEEDING,
    concrete_temperature_at_rate,
    humidity_at_rate,
    wind_at_rate,
)

rates = st.floats(0.05, 5.0)
concretes, airs = st.floats(5.0, 40.0), st.floats(-5.0, 45.0)
humidities, winds = st.floats(0.0, 1.0), st.floats(0.0, 60.0)


@given(rates, concretes, airs, humidities)
def test_in_the_wind_that_is_told_water_leaves_at_the_rate(rate, concrete, air, humidity):
    wind = wind_at_rate(rate, concrete, air, humidity)
    if 0 <= wind < math.inf:
        assert evaporation_rate(concrete, air, humidity, wind) == pytest.approx(rate, rel=1e-6)
    elif wind < 0:
        assert evaporation_rate(concrete, air, humidity, 0.0) > rate
    else:
        assert evaporation_rate(concrete, air, humidity, 60.0) == 0.0


@given(rates, airs, humidities, winds)
def test_concrete_as_cool_as_is_told_gives_off_water_at_the_rate(rate, air, humidity, wind):
    concrete = concrete_temperature_at_rate(rate, air, humidity, wind)
    assert evaporation_rate(concrete, air, humidity, wind) == pytest.approx(rate, rel=1e-6)


@given(rates, concretes, airs, winds)
def test_air_as_moist_as_is_told_takes_water_at_the_rate(rate, concrete, air, wind):
    humidity = humidity_at_rate(rate, concrete, air, wind)
    if 0 <= humidity <= 1:
        assert evaporation_rate(concrete, air, humidity, wind) == pytest.approx(rate, rel=1e-6)
    elif humidity > 1:
        assert evaporation_rate(concrete, air, 1.0, wind) > rate
    else:
        assert evaporation_rate(concrete, air, 0.0, wind) < rate


def test_a_hot_day_worked_by_hand():
    """(30 + 18)^2.5 = 15 962.6, of which 0.6 stays: 1/(5e-6 x 9577.6) - 4 = 16.88 km/h."""
    assert wind_at_rate(LIMIT, 30.0, 30.0, 0.4) == pytest.approx(16.88, abs=5e-3)


def test_concrete_that_bleeds_little_is_at_risk_first():
    assert 0 < LITTLE_BLEEDING < LIMIT


@pytest.mark.parametrize("rate", [0.0, -1.0, math.nan])
def test_no_rate_is_no_question(rate):
    with pytest.raises(ValueError, match="above 0"):
        wind_at_rate(rate, 30.0, 30.0, 0.4)
    with pytest.raises(ValueError, match="above 0"):
        concrete_temperature_at_rate(rate, 30.0, 0.4, 10.0)
    with pytest.raises(ValueError, match="above 0"):
        humidity_at_rate(rate, 30.0, 30.0, 10.0)
