"""How an entry becomes a call: tables, lists, other entries."""

from dataclasses import replace

import numpy as np
import pytest

from crackkit.checks import Check, compare, published, sources, table

CALL = Check(
    id="a",
    subject="none",
    source="HICKS2010",
    where="nowhere",
    quantity="none [-]",
    function="crackkit.mechanics.crack_width:frosch",
    given={},
    expected=1.0,
    rtol=0.0,
)


def frosch_zone():
    check = next(check for check in published("widths") if check.id == "slab-sheet-e1")
    return check.given["zone"]


def test_a_table_becomes_the_dataclass_that_annotates_the_argument():
    comparison = compare(replace(CALL, given={"zone": frosch_zone()}, part="values.s"))
    assert comparison.got == 125.0


def test_a_table_without_annotated_dataclass_is_refused():
    check = replace(CALL, function="numpy:sum", given={"a": {"b": 1}})
    with pytest.raises(TypeError, match="no dataclass annotates"):
        compare(check)


def test_a_list_becomes_an_array():
    check = replace(CALL, function="numpy:multiply.reduce", given={"array": [2.0, 3.0]})
    assert compare(check).got == 6.0


def test_a_table_that_names_a_function_becomes_its_result():
    inner = {"function": "numpy:square", "x": 3.0}
    with pytest.raises(TypeError):
        compare(replace(CALL, function="numpy:sum", given={"a": inner}))
    inner = {"function": "numpy:cumsum", "a": [1.0, 2.0, 3.0]}
    assert compare(replace(CALL, function="numpy:sum", given={"a": inner})).got == 10.0


def test_a_part_may_be_an_index():
    check = replace(CALL, function="numpy:cumsum", given={"a": [1.0, 2.0, 3.0]}, part="2")
    assert compare(check).got == 6.0


def test_the_ratio_is_ours_over_printed():
    check = replace(CALL, function="numpy:sum", given={"a": [1.0, 2.0]}, expected=2.0, rtol=0.4)
    comparison = compare(check)
    assert (comparison.got, comparison.ratio, comparison.ok) == (3.0, 1.5, False)
    assert compare(replace(check, rtol=0.5)).ok


def test_a_result_that_is_not_a_number_never_passes():
    check = replace(CALL, function="numpy:sum", given={"a": [np.nan]}, rtol=1e9)
    assert not compare(check).ok


def test_an_entry_like_another_repeats_its_call_but_not_its_answer():
    first, second = (check for check in published("widths") if "mccormac-cracks" in check.id)
    assert (first.function, first.given, first.where) == (
        second.function,
        second.given,
        second.where,
    )
    assert first.expected != second.expected
    assert first.note != second.note


def test_every_source_of_a_width_rule_is_in_the_bibliography():
    from crackkit.mechanics.crack_limits import LIMITS
    from crackkit.mechanics.crack_width import all_widths
    from crackkit.mechanics.crack_zone import CrackZone

    zone = CrackZone(**frosch_zone())
    used = {each.source for each in all_widths(zone)}
    used |= {each.source for each in all_widths(replace(zone, action="tension"))}
    used |= {each.source for family in LIMITS.values() for each in family}
    assert used <= set(sources())


def test_a_table_can_be_asked_for_several_subjects():
    assert table("bars", "anchorage") == table("bars") + table("anchorage")
