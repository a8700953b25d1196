"""What must hold for a slab that is just placed."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.evaporation import LIMIT
from crackkit.mechanics.evaporation_limits import LITTLE_BLEEDING
from crackkit.sandbox.working import working
from crackkit.structures.fields import InputError, fitted, inputs
from crackkit.structures.fresh_slab import FreshSlab
from crackkit.structures.outcome import BE_READY, DRIES_OUT, STAYS_WET
from crackkit.units import SYSTEMS, inner, number, parse
from tests.structures.fresh_slabs import fresh_slabs

HOT = FreshSlab(concrete=30.0, air=30.0, humidity=0.4, wind=20.0)
MILD = FreshSlab(concrete=20.0, air=20.0, humidity=0.5, wind=10.0)
DEW = FreshSlab(concrete=15.0, air=30.0, humidity=1.0, wind=10.0)


def rate(slab: FreshSlab) -> float:
    return slab.solve().fresh.rate


def keys(slab: FreshSlab) -> list[str]:
    return [caution.key for caution in slab.solve().cautions]


def told(slab: FreshSlab) -> dict:
    return {one.key: one.value for one in slab.solve().numbers}


@pytest.mark.parametrize(
    ("slab", "expected"),
    [
        (MILD, 0.312),
        (FreshSlab(concrete=25.0, air=25.0, humidity=0.5, wind=20.0), 0.727),
        (HOT, 1.149),
        (FreshSlab(concrete=30.0, air=25.0, humidity=0.5, wind=30.0), 1.683),
    ],
    ids=["20-20-50-10", "25-25-50-20", "30-30-40-20", "30-25-50-30"],
)
def test_rates_are_those_of_the_formula_of_uno_1998_worked_by_hand(slab, expected):
    assert rate(slab) == pytest.approx(expected, abs=5e-4)


@settings(max_examples=80)
@given(fresh_slabs(), st.floats(0.0, 20.0))
def test_more_wind_never_takes_less_water(slab, more):
    assert rate(replace(slab, wind=min(slab.wind + more, 60.0))) >= rate(slab)


@settings(max_examples=80)
@given(fresh_slabs(), st.floats(0.0, 0.5))
def test_moister_air_never_takes_more_water(slab, more):
    assert rate(replace(slab, humidity=min(slab.humidity + more, 1.0))) <= rate(slab)


@settings(max_examples=80)
@given(fresh_slabs(), st.floats(0.0, 20.0))
def test_cooler_concrete_never_gives_off_more_water(slab, less):
    assert rate(replace(slab, concrete=max(slab.concrete - less, 5.0))) <= rate(slab)


@settings(max_examples=80)
@given(fresh_slabs(), st.floats(0.0, 20.0))
def test_warmer_air_of_the_same_humidity_never_takes_more(slab, more):
    """It holds more water already; what dries concrete on hot days is its own warmth."""
    assert rate(replace(slab, air=min(slab.air + more, 45.0))) <= rate(slab)


@settings(max_examples=80)
@given(fresh_slabs())
def test_any_slab_has_an_answer(slab):
    outcome = slab.solve()
    water = outcome.fresh.rate
    expected = DRIES_OUT if water >= LIMIT else BE_READY if water >= LITTLE_BLEEDING else STAYS_WET
    assert outcome.verdict.key == expected
    assert outcome.verdict.width is None and outcome.verdict.why
    assert len(outcome.numbers) == 6 and outcome.working
    assert outcome.cracks == () and outcome.widest is None
    assert ("plastic" in keys(slab)) == (expected != STAYS_WET)
    assert keys(slab)[-1] == "estimate"


@settings(max_examples=80)
@given(fresh_slabs())
def test_each_cause_alone_reaches_the_limit_where_it_is_told_to(slab):
    numbers = told(slab)
    causes = {
        "wind": ("never", "even still air"),
        "humidity": ("never", "even in fog"),
        "concrete": (),
    }
    ranges = {item.path: (item.low, item.high) for item in inputs(slab)}
    for name, words in causes.items():
        value, (low, high) = numbers[name], ranges[name]
        if isinstance(value, str):
            assert value in words
        elif low <= value <= high:
            assert rate(replace(slab, **{name: value})) == pytest.approx(LIMIT, rel=1e-6)


def test_where_nothing_helps_or_nothing_harms_it_is_said_in_words():
    worst = FreshSlab(concrete=40.0, air=-5.0, humidity=0.1, wind=60.0)
    assert told(worst)["humidity"] == "even in fog"
    assert rate(replace(worst, humidity=1.0)) > LIMIT
    assert told(DEW)["wind"] == told(DEW)["humidity"] == "never"
    still = FreshSlab(concrete=40.0, air=-5.0, humidity=0.1, wind=0.0)
    assert told(still)["wind"] != "even still air" and rate(still) < LIMIT


def test_dew_is_not_called_drying():
    outcome = DEW.solve()
    assert outcome.fresh.rate == 0.0
    assert outcome.verdict.key == STAYS_WET and "dew" in outcome.verdict.why


def test_the_caution_for_plastic_shrinkage_is_grave_only_where_it_dries_out():
    grave = {c.key: c.grave for c in HOT.solve().cautions}
    assert grave["plastic"] and not grave["help"] and not grave["estimate"]
    ready = FreshSlab(concrete=25.0, air=25.0, humidity=0.5, wind=20.0).solve()
    assert ready.verdict.key == BE_READY
    assert not any(c.grave for c in ready.cautions)
    assert keys(MILD) == ["estimate"]


def test_trade_rules_are_marked_as_common_practice():
    texts = {c.key: c.text for s in (HOT, *COLD_AND_HOT) for c in s.solve().cautions}
    assert {"help", "hot", "cold", "warmer"} <= set(texts)
    for key in ("help", "hot", "cold"):
        assert "common practice" in texts[key]


COLD_AND_HOT = (
    FreshSlab(concrete=38.0, air=38.0, humidity=0.2),
    FreshSlab(concrete=20.0, air=0.0, humidity=0.4, wind=30.0),
)


def test_concrete_warmer_than_cold_air_dries_out_without_any_heat():
    """Worked by hand: 38^2.5 = 8901.4 less 0.4 x 1374.6; x 34 x 5e-6 = 1.42."""
    cold = COLD_AND_HOT[1]
    assert rate(cold) == pytest.approx(1.42, abs=5e-3)
    assert cold.solve().verdict.key == DRIES_OUT
    assert "warmer" in keys(cold) and "warmer" not in keys(HOT)


def test_each_button_helps_and_then_has_nothing_left_to_do():
    slab = replace(HOT, air=20.0)
    for count in slab.counts:
        assert count.changes
        assert rate(fitted(slab, count.changes)[0]) < rate(slab)
    done = FreshSlab(wind=0.0, humidity=1.0, air=20.0, concrete=20.0)
    assert [count.changes for count in done.counts] == [{}, {}, {}]
    freezing = FreshSlab(air=-5.0, concrete=20.0)
    assert fitted(freezing, freezing.counts[2].changes)[0].concrete == 5.0


@settings(max_examples=40)
@given(fresh_slabs(), st.sampled_from(SYSTEMS))
def test_the_answer_is_the_same_in_whatever_units_it_is_typed(slab, system):
    typed = {}
    for item in inputs(slab):
        shown = number(item.value, item.declared.quantity, system)
        typed[item.path] = inner(shown, item.declared.quantity, system, item.low, item.high)
    again = replace(slab, **typed)
    assert rate(again) == pytest.approx(rate(slab), rel=1e-9, abs=1e-9)


def test_a_day_typed_in_fahrenheit_and_miles_is_the_same_day():
    us = FreshSlab(
        concrete=parse("86 °F", "warmth"),
        air=parse("86 F", "warmth"),
        humidity=parse("40 %", "ratio"),
        wind=parse("12.4274 mph", "wind"),
    )
    assert rate(us) == pytest.approx(rate(HOT), rel=1e-5)


def test_the_working_can_be_followed_by_hand():
    """48^2.5 = 15 962.6; 0.6 of it x 24 x 5e-6 = 1.1493; 1/(5e-6 x 9577.6) - 4 = 16.88 km/h."""
    rows = {row.symbol: row for row in working(HOT.solve(), "SI")}
    assert rows["A"].value == "15962.6" and rows["B"].value == "6385.0"
    assert rows["E"].value == "1.149\u202fkg/m²/h"
    assert rows["V"].value == "16.88\u202fkm/h"
    assert rows["E_lim"].clause == "ACI 305R, from memory"
    assert "= 86.00" not in rows["T_c"].value
    us = {row.symbol: row for row in working(HOT.solve(), "US")}
    assert us["T_c"].value == "28.47\u202f°C = 83.24\u202f°F"


@settings(max_examples=40)
@given(fresh_slabs())
def test_the_working_ends_in_the_numbers_that_are_told(slab):
    state = slab.solve().fresh
    steps = {step.symbol: step.value for step in slab.solve().working}
    assert steps["E"] == state.rate and steps["n"] == state.times
    assert steps["T_c"] == state.concrete and steps["r"] == state.humidity
    assert steps.get("V", state.wind) == state.wind


@pytest.mark.parametrize(
    "wrong", [{"wind": -1.0}, {"wind": 61.0}, {"humidity": 1.2}, {"air": 60.0}, {"concrete": 0.0}]
)
def test_what_is_out_of_range_is_refused_by_name(wrong):
    with pytest.raises(InputError) as caught:
        FreshSlab(**wrong)
    assert caught.value.path in wrong
