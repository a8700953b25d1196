"""Elastic sections against brute slicing, closed forms and plain equilibrium."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from crackkit.mechanics.section import (
    Section,
    cracked,
    cracking_moment,
    stress_in_concrete,
    stress_in_steel,
    uncracked,
)

senses = st.sampled_from([1, -1])
ratios = st.floats(4, 20)


@st.composite
def sections(draw):
    b, h = draw(st.floats(100, 2000)), draw(st.floats(80, 2500))
    if draw(st.booleans()):
        return Section(b, h)
    return Section(b, h, b * draw(st.floats(1, 6)), h * draw(st.floats(0.05, 0.9)))


@st.composite
def reinforced(draw):
    section = draw(sections())
    number = draw(st.integers(1, 4))
    depths = [section.depth * draw(st.floats(0.03, 0.97)) for _ in range(number)]
    areas = [section.area * draw(st.floats(1e-4, 0.03)) for _ in range(number)]
    return section, depths, areas


def sliced(section, number=20_000):
    """Middle depth and area of many thin slices: an independent outline."""
    edges = np.linspace(0, section.depth, number + 1)
    z = (edges[1:] + edges[:-1]) / 2
    wide = section.flange_width if section.flange_width is not None else section.width
    return z, np.where(z < section.flange_depth, wide, section.width) * np.diff(edges)


def squeezed_steel_ratio(state, depths):
    """What each layer counts: n, or n - 1 where it is squeezed."""
    inside = (np.asarray(depths) - state.axis) * state.sense < 0
    return np.where(inside, state.ratio - 1, state.ratio)


@given(sections())
def test_gross_properties_are_those_of_many_slices(section):
    z, dA = sliced(section)
    assert section.area == pytest.approx(dA.sum(), rel=1e-3)
    assert section.centroid == pytest.approx(dA @ z / dA.sum(), rel=1e-3)
    assert section.inertia == pytest.approx(dA @ (z - section.centroid) ** 2, rel=2e-3)


def test_a_rectangle_has_its_textbook_properties():
    section = Section(300, 600)
    assert (section.area, section.centroid) == (180_000, 300)
    assert section.inertia == pytest.approx(300 * 600**3 / 12)


@given(reinforced(), ratios, senses)
def test_forces_balance_and_the_moment_comes_back_once_cracked(beam, n, sense):
    section, depths, areas = beam
    state = cracked(section, depths, areas, n, sense)
    M = sense * 1e6
    z, dA = sliced(section)
    fc = stress_in_concrete(state, M, z)
    fc, arm = np.where(fc < 0, fc, 0.0), z - state.axis
    # A squeezed bar takes the place of concrete: n - 1 of its n.
    share = squeezed_steel_ratio(state, depths) / n
    steel = share * stress_in_steel(state, M, np.array(depths)) * areas
    tension = steel[steel > 0].sum()
    assert fc @ dA + steel.sum() == pytest.approx(0, abs=2e-3 * tension)
    moment = fc @ (dA * arm) + steel @ (np.array(depths) - state.axis)
    assert moment == pytest.approx(M, rel=2e-3)


@given(reinforced(), ratios, senses)
def test_the_axis_is_exact(beam, n, sense):
    section, depths, areas = beam
    state = cracked(section, depths, areas, n, sense)
    x, h = state.squeezed, section.depth
    wide, hf = section.flange_width or section.width, section.flange_depth
    # First moments about the axis, each outline written out anew.
    if sense > 0:
        lost = (wide - section.width) * max(x - hf, 0) ** 2 / 2
        push = wide * x**2 / 2 - lost
    else:
        push = section.width * x**2 / 2
        push += (wide - section.width) * max(x - (h - hf), 0) ** 2 / 2
    t = np.array(depths) if sense > 0 else h - np.array(depths)
    pull = np.where(t < x, n - 1, n) * areas * (t - x)
    assert push - pull.sum() == pytest.approx(0, abs=1e-11 * (push + np.abs(pull).sum()))


@given(st.floats(100, 1000), st.floats(100, 1000), st.floats(1e-3, 0.04), ratios)
def test_one_layer_gives_the_textbook_k(b, d, rho, n):
    # k = sqrt((rho n)^2 + 2 rho n) - rho n
    state = cracked(Section(b, 1.2 * d), [d], [rho * b * d], n)
    k = math.sqrt((rho * n) ** 2 + 2 * rho * n) - rho * n
    assert state.squeezed == pytest.approx(k * d, rel=1e-12)
    inertia = b * (k * d) ** 3 / 3 + n * rho * b * d * (d - k * d) ** 2
    assert state.inertia == pytest.approx(inertia, rel=1e-12)
    fs = stress_in_steel(state, 1e6, d)
    assert fs == pytest.approx(1e6 / (rho * b * d * d * (1 - k / 3)), rel=1e-12)


@given(reinforced(), ratios)
def test_whole_section_balances_and_returns_the_moment(beam, n):
    section, depths, areas = beam
    state = uncracked(section, depths, areas, n)
    z, dA = sliced(section)
    z = np.concatenate([z, depths])
    dA = np.concatenate([dA, (n - 1) * np.array(areas)])
    fc = stress_in_concrete(state, 1e6, z)
    assert fc @ dA == pytest.approx(0, abs=1e-3 * np.abs(fc) @ dA)
    assert fc @ (dA * (z - state.axis)) == pytest.approx(1e6, rel=2e-3)


@given(reinforced(), ratios, senses)
def test_the_whole_section_is_stiffer_than_the_cracked_one(beam, n, sense):
    section, depths, areas = beam
    whole = uncracked(section, depths, areas, n, sense)
    split = cracked(section, depths, areas, n, sense)
    # A crack gives back the concrete that its bars had taken the place of, never more.
    given_back = np.array(areas) @ (np.array(depths) - whole.axis) ** 2
    assert split.inertia <= whole.inertia + given_back * (1 + 1e-9)


@given(st.floats(100, 600), st.floats(150, 1200), st.floats(2e-3, 0.03), ratios, st.floats(1.05, 3))
def test_more_steel_lowers_its_stress_and_stiffens(b, h, rho, n, more):
    section, d = Section(b, h), 0.9 * h
    lean = cracked(section, [d], [rho * b * d], n)
    rich = cracked(section, [d], [more * rho * b * d], n)
    assert stress_in_steel(rich, 1e6, d) < stress_in_steel(lean, 1e6, d)
    assert rich.inertia > lean.inertia
    assert rich.squeezed > lean.squeezed


@given(reinforced(), ratios)
def test_hogging_is_sagging_upside_down(beam, n):
    section, depths, areas = beam
    plain = Section(section.width, section.depth)
    flipped = [plain.depth - z for z in depths]
    sag, hog = cracked(plain, depths, areas, n, 1), cracked(plain, flipped, areas, n, -1)
    assert hog.squeezed == pytest.approx(sag.squeezed, rel=1e-9)
    assert hog.axis == pytest.approx(plain.depth - sag.axis, rel=1e-9)
    assert hog.inertia == pytest.approx(sag.inertia, rel=1e-9)
    top = stress_in_steel(hog, -1e6, np.array(flipped))
    assert top == pytest.approx(stress_in_steel(sag, 1e6, np.array(depths)), rel=1e-6, abs=1e-6)


@given(reinforced(), ratios, senses)
def test_a_flange_no_wider_than_the_web_is_no_flange(beam, n, sense):
    section, depths, areas = beam
    b, h = section.width, section.depth
    plain = cracked(Section(b, h), depths, areas, n, sense)
    for odd in (Section(b, h, b, h / 3), Section(b, h, None, h / 3), Section(b, h, 3 * b, 0.0)):
        tee = cracked(odd, depths, areas, n, sense)
        assert tee.squeezed == pytest.approx(plain.squeezed, rel=1e-9)
        assert tee.inertia == pytest.approx(plain.inertia, rel=1e-9)


def test_a_sagging_tee_with_its_axis_in_the_flange_is_a_wide_rectangle():
    tee = cracked(Section(300, 600, 1500, 150), [550], [1500], 7)
    wide = cracked(Section(1500, 600), [550], [1500], 7)
    assert tee.squeezed < 150
    assert (tee.axis, tee.inertia) == pytest.approx((wide.axis, wide.inertia), rel=1e-12)


def test_the_order_of_layers_does_not_matter():
    section = Section(300, 600)
    one = cracked(section, [50, 550, 500], [400, 900, 300], 6)
    other = cracked(section, [500, 50, 550], [300, 400, 900], 6)
    assert (one.axis, one.inertia) == pytest.approx((other.axis, other.inertia), rel=1e-12)


def test_a_layer_split_in_two_is_the_same_layer():
    section = Section(300, 600)
    one = cracked(section, [50, 550], [400, 1200], 6)
    two = cracked(section, [50, 550, 550], [400, 500, 700], 6)
    assert (one.axis, one.inertia) == pytest.approx((two.axis, two.inertia), rel=1e-12)


def test_squeezed_bars_may_count_more_under_lasting_load():
    args = (Section(300, 600), [60, 540], [1200, 1600], 7)
    usual, lasting = cracked(*args), cracked(*args, squeezed_ratio=13)
    assert usual.squeezed > lasting.squeezed
    assert cracked(*args, squeezed_ratio=6) == usual


@pytest.mark.parametrize(("sense", "axis"), [(1, 0.0), (-1, 600.0)])
@pytest.mark.parametrize(("depths", "areas"), [([], []), ([550.0, 50.0], [0.0, 0.0])])
def test_without_bars_nothing_holds_the_crack(sense, axis, depths, areas):
    state = cracked(Section(300, 600), depths, areas, 6, sense)
    assert (state.axis, state.squeezed, state.inertia) == (axis, 0, 0)
    assert math.isnan(stress_in_concrete(state, 1e6, 100))
    assert np.isnan(stress_in_steel(state, [1e6, 2e6], 550)).all()


def test_a_bar_on_the_wrong_side_holds_by_a_hair():
    right, wrong = (cracked(Section(300, 600), [z], [1200], 6) for z in (550, 50))
    assert stress_in_steel(wrong, 50e6, 50) > 10 * stress_in_steel(right, 50e6, 550)


@given(reinforced(), ratios)
def test_a_bar_moving_past_the_axis_makes_no_jump(beam, n):
    section, depths, areas = beam
    x = cracked(section, depths, areas, n).axis
    assume(0.03 * section.depth < x < 0.97 * section.depth)
    step = 1e-7 * section.depth
    above, below = (
        cracked(section, [*depths, x + move], [*areas, areas[0]], n) for move in (-step, step)
    )
    assert above.axis == pytest.approx(below.axis, rel=1e-5)
    assert above.inertia == pytest.approx(below.inertia, rel=1e-5)


def test_gross_cracking_moment_of_a_rectangle():
    # ACI 318-19, 24.2.3.5: fr b h^2/6.
    section = Section(300, 600)
    gross = uncracked(section, [], [], 6)
    for sense in (1, -1):
        assert cracking_moment(gross, 3.0, section, sense) == pytest.approx(3 * 300 * 600**2 / 6)


def test_a_tee_cracks_later_in_its_flange():
    section = Section(300, 600, 1200, 150)
    gross = uncracked(section, [], [], 6)
    assert cracking_moment(gross, 3.0, section, -1) > cracking_moment(gross, 3.0, section, 1)


@given(reinforced(), ratios, senses)
def test_the_cracking_moment_just_stretches_the_face_to_its_strength(beam, n, sense):
    section, depths, areas = beam
    state = uncracked(section, depths, areas, n)
    M = sense * cracking_moment(state, 3.0, section, sense)
    face = section.depth if sense > 0 else 0.0
    assert stress_in_concrete(state, M, face) == pytest.approx(3.0, rel=1e-9)


def test_moments_and_depths_may_come_as_arrays_or_lists():
    state = uncracked(Section(300, 600), [550], [1200], 6)
    M, z = [1e6, -2e6], [0.0, 600.0]
    both = stress_in_concrete(state, M, z)
    each = [stress_in_concrete(state, m, depth) for m, depth in zip(M, z, strict=True)]
    assert both == pytest.approx(each)


def test_as_many_areas_as_depths_are_needed():
    with pytest.raises(ValueError):
        cracked(Section(300, 600), [50, 550], [1200], 6)
