"""Slabs with cracks that bars cross: balance at every crack, and the law of the bars."""

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from crackkit.mechanics.friction_chain import Chain, Drag
from crackkit.mechanics.friction_zones import chain_state

ENDS = st.sampled_from([0.0, 20.0, 500.0, np.inf])


@st.composite
def cracked(draw):
    length = draw(st.floats(5000.0, 60000.0))
    shares = draw(st.lists(st.floats(0.03, 0.97), max_size=6, unique_by=lambda x: round(20 * x)))
    places, inf = length * np.sort(shares), np.full(2, np.inf)
    chain = Chain(np.array([0.0, length]), np.array([draw(ENDS), draw(ENDS)]), inf, inf)
    return chain.with_places(
        places, 0.0, draw(st.floats(50.0, 3000.0)), draw(st.floats(20.0, 900.0))
    )


drags = st.builds(
    lambda EH, eps, q, s: Drag(np.array([EH]), np.array([eps]), q, s),
    st.floats(1e6, 6e6),
    st.floats(2e-5, 8e-4),
    st.floats(0.0005, 0.01),
    st.floats(0.1, 2.0),
)


@given(cracked(), drags)
def test_both_sides_of_a_crack_are_pulled_by_what_its_bars_give(chain, drag):
    state = chain_state(chain, drag)
    bars = state.crossing_force[0]
    at = state.chain.places[state.chain.cracks]
    scale = 1e-8 * drag.stiffness[0] * drag.shortening[0]
    assert state.along(at)[1][0] == pytest.approx(bars, abs=scale + 1e-7)
    assert state.along(at + 1e-6)[1][0] == pytest.approx(bars, abs=scale + 1e-7)


@given(cracked(), drags)
def test_bars_yield_where_the_opening_asks_for_more_and_no_crack_overlaps(chain, drag):
    state = chain_state(chain, drag)
    at = state.chain.cracks
    asked = state.chain.crossing[at] * state.opening[0]
    assert np.array_equal(state.yields[0], asked > state.chain.capacity[at])
    assert np.all(state.opening >= -1e-9)
    assert np.all(state.crossing_force <= state.chain.capacity[at])


@given(cracked(), drags)
def test_slip_falls_from_left_to_right_in_every_piece(chain, drag):
    state = chain_state(chain, drag)
    assert np.all(state.end_slip <= state.start_slip + 1e-12)
    for k, (a, b) in enumerate(zip(state.chain.places[:-1], state.chain.places[1:], strict=True)):
        slip = state.along(np.linspace(a, b, 30)[1:])[0][0]
        assert np.all(np.diff(np.r_[state.start_slip[0, k], slip]) <= 1e-9)


@given(cracked(), drags, st.floats(1.0, 3.0))
def test_more_steel_never_widens_the_sum_of_the_cracks(chain, drag, times):
    more = Chain(chain.places, chain.ground, times * chain.crossing, times * chain.capacity)
    less, much = (chain_state(each, drag) for each in (chain, more))
    assert much.opening.sum() <= less.opening.sum() * (1 + 1e-6) + 1e-7


@given(cracked(), drags)
def test_a_guess_changes_nothing_but_the_way(chain, drag):
    later = Drag(0.9 * drag.stiffness, 1.2 * drag.shortening, drag.shear, drag.slip)
    cold, warm = chain_state(chain, later), chain_state(chain, later, chain_state(chain, drag))
    assert cold.opening == pytest.approx(warm.opening, rel=1e-6, abs=1e-7)


@given(cracked(), drags, st.floats(0.05, 0.95))
def test_the_slab_before_a_crack_is_a_guess_that_changes_nothing_but_the_way(chain, drag, share):
    at = share * chain.length
    assume(np.abs(chain.places - at).min() > 100.0)  # two cracks are not one
    more = chain.with_places([at], 0.0, 300.0, 100.0)
    cold, warm = chain_state(more, drag), chain_state(more, drag, chain_state(chain, drag))
    assert cold.opening == pytest.approx(warm.opening, rel=1e-6, abs=1e-7)


def test_bars_that_yield_on_both_sides_of_sliding_pieces_are_found_by_small_steps():
    """Newton's method alone runs in circles here: 35 m of slab slide as one between two bars."""
    places = np.array([0.0, 35000.0, 46500.0, 60000.0, 100000.0])
    inf = np.inf
    bars, most = np.full(5, 512.1054), np.full(5, 250.0)
    bars[[0, -1]] = most[[0, -1]] = inf
    drag = Drag(np.array([1786192.2688]), np.array([0.0006]), 0.0054, 0.5)
    state = chain_state(Chain(places, np.zeros(5), bars, most), drag)
    assert state.yields.tolist() == [[False, True, False]]
    assert state.crossing_force[0, 1] == 250.0
    force = state.along(places)[1][0]
    assert force[[0, -1]] == pytest.approx(0.0, abs=1e-6)
    assert force[1:-1] == pytest.approx(state.crossing_force[0], abs=1e-6)
