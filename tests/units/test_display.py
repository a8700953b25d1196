"""What a reader sees is what the mechanics means."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.units import QUANTITIES, SYSTEMS, inner, number, parse, shown, unit
from crackkit.units.quantities import scale

quantities = st.sampled_from(sorted(QUANTITIES))
systems = st.sampled_from(SYSTEMS)
sizes = st.floats(-1e6, 1e6, allow_nan=False)


@pytest.mark.parametrize(
    ("value", "quantity", "si", "us"),
    [
        (6096.0, "length", "6.10 m", "20.0 ft"),
        (38.1, "size", "38 mm", "1.50 in"),
        (0.21, "width", "0.21 mm", "0.0083 in"),
        (5.08, "movement", "5.1 mm", "0.200 in"),
        (44482.216152605, "force", "44.5 kN", "10.00 kip"),
        (13.1345, "line_load", "13.1 kN/m", "0.90 kip/ft"),
        (27.579, "strength", "27.6 MPa", "4000 psi"),
        (413.685, "stress", "414 MPa", "60.0 ksi"),
        (135.5818e6, "moment", "135.6 kN·m", "100.0 kip·ft"),
        (45.359237, "mass", "45.4 kg", "100.0 lb"),
        (851.6, "area", "852 mm²", "1.32 in²"),
        (3.125e9, "inertia", "3125.0 ×10⁶ mm⁴", "7508 in⁴"),
        (5e-4, "strain", "0.50 ‰", "500 millionths"),
        (20.0, "temperature", "20.0 °C", "36 °F"),
        (20.0, "warmth", "20 °C", "68 °F"),
        (-5.0, "warmth", "−5 °C", "23 °F"),
        (19.3, "wind", "19 km/h", "12 mph"),
        (0.05, "bed", "50 MN/m³", "184 lb/in³"),
        (1.0, "mass_rate", "1.00 kg/m²/h", "0.205 lb/ft²/h"),
        (3, "count", "3", "3"),
        (0.5, "ratio", "0.50", "0.50"),
        (math.pi / 4, "angle", "45°", "45°"),
    ],
)
def test_values_are_written_as_the_trade_writes_them(value, quantity, si, us):
    written = [shown(value, quantity, s).replace("\u202f", " ") for s in SYSTEMS]
    assert written == [si, us]


def test_number_and_unit_never_part_at_the_end_of_a_line():
    assert shown(6096.0, "length", "US") == "20.0\u202fft"


def test_nothing_is_shown_as_minus_zero():
    assert shown(-0.001, "movement", "SI") == "0.0\u202fmm"


def test_large_numbers_are_grouped_and_small_ones_are_not():
    assert shown(12_500.0, "area", "SI") == "12\u202f500\u202fmm²"
    assert shown(9_999.0, "area", "SI") == "9999\u202fmm²"
    assert shown(-12_500.0, "area", "SI") == "\u221212\u202f500\u202fmm²"


def test_a_width_without_end_or_without_value_is_still_a_word():
    assert shown(math.inf, "width", "SI") == "∞\u202fmm"
    assert shown(math.nan, "width", "SI") == "—"


@given(sizes, quantities, systems)
def test_display_and_inner_units_are_inverse(value, quantity, system):
    back = inner(number(value, quantity, system), quantity, system)
    # where a scale begins elsewhere, so many digits are all that is left of a number near there
    start = abs(scale(quantity, system).zero)
    assert back == pytest.approx(value, rel=6e-14, abs=1e-300 + 6e-14 * start)


@given(sizes, quantities, systems)
def test_what_is_shown_can_be_read_again(value, quantity, system):
    way = scale(quantity, system)
    value *= way.factor
    text = shown(value, quantity, system)
    half_a_digit = 0.5 * 10.0**-way.decimals * way.factor
    read = parse(text, quantity, system if not way.label else None)
    assert abs(read - value) <= half_a_digit * (1 + 1e-6) + 1e-11 * abs(value)


def test_inner_values_carry_no_dust_from_the_conversion():
    assert inner(1.5, "size", "US") == 38.1


def test_rounding_at_an_end_stays_inside_but_a_true_excess_is_left_to_be_refused():
    assert inner(1.5, "size", "US", low=38.1 + 1e-10) == 38.1 + 1e-10
    assert inner(1.4, "size", "US", low=38.1) == pytest.approx(35.56)
    assert inner(2.0, "size", "US", high=50.8 - 1e-10) == 50.8 - 1e-10


def test_unit_gives_the_label():
    assert [unit("line_load", s) for s in SYSTEMS] == ["kN/m", "kip/ft"]
    assert unit("ratio", "US") == ""
