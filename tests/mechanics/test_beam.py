"""Beams against printed coefficients and closed forms."""

from fractions import Fraction as F

import numpy as np
import pytest

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve

SPAN, LOAD, EI = 6000.0, 24.0, 3e13
FORCE = 50e3


def continuous(spans, loaded=None):
    supports = [Support(SPAN * i) for i in range(spans + 1)]
    loaded = range(1, spans + 1) if loaded is None else loaded
    loads = [LineLoad(SPAN * (i - 1), SPAN * i, LOAD) for i in loaded]
    return solve(spans * SPAN, supports, loads, EI)


def inner_supports(spans):
    return SPAN * np.arange(1, spans)


# Hicks, Civil Engineering Formulas, table 2.1 (uniform load on all of equal spans), p. 50:
# reaction at the end; moments over the inner supports from the left, up to the middle.
HICKS = {
    1: (F(1, 2), []),
    2: (F(3, 8), [F(1, 8)]),
    3: (F(4, 10), [F(1, 10)]),
    4: (F(11, 28), [F(3, 28), F(2, 28)]),
    5: (F(15, 38), [F(4, 38), F(3, 38)]),
}
HICKS_SHEARS = {  # just left and just right of the inner supports
    2: [(F(5, 8), F(5, 8))],
    3: [(F(6, 10), F(5, 10))],
    4: [(F(17, 28), F(15, 28)), (F(13, 28), F(13, 28))],
    5: [(F(23, 38), F(20, 38)), (F(18, 38), F(19, 38))],
}
HICKS_SPAN_MOMENTS = {  # largest moment of a span and its place in that span, as printed
    1: [(0.125, 0.500)],
    2: [(0.0703, 0.375)],
    3: [(0.080, 0.400), (0.025, 0.500)],
    4: [(0.0772, 0.393), (0.0364, 0.536)],
    5: [(0.0779, 0.395), (0.0332, 0.526), (0.0461, 0.500)],
}


@pytest.mark.parametrize("spans", HICKS)
def test_equal_spans_give_the_printed_fractions(spans):
    end, over_supports = HICKS[spans]
    beam = continuous(spans)
    assert beam.reactions[0] / (LOAD * SPAN) == pytest.approx(float(end), rel=1e-12)
    moments = -beam.moment(inner_supports(spans)) / (LOAD * SPAN**2)
    expected = [float(m) for m in over_supports]
    assert moments[: len(expected)] == pytest.approx(expected, rel=1e-12)
    assert moments[::-1] == pytest.approx(moments, rel=1e-12)


@pytest.mark.parametrize("spans", HICKS_SHEARS)
def test_shears_at_inner_supports_are_the_printed_fractions(spans):
    beam = continuous(spans)
    for place, (left, right) in zip(inner_supports(spans), HICKS_SHEARS[spans], strict=False):
        assert beam.shear(place, "left") / (LOAD * SPAN) == pytest.approx(-float(left), rel=1e-12)
        assert beam.shear(place, "right") / (LOAD * SPAN) == pytest.approx(float(right), rel=1e-12)


@pytest.mark.parametrize("spans", HICKS_SPAN_MOMENTS)
def test_largest_span_moments_are_found_where_they_are_printed(spans):
    beam = continuous(spans)
    x = beam.stations()
    for number, (moment, place) in enumerate(HICKS_SPAN_MOMENTS[spans]):
        here = x[(x >= number * SPAN) & (x <= (number + 1) * SPAN)]
        peak = here[np.argmax(beam.moment(here))]
        assert beam.moment(peak) / (LOAD * SPAN**2) == pytest.approx(moment, abs=5.01e-5)
        assert peak / SPAN - number == pytest.approx(place, abs=5.01e-4)


# Point loads in the middle of each of equal spans; standard tables, from memory.
@pytest.mark.parametrize(("spans", "support"), [(2, F(6, 32)), (3, F(3, 20)), (4, F(9, 56))])
def test_middle_point_loads_give_the_printed_support_moment(spans, support):
    loads = [PointLoad(FORCE, SPAN * (i + 0.5)) for i in range(spans)]
    beam = solve(spans * SPAN, [Support(SPAN * i) for i in range(spans + 1)], loads, EI)
    assert -beam.moment(SPAN) / (FORCE * SPAN) == pytest.approx(float(support), rel=1e-12)


