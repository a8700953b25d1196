"""What people type, and what is said when it cannot be read."""

import math

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from crackkit.units import QUANTITIES, UnitError, parse


@pytest.mark.parametrize(
    ("text", "quantity", "value"),
    [
        ("20 ft", "length", 6096.0),
        ("20ft", "length", 6096.0),
        ("6.1 m", "length", 6100.0),
        ("6,1 m", "length", 6100.0),
        ("610 cm", "length", 6100.0),
        ("12 000 mm", "length", 12000.0),
        ("1,234.5 mm", "length", 1234.5),
        ("20'-6\"", "length", 6248.4),
        ("20' 6 1/2\"", "length", 6261.1),
        ("20 ft 6 in", "length", 6248.4),
        ("20’-6”", "length", 6248.4),
        ("-20'-6\"", "length", -6248.4),
        ("20'", "length", 6096.0),
        ("-3 ft", "length", -914.4),
        ("12 in", "size", 304.8),
        ('12"', "size", 304.8),
        ("1.5 in", "size", 38.1),
        ("3/4 in", "size", 19.05),
        ("1 1/2 in", "size", 38.1),
        ("1-1/2 in", "size", 38.1),
        ("1½ in", "size", 38.1),
        (".5 in", "size", 12.7),
        ("0,013 in", "width", 0.3302),
        ("4000 psi", "strength", 27.5790291727),
        ("4 ksi", "strength", 27.5790291727),
        ("27 MPa", "strength", 27.0),
        ("27 mpa", "strength", 27.0),
        ("27 N/mm2", "strength", 27.0),
        ("27 N/mm²", "strength", 27.0),
        ("60 ksi", "stress", 413.685437591),
        ("0.9 kip/ft", "line_load", 13.1345126435),
        ("900 plf", "line_load", 13.1345126435),
        ("900 lb/ft", "line_load", 13.1345126435),
        ("900 lb per ft", "line_load", 13.1345126435),
        ("13 kN/m", "line_load", 13.0),
        ("13 kN / m", "line_load", 13.0),
        ("100 psf", "pressure", 0.00478802589803),
        ("10 kips", "force", 44482.2161526),
        ("10k", "force", 44482.2161526),
        ("45 kN", "force", 45000.0),
        ("900 lb", "force", 4003.39945373),
        ("90 lb", "mass", 40.8233133),
        ("100 kip-ft", "moment", 135581794.833),
        ("30 kNm", "moment", 30e6),
        ("0.03 MNm", "moment", 30e6),
        ("5 Nm", "moment", 5e3),
        ("100 ft-kips", "moment", 135581794.833),
        ("120 kN m", "moment", 120e6),
        ("4 in^2", "area", 2580.64),
        ("500 microstrain", "strain", 5e-4),
        ("0.5 ‰", "strain", 5e-4),
        ("50 %", "ratio", 0.5),
        ("0.5", "ratio", 0.5),
        ("3", "count", 3.0),
        ("180 deg", "angle", math.pi),
        ("36 °F", "temperature", 20.0),
        ("4 weeks", "time", 28.0),
        ("6 months", "age", 182.5),
        ("2 years", "age", 730.0),
        ("86 °F", "warmth", 30.0),
        ("-40 f", "warmth", -40.0),
        ("30 C", "warmth", 30.0),
        ("12 mph", "wind", 19.312128),
        ("5 m/s", "wind", 18.0),
        ("50 MN/m3", "bed", 0.05),
        ("200 pci", "bed", 200 * 4.4482216152605 / 25.4**3),
        ("0.2 lb/ft2/h", "mass_rate", 0.97648552727661),
    ],
)
def test_texts_of_the_trade_are_read(text, quantity, value):
    assert parse(text, quantity) == pytest.approx(value, rel=1e-11)


def test_a_bare_number_is_read_only_where_the_system_is_known():
    assert parse("20", "length", system="US") == 6096.0
    assert parse(20, "length", system="SI") == 20000.0
    assert parse("32", "warmth", system="US") == 0.0
    with pytest.raises(UnitError, match="has no unit"):
        parse("20", "length")


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "is empty"),
        ("   ", "is empty"),
        ("20", "has no unit"),
        ("20 kg", "does not measure length"),
        ("20 kN/m", "does not measure length"),
        ("abc ft", "does not begin with a number"),
        ("ft", "does not begin with a number"),
        ("nan ft", "does not begin with a number"),
        ("20 pli", "unknown unit, pli"),
        ("20 ft 6", "unknown unit"),
        ("20 ft)", "unknown unit"),
        ("20 __import__('os')", "unknown unit"),
        ("20 ft**99999", "unknown unit"),
        ("1/0 ft", "divides by zero"),
        ("1e999 m", "is too large"),
        ("4,000 ft", "could mean 4000 or 4.000"),
        ("9" * 80 + " ft", "is too long"),
    ],
)
def test_a_bad_text_is_refused_with_its_reason(text, reason):
    with pytest.raises(UnitError, match=reason):
        parse(text, "length")


def test_the_message_names_field_text_and_an_example_in_both_systems():
    with pytest.raises(UnitError) as caught:
        parse("20 kg", "length", field="Span")
    message = str(caught.value)
    assert message.startswith("Span: “20 kg” has the unit kg")
    assert "6.1 m or 20 ft" in message
    assert (caught.value.field, caught.value.text) == ("Span", "20 kg")


@pytest.mark.parametrize("quantity", QUANTITIES)
def test_the_examples_of_the_messages_can_be_read(quantity):
    for text in QUANTITIES[quantity].examples:
        assert parse(text, quantity) > 0


@given(st.text(max_size=70), st.sampled_from(sorted(QUANTITIES)))
@example("1 m" + chr(0x660), "length")
@example("² ft", "length")
@example("١ ft", "length")
@example("1 ft*", "length")
@example("1 /ft", "length")
def test_any_text_is_either_read_or_refused(text, quantity):
    try:
        assert math.isfinite(parse(text, quantity))
    except UnitError as error:
        assert str(error)


@given(st.integers(0, 200), st.integers(0, 11), st.sampled_from([2, 4, 8, 16]), st.data())
def test_feet_inches_and_sixteenths_add_up(feet, inches, under, data):
    over = data.draw(st.integers(0, under - 1))
    value = parse(f"{feet}'-{inches} {over}/{under}\"", "length")
    assert value == pytest.approx(feet * 304.8 + (inches + over / under) * 25.4, abs=1e-6)


def test_years_are_counted_in_days_of_365():
    assert parse("2 years", "age", "SI") == 730.0
    assert parse("1 year", "age", "US") == 365.0
