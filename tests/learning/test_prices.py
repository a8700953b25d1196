"""Prices are a learner's own: read with care, kept whole, and told to be indicative."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.learning import prices
from crackkit.learning.price_words import shown_amount, shown_money, shown_price, with_typed
from crackkit.learning.prices import (
    SETTING,
    UNIT_PRICES,
    USUAL,
    PriceError,
    PriceList,
    keep_prices,
    kept_prices,
    unit_price,
)
from crackkit.learning.progress import Progress
from crackkit.mechanics.base_friction import BASES

KEYS = [each.key for each in UNIT_PRICES]
EVERY = pytest.mark.parametrize("key", KEYS)


@pytest.fixture
def store(tmp_path):
    return Progress(tmp_path / "home" / "progress.json")


def again(store):
    return Progress(store.path)


@EVERY
def test_every_price_has_a_name_units_and_a_range_around_the_usual_one(key):
    priced = unit_price(key)
    low, high = priced.range
    assert priced.label and priced.measure.label("SI") and priced.measure.label("US")
    assert low == 0.0 < USUAL.of(key) == priced.usual < high


def test_every_base_has_a_price():
    assert {base.key for base in BASES} - set(KEYS) == {"one_sheet", "two_sheets"}


def test_prices_are_told_to_be_indicative():
    assert "Indicative, common practice" in prices.NOTE


# exact definitions: lb, ft, ft2 and yd3 in kg, m, m2 and m3
@pytest.mark.parametrize(
    ("key", "size", "in_us"),
    [
        ("bars", 0.45359237, "0.998"),
        ("saw", 0.3048, "1.22"),
        ("sand", 0.09290304, "0.465"),
        ("concrete", 0.764554857984, "107.04"),
    ],
)
def test_a_price_in_us_units_is_for_a_pound_a_foot_a_square_foot_a_cubic_yard(key, size, in_us):
    text = shown_price(key, USUAL.of(key), "US")
    assert float(text) == pytest.approx(USUAL.of(key) * size, rel=0.005)
    assert text == in_us


def test_prices_and_amounts_keep_the_digits_that_count():
    assert shown_price("sheet", 0.8, "US") == "0.0743"
    assert shown_price("bars", 2.2, "SI") == "2.20"
    assert shown_price("concrete", 140.0, "SI") == "140"
    assert shown_price("concrete", 140.5, "SI") == "140.50"
    assert shown_price("moist", 0.0, "SI") == "0"
    assert shown_amount("bars", 1022.8, "SI") == "1023"
    assert shown_amount("strip", 12.0, "US") == "39.4"
    assert (shown_money(812.4), shown_money(0.75), shown_money(0.0)) == ("812", "0.75", "0")


@EVERY
@pytest.mark.parametrize("system", ["SI", "US"])
def test_a_price_as_it_is_shown_can_be_typed_again(key, system):
    text = shown_price(key, unit_price(key).usual, system)
    typed = with_typed(USUAL, key, text, system)
    assert typed.of(key) == pytest.approx(unit_price(key).usual, rel=0.005)


def test_a_decimal_comma_is_read():
    assert with_typed(USUAL, "bars", "2,75", "SI").of("bars") == 2.75


@pytest.mark.parametrize("text", ["dear", "", "2.20 kg", "1/0", "nan", "inf"])
def test_what_is_no_price_is_named_with_an_example(text):
    with pytest.raises(PriceError, match=r"Bars, placed on chairs.*Write for example 2\.20"):
        with_typed(USUAL, "bars", text, "SI")


@pytest.mark.parametrize("text", ["-1", "1e9"])
def test_a_price_out_of_range_is_named_with_the_range_in_the_readers_units(text):
    with pytest.raises(PriceError, match=r"Bars.*outside 0 to 997.90 for each lb"):
        with_typed(USUAL, "bars", text, "US")


@pytest.mark.parametrize("value", [math.nan, math.inf, -1.0, 1e9, "2", None, True])
def test_a_list_holds_no_impossible_price(value):
    with pytest.raises(PriceError, match="Bars"):
        PriceList((("bars", value),))


def test_a_list_knows_no_strange_thing():
    with pytest.raises(PriceError, match="tea.*bars"):
        USUAL.changed("tea", 1.0)
    with pytest.raises(PriceError):
        USUAL.of("tea")


@given(st.sampled_from(KEYS), st.floats(0.0, 100.0))
def test_a_changed_price_changes_no_other_and_can_be_taken_back(key, value):
    changed = USUAL.changed(key, value)
    assert changed.of(key) == value
    assert all(changed.of(other) == USUAL.of(other) for other in KEYS if other != key)
    assert changed.changed(key, unit_price(key).usual) == USUAL


def test_prices_come_back_from_the_record(store):
    own = USUAL.changed("bars", 3.1).changed("saw", 0.0)
    keep_prices(store, own)
    assert kept_prices(again(store)) == own
    keep_prices(store, USUAL)
    assert kept_prices(again(store)) == USUAL


def test_only_what_was_put_right_is_written(store):
    keep_prices(store, USUAL.changed("bars", 3.1))
    assert again(store).setting(SETTING) == {"bars": 3.1}


@pytest.mark.parametrize("rubbish", [None, 7, "dear", [1], {"tea": 1.0}, {"bars": "x"}])
def test_rubbish_in_the_record_is_passed_over(store, rubbish):
    store.set_setting(SETTING, rubbish)
    assert kept_prices(again(store)) == USUAL


def test_one_bad_price_does_not_cost_the_good_ones(store):
    store.set_setting(SETTING, {"saw": 5.0, "bars": -3.0, "tea": 1.0, "strip": None})
    assert kept_prices(again(store)) == USUAL.changed("saw", 5.0)


def test_a_record_that_cannot_be_read_is_set_aside_and_the_usual_prices_count(store):
    keep_prices(store, USUAL.changed("saw", 5.0))
    store.path.write_text("{ half a rec")
    found = again(store)
    assert kept_prices(found) == USUAL
    assert list(store.path.parent.glob("progress-unreadable-*.json")) and found.notices
