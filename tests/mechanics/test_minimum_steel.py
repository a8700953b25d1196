"""Least steel: by hand, by what it is for, and in its limits."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import minimum_steel as least
from crackkit.mechanics.concrete import tensile_strength_en
from crackkit.mechanics.section import Section
from crackkit.mechanics.us_customary import INCH, PSI

TEE = Section(300.0, 600.0, 900.0, 150.0)
senses = st.sampled_from([1, -1])


def test_a_bent_rectangle_by_hand():
    # k = 1 - 0.35 x 200/500 = 0.86; 0.4 x 0.86 x 2.9 x 300 x 250/240 = 311.75
    found = least.bent_crack_control_steel_en(Section(300.0, 500.0), 240.0, 2.9)
    assert found == pytest.approx(311.75, rel=1e-6)


def test_a_tee_whose_web_is_stretched_by_hand():
    # axis (900 x 150 x 75 + 300 x 450 x 375)/270 000 = 225; k = 0.79
    # 0.4 x 0.79 x 2.9 x 300 x 375/300 = 343.65
    found = least.bent_crack_control_steel_en(TEE, 300.0, 2.9)
    assert found == pytest.approx(343.65, rel=1e-6)


def test_a_tee_whose_flange_is_stretched_by_hand():
    # Flange: mean stress (225 + 75)/2/225 = 2/3, kc = 0.6, k = 0.65: 0.6 x 0.65 x 2.9 x 135 000/300
    # = 508.95; web: 0.4 x 0.79 x 2.9 x 300 x 75/300 = 68.73
    found = least.bent_crack_control_steel_en(TEE, 300.0, 2.9, sense=-1)
    assert found == pytest.approx(508.95 + 68.73, rel=1e-6)


def test_a_pulled_tee_by_hand():
    # 2.9 x (0.65 x 135 000 + 0.79 x 135 000)/300 = 1879.2
    assert least.pulled_crack_control_steel_en(TEE, 300.0, 2.9) == pytest.approx(1879.2)


@given(st.floats(100, 2000), st.floats(100, 2000), senses, st.floats(0.05, 0.95))
def test_a_rectangle_written_as_a_tee_is_the_rectangle(width, depth, sense, part):
    tee = Section(width, depth, width, part * depth)
    plain = Section(width, depth)
    bent = least.bent_crack_control_steel_en
    assert bent(tee, 240.0, 2.9, sense) == pytest.approx(bent(plain, 240.0, 2.9, sense))
    pulled = least.pulled_crack_control_steel_en
    assert pulled(tee, 240.0, 2.9) == pytest.approx(pulled(plain, 240.0, 2.9))


@given(
    st.floats(100, 600),
    st.floats(200, 1500),
    st.floats(1.05, 5),
    st.floats(0.05, 0.6),
    senses,
)
def test_no_part_is_held_less_than_in_plain_bending_nor_more_than_when_pulled(b, h, f, t, sense):
    """Against thin slices: Act between kc = 0.4, k = 0.65 and kc = 1, k = 1."""
    section = Section(b, h, f * b, t * h)
    z = (np.arange(20_000) + 0.5) / 20_000 * h
    wide = np.where(z < t * h, f * b, b) * h / 20_000
    stretched = (wide * (sense * (z - section.centroid) > 0)).sum()
    found = least.bent_crack_control_steel_en(section, 1.0, 1.0, sense)
    assert 0.4 * 0.65 * stretched * 0.999 <= found <= stretched
    assert found < least.pulled_crack_control_steel_en(section, 1.0, 1.0)


@given(st.floats(100, 300), st.floats(150, 300), st.floats(12, 50))
def test_a_thin_pulled_member_yields_no_sooner_than_it_cracks(width, depth, strength):
    """With k = 1 the bars bear just what the whole section bore before it cracked."""
    fct = tensile_strength_en(strength)
    found = least.pulled_crack_control_steel_en(Section(width, depth), 500.0, fct)
    assert found * 500.0 == pytest.approx(fct * width * depth)


@given(st.floats(12, 90), st.floats(400, 600), st.floats(0.85, 0.95))
def test_the_least_bending_steel_bears_the_moment_that_cracks(strength, yield_strength, share):
    """Lever arm 0.9 d, flexural strength fctm, depth d/share: the bars still hold it."""
    d, fct = 500.0, tensile_strength_en(strength)
    steel = least.least_bending_steel_en(300.0, d, yield_strength, fct)
    cracking = fct * 300.0 * (d / share) ** 2 / 6
    assert steel * yield_strength * 0.9 * d > cracking


def test_weak_concrete_still_needs_thirteen_in_ten_thousand():
    assert least.least_bending_steel_en(1000.0, 200.0, 500.0, 1.6) == pytest.approx(260.0)


@pytest.mark.parametrize(
    ("size", "factor"), [(100, 1.0), (300, 1.0), (550, 0.825), (800, 0.65), (2000, 0.65)]
)
def test_thick_parts_need_less(size, factor):
    assert least.size_factor_en(size) == pytest.approx(factor)


def test_pulling_along_a_web_asks_for_more_and_pressing_for_less():
    assert least.web_factor_en(0.0, 500.0, 2.9) == pytest.approx(0.4)
    # Pulled by fct: 0.4 (1 + 1/(2/3)) = 1, as in direct tension, at any depth
    assert least.web_factor_en(2.9, 500.0, 2.9) == pytest.approx(1.0)
    assert least.web_factor_en(2.9, 1600.0, 2.9) == pytest.approx(1.0)
    assert least.web_factor_en(9.0, 500.0, 2.9) == 1.0
    # Pressed by 1 MPa: 0.4 (1 - 1/(1.5 x 2.9)); in a web 2 m deep 0.4 (1 - 1/(1.5 x 2 x 2.9))
    assert least.web_factor_en(-1.0, 500.0, 2.9) == pytest.approx(0.4 * (1 - 1 / 4.35))
    assert least.web_factor_en(-1.0, 2000.0, 2.9) == pytest.approx(0.4 * (1 - 1 / 8.7))
    assert least.web_factor_en(-20.0, 500.0, 2.9) == 0.0


@pytest.mark.parametrize(("share", "factor"), [(0.2, 0.5), (0.75, 0.675), (1.0, 0.9)])
def test_a_flange_counts_half_at_least(share, factor):
    assert least.flange_factor_en(share) == pytest.approx(factor)


@pytest.mark.parametrize(
    ("psi", "steel"),
    [
        (3000, 0.72),  # 200/60 000 x 12 x 18
        (6000, 0.83656),  # 3 sqrt(6000)/60 000 x 12 x 18
    ],
)
def test_a_beam_in_inches_by_hand(psi, steel):
    found = least.least_beam_steel_aci(12 * INCH, 18 * INCH, 60_000 * PSI, psi * PSI)
    assert found / INCH**2 == pytest.approx(steel, rel=1e-4)


def test_steel_above_80_000_psi_saves_no_more():
    def found(fy):
        return least.least_beam_steel_aci(300.0, 450.0, fy * PSI, 30.0)

    assert found(100_000) == found(80_000) < found(60_000)


def test_a_slab_needs_eighteen_in_ten_thousand():
    # 0.0018 x 12 x 6 = 0.1296 square inches in each foot
    assert least.least_slab_steel_aci(12 * INCH, 6 * INCH) / INCH**2 == pytest.approx(0.1296)
