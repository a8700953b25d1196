"""What questions about slabs that curl call right, found by hand or by trying it out."""

import re
from dataclasses import replace
from random import Random

import pytest

from crackkit.learning.questions import question

SEEDS = range(12)


def _numbers(text: str) -> list[float]:
    return [float(n.replace("\u202f", "")) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def _right(asked) -> float:
    return _numbers(asked.right.text)[0]


def test_a_strip_without_weight_bends_to_an_arc():
    """A radius of thickness over difference: the rise of a chord is L^2/(8 R)."""
    for seed in range(40):
        asked = question("curl_without_weight", Random(seed))
        thick, strain, length = _numbers(asked.text)
        radius = thick / (strain / 1000.0)
        expected = radius - (radius**2 - (500.0 * length) ** 2) ** 0.5
        assert _right(asked) == pytest.approx(expected, rel=0.01, abs=0.06)


def test_a_heavy_end_rises_with_the_square_of_what_bends_it():
    for seed in range(40):
        asked = question("drier_on_top", Random(seed), "US")
        _thick, before, rise, after = _numbers(asked.text)
        assert _right(asked) == pytest.approx(rise * (after / before) ** 2, rel=0.03)


def test_a_thicker_slab_whose_top_is_as_much_drier_stands_as_high():
    for seed in range(40):
        asked = question("thicker_and_as_dry", Random(seed))
        _thin, _strain, rise, _thick, _again = _numbers(asked.text)
        assert _right(asked) == rise


def test_at_a_curled_corner_the_top_is_pulled_and_in_the_middle_of_a_flat_slab_the_bottom():
    found = set()
    for seed in SEEDS:
        asked = question("face_under_the_wheel", Random(seed))
        corner = "on a corner" in asked.text
        assert asked.right.text == ("In its top face" if corner else "In its bottom face")
        found.add(corner)
    assert found == {True, False}


def test_panels_of_half_the_side_are_pulled_by_less_than_half():
    """Weight on a lever half as long bends a quarter as much; the curl is as strong as before."""
    for seed in SEEDS:
        asked = question("sides_halved", Random(seed))
        assert _right(asked) < 0.6 * asked.structure.curled.share


def test_over_damp_ground_a_corner_stands_highest_and_over_an_open_base_never():
    seen = set()
    for seed in range(30):
        right = question("what_lies_below", Random(seed)).right.text
        seen.add(right)
        assert "open" not in right and "lets its water out" not in right
    assert any("damp" in each for each in seen)


def test_the_corner_stands_highest_between_the_end_of_curing_and_the_last_day():
    for seed in SEEDS:
        asked = question("when_it_stands_highest", Random(seed))
        day, slab = _right(asked), asked.structure
        first, peak, last = (
            replace(slab, age=age).curled.corner_rise for age in (slab.curing + 1, day, 1095.0)
        )
        assert peak > first and peak > last
        assert slab.curing < day < 365.0


def test_a_mat_in_the_middle_never_holds_the_top_finer():
    for seed in SEEDS:
        asked = question("mat_in_the_middle", Random(seed))
        before = float(re.search(r"holds the crack at ([\d.]+)", asked.text)[1])
        assert _right(asked) > 1.3 * before


def test_the_mat_holds_the_crack_as_the_panel_shows_it():
    for seed in SEEDS:
        asked = question("mat_in_the_middle", Random(seed))
        force = 1000.0 * float(re.search(r"wheel of ([\d.]+)", asked.text)[1])
        told = float(re.search(r"holds the crack at ([\d.]+)", asked.text)[1])
        load = replace(asked.structure.loads[0], force=force, x=0.0, y=0.0)
        line = replace(asked.structure, loads=(load,)).curled.line
        assert line.face == "top"
        assert told == pytest.approx(line.width.governing, abs=0.0051)


def test_a_cold_night_is_the_worst_for_a_corner():
    for seed in SEEDS:
        asked = question("wheel_at_night", Random(seed))
        assert "night" in asked.right.text
        tops = [replace(asked.structure, warmer=w).curled.top.peak for w in (-8.0, 0.0, 8.0)]
        assert tops == sorted(tops, reverse=True)


def test_dowels_take_something_off_but_not_what_drying_does():
    for seed in SEEDS:
        asked = question("dowels_at_the_corner", Random(seed))
        before = float(re.search(r"pulled with ([\d.]+)", asked.text)[1])
        share = float(re.search(r"(\d+) %", asked.text)[1]) / 100
        assert (1 - share) * before < _right(asked) < before
