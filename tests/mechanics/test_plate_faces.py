"""Moments and stresses of a plate whose shape is known, and their signs."""

import numpy as np
import pytest

from crackkit.mechanics.plate_faces import (
    FaceStress,
    bottom_stress,
    most_stretched,
    plate_moments,
    top_stress,
)
from crackkit.mechanics.plate_slab import FLAT, Curvature

D, NU = 2e9, 0.2


def moments(xx, yy, xy, free=FLAT):
    return plate_moments([np.array([[v]]) for v in (xx, yy, xy)], D, NU, free)


def test_a_dish_sags_and_is_stretched_below():
    m = moments(-1e-6, 0.0, 0.0)  # deepest in the middle, deflection downward
    assert (m.x[0, 0], m.y[0, 0]) == pytest.approx((2e3, 400.0))
    assert bottom_stress(m, 100.0).s1[0, 0] == pytest.approx(1.2)
    assert top_stress(m, 100.0).s1[0, 0] == pytest.approx(-0.24)


def test_free_curvature_costs_nothing_and_holding_it_flat_stretches_the_top():
    free = Curvature(2e-6, 1e-6)
    assert moments(-2e-6, -1e-6, 0.0, free).x[0, 0] == pytest.approx(0.0)
    held = top_stress(moments(0.0, 0.0, 0.0, Curvature(2e-6, 2e-6)), 100.0)
    assert held.s1[0, 0] == pytest.approx(6 * D * 2e-6 * (1 + NU) / 100.0**2)


def test_a_twist_stretches_both_faces_across_each_other():
    m = moments(0.0, 0.0, -1e-6)
    below, above = bottom_stress(m, 100.0), top_stress(m, 100.0)
    assert m.twist[0, 0] == pytest.approx(D * (1 - NU) * 1e-6)
    assert below.angle[0, 0] == pytest.approx(np.pi / 4)
    assert above.angle[0, 0] == pytest.approx(-np.pi / 4)
    assert below.s1[0, 0] == pytest.approx(above.s1[0, 0]) == pytest.approx(-below.s2[0, 0])


def test_the_angle_is_the_way_of_the_pull():
    m = moments(-1e-6, -3e-6, 0.5e-6)
    face = bottom_stress(m, 100.0)
    a = face.angle[0, 0]
    n = np.array([np.cos(a), np.sin(a)])
    stress = np.array([[face.sigma_x, face.tau], [face.tau, face.sigma_y]])[..., 0, 0]
    assert stress @ n == pytest.approx(face.s1[0, 0] * n)


def test_moments_of_two_stages_add_up():
    m = moments(-1e-6, 0.0, 0.0).plus(moments(0.0, 0.0, -1e-6))
    assert (m.x[0, 0], m.twist[0, 0]) == pytest.approx((2e3, 1.6e3))


def test_the_most_stretched_place_is_looked_for_inside_the_rim():
    s1 = np.array([[9.0, 1.0, 1.0, 1.0], [1.0, 2.0, 3.0, 1.0], [1.0, 1.0, 1.0, 1.0]])
    face = FaceStress(s1, s1, s1, s1, s1, -s1)
    x, y = np.array([0.0, 50.0, 100.0]), np.array([0.0, 40.0, 60.0, 100.0])
    assert most_stretched(face, x, y).stress == 9.0
    inner = most_stretched(face, x, y, 10.0)
    assert (inner.x, inner.y, inner.stress, inner.angle) == (50.0, 60.0, 3.0, -3.0)