# Loads on some of the spans. Handbook-type coefficients (from memory, to the digits shown).
PATTERNS = [
    (2, (1,), [0.0625], [7 / 16, 10 / 16, -1 / 16]),
    (3, (1, 3), [0.05, 0.05], [0.45, 0.55, 0.55, 0.45]),
    (3, (2,), [0.05, 0.05], [-0.05, 0.55, 0.55, -0.05]),
    (5, (1, 3, 5), [0.0526, 0.0395, 0.0395, 0.0526], [0.4474, 0.5658, 0.4868]),
    (5, (2, 4), [0.0526, 0.0395, 0.0395, 0.0526], [-0.0526, 0.5658, 0.4868]),
    (5, (1, 2, 4), [0.1196, 0.0215, 0.0443, 0.0514], [0.3804, 1.2177, 0.3792, 0.5156]),
]


@pytest.mark.parametrize(("spans", "loaded", "moments", "reactions"), PATTERNS)
def test_loads_on_some_spans_give_the_handbook_moments(spans, loaded, moments, reactions):
    beam = continuous(spans, loaded)
    over = -beam.moment(inner_supports(spans)) / (LOAD * SPAN**2)
    assert over == pytest.approx(moments, abs=5.01e-5)
    pushes = beam.reactions[: len(reactions)] / (LOAD * SPAN)
    assert pushes == pytest.approx(reactions, abs=5.01e-5)


# Largest deflection in wL4/EI: 3 spans 0.0069; 2 spans 0.0054 = 1/185 (textbooks, from memory).
@pytest.mark.parametrize(
    ("spans", "place", "coefficient"), [(2, 0.4215, 0.0054), (3, 0.446, 0.0069)]
)
def test_largest_deflection_of_equal_spans(spans, place, coefficient):
    beam = continuous(spans)
    x = np.linspace(0.0, SPAN, 20001)
    w = beam.deflection(x)
    assert x[np.argmax(w)] / SPAN == pytest.approx(place, abs=1e-3)
    assert w.max() * EI / (LOAD * SPAN**4) == pytest.approx(coefficient, abs=5.01e-5)


# Single spans; the standard closed forms: (left kind, right kind, load, left moment,
# moment in the middle, deflection in the middle).
L, w, P = SPAN, LOAD, FORCE
UNIFORM, MIDDLE = [LineLoad(0.0, L, w)], [PointLoad(P, L / 2)]
CLOSED_FORMS = [
    ("pin", "pin", UNIFORM, 0.0, w * L**2 / 8, 5 * w * L**4 / 384),
    ("pin", "pin", MIDDLE, 0.0, P * L / 4, P * L**3 / 48),
    ("fixed", "fixed", UNIFORM, -w * L**2 / 12, w * L**2 / 24, w * L**4 / 384),
    ("fixed", "fixed", MIDDLE, -P * L / 8, P * L / 8, P * L**3 / 192),
    ("fixed", "pin", UNIFORM, -w * L**2 / 8, w * L**2 / 16, w * L**4 / 192),
    ("fixed", "pin", MIDDLE, -3 * P * L / 16, 5 * P * L / 32, 7 * P * L**3 / 768),
    ("fixed", "fixed", [LineLoad(0.0, L, 0.0, w)], -w * L**2 / 30, w * L**2 / 48, w * L**4 / 768),
]


@pytest.mark.parametrize(("left", "right", "loads", "end", "middle", "sag"), CLOSED_FORMS)
def test_single_span_matches_its_closed_form(left, right, loads, end, middle, sag):
    beam = solve(L, [Support(0.0, left), Support(L, right)], loads, EI)
    assert beam.moment(0.0) == pytest.approx(end, rel=1e-12, abs=1e-12 * w * L**2)
    assert beam.moment(L / 2) == pytest.approx(middle, rel=1e-12)
    assert beam.deflection(L / 2) == pytest.approx(sag / EI, rel=1e-12)


def test_fixing_moments_of_a_fixed_beam_have_opposite_turns():
    beam = solve(L, [Support(0.0, "fixed"), Support(L, "fixed")], UNIFORM, EI)
    assert beam.fixing_moments == pytest.approx([-w * L**2 / 12, w * L**2 / 12], rel=1e-12)


