"""Whatever is typed wrongly is answered with the name, what was typed, and what may be."""

import pytest

from crackkit.sandbox import SimpleBeam, WrongInput
from crackkit.sandbox.arguments import UNDERSTOOD
from crackkit.sandbox.beam_inputs import ARGUMENTS, BY_NAME, MEANT
from crackkit.units import parse


def message(**typed) -> str:
    with pytest.raises(WrongInput) as caught:
        SimpleBeam(**typed)
    return str(caught.value).replace("\u202f", " ")


@pytest.mark.parametrize("name", [a.name for a in ARGUMENTS if a.quantity])
@pytest.mark.parametrize("typed", [7, 7.5, "7"])
def test_a_number_without_a_unit_is_told_which_units_are_understood(name, typed):
    said = message(**{name: typed})
    assert f"{name}={typed!r}" in said
    assert "has no unit" in said
    for unit in UNDERSTOOD[BY_NAME[name].quantity]:
        assert unit in said


@pytest.mark.parametrize(
    ("quantity", "unit"), [(q, unit) for q, units in UNDERSTOOD.items() for unit in units]
)
def test_every_unit_that_is_offered_is_understood(quantity, unit):
    assert parse(f"3 {unit}", quantity) > 0


def test_a_value_outside_its_range_is_answered_in_the_units_of_the_reader():
    said = message(span="20 ft", width="12 in", depth="20 in", cover="5 in")
    assert "cover='5 in'" in said
    assert "0.39 to 2.40 in" in said
    said = message(span="6 m", cover="130 mm")
    assert "cover='130 mm'" in said
    assert "10 to 60 mm" in said


def test_a_load_beyond_the_end_names_the_end():
    said = message(span="20 ft", point_load="10 kip at 21 ft")
    assert "point_load" in said
    assert "0.0 to 20.0 ft" in said


def test_a_value_nobody_typed_is_called_assumed():
    assert "cover='1.5 in' (assumed)" in message(span="20 ft", width="6 in")


@pytest.mark.parametrize(
    ("wrong", "meant"),
    [
        ("spam", "span"),
        ("covr", "cover"),
        ("top_bar", "top_bars"),
        ("Length", "span"),
        ("live", "dead"),
        ("fy", "steel"),
        ("rebar", "bars"),
        ("overhangleft", "overhang_left"),
    ],
)
def test_a_misspelled_name_is_answered_with_the_near_ones(wrong, meant):
    said = message(**{wrong: "3 m"})
    assert repr(wrong) in said
    assert f"Did you mean {meant}" in said


def test_a_name_near_nothing_is_answered_with_all_names():
    said = message(zzz="3 m")
    assert all(argument.name in said for argument in ARGUMENTS)


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize(
    ("typed", "part"),
    [
        ({"bars": "#5 @ 12 in"}, "not a spacing"),
        ({"bars": "three"}, "3 #6"),
        ({"bars": "3 #12"}, "#11"),
        ({"bars": "13 #4"}, "0 to 12"),
        ({"stirrups": "#33"}, "#3"),
        ({"exposure": "wet"}, "leak_tight"),
        ({"exposure": "mosit"}, "Did you mean moist?"),
        ({"code": "XX"}, "ACI, EN"),
        ({"duration": "long"}, "lasting"),
        ({"point_load": "10 kip"}, "at 8 ft"),
        ({"point_load": ["1 kip at 2 ft"] * 4}, "1 to 3"),
        ({"own_weight": "maybe"}, "yes or no"),
        ({"system": "metric"}, "US, SI"),
        ({"steel": "60 kip"}, "does not measure"),
        ({"dead": "-3 kN/m"}, "0.0 to 80.0 kN/m"),
        ({"span": ""}, "is empty"),
    ],
)
def test_each_mistake_names_the_input_and_a_way_out(typed, part):
    said = message(**typed)
    assert next(iter(typed)) in said
    assert part in said


def test_a_notebook_shows_one_line_and_no_page_of_calls():
    error = WrongInput("span=20 has no unit", "span", 20)
    assert error._render_traceback_() == ["WrongInput: span=20 has no unit"]
    assert (error.argument, error.typed) == ("span", 20)
