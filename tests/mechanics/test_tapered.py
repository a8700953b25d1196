"""Tapered members: station by station what the single section gives, and how they bend."""

import time

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from crackkit.mechanics.deflection import cantilever_deflection_from_curvature
from crackkit.mechanics.section import Section, cracked, uncracked
from crackkit.mechanics.tapered import states_along

EC, RATIO = 30e3, 200 / 30


@st.composite
def members(draw):
    layers, stations = draw(st.integers(1, 4)), draw(st.integers(1, 5))
    shape = (layers, stations)

    def drawn(low, high, count):
        return np.array(draw(st.lists(st.floats(low, high), min_size=count, max_size=count)))

    depth = drawn(80, 2500, stations)
    bar_depth = drawn(0.0, 1.0, layers * stations).reshape(shape) * depth
    bar_area = drawn(10, 2e4, layers * stations).reshape(shape)
    present = draw(st.lists(st.booleans(), min_size=bar_area.size, max_size=bar_area.size))
    width = draw(st.floats(100, 2000))
    return width, depth, bar_depth, bar_area * np.reshape(present, shape), draw(st.floats(4, 20))


def one_station(width, depth, bar_depth, bar_area, ratio):
    """The single section: axis and inertia of the three rows."""
    section = Section(width, depth)
    whole = uncracked(section, (), (), ratio)
    rows = [(whole.axis, whole.inertia)]
    for sense in (1, -1):
        state = cracked(section, bar_depth, bar_area, ratio, sense)
        there = bar_depth[bar_area > 0]
        holds = (sense * (there - whole.axis) > 0).any()
        rows.append((state.axis, state.inertia if holds else 0.0))
    return np.transpose(rows)


@given(members())
def test_every_station_is_the_single_section(member):
    width, depth, bar_depth, bar_area, ratio = member
    # A bar at mid-depth holds by rounding alone.
    assume((np.abs(bar_depth / depth - 0.5) > 1e-9).all())
    axis, inertia = states_along(*member)
    for k, h in enumerate(depth.tolist()):
        expected = one_station(width, h, bar_depth[:, k], bar_area[:, k], ratio)
        assert axis[:, k] == pytest.approx(expected[0], rel=1e-10, abs=1e-10 * h)
        assert inertia[:, k] == pytest.approx(expected[1], rel=1e-9)


@given(members())
def test_the_axis_balances_the_forces(member):
    """A root found by bisection of the balance written out, bar by bar."""
    width, depth, bar_depth, bar_area, ratio = member
    axis, _inertia = states_along(*member)
    for k, h in enumerate(depth.tolist()):
        bars = list(zip(bar_depth[:, k].tolist(), bar_area[:, k].tolist(), strict=True))

        def force(x, bars=bars):
            steel = sum((ratio - (z < x)) * a * (x - z) for z, a in bars)
            return width * x**2 / 2 + steel

        if force(0.0) < 0:
            assert axis[1, k] == pytest.approx(brentq(force, 0.0, h, xtol=1e-12 * h), abs=1e-8 * h)


@given(members())
def test_a_member_upside_down_is_the_same_member(member):
    width, depth, bar_depth, bar_area, ratio = member
    assume((np.abs(bar_depth / depth - 0.5) > 1e-9).all())
    axis, inertia = states_along(*member)
    turned_axis, turned = states_along(width, depth, depth - bar_depth, bar_area, ratio)
    assert turned[[0, 2, 1]] == pytest.approx(inertia, rel=1e-6)
    assert depth - turned_axis[[0, 2, 1]] == pytest.approx(axis, abs=1e-7 * depth.max())


@given(members(), st.floats(1.0, 3.0))
def test_more_steel_never_makes_a_cracked_section_softer(member, more):
    width, depth, bar_depth, bar_area, ratio = member
    _axis, few = states_along(*member)
    _axis, many = states_along(width, depth, bar_depth, more * bar_area, ratio)
    assert (many >= few * (1 - 1e-12)).all()


def test_without_bars_nothing_holds():
    axis, inertia = states_along(300.0, [400.0, 600.0], np.empty((0, 2)), np.empty((0, 2)), RATIO)
    assert axis.tolist() == [[200.0, 300.0], [0.0, 0.0], [400.0, 600.0]]
    assert inertia[1:].tolist() == [[0.0, 0.0], [0.0, 0.0]]
    assert inertia[0] == pytest.approx([300 * 400**3 / 12, 300 * 600**3 / 12])


def test_the_width_may_change_too():
    depth, bars = [400.0, 600.0], (([350.0, 550.0],), ([900.0, 900.0],))
    axis, inertia = states_along([300.0, 250.0], depth, *bars, RATIO)
    for k, width in enumerate((300.0, 250.0)):
        alone = states_along(width, depth, *bars, RATIO)
        assert axis[:, k] == pytest.approx(alone[0][:, k])
        assert inertia[:, k] == pytest.approx(alone[1][:, k])


@pytest.mark.parametrize("face", ["whole", "cracked"])
def test_a_tapered_cantilever_sinks_as_the_integral_says(face):
    """Tip under its own tip load: delta = integral of P s^2/(E I(s)), s from the tip."""
    length, tip, root, load, width = 2400.0, 180.0, 420.0, 9000.0, 300.0
    area, top = 4 * 201.06, 45.0

    def inertia_at(x):
        h = root + (tip - root) * x / length
        if face == "whole":
            return width * h**3 / 12
        d = h - top
        q = RATIO * area / width
        c = np.sqrt(q * q + 2 * q * d) - q
        return width * c**3 / 3 + RATIO * area * (d - c) ** 2

    exact, _error = quad(
        lambda x: load * (length - x) ** 2 / (EC * inertia_at(x)), 0, length, epsrel=1e-12
    )
    x = np.linspace(0.0, length, 2001)
    h = root + (tip - root) * x / length
    layer = np.ones((1, x.size))
    _axis, inertia = states_along(width, h, top * layer, area * layer, RATIO)
    chosen = inertia[0] if face == "whole" else inertia[2]
    curvature = -load * (length - x) / (EC * chosen)
    ours = cantilever_deflection_from_curvature(x, curvature, 0.0)[-1]
    assert ours == pytest.approx(exact, rel=1e-6)


@pytest.mark.benchmark
def test_two_hundred_stations_take_no_time():
    h = np.linspace(200.0, 500.0, 200)
    bar_depth = np.stack((np.full(200, 45.0), h - 45.0))
    bar_area = np.stack((np.full(200, 800.0), np.where(h > 300.0, 400.0, 0.0)))
    spans = []
    for _turn in range(30):
        start = time.perf_counter()
        states_along(300.0, h, bar_depth, bar_area, RATIO)
        spans.append(time.perf_counter() - start)
    assert min(spans) < 0.4e-3


@pytest.mark.parametrize(
    ("depth", "bars", "areas", "said"),
    [
        (500.0, [[450.0]], [[800.0]], "one depth"),
        ([500.0, 400.0], [[450.0]], [[800.0]], "Every layer"),
        ([500.0, 400.0], [450.0, 350.0], [800.0, 800.0], "Every layer"),
        ([500.0], [[450.0]], [[800.0], [0.0]], "Every layer"),
    ],
)
def test_arrays_that_do_not_fit_are_refused(depth, bars, areas, said):
    with pytest.raises(ValueError, match=said):
        states_along(300.0, depth, bars, areas, RATIO)
