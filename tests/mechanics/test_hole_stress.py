"""Stress beside holes: exact fields, printed factors, and triangles that know of neither."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.hole_stress import (
    elliptic_hole_factor,
    round_hole_factor,
    round_hole_stress,
    rounded_rectangle_factor,
    slot_factor,
)
from tests.mechanics.plane_holes import elliptic_quarter, kirsch_outside, pulled, rounded_quarter

pulls = st.floats(-5.0, 5.0)
# Sides b over a, radii r over b.
ROUNDED = [(b, r) for b in (0.3, 0.5, 0.75, 1.0) for r in (0.2, 0.5, 1.0)]


@pytest.mark.parametrize(("across", "factor"), [(0.0, 3.0), (1.0, 2.0), (-1.0, 4.0)])
def test_a_round_hole_triples_doubles_or_quadruples_the_tension(across, factor):
    """Kirsch (1898): one pull, the same pull both ways, pure shear."""
    rim = round_hole_stress(50.0, np.linspace(0, np.pi, 181), 50.0, 1.0, across)[:, 1]
    assert rim.max() == pytest.approx(factor, abs=1e-12)
    assert round_hole_factor(across) == factor


@given(pulls, pulls, st.floats(0, 6.3))
def test_the_rim_of_a_round_hole_is_free_and_far_away_nothing_is_felt(along, across, turn):
    radial, _rim, shear = round_hole_stress(7.0, turn, 7.0, along, across)
    assert [radial, shear] == pytest.approx([0.0, 0.0], abs=1e-12)
    far = round_hole_stress(7e4, turn, 7.0, along, across)
    C, S = np.cos(turn), np.sin(turn)
    even = [along * C**2 + across * S**2, along * S**2 + across * C**2, (across - along) * S * C]
    assert far == pytest.approx(even, abs=1e-5)


@given(pulls, pulls, st.floats(0, 6.3), st.floats(1.0, 9.0))
def test_stress_round_a_hole_is_in_balance(along, across, turn, r):
    def s(r, t):
        return round_hole_stress(r, t, 1.0, along, across)

    d = 1e-5
    here = s(r, turn)
    by_r = (s(r * (1 + d), turn) - s(max(r * (1 - d), 0.5), turn)) / (2 * d)
    by_t = (s(r, turn + d) - s(r, turn - d)) / (2 * d)
    assert by_r[0] + by_t[2] + here[0] - here[1] == pytest.approx(0.0, abs=1e-6)
    assert by_r[2] + by_t[1] + 2 * here[2] == pytest.approx(0.0, abs=1e-6)


@pytest.fixture(scope="module")
def circle():
    return elliptic_quarter(1.0, 1.0, rings=40, turns=40)


@pytest.mark.parametrize(("along", "across"), [(1.0, 0.0), (1.0, 1.0), (1.0, -1.0)])
def test_triangles_find_kirschs_factors_within_a_hundredth(circle, along, across):
    state = kirsch_outside(circle, 1.0, along, across)
    factor = round_hole_factor(across / along)
    assert state.principal[0].max() == pytest.approx(factor, rel=0.01)
    r = np.linspace(1.2, 6.0, 9)
    stress = state.stress_at(np.c_[0 * r + 1e-9, r])
    assert stress[:, 0] == pytest.approx(
        round_hole_stress(r, np.pi / 2, 1.0, along, across)[:, 1], rel=0.01, abs=0.005
    )


@pytest.mark.parametrize(("a", "b"), [(2.0, 1.0), (1.0, 2.0), (3.0, 1.0)])
def test_triangles_find_the_factor_of_inglis_within_a_hundredth(a, b):
    """Inglis (1913): 1 + 2 a/b, 5.0 for 2 to 1."""
    state = pulled(elliptic_quarter(a, b, rings=48, turns=64), 0.0, 1.0)
    assert state.principal[0].max() == pytest.approx(elliptic_hole_factor(a, b), rel=0.01)


def test_an_ellipse_is_a_slot_of_its_own_radius():
    assert slot_factor(3.0, 1.0 / 3.0) == pytest.approx(elliptic_hole_factor(3.0, 1.0))
    assert elliptic_hole_factor(2.0, 1.0) == 5.0


@pytest.mark.parametrize(("b", "radius", "factor"), [(1.0, 1.0, 3.04), (1.0, 0.2, 3.81)])
def test_the_fit_gives_what_was_worked_out_by_hand(b, radius, factor):
    """Peterson's fit, coefficients from memory; 3.04 stands for the circle's exact 3."""
    assert rounded_rectangle_factor(1.0, b, radius) == pytest.approx(factor, abs=0.005)


@pytest.mark.parametrize(("b", "share"), ROUNDED)
def test_triangles_agree_with_the_fit_as_well_as_it_fits_a_circle(b, share):
    """Over all shapes we find the fit within 2.6 %, worst near radii of 0.75 b; here within 1.5 %.

    The fit's own error for a circle is 1.4 %. That it counts a across the pull was inferred from
    the slot; these triangles confirm it, for pulled the other way they give far less.
    """
    mesh = rounded_quarter(1.0, b, share * b)
    fit = rounded_rectangle_factor(1.0, b, share * b)
    assert pulled(mesh, 0.0, 1.0).principal[0].max() == pytest.approx(fit, rel=0.015)
    if b < 0.9:
        assert pulled(mesh, 1.0, 0.0).principal[0].max() < 0.95 * fit


@pytest.mark.parametrize("b", [0.3, 0.5, 0.75, 1.0])
def test_between_the_fit_is_off_by_less_than_three_hundredths(b):
    mesh = rounded_quarter(1.0, b, 0.75 * b)
    fit = rounded_rectangle_factor(1.0, b, 0.75 * b)
    assert pulled(mesh, 0.0, 1.0).principal[0].max() == pytest.approx(fit, rel=0.03)


@given(st.floats(0.3, 1.0), st.floats(0.2, 0.5), st.floats(1e-3, 1e4))
def test_the_factor_does_not_depend_on_the_size_and_a_small_radius_is_worse(b, radius, size):
    small = rounded_rectangle_factor(size, b * size, radius * b * size)
    assert small == pytest.approx(rounded_rectangle_factor(1.0, b, radius * b), rel=1e-9)
    assert small > rounded_rectangle_factor(1.0, b, 1.1 * radius * b)


def test_what_no_formula_covers_is_refused():
    for b, radius in ((0.2, 0.1), (1.1, 0.5), (0.5, 0.05), (0.5, 0.6), (-1.0, 0.2)):
        with pytest.raises(ValueError, match="fit covers"):
            rounded_rectangle_factor(1.0, b, radius)
    for factor in (elliptic_hole_factor, slot_factor):
        with pytest.raises(ValueError, match="size"):
            factor(0.0, 1.0)
    with pytest.raises(ValueError, match="smaller stress"):
        round_hole_factor(1.5)
