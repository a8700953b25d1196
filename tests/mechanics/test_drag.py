"""Drag steel, joints and tie bars: worked by hand, and consistent among themselves."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.drag import (
    LONGEST_PANEL,
    WIDEST_JOINTS,
    drag_joint_spacing,
    drag_steel,
    drag_stress,
    joint_opening,
    joint_spacing_by_thickness,
    saw_cut_depth,
    tie_bar_length,
)

lengths, frictions = st.floats(1000.0, 60000.0), st.floats(0.2, 2.5)


@given(lengths, frictions, st.floats(80.0, 400.0), st.floats(100.0, 400.0))
def test_drag_steel_bears_the_drag_stress_of_the_whole_section(length, mu, thickness, steel_stress):
    area = drag_steel(mu, length, 2.4e-5 * thickness, steel_stress)
    stress = drag_stress(mu, length, 2.4e-5)
    assert area * steel_stress == pytest.approx(stress * thickness)


@given(frictions, st.floats(0.02, 2.0))
def test_joints_at_the_allowed_distance_give_the_allowed_stress(mu, allowed):
    spacing = drag_joint_spacing(allowed, mu, 2.4e-5)
    assert drag_stress(mu, spacing, 2.4e-5) == pytest.approx(allowed)


def test_a_joint_on_a_stabilised_base_opens_less():
    """Worked by hand: 6096 mm x (0.00001 x 30 + 0.0003) = 3.6576 mm, times C."""
    openings = [joint_opening(6096.0, 30.0, 3e-4, base) for base in ("stabilised", "granular")]
    assert openings == pytest.approx([0.65 * 3.6576, 0.80 * 3.6576])


def test_a_tie_bar_is_held_on_both_sides_of_the_joint():
    """Bar force pi/4 d^2 fs = 15 708 N; bond pi d u over half of the length, 157.1 mm."""
    length = tie_bar_length(10.0, 200.0, 3.1831)
    assert length == pytest.approx(2 * 15708 / (3.14159 * 10 * 3.1831), rel=1e-4)


def test_rules_of_thumb_for_a_slab_of_six_inches():
    rules = [joint_spacing_by_thickness(152.4, c) / 304.8 for c in ("fine", "coarse", "low_slump")]
    assert rules == pytest.approx([12.0, 15.0, 18.0])
    assert pytest.approx(18 * 304.8) == WIDEST_JOINTS
    assert LONGEST_PANEL == 1.5
    assert saw_cut_depth(152.4) == pytest.approx(38.1)


def test_unknown_bases_and_concretes_are_refused():
    with pytest.raises(ValueError, match="jelly"):
        joint_opening(6000.0, 30.0, 3e-4, "jelly")
    with pytest.raises(ValueError, match="jelly"):
        joint_spacing_by_thickness(150.0, "jelly")
