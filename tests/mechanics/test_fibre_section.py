"""Bent and pulled strips with bars and fibres, against plain equilibrium of slices."""

from dataclasses import dataclass

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from crackkit.mechanics.fibre_section import fibre_cracked, tension_with_fibres
from crackkit.mechanics.section import Section, cracked, stress_in_concrete, stress_in_steel

E_C = 30000.0


@dataclass(frozen=True)
class Strip:
    width: float
    depth: float
    depths: np.ndarray
    areas: np.ndarray
    ratio: float
    moment: float

    def solved(self, residual, moment=None):
        moment = self.moment if moment is None else moment
        measures = (self.width, self.depth, self.depths, self.areas, self.ratio)
        return fibre_cracked(*measures, E_C, moment, residual)


SLAB = Strip(1000.0, 200.0, np.array([160.0]), np.array([565.0]), 6.5, 25e6)


@st.composite
def strips(draw):
    b, h = draw(st.floats(100, 1500)), draw(st.floats(80, 1500))
    number = draw(st.integers(1, 3))
    depths = [h * draw(st.floats(0.05, 0.4)) for _ in range(number - 1)]
    depths.append(h * draw(st.floats(0.6, 0.97)))
    areas = [b * h * draw(st.floats(5e-4, 0.02)) for _ in range(number)]
    moment = b * h**2 * draw(st.floats(0.05, 4.0))
    return Strip(b, h, np.array(depths), np.array(areas), draw(st.floats(5, 18)), moment)


residuals = st.floats(0.01, 4.0)


def forces(strip, state, residual):
    """Concrete, bars (less the concrete they displace) and fibres: force and place of each."""
    x, b, h = state.squeezed, strip.width, strip.depth
    displaced = np.minimum(strip.depths - x, 0.0) / x * -state.squeezed_stress
    steel = strip.areas * (state.steel_stresses - displaced)
    size = [b * x * state.squeezed_stress / 2, *steel, residual * b * (h - x)]
    return np.array(size), np.array([x / 3, *strip.depths, (h + x) / 2])


@given(strip=strips(), residual=residuals)
def test_forces_and_moments_balance(strip, residual):
    size, place = forces(strip, strip.solved(residual), residual)
    assert abs(size.sum()) <= 1e-9 * np.abs(size).sum()
    assert size @ place == pytest.approx(strip.moment, rel=1e-9)


def pull(state):
    """Pull in the outermost bars, 0 where the fibres leave them squeezed."""
    return max(state.steel_stresses[-1], 0.0)


@given(strip=strips())
def test_without_fibres_it_is_the_cracked_section_of_the_textbook(strip):
    state = strip.solved(0.0)
    bare = cracked(Section(strip.width, strip.depth), strip.depths, strip.areas, strip.ratio, 1)
    assert state.squeezed == pytest.approx(bare.squeezed, rel=1e-12)
    stresses = stress_in_steel(bare, strip.moment, strip.depths)
    assert state.steel_stresses == pytest.approx(stresses, rel=1e-10, abs=1e-9)
    face = stress_in_concrete(bare, strip.moment, 0.0)
    assert state.squeezed_stress == pytest.approx(face, rel=1e-10)
    assert state.curvature == pytest.approx(strip.moment / (E_C * bare.inertia), rel=1e-10)


@given(strip=strips())
def test_a_breath_of_fibres_changes_next_to_nothing(strip):
    bare, touched = strip.solved(0.0), strip.solved(1e-9)
    assert touched.steel_stresses == pytest.approx(bare.steel_stresses, rel=1e-5, abs=1e-3)


@given(strip=strips(), residual=residuals, more=st.floats(1.0, 3.0))
def test_more_fibres_never_raise_the_pull_in_the_outermost_bars(strip, residual, more):
    outer = pull(strip.solved(residual))
    assert pull(strip.solved(more * residual)) <= outer * (1 + 1e-9)


@given(strip=strips(), residual=residuals)
def test_fibres_deepen_the_squeezed_part(strip, residual):
    assert strip.solved(residual).squeezed >= strip.solved(0.0).squeezed


@given(strip=strips(), residual=residuals)
def test_a_larger_moment_never_eases_the_outermost_bars(strip, residual):
    more = strip.solved(residual, 1.2 * strip.moment)
    assert pull(more) >= pull(strip.solved(residual)) * (1 - 1e-9)


@given(strip=strips(), residual=residuals, times=st.floats(0.2, 5.0))
def test_the_moment_and_the_residual_stress_scale_all_stresses(strip, residual, times):
    once, again = strip.solved(residual), strip.solved(times * residual, times * strip.moment)
    assert again.squeezed == pytest.approx(once.squeezed, rel=1e-9)
    assert again.steel_stresses == pytest.approx(
        times * once.steel_stresses, rel=1e-7, abs=1e-7 * abs(times * once.squeezed_stress)
    )


