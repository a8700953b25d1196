"""Limits of crack width: the same places in both code families, and what they are told apart by."""

import pytest

from crackkit.mechanics.crack_limits import LIMITS, limit, tightness_class_1_width

EXPOSURES = ["dry", "moist", "salt", "sea", "leak_tight"]


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_both_families_know_the_same_places_in_the_same_order(code):
    assert [each.key for each in LIMITS[code]] == EXPOSURES


@pytest.mark.parametrize("exposure", EXPOSURES)
def test_a_place_is_called_the_same_in_both_families(exposure):
    assert limit("ACI", exposure).label == limit("EN", exposure).label


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_a_harsher_place_never_allows_a_wider_crack(code):
    widths = [limit(code, exposure).width for exposure in EXPOSURES]
    assert widths == sorted(widths, reverse=True)


def test_eurocode_says_where_the_value_is_not_its_own():
    assert "no value of its own" in limit("EN", "leak_tight").note


def test_an_unknown_place_is_refused():
    with pytest.raises(ValueError, match="moon"):
        limit("ACI", "moon")


def test_an_unknown_family_is_refused():
    with pytest.raises(ValueError, match="XYZ"):
        limit("XYZ", "dry")


@pytest.mark.parametrize(
    ("head", "expected"), [(0, 0.2), (1500, 0.2), (6000, 0.125), (10500, 0.05), (30000, 0.05)]
)
def test_more_head_on_a_wall_asks_for_finer_cracks(head, expected):
    assert tightness_class_1_width(head, 300) == pytest.approx(expected)
