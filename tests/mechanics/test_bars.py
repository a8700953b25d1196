"""Bars: nominal sizes against ASTM A615, and the room between them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.bars import (
    ASTM,
    METRIC,
    bar,
    clear_spacing,
    least_clear_spacing_aci,
    least_clear_spacing_en,
)

# ASTM A615/A615M, metric columns: diameter [mm], area [mm2] (PCI Design Handbook, aid 15.4.1).
SOFT_METRIC = {
    "#3": (9.5, 71),
    "#4": (12.7, 129),
    "#5": (15.9, 199),
    "#6": (19.1, 284),
    "#7": (22.2, 387),
    "#8": (25.4, 510),
    "#9": (28.7, 645),
    "#10": (32.3, 819),
    "#11": (35.8, 1006),
    "#14": (43.0, 1452),
    "#18": (57.3, 2581),
}


@pytest.mark.parametrize(("name", "printed"), SOFT_METRIC.items())
def test_astm_bars_have_the_printed_metric_size(name, printed):
    assert bar(name).diameter == pytest.approx(printed[0], abs=0.0501)
    assert bar(name).area == pytest.approx(printed[1], abs=1.0)  # the metric column is rounded


@pytest.mark.parametrize("name", ASTM)
def test_astm_nominal_values_belong_together(name):
    made = bar(name)
    # Areas are printed to 0.01 in2 and masses to 0.001 or 0.01 lb/ft of the round bar of steel.
    assert made.area == pytest.approx(math.pi * made.diameter**2 / 4, abs=0.0051 * 25.4**2)
    assert made.mass == pytest.approx(7850e-6 * math.pi * made.diameter**2 / 4, rel=2e-3)


@pytest.mark.parametrize(
    ("name", "area", "mass"), [("10", 78.5, 0.617), ("16", 201.1, 1.578), ("40", 1256.6, 9.865)]
)
def test_metric_bars_have_the_usual_area_and_mass(name, area, mass):
    assert bar(name).area == pytest.approx(area, abs=0.05)
    assert bar(name).mass == pytest.approx(mass, abs=0.0005)


def test_a_bar_is_found_however_its_number_is_written():
    assert bar(16) is bar(" 16 ") is METRIC["16"]
    assert bar("#5") is ASTM["#5"]


def test_every_bar_is_listed_under_its_own_name():
    assert all(made.name == name for name, made in {**ASTM, **METRIC}.items())


def test_an_unknown_bar_is_refused_with_the_sizes_that_exist():
    with pytest.raises(ValueError, match="#12.*#3, #4.*28, 32, 40"):
        bar("#12")


def test_gaps_and_bars_and_covers_fill_the_width():
    gap = clear_spacing(300, 40, 20, 4)
    assert 2 * 40 + 4 * 20 + 3 * gap == pytest.approx(300)


@given(st.integers(1, 20), st.floats(6, 57))
def test_one_bar_more_never_widens_the_gaps(number, diameter):
    wide = clear_spacing(1000, 40, diameter, number)
    assert clear_spacing(1000, 40, diameter, number + 1) < wide


def test_bars_that_do_not_fit_show_a_negative_gap():
    assert clear_spacing(200, 40, 32, 5) < 0


def test_a_single_bar_has_endless_room():
    assert clear_spacing(300, 40, 20, 1) == math.inf


@pytest.mark.parametrize(
    ("diameter", "aggregate", "least"), [(12.7, 10, 25.4), (35.8, 20, 35.8), (16, 30, 40)]
)
def test_each_limit_of_aci_governs_in_its_turn(diameter, aggregate, least):
    assert least_clear_spacing_aci(diameter, aggregate) == pytest.approx(least)


@pytest.mark.parametrize(
    ("diameter", "aggregate", "least"), [(12, 10, 20), (32, 20, 32), (16, 32, 37)]
)
def test_each_limit_of_en_governs_in_its_turn(diameter, aggregate, least):
    assert least_clear_spacing_en(diameter, aggregate) == pytest.approx(least)
