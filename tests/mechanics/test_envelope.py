"""Bounds of the moments against every arrangement tried out one by one."""

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.envelope import moment_envelope

SPAN, EI = 6000.0, 2e13


def span_loads(places, intensities):
    pairs = zip(places, places[1:], strict=False)
    return [LineLoad(a, b, q) for (a, b), q in zip(pairs, intensities, strict=True)]


@st.composite
def floors(draw):
    """Two to four spans, ends pinned or fixed, settlements, one or two travelling forces."""
    spans = draw(st.lists(st.integers(3, 9), min_size=2, max_size=4))
    places = [0.0, *(1000.0 * np.cumsum(spans)).tolist()]
    kinds = ["pin"] * len(places)
    for end in (0, -1):
        kinds[end] = draw(st.sampled_from(["pin", "fixed"]))
    sunk = [draw(st.floats(-3.0, 3.0)) for _ in places]
    supports = [Support(*held) for held in zip(places, kinds, sunk, strict=True)]
    live = span_loads(places, [draw(st.floats(1.0, 40.0)) for _ in spans])
    forces = draw(st.lists(st.floats(-5e4, 9e4), min_size=1, max_size=2))
    return places, supports, live, forces


@given(floors())
@settings(max_examples=15, deadline=None)
def test_bounds_are_those_of_every_arrangement_tried_out(floor):
    places, supports, live, forces = floor
    length = places[-1]
    always = [LineLoad(0.0, length, 8.0)]
    positions = np.linspace(0.0, length, 5)
    x = np.unique(np.concatenate([places, np.linspace(0.0, length, 31)]))
    found = moment_envelope(length, supports, always, live, forces, positions, x, EI)

    tried = []
    for present in product([False, True], repeat=len(live)):
        loads = always + [load for load, on in zip(live, present, strict=True) if on]
        for at in product([None, *positions], repeat=len(forces)):
            rolling = [PointLoad(F, a) for F, a in zip(forces, at, strict=True) if a is not None]
            tried.append(solve(length, supports, loads + rolling, EI).moment(x))
    slack = 1e-9 * np.abs(tried).max()
    assert found.sagging == pytest.approx(np.max(tried, axis=0), abs=slack)
    assert found.hogging == pytest.approx(np.min(tried, axis=0), abs=slack)


@given(floors())
@settings(max_examples=15, deadline=None)
def test_the_arrangement_that_is_named_gives_the_bound(floor):
    places, supports, live, forces = floor
    length = places[-1]
    positions = np.linspace(0.0, length, 23)
    x = np.unique(np.concatenate([places, np.linspace(0.0, length, 9)]))
    found = moment_envelope(length, supports, [], live, forces, positions, x, EI)
    slack = 1e-9 * np.abs([found.sagging, found.hogging]).max()
    bounds = (
        (found.sagging, found.live_sagging, found.at_sagging),
        (found.hogging, found.live_hogging, found.at_hogging),
    )
    for moment, there, at in bounds:
        for k, place in enumerate(x):
            loads = [load for load, on in zip(live, there[:, k], strict=True) if on]
            rolling = zip(forces, at[:, k], strict=True)
            loads += [PointLoad(F, a) for F, a in rolling if not np.isnan(a)]
            exact = solve(length, supports, loads, EI).moment(place)
            assert moment[k] == pytest.approx(exact, abs=slack)


def equal_floor(spans, x, forces=(), live=True):
    places = [SPAN * i for i in range(spans + 1)]
    loads = span_loads(places, [10.0] * spans) if live else []
    supports = [Support(at) for at in places]
    positions = np.linspace(0.0, places[-1], 241)
    return moment_envelope(places[-1], supports, [], loads, forces, positions, x)


