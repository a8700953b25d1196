"""Concrete properties against the standards that give them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import concrete as c
from crackkit.mechanics.us_customary import PCF, PSI

# EN 1992-1-1:2004, Table 3.1 (from memory): fck, fcm, fctm, fctk,0.05, fctk,0.95, Ecm [GPa].
TABLE_3_1 = [
    (12, 20, 1.6, 1.1, 2.0, 27),
    (16, 24, 1.9, 1.3, 2.5, 29),
    (20, 28, 2.2, 1.5, 2.9, 30),
    (25, 33, 2.6, 1.8, 3.3, 31),
    (30, 38, 2.9, 2.0, 3.8, 33),
    (35, 43, 3.2, 2.2, 4.2, 34),
    (40, 48, 3.5, 2.5, 4.6, 35),
    (45, 53, 3.8, 2.7, 4.9, 36),
    (50, 58, 4.1, 2.9, 5.3, 37),
    (55, 63, 4.2, 3.0, 5.5, 38),
    (60, 68, 4.4, 3.1, 5.7, 39),
    (70, 78, 4.6, 3.2, 6.0, 41),
    (80, 88, 4.8, 3.4, 6.3, 42),
    (90, 98, 5.0, 3.5, 6.6, 44),
]

strengths = st.floats(12, 90)


@pytest.mark.parametrize(("fck", "fcm", "fctm", "lower", "upper", "Ecm"), TABLE_3_1)
def test_en_formulas_round_to_table_3_1(fck, fcm, fctm, lower, upper, Ecm):
    assert c.mean_strength_en(fck) == fcm
    assert c.tensile_strength_en(fck) == pytest.approx(fctm, abs=0.0501)
    # The table rounds 0.7 (1.3) times a mean that was itself rounded: two half units.
    assert c.tensile_strength_lower_en(fck) == pytest.approx(lower, abs=0.05 + 0.7 * 0.05)
    assert c.tensile_strength_upper_en(fck) == pytest.approx(upper, abs=0.05 + 1.3 * 0.05)
    assert c.modulus_en(fck) / 1000 == pytest.approx(Ecm, abs=0.5)


def test_rupture_and_modulus_of_4000_psi_concrete_are_the_well_known_ones():
    # 7.5 sqrt(4000) = 474 psi, 57 000 sqrt(4000) = 3 605 000 psi, 4 sqrt(4000) = 253 psi.
    assert c.flexural_strength_aci(4000 * PSI) / PSI == pytest.approx(474.34, rel=1e-5)
    assert c.modulus_aci(4000 * PSI) / PSI == pytest.approx(3_604_997, rel=1e-6)
    assert c.direct_tension_aci(4000 * PSI) / PSI == pytest.approx(252.98, rel=1e-5)


def test_aci_si_edition_constants_are_roundings_of_the_exact_conversion():
    # ACI 318M-19: 4700 sqrt(f'c), 0.62 sqrt(f'c), 0.043 wc^1.5 sqrt(f'c).
    assert c.modulus_aci(25.0) / 5 == pytest.approx(4700, rel=0.01)
    assert c.flexural_strength_aci(25.0) / 5 == pytest.approx(0.62, abs=0.005)
    assert c.modulus_aci_density(25.0, 2300) / 2300**1.5 / 5 == pytest.approx(0.043, abs=0.0005)


def test_the_two_aci_moduli_agree_near_normal_weight():
    assert c.modulus_aci_density(30, 144 * PCF) == pytest.approx(c.modulus_aci(30), rel=0.005)


def test_lightweight_concrete_cracks_earlier_in_proportion():
    assert c.flexural_strength_aci(30, 0.75) == pytest.approx(0.75 * c.flexural_strength_aci(30))
    assert c.direct_tension_aci(30, 0.75) == pytest.approx(0.75 * c.direct_tension_aci(30))


@pytest.mark.parametrize("branch", [st.floats(12, 50), st.floats(50.001, 90)])
@given(data=st.data())
def test_stronger_concrete_is_never_weaker_in_tension(branch, data):
    weak, strong = sorted((data.draw(branch), data.draw(branch)))
    assert c.tensile_strength_en(weak) <= c.tensile_strength_en(strong)


def test_the_two_formulas_of_table_3_1_meet_within_a_rounding():
    assert c.tensile_strength_en(50.0) == pytest.approx(c.tensile_strength_en(50.001), rel=0.0025)


@given(strengths, st.floats(100, 2000))
def test_a_shallow_member_is_stronger_in_bending_than_in_pure_tension(strength, depth):
    fl, fct = c.flexural_strength_en(strength, depth), c.tensile_strength_en(strength)
    assert fct <= fl <= 1.5 * fct * (1 + 1e-12)
    if depth >= 600:
        assert fl == fct


def test_a_slab_of_150_mm_gains_45_percent_in_bending():
    # (3.23): 1.6 - 0.150 = 1.45.
    assert c.flexural_strength_en(30, 150) / c.tensile_strength_en(30) == pytest.approx(1.45)


def test_creep_of_two_leaves_a_third_of_the_stiffness():
    assert c.effective_modulus(33000, 2.0) == pytest.approx(11000)
    assert c.effective_modulus(33000, 0.0) == 33000


def test_concrete_by_aci_holds_its_parts():
    made = c.concrete(30.0, 400, "ACI")
    assert made == c.Concrete(
        strength=30.0,
        modulus=c.modulus_aci(30),
        mean_strength=30.0,
        tensile=c.direct_tension_aci(30),
        flexural=c.flexural_strength_aci(30),
    )


def test_concrete_by_en_holds_its_parts():
    made = c.concrete(30.0, 400, "EN")
    assert made.mean_strength == 38
    assert made.flexural == pytest.approx(1.2 * made.tensile)
    assert made.modulus == c.modulus_en(30)


@pytest.mark.parametrize(
    ("strength", "depth", "code"),
    [(0, 400, "EN"), (-5, 400, "ACI"), (30, 0, "EN"), (30, 400, "BS"), (float("nan"), 1, "EN")],
)
def test_nonsense_is_refused(strength, depth, code):
    with pytest.raises(ValueError, match=r"strength|code"):
        c.concrete(strength, depth, code)
