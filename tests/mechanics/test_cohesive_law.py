"""What still holds an opening crack together: area, ends, fibres; and the faces back and forth."""

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from crackkit.mechanics.cohesive_faces import face_stress, spent
from crackkit.mechanics.cohesive_law import CohesiveLaw, bridged_by_fibres
from crackkit.mechanics.fibres import residual_at, service_residual

SHAPES = ("exponential", "linear", "bilinear")
STIFF = 6e4  # MPa/mm
strengths, energies = st.floats(1.0, 5.0), st.floats(0.04, 0.2)
laws = st.builds(CohesiveLaw, strengths, energies, st.sampled_from(SHAPES))
bridged = st.builds(
    lambda ft, G, shape, a, b: CohesiveLaw(ft, G, shape, (a * ft, b * ft)),
    strengths,
    energies,
    st.sampled_from(SHAPES),
    st.floats(0.0, 0.95),
    st.floats(-0.5, 1.2),
)
openings = st.floats(0.0, 3.0)


def traction(law, opening, greatest=0.0, sliding=0.0, share=1.0):
    jump = np.array([[opening], [sliding]])
    return face_stress(law, STIFF, np.array([share]), jump, np.array([greatest]))


@given(laws)
def test_the_area_under_the_curve_is_the_fracture_energy(law):
    w = np.linspace(0.0, 20.0, 400_001) ** 2 * law.scale / 4
    sigma, _slope = law.stress(w)
    area = np.sum(0.5 * (sigma[1:] + sigma[:-1]) * np.diff(w))
    assert area == pytest.approx(law.energy, rel=1e-4)
    assert law.work(1e3 * law.scale) == pytest.approx(law.energy, rel=1e-12)


# fibres that let go before the last of the concrete does; that carry nothing when all is torn
@example(CohesiveLaw(1.0, 0.125, "exponential", (0.125, -0.25)), 1.0)
@example(CohesiveLaw(1.0, 0.5, "exponential", (0.9, -6.0)), 2.0)
@example(CohesiveLaw(3.0, 0.1, "bilinear", (2.8, -50.0)), 0.2)
@given(bridged, openings)
def test_work_is_the_integral_of_the_stress(law, opening):
    w = np.linspace(0.0, opening, 100_001)
    sigma, _slope = law.stress(w)
    area = np.sum(0.5 * (sigma[1:] + sigma[:-1]) * np.diff(w))
    assert law.work(opening) == pytest.approx(area, rel=1e-4, abs=1e-9)


@given(bridged, st.floats(0.0, 2.4))
def test_the_slope_is_that_of_the_stress(law, opening):
    step = 1e-7
    (before, after), slopes = law.stress([opening, opening + step])
    slope = float(slopes[0])
    if slope == pytest.approx(slopes[1], rel=1e-3, abs=1e-6):  # no kink between
        assert (after - before) / step == pytest.approx(slope, rel=1e-3, abs=1e-3)


@given(bridged, openings)
def test_the_stress_begins_at_the_strength_and_never_rises_above_it_unless_fibres_do(law, opening):
    start, now = law.stress([0.0, opening])[0]
    assert start == pytest.approx(law.tensile)
    assert 0 <= now <= max(law.tensile, *law.fibres) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("x", "left"), [(0.0, 1.0), (0.5, 0.6), (1.0, 0.2), (3.0, 0.1), (5.0, 0.0)]
)
def test_the_bilinear_law_goes_through_the_corners_of_the_model_code(x, left):
    # fib Model Code 2010, 5.1.8.2 (from memory): 0.2 f_t at G_F/f_t and nothing at 5 G_F/f_t.
    law = CohesiveLaw(2.9, 0.14, "bilinear")
    assert law.stress(x * law.scale)[0] == pytest.approx(2.9 * left, abs=1e-12)


def test_the_linear_law_ends_at_twice_the_scale():
    law = CohesiveLaw(3.0, 0.12, "linear")
    assert law.stress([0.04, 0.08, 0.09])[0] == pytest.approx([1.5, 0.0, 0.0], abs=1e-12)


def test_fibres_carry_what_the_model_code_says():
    # fib Model Code 2010, 5.6.4 (from memory): f_R1 = 4.0, f_R3 = 3.2 give 1.80 and, at 0.5 mm,
    # 1.60 MPa.
    law = CohesiveLaw(2.9, 0.1, fibres=bridged_by_fibres(4.0, 3.2))
    assert law.stress([0.5])[0] == pytest.approx([1.60], rel=1e-12)
    assert law.fibres[0] == pytest.approx(service_residual(4.0))


