"""Sliders that cannot leave their range, and sentences about values that did."""

from types import SimpleNamespace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from crackkit.units import QUANTITIES, SYSTEMS, explain, inner, slider_range

kinds = st.sampled_from(sorted(set(QUANTITIES) - {"count"}))
systems = st.sampled_from(SYSTEMS)


@given(kinds, systems, st.floats(-1e4, 1e4), st.floats(1e-3, 1e4), st.booleans(), st.data())
def test_no_slider_position_is_outside_the_range(quantity, system, low, extent, own_step, data):
    factor = QUANTITIES[quantity].SI.factor
    low, high = low * factor, (low + extent) * factor
    assume(extent > 1e-6 * abs(low / factor))
    step = extent / 7 * factor if own_step else None
    first, last, h = slider_range(low, high, quantity, system, step)
    position = first + h * data.draw(st.integers(0, round((last - first) / h)))
    for shown in (first, last, min(position, last)):
        assert low <= inner(shown, quantity, system, low, high) <= high


@given(kinds, systems, st.floats(0, 1e4), st.floats(1e-3, 1e4))
def test_a_slider_always_has_a_few_positions(quantity, system, low, extent):
    assume(extent > 1e-6 * low)
    factor = QUANTITIES[quantity].US.factor
    first, last, h = slider_range(low * factor, (low + extent) * factor, quantity, system)
    assert (last - first) / h > 2.5


def test_ends_move_inward_to_whole_steps():
    assert slider_range(1000, 15000, "length", "US") == (3.5, 49.0, 0.5)
    assert slider_range(1000, 15000, "length", "SI") == (1.0, 15.0, 0.1)
    assert slider_range(20, 75, "size", "US") == (1.0, 2.75, 0.25)


def test_a_count_moves_by_whole_bars_even_in_a_short_range():
    assert slider_range(1, 3, "count", "US") == (1, 3, 1)


def test_a_wished_step_becomes_a_handy_one_in_either_system():
    assert slider_range(150, 1200, "size", "SI", step=25) == (150, 1200, 25)
    assert slider_range(150, 1200, "size", "US", step=25) == (6, 47, 1)


def test_a_range_of_one_value_is_no_error():
    assert slider_range(5, 5, "size", "SI") == (5, 5, 5)


def _error(**changes):
    usual = dict(field="Span", value=10000.0, low=1000.0, high=15000.0, quantity="length")
    return SimpleNamespace(**(usual | {"choices": ()} | changes))


def _said(system="SI", **changes):
    return explain(_error(**changes), system).replace("\u202f", " ")


def test_a_value_outside_is_told_in_the_readers_units():
    assert _said("US", low=15000.0, high=20000.0) == "Span: 32.8 ft is outside 49.2 to 65.6 ft."
    assert _said("SI", low=15000.0, high=20000.0) == "Span: 10.00 m is outside 15.00 to 20.00 m."


def test_a_value_a_hair_outside_is_told_apart_from_the_limit():
    assert _said("US", high=9999.5) == "Span: 32.808 ft is outside 3.281 to 32.807 ft."


def test_open_ranges_say_which_side_was_missed():
    assert _said(low=11000.0, high=None) == "Span: 10.00 m is below 11.00 m."
    assert _said(low=None, high=9000.0) == "Span: 10.00 m is above 9.00 m."


def test_choices_are_listed():
    assert _said(field="Bar size", value="#99", choices=("#3", "#4"), quantity="choice") == (
        "Bar size: #99 is not one of #3, #4."
    )
    assert "yes or no" in _said(value=3, choices=(True, False), quantity="switch")


@pytest.mark.parametrize("value", ["ten", None, True, float("nan")])
def test_what_is_no_number_is_called_so(value):
    assert _said(value=value) == f"Span: {value} is not a number."


def test_an_error_raised_by_a_structure_can_be_explained():
    fields = pytest.importorskip("crackkit.structures.fields")
    error = fields.InputError("span", "Span", 500.0, 1000.0, 15000.0, "length")
    assert explain(error, "US").replace("\u202f", " ") == "Span: 1.6 ft is outside 3.3 to 49.2 ft."


def test_angles_and_counts_read_naturally():
    assert (
        _said(value=2.0, low=0.0, high=1.0, quantity="angle") == "Span: 115° is outside 0° to 57°."
    )
    assert _said(value=7, low=1, high=6, quantity="count") == "Span: 7 is outside 1 to 6."
