"""Several values in one text."""

import pytest

from crackkit.sandbox.floor_inputs import BY_NAME
from crackkit.sandbox.lists import amounts_of, parts_of


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ("5 m, 6 m, 5 m", ["5 m", "6 m", "5 m"]),
        ("5 m,6 m", ["5 m", "6 m"]),
        ("5,5 m; 6,2 m", ["5,5 m", "6,2 m"]),
        ("5 m and 6 m", ["5 m", "6 m"]),
        ("5, 6, 5 m", ["5 m", "6 m", "5 m"]),
        ("5.5, 6 m", ["5.5 m", "6 m"]),
        ("3 x 5 m", ["5 m"] * 3),
        ("2 x 5 m, 4 m", ["5 m", "5 m", "4 m"]),
        ("0.8, -0.3 m", ["0.8 m", "-0.3 m"]),
        (["5 m", "6 m"], ["5 m", "6 m"]),
        ("20'-6\", 18'", ["20'-6\"", "18'"]),
        ("", []),
    ],
)
def test_amounts_are_divided_as_people_write_them(typed, parts):
    assert amounts_of(typed) == parts


def test_numbers_without_any_unit_stay_without():
    assert amounts_of("5, 6") == ["5", "6"]
    assert parts_of(5) == [5]


@pytest.mark.parametrize(
    ("name", "typed", "written"),
    [
        ("spans", "3 x 5 m", "5 m, 5 m, 5 m"),
        ("top_reach", "1.2 m, 1.2 m, 1.2 m", "1.2 m"),
        ("settled", "b 10 mm, C 0.5 cm", "B 10 mm, C 5 mm"),
        ("settled", "none", "none"),
        ("live_on", "3 1", "1, 3"),
        ("live_on", [2, 1], "1, 2"),
        ("live_on", "all", "all"),
        ("ends", "fixed", "fixed"),
        ("ends", "fixed, pinned", "fixed, pinned"),
        ("top", "12 @ 150, none", "12 mm @ 150 mm, none"),
        ("top", "3 #6, 3 #6", "3 x #6"),
        ("travelling", "20 kN, 5 kN at 3 m", "20 kN, 5 kN at 3 m"),
    ],
)
def test_what_was_read_is_written_as_it_would_be_typed(name, typed, written):
    argument = BY_NAME[name]
    again = argument.written(argument.read(typed), "SI")
    assert again == written
    assert argument.written(argument.read(again), "SI") == written


def test_each_support_is_named_by_its_letter_when_its_bars_run():
    argument = BY_NAME["top_reach"]
    labels = [knob.label for knob in argument.knobs(argument.read("1 m, 2 m"))]
    assert labels == ["reach at support A", "reach at support B"]
