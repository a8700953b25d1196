"""What is taken for a quantity in units that the reader has not chosen."""

import pytest

from tests.lessons.foreign_units import left


@pytest.mark.parametrize(
    ("text", "system", "found"),
    [
        ("a crack of 0.32\u202fmm, at 59.1\u202fkN", "US", ["0.32\u202fmm", "59.1\u202fkN"]),
        ("trodden down by 50 mm", "US", ["50 mm"]),
        ("a modulus of 32\u202f837\u202fMPa", "US", ["32\u202f837\u202fMPa"]),
        ("it spans 20.0\u202fft with 13.5\u202fkip", "SI", ["20.0\u202fft", "13.5\u202fkip"]),
        ("a crack of 0.32\u202fmm", "SI", []),
        ("4 × 12 mm, and 16 mm every 5.91\u202fin", "US", []),
        ("with 2 × #6 in it", "SI", []),
        ("20 kg/m³ (34 lb/yd³)", "US", []),
        ("15 mil (0.38 mm) or more", "US", []),
        ("30.00\u202fMPa = 4351\u202fpsi", "US", []),
        ("EN 1992-1-1 7.3.4, Table 7.1N", "US", []),
        ("after 365\u202fd in 3 inner rooms", "SI", []),
    ],
)
def test_quantities_in_the_other_units_are_found_and_nothing_else(text, system, found):
    assert left(text, system) == found