def test_live_load_lies_where_builders_are_taught_to_put_it():
    """Own span and every second one for sagging; both neighbours, then every second, to hog."""
    found = equal_floor(5, np.array([0.45, 1.5, 2.5, 1.0, 2.0]) * SPAN)
    there = [(np.flatnonzero(row) + 1).tolist() for row in found.live_sagging.T[:3]]
    assert there == [[1, 3, 5], [2, 4], [1, 3, 5]]
    there = [(np.flatnonzero(row) + 1).tolist() for row in found.live_hogging.T[3:]]
    assert there == [[1, 2, 4], [2, 3, 5]]


def test_mirrored_floor_has_mirrored_bounds():
    x = np.linspace(0.0, 3 * SPAN, 61)
    found = equal_floor(3, x, [4e4])
    for bound in (found.sagging, found.hogging):
        assert bound[::-1] == pytest.approx(bound, abs=1e-9 * np.abs(bound).max())
    assert (found.live_sagging[::-1, ::-1] == found.live_sagging).all()


def test_bounds_of_live_load_and_force_add_up():
    x = np.linspace(0.0, 3 * SPAN, 61)
    both = equal_floor(3, x, [4e4, 2e4])
    live, rolling = equal_floor(3, x), equal_floor(3, x, [6e4], live=False)
    for bound in ("sagging", "hogging"):
        total = getattr(live, bound) + getattr(rolling, bound)
        assert getattr(both, bound) == pytest.approx(total, abs=1e-3)


def test_nothing_that_comes_and_goes_leaves_what_is_always_there():
    x = np.linspace(0.0, 2 * SPAN, 41)
    supports = [Support(0.0), Support(SPAN, settlement=3.0), Support(2 * SPAN)]
    always = [LineLoad(0.0, 2 * SPAN, 7.0)]
    found = moment_envelope(2 * SPAN, supports, always, [], [], [], x, EI)
    exact = solve(2 * SPAN, supports, always, EI).moment(x)
    assert found.sagging == pytest.approx(exact, abs=1e-9 * np.abs(exact).max())
    assert (found.hogging == found.sagging).all()
    assert found.live_sagging.shape == found.at_sagging.shape == (0, 41)


def test_live_load_on_a_free_end_counts_as_one_more():
    supports = [Support(2000.0), Support(8000.0)]
    live = [LineLoad(0.0, 2000.0, 10.0), [LineLoad(2000.0, 8000.0, 10.0), PointLoad(1e4, 5000.0)]]
    found = moment_envelope(8000.0, supports, [], live, [], [], [2000.0, 5000.0])
    assert found.hogging == pytest.approx([-2e7, -1e7], rel=1e-9)
    assert found.sagging == pytest.approx([0.0, 10.0 * 6000**2 / 8 + 1e4 * 6000 / 4], abs=1e-3)
    assert found.live_sagging.tolist() == [[False, False], [False, True]]


def test_side_chooses_the_moment_at_an_inner_fixed_support():
    supports = [Support(0.0), Support(SPAN, "fixed"), Support(2 * SPAN)]
    live = [LineLoad(0.0, SPAN, 8.0), LineLoad(SPAN, 2 * SPAN, 8.0)]
    for side, span in (("left", [True, False]), ("right", [False, True])):
        found = moment_envelope(2 * SPAN, supports, [], live, [], [], [SPAN], 1.0, side)
        assert found.hogging == pytest.approx([-8.0 * SPAN**2 / 8], rel=1e-9)
        assert found.live_hogging[:, 0].tolist() == span


def test_two_span_peak_under_a_travelling_force():
    """Hogging at most P L / (6 sqrt 3), the force at L / sqrt 3 (calculus, any textbook)."""
    found = equal_floor(2, [SPAN], [5e4], live=False)
    assert found.hogging[0] == pytest.approx(-5e4 * SPAN / (6 * np.sqrt(3)), rel=1e-4)
    apart = min(abs(found.at_hogging[0, 0] - SPAN * p) for p in (3**-0.5, 2 - 3**-0.5))
    assert apart < 50.0


def test_load_off_the_floor_is_refused():
    with pytest.raises(ValueError, match="outside"):
        moment_envelope(SPAN, [Support(0.0), Support(SPAN)], [], [], [1.0], [SPAN + 1.0], [0.0])
