"""Comparisons work each variant out from what stands there, and say honestly how far it helps."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.learning import ground
from crackkit.learning.comparison import (
    Comparison,
    Measured,
    Variant,
    compared,
    helped,
    measures,
    summary,
)
from crackkit.learning.simple_beam import canteen_beam
from crackkit.structures.fields import fitted, inputs
from crackkit.structures.simple_beam import PointLoad

BASES = Comparison(
    "base",
    "Base",
    (
        Variant("gravel", {"base": "gravel"}),
        Variant("sand", {"base": "sand"}),
        Variant("sheets", {"base": "two_sheets"}),
    ),
)
JOINTS = Comparison(
    "joints",
    "Joints",
    (
        Variant("none", {"jointed": False}),
        Variant("cut", {"jointed": True, "joint_every": 4500.0}),
    ),
)
floor = ground.walled_slab()
shares = st.floats(0.0, 50.0)


def measured(value, bound=0.3):
    return Measured("", value, bound, "width")


def rows_of(structure, comparison):
    return compared(structure.solve(), comparison)


def test_a_variant_is_the_structure_solved_with_its_changes_and_nothing_else():
    for row, variant in zip(rows_of(floor, BASES), BASES.variants, strict=True):
        alone = fitted(floor, variant.changes)[0]
        assert row.outcome.structure == alone
        assert row.outcome.verdict == alone.solve().verdict
        differs = {i.path for i in inputs(alone) if i.value != getattr(floor, i.path)}
        assert differs <= set(variant.changes)


def test_all_else_is_as_it_stands():
    thick = replace(floor, thickness=220.0, age=900.0)
    for row in rows_of(thick, BASES):
        assert (row.outcome.structure.thickness, row.outcome.structure.age) == (220.0, 900.0)


def test_the_variant_that_stands_is_marked():
    assert [row.label for row in rows_of(floor, BASES) if row.present] == ["gravel"]
    sheets = replace(floor, base="two_sheets")
    assert [row.label for row in rows_of(sheets, BASES) if row.present] == ["sheets"]


def test_what_is_none_of_the_variants_comes_first_as_it_stands():
    rows = rows_of(replace(floor, base="sandstone"), BASES)
    assert [row.place for row in rows] == [None, 0, 1, 2]
    assert rows[0].present and not any(row.present for row in rows[1:])
    assert rows[0].outcome.structure.base == "sandstone"


def test_inputs_that_mean_nothing_now_do_not_keep_a_variant_from_being_marked():
    bars = Comparison("bars", "", (Variant("bars", {"steel": "12", "through": "through"}),))
    barred = replace(floor, steel="12")  # without joints it is all one whether bars are cut there
    assert [row.place for row in rows_of(barred, bars)] == [0]
    assert [row.place for row in rows_of(replace(barred, jointed=True), bars)] == [None, 0]


def test_a_variant_that_cannot_be_built_says_why_and_the_others_stand():
    rows = rows_of(replace(floor, length=4000.0, joint_every=3000.0), JOINTS)
    assert rows[0].outcome is not None and rows[0].error is None
    assert rows[1].outcome is None
    assert rows[1].error.path == "joint_every" and rows[1].error.high == 4000.0


def test_variants_that_mean_nothing_are_left_out():
    asked = Comparison(
        "x", "", (*JOINTS.variants, Variant("y", {"cut": 0.3}, lambda it: it.jointed))
    )
    assert [row.place for row in rows_of(floor, asked)] == [0, 1]
    assert [row.place for row in rows_of(replace(floor, jointed=True), asked)] == [0, 1, 2]


def test_once_something_has_cracked_widths_are_compared_with_their_limit():
    rows = rows_of(floor, BASES)
    outcomes = tuple(row.outcome for row in rows)
    for one, outcome in zip(measures(BASES, outcomes), outcomes, strict=True):
        assert (one.value, one.bound) == (outcome.verdict.width, outcome.verdict.limit.width)


def test_where_nothing_has_cracked_the_pull_is_compared_with_the_strength():
    outcomes = tuple(row.outcome for row in rows_of(ground.slab(), BASES))
    found = measures(BASES, outcomes)
    assert all(0.0 < one.value < one.bound == 1.0 for one in found)
    assert found[2].value < found[1].value < found[0].value  # less friction, less pull


def test_a_crack_that_nothing_holds_is_worse_than_any_width():
    beam = canteen_beam()
    beam = replace(beam, loads=(PointLoad(90e3, beam.loads[0].at),))
    without = Comparison("bars", "", (Variant("none", {"bottom.number": 0}),))
    rows = rows_of(beam, without)
    now, then = measures(without, tuple(row.outcome for row in rows))
    assert now.value < math.inf == then.value
    assert helped(now, then) == "worse"
    assert helped(then, now) == "lot"


def test_a_comparison_may_bring_its_own_measure():
    asked = replace(BASES, measure=lambda it: Measured("mass", it.structure.mass, 1.0, "ratio"))
    outcomes = tuple(row.outcome for row in rows_of(floor, BASES))
    assert [one.label for one in measures(asked, outcomes)] == ["mass"] * 3


@pytest.mark.parametrize(
    ("now", "then", "told"),
    [
        (1.0, 0.5, "lot"),
        (1.0, 0.51, "little"),
        (1.0, 0.96, "none"),
        (1.0, 1.04, "none"),
        (1.0, 1.06, "worse"),
        (0.0, 1.0, "worse"),
        (1.0, 0.0, "lot"),
        (0.0, 0.0, ""),
        (math.inf, math.inf, "none"),
    ],
)
def test_how_far_a_means_helps(now, then, told):
    assert helped(measured(now), measured(then)) == told


@given(shares, shares)
def test_what_helps_one_way_never_helps_the_other_way(a, b):
    there, back = (helped(measured(p), measured(q)) for p, q in ((a, b), (b, a)))
    assert not {there, back} <= {"lot", "little"}


@given(shares, shares, shares)
def test_less_never_helps_less(now, a, b):
    rank = {"worse": 0, "none": 1, "": 1, "little": 2, "lot": 3}
    low, high = sorted((a, b))
    found = [rank[helped(measured(now), measured(one))] for one in (low, high)]
    assert found[0] >= found[1] or max(now, low) / 0.3 < 0.05


def test_a_bent_member_is_summed_up_by_its_cracks_and_bars():
    outcome = canteen_beam().solve()
    assert {each.key for each in summary(outcome)} == {"cracks", "mass"}
    assert summary(floor.solve()) == floor.solve().numbers
