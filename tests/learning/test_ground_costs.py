"""The bill of a slab on the ground, line by line, against sums by hand."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.learning import costs
from crackkit.learning.ground_costs import ground_cost
from crackkit.learning.prices import UNIT_PRICES, USUAL, PriceList, unit_price
from crackkit.structures.ground_slab import BASE_CHOICES, GroundSlab

# 24 m by 6 m, 150 mm, on gravel, kept moist for 3 days, nothing in it
PLAIN = GroundSlab(length=24000.0, width=6000.0, thickness=150.0, curing=3.0)
MAT = {"steel": "12", "spacing": 100.0}
KEYS = [each.key for each in UNIT_PRICES]


def amounts(slab, found=None) -> dict:
    return {item.key: item.amount for item in ground_cost(slab, USUAL, found).items}


def test_a_plain_floor_is_concrete_a_base_and_some_days_of_water():
    assert amounts(PLAIN) == pytest.approx({"concrete": 21.6, "gravel": 144.0, "moist": 432.0})
    by_hand = 21.6 * 140.0 + 144.0 * 5.0 + 432.0 * 0.25
    assert ground_cost(PLAIN).total == pytest.approx(by_hand)


def test_bars_are_paid_for_by_mass_both_ways_if_they_lie_so():
    one_way = amounts(replace(PLAIN, **MAT))["bars"]
    # a bar of 12 mm every 100 mm: 10 on a metre, 144 m2, 7850 kg/m3
    assert one_way == pytest.approx(1440.0 * 0.25 * 3.14159265 * 0.012**2 * 7850.0, rel=2e-3)
    both = replace(PLAIN, both_ways=True, **MAT)
    assert amounts(both)["bars"] == pytest.approx(2 * one_way)


def test_bars_on_the_ground_are_paid_for_all_the_same():
    lost = replace(PLAIN, place="ground", **MAT)
    assert amounts(lost) == amounts(replace(lost, place="top"))


def test_joints_are_cut_across_and_along_a_wide_floor():
    cut = replace(PLAIN, jointed=True, joint_every=5000.0)  # five panels by two
    assert amounts(cut)["saw"] == pytest.approx(4 * 6.0 + 24.0)
    assert amounts(replace(cut, joint_every=6000.0))["saw"] == pytest.approx(3 * 6.0)


def test_dowels_stand_a_foot_apart_in_joints():
    cut = replace(PLAIN, jointed=True, joint_every=6000.0, dowels="sliding")
    assert amounts(cut)["dowel"] == 60
    assert "dowel" not in amounts(replace(cut, jointed=False))


def test_sheets_are_paid_for_each_and_want_an_even_base():
    one, two = (amounts(replace(PLAIN, base=base)) for base in ("one_sheet", "two_sheets"))
    assert (one["even"], one["sheet"], two["sheet"]) == pytest.approx((144.0, 144.0, 288.0))
    assert not {"gravel", "sand"} & one.keys()


@pytest.mark.parametrize("base", [key for key, _label in BASE_CHOICES])
def test_every_base_is_on_the_bill_once(base):
    assert amounts(replace(PLAIN, base=base)).get("even" if "sheet" in base else base) == 144.0


def test_a_strip_is_paid_for_where_an_end_was_held_and_is_held_less():
    walled = replace(PLAIN, left=1.0, right=1.0, sides=0.5, middle=0.3)
    assert "strip" not in amounts(PLAIN) and "strip" not in amounts(walled, walled)
    assert amounts(replace(walled, left=0.0), walled)["strip"] == pytest.approx(6.0)
    assert amounts(replace(walled, left=0.4, right=0.0), walled)["strip"] == pytest.approx(12.0)
    assert amounts(PLAIN, walled)["strip"] == pytest.approx(6.0 + 6.0 + 48.0 + 2.0)


def test_nothing_is_paid_for_holding_it_harder():
    assert "strip" not in amounts(replace(PLAIN, left=1.0), PLAIN)


def test_more_of_anything_never_makes_it_cheaper():
    dearer = [
        {"thickness": 160.0},
        {"curing": 7.0},
        {"base": "two_sheets"},
        MAT,
        {"jointed": True, "joint_every": 4500.0},
        {"width": 6100.0},
    ]
    plain = ground_cost(PLAIN).total
    assert all(ground_cost(replace(PLAIN, **more)).total > plain for more in dearer)


@given(st.sampled_from(KEYS), st.floats(0.0, 50.0))
def test_a_price_is_felt_as_much_as_there_is_of_its_thing(key, more):
    slab = replace(PLAIN, base="one_sheet", jointed=True, dowels="sliding", **MAT)
    held = replace(slab, left=1.0)
    before = ground_cost(slab, USUAL, held)
    after = ground_cost(slab, USUAL.changed(key, unit_price(key).usual + more), held)
    assert after.total - before.total == pytest.approx(more * before.amount(key), abs=1e-6)


def test_another_structure_lists_its_own_items():
    panel = costs.square_metres(4000.0, 4000.0)
    prices = PriceList((("bars", 3.0),))
    bill = costs.cost(
        costs.concrete(prices, panel, 200.0), costs.bars(prices, 50.0), costs.dowels(prices, 0)
    )
    assert [item.key for item in bill.items] == ["concrete", "bars"]
    assert bill.total == pytest.approx(3.2 * 140.0 + 150.0)
    assert bill.of("bars") == 150.0 and bill.of("dowel") == 0.0
    assert all(item.label for item in bill.items)