@given(st.floats(0.5, 6.0), st.floats(0.1, 6.0), st.floats(0.6, 2.5))
def test_where_only_fibres_are_left_they_carry_what_the_rule_for_beams_says(f1, f3, w):
    law = CohesiveLaw(3.0, 0.06, "linear", bridged_by_fibres(f1, f3))
    assert law.stress(w)[0] == pytest.approx(residual_at(f1, f3, w), abs=1e-9)


@given(bridged, openings)
def test_fibres_never_make_a_crack_weaker(law, opening):
    plain = CohesiveLaw(law.tensile, law.energy, law.shape)
    assert law.stress(opening)[0] >= plain.stress(opening)[0]


@pytest.mark.parametrize(
    "wrong",
    [
        {"tensile": 0.0},
        {"energy": -0.1},
        {"shape": "round"},
        {"fibres": (3.0, 1.0)},
        {"fibres": (-0.1, 1.0)},
    ],
)
def test_a_law_that_cannot_be_is_refused(wrong):
    with pytest.raises(ValueError, match="Concrete|law|Fibres"):
        CohesiveLaw(**({"tensile": 2.9, "energy": 0.1} | wrong))


@given(laws, st.floats(1e-4, 1.0), st.floats(0.0, 1.0))
def test_a_crack_let_back_comes_home_along_a_straight_line(law, greatest, part):
    far = traction(law, greatest, greatest)
    near = traction(law, part * greatest, greatest)
    assert near.normal == pytest.approx(part * far.normal, rel=1e-9, abs=1e-12)


@given(laws, st.floats(0.0, 1.0), st.floats(1e-6, 1e-3))
def test_faces_pressed_together_are_as_stiff_as_ever(law, greatest, pressed):
    pushed = traction(law, -pressed, greatest)
    assert pushed.normal == pytest.approx([-STIFF * pressed])
    assert pushed.normal_slope == pytest.approx([STIFF])


@given(laws, st.floats(-0.01, 0.5), st.floats(0.0, 0.5), st.floats(-0.1, 0.1), st.floats(0.1, 1.0))
def test_the_slopes_are_those_of_the_stress(law, opening, greatest, sliding, share):
    step = 1e-8
    here = traction(law, opening, greatest, sliding, share)
    wider = traction(law, opening + step, greatest, sliding, share)
    further = traction(law, opening, greatest, sliding + step, share)
    assert (further.shear - here.shear) / step == pytest.approx(here.shear_slope, rel=1e-4, abs=1)
    if wider.normal_slope == pytest.approx(here.normal_slope, rel=1e-3):  # no kink between
        grown = (wider.normal - here.normal) / step
        assert grown == pytest.approx(here.normal_slope, rel=1e-3, abs=STIFF * 1e-4)
        grown = (wider.shear - here.shear) / step
        assert grown == pytest.approx(here.coupling, rel=1e-2, abs=STIFF * 1e-3)


def test_a_joint_holds_nothing_but_pressure():
    law = CohesiveLaw(2.9, 0.1)
    for opening in (0.0, 1e-6, 0.3):
        open_ = traction(law, opening, sliding=0.1, share=0.0)
        assert [open_.normal[0], open_.shear[0]] == [0.0, 0.0]
    assert traction(law, -1e-4, share=0.0).normal[0] < 0


def test_half_a_thickness_carries_half():
    law = CohesiveLaw(2.9, 0.1)
    whole, half = traction(law, 0.03), traction(law, 0.03, share=0.5)
    assert half.normal == pytest.approx(0.5 * whole.normal, rel=2e-3)


@given(laws, st.floats(1e-3, 2.0))
def test_work_that_is_gone_is_what_a_way_out_and_back_costs(law, greatest):
    first = law.tensile / STIFF
    w = np.concatenate([[0.0], first + (greatest - first) * np.linspace(0, 1, 4001) ** 2])
    way = face_stress(law, STIFF, np.ones_like(w), np.stack([w, 0 * w]), np.zeros_like(w))
    there = np.sum(0.5 * (way.normal[1:] + way.normal[:-1]) * np.diff(w))
    back = 0.5 * way.normal[-1] * greatest
    lost = spent(law, STIFF, np.ones(1), np.array([greatest]))
    assert lost[0] == pytest.approx(there - back, rel=1e-3)