@pytest.mark.parametrize("fixed_at", [0.0, L])
def test_cantilever_matches_its_closed_form(fixed_at):
    tip = L - fixed_at
    beam = solve(L, [Support(fixed_at, "fixed")], [*UNIFORM, PointLoad(P, tip)], EI)
    assert beam.moment(fixed_at) == pytest.approx(-w * L**2 / 2 - P * L, rel=1e-12)
    sag = w * L**4 / 8 + P * L**3 / 3
    assert beam.deflection(tip) == pytest.approx(sag / EI, rel=1e-12)
    assert beam.reactions == pytest.approx([w * L + P], rel=1e-12)


def test_overhang_lifts_the_span_behind_it():
    beam = solve(8000.0, [Support(0.0), Support(6000.0)], [PointLoad(P, 8000.0)], EI)
    a = 2000.0
    assert beam.reactions == pytest.approx([-P * a / L, P * (1 + a / L)], rel=1e-12)
    assert beam.deflection(8000.0) == pytest.approx(P * a**2 * (L + a) / (3 * EI), rel=1e-12)
    assert beam.deflection(L / 2) == pytest.approx(-P * a * L**2 / (16 * EI), rel=1e-12)


def test_sinking_middle_support_takes_moment_off_it():
    """Two equal spans: M = -w L2 / 8 + 3 EI d / L2, and the reaction falls by 6 EI d / L3."""
    d = 4.0
    supports = [Support(0.0), Support(L, settlement=d), Support(2 * L)]
    beam = solve(2 * L, supports, [LineLoad(0.0, 2 * L, w)], EI)
    assert beam.moment(L) == pytest.approx(-w * L**2 / 8 + 3 * EI * d / L**2, rel=1e-12)
    assert beam.reactions[1] == pytest.approx(1.25 * w * L - 6 * EI * d / L**3, rel=1e-12)
    assert beam.deflection(L) == pytest.approx(d, rel=1e-12)


def test_sinking_fixed_end_matches_its_closed_form():
    d = 3.0
    beam = solve(L, [Support(0.0, "fixed"), Support(L, "fixed", d)], [], EI)
    assert beam.moment([0.0, L]) == pytest.approx(np.array([-6, 6]) * EI * d / L**2, rel=1e-12)


def test_settlement_moves_a_simple_beam_without_bending_it():
    beam = solve(L, [Support(0.0, settlement=2.0), Support(L, settlement=6.0)], [], EI)
    x = np.linspace(0.0, L, 7)
    assert beam.moment(x) == pytest.approx(np.zeros(7), abs=1e-6)
    assert beam.deflection(x) == pytest.approx(np.linspace(2.0, 6.0, 7), rel=1e-12)


def test_stiffer_span_draws_moment_from_its_neighbour():
    """Two spans, EI of the right one n times the left: loaded on the left span alone.

    Three moments: M (L / EI1 + L / EI2) / 3 = -w L3 / (24 EI1).
    """
    supports = [Support(0.0), Support(L), Support(2 * L)]
    for n in (0.25, 1.0, 4.0):
        beam = solve(2 * L, supports, [LineLoad(0.0, L, w)], [EI, n * EI])
        assert beam.moment(L) == pytest.approx(-w * L**2 / 8 / (1 + 1 / n), rel=1e-12)


def test_stiffness_may_name_free_ends_or_leave_them_to_their_neighbours():
    supports = [Support(1000.0), Support(5000.0), Support(9000.0)]
    loads = [LineLoad(0.0, 10000.0, w)]
    short = solve(10000.0, supports, loads, [EI, 2 * EI])
    long = solve(10000.0, supports, loads, [EI, EI, 2 * EI, 2 * EI])
    softer = solve(10000.0, supports, loads, [EI / 10, EI, 2 * EI, 2 * EI])
    x = short.stations(50)
    assert short.deflection(x) == pytest.approx(long.deflection(x), abs=1e-12)
    assert softer.moment(x) == pytest.approx(short.moment(x), abs=1e-3)
    assert softer.deflection(0.0) > short.deflection(0.0)


def test_shear_jumps_by_the_load_and_the_side_can_be_chosen():
    beam = solve(L, [Support(0.0), Support(L)], [PointLoad(P, 2000.0)], EI)
    assert beam.shear(2000.0, "left") == pytest.approx(P * 2 / 3, rel=1e-12)
    assert beam.shear(2000.0, "right") == pytest.approx(-P / 3, rel=1e-12)
    assert beam.shear([0.0, L], "left") == pytest.approx([P * 2 / 3, -P / 3], rel=1e-12)
    assert beam.shear([0.0, L], "right") == pytest.approx([P * 2 / 3, -P / 3], rel=1e-12)


