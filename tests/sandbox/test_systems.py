"""The units of a text are recognised."""

import pytest

from crackkit.sandbox.promises import promises
from crackkit.sandbox.systems import system_of


@pytest.mark.parametrize(
    ("text", "system"),
    [
        ("20 ft", "US"),
        ("20'-6\"", "US"),
        ("1½ in", "US"),
        ("12in", "US"),
        ("3 #6", "US"),
        ("0.9 kip/ft", "US"),
        ("900 plf", "US"),
        ("4000 psi", "US"),
        ("10 k at 8 ft", "US"),
        ("6,1 m", "SI"),
        ("300mm", "SI"),
        ("13 kN/m", "SI"),
        ("30 N/mm2", "SI"),
        ("4 x 16 mm", "SI"),
        ("45 kN at 2.5 m", "SI"),
        ("4 x 16", None),
        ("yes", None),
        ("no", None),
        ("3 no. 6", "US"),
        ("No 4", "US"),
        ("100 psf", "US"),
        ("5 kN/m2", "SI"),
        ("12 @ 150", None),
        ("B 10 mm", "SI"),
        ("20 °C", "SI"),
        ("36 °F", "US"),
        ("fixed, pinned", None),
        ("1, 3", None),
        ("none", None),
        ("dry", None),
        ("moist", None),
        ("lasting", None),
    ],
)
def test_the_units_of_a_text_are_recognised(text, system):
    assert system_of([text]) == system


def test_the_greater_part_decides():
    assert system_of(["20 ft", "12 in", "300 mm"]) == "US"
    assert system_of(["20 ft", "300 mm"]) == "SI"
    assert system_of([20, None, True]) is None


@pytest.mark.parametrize("promise", promises().items(), ids=lambda pair: pair[0])
def test_the_lesson_keeps_its_promise(promise):
    assert promise[1]
