"""Every printed number that we know, against what crackkit gives for it."""

from decimal import Decimal

import pytest

from crackkit.checks import compare, published, sources, subjects, table


@pytest.mark.parametrize(
    "check",
    [check for check in published() if check.kind == "printed"],
    ids=lambda check: f"{check.source}:{check.id}",
)
def test_printed_value_is_met(check):
    comparison = compare(check)
    assert comparison.ok, f"{check.where}: printed {check.expected}, ours {comparison.got}"


def test_there_is_enough_to_compare_with():
    assert len([check for check in published() if check.kind == "printed"]) >= 80


@pytest.mark.parametrize("check", published(), ids=lambda check: check.id)
def test_every_number_names_a_known_source_and_a_place_in_it(check):
    assert check.source in sources()
    assert check.where
    assert check.quantity.endswith("]")


def test_names_of_entries_are_unique():
    ids = [check.id for check in published()]
    assert len(set(ids)) == len(ids)


@pytest.mark.parametrize("check", published(), ids=lambda check: check.id)
def test_a_wide_tolerance_is_half_a_printed_digit_or_explained(check):
    digits = Decimal(str(check.expected)).as_tuple()
    half_unit = 0.5 * 10.0 ** (digits.exponent) / abs(check.expected)
    assert check.rtol <= max(0.01, 1.01 * half_unit) or check.note
    assert check.rtol <= 0.08


def test_a_wrong_number_is_found_out():
    check = published("widths")[0]
    assert compare(check).ok
    assert not compare(type(check)(**{**vars(check), "expected": 1.1 * check.expected})).ok


def test_tables_of_subjects_make_up_the_whole_table():
    assert sum((table(name) for name in subjects()), ()) == table()


def test_a_row_cites_authors_and_year():
    assert table("bars")[0].source == "ASTM International (2022)"
