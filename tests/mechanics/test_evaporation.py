"""Evaporation from fresh concrete: worked by hand, and what must speed it up."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.evaporation import LIMIT, evaporation_rate, plastic_cracks_threaten

temperatures, airs, winds = st.floats(0.0, 45.0), st.floats(0.0, 1.0), st.floats(0.0, 60.0)


def test_a_warm_windy_day():
    """Worked by hand: (48^2.5 - 0.4 x 48^2.5) = 0.6 x 15 962.6; x 24 x 5e-6 = 1.1493."""
    rate = evaporation_rate(30.0, 30.0, 0.4, 20.0)
    assert rate == pytest.approx(1.1493, abs=5e-5)
    assert plastic_cracks_threaten(rate)
    assert not plastic_cracks_threaten(evaporation_rate(20.0, 20.0, 0.5, 10.0))


@given(temperatures, temperatures, airs, winds, st.floats(0.0, 10.0))
def test_wind_warm_concrete_and_dry_air_speed_it_up(concrete, air, humidity, wind, more):
    rate = evaporation_rate(concrete, air, humidity, wind)
    assert rate >= 0
    assert evaporation_rate(concrete, air, humidity, wind + more) >= rate
    assert evaporation_rate(concrete + more, air, humidity, wind) >= rate
    assert evaporation_rate(concrete, air, humidity / (1 + more), wind) >= rate


def test_nothing_leaves_cold_concrete_in_warm_damp_air():
    assert evaporation_rate(10.0, 25.0, 0.95, 20.0) == 0.0


def test_many_days_at_once():
    rates = evaporation_rate([20.0, 30.0], 25.0, 0.5, [10.0, 30.0])
    assert rates[1] == pytest.approx(evaporation_rate(30.0, 25.0, 0.5, 30.0))
    assert plastic_cracks_threaten(rates).tolist() == [False, True]
    assert LIMIT == 1.0


@pytest.mark.parametrize(
    "wrong", [(-20.0, 20.0, 0.5, 5.0), (20.0, 20.0, 50.0, 5.0), (20, 20, 0.5, -1)]
)
def test_what_is_out_of_range_is_refused(wrong):
    with pytest.raises(ValueError, match=r"known above|runs from"):
        evaporation_rate(*wrong)
