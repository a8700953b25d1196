"""Bending a layered section until it fails."""

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from crackkit.mechanics.concrete import Concrete, concrete
from crackkit.mechanics.moment_curvature import (
    block_share,
    moment_curvature,
    ultimate_moment,
    yield_moment,
)
from crackkit.mechanics.section import Section, cracked, cracking_moment, uncracked
from crackkit.mechanics.us_customary import PSI

ES, FY = 200_000.0, 500.0
C30 = concrete(30.0, 600, "EN")


@st.composite
def beams(draw):
    """Beams with bars in both faces, 0.3 to 1.2 percent in each: under-reinforced ones."""
    b, h = draw(st.floats(150, 600)), draw(st.floats(200, 1200))
    flange = draw(st.sampled_from([None, 2 * b, 4 * b]))
    section = Section(b, h, flange, 0.2 * h if flange else 0.0)
    shares = [draw(st.floats(0.003, 0.012)) for _ in range(2)]
    return section, [0.1 * h, 0.9 * h], [share * b * h for share in shares]


@settings(max_examples=25, deadline=None)
@given(beams(), st.sampled_from([25.0, 40.0, 60.0]), st.sampled_from([1, -1]))
def test_the_curve_starts_with_the_stiffness_of_the_whole_section(beam, strength, sense):
    section, depths, areas = beam
    made = concrete(strength, section.depth, "EN")
    tiny = sense * 0.01 * made.tensile / made.modulus / section.depth
    curve = moment_curvature(section, depths, areas, made, FY, [tiny])
    whole = uncracked(section, depths, areas, ES / made.modulus)
    # The parabola has lost 0.2 % by then, and 80 slices bend 0.02 to 0.2 % too easily.
    assert curve.moment[0] / tiny == pytest.approx(made.modulus * whole.inertia, rel=5e-3)
    assert curve.axis[0] == pytest.approx(whole.axis, rel=5e-3)


@settings(max_examples=25, deadline=None)
@given(beams())
def test_no_axial_force_remains(beam):
    section, depths, areas = beam
    kappa = np.linspace(-0.02, 0.02, 21) / section.depth
    curve = moment_curvature(section, depths, areas, C30, FY, kappa)
    steel = curve.steel_stress @ np.array(areas)
    z = (np.arange(80) + 0.5) * section.depth / 80
    b = np.where(z < section.flange_depth, section.flange_width or section.width, section.width)
    strips = b * section.depth / 80
    strain = kappa[:, None] * (z - curve.axis[:, None])
    concrete_at_bars = kappa[:, None] * (np.array(depths) - curve.axis[:, None])
    steel = steel - stress_by_hand(concrete_at_bars, C30) @ np.array(areas)
    push = stress_by_hand(strain, C30) @ strips
    bent = kappa != 0
    assert np.abs(push + steel)[bent].max() < 1e-6 * sum(areas) * FY


def stress_by_hand(strain, made):
    """The two published concrete lines written out point by point."""
    f, ft, E = 0.85 * made.strength, made.tensile, made.modulus
    e0 = 2 * f / E

    def one(e):
        if e < -e0:
            return -max(0.0, f * (1 - 0.15 * (-e - e0) / (0.0038 - e0)))
        if e < 0:
            return -f * (2 * -e / e0 - (e / e0) ** 2)
        if e < ft / E:
            return E * e
        return max(0.0, ft - 0.483 * E / (0.393 + ft) * (e - ft / E))

    return np.vectorize(one)(strain)


@settings(max_examples=25, deadline=None)
@given(beams())
def test_hogging_is_sagging_upside_down(beam):
    section, depths, areas = beam
    plain = Section(section.width, section.depth)
    kappa = np.linspace(0.001, 0.02, 12) / plain.depth
    sag = moment_curvature(plain, depths, areas, C30, FY, kappa)
    flipped = [plain.depth - z for z in depths]
    hog = moment_curvature(plain, flipped, areas, C30, FY, -kappa)
    assert hog.moment == pytest.approx(-sag.moment, rel=1e-8)
    assert hog.axis == pytest.approx(plain.depth - sag.axis, rel=1e-8)
    assert hog.steel_stress == pytest.approx(sag.steel_stress, rel=1e-6, abs=1e-6)


