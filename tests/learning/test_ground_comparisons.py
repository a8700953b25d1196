"""What is compared on a slab on the ground bears out what its lesson tells."""

from dataclasses import replace

import pytest

from crackkit.learning import ground
from crackkit.learning.comparison import compared, helped, measures
from crackkit.learning.ground_comparisons import comparisons
from crackkit.structures.fields import input_at
from crackkit.units import shown

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])


def asked(key, system="SI"):
    return next(each for each in comparisons(system) if each.key == key)


def helps(structure, key, system="SI"):
    """What each variant does, beside what stands there: number of the variant to how far."""
    comparison = asked(key, system)
    rows = compared(structure.solve(), comparison)
    found = measures(comparison, tuple(row.outcome for row in rows))
    now = next(one for row, one in zip(rows, found, strict=True) if row.present)
    return {row.place: helped(now, one) for row, one in zip(rows, found, strict=True)}


@SYSTEMS
def test_base_joints_bars_and_curing_can_be_compared(system):
    assert [each.key for each in comparisons(system)] == ["base", "joints", "bars", "curing"]


@SYSTEMS
def test_every_variant_can_be_built_on_the_floor_of_the_lesson(system):
    for comparison in comparisons(system):
        for row in compared(replace(ground.slab(system), jointed=True).solve(), comparison):
            assert row.error is None and not row.moved


@SYSTEMS
def test_each_variant_changes_inputs_that_there_are(system):
    for comparison in comparisons(system):
        assert len({each.label for each in comparison.variants}) == len(comparison.variants)
        for variant in comparison.variants:
            for path in variant.changes:
                assert input_at(ground.slab(system), path)


@SYSTEMS
def test_labels_are_in_the_readers_units(system):
    every = shown(ground.slab(system).joint_every, "length", system)
    assert every in asked("joints", system).variants[1].label
    assert ground.BARS[system]["steel"] in asked("bars", system).variants[1].label


@SYSTEMS
def test_sheets_between_walls_do_not_help_and_under_a_free_floor_they_do(system):
    walled = helps(replace(ground.walled_slab(system), base="subgrade"), "base", system)
    free = helps(replace(ground.slab(system), base="subgrade", age=3650.0), "base", system)
    assert walled[2] == "none"
    assert free[2] == "lot"


@SYSTEMS
def test_joints_that_are_cut_early_help_and_late_ones_do_not(system):
    assert helps(ground.walled_slab(system), "joints", system) == {0: "none", 1: "lot", 2: "none"}


@SYSTEMS
def test_bars_help_a_lot_where_they_lie_in_the_concrete(system):
    assert helps(ground.walled_slab(system), "bars", system) == {0: "none", 1: "lot", 3: "none"}


def test_bars_cut_at_joints_are_asked_about_only_where_there_are_joints():
    places = [set(helps(replace(ground.slab(), jointed=on), "bars")) for on in (False, True)]
    assert places[1] - places[0] == {2}


def test_curing_helps_a_little_and_puts_the_first_crack_off():
    rows = compared(ground.walled_slab().solve(), asked("curing"))
    first = [row.outcome.ground.first for row in rows if row.place is not None]
    assert first == sorted(first) and first[-1] > 2 * first[0]
    assert helps(ground.walled_slab(), "curing")[2] == "little"
