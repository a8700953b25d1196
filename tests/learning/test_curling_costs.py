"""The bill of a floor of panels that curl, line by line, against sums by hand."""

from dataclasses import replace

import pytest

from crackkit.learning.curling_costs import curled_cost, panel_number, whole_floor
from crackkit.learning.prices import USUAL
from crackkit.structures.curled_slab import UNDER, CurledSlab

# Nine panels of 4 m, 100 mm, on a sheet, kept moist for 7 days, nothing in it
FOUND = CurledSlab(length=4000.0, width=4000.0, thickness=100.0, curing=7.0)
PLAIN = {"concrete": 14.4, "even": 144.0, "sheet": 144.0, "saw": 48.0, "moist": 1008.0}


def amounts(slab) -> dict:
    return {item.key: item.amount for item in curled_cost(slab, USUAL, FOUND).items}


def test_a_plain_floor_is_concrete_a_sheet_on_an_even_base_joints_and_water():
    assert amounts(FOUND) == pytest.approx(PLAIN)
    by_hand = 14.4 * 140.0 + 144.0 * (6.5 + 0.8) + 48.0 * 4.0 + 1008.0 * 0.25
    assert curled_cost(FOUND).total == pytest.approx(by_hand)


def test_the_floor_stays_as_large_whatever_its_panels_are():
    assert whole_floor(FOUND) == (12000.0, 12000.0)
    for side, cut in ((6000.0, 24.0), (3000.0, 72.0), (2400.0, 96.0), (5000.0, 48.0)):
        told = amounts(replace(FOUND, length=side, width=side))
        assert told["concrete"] == pytest.approx(14.4) and told["saw"] == pytest.approx(cut)
    assert amounts(replace(FOUND, length=6000.0))["saw"] == pytest.approx(36.0)


def test_panels_that_fit_exactly_are_not_counted_once_more():
    assert panel_number(3 * 12 * 304.8, 12 * 304.8) == 3
    assert panel_number(12000.0, 3999.0) == 4


def test_dowels_are_paid_for_by_what_they_hand_on():
    """48 m of joints, one every 300 mm, hand on 0.8."""
    assert amounts(replace(FOUND, transfer=0.8))["dowel"] == 160
    assert amounts(replace(FOUND, transfer=0.4))["dowel"] == 80
    assert "dowel" not in amounts(FOUND)


def test_a_mat_lies_both_ways():
    """8 mm every 200 mm: 5 on a metre each way, 7850 kg/m3."""
    told = amounts(replace(FOUND, steel="8", spacing=200.0))
    by_hand = 144.0 * 10.0 * 0.25 * 3.14159265 * 0.008**2 * 7850.0
    assert told["bars"] == pytest.approx(by_hand, rel=3e-3)


def test_what_lies_below_is_on_the_bill():
    found = {key: amounts(replace(FOUND, under=key)).keys() for key, _label in UNDER}
    assert {"even", "sheet", "sand"} <= found["blotter"]
    assert "subgrade" in found["damp"] and "gravel" in found["open"]
    assert not {"sheet", "sand"} & (found["damp"] | found["open"])


def test_more_of_anything_never_makes_it_cheaper():
    plain = curled_cost(FOUND, USUAL, FOUND).total
    more = (
        {"thickness": 110.0},
        {"curing": 8.0},
        {"transfer": 0.1},
        {"steel": "6", "spacing": 450.0},
        {"length": 3000.0},
        {"under": "blotter"},
    )
    for changes in more:
        assert curled_cost(replace(FOUND, **changes), USUAL, FOUND).total > plain