def test_the_curve_meets_the_cracked_section_once_the_concrete_has_let_go():
    section, depths, areas = Section(300, 600), [550.0], [1256.6]
    n = ES / C30.modulus
    split = cracked(section, depths, areas, n)
    kappa = 0.85 * FY / ES / (550 - split.axis)
    curve = moment_curvature(section, depths, areas, C30, FY, [kappa])
    elastic = kappa * C30.modulus * split.inertia
    # Above the bare crack by what little the softening concrete holds, less the bend of the
    # parabola.
    assert curve.moment[0] == pytest.approx(elastic, rel=0.05)


def test_the_first_peak_lies_at_cracking():
    section, depths, areas = Section(300, 600), [550.0], [600.0]
    whole = uncracked(section, depths, areas, ES / C30.modulus)
    first = cracking_moment(whole, C30.tensile, section, 1)
    kappa = np.linspace(0, 4, 200) * first / (C30.modulus * whole.inertia)
    curve = moment_curvature(section, depths, areas, C30, FY, kappa)
    straight = C30.modulus * whole.inertia * kappa
    left = kappa[np.argmax(curve.moment < 0.97 * straight)]
    assert 1.0 < left * C30.modulus * whole.inertia / first < 1.5


@settings(max_examples=25, deadline=None)
@given(beams(), st.sampled_from([1, -1]))
def test_no_moment_on_the_curve_beats_the_strength_by_more_than_the_choice_of_curve(beam, sense):
    section, depths, areas = beam
    kappa = sense * np.linspace(0.001, 0.06, 60) / section.depth
    curve = moment_curvature(section, depths, areas, C30, FY, kappa)
    strength = ultimate_moment(section, depths, areas, C30, FY, sense)
    peak = np.abs(curve.moment[~curve.crushed]).max()
    assert peak == pytest.approx(strength, rel=0.12)


def test_the_strains_at_the_peak_crush_the_squeezed_face_in_the_end():
    curve = moment_curvature(
        Section(300, 600), [550.0], [1256.6], C30, FY, np.linspace(0, 2e-4, 50)
    )
    assert not curve.crushed[0] and curve.crushed[-1]
    assert np.all(np.diff(curve.crushed.astype(int)) >= 0)


def test_steel_never_passes_its_yield_strength():
    curve = moment_curvature(
        Section(300, 600), [50.0, 550.0], [600.0, 1256.6], C30, FY, np.linspace(-1e-4, 1e-4, 41)
    )
    assert np.abs(curve.steel_stress).max() == FY
    assert curve.moment[20] == pytest.approx(0, abs=1e-3)


def test_more_slices_change_nothing_that_matters():
    section, depths, areas = Section(300, 600, 900, 100), [50.0, 550.0], [400.0, 1256.6]
    kappa = np.linspace(1e-6, 3e-5, 30)
    usual, fine = (
        moment_curvature(section, depths, areas, C30, FY, kappa, layers=n).moment
        for n in (80, 1280)
    )
    assert usual == pytest.approx(fine, rel=0.01)


def test_a_plain_section_falls_off_after_cracking():
    kappa = np.linspace(0, 2e-5, 200)
    curve = moment_curvature(Section(300, 600), [], [], C30, FY, kappa)
    plain = C30.tensile * 300 * 600**2 / 6
    assert plain < curve.moment.max() < 2 * plain
    assert curve.moment[-1] < 0.3 * plain


def test_a_modulus_for_lasting_load_is_refused():
    soft = Concrete(30, 10_000, 38, 2.9, 2.9)
    with pytest.raises(ValueError, match="modulus"):
        moment_curvature(Section(300, 600), [550], [1200], soft, FY, [1e-6])


def test_strength_of_a_singly_reinforced_beam_by_hand():
    # a = As fy/(0.85 f'c b), Mn = As fy (d - a/2)
    a = 1256.6 * 500 / (0.85 * 30 * 300)
    Mn = 1256.6 * 500 * (550 - a / 2)
    assert ultimate_moment(Section(300, 600), [550], [1256.6], C30, FY) == pytest.approx(Mn)


