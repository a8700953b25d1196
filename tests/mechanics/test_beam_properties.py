"""What must hold for any beam."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import fixed_quad

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve

LENGTH = 20000.0
EI = 2e13
WEIGHT = 1e5  # what counts as a noticeable force here [N]


@st.composite
def supports(draw):
    """One to five supports on a raster of 500 mm, never two at one place, always holding."""
    places = draw(st.lists(st.integers(0, 40), min_size=1, max_size=5, unique=True))
    kinds = [draw(st.sampled_from(["pin", "fixed"])) for _ in places]
    if len(places) == 1:
        kinds = ["fixed"]
    sunk = st.floats(-5.0, 5.0)
    return [Support(500.0 * a, k, draw(sunk)) for a, k in zip(places, kinds, strict=True)]


@st.composite
def line_load(draw):
    ends = draw(st.lists(st.floats(0.0, LENGTH), min_size=2, max_size=2, unique=True).map(sorted))
    if ends[1] - ends[0] < 1.0:
        ends = [0.0, LENGTH]
    return LineLoad(*ends, draw(st.floats(-20.0, 60.0)), draw(st.floats(-20.0, 60.0)))


point_load = st.builds(PointLoad, st.floats(-5e4, 2e5), st.floats(0.0, LENGTH))
load_cases = st.lists(st.one_of(line_load(), point_load), max_size=4)


def total(loads):
    """Sum of the loads, and of their moments about the left end."""
    force = turning = 0.0
    for load in loads:
        if isinstance(load, PointLoad):
            weight, arm = load.force, load.at
            force, turning = force + weight, turning + weight * arm
        else:
            h = load.end - load.start
            weight = h * (load.left + load.right) / 2
            force += weight
            turning += weight * load.start + h * h * (load.left + 2 * load.right) / 6
    return force, turning


def scale(beam):
    x = beam.stations(100)
    both = [np.abs(beam.moment(x, side)).max() for side in ("left", "right")]
    return max(*both, np.abs(beam.shear(x)).max() * 1000.0, WEIGHT * 1000.0)


@given(supports(), load_cases)
def test_forces_and_moments_balance(held, loads):
    beam = solve(LENGTH, held, loads, EI)
    force, turning = total(loads)
    slack = 1e-9 * (np.abs(beam.reactions).sum() + WEIGHT)
    assert beam.reactions.sum() == pytest.approx(force, abs=slack)
    # A moment that rises by C at a support turns like a force times arm of the same size.
    given_back = (beam.reactions * beam.supports_at).sum() - beam.fixing_moments.sum()
    assert given_back == pytest.approx(turning, abs=slack * LENGTH)


@given(supports(), load_cases)
def test_free_ends_carry_neither_moment_nor_shear(held, loads):
    beam = solve(LENGTH, held, loads, EI)
    limit = 1e-9 * scale(beam)
    at = {support.at for support in held}
    loaded = {load.at for load in loads if isinstance(load, PointLoad)}
    for end in (0.0, LENGTH):
        if end not in at:
            assert abs(beam.moment(end)) < limit
        if end not in at | loaded:
            assert abs(beam.shear(end)) < limit


@given(supports(), load_cases)
def test_supports_stay_where_they_are(held, loads):
    beam = solve(LENGTH, held, loads, EI)
    # Rounding grows with the drop that a free end of this length could have.
    slack = 1e-12 * scale(beam) * LENGTH**2 / EI
    for support in held:
        assert beam.deflection(support.at) == pytest.approx(support.settlement, abs=slack + 1e-9)
        if support.kind == "fixed":
            assert abs(beam.slope(support.at)) < (slack + 1e-9) / 100.0


@given(supports(), load_cases, load_cases)
def test_load_cases_may_be_added(held, first, second):
    unmoved = [Support(support.at, support.kind) for support in held]
    x = np.linspace(0.0, LENGTH, 41)
    a, b = solve(LENGTH, held, first, EI), solve(LENGTH, unmoved, second, EI)
    both = solve(LENGTH, held, first + second, EI)
    limit = 1e-9 * (scale(a) + scale(b))
    assert both.moment(x) == pytest.approx(a.moment(x) + b.moment(x), abs=limit)
    sag = a.deflection(x) + b.deflection(x)
    assert both.deflection(x) == pytest.approx(sag, abs=limit * LENGTH**2 / EI)


def mirrored(load):
    if isinstance(load, PointLoad):
        return PointLoad(load.force, LENGTH - load.at)
    return LineLoad(LENGTH - load.end, LENGTH - load.start, load.right, load.left)


@given(supports(), load_cases, st.lists(st.floats(1.0, 5.0), min_size=6, max_size=6))
def test_mirrored_beam_has_mirrored_diagrams(held, loads, stiffer):
    EIs = EI * np.array(stiffer)[: max(len(held) - 1, 1)]
    other = [Support(LENGTH - s.at, s.kind, s.settlement) for s in held]
    turned = [mirrored(load) for load in loads]
    a = solve(LENGTH, held, loads, EIs)
    b = solve(LENGTH, other, turned, EIs[::-1])
    x = (np.arange(43) + 0.5) * LENGTH / 43
    limit = 1e-9 * scale(a)
    assert b.moment(LENGTH - x, "left") == pytest.approx(a.moment(x), abs=limit)
    assert b.deflection(LENGTH - x) == pytest.approx(a.deflection(x), abs=limit * LENGTH**2 / EI)
    assert b.reactions == pytest.approx(a.reactions, abs=limit / 1000.0)


@given(supports(), load_cases)
def test_stations_hold_the_largest_and_the_smallest_moment(held, loads):
    beam = solve(LENGTH, held, loads, EI)
    stations, fine = beam.stations(), np.linspace(0.0, LENGTH, 2001)
    peaks = np.concatenate([beam.moment(stations, side) for side in ("left", "right")])
    limit = 1e-9 * scale(beam)
    assert beam.moment(fine).max() <= peaks.max() + limit
    assert beam.moment(fine).min() >= peaks.min() - limit


@given(supports(), load_cases)
def test_shear_is_the_slope_of_the_moment_and_load_that_of_the_shear(held, loads):
    beam = solve(LENGTH, held, loads, EI)
    middle = (beam.nodes[1:] + beam.nodes[:-1]) / 2
    h = np.diff(beam.nodes) / 8
    # Simpson's rule is exact for the cubic moment and the straight load.
    area = h / 3 * (beam.shear(middle - h) + 4 * beam.shear(middle) + beam.shear(middle + h))
    rise = beam.moment(middle + h) - beam.moment(middle - h)
    assert rise == pytest.approx(area, abs=1e-9 * scale(beam))
    lost = beam.shear(middle - h) - beam.shear(middle + h)
    assert lost == pytest.approx(2 * h * beam.load(middle), abs=1e-11 * scale(beam))


@given(supports(), load_cases, st.floats(0.05, 0.95))
def test_deflection_is_the_twice_integrated_curvature(held, loads, part):
    """By Gauss's rule over each piece: w(x) = w0 + w0' x - int (x - s) M(s) / EI ds."""
    beam = solve(LENGTH, held, loads, EI)
    x = part * LENGTH
    pieces = [*beam.nodes[beam.nodes < x], x]
    sag = sum(
        fixed_quad(lambda s: (x - s) * beam.moment(s) / EI, a, b, n=4)[0]
        for a, b in zip(pieces, pieces[1:], strict=False)
    )
    expected = beam.deflection(0.0) + beam.slope(0.0) * x - sag
    assert beam.deflection(x) == pytest.approx(expected, abs=1e-9 * scale(beam) * LENGTH**2 / EI)
