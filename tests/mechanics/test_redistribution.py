"""Moments that move when a beam cracks, against statics, closed forms and SciPy."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.deflection import deflection_over_supports
from crackkit.mechanics.redistribution import redistributed
from crackkit.mechanics.tension_stiffening import mean_curvature

L, EI, MCR, LOAD = 6000.0, 3e13, 30e6, 20.0
KINDS = {"p": "pin", "f": "fixed"}


def held(letters, places=None, sunk=()):
    places = [L * i for i in range(len(letters))] if places is None else places
    sunk = [*sunk, *[0.0] * (len(letters) - len(sunk))]
    rows = zip(places, letters, sunk, strict=True)
    return [Support(at, KINDS[c], s) for at, c, s in rows]


def bent(supports, loads=None, length=None, count=200):
    """The elastic beam, and stations and moments with both sides of every jump."""
    length = supports[-1].at if length is None else length
    loads = [LineLoad(0.0, length, LOAD)] if loads is None else loads
    beam = solve(length, supports, loads, EI)
    x, M, _V, _q = beam.diagrams(count)
    return beam, x, M


def elastic(M):
    return M / EI


def cracked(ratio=0.3, beta=1.0, first=MCR):
    return lambda M: mean_curvature(M, first, EI, ratio * EI, beta)


BEAMS = {
    "three pins": held("ppp"),
    "settled": held("pppp", sunk=[0.0, 3.0, -2.0]),
    "fixed ends": held("fpf"),
    "fixed in the middle": held("pfp", sunk=[1.0]),
}


@pytest.mark.parametrize("supports", BEAMS.values(), ids=BEAMS.keys())
def test_uncracked_beam_keeps_its_elastic_moments(supports):
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, stiffness=EI)
    assert found.moment == pytest.approx(M, abs=1e-9 * np.abs(M).max())
    assert found.stands and found.converged


@pytest.mark.parametrize("supports", BEAMS.values(), ids=BEAMS.keys())
def test_elastic_moments_are_found_from_any_that_balance_the_loads(supports):
    """Simple spans to begin with; point loads leave the moments straight between stations."""
    loads = [PointLoad(5e4, 2500.0), PointLoad(7e4, 8000.0)]
    _beam, x, M = bent(supports, loads)
    simple = np.interp(x, [0.0, 2500.0, L], [0.0, 5e4 * 2500.0 * 3500.0 / L, 0.0])
    simple += np.interp(x, [L, 8000.0, 2 * L], [0.0, 7e4 * 2000.0 * 4000.0 / L, 0.0])
    found = redistributed(x, simple, supports, elastic)
    assert found.moment == pytest.approx(M, abs=1e-9 * np.abs(M).max())
    assert found.converged


@pytest.mark.parametrize(
    ("supports", "length"),
    [
        (held("pp", [1000.0, 5000.0]), L),
        ([Support(300.0, "fixed")], 1800.0),
        ([Support(0.0, "fixed")], 1800.0),
    ],
)
def test_statics_alone_rules_where_it_can(supports, length):
    _beam, x, M = bent(supports, length=length)
    found = redistributed(x, M, supports, cracked(first=1e5))
    assert (found.moment == M).all()
    assert found.stands and found.converged and found.kinks.size == 0
    stride = 0.002 * np.abs(M).max()
    low, high = cracked(first=1e5)(M + np.array([[-stride], [stride]]))
    assert (low <= found.curvature).all() and (found.curvature <= high).all()


def shot(first, ratio, beta):
    """Moment over the middle of two spans: the end reaction from SciPy, by shooting.

    Half the beam, w = 0 at its pin, w = 0 and w' = 0 over the middle.
    """
    law = cracked(ratio, beta, first)

    def end(reaction):
        def rates(s, y):
            return [y[1], -law(reaction * s - LOAD * s * s / 2)]

        # Leave out the slope at the pin: it is what brings the slope over the middle to zero.
        w, slope = solve_ivp(rates, (0.0, L), [0.0, 0.0], max_step=5.0, rtol=1e-9).y[:, -1]
        return w - slope * L

    reaction = brentq(end, 0.2 * LOAD * L, 0.5 * LOAD * L, rtol=1e-10)
    return reaction * L - LOAD * L * L / 2


@pytest.mark.parametrize(("ratio", "beta"), [(0.3, 1.0), (0.15, 1.0), (0.3, 0.5)])
def test_two_cracked_spans_agree_with_shooting(ratio, beta):
    supports = held("ppp")
    _beam, x, M = bent(supports, count=2001)
    found = redistributed(x, M, supports, cracked(ratio, beta), stiffness=EI)
    over = found.moment[x == L][0]
    # The step of beta = 0.5 is met within one station, and spread over a stride.
    assert over == pytest.approx(shot(MCR, ratio, beta), rel=1e-4 if beta == 1.0 else 1e-3)
    assert abs(over / M[x == L][0] - 1) > 0.02


def test_few_stations_already_come_close():
    supports = held("ppp")
    _beam, x, M = bent(supports, count=61)
    for law in (cracked(), cracked(beta=0.5)):
        _, fine, fine_M = bent(supports, count=4001)
        coarse = redistributed(x, M, supports, law, stiffness=EI).moment[x == L][0]
        fine = redistributed(fine, fine_M, supports, law, stiffness=EI).moment[fine == L][0]
        assert coarse == pytest.approx(fine, rel=0.02)


def test_hinge_in_the_middle_of_a_fixed_span_makes_two_cantilevers():
    supports = held("ff")
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, [L / 2], EI)
    assert found.moment[[0, -1]] == pytest.approx([-LOAD * L**2 / 8] * 2, rel=1e-9)
    assert found.moment[x == L / 2] == pytest.approx(0.0, abs=1.0)
    # Each cantilever of L/2 turns by q a3 / 6 EI at its tip: the hinge opens at the bottom.
    a = L / 2
    assert found.kinks == pytest.approx([2 * LOAD * a**3 / (6 * EI)], rel=1e-9)
    w = deflection_over_supports(x, found.curvature, supports, [L / 2], found.kinks)
    assert w[x == L / 2] == pytest.approx(LOAD * a**4 / (8 * EI), rel=1e-3)


def test_hinge_over_a_support_makes_two_simple_beams():
    supports = held("ppp", sunk=[0.0, 4.0])
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, [L], EI)
    sagging = LOAD * x * (L - x) / 2
    assert found.moment[x < L] == pytest.approx(sagging[x < L], abs=1.0)
    # Both ends turn by q L3 / 24 EI, and by the settlement: it opens at the top.
    assert found.kinks == pytest.approx([-2 * LOAD * L**3 / (24 * EI) + 2 * 4.0 / L], rel=1e-9)


def test_hinge_at_a_fixed_end_makes_it_a_pin():
    supports = held("fp")
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, [0.0], EI)
    assert found.moment == pytest.approx(LOAD * x * (L - x) / 2, abs=1.0)
    assert found.kinks == pytest.approx([-LOAD * L**3 / (24 * EI)], rel=1e-9)


def test_hinge_in_an_end_span_leaves_a_beam_that_statics_can_solve():
    """The outer piece is a simple beam from the pin to the hinge; its end sits on the inner one."""
    supports, a = held("ppp"), 4000.0
    _beam, x, M = bent(supports, count=13)
    found = redistributed(x, M, supports, cracked(), [a])
    assert found.stands and found.loose == ()
    reaction = LOAD * a / 2
    assert found.moment[x == L] == pytest.approx(reaction * L - LOAD * L * L / 2, rel=1e-9)


def test_kinked_beam_lies_on_all_supports():
    supports = held("pppp", sunk=[0.0, 2.0])
    _beam, x, M = bent(supports, count=400)
    found = redistributed(x, M, supports, cracked(), [2500.0, 2 * L])
    w = deflection_over_supports(x, found.curvature, supports, [2500.0, 2 * L], found.kinks)
    # Set down on the first two supports alone it meets the others too.
    two = [supports[0], supports[1]]
    free = deflection_over_supports(x, found.curvature, two, [2500.0, 2 * L], found.kinks)
    assert free == pytest.approx(w, abs=1e-6 * np.abs(w).max())


MECHANISMS = [
    ("pp", [2000.0], [2000.0]),
    ("ppp", [2000.0, 8000.0], [2000.0, 8000.0]),
    ("ppp", [L, 8000.0], [L, 8000.0]),
    ("ff", [0.0, 3000.0, L], [0.0, 3000.0, L]),
    ("pppp", [2000.0, 2500.0, 15000.0], [2000.0, 2500.0]),
]
STANDING = [
    ("ppp", [2000.0]),
    ("ff", [0.0, 3000.0]),
    ("ff", [3000.0]),
    ("pppp", [2000.0, 15000.0]),
    ("pp", [0.0, L]),
]


@pytest.mark.parametrize(("letters", "hinges", "loose"), MECHANISMS)
def test_too_many_hinges_make_a_mechanism(letters, hinges, loose):
    supports = held(letters)
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, hinges)
    assert not found.stands
    assert found.loose == tuple(loose)
    assert (found.moment == M).all()


@pytest.mark.parametrize(("letters", "hinges"), STANDING)
def test_a_beam_with_moments_to_spare_stands_on_hinges(letters, hinges):
    supports = held(letters)
    _beam, x, M = bent(supports)
    found = redistributed(x, M, supports, elastic, hinges)
    assert found.stands and found.converged
    there = np.isin(x, hinges)
    assert found.moment[there] == pytest.approx(np.zeros(there.sum()), abs=1e-7 * np.abs(M).max())


@pytest.mark.parametrize("at", [0.0, 500.0, 1000.0])
def test_a_cantilever_stands_on_no_hinge(at):
    _beam, x, M = bent([Support(0.0, "fixed")], length=1800.0, count=19)
    assert redistributed(x, M, [Support(0.0, "fixed")], elastic, [at]).loose == (at,)


def test_the_same_hinge_twice_is_one():
    supports = held("ppp")
    _beam, x, M = bent(supports)
    once = redistributed(x, M, supports, elastic, [2000.0])
    twice = redistributed(x, M, supports, elastic, [2000.0, 2000.0])
    assert twice.stands
    assert twice.kinks == pytest.approx([once.kinks[0], 0.0], rel=1e-12)


floors = st.tuples(
    st.sampled_from(["ppp", "pppp", "fpf", "fpp", "ppppppp"]),
    st.floats(2.0, 60.0),
    st.floats(0.05, 0.9),
    st.sampled_from([0.5, 1.0]),
    st.lists(st.floats(-2.0, 2.0), min_size=3, max_size=3),
)


@given(floors)
@settings(max_examples=60, deadline=None)
def test_moments_still_balance_the_loads_and_fit_the_supports(floor):
    letters, load, ratio, beta, sunk = floor
    supports = held(letters, sunk=sunk)
    length = supports[-1].at
    _beam, x, M = bent(supports, [LineLoad(0.0, length, load)])
    found = redistributed(x, M, supports, cracked(ratio, beta))
    assert found.converged
    # What was added is straight within each span.
    ends = np.interp(
        x, [s.at for s in supports], np.interp([s.at for s in supports], x, found.moment - M)
    )
    assert found.moment - M == pytest.approx(ends, abs=1e-9 * np.abs(M).max())
    # Set down on two neighbours alone, the bent beam meets all the others.
    w = deflection_over_supports(x, found.curvature, supports)
    free = deflection_over_supports(x, found.curvature, supports[:2])
    assert free == pytest.approx(w, abs=1e-5 * np.abs(w).max() + 1e-6)


@given(floors)
@settings(max_examples=40, deadline=None)
def test_curvature_is_that_of_the_moments_but_for_a_stride(floor):
    letters, load, ratio, beta, sunk = floor
    supports = held(letters, sunk=sunk)
    _beam, x, M = bent(supports, [LineLoad(0.0, supports[-1].at, load)])
    found = redistributed(x, M, supports, cracked(ratio, beta))
    stride = 0.002 * np.abs(M).max()
    low, high = cracked(ratio, beta)(found.moment + np.array([[-stride], [stride]]))
    slack = 1e-9 * np.abs(found.curvature).max()
    assert (low - slack <= found.curvature).all()
    assert (found.curvature <= high + slack).all()


@given(st.floats(5.0, 60.0), st.floats(0.1, 0.9), st.floats(0.05, 0.5))
@settings(max_examples=40, deadline=None)
def test_a_support_that_cracks_more_keeps_less_moment(load, ratio, softer):
    """Only the stretch around the inner support is made softer; the spans stay as they are."""
    supports = held("ppp")
    _beam, x, M = bent(supports, [LineLoad(0.0, 2 * L, load)])
    near = np.abs(x - L) < 1000.0
    over = [
        redistributed(x, M, supports, cracked(np.where(near, less, ratio))).moment[x == L][0]
        for less in (ratio, ratio * softer)
    ]
    assert over[1] >= over[0] - 1e-7 * np.abs(M).max()


def test_moments_follow_the_load_without_a_jump():
    """Even where the curvature steps at cracking: 200 small changes of load, no leap."""
    supports = held("pppp")
    _beam, x, M = bent(supports, count=100)
    law = cracked(0.2, 0.5)
    over = [
        redistributed(x, M * s, supports, law, stiffness=EI).moment[x == L][0]
        for s in np.linspace(0.3, 0.8, 201)
    ]
    steps = np.diff(over)
    assert np.abs(steps).max() < 4 * np.abs(steps).mean()


def test_what_nothing_holds_caps_the_moment():
    """No bars over the support: it turns there and passes its moment on, once cracked."""
    supports = held("ppp")
    _beam, x, M = bent(supports)
    bare = np.where(np.abs(x - L) < 800.0, 0.0, 0.9)
    found = redistributed(x, M, supports, cracked(bare))
    assert found.converged
    assert np.isfinite(found.curvature).all()
    assert found.moment[x == L][0] == pytest.approx(-MCR, rel=0.01)


def test_no_load_no_moment():
    supports = held("ppp")
    _beam, x, M = bent(supports, [])
    found = redistributed(x, M, supports, cracked())
    assert not found.moment.any() and not found.curvature.any()


def test_an_even_curvature_from_shrinkage_alone_bends_a_propped_beam():
    """Two spans, free curvature k: M = 3 EI k / 2 over the middle takes the hump away."""
    supports, k = held("ppp"), 1e-7
    x = np.linspace(0.0, 2 * L, 41)
    found = redistributed(x, np.zeros(41), supports, lambda M: M / EI + k)
    assert found.moment[20] == pytest.approx(-1.5 * EI * k, rel=1e-6)


def test_a_law_without_numbers_is_admitted():
    supports = held("ppp")
    _beam, x, M = bent(supports)
    assert not redistributed(x, M, supports, lambda M: M * np.nan).converged


@pytest.mark.parametrize(
    ("x", "M", "hinges", "complaint"),
    [
        ([0.0, L, 2 * L], [0.0, 0.0], [], "one moment"),
        ([0.0, 2 * L, L], [0.0, 0.0, 0.0], [], "left to right"),
        ([0.0, 2 * L], [0.0, 0.0], [], "be a station"),
        ([0.0, L, 2 * L], [0.0, 0.0, 0.0], [-1.0], "hinge lies outside"),
    ],
)
def test_senseless_input_is_refused(x, M, hinges, complaint):
    with pytest.raises(ValueError, match=complaint):
        redistributed(x, M, held("ppp"), elastic, hinges)
