"""Chains of pieces: closed forms of a zone, and what adding places changes and does not."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.friction_chain import Chain, Drag, slid, stuck
from crackkit.mechanics.friction_zones import chain_state
from crackkit.mechanics.slab_on_friction import Strip

WHOLE = Chain(np.array([0.0, 9000.0]), np.zeros(2), np.full(2, np.inf), np.full(2, np.inf))
DRAG = Drag(np.array([2.25e6, 1.5e6]), np.array([2e-4, 5e-4]), 0.0054, 0.5)


@given(st.floats(-3, 3), st.floats(-1e-3, 0), st.floats(0, 4000), st.floats(0, 4000))
def test_two_steps_through_a_zone_are_one_long_step(slip, slope, first, second):
    for step, constant in ((slid, 2.4e-9), (stuck, 7e-5)):
        halfway = step(slip, slope, constant, first)
        assert step(*halfway, constant, second) == pytest.approx(
            step(slip, slope, constant, first + second), rel=1e-9, abs=1e-12
        )


def test_places_are_kept_in_order_and_cracks_are_found():
    chain = WHOLE.with_places([6000.0, 2000.0], 0.0, [0.0, 50.0], [0.0, 9.0])
    assert chain.places.tolist() == [0.0, 2000.0, 6000.0, 9000.0]
    assert chain.cracks.tolist() == [1, 2]
    assert chain.crossing[1:3].tolist() == [50.0, 0.0]
    assert chain.lengths.tolist() == [2000.0, 4000.0, 3000.0]
    assert chain.length == 9000.0


def test_no_stretch_is_longer_than_four_fading_lengths():
    chain = WHOLE.with_places([500.0]).in_stretches(700.0)
    assert chain.lengths.max() <= 4 * 700.0
    assert {0.0, 500.0, 9000.0} <= set(chain.places)
    assert WHOLE.in_stretches(3000.0) is WHOLE


@given(st.lists(st.floats(1.0, 8999.0), min_size=1, max_size=5, unique_by=round))
def test_looking_at_a_whole_slab_in_pieces_changes_nothing(places):
    whole, cut = (chain_state(chain, DRAG) for chain in (WHOLE, WHOLE.with_places(places)))
    x = np.linspace(0, 9000, 301)
    for one, other in zip(whole.along(x), cut.along(x), strict=True):
        assert one == pytest.approx(other, rel=1e-7, abs=1e-7)


@given(st.lists(st.floats(1.0, 8999.0), max_size=5, unique_by=round))
def test_the_force_alone_is_that_told_with_the_slip(places):
    state = chain_state(WHOLE.with_places(places, 0.0, 300.0, 100.0), DRAG)
    x = np.linspace(0, 9000, 301)
    assert state.force(x) == pytest.approx(state.along(x)[1], rel=1e-12, abs=1e-9)


def test_the_answer_until_an_age_is_that_of_the_ages_up_to_it():
    state = chain_state(WHOLE.with_places([3000.0], 0.0, 300.0, 100.0), DRAG)
    early, x = state.until(0), np.linspace(0, 9000, 31)
    assert np.array_equal(early.opening, state.opening[:1])
    assert np.array_equal(early.along(x)[0], state.along(x)[0][:1])


def test_a_slab_without_friction_fades_over_ten_thousand_lengths():
    free = Drag(np.array([2e6]), np.array([1e-4]), 0.0, 0.5)
    assert free.rate(9000.0) == pytest.approx(1e-4 / 9000.0)
    assert DRAG.rate(9000.0)[:, 0] == pytest.approx(np.sqrt(0.0054 / (0.5 * DRAG.stiffness)))


def test_a_crack_without_bars_makes_two_slabs_of_one():
    cracked = chain_state(WHOLE.with_places([3000.0], 0.0, 0.0, 0.0), DRAG)
    x = np.linspace(0, 6000, 101)
    alone = chain_state(Strip(6000.0, 150.0, 0.0054, 0.5).chain, DRAG)
    beside = cracked.along(3000.0 + 1e-9 + x[:-1])[1]
    assert beside == pytest.approx(alone.along(x[:-1])[1], rel=1e-6, abs=1e-6)
    short = chain_state(Strip(3000.0, 150.0, 0.0054, 0.5).chain, DRAG)
    ends = alone.start_slip[:, 0] - short.end_slip[:, -1]
    assert cracked.opening[:, 0] == pytest.approx(ends, rel=1e-8)
    assert cracked.crossing_force == pytest.approx(0.0, abs=1e-9)