def test_fibres_that_carry_a_small_moment_alone_leave_no_bar_pulled():
    state = SLAB.solved(1.5, moment=4e6)
    assert state.fibres_alone
    assert np.all(state.steel_stresses <= 0.0)
    assert not SLAB.solved(1.5).fibres_alone


def test_no_moment_no_stress():
    state = SLAB.solved(1.0, moment=0.0)
    assert np.all(state.steel_stresses == 0.0) and state.squeezed_stress == 0.0


@given(residual=residuals, share=st.floats(0.01, 0.999))
def test_fibres_without_bars_carry_up_to_half_of_their_stress_times_the_depth_squared(
    residual, share
):
    bare = Strip(1000.0, 200.0, np.array([160.0]), np.array([0.0]), 6.5, 0.0)
    limit = residual * bare.width * bare.depth**2 / 2
    state = bare.solved(residual, share * limit)
    size, place = forces(bare, state, residual)
    assert abs(size.sum()) <= 1e-9 * np.abs(size).sum()
    assert size @ place == pytest.approx(share * limit, rel=1e-9)
    over = bare.solved(residual, 1.001 * limit)
    assert over.squeezed == 0.0 and np.isnan(over.steel_stresses).all()
    assert not over.fibres_alone


@pytest.mark.parametrize(("moment", "residual"), [(-1.0, 1.0), (1e6, -0.1), (float("nan"), 1.0)])
def test_a_negative_moment_or_residual_stress_is_refused(moment, residual):
    with pytest.raises(ValueError, match="must not be negative"):
        SLAB.solved(residual, moment)


def test_a_tie_hands_to_its_bars_what_the_fibres_do_not_carry():
    assert tension_with_fibres(200e3, 800.0, 40000.0, 1.0) == pytest.approx(200.0)
    assert tension_with_fibres(200e3, 800.0, 40000.0, 0.0) == 250.0


def test_fibres_that_carry_a_tie_alone_leave_the_bars_without_stress():
    assert tension_with_fibres(30e3, 800.0, 40000.0, 1.0) == 0.0
    pulls = np.array([0.0, 30e3, 80e3])
    assert tension_with_fibres(pulls, 800.0, 40000.0, 1.0).tolist() == [0.0, 0.0, 50.0]


@given(strip=strips(), residual=residuals)
def test_fibre_stress_fills_the_stretched_part_only(strip, residual):
    state = strip.solved(residual)
    assume(not state.fibres_alone)
    assert 0.0 < state.squeezed < strip.depths[-1]


@given(cases=st.lists(strips(), min_size=2, max_size=6), pulls=st.lists(residuals, min_size=6))
def test_many_strips_at_once_are_what_each_is_alone(cases, pulls):
    layers = 3
    f = np.array([0.0, *pulls[: len(cases) - 1]])
    depths = np.full((layers, len(cases)), 50.0)
    areas = np.zeros((layers, len(cases)))
    for k, case in enumerate(cases):
        number = len(case.depths)
        depths[:number, k], areas[:number, k] = case.depths, case.areas
    measures = np.array([[c.width, c.depth, c.ratio, c.moment] for c in cases]).T
    b, h, n, M = measures
    together = fibre_cracked(b, h, depths, areas, n, E_C, M, f)
    for k, case in enumerate(cases):
        alone = case.solved(f[k])
        number = len(case.depths)
        assert together.squeezed[k] == pytest.approx(alone.squeezed, rel=1e-9)
        assert together.squeezed_stress[k] == pytest.approx(alone.squeezed_stress, rel=1e-8)
        assert together.curvature[k] == pytest.approx(alone.curvature, rel=1e-8)
        assert together.steel_stresses[:number, k] == pytest.approx(
            alone.steel_stresses, rel=1e-7, abs=1e-8 * abs(alone.squeezed_stress)
        )
        assert together.fibres_alone[k] == alone.fibres_alone


def test_one_slab_is_asked_for_many_moments_and_residual_stresses():
    moments, pulls = np.linspace(1e6, 60e6, 5)[:, None], np.array([0.0, 0.5, 2.0])
    state = fibre_cracked(1000.0, 200.0, [40.0, 160.0], [200.0, 565.0], 6.5, E_C, moments, pulls)
    assert state.squeezed.shape == state.fibres_alone.shape == (5, 3)
    assert state.steel_stresses.shape == (2, 5, 3)
    alone = fibre_cracked(1000.0, 200.0, [40.0, 160.0], [200.0, 565.0], 6.5, E_C, 60e6, 2.0)
    assert isinstance(alone.squeezed, float) and isinstance(alone.curvature, float)
    assert state.steel_stresses[:, -1, -1] == pytest.approx(alone.steel_stresses, rel=1e-10)


def test_many_strips_some_without_any_balance():
    areas = np.array([[0.0, 565.0, 0.0]])
    state = fibre_cracked(1000.0, 200.0, [160.0], areas, 6.5, E_C, 25e6, np.array([1.0, 1.0, 2.0]))
    assert np.isnan(state.steel_stresses[0]).tolist() == [True, False, False]
    assert state.fibres_alone.tolist() == [False, False, True]