def test_strength_of_a_tee_with_the_block_in_its_web_by_hand():
    As, b, bf, hf, d = 4000.0, 300, 600, 80, 650
    C = As * 500 / (0.85 * 30)
    flange = bf * hf
    a = hf + (C - flange) / b
    arm = d - (flange * hf / 2 + (C - flange) * (hf + a) / 2) / C
    assert a > hf
    Mn = ultimate_moment(Section(b, 720, bf, hf), [d], [As], C30, FY)
    assert Mn == pytest.approx(As * 500 * arm)


def test_over_reinforced_steel_stays_below_yield():
    # Strain compatibility: 0.85 f'c b beta1 c = As Es 0.003 (d - c)/c, a quadratic in c.
    b, d, As = 300, 550, 9000.0
    A, B = 0.85 * 30 * b * block_share(30), As * ES * 0.003
    c = (-B + np.sqrt(B * B + 4 * A * B * d)) / (2 * A)
    fs = ES * 0.003 * (d - c) / c
    assert fs < FY
    Mn = As * fs * (d - block_share(30) * c / 2)
    assert ultimate_moment(Section(b, 600), [d], [As], C30, FY) == pytest.approx(Mn)


@given(beams(), st.sampled_from([1, -1]))
def test_an_under_reinforced_beam_yields_before_it_fails(beam, sense):
    section, depths, areas = beam
    first = yield_moment(section, depths, areas, C30, FY, sense)
    state = cracked(section, depths, areas, ES / C30.modulus, sense)
    # The elastic yield moment means something as long as the concrete is sound by then.
    assume(first * state.squeezed / state.inertia <= 0.85 * C30.strength)
    assert 0 < first <= ultimate_moment(section, depths, areas, C30, FY, sense)


@given(beams(), st.sampled_from([1, -1]), st.floats(1.01, 1.5))
def test_more_steel_always_carries_more(beam, sense, more):
    section, depths, areas = beam
    rich = [more * a for a in areas]
    for rule in (yield_moment, ultimate_moment):
        assert rule(section, depths, rich, C30, FY, sense) > rule(
            section, depths, areas, C30, FY, sense
        )


def test_yield_moment_is_that_of_the_outermost_stretched_layer():
    args = (Section(300, 600), [50.0, 500.0, 550.0], [200.0, 500.0, 800.0])
    state = cracked(*args, ES / C30.modulus)
    M = FY * state.inertia / (state.ratio * (550 - state.axis))
    assert yield_moment(*args, C30, FY) == pytest.approx(M)
    # Nothing lies at the bottom but an empty layer: it does not count.
    empty = (args[0], [500.0, 580.0], [500.0, 0.0])
    assert yield_moment(*empty, C30, FY) == pytest.approx(
        yield_moment(args[0], [500.0], [500.0], C30, FY)
    )


def test_without_bars_there_is_neither_yield_nor_strength():
    for rule in (yield_moment, ultimate_moment):
        assert rule(Section(300, 600), [], [], C30, FY) == 0
        assert rule(Section(300, 600), [550], [0.0], C30, FY, -1) == 0


def test_a_bar_at_the_wrong_face_cannot_hold_the_crack():
    section = Section(300, 600)
    gross = uncracked(section, [], [], 6)
    first = cracking_moment(gross, C30.tensile, section, 1)
    assert yield_moment(section, [50], [600.0], C30, FY) < first
    assert ultimate_moment(section, [50], [600.0], C30, FY) < first
    assert yield_moment(section, [550], [600.0], C30, FY) > first


@pytest.mark.parametrize(
    ("psi", "beta1"), [(3000, 0.85), (4000, 0.85), (5000, 0.80), (6000, 0.75), (9000, 0.65)]
)
def test_the_stress_block_shrinks_with_strength(psi, beta1):
    # ACI 318-19, Table 22.2.2.4.3
    assert block_share(psi * PSI) == pytest.approx(beta1)