def test_drawn_diagrams_show_both_sides_of_a_jump():
    supports = [Support(0.0), Support(L, "fixed"), Support(2 * L)]
    beam = solve(2 * L, supports, [PointLoad(P, 2000.0), LineLoad(4000.0, L, w)], EI)
    x, M, V, q = beam.diagrams(50)
    for place in (2000.0, 4000.0, L):
        first, second = np.flatnonzero(x == place)
        assert M[[first, second]].tolist() == [beam.moment(place, "left"), beam.moment(place)]
        assert V[[first, second]].tolist() == [beam.shear(place, "left"), beam.shear(place)]
        assert q[[first, second]].tolist() == [beam.load(place, "left"), beam.load(place)]
    assert V[np.flatnonzero(x == 2000.0)] @ [1, -1] == pytest.approx(P, rel=1e-12)
    assert (np.diff(x) >= 0).all()


def test_inner_fixed_support_parts_the_moments():
    supports = [Support(0.0), Support(L, "fixed"), Support(2 * L)]
    beam = solve(2 * L, supports, [LineLoad(0.0, L, w)], EI)
    assert beam.moment(L, "left") == pytest.approx(-w * L**2 / 8, rel=1e-12)
    assert beam.moment(L, "right") == pytest.approx(0.0, abs=1e-6)
    assert beam.fixing_moments == pytest.approx([0.0, w * L**2 / 8, 0.0], rel=1e-12)


def test_reactions_come_in_the_order_of_the_supports_as_given():
    loads = [LineLoad(0.0, L, w)]
    beam = solve(2 * L, [Support(2 * L), Support(0.0), Support(L)], loads, EI)
    assert beam.reactions / (w * L) == pytest.approx([-1 / 16, 7 / 16, 10 / 16], rel=1e-12)
    assert beam.supports_at.tolist() == [2 * L, 0.0, L]


def test_overlapping_line_loads_add_up():
    supports = [Support(0.0), Support(L)]
    two = solve(L, supports, [LineLoad(0.0, 4000.0, 5.0, 9.0), LineLoad(2000.0, L, 3.0, 1.0)], EI)
    x = np.array([1000.0, 3000.0, 5000.0])
    assert two.load(x) == pytest.approx([6.0, 8.0 + 2.5, 1.5], rel=1e-12)


UNSTABLE = [[], [Support(1000.0)]]


@pytest.mark.parametrize("supports", UNSTABLE)
def test_beam_that_is_not_held_is_refused(supports):
    with pytest.raises(ValueError, match="not held"):
        solve(L, supports, UNIFORM, EI)


@pytest.mark.parametrize(
    ("length", "supports", "loads", "stiffness", "complaint"),
    [
        (L, [Support(0.0), Support(L + 1.0)], [], EI, "outside"),
        (L, [Support(0.0), Support(0.0)], [], EI, "same place"),
        (L, [Support(0.0), Support(L)], [PointLoad(1.0, -1.0)], EI, "load lies outside"),
        (L, [Support(0.0), Support(L)], [LineLoad(0.0, L + 1.0, 1.0)], EI, "load lies outside"),
        (L, [Support(0.0), Support(L)], [], 0.0, "stiffness"),
        (L, [Support(0.0), Support(L)], [], [EI, EI], "one each"),
        (0.0, [Support(0.0), Support(L)], [], EI, "length"),
    ],
)
def test_senseless_beam_is_refused(length, supports, loads, stiffness, complaint):
    with pytest.raises(ValueError, match=complaint):
        solve(length, supports, loads, stiffness)


def test_senseless_parts_are_refused():
    with pytest.raises(ValueError, match="'pin' or 'fixed'"):
        Support(0.0, "glued")
    with pytest.raises(ValueError, match="to the right"):
        LineLoad(3.0, 3.0, 1.0)
    with pytest.raises(ValueError, match="numbers"):
        PointLoad(float("nan"), 0.0)
    with pytest.raises(TypeError, match="PointLoad or a LineLoad"):
        solve(L, [Support(0.0), Support(L)], [3.0], EI)
    with pytest.raises(ValueError, match="outside the beam"):
        solve(L, [Support(0.0), Support(L)], [], EI).moment(L + 1.0)
