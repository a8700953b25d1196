"""Cracks of a slab through ten years: where, when, how wide, and what may never happen."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from crackkit.mechanics.bond import ribbed_bond
from crackkit.mechanics.slab_cracks import (
    NOTHING,
    Crossing,
    SlabLife,
    bars_across,
    slab_cracks,
)
from crackkit.mechanics.slab_on_friction import Strip, grip_stiffness, strip_state
from crackkit.mechanics.strength_along import tensile_strength_along
from tests.mechanics.slabs import AGES, MODULUS, drying_life, strips

BOND = ribbed_bond(38.0, 6.0)


def bars(area, diameter=10.0):
    return bars_across(area, diameter, 150.0, 500.0, BOND, 30000.0)


def slab(length=20000.0, degree=0.5, slip=0.5):
    k = grip_stiffness(degree, MODULUS, 150.0, length)
    return Strip(length, 150.0, 1.5 * 2.4e-5 * 150, slip, k, k)


def test_a_short_free_slab_stays_whole_and_a_held_one_cracks():
    life = drying_life()
    assert len(slab_cracks(slab(6000.0, 0.0), life).age) == 0
    assert len(slab_cracks(slab(6000.0, 1.0), life).age) >= 1


def test_even_concrete_between_even_grips_cracks_in_the_middle():
    cracks = slab_cracks(slab(degree=0.4), drying_life())
    assert cracks.position[0] == pytest.approx(10000.0)


def test_the_first_crack_comes_when_the_stress_of_the_whole_slab_reaches_the_strength():
    strip, life = slab(degree=0.4), drying_life()
    cracks = slab_cracks(strip, life)
    born = cracks.age[0]
    eps, E, strengths = life.at(born)
    assert strip_state(strip, E, eps).stress[100] == pytest.approx(strengths[100], rel=2e-3)
    before = born > AGES
    stress = strip_state(strip, life.modulus, life.shortening).stress[before, 100]
    assert np.all(stress <= life.strength[before, 100])


@pytest.mark.parametrize("crossing", [NOTHING, bars(0.6), bars(2.0)], ids=["none", "few", "many"])
def test_the_tension_told_is_the_greatest_stress_over_strength_of_each_state(crossing):
    life = drying_life(scatter=tensile_strength_along(20000.0, 201, 1.0, 0.1, 3, 600.0))
    cracks = slab_cracks(slab(degree=0.9), life, crossing, 40)
    assert cracks.complete and len(cracks.age) >= 1
    felt = [cracks.felt_stress(age)[1:-1] / life.at(age)[2][1:-1] for age in AGES]
    assert cracks.tension == pytest.approx(np.max(felt, axis=1), rel=1e-9)
    assert cracks.tension.max() <= 1.0 + 1e-6


def test_the_weakest_place_tears_first_where_the_stress_is_even():
    weak = np.ones(201)
    weak[37] = 0.7
    strip = replace(slab(degree=1.0), shear=0.0)
    assert slab_cracks(strip, drying_life(scatter=weak)).position[0] == pytest.approx(3700.0)


def test_without_bars_a_crack_is_a_free_end_as_wide_as_both_slips():
    cracks = slab_cracks(slab(degree=0.9), drying_life())
    state = cracks.state(3650.0)
    x = np.sort(cracks.position)
    slip, force = (each[0] for each in state.along(x))
    beside = state.along(x + 1e-6)[0][0]
    assert force == pytest.approx(0.0, abs=1e-6)
    assert state.opening[0] == pytest.approx(beside - slip, abs=1e-6)
    assert cracks.width[-1][np.argsort(cracks.position)] == pytest.approx(
        state.opening[0], rel=1e-6
    )


def test_widths_are_noted_from_birth_on_and_are_those_of_the_state_at_that_age():
    cracks = slab_cracks(slab(degree=1.0), drying_life(), bars(1.0))
    assert len(cracks.age) > 3
    for k in (20, 40, 59):
        born = cracks.age <= AGES[k]
        assert np.all(cracks.width[k][~born] == 0)
        order = np.argsort(cracks.position[born])
        widths = cracks.state(AGES[k]).opening[0]
        assert cracks.width[k][born][order] == pytest.approx(widths, rel=1e-5, abs=1e-7)


def test_after_the_last_crack_no_place_is_stressed_beyond_its_strength():
    scatter = tensile_strength_along(20000.0, 201, 1.0, 0.08, 3)
    life = drying_life(scatter=scatter)
    for crossing in (NOTHING, bars(0.15), bars(1.1)):
        cracks = slab_cracks(slab(degree=0.9), life, crossing, most=60)
        assert cracks.complete
        x = np.linspace(0, 20000.0, 201)
        away = np.abs(x[:, None] - cracks.position).min(axis=1)
        for k in range(10, 60, 7):
            stress = cracks.state(AGES[k]).along(x)[1][0] / 150
            share = np.minimum(away / max(crossing.reach, 1e-9), 1)
            if np.all(np.abs(cracks.age - AGES[k]) > 1e-9):
                inside = slice(1, -1)  # at its ends the slab is parted as it is
                assert np.all((share * stress)[inside] <= life.strength[k, inside] * (1 + 1e-6))


def test_little_steel_yields_in_one_wide_crack_and_enough_makes_many_fine_ones():
    life = drying_life(scatter=tensile_strength_along(20000.0, 201, 1.0, 0.08, 1))
    plain, mesh, mat = (
        slab_cracks(slab(degree=1.0), life, crossing, most=60)
        for crossing in (NOTHING, bars(0.15), bars(1.2))
    )
    assert len(plain.age) <= len(mesh.age) < len(mat.age)
    assert mat.width[-1].max() < 0.5 < mesh.width[-1].max() < plain.width[-1].max() * 1.001
    assert mesh.state(3650.0).yields.any()
    assert not mat.state(3650.0).yields.any()


@settings(max_examples=25)
@given(strips(longest=30000.0), st.floats(0.05, 1.5), st.floats(1.2, 3.0))
def test_more_steel_never_widens_the_cracks_that_are_there(strip, area, times):
    crossings = [
        bars_across(a, 10.0, strip.thickness, 500.0, BOND, 3e4) for a in (area, times * area)
    ]
    less = slab_cracks(strip, drying_life(), crossings[0], most=8)
    assume(len(less.age))
    more = replace(less, crossing=crossings[1])
    sums = [each.state(3650.0).opening.sum() for each in (less, more)]
    assert sums[1] <= sums[0] * (1 + 1e-6) + 1e-6


@settings(max_examples=25)
@given(strips(longest=30000.0))
def test_seen_from_behind_the_cracks_are_mirrored(strip):
    scatter = 1 + 0.05 * np.sin(np.linspace(0.3, 5.0, 201))
    other = replace(strip, left=strip.right, right=strip.left)
    here = slab_cracks(strip, drying_life(scatter=scatter))
    there = slab_cracks(other, drying_life(scatter=scatter[::-1]))
    assert len(here.age) == len(there.age)
    assert here.age == pytest.approx(there.age, rel=1e-6)
    assert np.sort(here.position) == pytest.approx(np.sort(strip.length - there.position), abs=1e-6)


@settings(max_examples=25)
@given(strips(longest=40000.0, held=False), st.floats(0.2, 1.0))
def test_a_shorter_free_slab_never_cracks_earlier(strip, part):
    short = replace(strip, length=part * strip.length)
    long, less = (slab_cracks(s, drying_life(0.8), most=3).age for s in (strip, short))
    assert not len(less) or less[0] >= long[0] - 1e-9


@settings(max_examples=25)
@given(strips(longest=40000.0), st.sampled_from([NOTHING, Crossing(400.0, 120.0, 300.0)]))
def test_cracks_are_born_in_order_at_different_places_inside_of_the_slab(strip, crossing):
    cracks = slab_cracks(strip, drying_life(), crossing)
    assert np.all(np.diff(cracks.age) >= 0)
    assert len(set(cracks.position)) == len(cracks.position)
    assert np.all((cracks.position > 0) & (cracks.position < strip.length))
    assert np.all(cracks.width >= -1e-9)


def test_the_search_ends_with_the_most_cracks_asked_for_and_says_so():
    cracks = slab_cracks(slab(degree=1.0), drying_life(), bars(1.2), most=3)
    assert len(cracks.age) == 3 and not cracks.complete
    assert np.all(cracks.width[-1] > 0)


def test_the_moment_before_a_birth_the_crack_is_not_there():
    cracks = slab_cracks(slab(degree=0.4), drying_life())
    born = cracks.age[0]
    assert cracks.state(born, before=True).opening.size == 0
    assert cracks.state(born).opening.size == 1


def test_bars_are_a_spring_that_yields_where_the_bond_law_says():
    """Thick bars for the same area slip more; the force is As fy; both from the bond law."""
    thin, thick = bars(0.5, 6.0), bars(0.5, 12.0)
    assert thin.capacity == thick.capacity == pytest.approx(250.0)
    assert thin.stiffness > thick.stiffness
    kappa = 4 * 0.5 / 12.0 * (1 / (0.5 * 2e5) + 1 / (150 * 3e4))
    slip = 0.5 * thick.capacity / thick.stiffness
    assert BOND.work(slip) == pytest.approx(0.0025**2 / (2 * kappa), rel=1e-9)
    assert thick.reach > thin.reach > 50


@pytest.mark.parametrize(
    "wrong",
    [
        {"ages": np.array([1.0, 1.0, 2.0])},
        {"ages": np.array([1.0, 2.0])},
        {"strength": np.array([2.0, 0.0, 2.0])},
        {"modulus": np.array([2.0, -1.0, 2.0])},
    ],
)
def test_a_life_without_order_or_strength_is_refused(wrong):
    three = np.array([1.0, 2.0, 3.0])
    given_ = {"ages": three, "shortening": 1e-4 * three, "modulus": 1e4 * three, "strength": three}
    with pytest.raises(ValueError, match=r"ages that grow|greater than zero"):
        SlabLife(**given_ | wrong)
