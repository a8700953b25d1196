"""The concrete between cracks: stiffer than the crack, never stiffer than the whole."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.tension_stiffening import (
    cracked_share,
    effective_inertia_aci,
    effective_inertia_branson,
    mean_curvature,
)

moments = st.floats(-500e6, 500e6)
ratios = st.floats(0.05, 1.0)
MCR, IG, EC = 50e6, 5.4e9, 30000.0


@given(moments, ratios, st.sampled_from([0.5, 1.0]))
def test_the_mean_lies_between_the_whole_and_the_cracked_section(M, ratio, beta):
    kappa = abs(mean_curvature(M, MCR, EC * IG, EC * IG * ratio, beta))
    assert abs(M) / (EC * IG) * (1 - 1e-12) <= kappa
    assert kappa <= abs(M) / (EC * IG * ratio) * (1 + 1e-12)


@given(moments, ratios)
def test_hogging_mirrors_sagging(M, ratio):
    args = (MCR, EC * IG, EC * IG * ratio, 0.5)
    assert mean_curvature(-M, *args) == -mean_curvature(M, *args)


def test_more_moment_never_bends_less():
    M = np.linspace(0, 10 * MCR, 2001)
    for beta in (0.5, 1.0):
        assert np.all(np.diff(mean_curvature(M, MCR, 1e14, 2e13, beta)) > 0)


def test_first_loading_has_no_step_at_cracking_and_lasting_load_has_the_step_of_the_source():
    M = np.array([MCR, MCR * (1 + 1e-9)])
    first = mean_curvature(M, MCR, 1e14, 2e13, 1.0)
    assert first[1] == pytest.approx(first[0], rel=1e-7)
    lasting = mean_curvature(M, MCR, 1e14, 2e13, 0.5)
    assert lasting[1] == pytest.approx(0.5 * MCR / 2e13 + 0.5 * MCR / 1e14, rel=1e-7)


def test_far_beyond_cracking_only_the_bars_are_left():
    assert mean_curvature(1e4 * MCR, MCR, 1e14, 2e13, 1.0) == pytest.approx(
        1e4 * MCR / 2e13, rel=1e-7
    )


def test_zeta_at_twice_the_cracking_moment():
    # EN 1992-1-1:2004, (7.19): 1 - beta/4.
    assert cracked_share([2 * MCR, -2 * MCR], MCR, 1.0) == pytest.approx([0.75, 0.75])
    assert cracked_share(2 * MCR, MCR, 0.5) == pytest.approx(0.875)


def test_a_cracked_section_that_nothing_holds_has_no_finite_curvature():
    kappa = mean_curvature([0.0, 0.5 * MCR, 2 * MCR, -2 * MCR], MCR, 1e14, 0.0, 1.0)
    assert kappa[:2] == pytest.approx([0.0, 0.5 * MCR / 1e14])
    assert kappa[2] == np.inf and kappa[3] == -np.inf


def test_a_cracked_stiffness_above_the_whole_one_is_not_believed():
    assert mean_curvature(3 * MCR, MCR, 1e14, 2e14, 1.0) == pytest.approx(3 * MCR / 1e14)


def test_stations_may_each_have_their_own_section():
    M = np.array([2.0, 2.0, 0.5]) * MCR
    kappa = mean_curvature(M, [MCR, 3 * MCR, MCR], [1e14, 2e14, 1e14], [5e13, 5e13, 0], 1.0)
    each = [mean_curvature(2 * MCR, MCR, 1e14, 5e13, 1.0), 2 * MCR / 2e14, 0.5 * MCR / 1e14]
    assert kappa == pytest.approx(each)


@given(moments, ratios)
def test_aci_2019_is_the_en_mean_with_two_thirds_of_the_cracking_moment(M, ratio):
    Ie = effective_inertia_aci(M, MCR, IG, ratio * IG)
    kappa = mean_curvature(M, 2 / 3 * MCR, EC * IG, EC * ratio * IG, 1.0)
    assert kappa == pytest.approx(M / (EC * Ie), rel=1e-12)


@given(st.floats(1.001, 50), ratios)
def test_aci_2019_as_the_table_prints_it(times, ratio):
    # ACI 318-19, Table 24.2.3.5: Icr/[1 - ((2/3)Mcr/Ma)^2 (1 - Icr/Ig)].
    Ma = times * 2 / 3 * MCR
    printed = ratio * IG / (1 - (2 / 3 * MCR / Ma) ** 2 * (1 - ratio))
    assert effective_inertia_aci(Ma, MCR, IG, ratio * IG) == pytest.approx(printed, rel=1e-12)
    assert effective_inertia_aci(2 / 3 * MCR, MCR, IG, ratio * IG) == IG


@given(moments, ratios)
def test_effective_inertia_lies_between_cracked_and_gross(M, ratio):
    for rule in (effective_inertia_aci, effective_inertia_branson):
        assert ratio * IG * (1 - 1e-12) <= rule(M, MCR, IG, ratio * IG) <= IG * (1 + 1e-12)


def test_branson_at_twice_the_cracking_moment():
    # (1/2)^3 Ig + (1 - 1/8) Icr
    Ie = effective_inertia_branson([2 * MCR, 0.0], MCR, 8e9, 2e9)
    assert Ie == pytest.approx([1e9 + 1.75e9, 8e9])


def test_branson_is_too_stiff_for_lightly_reinforced_slabs():
    # Why ACI changed the rule (Bischoff 2005): with Ig/Icr = 5 the old rule is far stiffer.
    M = 1.1 * MCR
    assert effective_inertia_branson(M, MCR, IG, IG / 5) > 1.7 * effective_inertia_aci(
        M, MCR, IG, IG / 5
    )
